import type { Subject } from '../../src/analysis/subject.js';
import type { Check } from '../../src/checks/define-check.js';
import { runCheck } from '../../src/checks/run-check.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';
import type { Finding } from '../../src/judging/finding.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';

/** One step of a walk, as a file holds it. */
export type FileStep = Readonly<Record<string, unknown>>;

export interface PracticeFile {
  readonly service?: FileStep;
  readonly pump?: FileStep;
  readonly motor?: FileStep;
  readonly limits?: FileStep;
  readonly suction?: readonly FileStep[];
  readonly discharge?: readonly FileStep[];
}

/** A valve of which the file gives everything, 0.3 m long. */
export const valve = (kind: string, change: FileStep = {}): FileStep => ({
  valve: { kind, weight: '40 kg', length: '300 mm', contents: '5 l', ends: 'welded', ...change },
});

/** Both sides as they should be: 1 m of pipe, a valve that shuts, 2 m of pipe, the far anchor. */
const plain: readonly FileStep[] = [
  { straight: '1 m' },
  valve('gate'),
  { straight: '2 m' },
  { end: 'anchored' },
];

/**
 * A subject of the checks of installation practice, read from a file: NPS 6, ports 0.4 m either side of the shaft at
 * 1 m, suction facing south. Nothing is solved: these checks look at the description alone.
 */
export function practiceSubject(file: PracticeFile = {}): Subject {
  const port = (facing: string): FileStep => ({
    size: '6 in',
    facing,
    'from-shaft': '400 mm',
    flange: { standard: 'B16.1', class: 125, face: 'flat' },
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
      ...file.service,
    },
    pump: {
      mark: 'P-1',
      build: 'split-coupled',
      mount: 'hung',
      at: { east: '0 m', north: '0 m', elevation: '1 m' },
      casing: { weight: '200 kg', contents: '25 l' },
      motor: {
        weight: '150 kg',
        'centre-of-gravity': { up: '800 mm' },
        power: '15 kW',
        speed: '1470 rpm',
        ...file.motor,
      },
      duty: { flow: '150 m3/h', head: '20 m', efficiency: '75 %' },
      suction: port('south'),
      discharge: port('north'),
      ...file.pump,
    },
    piping: {
      size: '6 in',
      schedule: 'STD',
      material: 'carbon steel',
      elbows: 'long',
      insulation: 'none',
      lines: [
        { from: 'suction', walk: file.suction ?? plain },
        { from: 'discharge', walk: file.discharge ?? plain },
      ],
    },
    ...(file.limits && { limits: file.limits }),
  };
  const read = readInstallation(JSON.stringify(content));
  if (!read.ok) throw new Error(read.issues.flatMap(printIssue).join('\n'));
  const { installation } = read;
  return {
    installation,
    layout: buildLayout(installation),
    response: { conditions: {}, quality: { residual: 0, reciprocalCondition: 1, unknowns: 1, profile: 1 } },
  };
}

/** All findings of one check. */
export function practiceFindings(check: Check, file: PracticeFile = {}): readonly Finding[] {
  return runCheck(check, practiceSubject(file));
}

/** The finding of one check at a place, or its only finding. */
export function practiceFinding(check: Check, file: PracticeFile = {}, at?: string): Finding {
  const found = practiceFindings(check, file).filter((finding) => at === undefined || finding.at === at);
  const [first, ...others] = found;
  if (first === undefined || others.length > 0)
    throw new Error(`${found.length} findings of ${check.id} at ${at ?? 'any place'}`);
  return first;
}
