import { citationOf } from '../../analysis/citation-of.js';
import { type SolvedCondition, solvedConditions } from '../../analysis/conditions.js';
import type { Subject } from '../../analysis/subject.js';
import { movedMovement } from '../../mechanics/frame/elements/rigid-arm.js';
import { rimMovement } from '../../mechanics/modes/twisted-set.js';
import { conditionId, ofRole, ofRoles } from '../../model/conditions/condition-roles.js';
import { motorPoint } from '../../model/frame/pump-body.js';
import { subtract } from '../../model/vector.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const LIMIT: Citation = { source: 'input', clause: 'limits.start-movement', confidence: 'read' };

/**
 * The top of the motor stays within the movement the file allows while the motor starts or is switched off.
 *
 * Measured at the rim of the motor: sway of the top and turn about the shaft together.
 *
 * Why: the set twists against its pipes while the rotor gains speed. The top of the motor goes farthest, and what is
 * fastened to it, conduit, guard, gauge lines, has to follow. No publication sets a limit.
 */
export const startMovement = defineCheck({
  id: 'start-movement',
  title: 'Motor top movement at start',
  trade: 'Design engineer',
  section: 'start-up',
  dependsOn: ['supports', 'weights', 'start'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [LIMIT],
  exceeds: 'checks.start-movement.exceeds',
  noPlace: 'checks.start-movement.no-place',
  places: ({ startUp }) => (startUp === undefined ? [] : [startUp]),
  at: () => 'motor top',
  demands: (start, subject): readonly Demand[] => {
    if (start.kind === 'fails')
      return [{ kind: 'cannot-tell', code: start.why.code, data: plain(start.why.data) }];
    const limit = subject.installation.limits.startMovement;
    const found = startMovements(subject);
    const shared = {
      kind: 'compared' as const,
      limit: limit?.value,
      missing: 'checks.start-movement.no-limit' as const,
      ...(limit && { basis: citationOf(limit, LIMIT) }),
    };
    if (found.length === 0) return [{ kind: 'cannot-tell', code: 'checks.start-movement.not-solved' }];
    return found.map(({ condition, movement }) => ({ ...shared, condition, demand: movement }));
  },
});

/** Movement of the motor top at start by one way of working it out. */
export interface StartMovement {
  readonly condition: string;
  readonly by: 'dynamic factor' | 'time history';
  /** From where it stands when running [m]. */
  readonly movement: number;
}

/**
 * Movement of the motor top at its rim while starting, in either sense of the twist by the dynamic factor with supports as they
 * act, and by time history on the modes where the inertia is bounded.
 *
 * @param subject - solved conditions and start
 * @returns movements from the running state [m]; empty where no start was solved
 * @source dynamics
 */
export function startMovements(subject: Subject): readonly StartMovement[] {
  const { startUp, layout, installation } = subject;
  const foot = motorPoint(layout.frame.points);
  const seatPlace = layout.frame.points[foot];
  if (startUp === undefined || startUp.kind === 'fails' || seatPlace === undefined) return [];
  const { position, outline } = installation.pump;
  const top = [position[0], position[1], position[2] + outline.motorTop.value] as const;
  const arm = subtract(top, seatPlace);
  const solved = solvedConditions(subject);
  const topIn = (condition: SolvedCondition | undefined) => {
    const seat = condition?.solved.movements[foot];
    return seat && movedMovement(seat, arm);
  };
  const running = topIn(ofRole(solved, 'running'));
  const byFactor = ofRoles(solved, ['start']).flatMap((condition): readonly StartMovement[] => {
    const moved = topIn(condition);
    if (running === undefined || moved === undefined) return [];
    const sway = subtract(moved.translation, running.translation);
    const turn = moved.rotation[2] - running.rotation[2];
    const movement = rimMovement(sway, turn, outline.motorDiameter.value / 2);
    return [{ condition: condition.name, by: 'dynamic factor', movement }];
  });
  const histories = startUp.runs.map(({ top: moved }) => moved.byHistory);
  return histories.length === 0
    ? byFactor
    : [
        ...byFactor,
        {
          condition: conditionId({ kind: 'start', sense: 'forward' }),
          by: 'time history',
          movement: Math.max(...histories),
        },
      ];
}

function plain(data: Readonly<Record<string, unknown>>): Readonly<Record<string, string | number>> {
  return Object.fromEntries(
    Object.entries(data).filter(
      (entry): entry is [string, string | number] =>
        typeof entry[1] === 'string' || typeof entry[1] === 'number',
    ),
  );
}
