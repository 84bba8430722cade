import type { Movement, Vec3, Wrench } from '../../model/conventions.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import { type NozzleAxes, nozzleAxes } from '../../model/nozzle-axes.js';
import { scale } from '../../model/vector.js';
import { addWrench, reversedWrench } from '../frame/elements/rigid-arm.js';
import { wrenchOnBody } from '../frame/recovery/wrench-on-body.js';
import { type Disturbed, standingFrame } from '../frame/standing-frame.js';
import { staysAsIs } from '../frame/stays-as-is.js';
import { openedJoint } from './opened-joint.js';

/** One of the six ways in which two faces may miss each other. */
export type MisfitWay = 'gap' | 'rise' | 'offset' | 'twist' | 'tilt-sideways' | 'tilt-upright';

/** A nozzle as the mechanics needs it: its point on the pump, and its outward axis [-]. */
export interface NozzleFace {
  readonly which: 'suction' | 'discharge';
  readonly point: string;
  readonly axis: Vec3;
}

/** What pulling one unit of misfit shut does to the pump. */
export interface ClosingLoad {
  readonly way: MisfitWay;
  /** Per metre [N/m], [N·m/m] or, for twist and tilts, per radian [N/rad], [N·m/rad]; as the pipe acts on the pump. */
  readonly own: Wrench;
  /** The same on the other nozzle, about its own face. */
  readonly other?: Wrench;
}

/** The closing stiffness of the joint between a nozzle and its line. */
export interface JointClosing {
  readonly which: NozzleFace['which'];
  readonly axes: NozzleAxes;
  readonly loads: Readonly<Record<MisfitWay, ClosingLoad>>;
  /**
   * What pulling a given misfit shut adds to the load on the nozzle, supports letting go and taking hold as they then do
   * [N], [N·m]; the misfit in [m] or [rad].
   */
  readonly pulled: (way: MisfitWay, misfit: number) => Wrench;
}

/**
 * What each unit of misfit at a nozzle costs when the bolts pull it shut.
 *
 * The joint between pump and line is opened and closed again with one face out of place; both sides give: the line on
 * its supports, and the pump on the other line. With F the movement of each free side for a unit wrench at its face,
 * the stiffness is that of both in series,
 *
 *     K = (F_pump side + F_line side)⁻¹
 *
 * which is what a rigid joint with a misfit gives, also where one side alone would fall.
 *
 * Ways, of the line's face against the pump's before closing: `gap` away from the pump, `rise` up, `offset` across to
 * the right-handed side, `twist` about the axis, `tilt-upright` about the upright, `tilt-sideways` about the cross axis.
 *
 * @param frame - the frame
 * @param condition - the state in which supports are taken to stay, usually filled
 * @param pump - name of the body that is the pump [-]
 * @param nozzles - the nozzle at which it is closed, then the other if there is one
 * @returns loads on the pump per unit [N/m], [N·m/rad]; undefined where no line stands at the nozzle
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function jointClosing(
  frame: Frame,
  condition: FrameCondition,
  pump: string,
  nozzles: readonly [NozzleFace, ...NozzleFace[]],
): JointClosing | undefined {
  const [nozzle, other] = nozzles;
  const opened = openedJoint(frame, { body: pump, point: nozzle.point, axis: nozzle.axis });
  if (opened === undefined) return undefined;
  const closed: Frame = { ...opened.frame, joints: [...opened.frame.joints, opened.joint] };
  const standing = standingFrame(closed, condition);
  const axes = nozzleAxes(nozzle.axis);
  const misfitOf = (way: MisfitWay, amount: number): Readonly<Record<string, Movement>> => {
    const { acts, direction } = wayOf(way, axes);
    // The line's face stands off by the misfit; closing brings it back.
    const back = scale(direction, -amount);
    const apart: Movement =
      acts === 'translation'
        ? { translation: back, rotation: [0, 0, 0] }
        : { translation: [0, 0, 0], rotation: back };
    return { [opened.joint.name]: apart };
  };
  const before = reversedWrench(wrenchOnBody(closed, condition, standing.response, pump, nozzle.point));
  const units = new Map<MisfitWay, Disturbed>();
  const unit = (way: MisfitWay): Disturbed => {
    const known = units.get(way) ?? standing.disturb({ misfit: misfitOf(way, 1) });
    units.set(way, known);
    return known;
  };
  const pulled = (way: MisfitWay, amount: number): Wrench => {
    const { condition: still, response } = unit(way);
    if (staysAsIs(standing, unit(way), amount)) {
      const { force, moment } = wrenchOnBody(closed, still, response, pump, nozzle.point);
      return { force: scale(force, amount), moment: scale(moment, amount) };
    }
    const acting = { ...condition, misfit: misfitOf(way, amount) };
    return addWrench(wrenchOnBody(closed, acting, standing.solve(acting), pump, nozzle.point), before);
  };
  const load = (way: MisfitWay): ClosingLoad => {
    const { condition: still, response } = unit(way);
    const on = (point: string) => wrenchOnBody(closed, still, response, pump, point);
    return { way, own: on(nozzle.point), ...(other && { other: on(other.point) }) };
  };
  return {
    which: nozzle.which,
    axes,
    pulled,
    loads: {
      gap: load('gap'),
      rise: load('rise'),
      offset: load('offset'),
      twist: load('twist'),
      'tilt-upright': load('tilt-upright'),
      'tilt-sideways': load('tilt-sideways'),
    },
  };
}

/**
 * Direction of one way of missing.
 *
 * @param way - the way
 * @param axes - axes of the nozzle
 * @returns unit vector, and whether it is a movement or a turn
 * @source statics
 */
export function wayOf(
  way: MisfitWay,
  axes: NozzleAxes,
): { readonly acts: 'translation' | 'rotation'; readonly direction: Vec3 } {
  switch (way) {
    case 'gap':
      return { acts: 'translation', direction: axes.along };
    case 'rise':
      return { acts: 'translation', direction: axes.upright };
    case 'offset':
      return { acts: 'translation', direction: axes.across };
    case 'twist':
      return { acts: 'rotation', direction: axes.along };
    case 'tilt-upright':
      return { acts: 'rotation', direction: axes.upright };
    case 'tilt-sideways':
      return { acts: 'rotation', direction: axes.across };
  }
}
