import { EngineError } from '../../issues/issue.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameCondition, FrameJoint } from '../../model/frame/frame.js';
import { dot } from '../../model/vector.js';
import { jointAxis, movementAcross } from '../frame/elements/joint-element.js';
import { wrenchOnBody } from '../frame/recovery/wrench-on-body.js';
import type { ConditionResponse, Response } from '../frame/response.js';
import { solveFrame } from '../frame/solve-frame.js';

/** A flexible connector that is asked about. */
export interface Connector {
  /** Name of its joint. */
  readonly joint: string;
  /** Area on which the pressure pushes its sides apart [m²], also where rods take that push. */
  readonly thrustArea: number;
  /** True where rods hold its length from the start. */
  readonly isTied: boolean;
}

/** A face of a body at which the push is read. */
export interface ReadFace {
  readonly name: string;
  readonly body: string;
  readonly point: string;
  /** Outward unit vector. */
  readonly axis: Vec3;
}

/** What a connector does in one condition. */
export interface ConnectorEffect {
  readonly condition: string;
  /** Gauge [Pa]. */
  readonly pressure: number;
  /** Pressure times area [N]. */
  readonly thrust: number;
  readonly rods: 'none' | 'tied' | 'slack' | 'engaged';
  /** Pull in all rods together, from the pressure and from the line [N]. */
  readonly rodTension: number;
  /** What of the thrust no rod carries: it goes to whatever stands on either side; never negative [N]. */
  readonly unheld: number;
  /** Movement of its two sides apart along its axis [m]. */
  readonly lengthening: number;
  /** Axial force at each face, positive where the pipe pulls [N]. */
  readonly faces: readonly {
    readonly name: string;
    readonly axialForce: number;
    /** With a rigid piece of pipe in place of the connector; absent where that could not be solved. */
    readonly without?: number;
  }[];
}

/**
 * What a flexible connector does to the pump under pressure.
 *
 *     thrust = p A,   unheld = thrust − rod tension
 *
 * @param frame - the frame
 * @param response - its solution
 * @param connector - the connector, its area [m²]
 * @param faces - where the axial force is read
 * @param conditions - names of the conditions to look at; those that are not there or removed a body are left out [-]
 * @returns one entry a condition [N], [m]
 * @source statics
 */
export function connectorEffects(
  frame: Frame,
  response: Response,
  connector: Connector,
  faces: readonly ReadFace[],
  conditions: readonly string[],
): readonly ConnectorEffect[] {
  const joint = frame.joints.find(({ name }) => name === connector.joint);
  if (joint === undefined) return [];
  const asked = frame.conditions.filter(
    ({ name, removed }) => conditions.includes(name) && removed.length === 0,
  );
  const rigid = withPipeInstead(frame, joint, asked);
  return asked.flatMap((acting) => {
    const solved = response.conditions[acting.name];
    if (solved === undefined) return [];
    const thrust = acting.pressure * connector.thrustArea;
    const { rods, tension, lengthening } = jointAction(frame, joint, connector, solved, thrust);
    const instead = rigid?.conditions[acting.name];
    return [
      {
        condition: acting.name,
        pressure: acting.pressure,
        thrust,
        rods,
        rodTension: tension,
        unheld: rods === 'tied' ? 0 : Math.max(0, thrust - tension),
        lengthening,
        faces: faces.map(({ name, body, point, axis }) => {
          const force = (answer: ConditionResponse) =>
            dot(wrenchOnBody(frame, acting, answer, body, point).force, axis);
          return {
            name,
            axialForce: force(solved),
            ...(instead !== undefined && { without: force(instead) }),
          };
        }),
      },
    ];
  });
}

function jointAction(
  frame: Frame,
  joint: FrameJoint,
  { isTied }: Connector,
  solved: ConditionResponse,
  thrust: number,
) {
  const [from, to] = [frame.points[joint.from], frame.points[joint.to]];
  const [fromMoved, toMoved] = [solved.movements[joint.from], solved.movements[joint.to]];
  const wrench = solved.joints[joint.name];
  if (!from || !to || !fromMoved || !toMoved || !wrench) {
    return { rods: 'none', tension: 0, lengthening: 0 } as const;
  }
  const axis = jointAxis(joint, { from, to });
  const lengthening = dot(movementAcross({ from, to }, fromMoved, toMoved).translation, axis);
  const state = solved.jointStates?.[joint.name];
  if (state?.rods !== undefined)
    return { rods: state.rods, tension: state.rodTension ?? 0, lengthening } as const;
  if (!isTied) return { rods: 'none', tension: 0, lengthening } as const;
  // The joint as a whole passes on what the line puts in; the rods carry that and the thrust inside it.
  const passed = -dot(wrench.to.force, axis);
  return { rods: 'tied', tension: Math.max(0, thrust + passed), lengthening } as const;
}

/** The frame solved with the connector as a rigid piece of pipe; undefined where that does not stand. */
function withPipeInstead(frame: Frame, joint: FrameJoint, conditions: readonly FrameCondition[]) {
  const rigid = Number.POSITIVE_INFINITY;
  const { rodGap: _, freeRotation: __, ...plain } = joint;
  const pipe: FrameJoint = {
    ...plain,
    axial: rigid,
    lateral: rigid,
    torsion: rigid,
    bending: rigid,
    thrustArea: 0,
  };
  try {
    return solveFrame({
      ...frame,
      joints: frame.joints.map((other) => (other === joint ? pipe : other)),
      conditions: conditions.map((condition) => ({ ...condition, whatIf: true })),
    });
  } catch (error) {
    if (error instanceof EngineError) return undefined;
    throw error;
  }
}
