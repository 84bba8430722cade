import type { SupportPart } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { PlacedPart } from '../layout/place-parts.js';
import { dot } from '../vector.js';
import type { FrameSupport, Restraint } from './frame.js';

/** Axes of the plan, and upward. */
export const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * A restraint that holds rigidly both ways, to be changed where the support differs.
 *
 * @param direction - unit vector [-]
 * @param acts - on translation or on rotation
 * @returns the restraint, stiffness infinite [N/m] or [N·m/rad]
 */
export function rigidRestraint(direction: Vec3, acts: Restraint['acts'] = 'translation'): Restraint {
  return {
    direction,
    acts,
    stiffness: Number.POSITIVE_INFINITY,
    sense: 'both',
    preload: 0,
    gap: 0,
    imposed: 0,
    friction: 0,
  };
}

/**
 * The frame support of a support part: one restraint per direction held.
 *
 * Hangers hang on rods that lengthen by load over E A / L unless declared rigid, and swing: once loaded they hold
 * sideways with load over rod length. Springs carry their setting at the set position and end at their travel limits.
 * What they are fastened to gives with the stiffness given for it, in series: 1/k = 1/k₁ + 1/k₂; rigid where none is given.
 *
 * @param part - the support as read; stiffness [N/m], lengths [m], loads [N]
 * @param point - name of the point it holds
 * @returns support with stiffness [N/m], preload [N], gap and imposed movement [m], friction [-]
 * @source statics
 */
export function partSupport(part: SupportPart, point: string): FrameSupport {
  const { spring, rods } = part;
  const restraints: Restraint[] = part.holds.map((direction) => ({
    ...rigidRestraint(direction),
    sense: part.oneWay ? 'push' : 'both',
    gap: part.gap ?? 0,
    friction: part.friction ?? 0,
    imposed: part.imposed === undefined ? 0 : dot(part.imposed, direction),
    stiffness: inSeries(rods?.stiffness?.value, part.structure?.value),
    ...(rods?.length !== undefined && { swingLength: rods.length }),
    ...(spring && {
      stiffness: inSeries(spring.rate, part.structure?.value),
      preload: spring.load.value,
      // Where its travel is known, a spring that has topped out goes slack before it could pull down.
      sense:
        spring.minimum !== undefined && spring.maximum !== undefined ? ('push' as const) : ('both' as const),
      ...(spring.minimum !== undefined &&
        spring.maximum !== undefined && { travel: { least: spring.minimum, most: spring.maximum } }),
    }),
  }));
  if (part.holdsRotation) {
    const stiffness = inSeries(part.structureTurning?.value);
    restraints.push(...AXES.map((axis) => ({ ...rigidRestraint(axis, 'rotation'), stiffness })));
  }
  return { name: part.mark, word: part.kind.replace('-', ' '), point, restraints };
}

/**
 * Stiffness of springs one behind the other: 1/k = Σ 1/kᵢ.
 *
 * @param stiffnesses - of each; what is not given or infinite is rigid [N/m] or [N·m/rad]
 * @returns stiffness of all together; Infinity where all are rigid [N/m] or [N·m/rad]
 * @source statics
 */
export function inSeries(...stiffnesses: readonly (number | undefined)[]): number {
  const finite = stiffnesses.filter((one): one is number => one !== undefined && Number.isFinite(one));
  if (finite.length === 1) return finite[0] ?? Number.POSITIVE_INFINITY;
  return 1 / finite.reduce((sum, one) => sum + 1 / one, 0);
}

/**
 * What holds the end of a line, if anything does.
 *
 * @param step - the placed end
 * @returns held in all six freedoms when anchored, elastic when the pipe continues, nothing when free [N/m], [N·m/rad]
 * @source statics
 */
export function endSupport(step: PlacedPart): FrameSupport | undefined {
  const { part } = step;
  if (part.kind !== 'end' || part.end === 'free') return undefined;
  const stiffness = part.stiffness;
  const restraints = AXES.flatMap((axis, index) => {
    const translation = { ...rigidRestraint(axis), stiffness: inSeries(part.structure?.translation.value) };
    const rotation = {
      ...rigidRestraint(axis, 'rotation'),
      stiffness: inSeries(part.structure?.rotation.value),
    };
    if (part.end === 'anchored' || stiffness === undefined) return [translation, rotation];
    return [
      { ...translation, stiffness: stiffness.translation[index] ?? 0 },
      { ...rotation, stiffness: stiffness.rotation[index] ?? 0 },
    ].filter((restraint) => restraint.stiffness > 0);
  });
  return { name: `end of ${step.line}`, word: 'end', point: step.from.name, restraints };
}
