/**
 * A frame in one condition as straight beams and bars, written apart from the mechanics of the product.
 *
 * - A pipe is one slender beam. The outside solver's beams know no shear deformation, so the frame has to leave it out too.
 * - A bend is so many equal chords between points of its arc, with inertia I/k, torsion 2 I, metal area as it is, and
 *   the weight of the arc they stand for. What this leaves out falls with the square of the number of chords.
 * - A rigid body is short beams from its first point to its other points and to its masses, `stiffness` times as stiff
 *   as the stiffest pipe: the solver has no linear equations between movements. What they give way falls with 1/stiffness: a thousand times
 *   as stiff, 9e-4 of the largest moment in the sample of a pump between elbows; compare-outside.ts takes it out.
 * - An anchor is one such short beam to the ground, without weight or growth: the force in it is the load of the support,
 *   to all printed digits. A direction of a hanger is a bar of that stiffness; a hanger's sideways hold is load over
 *   length of the rod, with the load as the product found it, and a hanger that the product found lifted is left out.
 *
 * What the compared cases do not have (joints, gaps, preloads, friction, imposed movements) is refused, not ignored.
 */
import type { ConditionResponse } from '../../src/mechanics/frame/response.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type {
  Frame,
  FrameBend,
  FrameCondition,
  FrameMaterial,
  FrameMember,
  FrameSupport,
  Tube,
} from '../../src/model/frame/frame.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../../src/model/vector.js';
import { of } from '../mechanics/small-frames.js';
import {
  addGrowth,
  addLoad,
  addNode,
  addPiece,
  addWeight,
  type BeamModel,
  type Draft,
  newDraft,
  placeOf,
  type Section,
} from './beam-model.js';

/** How finely the model is made. */
export interface Fineness {
  /** Chords of each bend. */
  readonly chords: number;
  /** Stiffness of what is rigid, over that of the stiffest pipe. */
  readonly stiffness: number;
}

export function beamsOf(frame: Frame, solved: ConditionResponse, fineness: Fineness): BeamModel {
  const condition = frame.conditions.find(({ name }) => name === solved.name);
  if (condition === undefined) throw new Error(`no condition ${solved.name}`);
  refuseWhatIsNotShown(frame, condition);
  const draft = newDraft();
  for (const [name, place] of Object.entries(frame.points)) draft.named[name] = addNode(draft, place);
  for (const member of frame.members) addMember(draft, frame, condition, member, fineness);
  const rigid = rigidSection(draft, fineness);
  addBodies(draft, frame, condition, rigid);
  for (const support of frame.supports) addSupport(draft, support, solved, rigid);
  for (const { point, wrench } of condition.loads) {
    addLoad(draft, of(draft.named, point), wrench.force, wrench.moment);
  }
  return draft;
}

function refuseWhatIsNotShown(frame: Frame, condition: FrameCondition): void {
  const restraints = frame.supports.flatMap((support) => support.restraints);
  const isShown =
    frame.options?.withoutShear === true &&
    frame.options.pressureElongation !== true &&
    frame.joints.length === 0 &&
    condition.removed.length + condition.absent.length + condition.stopped.length === 0 &&
    Object.keys(condition.imposed ?? {}).length === 0 &&
    restraints.every(({ preload, gap, imposed, friction }) => !preload && !gap && !imposed && !friction);
  if (!isShown) throw new Error(`${condition.name} has what the beams do not show`);
}

function addMember(
  draft: Draft,
  frame: Frame,
  condition: FrameCondition,
  member: FrameMember,
  { chords }: Fineness,
): void {
  const material = of(frame.materials, member.material);
  const [from, to] = [of(draft.named, member.from), of(draft.named, member.to)];
  const section = sectionOf(member, material);
  const isFull = !condition.drained.includes(member.contentsGroup);
  const mass =
    member.mass.metal +
    (condition.covering ? member.mass.covering : 0) +
    (isFull ? boreOf(member.tube) * condition.contentsDensity : 0);
  const strain = strainOf(material, frame.installationTemperature, condition.temperature);
  const [between, length] =
    member.kind === 'bend'
      ? alongArc(member, placeOf(draft, from), placeOf(draft, to), chords)
      : [[], norm(subtract(placeOf(draft, to), placeOf(draft, from)))];
  const nodes = [from, ...between.map((place) => addNode(draft, place)), to];
  const weight = scale(condition.gravity, (mass * length) / (nodes.length - 1));
  nodes.slice(1).forEach((end, index) => {
    const piece = { kind: 'beam', from: nodes[index] ?? from, to: end, section } as const;
    addPiece(draft, piece);
    addWeight(draft, piece, weight);
    addGrowth(draft, piece, strain);
  });
}

/** Points between the ends of an arc, and its length: start turned about the normal. */
function alongArc(bend: FrameBend, from: Vec3, to: Vec3, chords: number): readonly [readonly Vec3[], number] {
  const [start, end] = [subtract(from, bend.centre), subtract(to, bend.centre)];
  const normal = cross(start, end);
  const angle = Math.atan2(norm(normal), dot(start, end));
  const square = cross(unit(normal), start);
  const places = Array.from({ length: chords - 1 }, (_, index) => {
    const turned = ((index + 1) / chords) * angle;
    return add(bend.centre, add(scale(start, Math.cos(turned)), scale(square, Math.sin(turned))));
  });
  return [places, norm(start) * angle];
}

function boreOf({ outsideDiameter, wall }: Tube): number {
  return Math.PI * (outsideDiameter / 2 - wall) ** 2;
}

function sectionOf(member: FrameMember, { modulus, poisson }: FrameMaterial): Section {
  const outside = member.tube.outsideDiameter / 2;
  const inside = outside - member.tube.wall;
  const inertia = (Math.PI / 4) * (outside ** 4 - inside ** 4);
  const k = member.kind === 'bend' ? member.flexibility : 1;
  const area = Math.PI * (outside ** 2 - inside ** 2);
  return { modulus, poisson, area, inertia: inertia / k, torsion: 2 * inertia };
}

/** Growth between two temperatures by straight lines through the table, of which the outermost go on. */
function strainOf({ expansion }: FrameMaterial, from: number, to: number): number {
  const at = (temperature: number) => {
    const inner = expansion.slice(1, -1).filter(([row]) => row < temperature).length;
    const [low, high] = [expansion[inner], expansion[inner + 1]];
    if (low === undefined || high === undefined) throw new Error('no table of expansion');
    return low[1] + ((high[1] - low[1]) * (temperature - low[0])) / (high[0] - low[0]);
  };
  return from === to ? 0 : at(to) - at(from);
}

function rigidSection(draft: Draft, { stiffness }: Fineness): Section {
  const [first, ...others] = draft.pieces.map(({ section }) => section);
  if (first === undefined) throw new Error('no members');
  const bending = ({ modulus, inertia }: Section) => modulus * inertia;
  const stiffest = others.reduce((most, each) => (bending(each) > bending(most) ? each : most), first);
  return { ...stiffest, modulus: stiffness * stiffest.modulus };
}

function addBodies(draft: Draft, frame: Frame, condition: FrameCondition, rigid: Section): void {
  for (const body of frame.bodies) {
    const first = of(draft.named, body.points[0] ?? '');
    const strain =
      body.material === undefined
        ? 0
        : strainOf(of(frame.materials, body.material), frame.installationTemperature, condition.temperature);
    const tie = (to: number) => {
      const piece = { kind: 'beam', from: first, to, section: rigid } as const;
      addPiece(draft, piece);
      addGrowth(draft, piece, strain);
    };
    for (const point of body.points.slice(1)) tie(of(draft.named, point));
    for (const lump of body.masses) {
      if (lump.covering === true && !condition.covering) continue;
      const isFull = !condition.drained.includes(lump.contentsGroup);
      const mass = lump.mass + (isFull ? lump.contents * condition.contentsDensity : 0);
      const isAside = norm(subtract(lump.at, placeOf(draft, first))) > 1e-9;
      const node = isAside ? addNode(draft, lump.at) : first;
      if (isAside) tie(node);
      addLoad(draft, node, scale(condition.gravity, mass));
    }
  }
}

/** Length of what leads to the ground: short for an anchor, one metre for a bar, of which nothing but its stiffness counts [m]. */
const STUB = 0.1;
const BAR = 1;

function addSupport(draft: Draft, support: FrameSupport, solved: ConditionResponse, rigid: Section): void {
  const point = of(draft.named, support.point);
  const place = placeOf(draft, point);
  const pieces: number[] = [];
  draft.measured[support.name] = pieces;
  if (support.restraints.length === 6) {
    if (support.restraints.some(({ stiffness, sense }) => Number.isFinite(stiffness) || sense !== 'both')) {
      throw new Error(`${support.name} is no rigid anchor`);
    }
    const ground = addNode(draft, add(place, [STUB, 0, 0]), true);
    pieces.push(addPiece(draft, { kind: 'beam', from: point, to: ground, section: rigid }));
    return;
  }
  const hold = (direction: Vec3, stiffness: number) => {
    const ground = addNode(draft, add(place, scale(direction, BAR)), true);
    // Area one, so that E A / L is the stiffness.
    const section = { modulus: stiffness * BAR, poisson: 0, area: 1, inertia: 0, torsion: 0 };
    pieces.push(addPiece(draft, { kind: 'bar', from: point, to: ground, section }));
  };
  support.restraints.forEach(({ direction, acts, stiffness, swingLength }, index) => {
    const { states, load } = of(solved.supports, support.name);
    if (states[index] === 'lifted') return;
    if (states[index] !== 'holding' || acts !== 'translation')
      throw new Error(`${support.name} is not shown`);
    hold(direction, Number.isFinite(stiffness) ? stiffness : (rigid.modulus * rigid.area) / BAR);
    if (swingLength === undefined) return;
    const carried = -dot(load.force, direction);
    const side = unit(cross(direction, Math.abs(direction[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
    for (const way of [side, cross(direction, side)]) hold(way, carried / swingLength);
  });
}
