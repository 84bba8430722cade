import type { Installation } from '../../input/installation.js';
import { ofRole } from '../conditions/condition-roles.js';
import { operatingConditions } from '../conditions/operating-conditions.js';
import { upsetConditions } from '../conditions/upset-conditions.js';
import type { PlacedSupport } from '../layout/layout.js';
import { type PlacedPart, placeLine } from '../layout/place-parts.js';
import { placedSupports } from '../layout/placed-supports.js';
import { pointNames } from '../layout/point-names.js';
import type { Frame, FrameMaterial } from './frame.js';
import { addPieces } from './frame-pieces.js';
import type { Pieces } from './pieces.js';
import { bracketJoint, pumpBodies, pumpPoints } from './pump-body.js';
import { pumpSupport } from './pump-support.js';
import { stiffEnds } from './stiff-ends.js';

/** The frame with what it was made from. */
export interface BuiltFrame {
  readonly frame: Frame;
  readonly placed: readonly PlacedPart[];
  readonly pieces: Pieces;
  readonly supports: readonly PlacedSupport[];
}

/**
 * Builds the frame of an installation: points, pipes, bends, rigid bodies, joints, supports and conditions.
 *
 * @param installation - checked SI values
 * @returns the frame, the placed parts of all lines in walking order, and the pieces by name
 * @throws EngineError `model.turn-impossible`, `model.bend-radius-too-small`, `model.no-bore`
 * @source statics
 */
export function buildFrameParts(installation: Installation): BuiltFrame {
  const { pump } = installation;
  const names = pointNames();
  const pieces: Pieces = {
    points: {},
    members: [],
    bodies: [],
    joints: [],
    supports: [],
    memberInfo: {},
    bendFactors: {},
  };
  Object.assign(pieces.points, pumpPoints(pump));
  pieces.bodies.push(...pumpBodies(pump));
  pieces.joints.push(...bracketJoint(pump));
  const base = pumpSupport(pump);
  if (base !== undefined) pieces.supports.push(base);

  const placed = installation.lines.flatMap((line) => {
    const parts = placeLine(line, pump, names);
    addPieces(parts, stiffEnds(parts), pieces);
    return parts;
  });

  const supports = placedSupports(installation, placed);
  const operating = operatingConditions(installation, pieces.supports);
  const filled = ofRole(operating, 'filled');
  const upset = filled === undefined ? [] : upsetConditions(installation, filled, supports);
  const frame: Frame = {
    points: pieces.points,
    materials: frameMaterials(installation),
    members: pieces.members,
    bodies: pieces.bodies,
    joints: pieces.joints,
    supports: pieces.supports,
    conditions: [...operating, ...upset],
    installationTemperature: installation.service.installationTemperature.value,
  };
  return { frame, placed, pieces, supports };
}

/**
 * The frame of an installation, ready for `solveFrame`.
 *
 * @param installation - checked SI values
 * @returns the frame
 * @throws EngineError as `buildFrameParts`
 * @source statics
 */
export function buildFrame(installation: Installation): Frame {
  return buildFrameParts(installation).frame;
}

function frameMaterials(installation: Installation): Readonly<Record<string, FrameMaterial>> {
  return Object.fromEntries(
    Object.entries(installation.materials).map(([id, material]) => [
      id,
      { modulus: material.modulus.value, poisson: material.poisson, expansion: material.expansion },
    ]),
  );
}
