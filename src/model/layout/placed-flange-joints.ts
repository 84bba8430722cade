import type { BodyFlange, Installation, Part } from '../../input/installation.js';
import type { FlangeSide, PlacedFlangeJoint } from './layout.js';
import type { PlacedPart } from './place-parts.js';

/**
 * Every bolted flange joint: pump to first flange, flange to flange, flange to flanged valve. A valve between flanges
 * gives one joint, flange to flange, read at its near face.
 *
 * @param installation - for the pump's own flanges
 * @param placed - parts in walking order
 * @returns joints in walking order
 */
export function placedFlangeJoints(
  installation: Installation,
  placed: readonly PlacedPart[],
): readonly PlacedFlangeJoint[] {
  const joints: PlacedFlangeJoint[] = [];
  const walk = (steps: readonly PlacedPart[]): void => {
    const solid = steps.filter((step) => carriesPipe(step.part));
    solid.forEach((step, index) => {
      const before = solid[index - 1];
      const near = before === undefined ? pumpSide(installation, step) : farFace(before);
      const joint = near && nearFace(step, solid[index + 1], before);
      if (near !== undefined && joint !== undefined) joints.push(makeJoint(step, near, joint, before));
      if (step.side !== undefined) walk(step.side.parts);
    });
  };
  for (const line of new Set(placed.map((step) => step.line))) {
    walk(placed.filter((step) => step.line === line));
  }
  return joints;
}

/** Supports, weights, taps and ends stand on the pipe; they do not part two faces. */
function carriesPipe(part: Part): boolean {
  return !('mark' in part) && part.kind !== 'weight' && part.kind !== 'fitting' && part.kind !== 'end';
}

function pumpSide(installation: Installation, step: PlacedPart): FlangeSide | undefined {
  const which =
    step.from.name === 'pump suction'
      ? 'suction'
      : step.from.name === 'pump discharge'
        ? 'discharge'
        : undefined;
  if (which === undefined) return undefined;
  return bodySide(`pump ${which}`, installation.pump.ports[which].flange);
}

function bodySide(owner: string, flange: BodyFlange): FlangeSide {
  const { standard, class: pressureClass, face, material } = flange;
  return { owner, standard, class: pressureClass, face, material, dimensions: flange };
}

/** Flange of a part at the end nearer the pump, or at the far one. */
function ownFlange(step: PlacedPart, end: 'near' | 'far'): FlangeSide | undefined {
  const { part } = step;
  if (part.kind === 'flange') {
    // A flange part of the pipe is steel unless it follows the iron flange standard.
    const material =
      part.standard === 'B16.1' ? 'cast iron' : part.standard === 'B16.5' ? 'steel' : 'unknown';
    return {
      owner: part.name,
      standard: part.standard,
      class: part.class,
      face: part.face,
      material,
      dimensions: part.joint,
      part,
    };
  }
  const flanged =
    (part.kind === 'valve' && part.ends === 'flanged') ||
    part.kind === 'suction-diffuser' ||
    (part.kind === 'flexible-connector' && part.connector !== 'metal bellows');
  if (!flanged) return undefined;
  const described =
    part.kind === 'valve'
      ? part.flange
      : part.kind === 'suction-diffuser'
        ? part.flanges?.[end === 'near' ? 'pump' : 'pipe']
        : undefined;
  if (described !== undefined) return bodySide(part.name, described);
  return { owner: part.name, standard: 'unknown', class: 'unknown', face: 'unknown', material: 'unknown' };
}

/** The face a part turns to what follows it: a flange shows its face only when pipe came before it. */
function farFace(step: PlacedPart): FlangeSide | undefined {
  if (step.part.kind === 'valve' && step.part.ends === 'between flanges') return undefined;
  return ownFlange(step, 'far');
}

function nearFace(
  step: PlacedPart,
  next: PlacedPart | undefined,
  before: PlacedPart | undefined,
): FlangeSide | undefined {
  // Two flange parts in a row meet face to face; a flange after another part that is no flange is welded to it.
  if (step.part.kind === 'valve' && step.part.ends === 'between flanges') {
    return next === undefined ? undefined : ownFlange(next, 'near');
  }
  if (before?.part.kind === 'valve' && before.part.ends === 'between flanges') return undefined;
  return ownFlange(step, 'near');
}

function makeJoint(
  step: PlacedPart,
  near: FlangeSide,
  far: FlangeSide,
  before: PlacedPart | undefined,
): PlacedFlangeJoint {
  return {
    name: `${near.owner} to ${far.owner}`,
    line: step.line,
    point: step.from.name,
    at: step.from.at,
    axis: step.directionIn,
    body: before === undefined ? 'pump' : before.part.name,
    sides: [near, far],
  };
}
