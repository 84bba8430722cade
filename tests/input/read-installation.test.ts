import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { ElbowPart, Part, SupportPart, TeePart } from '../../src/input/installation.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { changed, everyPart, installationOf, issuesOf, shortest } from './sample-text.js';

const INCH = 0.0254;
const POUND = 0.45359237;
const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;

const everything = installationOf(everyPart);
const allParts = (walk: readonly Part[]): readonly Part[] =>
  walk.flatMap((part) => (part.kind === 'tee' ? [part, ...allParts(part.side.walk)] : [part]));
const parts = everything.lines.flatMap((line) => allParts(line.walk));
const named = (name: string): Part => {
  const part = parts.find((candidate) => candidate.name === name);
  if (!part) throw new Error(`no part ${name} among ${parts.map((candidate) => candidate.name).join(', ')}`);
  return part;
};
const support = (mark: string): SupportPart => named(mark) as SupportPart;

test('the fingerprint is that of the bytes of the file', () => {
  const text = changed(shortest, ['As short as can be', 'Café №1']);
  expect(installationOf(text).fingerprint).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
});

test('JSON is read like YAML', () => {
  const json = JSON.stringify({ format: 'pipeborne/1', review: 3 });
  expect(issuesOf(json).some(({ code, place }) => code === 'input.wrong-type' && place?.column === 34)).toBe(
    true,
  );
});

test('every kind of part and support is read', () => {
  expect([...new Set(parts.map(({ kind }) => kind))].sort()).toEqual(
    [
      'anchor',
      'elbow',
      'end',
      'flange',
      'flexible-connector',
      'grooved-joint',
      'guide',
      'hanger',
      'reducer',
      'rest',
      'spring-hanger',
      'stand',
      'stop',
      'straight',
      'suction-diffuser',
      'tee',
      'valve',
      'weight',
    ].sort(),
  );
});

test('parts are counted by kind, the suction line first, whatever the order of the file', () => {
  expect(everything.lines.map(({ name, from }) => [name, from])).toEqual([
    ['suction line', 'suction'],
    ['pressure line', 'discharge'],
  ]);
  expect(everything.lines[0]?.walk.map(({ name }) => name).slice(0, 8)).toEqual([
    'flange 1',
    'straight 1',
    'H1',
    'straight 2',
    'elbow 1',
    'elbow 2',
    'straight 3',
    'G3',
  ]);
  expect(everything.lines[1]?.walk.some(({ name }) => name === 'tee 2')).toBe(true);
  expect(new Set(parts.map(({ name }) => name)).size).toBe(parts.length);
});

test('the path of a part leads back to its place in the file', () => {
  expect(named('flange 1').path).toBe('piping.lines[1].walk[0].flange');
  expect(named('H2').path).toBe('piping.lines[1].walk[16].tee.side.walk[1].hanger');
});

test('temperatures, pressures and weights are SI', () => {
  const { service, pump } = everything;
  expect(service.runningTemperature.value).toBeCloseTo(kelvin(44), 9);
  expect(service.testPressure.value).toBeCloseTo((188 * POUND * 9.80665) / INCH ** 2, 6);
  expect(pump.casing.mass).toEqual({
    value: 520 * POUND,
    origin: { kind: 'given', path: 'pump.casing.weight', known: 'maker' },
  });
  expect(pump.motor.centre).toEqual([INCH, 0, 34 * INCH]);
  expect(pump.position[2]).toBeCloseTo(54 * INCH, 12);
  expect(pump.motor.speed).toBeCloseTo((1770 * 2 * Math.PI) / 60, 9);
});

test('ports stand in front of the shaft, or where they are said to stand', () => {
  const { suction, discharge } = everything.pump.ports;
  expect(suction.position).toEqual([0, -16 * INCH, 2 * INCH]);
  expect(discharge.position).toEqual([2 * INCH, 16 * INCH, 0]);
  expect(discharge.nps).toBe('6');
  expect(suction.flange).toMatchObject({
    standard: 'B16.1',
    class: '125',
    face: 'flat',
    material: 'cast iron',
    bolts: 8,
  });
  expect(suction.flange.rating).toHaveLength(2);
  expect(discharge.flange.rating?.length).toBeGreaterThan(2);
});

test('the base stands below the ports, on its springs', () => {
  const { base } = everything.pump;
  expect(base?.position).toEqual([0, 0, -14 * INCH]);
  expect(base?.springs).toMatchObject({ count: 2 });
});

describe('springs with places', () => {
  const old = 'springs: {rate: 900 lb/in, load: 400 lb, count: 2}';
  const placed = (at: string) =>
    changed(everyPart, [
      old,
      `inertia-base: {weight: 500 lb, below: 3 in}, springs: {rate: 900 lb/in, load: 400 lb, count: 2, side: 600 lb/in, at: ${at}}`,
    ]);

  test('stand around the base, which is their middle', () => {
    const { base } = installationOf(placed('[{east: 12 in, north: 4 in}, {east: -8 in}]')).pump;
    const middle = base?.position.map((value) => Math.round(value / INCH));
    expect(middle).toEqual([2, 2, -14]);
    const inches = base?.springs?.places?.map((place) => place.map((value) => Math.round(value / INCH)));
    expect(inches).toEqual([
      [10, 2, 0],
      [-10, -2, 0],
    ]);
    expect(base?.inertiaBase?.mass.value).toBeCloseTo(500 * POUND, 9);
    expect(base?.inertiaBase?.below).toBeCloseTo(3 * INCH, 12);
  });

  test('are refused where one has no place, or stands higher than another', () => {
    const codes = (at: string) => issuesOf(placed(at)).map(({ code }) => code);
    expect(codes('[{east: 12 in}]')).toContain('input.springs-places');
    expect(codes('[{east: 12 in, up: 1 in}, {east: -12 in}]')).toContain('input.base-up');
  });
});

describe('what supports hold', () => {
  test('hangers, rests and stands hold up and let go one way', () => {
    for (const mark of ['H1', 'R1', 'S1', 'S3'] as const) {
      if (mark === 'S1') continue;
      expect(support(mark)).toMatchObject({ holds: [[0, 0, 1]], oneWay: true, holdsRotation: false });
    }
    expect(support('V1')).toMatchObject({ holds: [[0, 0, 1]], oneWay: false });
  });
  test('a guide on a riser holds both level directions', () => {
    expect(support('G1').holds).toEqual([
      [1, 0, 0],
      [0, 1, 0],
    ]);
  });
  test('a guide on a level pipe holds the level direction across it', () => {
    const [across, ...more] = support('G2').holds;
    expect(more).toEqual([]);
    expect(Math.abs(across?.[0] ?? 0)).toBeCloseTo(Math.cos(Math.PI / 6), 12);
    expect(across?.[2]).toBe(0);
  });
  test('a guide on a sloping pipe holds two directions square to it and to each other', () => {
    const [a, b] = support('G3').holds;
    const along = [0, Math.cos(Math.PI / 6), 0.5];
    const dot = (p: readonly number[] = [], q: readonly number[] = []) =>
      p.reduce((sum, value, axis) => sum + value * (q[axis] ?? 0), 0);
    for (const pair of [dot(a, b), dot(a, along), dot(b, along)]) expect(pair).toBeCloseTo(0, 12);
    expect(dot(b, b)).toBeCloseTo(1, 12);
  });
  test('a stop holds along the pipe, an anchor everything', () => {
    expect(support('L1').holds).toEqual([[0, 0, -1]]);
    expect(support('A1').holds).toHaveLength(3);
    expect(support('A1').holdsRotation).toBe(true);
  });
  test('the rating of a rod comes from the chosen edition', () => {
    expect(support('H1').rods).toMatchObject({
      count: 1,
      size: '5/8',
      rating: { origin: { kind: 'catalogue' } },
    });
    const older = installationOf(changed(everyPart, ['edition: later', 'edition: older'])).lines[0]
      ?.walk[2] as SupportPart;
    expect(older.rods?.rating?.value).toBeLessThan(support('H1').rods?.rating?.value ?? 0);
  });
});

test('a support under an elbow belongs to the elbow', () => {
  expect((named('elbow 1') as ElbowPart).support).toMatchObject({ mark: 'S1', kind: 'stand' });
});

test('a short elbow has a shorter radius than a long one, and an own radius is kept', () => {
  expect((named('elbow 1') as ElbowPart).radius.value).toBeCloseTo(6 * INCH, 12);
  expect((named('elbow 2') as ElbowPart).radius).toEqual({
    value: 9 * INCH,
    origin: { kind: 'given', path: 'piping.lines[1].walk[5].elbow.radius' },
  });
  expect((named('elbow 2') as ElbowPart).mass.value).toBeCloseTo(24 * POUND, 12);
});

test('the mass of a flange holds half of the bolts, and says so', () => {
  const flange = named('flange 2');
  if (flange.kind !== 'flange' || flange.mass.origin.kind !== 'catalogue')
    throw new Error('no flange of the catalogue');
  expect(flange.mass.origin.row).toContain('with half of 8 studs');
  expect(flange.mass.value).toBeGreaterThan(26 * POUND);
  expect(flange.joint.rating).toBeDefined();
});

test('an own flange is what it is said to be', () => {
  expect(named('flange 3')).toMatchObject({
    standard: 'own',
    joint: { nps: '6', bolts: 8, bolt: '3/4', gasketDiameter: { value: 7 * INCH } },
  });
});

test('a reducer changes the pipe behind it, a tee keeps that of its run', () => {
  expect(named('reducer 1')).toMatchObject({ to: { name: 'NPS 8 STD' }, shape: 'eccentric', flat: 'top' });
  const tee = named('tee 1') as TeePart;
  expect(tee.runSection.nps).toBe('8');
  expect(tee.branchSection.nps).toBe('4');
  expect(tee.side.walk.at(-1)).toMatchObject({ kind: 'end', end: 'free', section: { nps: '4' } });
});

test('entered by the branch, a tee sends its side leg the other way', () => {
  const tee = named('tee 2') as TeePart;
  expect(tee).toMatchObject({ enterBy: 'branch', turn: [0, 0, 1], side: { direction: [0, 0, -1] } });
});

test('a pipe that continues has the stiffness given, by direction or alike', () => {
  const ends = parts.filter((part) => part.kind === 'end' && part.end === 'continues');
  const kip = (1000 * POUND * 9.80665) / INCH;
  expect(ends).toHaveLength(2);
  expect(
    ends.map(
      (end) => end.kind === 'end' && end.stiffness?.translation.map((value) => Math.round(value / kip)),
    ),
  ).toEqual([
    [20, 20, 20],
    [10, 20, 0],
  ]);
});

test('a flexible grooved joint turns and bends freely unless its rates are given; rigid is rigid', () => {
  const [flexible, rigid] = parts.filter((part) => part.kind === 'grooved-joint');
  expect(flexible).toMatchObject({ stiffness: { axial: Infinity, torsion: 0 } });
  expect(rigid).toMatchObject({
    stiffness: { axial: Infinity, lateral: Infinity, torsion: Infinity, bending: Infinity },
  });
});

test('insulation may be left out of a line', () => {
  expect(everything.lines[0]?.walk[1]?.covering?.name).toBe('2 in fibreglass with jacket');
  expect(everything.lines[1]?.walk.every((part) => part.covering === undefined)).toBe(true);
});

test('own materials stand beside those of the catalogue', () => {
  expect(Object.keys(everything.materials).sort()).toEqual(['carbon steel', 'special iron']);
  expect(everything.materials['special iron']?.expansion.at(-1)?.[1]).toBeCloseTo(
    6e-6 * 1.8 * (800 - kelvin(70)),
    12,
  );
});

test('every source used is listed once', () => {
  const used = everything.sourcesUsed ?? [];
  expect(used).toContain('asme-b36.10m');
  expect(used).toContain('ashrae-2001-fits');
  expect(new Set(used).size).toBe(used.length);
});

test('a box in the room has its lowest and its highest corner, whatever corners were given', () => {
  const [beam] = everything.room.objects;
  expect(beam?.low.map((value) => Math.round(value / INCH))).toEqual([-72, 24, 132]);
  expect(beam?.high.map((value) => Math.round(value / INCH))).toEqual([72, 30, 144]);
});

test('what is odd but possible is a warning', () => {
  const read = readInstallation(
    changed(
      everyPart,
      ['load: 900 lb, minimum: 500 lb', 'load: 400 lb, minimum: 500 lb'],
      ['test: 188 psi', 'test: 100 psi'],
    ),
  );
  expect(read.ok && read.warnings.map(({ code, severity }) => [code, severity])).toEqual([
    ['input.test-below-design', 'warning'],
    ['input.spring-out-of-range', 'warning'],
  ]);
});

test('own pipe needs no table', () => {
  const text = changed(
    shortest,
    ['  size: 6 in\n  schedule: STD', '  outside-diameter: 6.9 in\n  wall: 0.3 in'],
    ['elbows: long', 'elbows: 9 in'],
    ['{class: 150, type: slip-on}', '{class: own, weight: 20 lb, length: 1 in}'],
  );
  const section = installationOf(text).lines[0]?.section;
  expect(section?.name).toBe('6.9 in × 0.3 in');
  expect(section?.massPerLength.value).toBeCloseTo(
    Math.PI * 0.3 * 6.6 * INCH ** 2 * 0.2833 * (POUND / INCH ** 3),
    6,
  );
});
