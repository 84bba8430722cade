import type * as z from 'zod';
import type { Subject } from '../../analysis/subject.js';
import { ruleOf } from '../../checks/all-checks.js';
import { accessOf } from '../../checks/room/access-subject.js';
import type { Finding } from '../../judging/finding.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import { legPull } from '../../model/room/lift-geometry.js';
import type { accessShape } from './access-schema.js';

type AccessResults = z.infer<ReturnType<typeof accessShape>>;

/**
 * What the results file says of access.
 *
 * @param subject - installation and layout
 * @param findings - all findings
 * @returns spaces and lift; nothing where no room is described
 */
export function accessResults(
  subject: Subject,
  findings: readonly Finding[],
): { readonly access?: AccessResults } {
  const { room, pump } = subject.installation;
  const described = room.floor ?? room.ceiling ?? room.lift ?? room.objects[0];
  if (described === undefined) return {};
  const { lift, withdrawal } = accessOf(subject);
  const sling = room.lift?.sling;
  const spaces = findings
    .filter((each) => ruleOf(each)?.section === 'access' && each.verdict !== 'does-not-apply')
    .map((finding) => spaceResult(finding));
  return {
    access: {
      spaces,
      ...(lift && {
        lift: {
          available: lift.available,
          ...(lift.gear !== undefined && { gear: lift.gear }),
          ...(withdrawal !== undefined && { withdrawal }),
          offCentre: lift.offCentre,
          ...(sling && {
            legPull: legPull(pump.motor.mass.value * STANDARD_GRAVITY, sling.legs, sling.angle.value),
          }),
        },
      }),
    },
  };
}

function spaceResult({ check, at, demand, limit, reason }: Finding): AccessResults['spaces'][number] {
  const { obstacle, short, move } = reason?.data ?? {};
  return {
    purpose: check,
    at,
    ...(limit !== undefined && { needed: limit }),
    ...(demand !== undefined && { found: demand }),
    ...(typeof obstacle === 'string' && obstacle !== '' && { nearest: obstacle }),
    ...(typeof short === 'number' && { short }),
    ...(typeof move === 'number' && { move }),
  };
}
