import { expect, test } from 'vitest';
import { review } from '../../src/app/review.js';
import type { Installation } from '../../src/input/installation.js';
import { readInstallation } from '../../src/input/read-installation.js';
import type { ReviewSubject } from '../../src/report/compose-review.js';
import { outline } from '../../src/report/outline.js';
import { fileText } from '../input/sample-text.js';
import { reviewed, reviewedInstallation } from './fixture.js';
import { sectionView } from './section-view.js';

type View = Readonly<Record<string, unknown>>;

/** View of one card in SI units. */
const card = (whole: ReviewSubject, id: 'lockout' | 'seal-change' | 'first-start' | 'cautions'): View =>
  sectionView(whole, id);

const sample = (name: string): ReviewSubject => {
  const read = readInstallation(fileText(`../../samples/${name}.yaml`));
  if (!read.ok) throw new Error('the sample is refused');
  return review(read.installation);
};
const pool = sample('pool-hot-water');
const dairy = sample('dairy-condenser-water');
const library = sample('library-chilled-water');

/** A review with the pump of the fixture changed. */
const withPump = (change: Partial<Installation['pump']>): ReviewSubject =>
  reviewed({ pump: { ...reviewedInstallation().pump, ...change } });

test('who works on the pump gets the cards for it', () => {
  expect(outline.contractor).toEqual(expect.arrayContaining(['lockout', 'pump-out']));
  expect(outline.commissioning).toEqual(expect.arrayContaining(['lockout', 'first-start', 'seal-change']));
});

test('the lockout card names the valves that shut, discharge first, and what lets the stretch out', () => {
  const [discharge, suction] = card(pool, 'lockout').sides as readonly View[];
  expect(discharge).toMatchObject({ side: 'discharge', valves: expect.stringContaining('gate valve 2') });
  expect(discharge?.relief).toContain('behind the check valve');
  expect(suction).toMatchObject({ side: 'suction', valves: expect.stringContaining('gate valve 1') });
  expect(suction?.relief).toContain('vent 1');
  expect(suction?.taps).toContain('suction port');
});

test('with everything in the file nothing is left to be found on site', () => {
  expect(card(pool, 'lockout')).toMatchObject({
    hasMissing: false,
    voltage: expect.stringContaining('460'),
    disconnect: expect.stringMatching(/starter panel, .* from the motor, in sight, can be locked open/),
    isDrive: false,
    isHot: true,
    backflowPossible: true,
    check: 'swing check 1',
  });
});

test('what the file does not say is listed to be found on site', () => {
  expect(card(library, 'lockout')).toMatchObject({ hasDisconnect: false, hasVoltage: false });
  expect(card(library, 'lockout').missing).toContain('the disconnect of the motor');
  expect(card(dairy, 'lockout').missing).toContain('a tap for a gauge on the discharge side');
  expect(card(dairy, 'lockout').missing).toContain('whether another pump or a bypass feeds this one');
});

test('a drive stays charged, a soft starter is no isolation, and a start that nobody told is asked for', () => {
  expect(card(dairy, 'lockout')).toMatchObject({ isDrive: true, isSoftStarter: false, isHot: false });
  expect(card(library, 'lockout')).toMatchObject({ isDrive: false, isSoftStarter: true });
  const path = 'pump.motor.start';
  const citation = { source: 'common-practice', clause: '', confidence: 'common practice' } as const;
  const taken = { path, what: 'start of the motor', value: 'across the line', citation, effect: '' };
  expect(card(reviewed({ assumptions: [taken] }), 'lockout').missing).toContain('how the motor is started');
});

test('springs stand with what they carry when the line is filled', () => {
  expect(card(dairy, 'lockout').springs).toMatch(/B2\s2\.\d+\skN, B5\s2\.\d+\skN/u);
  expect(card(pool, 'lockout').hasSprings).toBe(false);
});

test('a prop for every line stands on the lockout card where the pump out was worked out', () => {
  expect(card(dairy, 'lockout').props).toMatch(/suction line: prop with .*; discharge line: prop with/);
});

test('every valve that shuts has a line for its lock', () => {
  const points = (card(pool, 'lockout').locks as readonly { point: string }[]).map(({ point }) => point);
  expect(points).toEqual([
    'starter panel',
    expect.stringContaining('gate valve 2'),
    expect.stringContaining('gate valve 1'),
  ]);
});

test('a side that nothing shuts says so', () => {
  const { lines } = reviewedInstallation();
  const open = lines.map((line) => ({ ...line, walk: line.walk.filter(({ kind }) => kind !== 'valve') }));
  const view = card(reviewed({ lines: open }), 'lockout');
  expect((view.sides as readonly View[]).every(({ hasValves, hasOpen }) => !hasValves && hasOpen)).toBe(true);
  expect(view.missing).toContain('what shuts off the discharge side');
});

test('the seal change card has the prop, its load, the window and what a piece weighs', () => {
  const view = card(pool, 'seal-change');
  expect(view).toMatchObject({ isSplit: true, passes: true, hasProp: true, propFrom: 'over the floor' });
  // Ports at 4 ft 6 in, window from 10 in above them: 5 ft 4 in, 1.63 m to the centimetre.
  expect(String(view.prop).replace(/\s/gu, '')).toBe('1630mm');
  expect(view.propLoad).toBe('39.9 kg');
  expect(view.runout).toBe('0.05 mm (0.002 in)');
  const pieces = view.pieces as readonly { piece: string; isHoist: boolean }[];
  expect(pieces.filter(({ isHoist }) => isHoist).map(({ piece }) => piece)).toEqual([
    'Rotor, shaft and cover',
    'Motor',
  ]);
});

test('a piece of which nobody knows the weight is weighed first', () => {
  const pieces = card(dairy, 'seal-change').pieces as readonly {
    piece: string;
    weight: string;
    how: string;
  }[];
  expect(pieces.find(({ piece }) => piece.startsWith('Rotor'))).toMatchObject({
    weight: 'not in the file',
    how: 'weigh it before lifting it',
  });
  expect(card(dairy, 'seal-change')).toMatchObject({ hasSeal: false, passes: false, hasPropLoad: false });
});

test('a seal longer than the window needs the motor lifted', () => {
  const given = (value: number) => ({ value, origin: { kind: 'given' as const, path: 'test' } });
  const spacer = { from: 0.25, length: given(0.1), sealLength: given(0.12) };
  expect(card(withPump({ dimensions: { spacer } }), 'seal-change')).toMatchObject({
    isTooLong: true,
    passes: false,
  });
});

test('of a close-coupled pump the card says only that the motor is lifted', () => {
  const view = card(withPump({ build: 'close-coupled' }), 'seal-change');
  expect(view.isSplit).toBe(false);
  expect((view.pieces as readonly { piece: string }[]).map(({ piece }) => piece)).not.toContain(
    'Coupling, heaviest piece',
  );
});

test('the first-start card has what is expected here and what stops the start', () => {
  expect(card(pool, 'first-start')).toMatchObject({
    hasMovement: true,
    hasMovementLimit: true,
    current: 'at most 25 A',
    hasServiceFactor: true,
    // The published boundary is printed as a comparison: it decides nothing.
    hasVibration: true,
    vibrationDecides: false,
    vibration: 'at most 5.1 mm/s',
    vibrationSource: expect.stringContaining('memory, a comparison'),
    isOpen: false,
    isHung: true,
  });
  expect(card(dairy, 'first-start')).toMatchObject({
    hasMovementLimit: false,
    isDrive: true,
    hasSpeeds: true,
    isSystemUnknown: true,
    hasSprings: true,
  });
});

test('a limit of vibration stands with its document, in millimetres a second', () => {
  const { limits } = reviewedInstallation();
  const origin = { kind: 'given', path: 'limits.vibration.velocity', document: 'section 23 21 23' } as const;
  const view = card(reviewed({ limits: { ...limits, vibration: { value: 0.0045, origin } } }), 'first-start');
  expect(view).toMatchObject({
    vibration: 'at most 4.5 mm/s',
    vibrationSource: 'section 23 21 23, given in the file',
    hasVibration: true,
    vibrationDecides: true,
  });
});

test('the cautions tell voltage, heat, springs and the highest place somebody works at', () => {
  expect(card(pool, 'cautions')).toMatchObject({
    hasVoltage: true,
    isHot: true,
    hasSprings: false,
    hasHeight: true,
  });
  expect(card(pool, 'cautions').highest).toMatch(/the pipe at H\d/);
  expect(card(dairy, 'cautions')).toMatchObject({ isHot: false, isDrive: true, hasSprings: true });
  expect(card(reviewed({ room: { objects: [] } }), 'cautions').hasHeight).toBe(false);
});
