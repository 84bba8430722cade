import { describe, expect, test } from 'vitest';
import type { Part, SupportPart } from '../../src/input/installation.js';
import { changed, everyPart, installationOf, issuesOf, shortest } from './sample-text.js';
import { warningsOf } from './warnings-of.js';

const INCH = 0.0254;
const POUND = 0.45359237;
const FOOT_POUND = POUND * 9.80665 * 12 * INCH;
const RPM = Math.PI / 30;

const everything = installationOf(everyPart);
const allParts = (walk: readonly Part[]): readonly Part[] =>
  walk.flatMap((part) => (part.kind === 'tee' ? [part, ...allParts(part.side.walk)] : [part]));
const partsOf = (text: string) => installationOf(text).lines.flatMap((line) => allParts(line.walk));
const parts = partsOf(everyPart);
const support = (mark: string, among = parts): SupportPart => {
  const part = among.find(({ name }) => name === mark);
  if (part === undefined || !('mark' in part)) throw new Error(`no support ${mark}`);
  return part;
};
const found = (text: string) => issuesOf(text).map(({ code, place }) => `${code} ${place?.path}`);

const MOTOR = 'power: 20 hp, speed: 1770 rpm';
const withMotor = (more: string) => changed(shortest, [MOTOR, `${MOTOR}, ${more}`]);

describe('the start of the motor', () => {
  test.each([
    ['across the line', { kind: 'across the line' }],
    ['wye-delta', { kind: 'wye-delta' }],
    ['{autotransformer: {tap: 65 %}}', { kind: 'autotransformer', tap: 0.65 }],
    ['{soft starter: {current-limit: 300 %}}', { kind: 'soft starter', currentLimit: 3 }],
    ['{soft starter: {current-limit: 3, ramp: 12 s}}', { kind: 'soft starter', currentLimit: 3, ramp: 12 }],
    [
      '{variable-speed drive: {torque-limit: 110 %, ramp: 0.5 min}}',
      { kind: 'variable-speed drive', torqueLimit: 1.1, ramp: 30 },
    ],
  ])('start: %s', (written, start) => {
    expect(installationOf(withMotor(`start: ${written}`)).pump.motor.start).toEqual(start);
  });

  test('without a word it is the hardest, and says so', () => {
    const { pump, assumptions } = installationOf(shortest);
    expect(pump.motor.start).toEqual({ kind: 'across the line' });
    expect(assumptions.find(({ path }) => path === 'pump.motor.start')?.effect).toContain('hardest');
  });

  test('torques, current, inertias, blades and speeds are those given', () => {
    const { motor, rotorInertia, blades } = everything.pump;
    expect(motor.lockedRotorTorque?.value).toBeCloseTo(90 * FOOT_POUND, 9);
    expect(motor.breakdownTorque?.value).toBeCloseTo(140 * FOOT_POUND, 9);
    expect(motor.lockedRotorCurrent).toEqual({
      value: 6,
      origin: { kind: 'given', path: 'pump.motor.locked-rotor-current' },
    });
    expect(motor.inertia?.value).toBeCloseTo(12 * POUND * (12 * INCH) ** 2, 9);
    expect(rotorInertia?.value).toBeCloseTo(3 * POUND * (12 * INCH) ** 2, 9);
    expect(blades).toBe(6);
    expect(motor.speeds?.lowest).toBeCloseTo(600 * RPM, 9);
    expect(motor.speeds?.highest).toBeCloseTo(1770 * RPM, 9);
  });

  test('a soft starter needs the locked-rotor current; where none is given it is assumed', () => {
    const { pump, assumptions } = installationOf(withMotor('start: {soft starter: {current-limit: 300 %}}'));
    expect(pump.motor.lockedRotorCurrent).toEqual({
      value: 6,
      origin: { kind: 'assumed', path: 'pump.motor.locked-rotor-current' },
    });
    expect(assumptions.some(({ path }) => path === 'pump.motor.locked-rotor-current')).toBe(true);
    expect(installationOf(shortest).pump.motor.lockedRotorCurrent).toBeUndefined();
  });

  test('a limit that limits nothing, and torques out of order, are warnings', () => {
    expect(warningsOf(withMotor('start: {soft starter: {current-limit: 700 %}}'))).toEqual([
      'input.current-limit-idle pump.motor.start.soft starter.current-limit',
    ]);
    expect(warningsOf(withMotor('locked-rotor-torque: 150 ft.lbf, breakdown-torque: 140 ft.lbf'))).toEqual([
      'input.locked-rotor-over-breakdown pump.motor.locked-rotor-torque',
    ]);
  });

  test.each([
    ['breakdown-torque: 59 ft.lbf', 'input.breakdown-below-rated pump.motor.breakdown-torque'],
    ['speeds: {lowest: 600 rpm, highest: 1770 rpm}', 'input.speeds-without-drive pump.motor.speeds'],
    ['start: star-delta', 'input.unknown-start pump.motor.start'],
    ['start: soft starter', 'input.unknown-start pump.motor.start'],
    ['start: {}', 'input.one-start pump.motor.start'],
    [
      'start: {autotransformer: {tap: 65 %}, soft starter: {current-limit: 3}}',
      'input.one-start pump.motor.start',
    ],
    ['start: {autotransformer: {tap: 65}}', 'input.too-large pump.motor.start.autotransformer.tap'],
    [
      'start: {soft starter: {current-limit: 300}}',
      'input.too-large pump.motor.start.soft starter.current-limit',
    ],
    [
      'start: {variable-speed drive: {torque-limit: 110 %}}',
      'input.missing pump.motor.start.variable-speed drive.ramp',
    ],
    ['locked-rotor-current: 600', 'input.too-large pump.motor.locked-rotor-current'],
    ['inertia: 12 lb', 'quantity.unknown-unit pump.motor.inertia'],
  ])('%s is refused', (more, fault) => {
    expect(found(withMotor(more))).toEqual([fault]);
  });

  test('speeds out of order are refused', () => {
    expect(found(changed(everyPart, ['lowest: 600 rpm', 'lowest: 1800 rpm']))).toEqual([
      'input.speeds-out-of-order pump.motor.speeds.lowest',
    ]);
  });
});

describe('supports as they are', () => {
  test('gap, friction and place of a support', () => {
    expect(support('G1').gap).toBeCloseTo(INCH / 16, 12);
    expect(support('L1').gap).toBeCloseTo(0.003, 12);
    expect(support('R1').friction).toBe(0.3);
    expect(support('S3').friction).toBeCloseTo(0.15, 12);
    expect(support('R1').imposed?.map((value) => value / INCH)).toEqual([0, 0, -0.125]);
    expect(support('A1')).not.toHaveProperty('imposed');
    expect(support('G2')).not.toHaveProperty('gap');
  });

  test('rods stretch by modulus, root area, number and length; threads are those of the size', () => {
    const { rods } = support('H1');
    // 5/8 in: 0.202 in² at the root, 11 threads to the inch; 7 ft long; 29.5 million psi.
    const psi = (POUND * 9.80665) / INCH ** 2;
    expect(rods?.stiffness?.value).toBeCloseTo((29.5e6 * psi * 0.202 * INCH ** 2) / (84 * INCH), -4);
    expect(rods?.stiffness?.origin).toMatchObject({
      kind: 'computed',
      how: expect.stringContaining('× 0.202 in² × 1 / 84 in'),
      citation: { source: 'facility-piping-handbook', confidence: 'computed' },
    });
    expect(rods?.threads).toBeCloseTo(11 / INCH, 9);
    const twice = support('H1', partsOf(changed(everyPart, ['mark: H1, rods: 1', 'mark: H1, rods: 2']))).rods;
    expect(twice?.stiffness?.value).toBeCloseTo(2 * (rods?.stiffness?.value ?? 0), 3);
  });

  test('rods that are rigid, or whose length nobody gave, have no stiffness', () => {
    expect(support('H2').rods).toMatchObject({ count: 2, size: '1/2' });
    expect(support('H2').rods).not.toHaveProperty('stiffness');
    const { assumptions } = installationOf(shortest);
    expect(assumptions.find(({ path }) => path.endsWith('.hanger.length'))).toMatchObject({
      what: 'stiffness of the rods: H1, H2',
      value: 'rigid',
    });
    const rigid = changed(
      shortest,
      ['mark: H1,', 'mark: H1, rigid-rods: true,'],
      ['mark: H2,', 'mark: H2, rigid-rods: yes,'],
    );
    expect(installationOf(rigid).assumptions.some(({ path }) => path.endsWith('.hanger.length'))).toBe(false);
    const soft = changed(shortest, ['mark: H1,', 'mark: H1, length: 7 ft, rigid-rods: no,']);
    expect(support('H1', partsOf(soft)).rods).toHaveProperty('stiffness');
  });

  test('a base that slides, of a resting pump', () => {
    const resting = changed(shortest, [
      'mount: hung',
      'mount: resting\n  base: {below-ports: 14 in, friction: 0.2}',
    ]);
    expect(installationOf(resting).pump.base?.friction).toBe(0.2);
    expect(found(changed(resting, ['mount: resting', 'mount: bolted']))).toEqual([
      'input.friction-not-resting pump.base.friction',
    ]);
  });

  test('a support out of place where it holds nothing is a warning', () => {
    expect(warningsOf(changed(shortest, ['mark: H1,', 'mark: H1, out-of-place: {east: 1/4 in},']))).toEqual([
      'input.out-of-place-unfelt piping.lines[0].walk[4].hanger.out-of-place',
    ]);
    expect(
      warningsOf(changed(shortest, ['mark: H1,', 'mark: H1, out-of-place: {east: 1 in, up: 1 in},'])),
    ).toEqual([]);
  });

  test.each([
    ['{mark: G1, gap: 1/16 in', '{mark: G1, gap: -1/16 in', 'input.negative', 'walk[7].guide.gap'],
    ['{mark: R1, friction: 0.3', '{mark: R1, friction: 30', 'input.share-over-one', 'walk[5].rest.friction'],
    ['{mark: L1, gap: 3 mm}', '{mark: L1, friction: 0.3}', 'input.unknown-key', 'walk[8].stop.friction'],
    ['out-of-place: {up:', 'out-of-place: {dwon:', 'input.unknown-key', 'walk[5].rest.out-of-place.dwon'],
  ])('%s as %s is refused', (from, to, code, place) => {
    expect(found(changed(everyPart, [from, to]))).toEqual([`${code} piping.lines[0].${place}`]);
  });
});

describe('joints and ends', () => {
  test('gapped rods have a gap, a flexible joint its free rotation', () => {
    const connector = parts.find(({ kind }) => kind === 'flexible-connector');
    expect(connector).toMatchObject({ rods: 'gapped', rodGap: INCH / 4 });
    const joint = parts.find(({ kind }) => kind === 'grooved-joint');
    expect(joint?.kind === 'grooved-joint' && joint.freeRotation).toBeCloseTo((1.5 * Math.PI) / 180, 12);
  });

  test('a joint whose free rotation is used up is rigid unless its rate is given', () => {
    const text = changed(everyPart, [', torsion: 0, bending: 15 ft.lbf/deg}', '}']);
    const joint = partsOf(text).find(({ kind }) => kind === 'grooved-joint');
    expect(joint).toMatchObject({ stiffness: { bending: Infinity, torsion: 0 } });
    expect(installationOf(text).assumptions.map(({ path }) => path)).toContain(
      'piping.lines[0].walk[2].grooved-joint.bending',
    );
  });

  test.each([
    [', rod-gap: 1/4 in', '', 'input.missing', 'walk[1].flexible-connector.rod-gap'],
    ['rods: gapped', 'rods: none', 'input.rod-gap-not-gapped', 'walk[1].flexible-connector.rod-gap'],
    [
      'type: flexible, weight: 9 lb, free',
      'type: rigid, weight: 9 lb, free',
      'input.free-rotation-of-rigid',
      'walk[2].grooved-joint.free-rotation',
    ],
  ])('"%s" as "%s" is refused', (from, to, code, place) => {
    expect(found(changed(everyPart, [from, to]))).toEqual([`${code} piping.lines[0].${place}`]);
  });

  test('an anchored end moves as given when hot and when cold', () => {
    const end = everything.lines[0]?.walk.at(-1);
    expect(end).toMatchObject({ kind: 'end', end: 'anchored' });
    expect(end?.kind === 'end' && end.movement).toEqual({
      hot: [0, 0, INCH / 4],
      cold: [0, 0.001, -INCH / 16],
    });
    expect(installationOf(shortest).lines[0]?.walk.at(-1)).not.toHaveProperty('movement');
  });

  test('one movement without the other is an assumption, neither is refused, two kinds too', () => {
    const end = '{anchored: {hot-movement: {up: 1/4 in}}}';
    const one = installationOf(changed(shortest, ['end: anchored', `end: ${end}`]));
    expect(one.lines[0]?.walk.at(-1)).toMatchObject({ movement: { cold: [0, 0, 0] } });
    expect(one.assumptions.map(({ path }) => path)).toContain(
      'piping.lines[0].walk[5].end.anchored.cold-movement',
    );
    expect(found(changed(shortest, ['end: anchored', 'end: {anchored: {}}']))).toEqual([
      'input.missing piping.lines[0].walk[5].end.anchored.hot-movement',
    ]);
    expect(found(changed(shortest, ['end: anchored', 'end: {}']))).toEqual([
      'input.one-end piping.lines[0].walk[5].end',
    ]);
  });
});
