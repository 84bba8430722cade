import type * as z from 'zod';
import { isNotWorkedOut } from '../../analysis/memoized.js';
import { closedJoints } from '../../analysis/nozzles/closed-joints.js';
import { misfitLoads, misfitUsedUp } from '../../analysis/nozzles/misfit-loads.js';
import type { Subject } from '../../analysis/subject.js';
import { pumpOutLines } from '../../analysis/supports/pump-out-lines.js';
import { supportSettings } from '../../analysis/supports/support-settings.js';
import type { JointClosing, MisfitWay } from '../../mechanics/what-ifs/fit-up.js';
import type { FlangeSpring } from '../../mechanics/what-ifs/pump-out.js';
import type { Wrench } from '../../model/conventions.js';
import type { fitUpShape, pumpOutShape, settingShape } from './installation-schema.js';

/** What the results file says to a fitter; each is absent where it could not be worked out. */
export interface FitterResults {
  readonly pumpOut?: z.infer<ReturnType<typeof pumpOutShape>>;
  readonly fitUp?: z.infer<ReturnType<typeof fitUpShape>>;
  readonly setting?: z.infer<ReturnType<typeof settingShape>>;
}

/**
 * The pump out, the joints pulled shut and the supports set, as plain data.
 *
 * @param subject - installation, layout and response
 * @returns SI numbers [m], [rad], [N], [N·m]
 */
export function fitterResults(subject: Subject): FitterResults {
  const out = pumpOutLines(subject);
  const closed = closedJoints(subject);
  const settings = supportSettings(subject);
  return {
    ...(!isNotWorkedOut(out) && out.flanges.length > 0 && { pumpOut: pumpOutResult(out) }),
    ...(!isNotWorkedOut(closed) &&
      closed.joints.length > 0 && { fitUp: fitUpResult(closed.joints, subject) }),
    ...(!isNotWorkedOut(settings) && settings.raising.length > 0 && { setting: settingResult(settings) }),
  };
}

type Worked<Answer> = Exclude<Answer, { readonly code: string }>;

function pumpOutResult(
  out: Worked<ReturnType<typeof pumpOutLines>>,
): z.infer<ReturnType<typeof pumpOutShape>> {
  return {
    flanges: out.flanges.map(({ which, falls, spring, pinnedSpring, prop, pinnedProp }) => ({
      nozzle: which,
      falls: falls !== undefined,
      ...(spring && { spring: springResult(spring) }),
      ...(pinnedSpring && { pinnedSpring: springResult(pinnedSpring) }),
      ...(prop !== undefined && { prop }),
      ...(pinnedProp !== undefined && { pinnedProp }),
    })),
    springs: out.springs.map((each) => ({ ...each })),
  };
}

function springResult({ sideways, widest, ...numbers }: FlangeSpring) {
  const triple = ([x, y, z]: FlangeSpring['sideways']): [number, number, number] => [x, y, z];
  return { ...numbers, sideways: triple(sideways), widest: triple(widest) };
}

function wrench({ force, moment }: Wrench): {
  force: [number, number, number];
  moment: [number, number, number];
} {
  return { force: [...force], moment: [...moment] };
}

function fitUpResult(
  joints: readonly JointClosing[],
  subject: Subject,
): z.infer<ReturnType<typeof fitUpShape>> {
  const misfits = misfitLoads(subject);
  return {
    joints: joints.map(({ which, loads }) => {
      const on = (way: MisfitWay) => wrench(loads[way].own);
      const own = misfits.find(({ nozzle }) => nozzle.which === which);
      const used = own && misfitUsedUp(own, subject);
      return {
        nozzle: which,
        loads: {
          gap: on('gap'),
          rise: on('rise'),
          offset: on('offset'),
          twist: on('twist'),
          'tilt-upright': on('tilt-upright'),
          'tilt-sideways': on('tilt-sideways'),
        },
        ...(used && { usedUp: Object.fromEntries(used.map(({ way, misfit }) => [way, misfit])) }),
      };
    }),
  };
}

function settingResult(
  settings: Worked<ReturnType<typeof supportSettings>>,
): z.infer<ReturnType<typeof settingShape>> {
  return {
    target: settings.target,
    springs: (settings.springs?.springs ?? []).map(({ mark, design, raise, loads, reached, beyond }) => ({
      mark,
      design,
      raise,
      loads: { ...loads },
      reached,
      ...(beyond !== undefined && { beyond }),
    })),
    raising: settings.raising.map(({ mark, idle, supports, nozzles }) => ({
      mark,
      idle,
      supports: { ...supports },
      nozzles: Object.fromEntries(Object.entries(nozzles).map(([name, load]) => [name, wrench(load)])),
    })),
  };
}
