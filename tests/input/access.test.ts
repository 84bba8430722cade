import { expect, test } from 'vitest';
import { changed, everyPart, installationOf, issuesOf, shortest } from './sample-text.js';

const INCH = 0.0254;
const POUND = 0.45359237;
const every = installationOf(everyPart);

/** The shortest file in a room, with more. */
const inRoom = (more: string) => changed(shortest, ['piping:', `room:\n  floor: 0 ft\n${more}piping:`]);
const codes = (text: string) => issuesOf(text).map(({ code, place }) => `${code} ${place?.path}`);

test('dimensions are read in metres and kilograms, each with where it is given', () => {
  const { dimensions } = every.pump;
  expect(dimensions?.spacer?.from).toBeCloseTo(10 * INCH, 12);
  expect(dimensions?.spacer?.sealLength?.value).toBeCloseTo(5 * INCH, 12);
  expect(dimensions?.spacer?.couplingMass?.value).toBeCloseTo(18 * POUND, 12);
  expect(dimensions?.motorFoot?.origin).toEqual({ kind: 'given', path: 'pump.dimensions.motor-foot' });
  expect(dimensions?.terminalBox).toMatchObject({ side: [1, 0, 0] });
});

test('a run has its points and diameter, and the smallest box round it', () => {
  const run = every.room.objects.find(({ name }) => name === 'fill line');
  expect(run?.run?.diameter).toBeCloseTo(3 * INCH, 12);
  expect(run?.low[2]).toBeCloseTo(11 * 12 * INCH - 1.5 * INCH, 12);
  expect(run?.high[0]).toBeCloseTo(72 * INCH + 1.5 * INCH, 12);
});

test('a ton is 2000 lb, and the height of a sling follows from its length and spread', () => {
  const { lift } = every.room;
  expect(lift?.rating?.value).toBeCloseTo(2000 * POUND, 9);
  expect(lift?.sling?.height.value).toBeCloseTo(Math.sqrt(14 ** 2 - 6 ** 2) * INCH, 12);
  expect(lift?.sling?.angle.value).toBeCloseTo(Math.acos(6 / 14), 12);
  expect(lift?.factor?.origin).toMatchObject({ document: "owner's lifting rule 4" });
});

test('or from its angle', () => {
  const { room } = installationOf(changed(everyPart, ['length: 14 in, spread', 'angle: 60 deg, spread']));
  expect(room.lift?.sling?.height.value).toBeCloseTo(6 * Math.sqrt(3) * INCH, 12);
});

test('service spaces keep their numbers, owner and source', () => {
  expect(every.serviceSpaces?.map(({ purpose }) => purpose)).toEqual([
    'coupling and seal',
    'wrench room',
    'working space',
    'handle',
    'drain',
    'aisle',
    'casing lift-out',
  ]);
  expect(every.serviceSpaces?.[0]).toMatchObject({ owner: 'maker', source: 'manual 44-7', side: [-1, 0, 0] });
  expect(every.room.headHeight?.origin).toEqual({ kind: 'given', path: 'service-spaces[2].height' });
});

test('without a room nothing is assumed of one', () => {
  const bare = installationOf(shortest);
  expect(bare.pump.dimensions).toBeUndefined();
  expect(bare.assumptions.some(({ path }) => path.startsWith('pump.dimensions'))).toBe(false);
});

test('with a room, heights that are not given are taken in proportion and listed', () => {
  const { pump, assumptions } = installationOf(inRoom(''));
  const listed = assumptions.map(({ path }) => path);
  for (const key of ['casing-above', 'casing-below', 'motor-foot', 'eyes'])
    expect(listed).toContain(`pump.dimensions.${key}`);
  expect(pump.dimensions?.casingAbove?.origin.kind).toBe('assumed');
  expect(listed).toContain('room.floor');
});

test('a lift without shackle and limit off centre lists what is taken', () => {
  const lift = '  lift: {anchor: {east: 0 ft, north: 0 ft, elevation: 12 ft}}\n';
  const { room, assumptions } = installationOf(inRoom(lift));
  expect(room.lift?.hookToSling.value).toBe(0);
  expect(room.lift?.offCentre.value).toBeCloseTo(INCH, 12);
  expect(assumptions.map(({ path }) => path)).toEqual(
    expect.arrayContaining(['room.lift.hook-to-sling', 'room.lift.off-centre']),
  );
});

const spaces = (entry: string) => changed(shortest, ['piping:', `service-spaces: [${entry}]\npiping:`]);

test.each([
  ['a key that its purpose needs', 'purpose: wrench room', 'input.missing service-spaces[0].reach'],
  [
    'a lever without its start',
    'purpose: handle, at: flange 1, side: east, from: 4 in, reach: 4 in, depth: 2 in, angle: 90 deg',
    'input.missing service-spaces[0].start',
  ],
  [
    'a key that says nothing',
    'purpose: wrench room, reach: 8 in, width: 2 in',
    'input.space-key-idle service-spaces[0].width',
  ],
  [
    'a part that is not there',
    'purpose: drain, at: drain 9, side: east, width: 1 ft, depth: 1 ft, height: 1 ft',
    'input.space-unknown-part service-spaces[0].at',
  ],
  [
    'a side that is not level',
    'purpose: coupling and seal, width: 1 ft, depth: 1 ft, side: up',
    'input.space-not-level service-spaces[0].side',
  ],
  [
    'a lever along its stem',
    'purpose: handle, at: flange 1, side: east, from: 4 in, reach: 4 in, depth: 2 in, angle: 90 deg, start: west',
    'input.lever-along-stem service-spaces[0].start',
  ],
  [
    'more than a turn',
    'purpose: handle, at: flange 1, side: east, from: 4 in, reach: 4 in, depth: 2 in, angle: 400 deg',
    'input.too-large service-spaces[0].angle',
  ],
])('%s is refused', (_what, entry, code) => {
  expect(codes(spaces(`{owner: maker, source: manual, ${entry}}`))).toContain(code);
});

test('one space twice by the same owner is refused, by manufacturer and owner it is not', () => {
  const one = 'purpose: wrench room, source: manual, reach: 8 in';
  expect(codes(spaces(`{owner: maker, ${one}}, {owner: maker, ${one}}`))).toEqual([
    'input.space-twice service-spaces[1]',
  ]);
  expect(installationOf(spaces(`{owner: maker, ${one}}, {owner: owner, ${one}}`)).serviceSpaces).toHaveLength(
    2,
  );
});

test('a height to draw the motor stands in one place', () => {
  const twice = changed(everyPart, [
    'service-spaces:\n',
    'service-spaces:\n  - {purpose: motor withdrawal, owner: owner, source: rule, height: 30 in}\n',
  ]);
  expect(codes(twice)).toEqual(['input.withdrawal-twice service-spaces[0].height']);
});

test.each([
  [
    'both a box and a run',
    'points: [{east: -6 ft',
    'from: {east: 0 ft, north: 0 ft, elevation: 9 ft}, points: [{east: -6 ft',
    'input.object-shape room.objects[1]',
  ],
  [
    'a window above the foot of the motor',
    'length: 7 in, seal',
    'length: 13 in, seal',
    'input.spacer-in-motor pump.dimensions.spacer.length',
  ],
  [
    'a window below the top of the casing',
    'from: 10 in, length',
    'from: 6 in, length',
    'input.spacer-in-casing pump.dimensions.spacer.from',
  ],
  [
    'a foot above the top',
    'motor-foot: 22 in',
    'motor-foot: 49 in',
    'input.motor-foot-over-top pump.dimensions.motor-foot',
  ],
  [
    'a sling of length and angle',
    'length: 14 in, spread',
    'length: 14 in, angle: 60 deg, spread',
    'input.sling-shape room.lift.sling',
  ],
  [
    'legs too short',
    'length: 14 in, spread',
    'length: 5 in, spread',
    'input.sling-too-short room.lift.sling.length',
  ],
  [
    'legs that do not meet',
    'length: 14 in, spread',
    'angle: 95 deg, spread',
    'input.sling-angle room.lift.sling.angle',
  ],
  [
    'two legs without a spread',
    'length: 14 in, spread: 12 in',
    'angle: 60 deg',
    'input.missing room.lift.sling.spread',
  ],
])('%s is refused', (_what, from, to, code) => {
  expect(codes(changed(everyPart, [from, to]))).toContain(code);
});
