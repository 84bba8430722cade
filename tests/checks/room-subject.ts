import type { Subject } from '../../src/analysis/subject.js';
import type { Check } from '../../src/checks/define-check.js';
import { runCheck } from '../../src/checks/run-check.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';
import type { Finding } from '../../src/judging/finding.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';

type Content = Readonly<Record<string, unknown>>;

/** A place of the plan in metres, as a file holds it. */
export const place = (east: number, north: number, elevation: number): Content => ({
  east: `${east} m`,
  north: `${north} m`,
  elevation: `${elevation} m`,
});

/** A box of the room by two corners in metres. */
export const box = (
  kind: string,
  name: string,
  [low, high]: readonly [readonly [number, number, number], readonly [number, number, number]],
  more: Content = {},
): Content => ({ kind, name, from: place(...low), to: place(...high), ...more });

/**
 * A subject read from a file in SI units: a pump at the origin with its ports at 1 m, straight lines to the south and the
 * north, a floor at 0 m and a ceiling at 4 m, and what the test puts into the room. Nothing is solved.
 */
export function roomSubject(
  objects: readonly Content[],
  change: { room?: Content; pump?: Content } = {},
): Subject {
  const port = (facing: string): Content => ({
    size: '6 in',
    facing,
    'from-shaft': '400 mm',
    flange: { standard: 'B16.1', class: 125, face: 'flat' },
  });
  const walk = [{ straight: '3 m' }, { end: 'anchored' }];
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
      at: place(0, 0, 1),
      casing: { weight: '200 kg', contents: '25 l' },
      motor: { weight: '150 kg', 'centre-of-gravity': { up: '800 mm' }, power: '15 kW', speed: '1470 rpm' },
      duty: { flow: '150 m3/h', head: '20 m', efficiency: '75 %' },
      suction: port('south'),
      discharge: port('north'),
      outline: { 'motor-top': '1.2 m', 'motor-diameter': '400 mm', 'casing-diameter': '600 mm' },
      ...change.pump,
    },
    piping: {
      size: '6 in',
      schedule: 'STD',
      material: 'carbon steel',
      elbows: 'long',
      insulation: 'none',
      lines: [
        { from: 'suction', walk },
        { from: 'discharge', walk },
      ],
    },
    room: { floor: '0 m', ceiling: '4 m', objects, ...change.room },
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

/** The only finding of one check. */
export function roomFinding(check: Check, ...subject: Parameters<typeof roomSubject>): Finding {
  const [first, ...others] = runCheck(check, roomSubject(...subject));
  if (first === undefined || others.length > 0)
    throw new Error(`${others.length + 1} findings of ${check.id}`);
  return first;
}
