import type { Installation, Sourced } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { boreArea } from '../frame/bore-area.js';
import { inertiaBaseAt } from '../frame/pump-body.js';
import { add, between } from '../vector.js';
import type { WeightRow } from './layout.js';
import type { PlacedPart } from './place-parts.js';

/**
 * The weight table: one row for the casing, the motor and every part, dry, contents (filled) and insulation apart.
 *
 * @param installation - densities [kg/m³]
 * @param placed - parts in walking order
 * @returns rows with masses [kg]
 * @source statics
 */
export function placedWeights(
  installation: Installation,
  placed: readonly PlacedPart[],
): readonly WeightRow[] {
  const { pump, service } = installation;
  const density = service.density.filled.value;
  const casing: WeightRow = {
    part: 'pump casing',
    line: 'pump',
    dry: pump.casing.mass.value,
    contents: pump.contents.value * density,
    covering: 0,
    at: add(pump.position, pump.casing.centre),
    mass: pump.casing.mass,
  };
  const motor: WeightRow = {
    part: 'motor',
    line: 'pump',
    dry: pump.motor.mass.value,
    contents: 0,
    covering: 0,
    at: add(pump.position, pump.motor.centre),
    mass: pump.motor.mass,
  };
  const base = pump.base?.inertiaBase;
  const at = inertiaBaseAt(pump);
  const under: readonly WeightRow[] =
    base === undefined || at === undefined
      ? []
      : [
          {
            part: 'inertia base',
            line: 'pump',
            dry: base.mass.value,
            contents: 0,
            covering: 0,
            at,
            mass: base.mass,
          },
        ];
  return [casing, motor, ...under, ...lineWeights(placed, density)];
}

function lineWeights(placed: readonly PlacedPart[], density: number): readonly WeightRow[] {
  return placed.flatMap((step) => {
    const own = partWeight(step, density);
    const side = step.side === undefined ? [] : lineWeights(step.side.parts, density);
    return [...(own === undefined ? [] : [own]), ...side];
  });
}

function partWeight(step: PlacedPart, density: number): WeightRow | undefined {
  const mass = partMass(step);
  if (mass === undefined) return undefined;
  return {
    part: step.part.name,
    line: step.line,
    dry: mass.value,
    contents: partVolume(step) * density,
    covering: coveringMass(step),
    at: weightPoint(step),
    mass,
  };
}

function partMass(step: PlacedPart): Sourced | undefined {
  const { part } = step;
  if (part.kind === 'straight') {
    return {
      value: part.section.massPerLength.value * part.length,
      origin: part.section.massPerLength.origin,
    };
  }
  return 'mass' in part ? part.mass : undefined;
}

/** Liquid held by a part, as the frame counts it [m³]. */
function partVolume(step: PlacedPart): number {
  const { part } = step;
  const bore = boreArea(part.section);
  switch (part.kind) {
    case 'valve':
    case 'suction-diffuser':
      return part.contents.value;
    case 'tee': {
      const run = boreArea(part.runSection);
      const branch = boreArea(part.branchSection);
      return 2 * run * part.centreToRunEnd.value + branch * part.centreToBranchEnd.value;
    }
    case 'reducer':
      return taperVolume(step);
    case 'flange':
      return bore * part.length.value;
    case 'flexible-connector':
      return bore * part.length;
    case 'straight':
    case 'elbow':
      return bore * (step.end - step.start);
    default:
      return 0;
  }
}

/** The frame cuts a reducer into four even steps; the table counts the same water. */
function taperVolume(step: PlacedPart): number {
  const { part } = step;
  if (part.kind !== 'reducer') return 0;
  const length = Math.hypot(...([0, 1, 2] as const).map((axis) => step.to.at[axis] - step.from.at[axis]));
  return [0.125, 0.375, 0.625, 0.875].reduce((sum, share) => {
    const mix = (near: number, far: number): number => near + (far - near) * share;
    const tube = {
      outsideDiameter: mix(part.section.outsideDiameter, part.to.outsideDiameter),
      wall: mix(part.section.wall, part.to.wall),
    };
    return sum + (boreArea(tube) * length) / 4;
  }, 0);
}

function coveringMass(step: PlacedPart): number {
  const { part } = step;
  if (part.covering === undefined || part.kind === 'suction-diffuser') return 0;
  const length =
    part.kind === 'tee'
      ? 2 * part.centreToRunEnd.value + part.centreToBranchEnd.value
      : step.end - step.start;
  return part.covering.massPerLength.value * length;
}

function weightPoint(step: PlacedPart): Vec3 {
  if (step.part.kind === 'elbow' && step.middle !== undefined) return arcCentroid(step, step.middle.at);
  if (step.part.kind === 'tee' && step.centre !== undefined) return step.centre.at;
  if (step.part.kind === 'suction-diffuser' && step.centre !== undefined) return step.centre.at;
  return between(step.from.at, step.to.at, 0.5);
}

/**
 * Centre of gravity of an elbow: on the line from the middle of its arc to the middle of its chord, at the share
 * (1 − sin h / h) / (1 − cos h) of it, h half the angle it turns [rad].
 *
 * @source statics
 */
function arcCentroid(step: PlacedPart, middle: Vec3): Vec3 {
  const chord = between(step.from.at, step.to.at, 0.5);
  const length = ([0, 1, 2] as const).map((axis) => step.to.at[axis] - step.from.at[axis]);
  const rise = ([0, 1, 2] as const).map((axis) => middle[axis] - chord[axis]);
  // Rise over half the chord is (1 − cos h) / sin h, the tangent of h / 2.
  const half = 2 * Math.atan2(Math.hypot(...rise), Math.hypot(...length) / 2);
  if (half === 0) return middle;
  return between(middle, chord, (1 - Math.sin(half) / half) / (1 - Math.cos(half)));
}
