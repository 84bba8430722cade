import type { Vec3 } from '../input/installation.js';
import type { Citation } from '../sources/index.js';
import { citationOf } from './citation-of.js';
import { defineCheck, type Reading } from './define-check.js';
import type { Subject } from './finding.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: "the maker's dimension for drawing the motor governs",
  confidence: 'read',
};

/** The lowest thing over the motor. */
interface Overhead {
  readonly name: string;
  /** Clear height over the motor; negative where it reaches into it [m]. */
  readonly clear: number;
}

/**
 * The clear height over the motor is enough to draw it.
 *
 * Why: the motor and rotor of a vertical pump come out upward. What stands over the motor on the day of the
 * layout, a beam, a duct, another pipe, is what the crew finds there on the day the seal fails. Lifting gear and its
 * hook need height of their own: the maker's figure or the lifting plan has to include them.
 */
export const headroomOverMotor = defineCheck({
  id: 'headroom-over-motor',
  title: 'Headroom to draw the motor',
  unit: 'm',
  basis: [MAKER],
  exceeds: 'checks.headroom-over-motor.exceeds',
  noPlace: 'checks.headroom-over-motor.no-place',
  places: ({ installation }) => [installation.pump.mark],
  at: () => 'motor',
  readings: (_mark, subject): readonly Reading[] => {
    const { outline } = subject.installation.pump;
    const lowest = lowestOverhead(subject);
    const height = outline.withdrawal;
    const basis = height && { basis: citationOf(height, MAKER) };
    const data = lowest && { overhead: lowest.name };
    if (lowest !== undefined && lowest.clear <= 0) {
      const advice = 'checks.headroom-over-motor.clash';
      return [{ kind: 'forbidden', happens: true, demand: -lowest.clear, advice, ...(data && { data }) }];
    }
    const missing =
      height === undefined ? 'checks.headroom-over-motor.no-height' : 'checks.headroom-over-motor.no-ceiling';
    return [
      {
        kind: 'compared',
        demand: height?.value,
        limit: lowest?.clear,
        missing,
        ...(data && { data }),
        ...basis,
      },
    ];
  },
});

/** The ceiling and every object whose plan overlaps the motor and that reaches above the motor's foot. */
function lowestOverhead({ installation }: Subject): Overhead | undefined {
  const { pump, room } = installation;
  const top = pump.position[2] + pump.outline.motorTop.value;
  const radius = pump.outline.motorDiameter.value / 2;
  const over = room.objects
    .filter(
      ({ low, high }) => high[2] > pump.position[2] && distanceInPlan(pump.position, low, high) < radius,
    )
    .map(({ name, low }) => ({ name, clear: low[2] - top }));
  const ceiling = room.ceiling === undefined ? [] : [{ name: 'ceiling', clear: room.ceiling - top }];
  return [...ceiling, ...over].sort((a, b) => a.clear - b.clear)[0];
}

/** From a point to the nearest edge of a box in plan; zero inside it [m]. */
function distanceInPlan(point: Vec3, low: Vec3, high: Vec3): number {
  const beside = (axis: 0 | 1): number => Math.max(low[axis] - point[axis], point[axis] - high[axis], 0);
  return Math.hypot(beside(0), beside(1));
}
