import { EngineError } from '../../issues/issue.js';
import type { Movement, Vec3, Wrench } from '../../model/conventions.js';
import type { FrameCondition } from '../../model/frame/frame.js';
import { between, cross, scale, subtract } from '../../model/vector.js';
import { jointAxis } from './elements/joint-element.js';
import { memberStrain, thermalStrain } from './elements/thermal-strain.js';
import type { PreparedFrame } from './prepare-frame.js';
import { lumpMass, massPerLength } from './present-mass.js';
import type { Clusters } from './system/cluster.js';

/** Everything that acts in one condition, by element and by point. */
export interface ConditionLoads {
  readonly condition: FrameCondition;
  /** Free movement of the `to` end of each element, six numbers an element [m], [rad]. */
  readonly freeMovement: Float64Array;
  /** Weight of each element, three numbers an element [N]. */
  readonly weight: Float64Array;
  /** Forces on points, six numbers a point [N], [N·m]. */
  readonly pointForces: Float64Array;
  /** Growth of the points of hot or cold bodies against the first point of their cluster, three numbers a point [m]. */
  readonly growth: Float64Array;
  /** Movement across a joint, by its number, at which its rigid directions stand: rods at their gap, play used up. */
  readonly play?: ReadonlyMap<number, Movement>;
}

/**
 * Works out what acts in a condition: weight of members, lumps and joints, heat, pressure and further loads.
 *
 *     element:  weight w = m g per length,  free movement D w + ε a
 *     lump:     F = m g at its place, carried to the first point of its body
 *     joint:    half its weight at each end; pressure pushes the two sides apart with p × area along its axis
 *
 * @param prepared - the frame
 * @param clusters - bodies and joints that stand
 * @param condition - what acts
 * @returns loads [N], [N·m], free movements and growth [m]
 * @throws EngineError `mechanics.expansion-unknown`; `mechanics.load-on-nothing` when a load acts on a point to which
 *   nothing is joined; data: `point`, `condition`
 * @source statics
 */
export function conditionLoads(
  prepared: PreparedFrame,
  clusters: Clusters,
  condition: FrameCondition,
): ConditionLoads {
  const { frame, elementCount, places } = prepared;
  const loads: ConditionLoads = {
    condition,
    freeMovement: new Float64Array(6 * elementCount),
    weight: new Float64Array(3 * elementCount),
    pointForces: new Float64Array(6 * places.length),
    growth: new Float64Array(3 * places.length),
  };
  const step = { from: frame.installationTemperature, to: condition.temperature };
  loadMembers(prepared, condition, loads);
  for (const { point, before, body } of clusters.growth) {
    const material = body === undefined ? undefined : frame.bodies[body]!.material;
    const strain = material === undefined ? 0 : thermalStrain(frame.materials[material]!, material, step);
    for (let i = 0; i < 3; i++) {
      const arm = places[point]![i]! - places[before]![i]!;
      loads.growth[3 * point + i] = loads.growth[3 * before + i]! + strain * arm;
    }
  }
  frame.bodies.forEach((body, index) => {
    if (clusters.bodyStands[index] === false) return;
    const point = prepared.pointNumber.get(body.points[0]!)!;
    for (const lump of body.masses) {
      const force = scale(condition.gravity, lumpMass(lump, condition));
      addPointForce(loads.pointForces, point, force, cross(subtract(lump.at, places[point]!), force));
    }
  });
  frame.joints.forEach((_, index) => {
    if (clusters.jointStands[index] === false) return;
    const [from, to] = jointLoads(prepared, index, condition);
    addPointForce(loads.pointForces, prepared.from[prepared.memberCount + index]!, from.force, from.moment);
    addPointForce(loads.pointForces, prepared.to[prepared.memberCount + index]!, to.force, to.moment);
  });
  for (const { point: name, wrench } of condition.loads) {
    const point = prepared.pointNumber.get(name)!;
    if (clusters.nodeOf[point] === -1) {
      throw new EngineError('mechanics.load-on-nothing', { point: name, condition: condition.name });
    }
    addPointForce(loads.pointForces, point, wrench.force, wrench.moment);
  }
  return loads;
}

function loadMembers(prepared: PreparedFrame, condition: FrameCondition, loads: ConditionLoads): void {
  const { frame, weightMovement, arm, length } = prepared;
  for (let e = 0; e < prepared.memberCount; e++) {
    const member = frame.members[e]!;
    const mass = massPerLength(member, condition);
    const strain = memberStrain(frame, member, condition);
    for (let j = 0; j < 3; j++) loads.weight[3 * e + j] = mass * condition.gravity[j]! * length[e]!;
    for (let i = 0; i < 6; i++) {
      let value = i < 3 ? strain * arm[3 * e + i]! : 0;
      for (let j = 0; j < 3; j++) value += weightMovement[18 * e + 3 * i + j]! * mass * condition.gravity[j]!;
      loads.freeMovement[6 * e + i] = value;
    }
  }
}

/**
 * What a joint does to its two points besides its springs: half its weight to each, and pressure pushing them apart
 * along the axis through its middle.
 *
 * @param prepared - the frame
 * @param index - number of the joint [-]
 * @param condition - gravity [m/s²], pressure [Pa]
 * @returns wrench on the `from` point and on the `to` point [N], [N·m]
 * @source statics
 */
export function jointLoads(
  prepared: PreparedFrame,
  index: number,
  condition: FrameCondition,
): readonly [Wrench, Wrench] {
  const joint = prepared.frame.joints[index]!;
  const from = prepared.places[prepared.from[prepared.memberCount + index]!]!;
  const to = prepared.places[prepared.to[prepared.memberCount + index]!]!;
  const thrust = scale(jointAxis(joint, { from, to }), condition.pressure * joint.thrustArea);
  const half = scale(condition.gravity, joint.mass / 2);
  const middle = between(from, to, 0.5);
  const side = (place: Vec3, sign: number): Wrench => {
    const push = scale(thrust, sign);
    return {
      force: [push[0] + half[0], push[1] + half[1], push[2] + half[2]],
      moment: cross(subtract(middle, place), push),
    };
  };
  return [side(from, -1), side(to, 1)];
}

function addPointForce(forces: Float64Array, point: number, force: Vec3, moment: Vec3): void {
  for (let i = 0; i < 3; i++) {
    forces[6 * point + i]! += force[i]!;
    forces[6 * point + 3 + i]! += moment[i]!;
  }
}
