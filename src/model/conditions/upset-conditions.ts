import type { Installation } from '../../input/installation.js';
import { STANDARD_GRAVITY, type Vec3 } from '../conventions.js';
import type { FrameCondition } from '../frame/frame.js';
import { MOTOR_SEAT } from '../frame/pump-body.js';
import type { PlacedSupport } from '../layout/layout.js';
import { supportFacts } from '../support-parts.js';
import { identityOf, type PlanDirection } from './condition-roles.js';

/** How many weight-carrying supports of each line count as near the pump when one of them is taken to be slack. */
const NEAR_SUPPORTS = 2;

/** The four ways a sideways coefficient may act. */
const PLAN_DIRECTIONS: readonly (readonly [PlanDirection, Vec3])[] = [
  ['north', [0, 1, 0]],
  ['south', [0, -1, 0]],
  ['east', [1, 0, 0]],
  ['west', [-1, 0, 0]],
];

/**
 * Conditions beside normal service, made from `filled`:
 *
 * - `pump-out`: the pump and its motor lifted out, both flanges open, the water between each flange and the first
 *   valve that shuts drained, no pressure;
 * - `motor-off`: the motor lifted away, everything else filled;
 * - `slack-<mark>`: each of the two supports nearest the pump on every line taken to carry nothing, one at a time;
 * - `lateral-north` and so on: the sideways coefficient, only where one is given.
 *
 * @param installation - for the pump and the coefficient [-]
 * @param filled - the filled condition
 * @param supports - placed supports, stations in [m]
 * @returns conditions in the order they are printed
 * @source common-practice
 */
export function upsetConditions(
  installation: Installation,
  filled: FrameCondition,
  supports: readonly PlacedSupport[],
): readonly FrameCondition[] {
  const pumpOut: FrameCondition = {
    ...filled,
    ...identityOf('pump-out'),
    whatIf: true,
    pressure: 0,
    drained: ['pump', ...installation.lines.map((line) => `${line.name}, pump side`)],
    removed: ['pump', 'motor'],
    absent: supports.some((support) => support.kind === 'pump base') ? ['pump base'] : [],
  };
  const motorOff: FrameCondition = {
    ...filled,
    ...identityOf('motor-off'),
    whatIf: true,
    removed: ['motor'],
  };
  const slack = nearPump(supports).map((mark) => slackCondition(filled, mark));
  return [pumpOut, motorOff, ...slack, ...lateral(installation, filled)];
}

/**
 * The question what happens when a support carries nothing.
 *
 * @param filled - the filled condition
 * @param mark - mark of the support
 * @returns `filled` without it
 * @source common-practice
 */
export function slackCondition(filled: FrameCondition, mark: string): FrameCondition {
  return { ...filled, ...identityOf({ kind: 'slack', support: mark }), whatIf: true, absent: [mark] };
}

function lateral(installation: Installation, filled: FrameCondition): readonly FrameCondition[] {
  const coefficient = installation.limits.lateral?.coefficient.value;
  if (coefficient === undefined) return [];
  return PLAN_DIRECTIONS.map(([towards, direction]) => ({
    ...filled,
    ...identityOf({ kind: 'lateral', towards }),
    gravity: [
      direction[0] * coefficient * STANDARD_GRAVITY,
      direction[1] * coefficient * STANDARD_GRAVITY,
      -STANDARD_GRAVITY,
    ],
  }));
}

/** Marks of the supports nearest the pump, the first few of each line in walking order. */
function nearPump(supports: readonly PlacedSupport[]): readonly string[] {
  const seen = new Map<string, number>();
  return supports.flatMap((support) => {
    if (!supportFacts(support).adjustable) return [];
    const count = seen.get(support.line) ?? 0;
    seen.set(support.line, count + 1);
    return count < NEAR_SUPPORTS ? [support.mark] : [];
  });
}

/**
 * The two conditions of a start: running, with a moment about the shaft that twists the whole set, in either sense.
 *
 * Marked `whatIf`: a start that no steady state balances is listed as unsolved and ends no review.
 *
 * @param running - the running condition
 * @param twist - moment about the vertical through the shaft that the pipes have to hold, dynamic factor included [N·m]
 * @returns `starting` and `starting-opposite`
 * @source beam-theory (the external twist of the set is inertia times acceleration; a moment on a rigid body is free
 *   to act at any of its points)
 */
export function startingConditions(running: FrameCondition, twist: number): readonly FrameCondition[] {
  const condition = (sense: 'forward' | 'reverse', moment: number): FrameCondition => ({
    ...running,
    ...identityOf({ kind: 'start', sense }),
    whatIf: true,
    loads: [...running.loads, { point: MOTOR_SEAT, wrench: { force: [0, 0, 0], moment: [0, 0, moment] } }],
  });
  return [condition('forward', twist), condition('reverse', -twist)];
}
