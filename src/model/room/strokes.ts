import type { Installation } from '../../input/installation.js';
import type { Stroke } from '../layout/layout.js';
import type { NamedPoint, PlacedPart } from '../layout/place-parts.js';
import { add } from '../vector.js';

type Role = Extract<Stroke, { kind: 'straight' }>['role'];

const ROLES: Readonly<Partial<Record<PlacedPart['part']['kind'], Role>>> = {
  straight: 'pipe',
  tee: 'pipe',
  flange: 'flange',
  valve: 'valve',
  reducer: 'reducer',
  'suction-diffuser': 'diffuser',
  'flexible-connector': 'connector',
};

/**
 * What to draw, piece by piece, in walking order; the pump between its ports comes first.
 *
 * @param installation - for the pump
 * @param placed - parts in walking order, places in [m]
 * @returns strokes with places and diameters in [m]
 */
export function strokes(installation: Installation, placed: readonly PlacedPart[]): readonly Stroke[] {
  const { pump } = installation;
  const suction = add(pump.position, pump.ports.suction.position);
  const discharge = add(pump.position, pump.ports.discharge.position);
  const body: Stroke = {
    kind: 'straight',
    name: 'pump',
    line: 'pump',
    from: suction,
    to: discharge,
    diameter: pump.outline.casingDiameter.value,
    points: ['pump suction', 'pump discharge'],
    role: 'pump',
  };
  return [body, ...lineStrokes(placed)];
}

function lineStrokes(placed: readonly PlacedPart[]): readonly Stroke[] {
  return placed.flatMap((step) => {
    const { part, line } = step;
    const diameter = part.section.outsideDiameter;
    const role = ROLES[part.kind];
    const straight = (from: NamedPoint, to: NamedPoint, width = diameter): Stroke => ({
      kind: 'straight',
      name: part.name,
      line,
      from: from.at,
      to: to.at,
      diameter: width,
      points: [from.name, to.name],
      role: role ?? 'pipe',
    });
    if (part.kind === 'elbow' && step.centre !== undefined) {
      const arc: Stroke = {
        kind: 'arc',
        name: part.name,
        line,
        from: step.from.at,
        to: step.to.at,
        centre: step.centre.at,
        diameter,
        points: [step.from.name, step.to.name],
      };
      return [arc];
    }
    if (part.kind === 'tee' && step.centre !== undefined && step.side !== undefined) {
      const side = straight(step.centre, step.side.outlet, part.side.section.outsideDiameter);
      return [
        straight(step.from, step.centre),
        straight(step.centre, step.to, part.runSection.outsideDiameter),
        side,
        ...lineStrokes(step.side.parts),
      ];
    }
    if (part.kind === 'suction-diffuser' && step.centre !== undefined) {
      return [straight(step.from, step.centre), straight(step.centre, step.to, part.to.outsideDiameter)];
    }
    return role === undefined ? [] : [straight(step.from, step.to)];
  });
}
