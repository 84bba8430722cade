import type { Vec3 } from '../conventions.js';
import type { PlacedPart } from '../layout/place-parts.js';
import { between } from '../vector.js';
import { boreArea } from './bore-area.js';
import type { FrameMass } from './frame.js';
import { partSupport } from './part-supports.js';
import type { Pieces } from './pieces.js';

/** Adds a flange, valve or suction diffuser as a rigid body. @param step - placed part [m] @param pieces - grows @returns nothing */
export function addBody(step: PlacedPart, pieces: Pieces): void {
  const { part } = step;
  const points = [...new Set([step.from.name, step.to.name])];
  if (part.kind === 'flange') {
    const at = between(step.from.at, step.to.at, 0.5);
    const masses = [lump(step, part.name, at, part.mass.value, boreArea(part.section) * part.length.value)];
    pieces.bodies.push({
      name: part.name,
      points,
      masses: [...masses, ...coveringLump(step, at)],
      material: part.section.material,
    });
  } else if (part.kind === 'valve') {
    const at = between(step.from.at, step.to.at, 0.5);
    const masses = [
      lump(
        step,
        part.name,
        [at[0] + part.offset[0], at[1] + part.offset[1], at[2] + part.offset[2]],
        part.mass.value,
        0,
      ),
      lump(step, `${part.name} contents`, at, 0, part.contents.value),
    ];
    pieces.bodies.push({
      name: part.name,
      points,
      masses: [...masses, ...coveringLump(step, at)],
      material: part.section.material,
    });
  } else if (part.kind === 'suction-diffuser' && step.centre !== undefined) {
    const masses = [lump(step, part.name, step.centre.at, part.mass.value, part.contents.value)];
    if (part.support !== undefined) {
      pieces.points[step.centre.name] = step.centre.at;
      points.push(step.centre.name);
      pieces.supports.push(partSupport(part.support, step.centre.name));
    }
    pieces.bodies.push({ name: part.name, points, masses, material: part.section.material });
  }
}

/** Adds a flexible connector or a grooved joint as six springs. @param step - placed part [m] @param pieces - grows @returns nothing */
export function addJoint(step: PlacedPart, pieces: Pieces): void {
  const { part } = step;
  if (part.kind !== 'flexible-connector' && part.kind !== 'grooved-joint') return;
  // Taut rods carry the thrust in themselves and hold the length; rods with a gap hold nothing until they engage.
  const taut = part.kind === 'flexible-connector' && part.rods === 'taut';
  const thrustArea = part.kind === 'flexible-connector' && !taut ? part.thrustArea.value : 0;
  pieces.joints.push({
    name: part.name,
    from: step.from.name,
    to: step.to.name,
    axis: step.directionIn,
    ...part.stiffness,
    axial: taut ? Number.POSITIVE_INFINITY : part.stiffness.axial,
    thrustArea,
    mass: part.mass.value,
    ...(part.kind === 'flexible-connector' &&
      part.rods === 'gapped' &&
      part.rodGap !== undefined && { rodGap: part.rodGap }),
    ...(part.kind === 'grooved-joint' &&
      part.freeRotation !== undefined && { freeRotation: part.freeRotation }),
  });
  if (part.kind === 'flexible-connector') {
    const contents = (boreArea(part.section) * part.length) / 2;
    for (const end of [step.from, step.to]) {
      pieces.bodies.push({
        name: `${part.name} water at ${end.name}`,
        points: [end.name],
        masses: [lump(step, `${part.name} contents`, end.at, 0, contents)],
      });
    }
  }
}

/** One lump of mass and contents. @param step - placed part @param name - its name @param at - [m] @param mass - [kg] @param contents - [m³] @returns the lump */
export function lump(step: PlacedPart, name: string, at: Vec3, mass: number, contents: number): FrameMass {
  return { name, at, mass, contents, contentsGroup: step.group };
}

function coveringLump(step: PlacedPart, at: Vec3): readonly FrameMass[] {
  const { covering } = step.part;
  if (covering === undefined) return [];
  const mass = covering.massPerLength.value * (step.end - step.start);
  return [
    {
      name: `${step.part.name} insulation`,
      at,
      mass,
      contents: 0,
      contentsGroup: step.group,
      covering: true,
    },
  ];
}
