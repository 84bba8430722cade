import type { Subject } from '../../src/analysis/subject.js';
import type { Check } from '../../src/checks/define-check.js';
import { runCheck } from '../../src/checks/run-check.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';
import type { Finding } from '../../src/judging/finding.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';

type Entry = Readonly<Record<string, unknown>>;

export interface AccessFile {
  readonly pump?: Entry;
  readonly outline?: Entry;
  readonly dimensions?: Entry;
  readonly room?: Entry;
  readonly objects?: readonly Entry[];
  readonly spaces?: readonly Entry[];
  readonly suction?: readonly Entry[];
  readonly discharge?: readonly Entry[];
}

/** A box of the room by its lowest and highest corners [m]. */
export function box(name: string, kind: string, low: readonly number[], high: readonly number[]): Entry {
  const corner = ([east, north, elevation]: readonly number[]): Entry => ({
    east: `${east} m`,
    north: `${north} m`,
    elevation: `${elevation} m`,
  });
  return { kind, name, from: corner(low), to: corner(high) };
}

/** Walls 5 m off the shaft on every side, but for a door of 1.2 m in the east wall. */
export const walls: readonly Entry[] = [
  box('north wall', 'wall', [-5, 5, 0], [5, 5.2, 4]),
  box('south wall', 'wall', [-5, -5.2, 0], [5, -5, 4]),
  box('west wall', 'wall', [-5.2, -5, 0], [-5, 5, 4]),
  box('east wall, north of the door', 'wall', [5, 0.6, 0], [5.2, 5, 4]),
  box('east wall, south of the door', 'wall', [5, -5, 0], [5.2, -0.6, 4]),
];

/** A lift straight over the motor: eyes at 2.2 m, anchor at 3.9 m, sling 0.26 m high, hoist 0.4 m. */
export const lift: Entry = {
  anchor: { east: '0 m', north: '0 m', elevation: '3.9 m' },
  rating: '500 kg',
  'hoist-height': '400 mm',
  'hook-to-sling': '40 mm',
  sling: { legs: 2, angle: '60 deg', spread: '300 mm', rating: '400 kg' },
  factor: 2,
  'off-centre': '20 mm',
  source: "owner's rule",
};

/** The same without one of its entries. */
export function without(entry: Entry, key: string): Entry {
  return Object.fromEntries(Object.entries(entry).filter(([name]) => name !== key));
}

const pipe: readonly Entry[] = [{ straight: '600 mm' }, { straight: '2 m' }, { end: 'anchored' }];

/**
 * A subject of the checks of access, read from a file: casing 0.6 m wide from 0.8 to 1.2 m, motor 0.4 m wide from 1.6 to
 * 2.2 m, window of the coupling from 1.25 to 1.45 m, pipes of NPS 6 level to north and south at 1 m.
 */
export function accessSubject(file: AccessFile = {}): Subject {
  const port = (facing: string): Entry => ({
    size: '6 in',
    facing,
    'from-shaft': '400 mm',
    flange: { standard: 'own', class: 'own', face: 'flat' },
  });
  const content = {
    format: 'pipeborne/1',
    review: { project: 'Test', status: 'preliminary', date: '2026-01-15', units: 'si' },
    service: {
      name: 'heating water',
      fluid: 'water',
      density: '1000 kg/m3',
      temperatures: { installation: '20 degC', running: '60 degC', hot: '80 degC', cold: '10 degC' },
      pressures: { working: '3 bar', design: '6 bar', test: '9 bar' },
    },
    pump: {
      mark: 'P-1',
      build: 'split-coupled',
      mount: 'hung',
      at: { east: '0 m', north: '0 m', elevation: '1 m' },
      casing: { weight: '200 kg', contents: '25 l' },
      motor: { weight: '130 kg', 'centre-of-gravity': { up: '800 mm' }, power: '15 kW', speed: '1475 rpm' },
      duty: { flow: '140 m3/h', head: '22 m' },
      suction: port('south'),
      discharge: port('north'),
      outline: {
        'motor-top': '1200 mm',
        'motor-diameter': '400 mm',
        'casing-diameter': '600 mm',
        withdrawal: '500 mm',
        ...file.outline,
      },
      dimensions: {
        'casing-above': '200 mm',
        'casing-below': '200 mm',
        'motor-foot': '600 mm',
        eyes: '1200 mm',
        'guard-diameter': '300 mm',
        spacer: { from: '250 mm', length: '200 mm', 'seal-length': '150 mm', 'coupling-weight': '12 kg' },
        ...file.dimensions,
      },
      ...file.pump,
    },
    piping: {
      size: '6 in',
      schedule: 'STD',
      material: 'carbon steel',
      elbows: 'long',
      insulation: 'none',
      lines: [
        { from: 'suction', walk: file.suction ?? pipe },
        { from: 'discharge', walk: file.discharge ?? pipe },
      ],
    },
    room: {
      floor: '0 m',
      ceiling: '4 m',
      objects: file.objects ?? walls,
      'way-out': { east: '5.1 m', north: '0 m', width: '1.2 m' },
      lift,
      ...file.room,
    },
    ...(file.spaces && { 'service-spaces': file.spaces }),
  };
  const read = readInstallation(JSON.stringify(content));
  if (!read.ok) throw new Error(read.issues.flatMap(printIssue).join('\n'));
  const layout = buildLayout(read.installation);
  const quality = { residual: 0, reciprocalCondition: 1, unknowns: 1, profile: 1 };
  return { installation: read.installation, layout, response: { conditions: {}, quality } };
}

/** The findings of a check. */
export function findingsOf(check: Check, file: AccessFile = {}): readonly Finding[] {
  return runCheck(check, accessSubject(file));
}

/** The first finding of a check. */
export function findingOf(check: Check, file: AccessFile = {}): Finding {
  const [finding] = findingsOf(check, file);
  if (finding === undefined) throw new Error('nothing was found');
  return finding;
}

/** A service space of the maker. */
export function space(purpose: string, change: Entry): Entry {
  return { purpose, owner: 'maker', source: 'manual', ...change };
}
