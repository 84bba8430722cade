import { describe, expect, test } from 'vitest';
import type { DiffuserPart, FlangePart, Part, ValvePart } from '../../src/input/installation.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import { changed, everyPart, installationOf, issuesOf, shortest } from './sample-text.js';

const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;
const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;
const everything = installationOf(everyPart);
const allParts = (walk: readonly Part[]): readonly Part[] =>
  walk.flatMap((part) => (part.kind === 'tee' ? [part, ...allParts(part.side.walk)] : [part]));
const partsOf = (installation: typeof everything) => installation.lines.flatMap(({ walk }) => allParts(walk));
const first = <Kind extends Part['kind']>(kind: Kind, installation = everything) => {
  const found = partsOf(installation).find((part) => part.kind === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
};

/** The everyday file with a valve in the suction line, between two flanges. */
const withValve = (words: string) =>
  installationOf(
    changed(everyPart, ['{kind: gate, class: 150, face: raised, material: steel,', `{kind: gate, ${words},`]),
  );
const valveOf = (words: string) => first('valve', withValve(words)) as ValvePart;

describe('a rating that the file gives', () => {
  test('is taken in SI, rising in temperature, with its place as the source', () => {
    const { flange } = everything.pump.ports.suction;
    expect(flange.rating?.map(([temperature]) => temperature)).toEqual([kelvin(150), kelvin(200)]);
    expect(flange.rating?.[0]?.[1]).toBeCloseTo(175 * PSI, 3);
    expect(flange.ratingCitation).toEqual({
      source: 'input',
      clause: 'pump.suction.flange.rating',
      confidence: 'read',
    });
  });

  test('stands on flanges of the pipe too, of no standard as well', () => {
    const own = partsOf(everything).find(
      (part) => part.kind === 'flange' && part.standard === 'own',
    ) as FlangePart;
    expect(own.joint.rating).toEqual([[393.15, 16e5]]);
  });

  test('takes the place of the table', () => {
    const listed = first('flange') as FlangePart;
    expect(listed.joint.ratingCitation?.source).toBe('asme-b16.5');
    const text = changed(everyPart, [
      'face: flat, type: slip-on}',
      'face: flat, type: slip-on, rating: [{temperature: 250 degF, pressure: 100 psi}]}',
    ]);
    expect((first('flange', installationOf(text)) as FlangePart).joint.ratingCitation?.source).toBe('input');
  });

  test.each([
    [
      '[{temperature: 200 degF, pressure: 160 psi}, {temperature: 150 degF, pressure: 175 psi}]',
      'input.rating-not-rising',
    ],
    [
      '[{temperature: 150 degF, pressure: 160 psi}, {temperature: 150 degF, pressure: 175 psi}]',
      'input.rating-not-rising',
    ],
    ['[{temperature: 150 degF, pressure: 0 psi}]', 'input.not-positive'],
    ['[{temperature: 150 degF}]', 'input.missing'],
    ['[]', 'input.empty'],
    ['[{temperature: 150 degF, pressure: 150 degF}]', 'quantity.unknown-unit'],
  ])('%s is refused', (rating, code) => {
    const given = '[{temperature: 150 degF, pressure: 175 psi}, {temperature: 200 degF, pressure: 160 psi}]';
    expect(issuesOf(changed(everyPart, [given, rating])).map((issue) => issue.code)).toContain(code);
  });

  test('ductile iron without one has none: no table of it is held', () => {
    const port = changed(shortest, ['class: 125', 'class: 125, material: ductile iron']);
    const [suction, discharge] = ['suction', 'discharge'].map(
      (which) => installationOf(port).pump.ports[which as 'suction' | 'discharge'].flange,
    );
    expect([suction, discharge].filter((flange) => flange?.rating === undefined).length).toBe(1);
  });
});

describe('the flanges of a valve', () => {
  test('follow from its class and its row of the catalogue', () => {
    expect(valveOf('class: 150').flange).toMatchObject({
      standard: 'B16.5',
      class: '150',
      face: 'unknown',
      material: 'steel',
      bolts: 8,
      ratingCitation: { source: 'asme-b16.5' },
    });
    expect(valveOf('class: 125').flange).toMatchObject({
      standard: 'B16.1',
      face: 'flat',
      material: 'cast iron',
      ratingCitation: { source: 'asme-b16.1' },
    });
  });

  test('take face, material and rating from the file', () => {
    const rating = '[{temperature: 150 degF, pressure: 250 psi}]';
    const { flange } = valveOf(`class: 150, face: raised, material: ductile iron, rating: ${rating}`);
    expect(flange).toMatchObject({
      face: 'raised',
      material: 'ductile iron',
      ratingCitation: { source: 'input' },
    });
    expect(valveOf('class: 150, material: ductile iron').flange?.rating).toBeUndefined();
  });

  test('of a class of no flange standard stay unknown unless the file says something of them', () => {
    const own = 'class: 200 WOG, weight: 150 lb, length: 10 in';
    expect(valveOf(own).flange).toBeUndefined();
    expect(valveOf(`${own}, material: cast iron`).flange).toMatchObject({
      standard: 'own',
      material: 'cast iron',
    });
  });

  test.each(['face: flat', 'material: steel', 'rating: [{temperature: 150 degF, pressure: 9 bar}]'])(
    '%s beside welded ends is refused',
    (words) => {
      const text = changed(everyPart, ['ends: welded,', `ends: welded, ${words},`]);
      expect(issuesOf(text).map(({ code }) => code)).toEqual(['input.not-flanged']);
    },
  );
});

test('a suction diffuser has a flange of each of its two sizes', () => {
  const { flanges } = first('suction-diffuser') as DiffuserPart;
  expect([flanges?.pump.nps, flanges?.pipe.nps]).toEqual(['6', '8']);
  expect(flanges?.pump).toMatchObject({ standard: 'B16.5', material: 'ductile iron', bolts: 8 });
  expect(flanges?.pump.boltCircle).toBeLessThan(flanges?.pipe.boltCircle ?? 0);
});

test('a suction diffuser of an unknown class is refused', () => {
  const text = changed(everyPart, [
    'flange: {standard: B16.5, class: 150, face: raised, material: ductile iron}',
    'flange: {standard: B16.5, class: 125}',
  ]);
  expect(issuesOf(text).map(({ code }) => code)).toContain('input.unknown-class');
});

test('joints at valves and diffusers have both their sides', () => {
  const { flangeJoints } = buildLayout(everything);
  const sideOf = (owner: string) =>
    flangeJoints.flatMap(({ sides }) => sides).find((side) => side.owner === owner);
  expect(sideOf('gate valve 1')).toMatchObject({ standard: 'B16.5', face: 'raised', material: 'steel' });
  const diffuser = flangeJoints
    .flatMap(({ sides }) => sides)
    .filter(({ owner }) => owner === 'suction diffuser 1');
  expect(diffuser.map(({ dimensions }) => dimensions?.nps)).toContain('6');
});
