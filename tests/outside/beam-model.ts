/** Straight beams and bars, as a general-purpose solver of structures knows them, in SI. */
import type { Vec3, Wrench } from '../../src/model/conventions.js';
import { add, cross, norm, scale, subtract } from '../../src/model/vector.js';

/** What a straight piece is made of. */
export interface Section {
  /** [Pa] */
  readonly modulus: number;
  readonly poisson: number;
  /** [m²] */
  readonly area: number;
  /** Second moment for bending in any plane [m⁴]. */
  readonly inertia: number;
  /** Second moment for torsion [m⁴]. */
  readonly torsion: number;
}

/** A straight piece between two nodes: a beam carries six forces and moments, a bar only force along it. */
export interface Piece {
  readonly kind: 'beam' | 'bar';
  readonly from: number;
  readonly to: number;
  readonly section: Section;
}

/** Piece whose force on its first node is what a support carries. */
export type Measured = Readonly<Record<string, readonly number[]>>;

export interface BeamModel {
  readonly nodes: readonly { readonly place: Vec3; readonly held: boolean }[];
  readonly pieces: readonly Piece[];
  /** By node; none where nothing acts. */
  readonly loads: ReadonlyMap<number, Wrench>;
  /** Node of each named point. */
  readonly named: Readonly<Record<string, number>>;
  /** Pieces that lead from the point of a support to the ground, by support. */
  readonly measured: Measured;
}

/** A model that grows. */
export interface Draft {
  readonly nodes: { place: Vec3; held: boolean }[];
  readonly pieces: Piece[];
  readonly loads: Map<number, Wrench>;
  readonly named: Record<string, number>;
  readonly measured: Record<string, number[]>;
}

export function newDraft(): Draft {
  return { nodes: [], pieces: [], loads: new Map(), named: {}, measured: {} };
}

export function addNode(draft: Draft, place: Vec3, held = false): number {
  draft.nodes.push({ place, held });
  return draft.nodes.length - 1;
}

export function placeOf(draft: Draft, node: number): Vec3 {
  const found = draft.nodes[node];
  if (found === undefined) throw new Error(`no node ${node}`);
  return found.place;
}

/** Adds a piece and tells its number. */
export function addPiece(draft: Draft, piece: Piece): number {
  draft.pieces.push(piece);
  return draft.pieces.length - 1;
}

export function addLoad(draft: Draft, node: number, force: Vec3, moment: Vec3 = [0, 0, 0]): void {
  const before = draft.loads.get(node) ?? { force: [0, 0, 0], moment: [0, 0, 0] };
  draft.loads.set(node, { force: add(before.force, force), moment: add(before.moment, moment) });
}

/**
 * Weight spread evenly over a beam, as the forces and moments at its ends that move them alike: exact for a slender beam.
 *
 *     force W/2 at both ends,   moment ±(a × W)/12   with a from end to end
 */
export function addWeight(draft: Draft, { from, to }: Piece, weight: Vec3): void {
  const arm = subtract(placeOf(draft, to), placeOf(draft, from));
  const turn = scale(cross(arm, weight), 1 / 12);
  addLoad(draft, from, scale(weight, 0.5), turn);
  addLoad(draft, to, scale(weight, 0.5), scale(turn, -1));
}

/** Free growth of a beam, as the two forces E A ε that push its ends apart. */
export function addGrowth(draft: Draft, { from, to, section }: Piece, strain: number): void {
  const arm = subtract(placeOf(draft, to), placeOf(draft, from));
  const push = scale(arm, (section.modulus * section.area * strain) / norm(arm));
  addLoad(draft, to, push);
  addLoad(draft, from, scale(push, -1));
}
