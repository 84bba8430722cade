import { expect, test } from 'vitest';
import { type StartMethod, startTorqueShare } from '../../src/mechanics/start/start-method.js';
import { citationText } from '../../src/sources/index.js';
import { drive, softStarter, wyeDelta } from './starting-sets.js';

const percent = (method: StartMethod) => Math.round(startTorqueShare(method).share * 100);

test('torque at standstill is the published share of locked-rotor torque', () => {
  expect(percent({ kind: 'across the line' })).toBe(100);
  expect(percent(wyeDelta)).toBe(33);
  expect([0.5, 0.65, 0.8].map((tap) => percent({ kind: 'autotransformer', tap }))).toEqual([25, 42, 64]);
  expect(percent({ kind: 'soft starter', currentLimit: 3, lockedRotorCurrent: 6 })).toBe(25);
});

test('a current limit above locked-rotor current limits nothing', () => {
  expect(percent({ kind: 'soft starter', currentLimit: 8, lockedRotorCurrent: 6 })).toBe(100);
});

test('a drive is a share of full load, all others of locked rotor', () => {
  expect(startTorqueShare(drive)).toMatchObject({ share: 1.2, of: 'full load' });
  expect(startTorqueShare(softStarter).of).toBe('locked rotor');
});

test('each share says where it is from and how sure it is', () => {
  expect(startTorqueShare({ kind: 'autotransformer', tap: 0.5 }).citation.confidence).toBe('read');
  expect(startTorqueShare({ kind: 'autotransformer', tap: 0.8 }).citation.confidence).toBe('computed');
  expect(citationText(startTorqueShare(wyeDelta).citation)).toMatch(/wye-delta.*, two sources$/);
});

test.each<StartMethod>([
  { kind: 'autotransformer', tap: 1.2 },
  { kind: 'autotransformer', tap: 0 },
  { kind: 'soft starter', currentLimit: Number.NaN, lockedRotorCurrent: 6 },
  { kind: 'soft starter', currentLimit: 3, lockedRotorCurrent: -6 },
  { kind: 'variable-speed drive', torqueLimit: 0, ramp: 5 },
])('%o is refused', (method) => {
  expect(() => startTorqueShare(method)).toThrow(expect.objectContaining({ code: 'mechanics.out-of-range' }));
});
