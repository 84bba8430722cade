import type { PipeSection } from '../../input/installation.js';
import type { NamedPoint, PlacedPart } from '../layout/place-parts.js';
import { isSupportPart } from '../support-parts.js';
import { between } from '../vector.js';
import { bendFactors } from './bend-factors.js';
import { endSupport, partSupport } from './part-supports.js';
import type { Pieces } from './pieces.js';
import { addBody, addJoint, lump } from './rigid-pieces.js';

/** Number of steps a tapered reducer is cut into; the error of the stiffness falls with its square and is below 1 % at four. */
const REDUCER_STEPS = 4;

/**
 * Turns placed parts into members, bodies, joints and supports.
 *
 * @param placed - parts of one line in walking order, places in [m]
 * @param stiffEnds - for each elbow name, how many of its ends are stiffened [-]
 * @param pieces - where everything is collected
 * @returns nothing; `pieces` grows
 */
export function addPieces(
  placed: readonly PlacedPart[],
  stiffEnds: Readonly<Record<string, 0 | 1 | 2>>,
  pieces: Pieces,
): void {
  for (const step of placed) {
    pieces.points[step.from.name] = step.from.at;
    pieces.points[step.to.name] = step.to.at;
    addPart(step, stiffEnds, pieces);
    if (step.side !== undefined) addPieces(step.side.parts, stiffEnds, pieces);
  }
}

function addPart(step: PlacedPart, stiffEnds: Readonly<Record<string, 0 | 1 | 2>>, pieces: Pieces): void {
  const { part } = step;
  switch (part.kind) {
    case 'straight':
      addPipe(pieces, step, part.name, step.from, step.to, part.section, part.section.massPerLength.value);
      return;
    case 'elbow':
      addElbow(step, stiffEnds[part.name] ?? 0, pieces);
      return;
    case 'reducer':
      addReducer(step, pieces);
      return;
    case 'tee':
      addTee(step, pieces);
      return;
    case 'flange':
    case 'valve':
    case 'suction-diffuser':
      addBody(step, pieces);
      return;
    case 'weight':
      pieces.bodies.push({
        name: part.name,
        points: [step.from.name],
        masses: [lump(step, part.name, step.from.at, part.mass.value, 0)],
      });
      return;
    case 'flexible-connector':
    case 'grooved-joint':
      addJoint(step, pieces);
      return;
    case 'end': {
      const support = endSupport(step);
      if (support !== undefined) pieces.supports.push(support);
      return;
    }
    case 'fitting':
      // Too light to count; the point it stands on is there without it.
      return;
    default:
      if (isSupportPart(part)) pieces.supports.push(partSupport(part, step.from.name));
  }
}

function addPipe(
  pieces: Pieces,
  step: PlacedPart,
  name: string,
  from: NamedPoint,
  to: NamedPoint,
  section: PipeSection,
  metal: number,
): void {
  const { covering } = step.part;
  pieces.points[from.name] = from.at;
  pieces.points[to.name] = to.at;
  pieces.members.push({
    kind: 'pipe',
    name,
    from: from.name,
    to: to.name,
    tube: section,
    material: section.material,
    mass: { metal, covering: covering?.massPerLength.value ?? 0 },
    contentsGroup: step.group,
  });
  pieces.memberInfo[name] = { line: step.line, part: step.part.name, section, ...(covering && { covering }) };
}

function addElbow(step: PlacedPart, stiffEnds: 0 | 1 | 2, pieces: Pieces): void {
  const { part, centre, middle } = step;
  if (part.kind !== 'elbow' || centre === undefined || middle === undefined) return;
  const { section, covering } = part;
  const factors = bendFactors({
    bendRadius: part.radius.value,
    outsideDiameter: section.outsideDiameter,
    wall: section.wall,
    stiffEnds,
  });
  pieces.bendFactors[part.name] = factors;
  const arc = (name: string, from: NamedPoint, to: NamedPoint): void => {
    pieces.members.push({
      kind: 'bend',
      name,
      from: from.name,
      to: to.name,
      centre: centre.at,
      flexibility: factors.flexibility,
      tube: section,
      material: section.material,
      mass: {
        metal: part.mass.value / (step.end - step.start),
        covering: covering?.massPerLength.value ?? 0,
      },
      contentsGroup: step.group,
    });
    pieces.memberInfo[name] = { line: step.line, part: part.name, section, ...(covering && { covering }) };
  };
  if (part.support === undefined) {
    arc(part.name, step.from, step.to);
    return;
  }
  pieces.points[middle.name] = middle.at;
  arc(`${part.name}, near half`, step.from, middle);
  arc(`${part.name}, far half`, middle, step.to);
  pieces.supports.push(partSupport(part.support, middle.name));
}

function addReducer(step: PlacedPart, pieces: Pieces): void {
  const { part } = step;
  if (part.kind !== 'reducer') return;
  const metal = part.mass.value / part.length.value;
  for (let index = 0; index < REDUCER_STEPS; index += 1) {
    const share = (index + 0.5) / REDUCER_STEPS;
    const mix = (near: number, far: number): number => near + (far - near) * share;
    const section: PipeSection = {
      ...part.section,
      outsideDiameter: mix(part.section.outsideDiameter, part.to.outsideDiameter),
      wall: mix(part.section.wall, part.to.wall),
    };
    const point = (count: number): NamedPoint => {
      if (count === 0) return step.from;
      if (count === REDUCER_STEPS) return step.to;
      return {
        name: `${part.name} at ${count}/${REDUCER_STEPS}`,
        at: between(step.from.at, step.to.at, count / REDUCER_STEPS),
      };
    };
    addPipe(pieces, step, `${part.name}, step ${index + 1}`, point(index), point(index + 1), section, metal);
  }
}

function addTee(step: PlacedPart, pieces: Pieces): void {
  const { part, centre, side } = step;
  if (part.kind !== 'tee' || centre === undefined || side === undefined) return;
  const run = part.centreToRunEnd.value;
  const branch = part.centreToBranchEnd.value;
  const metal = part.mass.value / (2 * run + branch);
  const byRun = part.enterBy === 'run';
  addPipe(
    pieces,
    step,
    `${part.name}, entry`,
    step.from,
    centre,
    byRun ? part.runSection : part.branchSection,
    metal,
  );
  addPipe(pieces, step, `${part.name}, run`, centre, step.to, part.runSection, metal);
  addPipe(
    pieces,
    step,
    `${part.name}, side`,
    centre,
    side.outlet,
    byRun ? part.branchSection : part.runSection,
    metal,
  );
}
