import type { Installation } from '../../input/installation.js';
import { EngineError } from '../../issues/issue.js';
import { type BuiltFrame, buildFrameParts } from '../frame/build-frame.js';
import { teeIntensification } from '../frame/tee-factors.js';
import { strokes } from '../room/strokes.js';
import { add, between } from '../vector.js';
import type { Layout, PartPlace, PlacedBend, PlacedNozzle, PlacedTee } from './layout.js';
import type { PlacedPart } from './place-parts.js';
import { placedFittings } from './placed-fittings.js';
import { placedFlangeJoints } from './placed-flange-joints.js';
import { placedSpans } from './placed-spans.js';
import { placedWeights } from './placed-weights.js';

/**
 * Places everything and builds the frame.
 *
 * @param installation - checked SI values
 * @returns the layout with its frame; places in [m], masses in [kg]
 * @throws EngineError as `buildFrameParts`, and `model.line-missing` when a port has no line
 * @source statics
 */
export function buildLayout(installation: Installation): Layout {
  const built = buildFrameParts(installation);
  const { supports } = built;
  const every = everyPart(built.placed);
  return {
    frame: built.frame,
    nozzles: { suction: nozzle(installation, 'suction'), discharge: nozzle(installation, 'discharge') },
    supports,
    spans: placedSpans(built.placed, supports),
    bends: every.flatMap((step) => placedBend(step, built)),
    tees: every.flatMap((step) => placedTee(step, built)),
    flangeJoints: placedFlangeJoints(installation, built.placed),
    weights: placedWeights(installation, built.placed),
    strokes: strokes(installation, built.placed),
    partPlaces: Object.fromEntries(
      every.map((step, index) => [step.part.name, partPlace(step, every[index - 1])]),
    ),
    fittings: placedFittings(built.placed),
    memberInfo: built.pieces.memberInfo,
  };
}

/** What has no length and no covering of its own, such as a vent, stands in that of the pipe before it. */
function partPlace({ part, from, to, directionIn }: PlacedPart, before: PlacedPart | undefined): PartPlace {
  const covering = part.covering ?? (part.kind === 'fitting' ? before?.part.covering : undefined);
  return {
    at: between(from.at, to.at, 0.5),
    along: directionIn,
    radius: part.section.outsideDiameter / 2 + (covering?.thickness ?? 0),
  };
}

function everyPart(placed: readonly PlacedPart[]): readonly PlacedPart[] {
  return placed.flatMap((step) => [step, ...(step.side === undefined ? [] : everyPart(step.side.parts))]);
}

function nozzle(installation: Installation, which: 'suction' | 'discharge'): PlacedNozzle {
  const port = installation.pump.ports[which];
  const line = installation.lines.find((candidate) => candidate.from === which);
  if (line === undefined) throw new EngineError('model.line-missing', { port: which });
  return {
    which,
    point: `pump ${which}`,
    at: add(installation.pump.position, port.position),
    axis: port.facing,
    nps: port.nps,
    section: line.walk[0]?.section ?? line.section,
  };
}

function placedBend(step: PlacedPart, built: BuiltFrame): readonly PlacedBend[] {
  const { part, middle } = step;
  const factors = built.pieces.bendFactors[part.name];
  if (part.kind !== 'elbow' || middle === undefined || factors === undefined) return [];
  const members = built.frame.members
    .filter((member) => built.pieces.memberInfo[member.name]?.part === part.name)
    .map((member) => member.name);
  return [
    {
      name: part.name,
      line: step.line,
      members,
      at: middle.at,
      part,
      start: step.start,
      end: step.end,
      factors,
    },
  ];
}

function placedTee(step: PlacedPart, built: BuiltFrame): readonly PlacedTee[] {
  const { part, centre } = step;
  if (part.kind !== 'tee' || centre === undefined) return [];
  const members = built.frame.members
    .filter((member) => built.pieces.memberInfo[member.name]?.part === part.name)
    .map((member) => member.name);
  const intensification = teeIntensification(part.runSection, part.make);
  return [{ name: part.name, line: step.line, point: centre.name, part, intensification, members }];
}
