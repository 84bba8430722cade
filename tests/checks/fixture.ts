import type { Subject } from '../../src/analysis/subject.js';
import type {
  ElbowPart,
  FlangeDimensions,
  FlangePart,
  Installation,
  Limits,
  Origin,
  PipeSection,
  Pump,
  Service,
  Sourced,
  SupportPart,
} from '../../src/input/installation.js';
import type { ConditionResponse, Response, SupportResponse } from '../../src/mechanics/frame/response.js';
import { roleOfId } from '../../src/model/conditions/condition-roles.js';
import type { Vec3, Wrench } from '../../src/model/conventions.js';
import type { Frame, FrameCondition, FrameSupport } from '../../src/model/frame/frame.js';
import type { FlangeSide, Layout, PlacedFlangeJoint, PlacedSupport } from '../../src/model/layout/layout.js';

/**
 * A small complete subject, written out in SI, whose answers are put in by hand: a pump at the origin of the plan, its
 * nozzles 0.3 m south and north of it at 1 m, one metre of pipe to a hanger on either side, and an elbow up behind the
 * second. Nothing has weight, so that a moment put in at one end of a pipe is the moment all along it.
 */
const given: Origin = { kind: 'given', path: 'test' };
export const sourced = (value: number, origin: Origin = given): Sourced => ({ value, origin });

export const NPS6: PipeSection = {
  name: 'NPS 6 STD',
  nps: '6',
  outsideDiameter: 0.168275,
  wall: 0.007112,
  material: 'carbon steel',
  massPerLength: sourced(28.26),
};

export const ZERO: Wrench = { force: [0, 0, 0], moment: [0, 0, 0] };
export const wrench = (force: Vec3, moment: Vec3 = [0, 0, 0]): Wrench => ({ force, moment });
const opposite = ({ force, moment }: Wrench): Wrench => ({
  force: [-force[0], -force[1], -force[2]],
  moment: [-moment[0], -moment[1], -moment[2]],
});

export interface InstallationChange {
  readonly pump?: Partial<Pump>;
  readonly service?: Partial<Service>;
  readonly limits?: Partial<Limits>;
  readonly room?: Installation['room'];
  readonly lines?: Installation['lines'];
}

export function installation(change: InstallationChange = {}): Installation {
  const port = (which: 'suction' | 'discharge', facing: Vec3) => ({
    which,
    nps: '6',
    position: [0, 0.3 * facing[1], 0] as const,
    facing,
    flange: { standard: 'B16.1', class: '125', face: 'flat', material: 'cast iron', nps: '6' } as const,
  });
  return {
    format: 'pipeborne/1',
    fingerprint: '0'.repeat(64),
    review: {
      project: 'Test',
      status: 'preliminary',
      date: '2026-01-01',
      revisions: [],
      notes: [],
      units: 'si',
    },
    service: {
      name: 'water',
      fluid: { kind: 'water', share: 0 },
      density: {
        filled: sourced(0),
        hot: sourced(0),
        cold: sourced(0),
        test: sourced(0),
        running: sourced(0),
      },
      installationTemperature: sourced(290),
      runningTemperature: sourced(350),
      hotTemperature: sourced(360),
      coldTemperature: sourced(285),
      workingPressure: sourced(4e5),
      designPressure: sourced(8e5),
      testPressure: sourced(12e5),
      ...change.service,
    },
    materials: {},
    pump: {
      mark: 'P-1',
      build: 'split-coupled',
      mount: 'hung',
      position: [0, 0, 1],
      casing: { mass: sourced(200), centre: [0, 0, 0.05], material: 'steel' },
      motor: { mass: sourced(130), centre: [0, 0, 0.8], power: 15000, speed: 185 },
      contents: sourced(0.026),
      ports: { suction: port('suction', [0, -1, 0]), discharge: port('discharge', [0, 1, 0]) },
      duty: { flow: 0.04, head: 22 },
      outline: {
        motorTop: sourced(1.2),
        motorDiameter: sourced(0.4),
        casingDiameter: sourced(0.6),
        withdrawal: sourced(0.5),
      },
      ...change.pump,
    },
    lines: change.lines ?? [
      { name: 'suction line', from: 'suction', section: NPS6, walk: [] },
      { name: 'discharge line', from: 'discharge', section: NPS6, walk: [] },
    ],
    room: change.room ?? { ceiling: 4, objects: [] },
    limits: {
      nozzle: { comparisons: [] },
      stress: { code: 'B31.9', cycles: sourced(7000) },
      rods: { edition: 'older' },
      span: {},
      firstSupport: { bend: sourced(0.3048) },
      ...change.limits,
    },
    assumptions: [],
  };
}

/** Points of the frame [m]; the elbow has a radius of 0.2286. */
const POINTS: Readonly<Record<string, Vec3>> = {
  'pump suction': [0, -0.3, 1],
  'pump discharge': [0, 0.3, 1],
  H1: [0, -1.3, 1],
  'elbow 1 near end': [0, 1.3, 1],
  'elbow 1 far end': [0, 1.5286, 1.2286],
  H2: [0, 1.5286, 2.2286],
};

const plainMember = {
  tube: NPS6,
  material: 'carbon steel',
  mass: { metal: 0, covering: 0 },
  contentsGroup: 'none',
};

export const hangerSupport = (mark: string): FrameSupport => ({
  name: mark,
  word: 'hanger',
  point: mark,
  restraints: [
    {
      direction: [0, 0, 1],
      acts: 'translation',
      stiffness: Number.POSITIVE_INFINITY,
      sense: 'push',
      preload: 0,
      gap: 0,
      imposed: 0,
      friction: 0,
    },
  ],
});

const acting = (name: string, change: Partial<FrameCondition> = {}): FrameCondition => ({
  name,
  role: roleOfId(name),
  gravity: [0, 0, -9.80665],
  contentsDensity: 0,
  drained: [],
  covering: name !== 'empty' && name !== 'test',
  temperature: 290,
  pressure: 0,
  absent: [],
  stopped: [],
  removed: [],
  loads: [],
  ...change,
});

export function frame(change: Partial<Frame> = {}): Frame {
  return {
    points: POINTS,
    materials: {},
    members: [
      { kind: 'pipe', name: 'straight 1', from: 'pump suction', to: 'H1', ...plainMember },
      { kind: 'pipe', name: 'straight 2', from: 'pump discharge', to: 'elbow 1 near end', ...plainMember },
      {
        kind: 'bend',
        name: 'elbow 1',
        from: 'elbow 1 near end',
        to: 'elbow 1 far end',
        centre: [0, 1.3, 1.2286],
        flexibility: 6.6,
        ...plainMember,
      },
      { kind: 'pipe', name: 'straight 3', from: 'elbow 1 far end', to: 'H2', ...plainMember },
    ],
    bodies: [{ name: 'pump', points: ['pump suction', 'pump discharge'], masses: [] }],
    joints: [],
    supports: [hangerSupport('H1'), hangerSupport('H2')],
    conditions: [
      acting('empty'),
      acting('filled'),
      acting('test'),
      acting('hot', { temperature: 360 }),
      acting('cold', { temperature: 285 }),
      acting('running', { temperature: 350 }),
    ],
    installationTemperature: 290,
    ...change,
  };
}

export const supportPart = (mark: string, change: Partial<SupportPart> = {}): SupportPart => ({
  name: mark,
  path: mark,
  section: NPS6,
  kind: 'hanger',
  mark,
  holds: [[0, 0, 1]],
  holdsRotation: false,
  oneWay: true,
  ...change,
});

export const placedSupport = (
  mark: string,
  line: string,
  station: number,
  part: Partial<SupportPart> = {},
): PlacedSupport => ({
  mark,
  kind: part.kind ?? 'hanger',
  point: mark,
  at: POINTS[mark] ?? [0, 0, 0],
  line,
  station,
  part: supportPart(mark, part),
  section: NPS6,
  along: [0, 1, 0],
});

/** Rating of a class 150 steel flange at two temperatures [K], [Pa]. */
export const RATING = [
  [311, 1.97e6],
  [366, 1.79e6],
] as const;

export const dimensions = (change: Partial<FlangeDimensions> = {}): FlangeDimensions => ({
  nps: '6',
  boltCircle: 0.2413,
  bolts: 8,
  bolt: '3/4',
  rating: RATING,
  ...change,
});

export const steelFlange: FlangePart = {
  name: 'flange 1',
  path: 'flange 1',
  section: NPS6,
  kind: 'flange',
  standard: 'B16.5',
  class: '150',
  face: 'raised',
  type: 'weld-neck',
  length: sourced(0.0889),
  mass: sourced(11.8),
  joint: dimensions(),
};

export const side = (owner: string, change: Partial<FlangeSide> = {}): FlangeSide => ({
  owner,
  standard: 'B16.5',
  class: '150',
  face: 'raised',
  material: 'steel',
  dimensions: dimensions(),
  ...change,
});

/** Side of a valve of which the file gives weight and length alone. */
export const unknownSide = (owner: string): FlangeSide => ({
  owner,
  standard: 'unknown',
  class: 'unknown',
  face: 'unknown',
  material: 'unknown',
});

export const flangeJoint = (near: FlangeSide, far: FlangeSide): PlacedFlangeJoint => ({
  name: `${near.owner} to ${far.owner}`,
  line: 'discharge line',
  point: 'pump discharge',
  at: [0, 0.3, 1],
  axis: [0, 1, 0],
  body: 'pump',
  sides: [near, far],
});

const elbow: ElbowPart = {
  name: 'elbow 1',
  path: 'elbow 1',
  section: NPS6,
  kind: 'elbow',
  radius: sourced(0.2286),
  turn: [0, 0, 1],
  mass: sourced(10.7),
};

export function layout(change: Partial<Layout> = {}): Layout {
  const nozzle = (which: 'suction' | 'discharge', north: 1 | -1) => ({
    which,
    point: `pump ${which}`,
    at: [0, 0.3 * north, 1] as const,
    axis: [0, north, 0] as const,
    nps: '6',
    section: NPS6,
  });
  return {
    frame: frame(),
    nozzles: { suction: nozzle('suction', -1), discharge: nozzle('discharge', 1) },
    supports: [placedSupport('H1', 'suction line', 1), placedSupport('H2', 'discharge line', 2.3591)],
    spans: [],
    bends: [
      {
        name: 'elbow 1',
        line: 'discharge line',
        members: ['elbow 1'],
        at: [0, 1.46, 1.07],
        part: elbow,
        start: 1,
        end: 1.3591,
        factors: {
          characteristic: 0.25,
          flexibility: 6.6,
          intensification: 2.266,
          stiffEnds: 0,
          stiffening: 1,
        },
      },
    ],
    tees: [],
    flangeJoints: [],
    weights: [],
    strokes: [],
    memberInfo: {
      'straight 1': { line: 'suction line', part: 'straight 1', section: NPS6 },
      'straight 2': { line: 'discharge line', part: 'straight 2', section: NPS6 },
      'elbow 1': { line: 'discharge line', part: 'elbow 1', section: NPS6 },
      'straight 3': { line: 'discharge line', part: 'straight 3', section: NPS6 },
    },
    ...change,
  };
}

export const held = (force: Vec3, state: SupportResponse['states'][number] = 'holding'): SupportResponse => ({
  load: wrench(force),
  states: [state],
});

/** Answers of one condition, as far as a test cares. */
export interface Answers {
  /** Loads of the pipe on the nozzles. */
  readonly suction?: Wrench;
  readonly discharge?: Wrench;
  /** Wrench of the near point on other members. */
  readonly members?: Readonly<Record<string, Wrench>>;
  readonly supports?: Readonly<Record<string, SupportResponse>>;
  readonly movements?: ConditionResponse['movements'];
}

export function solved(name: string, answers: Answers = {}): ConditionResponse {
  const from = {
    'straight 1': opposite(answers.suction ?? ZERO),
    'straight 2': opposite(answers.discharge ?? ZERO),
    'elbow 1': ZERO,
    'straight 3': ZERO,
    ...answers.members,
  };
  return {
    name,
    movements: answers.movements ?? {},
    supports: { H1: held([0, 0, -2000]), H2: held([0, 0, -2000]), ...answers.supports },
    members: Object.fromEntries(
      Object.entries(from).map(([member, near]) => [member, weightless(member, near)]),
    ),
    joints: {},
    weight: 5000,
    balance: { applied: ZERO, reacted: ZERO, residual: 0 },
    rounds: 1,
  };
}

/** Both ends of a member without weight: the far end balances the near one. */
function weightless(name: string, near: Wrench): { readonly from: Wrench; readonly to: Wrench } {
  const member = frame().members.find((candidate) => candidate.name === name);
  const [from, to] = [POINTS[member?.from ?? ''], POINTS[member?.to ?? '']];
  if (from === undefined || to === undefined) throw new Error(`no member ${name}`);
  const [x, y, z] = [from[0] - to[0], from[1] - to[1], from[2] - to[2]];
  const [fx, fy, fz] = near.force;
  const [mx, my, mz] = near.moment;
  const carried: Vec3 = [mx + y * fz - z * fy, my + z * fx - x * fz, mz + x * fy - y * fx];
  return { from: near, to: opposite({ force: near.force, moment: carried }) };
}

export interface SubjectChange extends InstallationChange {
  readonly layout?: Partial<Layout>;
  /** Answers by condition; conditions not named are solved with nothing on the nozzles. */
  readonly answers?: Readonly<Record<string, Answers>>;
}

export function subject(change: SubjectChange = {}): Subject {
  const placed = layout(change.layout);
  const conditions = Object.fromEntries(
    placed.frame.conditions.map(({ name }) => [name, solved(name, change.answers?.[name])]),
  );
  const response: Response = {
    conditions,
    quality: { residual: 0, reciprocalCondition: 1, unknowns: 1, profile: 1 },
  };
  return { installation: installation(change), layout: placed, response };
}

/** Every condition with the same answers. */
export const always = (answers: Answers): Readonly<Record<string, Answers>> =>
  Object.fromEntries(['empty', 'filled', 'test', 'hot', 'cold', 'running'].map((name) => [name, answers]));

/** Limits that must never be taken for a limit, and one that is missing. */
export const UNUSABLE = [
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
  ['zero', 0],
  ['negative', -1],
] as const;
