import type { Vec3 } from '../../model/conventions.js';
import type { FrameSupport, Restraint } from '../../model/frame/frame.js';
import { add, dot, norm, scale } from '../../model/vector.js';
import type { Disturbed, StandingFrame } from './standing-frame.js';

/**
 * Whether every support goes on doing what it does when a disturbance comes on so many times: then the linear answer is
 * the whole answer. What pushes must go on pushing, what is clear of its support must stay clear, springs must stay
 * within their travel, what sticks must find the friction it needs. Joints with play are taken to change.
 *
 * @param standing - the frame as it stands [N], [m]
 * @param disturbed - what one disturbance does [N], [m]
 * @param times - how many of it, of either sense [-]
 * @returns true where no support changes what it does
 * @source statics
 */
export function staysAsIs(standing: StandingFrame, disturbed: Disturbed, times: number): boolean {
  const { frame } = standing;
  if (frame.joints.some(({ rodGap, freeRotation }) => rodGap !== undefined || freeRotation !== undefined)) {
    return false;
  }
  return frame.supports.every((support) =>
    support.restraints.every((restraint, index) =>
      restraintStays(standing, disturbed, times, { support, restraint, index }),
    ),
  );
}

function restraintStays(
  standing: StandingFrame,
  disturbed: Disturbed,
  times: number,
  of: { readonly support: FrameSupport; readonly restraint: Restraint; readonly index: number },
): boolean {
  const { support, restraint, index } = of;
  const { direction, sense, gap, travel, friction } = restraint;
  const isTwoWay = sense === 'both' && gap === 0;
  if (isTwoWay && travel === undefined && friction === 0) return true;
  const before = standing.response.supports[support.name]!;
  const change = disturbed.response.supports[support.name]!;
  const state = before.states[index];
  if (state === 'absent' || state === 'stopped') return true;
  if (state === 'slipping') return false;
  if (state === 'lifted' || state === 'in gap') {
    const carried = standing.condition.imposed?.[support.name] ?? [0, 0, 0];
    const place = (movement: Vec3) => dot(movement, direction);
    const now =
      place(standing.response.movements[support.point]!.translation) - place(carried) - restraint.imposed;
    const later = now + times * place(disturbed.response.movements[support.point]!.translation);
    return later > -gap && (sense === 'push' || later < gap);
  }
  // What pushes along the direction; across it acts friction, or a rod that leans.
  const then = add(before.load.force, scale(change.load.force, times));
  const pushed = -dot(before.load.force, direction);
  const pushes = -dot(then, direction);
  const rubs = norm(add(then, scale(direction, pushes)));
  if (friction > 0 && rubs > friction * Math.abs(pushes)) return false;
  if (travel !== undefined && (pushes < travel.least || pushes > travel.most)) return false;
  return isTwoWay || pushed * pushes > 0;
}
