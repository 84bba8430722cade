import { EngineError } from '../../../issues/issue.js';
import type { Vec3, Wrench } from '../../../model/conventions.js';
import type { Frame, FrameCondition } from '../../../model/frame/frame.js';
import { scale, subtract } from '../../../model/vector.js';
import { addWrench, movedWrench, NO_WRENCH, reversedWrench } from '../elements/rigid-arm.js';
import { lumpMass } from '../present-mass.js';
import type { ConditionResponse } from '../response.js';

/**
 * What everything outside exerts on a rigid body at one of its points, about that point: for a nozzle, the load of
 * the pipe on the pump.
 *
 * Members, joints, supports and loads at the point count whole. Other bodies joined there are cut off from this one:
 * everything on the far side of the cut (weights, members, joints, supports, loads, further bodies) is summed and
 * carried to the point.
 *
 *     W = Σ over the far side of (force, moment + arm × force)
 *
 * @param frame - the frame solved
 * @param condition - the condition solved, for weights and bodies removed
 * @param response - its response
 * @param body - name of the body [-]
 * @param point - one of its points [-]
 * @returns force [N] and moment about the point [N·m], plan axes
 * @throws EngineError `mechanics.not-of-body` when the body does not stand or has no such point;
 *   `mechanics.rigid-loop` when the far side leads back to the body by another point; data: `body`, `point`
 * @source statics
 */
export function wrenchOnBody(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  body: string,
  point: string,
): Wrench {
  const { bodies, bodiesAt } = neighbours(frame);
  const own = bodies.get(body);
  if (own === undefined || !own.points.includes(point) || condition.removed.includes(body)) {
    throw new EngineError('mechanics.not-of-body', { body, point, condition: condition.name });
  }
  const standing = (name: string) =>
    (bodiesAt.get(name) ?? []).filter((other) => other !== body && !condition.removed.includes(other));
  const seenPoints = new Set([point]);
  const seenBodies = new Set(standing(point));
  const about = frame.points[point]!;
  let total = actsAt(frame, condition, response, point);
  for (const name of seenBodies) {
    const other = bodies.get(name)!;
    for (const lump of other.masses) {
      const weight: Wrench = {
        force: scale(condition.gravity, lumpMass(lump, condition)),
        moment: [0, 0, 0],
      };
      total = addWrench(total, movedWrench(weight, subtract(lump.at, about)));
    }
    for (const far of other.points) {
      if (seenPoints.has(far)) continue;
      if (own.points.includes(far)) throw new EngineError('mechanics.rigid-loop', { body, point });
      seenPoints.add(far);
      const arm: Vec3 = subtract(frame.points[far]!, about);
      total = addWrench(total, movedWrench(actsAt(frame, condition, response, far), arm));
      // A set grows while it is walked, so bodies further out follow in turn.
      for (const further of standing(far)) seenBodies.add(further);
    }
  }
  return total;
}

/** Members, joints, supports and loads at a point, as they act on it. */
function actsAt(frame: Frame, condition: FrameCondition, response: ConditionResponse, point: string): Wrench {
  const { members, joints, supports } = neighbours(frame);
  let total = NO_WRENCH;
  for (const { name, side } of members.get(point) ?? []) {
    total = addWrench(total, reversedWrench(response.members[name]![side]));
  }
  for (const { name, side } of joints.get(point) ?? []) {
    total = addWrench(total, response.joints[name]![side]);
  }
  for (const name of supports.get(point) ?? []) {
    total = addWrench(total, reversedWrench(response.supports[name]!.load));
  }
  for (const load of condition.loads) if (load.point === point) total = addWrench(total, load.wrench);
  return total;
}

interface Neighbours {
  readonly bodies: ReadonlyMap<string, Frame['bodies'][number]>;
  readonly bodiesAt: ReadonlyMap<string, readonly string[]>;
  readonly members: ReadonlyMap<string, readonly EndOf[]>;
  readonly joints: ReadonlyMap<string, readonly EndOf[]>;
  readonly supports: ReadonlyMap<string, readonly string[]>;
}

interface EndOf {
  readonly name: string;
  readonly side: 'from' | 'to';
}

const known = new WeakMap<Frame, Neighbours>();

/** What meets at each point; worked out once for each frame. */
function neighbours(frame: Frame): Neighbours {
  const before = known.get(frame);
  if (before !== undefined) return before;
  const gather = <Item>(pairs: readonly (readonly [string, Item])[]) => {
    const map = new Map<string, Item[]>();
    for (const [point, item] of pairs) {
      const list = map.get(point);
      if (list === undefined) map.set(point, [item]);
      else list.push(item);
    }
    return map;
  };
  const ends = (items: readonly { readonly name: string; readonly from: string; readonly to: string }[]) =>
    gather(
      items.flatMap(({ name, from, to }): (readonly [string, EndOf])[] => [
        [from, { name, side: 'from' }],
        [to, { name, side: 'to' }],
      ]),
    );
  const found: Neighbours = {
    bodies: new Map(frame.bodies.map((body) => [body.name, body])),
    bodiesAt: gather(frame.bodies.flatMap((body) => body.points.map((at) => [at, body.name] as const))),
    members: ends(frame.members),
    joints: ends(frame.joints),
    supports: gather(frame.supports.map((support) => [support.point, support.name] as const)),
  };
  known.set(frame, found);
  return found;
}
