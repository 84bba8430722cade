/**
 * The text files of Z88, a general finite-element program (version 13, module Z88F for movements and Z88E for forces).
 *
 * Its ways, as its manual gives them and as the first test of outside-solver.test.ts measures them:
 *
 * - Element 2, "beam in space", is slender (Bernoulli): no shear deformation. Six freedoms a node: three movements, then
 *   rotations about x, y, z. Its manual warns that the fifth does not follow the right hand; in the version of the
 *   package it does, in every direction of beam, and that test would tell if it did not.
 * - Element 4, "truss in space", uses the first three freedoms of its nodes and may hang on a beam's node.
 * - Shear modulus is E / (2 (1 + ν)); torsion has a second moment of its own, so that I / k leaves it alone.
 * - The local y axis is level, which a circular section does not mind.
 * - There are no spread loads on beams, no temperatures, and no linear equations between freedoms: all three are
 *   worked into nodal loads and stiff beams by the writer of the model.
 * - Distances to the outer fibre and moduli of section serve stresses alone: ones are written.
 * - Z88F prints eight figures of a movement, Z88E six of a force: forces as the node acts on the element.
 * - The number of materials is limited by a file of its own, z88.dyn, in the working folder.
 */
import type { BeamModel } from './beam-model.js';

const ELEMENT = { beam: 2, bar: 4 } as const;

/** A printed number and half a unit of its last place. */
export interface Printed {
  readonly value: number;
  readonly half: number;
}

/** Six movements of every node, and six forces and moments on every piece at its first node; three on a bar. */
export interface SolverResults {
  readonly movements: readonly (readonly Printed[])[];
  readonly forces: readonly (readonly Printed[])[];
}

const text = (lines: readonly (readonly (number | string)[])[]) =>
  lines.map((line) => `${line.join(' ')}\n`).join('');

/** The files that the solver reads, by name. */
export function solverFiles(model: BeamModel): Readonly<Record<string, string>> {
  const { nodes, pieces, loads } = model;
  const structure = [
    [3, nodes.length, pieces.length, 6 * nodes.length, pieces.length, 0, 1, 0, 0],
    ...nodes.map(({ place }, index) => [index + 1, 6, ...place]),
    ...pieces.flatMap(({ kind, from, to }, index) => [
      [index + 1, ELEMENT[kind]],
      [from + 1, to + 1],
    ]),
    ...pieces.map(({ section }, index) => {
      const { modulus, poisson, area, inertia, torsion } = section;
      return [index + 1, index + 1, modulus, poisson, 2, area, inertia, 1, inertia, 1, torsion, 1];
    }),
  ];
  const boundary: (readonly number[])[] = [];
  nodes.forEach(({ held }, index) => {
    for (let freedom = 1; held && freedom <= 6; freedom++) boundary.push([index + 1, freedom, 2, 0]);
  });
  for (const [node, { force, moment }] of loads) {
    [...force, ...moment].forEach((value, index) => {
      if (value !== 0) boundary.push([node + 1, index + 1, 1, value]);
    });
  }
  return {
    'z88i1.txt': text(structure),
    'z88i2.txt': text([[boundary.length], ...boundary]),
    'z88.dyn': text(limits(model)),
  };
}

/** Room for the model in the program's own words. */
function limits({ nodes, pieces }: BeamModel): readonly (readonly (number | string)[])[] {
  const freedoms = 6 * nodes.length;
  const most = [
    ['MAXGS', (freedoms * (freedoms + 1)) / 2],
    ['MAXKOI', 20 * pieces.length],
    ['MAXK', nodes.length + 1],
    ['MAXE', pieces.length + 1],
    ['MAXNFG', freedoms + 1],
    ['MAXNEG', pieces.length + 1],
    ['MAXPR', 1],
    ['MAXRBD', freedoms + 1],
    ['MAXIEZ', freedoms ** 2],
    ['MAXGP', 1],
  ];
  return [['DYNAMIC START'], ['ENGLISH'], ['COMMON START'], ...most, ['COMMON END'], ['DYNAMIC END']];
}

/** Reads the movements (z88o2.txt) and the forces of each element (z88o4.txt). */
export function readResults(model: BeamModel, movementText: string, forceText: string): SolverResults {
  const movements = rows(movementText);
  const [byElement = ''] = forceText.split('now the nodal sums');
  // Before each element's two lines stands its number; its first line is that of its first node.
  const forces = byElement
    .split('element # =')
    .slice(1)
    .map((block) => rows(block)[0] ?? []);
  if (movements.length !== model.nodes.length || forces.length !== model.pieces.length) {
    throw new Error('the results do not have a line for every node and element');
  }
  return { movements, forces };
}

const NUMBER = /[+-]\d\.\d+E[+-]\d+/g;

function rows(from: string): readonly (readonly Printed[])[] {
  return from
    .split('\n')
    .map((line) => (line.match(NUMBER) ?? []).map(printed))
    .filter((line) => line.length > 0);
}

function printed(word: string): Printed {
  const [digits = '', exponent = ''] = word.split('E');
  const places = digits.length - digits.indexOf('.') - 1;
  return { value: Number(word), half: 0.5 * 10 ** (Number(exponent) - places) };
}
