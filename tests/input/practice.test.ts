import { expect, test } from 'vitest';
import type { Part } from '../../src/input/installation.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { practiceSubject, valve } from '../checks/practice-subject.js';
import { fileText } from './sample-text.js';

const walkOf = (suction: readonly Record<string, unknown>[]): readonly Part[] =>
  practiceSubject({ suction }).installation.lines[0]?.walk ?? [];
const end = { end: 'anchored' };

test('drains, vents, taps and screens are parts without length, named by their kind', () => {
  const walk = walkOf([
    { drain: { size: '3/4 in' } },
    { vent: {} },
    { 'gauge-tap': { size: '1/4 in' } },
    { 'start-up-screen': {} },
    { straight: '1 m' },
    { drain: {} },
    end,
  ]);
  expect(
    walk.flatMap((part) => (part.kind === 'fitting' ? [[part.name, part.fitting, part.size]] : [])),
  ).toEqual([
    ['drain 1', 'drain', '3/4'],
    ['vent 1', 'vent', undefined],
    ['gauge tap 1', 'gauge-tap', '1/4'],
    ['start-up-screen 1', 'start-up-screen', undefined],
    ['drain 2', 'drain', undefined],
  ]);
});

test('a tap between a flange and a valve hides neither from the other', () => {
  const unsaid = { valve: { kind: 'ball', weight: '40 kg', length: '300 mm', contents: '5 l' } };
  const flange = { flange: { class: 150, type: 'slip-on' } };
  const ends = (walk: readonly Part[]) => walk.flatMap((part) => (part.kind === 'valve' ? [part.ends] : []));
  expect(ends(walkOf([{ straight: '1 m' }, flange, { 'gauge-tap': {} }, unsaid, end]))).toEqual(['flanged']);
});

test('what is said of pump, motor, service and limits arrives, and what is not said is left out', () => {
  const { installation } = practiceSubject({
    service: { duty: 'process', hazards: 'none', system: 'open' },
    pump: { shaft: 'vertical', drain: 'no', vent: 'yes', 'gauge-taps': { suction: 'yes' }, backflow: 'none' },
    motor: { 'service-factor': 1.15, 'shaft-down': 'yes' },
    limits: {
      velocity: { suction: '6 ft/s', source: 'guide' },
      'straight-run': { diameters: 8, source: 'table' },
    },
  });
  expect(installation.service).toMatchObject({ duty: 'process', hazards: 'none', system: 'open' });
  expect(installation.pump).toMatchObject({
    shaft: 'vertical',
    drain: false,
    vent: true,
    gaugeTaps: { suction: true },
    backflow: 'none',
    motor: { shaftDown: true, serviceFactor: { value: 1.15 } },
  });
  expect(installation.limits.velocity?.suction?.value).toBeCloseTo(1.8288, 9);
  expect(installation.limits.velocity).not.toHaveProperty('discharge');
  expect(installation.limits.straightRun).toMatchObject({ value: 8, origin: { document: 'table' } });
  const silent = practiceSubject().installation;
  for (const key of ['shaft', 'drain', 'vent', 'gaugeTaps', 'backflow'])
    expect(silent.pump).not.toHaveProperty(key);
  for (const key of ['duty', 'hazards', 'system']) expect(silent.service).not.toHaveProperty(key);
});

test('a valve that is said to shut bounds what drains with the pump', () => {
  const groups = (shuts: string) => {
    const suction = [{ straight: '1 m' }, valve('control', { shuts }), { straight: '1 m' }, end];
    return practiceSubject({ suction }).layout.frame.members.map(({ contentsGroup }) => contentsGroup);
  };
  expect(new Set(groups('yes'))).toContain('suction line');
  expect(new Set(groups('no'))).not.toContain('suction line');
});

test('a service named after fire is pointed out until the file says what the pump is for', () => {
  const text = fileText('../../samples/pool-hot-water.yaml').replace(
    'name: heating hot water',
    'name: Sprinkler main',
  );
  const codes = (file: string): readonly string[] => {
    const read = readInstallation(file);
    return read.ok ? read.warnings.map(({ code }) => code) : ['refused'];
  };
  expect(codes(text)).not.toContain('input.fire-in-name');
  expect(codes(text.replace('  duty: building services\n', ''))).toContain('input.fire-in-name');
});

test('no file outside the scope is ever read', () => {
  const pool = fileText('../../samples/pool-hot-water.yaml');
  const change = (from: string, to: string) => readInstallation(pool.replace(from, to)).ok;
  expect(readInstallation(pool).ok).toBe(true);
  expect(change('duty: building services', 'duty: fire protection')).toBe(false);
  expect(change('hazards: none', 'hazards: [toxic]')).toBe(false);
  expect(change('shaft: vertical', 'shaft: horizontal')).toBe(false);
  expect(change('build: split-coupled', 'build: base-mounted')).toBe(false);
});
