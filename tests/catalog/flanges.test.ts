import { expect, test } from 'vitest';
import {
  boltSetMass,
  findFlange,
  findPipe,
  flangeClasses,
  flangeMaterialGroups,
  flangeRating,
  flangeSizes,
  flangeTypes,
  labelInches,
  ratingAt,
} from '../../src/catalog/index.js';

const INCH = 0.0254;
const PSI = 6894.757293168361;

const everyFlange = ['B16.5', 'B16.1'].flatMap((standard) =>
  flangeClasses(standard).flatMap((name) =>
    flangeSizes({ standard, class: name }).map((nps) => [standard, name, nps] as const),
  ),
);

test.each(everyFlange)('%s class %s NPS %s can be drilled as its table says', (standard, name, nps) => {
  const flange = findFlange({ standard, class: name, nps, type: 'integral' });
  if (flange === undefined) throw new Error('listed and not found');
  const { outsideDiameter, boltCircle, bolt, bolts, raisedFaceDiameter } = flange.joint;
  const hole = ((labelInches(bolt) ?? Number.NaN) + 0.125) * INCH;
  expect(boltCircle + hole).toBeLessThan(outsideDiameter);
  expect((raisedFaceDiameter ?? 0) + hole).toBeLessThan(boltCircle + 0.001);
  expect(bolts % 4).toBe(0);
  expect((Math.PI * boltCircle) / bolts).toBeGreaterThan(2 * hole);
  const pipe = findPipe({ nps, schedule: 'STD', material: 'carbon steel' });
  expect(raisedFaceDiameter ?? Number.POSITIVE_INFINITY).toBeGreaterThan(pipe?.outsideDiameter ?? Number.NaN);
  expect(flange.mass).toBeUndefined();
});

test('iron class 125 is flat faced, every other class has a raised face', () => {
  for (const [standard, name, nps] of everyFlange) {
    const flange = findFlange({ standard, class: name, nps, type: 'integral' });
    expect(flange?.face).toBe(name === '125' ? 'flat' : 'raised');
    expect(flange?.joint.raisedFaceDiameter === undefined).toBe(name === '125');
  }
});

const steelFlanges = everyFlange.filter(([standard]) => standard === 'B16.5');

test.each(steelFlanges)(
  '%s class %s NPS %s: slip-on is lightest, weld-neck near its volume',
  (standard, name, nps) => {
    const of = (type: string) => findFlange({ standard, class: name, nps, type });
    const mass = (type: string) => of(type)?.mass?.value ?? Number.NaN;
    expect(mass('slip-on')).toBeLessThan(mass('weld-neck'));
    expect(mass('slip-on')).toBeGreaterThan(0.6 * mass('weld-neck'));
    expect(mass('slip-on')).toBeLessThan(1.05 * mass('blind'));
    expect(of('weld-neck')?.mass?.citation.confidence).toBe('read');
    expect(of('slip-on')?.mass?.citation.confidence).toBe('computed');
    expect(of('weld-neck')?.length?.value ?? Number.NaN).toBeGreaterThan(
      of('blind')?.thickness ?? Number.NaN,
    );
    expect(of('slip-on')?.length?.value).toBe(0);
  },
);

test('masses rise with size within a class and type', () => {
  for (const name of ['150', '300']) {
    for (const type of ['weld-neck', 'slip-on', 'blind']) {
      const masses = flangeSizes({ standard: 'B16.5', class: name }).map(
        (nps) => findFlange({ standard: 'B16.5', class: name, nps, type })?.mass?.value ?? Number.NaN,
      );
      expect(masses, `${name} ${type}`).toEqual([...masses].sort((a, b) => a - b));
    }
  }
});

test('a blind weighs its disc: NPS 6 class 150 comes to 25 lb by hand', () => {
  // π/4 (11² 0.94 + 8.5² 0.06 - 8 × 0.875² 0.94) 0.2833 = 25.0 lb
  const blind = findFlange({ standard: 'B16.5', class: '150', nps: '6', type: 'blind' });
  expect((blind?.mass?.value ?? 0) / 0.45359237).toBeCloseTo(25.0, 1);
});

test('iron flanges have drilling, a computed blind, and no weld-neck', () => {
  const iron = { standard: 'B16.1', class: '125', nps: '6' };
  expect(findFlange({ ...iron, type: 'weld-neck' })).toBeUndefined();
  expect(findFlange({ ...iron, type: 'blind' })?.mass?.citation.confidence).toBe('computed');
  expect(findFlange({ ...iron, type: 'integral' })?.mass).toBeUndefined();
  expect(flangeTypes('B16.1')).not.toContain('weld-neck');
});

test.each([
  [{ standard: 'own', class: '150', nps: '6', type: 'weld-neck' }],
  [{ standard: 'B16.5', class: '125', nps: '6', type: 'weld-neck' }],
  [{ standard: 'B16.5', class: '150', nps: '7', type: 'weld-neck' }],
  [{ standard: 'B16.5', class: '150', nps: '22', type: 'weld-neck' }],
  [{ standard: 'B16.5', class: '150', nps: '6', type: 'threaded' }],
])('%o is not in the tables', (query) => {
  expect(findFlange(query)).toBeUndefined();
});

test('unknown standards have no classes, sizes, types or groups', () => {
  expect(flangeClasses('own')).toEqual([]);
  expect(flangeSizes({ standard: 'own', class: '150' })).toEqual([]);
  expect(flangeSizes({ standard: 'B16.5', class: '125' })).toEqual([]);
  expect(flangeSizes({ standard: 'B16.5', class: 'constructor' })).toEqual([]);
  expect(flangeTypes('own')).toEqual([]);
  expect(flangeMaterialGroups('own')).toEqual([]);
});

test('the studs and nuts of a joint follow its drilling', () => {
  const set = boltSetMass({ standard: 'B16.5', class: '150', nps: '6' });
  expect([set?.studs, set?.bolt, set?.mass.citation.confidence]).toEqual([8, '3/4', 'computed']);
  // By hand: stud 3.925 in at 0.685 in is 1.447 in³, two nuts 1.376 in³; 8 sets at 0.2833 lb/in³ are 6.4 lb.
  expect((set?.mass.value ?? 0) / 0.45359237).toBeCloseTo(6.4, 1);
  expect(boltSetMass({ standard: 'own', class: '150', nps: '6' })).toBeUndefined();
});

test.each([
  ['B16.5', '150', '1.1'],
  ['B16.5', '300', '1.1'],
  ['B16.5', '150', '2.2'],
  ['B16.5', '300', '2.2'],
  ['B16.1', '125', 'A126-B'],
  ['B16.1', '250', 'A126-B'],
])('%s class %s group %s falls as the temperature rises', (standard, name, materialGroup) => {
  const pairs = flangeRating({ standard, class: name, materialGroup, nps: '6' })?.pairs ?? [];
  expect(pairs.length).toBeGreaterThan(4);
  for (const [i, [temperature, pressure]] of pairs.entries()) {
    const before = pairs[i - 1];
    if (before === undefined) continue;
    expect(temperature).toBeGreaterThan(before[0]);
    expect(pressure).toBeLessThanOrEqual(before[1]);
  }
});

test('a rating is read between rows, and not beyond the last or below the first', () => {
  const pairs = flangeRating({ standard: 'B16.5', class: '150', materialGroup: '1.1' })?.pairs ?? [];
  const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;
  expect((ratingAt(pairs, kelvin(250)) ?? 0) / PSI).toBeCloseTo(245, 6);
  expect((ratingAt(pairs, kelvin(400)) ?? 0) / PSI).toBeCloseTo(200, 6);
  expect(ratingAt(pairs, kelvin(401))).toBeUndefined();
  expect(ratingAt(pairs, kelvin(-21))).toBeUndefined();
  expect(ratingAt(pairs, Number.NaN)).toBeUndefined();
  expect(ratingAt([], 300)).toBeUndefined();
});

test('iron ratings are lower above NPS 12, cannot be told without a size, and are marked as memory', () => {
  const iron = { standard: 'B16.1', class: '125', materialGroup: 'A126-B' };
  const small = flangeRating({ ...iron, nps: '12' });
  const large = flangeRating({ ...iron, nps: '14' });
  expect(large?.pairs[0]?.[1] ?? 0).toBeLessThan(small?.pairs[0]?.[1] ?? 0);
  expect(small?.citation.confidence).toBe('memory');
  expect(flangeRating(iron)).toBeUndefined();
  expect(flangeRating({ ...iron, materialGroup: '1.1', nps: '6' })).toBeUndefined();
});
