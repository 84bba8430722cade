/** Small frames for the tests of the mechanics, in SI. */
import type { Vec3 } from '../../src/model/conventions.js';
import type {
  Frame,
  FrameBend,
  FrameCondition,
  FrameMaterial,
  FramePipe,
  FrameSupport,
  Restraint,
} from '../../src/model/frame/frame.js';

export const INCH = 0.0254;
export const POUND_FORCE = 4.4482216152605;
export const PSI = POUND_FORCE / INCH ** 2;
export const GRAVITY: Vec3 = [0, 0, -9.80665];

/** NPS 4 schedule 40, E = 29 000 000 psi, strain 6.93e-4 between 300 K and 400 K. */
export const NPS4 = { outsideDiameter: 4.5 * INCH, wall: 0.237 * INCH };
export const STRAIN = 6.93e-4;
export const STEEL: FrameMaterial = {
  modulus: 29e6 * PSI,
  poisson: 0.3,
  expansion: [
    [300, 0],
    [400, STRAIN],
  ],
};

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
export const AXES: readonly Vec3[] = [EAST, NORTH, UP];

/** A rigid restraint that holds both ways, with changes. */
export function restraint(direction: Vec3, changes: Partial<Restraint> = {}): Restraint {
  return {
    direction,
    acts: 'translation',
    stiffness: Number.POSITIVE_INFINITY,
    sense: 'both',
    preload: 0,
    gap: 0,
    imposed: 0,
    friction: 0,
    ...changes,
  };
}

export function support(name: string, point: string, restraints: readonly Restraint[]): FrameSupport {
  return { name, word: 'support', point, restraints };
}

/** Holds all six freedoms rigidly. */
export function anchor(name: string, point: string): FrameSupport {
  return support(
    name,
    point,
    AXES.flatMap((axis) => [restraint(axis), restraint(axis, { acts: 'rotation' })]),
  );
}

/** Holds the named translations rigidly. */
export function prop(name: string, point: string, ...directions: readonly Vec3[]): FrameSupport {
  return support(
    name,
    point,
    directions.map((direction) => restraint(direction)),
  );
}

export function condition(changes: Partial<FrameCondition> = {}): FrameCondition {
  return {
    name: 'test',
    gravity: [0, 0, 0],
    contentsDensity: 0,
    drained: [],
    covering: false,
    temperature: 300,
    pressure: 0,
    absent: [],
    stopped: [],
    removed: [],
    loads: [],
    ...changes,
  };
}

export function pipe(name: string, from: string, to: string, changes: Partial<FramePipe> = {}): FramePipe {
  return {
    kind: 'pipe',
    name,
    from,
    to,
    tube: NPS4,
    material: 'steel',
    mass: { metal: 0, covering: 0 },
    contentsGroup: 'line',
    ...changes,
  };
}

export function bend(
  name: string,
  from: string,
  to: string,
  centre: Vec3,
  changes: Partial<FrameBend> = {},
): FrameBend {
  return { ...pipe(name, from, to), kind: 'bend', centre, flexibility: 1, ...changes } as FrameBend;
}

export function frame(parts: Partial<Frame>): Frame {
  return {
    points: {},
    materials: { steel: STEEL },
    members: [],
    bodies: [],
    joints: [],
    supports: [],
    conditions: [condition()],
    installationTemperature: 300,
    ...parts,
  };
}

/** Straight pipes from place to place; points are called by letters a, b, c … */
export function runThrough(
  places: readonly Vec3[],
  changes: Partial<FramePipe> = {},
): { readonly points: Readonly<Record<string, Vec3>>; readonly members: readonly FramePipe[] } {
  const name = (index: number) => String.fromCharCode(97 + index);
  return {
    points: Object.fromEntries(places.map((place, index) => [name(index), place])),
    members: places.slice(1).map((_, index) => {
      const [from, to] = [name(index), name(index + 1)];
      return pipe(`${from}${to}`, from, to, changes);
    }),
  };
}

export const force = (point: string, vector: Vec3, moment: Vec3 = [0, 0, 0]) => ({
  point,
  wrench: { force: vector, moment },
});

/** Entry that must be there. */
export function of<Item>(record: Readonly<Record<string, Item>>, key: string): Item {
  const item = record[key];
  if (item === undefined) throw new Error(`no ${key}`);
  return item;
}
