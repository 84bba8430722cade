/** The pump as solids: casing, what stands between casing and motor, motor with its terminal box, ports. */
import type { ConvexSolid, Cylinder, Group, TurnedBox } from '../../geometry/index.js';
import { plus, times } from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { Layout } from '../layout/layout.js';

/** An upright cylinder of the pump. */
export interface PumpStage extends Cylinder {
  readonly part: 'base' | 'casing' | 'bracket' | 'motor';
}

/** Solids of the pump in their place. */
export interface PumpSolids {
  /** From the floor up. */
  readonly stages: readonly PumpStage[];
  readonly casing: Cylinder;
  readonly motor: Cylinder;
  /** What is lifted as the motor: motor and terminal box. */
  readonly motorWithBox: Group;
  readonly terminalBox?: TurnedBox;
  /** What is lifted as the casing: casing and ports with their flanges. */
  readonly casingWithPorts: Group;
  /** Window between the shaft ends, by the radius of the guard or of the bracket; absent where none is given. */
  readonly window?: Cylinder;
  /** Lifting eyes of the motor: elevation [m]. */
  readonly eyes: number;
}

/** Part of the diameter of the motor and casing that the bracket between them takes where no guard is given [-]. */
const BRACKET = 0.62;
const BASE = 0.55;

/**
 * The pump by its outline and dimensions. Heights of casing and bracket are in proportion where the file and its
 * assumptions say nothing of them.
 *
 * @param installation - pump, outline and dimensions [m]
 * @param layout - nozzles and joints at them [m]
 * @returns solids [m]
 */
export function pumpSolids(installation: Installation, layout: Layout): PumpSolids {
  const { pump } = installation;
  const { outline, dimensions, base } = pump;
  const top = outline.motorTop.value;
  const casingRadius = outline.casingDiameter.value / 2;
  const motorRadius = outline.motorDiameter.value / 2;
  const { suction, discharge } = layout.nozzles;
  const port = Math.max(suction.section.outsideDiameter, discharge.section.outsideDiameter);
  const half = Math.min(Math.max(0.75 * port, 0.42 * casingRadius), 0.35 * top);
  const above = dimensions?.casingAbove?.value ?? half;
  const below = dimensions?.casingBelow?.value ?? half;
  const foot =
    dimensions?.motorFoot?.value ??
    Math.min(Math.max(2 * pump.motor.centre[2] - top, above + 0.12 * (top - above)), top * 0.8);
  const guard = dimensions?.guardDiameter?.value;
  const bracketRadius = guard === undefined ? Math.min(casingRadius, motorRadius) * BRACKET : guard / 2;
  const at = (height: number): Vec3 => plus(pump.position, [0, 0, height]);
  const upright = (from: number, to: number, radius: number): Cylinder => ({
    kind: 'cylinder',
    from: at(from),
    to: at(to),
    radius,
  });
  const casing = upright(-below, above, casingRadius);
  const motor = upright(foot, top, motorRadius);
  const stands = base !== undefined && pump.mount !== 'hung';
  const baseFoot = stands ? Math.min(base.position[2], -below * 1.05) : 0;
  const spacer = dimensions?.spacer;
  const box = terminalBoxOf(installation);
  return {
    stages: [
      ...(stands ? [{ part: 'base' as const, ...upright(baseFoot, -below, casingRadius * BASE) }] : []),
      { part: 'casing', ...casing },
      { part: 'bracket', ...upright(above, foot, bracketRadius) },
      { part: 'motor', ...motor },
    ],
    casing,
    motor,
    motorWithBox: { kind: 'group', pieces: box === undefined ? [motor] : [motor, box] },
    ...(box && { terminalBox: box }),
    casingWithPorts: { kind: 'group', pieces: [casing, ...portSolids(installation, layout)] },
    ...(spacer && { window: upright(spacer.from, spacer.from + spacer.length.value, bracketRadius) }),
    eyes: pump.position[2] + (dimensions?.eyes?.value ?? top),
  };
}

function terminalBoxOf({ pump }: Installation): TurnedBox | undefined {
  const box = pump.dimensions?.terminalBox;
  if (box === undefined) return undefined;
  const { side, out, width, height, up } = box;
  const reach = pump.outline.motorDiameter.value / 2 + out / 2;
  return {
    kind: 'turned-box',
    centre: plus(plus(pump.position, times(side, reach)), [0, 0, up]),
    size: [width, out, height],
    bearing: Math.atan2(side[0], side[1]),
  };
}

/** Ports from the shaft axis to their faces, and their flanges, which end at the faces. */
function portSolids({ pump }: Installation, layout: Layout): readonly ConvexSolid[] {
  return [layout.nozzles.suction, layout.nozzles.discharge].flatMap((nozzle): readonly ConvexSolid[] => {
    const from: Vec3 = [pump.position[0], pump.position[1], nozzle.at[2]];
    const flange = pump.ports[nozzle.which].flange.outsideDiameter;
    const tube: Cylinder = {
      kind: 'cylinder',
      from,
      to: nozzle.at,
      radius: nozzle.section.outsideDiameter / 2,
    };
    if (flange === undefined) return [tube];
    return [tube, flangeDisc(nozzle.at, times(nozzle.axis, -1), flange)];
  });
}

/**
 * A flange as a disc. Its thickness is taken as an eighth of its diameter, which covers those of class 125 to 300 from
 * NPS 2 on.
 *
 * @param face - centre of its face [m]
 * @param back - unit vector from the face to its back [-]
 * @param diameter - outside diameter [m]
 * @returns the disc [m]
 */
export function flangeDisc(face: Vec3, back: Vec3, diameter: number): Cylinder {
  return { kind: 'cylinder', from: face, to: plus(face, times(back, diameter / 8)), radius: diameter / 2 };
}
