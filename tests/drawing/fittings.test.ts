import { expect, test } from 'vitest';
import { isometricDrawing } from '../../src/drawing/isometric/isometric.js';
import { elevationDrawing } from '../../src/drawing/room-views/elevation.js';
import { practiceSubject, valve } from '../checks/practice-subject.js';
import { expectSound } from './judge.js';

const walk = (fittings: readonly Record<string, unknown>[]) => [
  { straight: '600 mm' },
  ...fittings.flatMap((fitting) => [fitting, { straight: '300 mm' }]),
  valve('gate'),
  { straight: '1 m' },
  { end: 'anchored' },
];
const every = [{ drain: {} }, { vent: {} }, { 'gauge-tap': {} }, { 'start-up-screen': {} }];
const size = { units: 'si' as const, width: 530, height: 400 };
const drawn = (fittings: readonly Record<string, unknown>[]) => {
  const subject = practiceSubject({ suction: walk(fittings) });
  return { ...subject, findings: [], ...size };
};

test('a layout places every fitting on its line, in walking order', () => {
  const { layout } = drawn(every);
  expect(layout.fittings?.map(({ name, station }) => [name, Math.round(station * 1000)])).toEqual([
    ['drain 1', 600],
    ['vent 1', 900],
    ['gauge tap 1', 1200],
    ['start-up-screen 1', 1500],
  ]);
  expect(layout.fittings?.every(({ line }) => line === 'suction line')).toBe(true);
});

test('pictures with fittings are sound, and each fitting adds shapes of its own', () => {
  const plain = drawn([]);
  for (const draw of [isometricDrawing, elevationDrawing]) {
    const whole = draw(drawn(every));
    expectSound(whole);
    expect(whole.shapes.length).toBeGreaterThan(draw(plain).shapes.length);
  }
  const circles = (fittings: readonly Record<string, unknown>[]) =>
    elevationDrawing(drawn(fittings)).shapes.filter(({ kind }) => kind === 'circle').length;
  expect(circles([{ 'gauge-tap': {} }])).toBe(circles([]) + 1);
});

test('fittings have no weight, no length and no part in flange joints', () => {
  const flanges = [
    { flange: { class: 150, face: 'flat', type: 'slip-on' } },
    { 'gauge-tap': {} },
    { straight: '1 m' },
    { end: 'anchored' },
  ];
  const [withTap, without] = [flanges, flanges.filter((step) => !('gauge-tap' in step))].map(
    (suction) => practiceSubject({ suction }).layout,
  );
  expect(withTap?.flangeJoints).toEqual(without?.flangeJoints);
  expect(withTap?.weights).toEqual(without?.weights);
  expect(withTap?.frame.members.length).toBe(without?.frame.members.length);
});
