import { expect, test } from 'vitest';
import { changed, everyPart, installationOf, shortest } from './sample-text.js';

const assumed = (text: string) => installationOf(text).assumptions;
const bare = [
  ['installation: 70 degF, ', ''],
  [', hot: 180 degF, cold: 60 degF', ''],
  [', test: 188 psi', ''],
  [', material: cast iron, centre-of-gravity: {up: 1 in}', ''],
  ['motor: {weight: 300 lb, ', 'motor: {'],
  ['  elbows: long\n  insulation: none\n', ''],
  ['{class: 150, type: slip-on}', '{class: 150}'],
  ['mark: H1, rods: 1', 'mark: H1'],
  ['mark: H2, rods: 1', 'mark: H2'],
] as const;

test('a file that says everything rests on few assumptions', () => {
  expect(assumed(everyPart).map(({ path }) => path)).toEqual(['piping.lines[0].walk[14].tee.make']);
});

test('everything that is not said is an assumption with its source and its effect', () => {
  const assumptions = assumed(changed(shortest, ...bare));
  expect(assumptions.map(({ path, what, value }) => `${path}: ${what} ${value}`)).toEqual([
    'service.temperatures.installation: installation temperature 70 °F',
    'service.temperatures.hot: highest temperature 160 °F',
    'service.temperatures.cold: lowest temperature 70 °F',
    'service.pressures.test: test pressure 187.5 psi',
    'pump.casing.material: material of the casing cast iron',
    'pump.casing.centre-of-gravity: centre of gravity of the casing on the shaft axis at the height of the ports',
    'pump.motor.start: start of the motor across the line',
    'pump.motor.weight: weight of the motor 360 lb',
    'pump.outline.motor-top: height of the motor top 47.6 in',
    'pump.outline.motor-diameter: diameter of the motor 13.6 in',
    'pump.outline.casing-diameter: diameter of the casing 24 in',
    'pump.motor.breakdown-torque: locked-rotor and breakdown torque of the motor 148.4 ft·lb',
    'pump.motor.inertia: inertia of all that turns between 1.186 lb·ft² and 99.88 lb·ft²',
    'pump.duty.efficiency: torque of the water at running speed 59.35 ft·lb, that of the rated motor',
    'limits.rods.edition: edition of the rod ratings older',
    'piping.insulation: insulation none',
    'piping.lines[0].walk[0].flange.type: type: flange 1 weld-neck',
    'piping.elbows: radius of elbows long',
    'piping.lines[0].walk[4].hanger.rods: number of rods: H1, H2 1',
    'piping.lines[0].walk[4].hanger.length: stiffness of the rods: H1, H2 rigid',
    'limits.pipe-stress.code: code of the pipe stresses B31.9',
    'limits.pipe-stress.edition: edition of the code of the pipe stresses 2004',
    'limits.pipe-stress.cycles: heating and cooling cycles 7,000',
    'limits.pipe-stress.occasional-factor: factor on the allowable stress for occasional loads 133%',
    'limits.pipe-stress.joint-factor: factor of the weld along the pipe 85%',
    'limits.first-support.bend: farthest support from a bend 12 in',
    'limits.damping: damping of the piping none',
    'limits.fit-up.gap: largest gap between flanges beyond the gasket 0.0625 in',
    'limits.fit-up.offset: largest offset of the centre lines of two flanges 0.0625 in',
    'limits.fit-up.parallelism: largest difference of the gap round the sealing faces 0.03125 in',
  ]);
  for (const { citation, effect } of assumptions) {
    expect(citation.source).not.toBe('');
    expect(effect).not.toBe('');
  }
});

test('values are printed in the units of the review', () => {
  const values = assumed(changed(shortest, ...bare, ['units: us', 'units: si'])).map(({ value }) => value);
  expect(values).toContain('163.3 kg');
  expect(values).toContain('21.1 °C');
});

test('an assumed value points to its assumption', () => {
  const { pump, assumptions } = installationOf(changed(shortest, ...bare));
  expect(pump.motor.mass.origin).toEqual({ kind: 'assumed', path: 'pump.motor.weight' });
  expect(assumptions.some(({ path }) => path === 'pump.motor.weight')).toBe(true);
});

test('allowable stresses come from the table of the code, and stay away where it has none', () => {
  expect(installationOf(shortest).limits.stress).toMatchObject({
    hot: { origin: { kind: 'catalogue' } },
    cold: { origin: { kind: 'catalogue' } },
  });
  const stainless = installationOf(
    changed(
      shortest,
      ['schedule: STD', 'schedule: 40S'],
      ['material: carbon steel', 'material: stainless steel'],
    ),
  );
  expect(stainless.limits.stress.hot).toBeUndefined();
});
