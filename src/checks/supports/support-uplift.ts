import { type SolvedCondition, withPumpInPlace } from '../../analysis/conditions.js';
import type { Subject } from '../../analysis/subject.js';
import { supportLoadAlong } from '../../analysis/supports/support-loads.js';
import { frameSupport } from '../../analysis/supports/weight-supports.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Restraint } from '../../model/frame/frame.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const STATICS: Citation = {
  source: 'statics',
  clause: 'a rod cannot push and a stand cannot pull',
  confidence: 'computed',
};

/** Pull below this share of the whole weight is noise of the arithmetic [-]. */
const NOISE = 1e-6;

/**
 * No support that can act one way only is asked to act the other way.
 *
 * Why: a hanger that goes slack or a stand the pipe lifts off hands its share to the neighbours and to the pump
 * nozzle, and nobody sees it on the finished job. It must not happen, so there is no limit to compare with.
 */
export const supportUplift = defineCheck({
  id: 'support-uplift',
  title: 'Support uplift',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  turnsUnannounced: true,
  unit: 'N',
  basis: [STATICS],
  exceeds: 'checks.support-uplift.exceeds',
  noPlace: 'checks.support-uplift.no-place',
  places: (subject) =>
    subject.layout.supports.filter((support) => oneWayRestraints(support, subject).length > 0),
  at: ({ mark }) => mark,
  demands: (support, subject) =>
    withPumpInPlace(subject).flatMap((condition) =>
      oneWayRestraints(support, subject).flatMap((restraint) => demandAt(condition, support, restraint)),
    ),
});

interface OneWay {
  readonly restraint: Restraint;
  /** Place among the restraints of the support. */
  readonly index: number;
}

function oneWayRestraints(support: PlacedSupport, subject: Subject): readonly OneWay[] {
  const byMake = support.part?.oneWay === true || support.kind === 'spring-hanger';
  return (frameSupport(subject, support)?.restraints ?? []).flatMap((restraint, index) => {
    const one = restraint.acts === 'translation' && (restraint.sense === 'push' || byMake);
    return one ? [{ restraint, index }] : [];
  });
}

function demandAt(
  condition: SolvedCondition,
  { mark, point }: PlacedSupport,
  { restraint, index }: OneWay,
): readonly Demand[] {
  const solved = condition.solved.supports[mark];
  const state = solved?.states[index];
  if (state === 'absent' || condition.acts.absent.includes(mark)) return [];
  if (solved === undefined) return [{ kind: 'forbidden', condition: condition.name, happens: undefined }];
  if (state === 'lifted') {
    const moved = condition.solved.movements[point]?.translation;
    const imposed = condition.acts.imposed?.[mark] ?? [0, 0, 0];
    // The point left its seat by what it moved beyond the support's own movement and the free play.
    const opening =
      moved && along(moved, restraint) - along(imposed, restraint) - restraint.imposed + restraint.gap;
    return [
      {
        kind: 'forbidden',
        condition: condition.name,
        happens: true,
        unit: 'm',
        ...(opening !== undefined && { demand: Math.max(0, opening) }),
      },
    ];
  }
  const pull = supportLoadAlong(condition.solved, mark, restraint.direction) ?? Number.NaN;
  const happens = Number.isFinite(pull) ? pull > NOISE * condition.solved.weight : undefined;
  const advice = 'checks.support-uplift.pulled';
  return [{ kind: 'forbidden', condition: condition.name, happens, demand: Math.max(0, pull), advice }];
}

function along(vector: Vec3, { direction }: Restraint): number {
  return vector[0] * direction[0] + vector[1] * direction[1] + vector[2] * direction[2];
}
