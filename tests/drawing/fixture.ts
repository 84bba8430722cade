/** Lines walked out by hand into layouts and made-up responses, so that pictures can be tested without solving. */

import type {
  Installation,
  Part,
  PipeSection,
  SupportKind,
  SupportPart,
} from '../../src/input/installation.js';
import type { Finding } from '../../src/judging/finding.js';
import type {
  ConditionResponse,
  Movement,
  Response,
  SupportResponse,
} from '../../src/mechanics/frame/response.js';
import { roleOfId } from '../../src/model/conditions/condition-roles.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { FrameCondition, FrameJoint, FrameSupport } from '../../src/model/frame/frame.js';
import type { Layout, PlacedSupport, PlacedTee, Stroke } from '../../src/model/layout/layout.js';
import { add, scale } from '../../src/model/vector.js';

export type Step =
  | { readonly do: 'straight'; readonly length: number }
  | { readonly do: 'elbow'; readonly turn: Vec3; readonly support?: SupportKind; readonly mark?: string }
  | { readonly do: 'valve'; readonly valve: string; readonly length: number }
  | { readonly do: 'flange' | 'grooved' }
  | { readonly do: 'connector' | 'diffuser'; readonly length: number }
  | { readonly do: 'reducer'; readonly diameter: number; readonly length: number }
  | { readonly do: 'support'; readonly kind: SupportKind; readonly mark: string; readonly rods?: number }
  | {
      readonly do: 'tee';
      readonly direction: Vec3;
      readonly diameter: number;
      readonly walk: readonly Step[];
    }
  | { readonly do: 'end'; readonly end: 'anchored' | 'continues' | 'free' };

export interface Walk {
  readonly from: 'suction' | 'discharge';
  readonly steps: readonly Step[];
}

export interface Case {
  readonly diameter: number;
  readonly walks: readonly Walk[];
  readonly mount?: Installation['pump']['mount'];
  readonly room?: Installation['room'];
  readonly withdrawal?: number;
  /** Turns everything about the upright axis through the origin [rad]. */
  readonly turned?: number;
}

export interface Built {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly response: Response;
}

export const EAST: Vec3 = [1, 0, 0];
export const WEST: Vec3 = [-1, 0, 0];
export const NORTH: Vec3 = [0, 1, 0];
export const SOUTH: Vec3 = [0, -1, 0];
export const UP: Vec3 = [0, 0, 1];
export const DOWN: Vec3 = [0, 0, -1];

const given = (value: number) => ({ value, origin: { kind: 'given' as const, path: 'fixture' } });

function sectionOf(diameter: number): PipeSection {
  return {
    name: 'pipe',
    outsideDiameter: diameter,
    wall: diameter / 25,
    material: 'carbon steel',
    massPerLength: given(28),
  };
}

interface Collected {
  readonly strokes: Stroke[];
  readonly supports: PlacedSupport[];
  readonly tees: PlacedTee[];
  readonly joints: FrameJoint[];
  readonly points: Record<string, Vec3>;
  readonly frameSupports: FrameSupport[];
  readonly counts: Record<string, number>;
}

function numbered(found: Collected, word: string): string {
  found.counts[word] = (found.counts[word] ?? 0) + 1;
  return `${word} ${found.counts[word]}`;
}

function walkOut(
  found: Collected,
  parts: Part[],
  line: string,
  steps: readonly Step[],
  start: Vec3,
  way: Vec3,
  firstDiameter: number,
): void {
  let [at, along, diameter, station] = [start, way, firstDiameter, 0];
  let pointName = `${line} start`;
  found.points[pointName] = at;
  const part = (name: string, kind: Part['kind'], more: object = {}) =>
    parts.push({ name, kind, path: 'fixture', section: sectionOf(diameter), ...more } as unknown as Part);
  const next = (name: string, length: number): { from: Vec3; to: Vec3; points: [string, string] } => {
    const to = add(at, scale(along, length));
    const far = `${name} far end`;
    found.points[far] = to;
    const ends = { from: at, to, points: [pointName, far] as [string, string] };
    [at, pointName, station] = [to, far, station + length];
    return ends;
  };
  const straight = (
    name: string,
    length: number,
    role: Extract<Stroke, { kind: 'straight' }>['role'],
    width = diameter,
  ) => found.strokes.push({ kind: 'straight', name, line, ...next(name, length), diameter: width, role });
  const hold = (
    mark: string,
    kind: PlacedSupport['kind'],
    direction: Vec3,
    rods = 1,
    stiffness = Number.POSITIVE_INFINITY,
  ) => {
    found.supports.push({
      mark,
      kind,
      point: pointName,
      at,
      line,
      station,
      section: sectionOf(diameter),
      along: direction,
      ...(kind === 'end' || kind === 'pump base'
        ? {}
        : { part: { kind, mark, name: mark, rods: { count: rods } } as unknown as SupportPart }),
    });
    const axes = [EAST, NORTH, UP];
    const rigid = (d: Vec3, acts: 'translation' | 'rotation') => ({
      direction: d,
      acts,
      stiffness,
      sense: 'both' as const,
      preload: 0,
      gap: 0,
      imposed: 0,
      friction: 0,
    });
    const all = kind === 'end' || kind === 'anchor';
    found.frameSupports.push({
      name: mark,
      word: kind,
      point: pointName,
      restraints: all
        ? axes.flatMap((a) => [rigid(a, 'translation'), rigid(a, 'rotation')])
        : [rigid(UP, 'translation')],
    });
  };
  for (const step of steps) {
    switch (step.do) {
      case 'straight':
        straight(numbered(found, 'straight'), step.length, 'pipe');
        break;
      case 'flange':
        part(numbered(found, 'flange'), 'flange');
        straight(`flange ${found.counts.flange}`, 0.08, 'flange');
        break;
      case 'valve': {
        const name = numbered(found, `${step.valve} valve`);
        part(name, 'valve', { valve: step.valve });
        straight(name, step.length, 'valve');
        break;
      }
      case 'connector':
      case 'diffuser': {
        const word = step.do === 'connector' ? 'flexible connector' : 'suction diffuser';
        straight(numbered(found, word), step.length, step.do);
        break;
      }
      case 'reducer':
        straight(numbered(found, 'reducer'), step.length, 'reducer');
        diameter = step.diameter;
        break;
      case 'grooved': {
        const name = numbered(found, 'grooved joint');
        found.points[name] = at;
        found.joints.push({
          name,
          from: pointName,
          to: name,
          axis: along,
          axial: 1,
          lateral: 1,
          torsion: 0,
          bending: 0,
          thrustArea: 0,
          mass: 0,
        });
        break;
      }
      case 'elbow': {
        const radius = 1.5 * diameter;
        const name = numbered(found, 'elbow');
        const to = add(add(at, scale(along, radius)), scale(step.turn, radius));
        const centre = add(at, scale(step.turn, radius));
        found.points[`${name} far end`] = to;
        found.strokes.push({
          kind: 'arc',
          name,
          line,
          from: at,
          to,
          centre,
          diameter,
          points: [pointName, `${name} far end`],
        });
        [at, along, pointName, station] = [
          to,
          step.turn,
          `${name} far end`,
          station + (radius * Math.PI) / 2,
        ];
        if (step.support !== undefined) hold(step.mark ?? name, step.support, along);
        break;
      }
      case 'support':
        hold(step.mark, step.kind, along, step.rods);
        break;
      case 'tee': {
        const name = numbered(found, 'tee');
        straight(name, diameter, 'pipe');
        const centre = at;
        found.tees.push({ name, line, point: pointName, part: {} as never, intensification: 1, members: [] });
        const out = add(centre, scale(step.direction, diameter));
        found.strokes.push({
          kind: 'straight',
          name,
          line,
          from: centre,
          to: out,
          diameter: step.diameter,
          points: [pointName, `${name} branch`],
          role: 'pipe',
        });
        const kept = [at, pointName, station] as const;
        walkOut(found, parts, `${line} ${name}`, step.walk, out, step.direction, step.diameter);
        [at, pointName, station] = kept;
        straight(name, diameter, 'pipe');
        break;
      }
      case 'end':
        if (step.end !== 'free')
          hold(`end of ${line}`, 'end', along, 1, step.end === 'anchored' ? Number.POSITIVE_INFINITY : 1e6);
        break;
    }
  }
}

function turnedBy(angle: number): (v: Vec3) => Vec3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return (v) => [c * v[0] - s * v[1], s * v[0] + c * v[1], v[2]];
}

function turnSteps(steps: readonly Step[], turn: (v: Vec3) => Vec3): readonly Step[] {
  return steps.map((step) => {
    if (step.do === 'elbow') return { ...step, turn: turn(step.turn) };
    if (step.do === 'tee')
      return { ...step, direction: turn(step.direction), walk: turnSteps(step.walk, turn) };
    return step;
  });
}

/** Builds a case: layout, installation and a response with made-up loads that differ by condition. */
export function build(made: Case): Built {
  const turn = turnedBy(made.turned ?? 0);
  const position: Vec3 = [0, 0, 1.4];
  const reach = 0.42;
  const ports = { suction: turn([0, -reach, 0]), discharge: turn([0, reach, 0]) };
  const facing = { suction: turn(SOUTH), discharge: turn(NORTH) };
  const found: Collected = {
    strokes: [],
    supports: [],
    tees: [],
    joints: [],
    points: {},
    frameSupports: [],
    counts: {},
  };
  const lines: { name: string; from: 'suction' | 'discharge'; section: PipeSection; walk: Part[] }[] = [];
  found.strokes.push({
    kind: 'straight',
    name: 'pump',
    line: 'pump',
    from: add(position, ports.suction),
    to: add(position, ports.discharge),
    diameter: 0.6,
    points: ['pump suction', 'pump discharge'],
    role: 'pump',
  });
  if (made.mount !== undefined && made.mount !== 'hung')
    found.supports.push({
      mark: 'pump base',
      kind: 'pump base',
      point: 'pump base',
      at: add(position, [0, 0, -0.4]),
      line: 'pump',
      station: 0,
      along: UP,
    });
  for (const walk of made.walks) {
    const parts: Part[] = [];
    const name = `${walk.from} line`;
    walkOut(
      found,
      parts,
      name,
      turnSteps(walk.steps, turn),
      add(position, ports[walk.from]),
      facing[walk.from],
      made.diameter,
    );
    lines.push({ name, from: walk.from, section: sectionOf(made.diameter), walk: parts });
  }
  const nozzle = (which: 'suction' | 'discharge') => ({
    which,
    point: `pump ${which}`,
    at: add(position, ports[which]),
    axis: facing[which],
    nps: '6',
    section: sectionOf(made.diameter),
  });
  found.points['pump suction'] = add(position, ports.suction);
  found.points['pump discharge'] = add(position, ports.discharge);
  const load = (point: string, factor: number) => ({
    point,
    wrench: { force: [900 * factor, 400, -2300 * factor] as Vec3, moment: [300, 420 * factor, 90] as Vec3 },
  });
  const conditions = ['empty', 'filled', 'hot'].map(
    (name, i) =>
      ({
        name,
        role: roleOfId(name),
        removed: [],
        absent: [],
        loads: [load('pump suction', 1 + 0.4 * i), load('pump discharge', 1 - 0.2 * i)],
      }) as unknown as FrameCondition,
  );
  const layout: Layout = {
    frame: {
      points: found.points,
      materials: {},
      members: [],
      bodies: [{ name: 'pump', points: ['pump suction', 'pump discharge'], masses: [] }],
      joints: found.joints,
      supports: found.frameSupports,
      conditions,
      installationTemperature: 290,
    },
    nozzles: { suction: nozzle('suction'), discharge: nozzle('discharge') },
    supports: found.supports,
    spans: [],
    bends: [],
    tees: found.tees,
    flangeJoints: [],
    weights: [],
    strokes: found.strokes,
    memberInfo: {},
  };
  const installation = {
    review: { units: 'us' },
    pump: {
      mark: 'HWP-1',
      mount: made.mount ?? 'hung',
      position,
      casing: { mass: given(240), centre: [0, 0, 0], material: 'cast iron' },
      motor: { mass: given(150), centre: [0, 0, 0.85], power: 15000, speed: 185 },
      ports: {
        suction: { which: 'suction', facing: facing.suction, position: ports.suction, flange: {} },
        discharge: { which: 'discharge', facing: facing.discharge, position: ports.discharge, flange: {} },
      },
      ...(made.mount !== undefined && made.mount !== 'hung' ? { base: { position: [0, 0, -0.4] } } : {}),
      outline: {
        motorTop: given(1.25),
        motorDiameter: given(0.36),
        casingDiameter: given(0.6),
        ...(made.withdrawal === undefined ? {} : { withdrawal: given(made.withdrawal) }),
      },
    },
    lines,
    room: made.room ?? { objects: [] },
  } as unknown as Installation;
  return { installation, layout, response: responseFor(layout) };
}

function responseFor(layout: Layout): Response {
  const condition = (name: string, factor: number): ConditionResponse => {
    const supports: Record<string, SupportResponse> = {};
    layout.supports.forEach((support, i) => {
      const force: Vec3 =
        support.kind === 'guide' ? [900 * factor, 0, 0] : [40 * factor, 0, -(2100 + 730 * i) * factor];
      supports[support.mark] = { load: { force, moment: [0, 0, 0] }, states: ['holding'] };
    });
    const movements: Record<string, Movement> = {};
    for (const [point, at] of Object.entries(layout.frame.points))
      movements[point] = {
        translation: [at[0] * 8e-4 * factor, at[1] * 8e-4 * factor, -0.001 * factor],
        rotation: [0, 0, 0],
      };
    return {
      name,
      movements,
      supports,
      members: {},
      joints: {},
      weight: 1,
      balance: {
        applied: { force: [0, 0, 0], moment: [0, 0, 0] },
        reacted: { force: [0, 0, 0], moment: [0, 0, 0] },
        residual: 0,
      },
      rounds: 1,
    };
  };
  return {
    conditions: {
      empty: condition('empty', 0.6),
      filled: condition('filled', 1),
      hot: condition('hot', 1.15),
    },
    quality: { residual: 0, reciprocalCondition: 1, unknowns: 1, profile: 1 },
  };
}

/** A finding with the parts a picture reads. */
export function finding(made: Partial<Finding> & Pick<Finding, 'at' | 'verdict'>): Finding {
  return {
    check: 'rod-load',
    title: 'Load on hanger rods',
    unit: 'N',
    comparison: false,
    basis: { source: 'statics', clause: '', confidence: 'computed' },
    ...made,
  };
}

const s = (length: number): Step => ({ do: 'straight', length });
const hanger = (mark: string, rods = 1): Step => ({ do: 'support', kind: 'hanger', mark, rods });
const elbow = (turn: Vec3): Step => ({ do: 'elbow', turn });
const flange: Step = { do: 'flange' };

/** A pump between two elbows on four rod hangers, 6 in. */
export const fourHangers: Case = {
  diameter: 0.168,
  withdrawal: 0.6,
  room: {
    floor: 0,
    ceiling: 4,
    objects: [{ name: 'W12 beam', kind: 'beam', low: [-2, 0.6, 3.3], high: [2, 0.75, 3.6], path: 'fixture' }],
  },
  walks: [
    {
      from: 'suction',
      steps: [
        flange,
        s(0.45),
        hanger('H1'),
        s(0.15),
        elbow(UP),
        s(0.6),
        flange,
        { do: 'valve', valve: 'gate', length: 0.27 },
        flange,
        s(0.9),
        elbow(WEST),
        s(0.3),
        hanger('H2'),
        s(4.2),
        { do: 'end', end: 'anchored' },
      ],
    },
    {
      from: 'discharge',
      steps: [
        flange,
        s(0.45),
        hanger('H3'),
        s(0.15),
        elbow(UP),
        s(0.3),
        flange,
        { do: 'valve', valve: 'swing check', length: 0.36 },
        flange,
        s(0.2),
        flange,
        { do: 'valve', valve: 'butterfly lug', length: 0.06 },
        flange,
        s(0.7),
        elbow(EAST),
        s(0.3),
        hanger('H4'),
        s(3.8),
        { do: 'end', end: 'continues' },
      ],
    },
  ],
};

/** A 12 in pump with diffuser, springs, a long riser and long runs. */
export const longRiser: Case = {
  diameter: 0.324,
  mount: 'resting',
  room: { floor: 0, objects: [] },
  walks: [
    {
      from: 'suction',
      steps: [
        { do: 'diffuser', length: 0.5 },
        flange,
        { do: 'valve', valve: 'butterfly lug', length: 0.08 },
        flange,
        s(0.6),
        { do: 'support', kind: 'stand', mark: 'S1' },
        s(0.5),
        elbow(UP),
        s(1),
        { do: 'support', kind: 'spring-hanger', mark: 'V1', rods: 2 },
        s(1.2),
        elbow(WEST),
        s(2),
        hanger('H1', 2),
        s(5),
        hanger('H2', 2),
        s(5),
        { do: 'reducer', diameter: 0.273, length: 0.36 },
        s(3),
        { do: 'support', kind: 'guide', mark: 'G1' },
        s(4),
        { do: 'end', end: 'anchored' },
      ],
    },
    {
      from: 'discharge',
      steps: [
        { do: 'connector', length: 0.2 },
        flange,
        { do: 'valve', valve: 'globe', length: 0.6 },
        flange,
        s(0.5),
        { do: 'support', kind: 'spring-hanger', mark: 'V2' },
        s(0.6),
        elbow(UP),
        s(4),
        { do: 'support', kind: 'rest', mark: 'R1' },
        s(12),
        { do: 'support', kind: 'guide', mark: 'G2' },
        s(12),
        { do: 'support', kind: 'guide', mark: 'G3' },
        s(6),
        elbow(NORTH),
        s(3),
        hanger('H3'),
        s(6),
        { do: 'support', kind: 'anchor', mark: 'A1' },
        s(2),
        { do: 'end', end: 'free' },
      ],
    },
  ],
};

/** Branches, grooved joints and a skew run. */
export const branches: Case = {
  diameter: 0.219,
  mount: 'bolted',
  walks: [
    {
      from: 'suction',
      steps: [
        flange,
        s(0.4),
        { do: 'grooved' },
        {
          do: 'tee',
          direction: EAST,
          diameter: 0.114,
          walk: [s(0.5), hanger('H5'), s(1), elbow(UP), s(1), { do: 'end', end: 'free' }],
        },
        { do: 'grooved' },
        s(2),
        hanger('H1'),
        s(1),
        elbow([0.5 ** 0.5, 0, 0.5 ** 0.5]),
        s(2),
        { do: 'support', kind: 'stop', mark: 'L1' },
        s(1),
        { do: 'end', end: 'anchored' },
      ],
    },
    {
      from: 'discharge',
      steps: [
        flange,
        { do: 'valve', valve: 'strainer', length: 0.5 },
        flange,
        s(0.4),
        elbow(UP),
        s(1.2),
        {
          do: 'tee',
          direction: WEST,
          diameter: 0.168,
          walk: [
            s(0.3),
            { do: 'valve', valve: 'ball', length: 0.25 },
            s(2),
            hanger('H2'),
            s(1),
            { do: 'end', end: 'continues' },
          ],
        },
        s(1),
        elbow(NORTH),
        s(1),
        hanger('H3'),
        s(3),
        hanger('H4'),
        s(1),
        { do: 'end', end: 'continues' },
      ],
    },
  ],
};
