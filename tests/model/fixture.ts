import type {
  Installation,
  Line,
  Material,
  Origin,
  Part,
  PipeSection,
  Port,
  Sourced,
  Vec3,
} from '../../src/input/installation.js';

/** A small complete installation for tests of the model, written out in SI. */
const given: Origin = { kind: 'given', path: 'test' };
export const sourced = (value: number): Sourced => ({ value, origin: given });

export const NPS6: PipeSection = {
  name: 'NPS 6 STD',
  nps: '6',
  outsideDiameter: 0.168275,
  wall: 0.007112,
  material: 'steel',
  massPerLength: sourced(28.26),
};
export const NPS4: PipeSection = {
  ...NPS6,
  name: 'NPS 4 STD',
  nps: '4',
  outsideDiameter: 0.1143,
  wall: 0.00602,
  massPerLength: sourced(16.07),
};

const base = (name: string): { name: string; path: string; section: PipeSection } => ({
  name,
  path: name,
  section: NPS6,
});

export const straight = (name: string, length: number, section = NPS6): Part => ({
  ...base(name),
  section,
  kind: 'straight',
  length,
});
export const elbow = (name: string, turn: Vec3, extra: { mark?: string } = {}): Part => ({
  ...base(name),
  kind: 'elbow',
  radius: sourced(0.2286),
  turn,
  mass: sourced(10.7),
  ...(extra.mark !== undefined && { support: support('stand', extra.mark) }),
});
export const flange = (name: string, face: 'raised' | 'flat' = 'raised', length = 0.0889): Part => ({
  ...base(name),
  kind: 'flange',
  standard: 'B16.5',
  class: '150',
  face,
  type: 'weld-neck',
  length: sourced(length),
  mass: sourced(11.8),
  joint: { nps: '6', outsideDiameter: 0.2794, boltCircle: 0.2413, bolts: 8, bolt: '3/4' },
});
export const valve = (
  name: string,
  ends: 'flanged' | 'between flanges' = 'flanged',
  length = 0.2667,
): Part => ({
  ...base(name),
  kind: 'valve',
  valve: 'gate',
  length: sourced(length),
  mass: sourced(84),
  offset: [0, 0, 0],
  ends,
  contents: sourced(0.005),
});
export const reducer = (name: string, flat?: 'top' | 'bottom'): Part => ({
  ...base(name),
  kind: 'reducer',
  to: NPS4,
  length: sourced(0.1397),
  mass: sourced(3.4),
  shape: flat === undefined ? 'concentric' : 'eccentric',
  ...(flat !== undefined && { flat }),
});
export const tee = (name: string, direction: Vec3, walk: readonly Part[]): Part => ({
  ...base(name),
  kind: 'tee',
  enterBy: 'run',
  turn: [0, -1, 0],
  centreToRunEnd: sourced(0.143),
  centreToBranchEnd: sourced(0.13),
  mass: sourced(15),
  branchSection: NPS4,
  runSection: NPS6,
  side: { direction, section: NPS4, walk },
  make: 'welding tee',
});
export function support(
  kind: 'hanger' | 'stand' | 'rest' | 'anchor',
  mark: string,
): Extract<Part, { mark: string }> {
  return {
    ...base(mark),
    kind,
    mark,
    holds:
      kind === 'anchor'
        ? [
            [1, 0, 0],
            [0, 1, 0],
            [0, 0, 1],
          ]
        : [[0, 0, 1]],
    holdsRotation: kind === 'anchor',
    oneWay: kind !== 'anchor',
  };
}
export const spring = (mark: string, rate: number, load: number): Part => ({
  ...support('hanger', mark),
  kind: 'spring-hanger',
  oneWay: false,
  spring: { rate, load: sourced(load) },
});
export const end = (name: string, kind: 'anchored' | 'free' = 'anchored'): Part => ({
  ...base(name),
  kind: 'end',
  end: kind,
});

const port = (which: 'suction' | 'discharge', facing: Vec3): Port => ({
  which,
  nps: '6',
  position: [facing[0] * 0.4, facing[1] * 0.4, facing[2] * 0.4],
  facing,
  flange: {
    standard: 'B16.1',
    class: '125',
    face: 'flat',
    material: 'cast iron',
    nps: '6',
    bolts: 8,
    boltCircle: 0.2413,
  },
});

const steel: Material = {
  id: 'steel',
  name: 'carbon steel',
  modulus: sourced(203.4e9),
  poisson: 0.3,
  density: 7842,
  expansion: [
    [294.26, 0],
    [394.26, 0.0012],
  ],
  expansionCitation: { source: 'asme-bpvc-ii-d', clause: 'TE-1', confidence: 'memory' },
};

/** Suction walks south, discharge north, from ports 0.4 m off the shaft at 1.5 m over the floor. */
export function installation(
  suction: readonly Part[],
  discharge: readonly Part[],
  change: Partial<Installation['pump']> = {},
): Installation {
  const line = (name: string, from: Line['from'], walk: readonly Part[]): Line => ({
    name,
    from,
    section: NPS6,
    walk,
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
        filled: sourced(1000),
        hot: sourced(970),
        cold: sourced(1000),
        test: sourced(999),
        running: sourced(980),
      },
      installationTemperature: sourced(294.26),
      runningTemperature: sourced(344.26),
      hotTemperature: sourced(354.26),
      coldTemperature: sourced(284.26),
      workingPressure: sourced(4e5),
      designPressure: sourced(8e5),
      testPressure: sourced(12e5),
    },
    materials: { steel },
    pump: {
      mark: 'P-1',
      build: 'split-coupled',
      mount: 'hung',
      position: [0, 0, 1.5],
      casing: { mass: sourced(200), centre: [0, 0, 0.05], material: 'steel' },
      motor: { mass: sourced(130), centre: [0, 0, 0.8], power: 15000, speed: 185 },
      contents: sourced(0.026),
      ports: { suction: port('suction', [0, -1, 0]), discharge: port('discharge', [0, 1, 0]) },
      duty: { flow: 0.04, head: 22 },
      outline: { motorTop: sourced(1.2), motorDiameter: sourced(0.35), casingDiameter: sourced(0.55) },
      ...change,
    },
    lines: [line('suction line', 'suction', suction), line('discharge line', 'discharge', discharge)],
    room: { objects: [] },
    limits: {
      nozzle: { comparisons: [] },
      stress: { code: 'B31.9', cycles: sourced(7000) },
      rods: { edition: 'older' },
      span: {},
      firstSupport: { bend: sourced(0.3048) },
    },
    assumptions: [],
  };
}
