import { expect, test } from 'vitest';
import { printIssue } from '../../src/issues/print.js';
import { changed, everyPart, issuesOf, shortest } from './sample-text.js';

/** A slip of the pen in a key of the fixture: what stands there, what is written, the key that was meant. */
const slips = [
  ['    start: {', '    strat: {', 'start'],
  ['locked-rotor-torque:', 'locked-rotor-torqe:', 'locked-rotor-torque'],
  ['breakdown-torque:', 'break-down-torque:', 'breakdown-torque'],
  ['locked-rotor-current:', 'locked-rotor-curent:', 'locked-rotor-current'],
  ['    inertia:', '    intertia:', 'inertia'],
  ['speeds:', 'speed-s:', 'speeds'],
  ['lowest:', 'lowset:', 'lowest'],
  ['highest:', 'higest:', 'highest'],
  ['{variable-speed drive:', '{variable_speed_drive:', 'variable-speed drive'],
  ['torque-limit:', 'torque-limits:', 'torque-limit'],
  ['ramp:', 'rampe:', 'ramp'],
  ['rotor-inertia:', 'rotor inertia:', 'rotor-inertia'],
  ['blades:', 'Blade:', 'blades'],
  ['rod-gap:', 'rod_gap:', 'rod-gap'],
  ['free-rotation:', 'free-rotaton:', 'free-rotation'],
  ['friction: 0.3', 'fricton: 0.3', 'friction'],
  ['out-of-place:', 'out of place:', 'out-of-place'],
  ['mark: G1, gap:', 'mark: G1, gpa:', 'gap'],
  ['rigid-rods:', 'rigid-rod:', 'rigid-rods'],
  ['{anchored: {', '{anchord: {', 'anchored'],
  ['hot-movement:', 'hot-movment:', 'hot-movement'],
  ['cold-movement:', 'cold-movments:', 'cold-movement'],
  ['occasional-factor:', 'ocasional-factor:', 'occasional-factor'],
  ['\n  lateral:', '\n  latteral:', 'lateral'],
  ['coefficient:', 'coeficient:', 'coefficient'],
  ['frequency-margin:', 'frequency-margins:', 'frequency-margin'],
  ['share: 25 %, source:', 'share: 25 %, sorce:', 'source'],
  ['damping:', 'dampning:', 'damping'],
  ['start-movement:', 'start-movment:', 'start-movement'],
  ['fit-up:', 'fitup:', 'fit-up'],
  ['offset: 2 mm', 'ofset: 2 mm', 'offset'],
  ['parallelism:', 'paralellism:', 'parallelism'],
] as const;

test.each(slips)('"%s" written as "%s" is told once, with the key that was meant', (from, to, meant) => {
  const issues = issuesOf(changed(everyPart, [from, to]));
  expect(issues.map(({ code, data }) => [code, data.nearest])).toEqual([['input.unknown-key', meant]]);
  expect(issues.flatMap(printIssue).join('\n')).toContain(`did you mean "${meant}"?`);
});

const MOTOR = 'power: 20 hp, speed: 1770 rpm';

test.each([
  ['{autotransformer: {tab: 65 %}}', 'tap'],
  ['{auto-transformer: {tap: 65 %}}', 'autotransformer'],
  ['{soft-starter: {current-limit: 300 %}}', 'soft starter'],
  ['{soft starter: {curent-limit: 300 %}}', 'current-limit'],
] as const)('start: %s is told with "%s"', (start, meant) => {
  const issues = issuesOf(changed(shortest, [MOTOR, `${MOTOR}, start: ${start}`]));
  expect(issues.map(({ code, data }) => [code, data.nearest])).toEqual([['input.unknown-key', meant]]);
});

test.each([
  ['start: across-the-lines', 'across the line'],
  ['start: wye delta', 'wye-delta'],
] as const)('%s is told with "%s"', (start, meant) => {
  const [issue] = issuesOf(changed(shortest, [MOTOR, `${MOTOR}, ${start}`]));
  expect(issue).toMatchObject({ code: 'input.unknown-start', data: { nearest: meant } });
});

test.each(['height-ratio', 'importance', 'sds', 'edition'])(
  'a slip in "%s" of the formula is told',
  (key) => {
    const formula = 'edition: 16, sds: 0.5, importance: 1.0, height-ratio: 0.4, ap: 2.5, rp: 6';
    const slip = formula.replace(key, `${key}x`);
    const issues = issuesOf(`${shortest}limits: {lateral: {asce-7: {${slip}}}}\n`);
    expect(issues.map(({ code, data }) => [code, data.nearest])).toEqual([['input.unknown-key', key]]);
  },
);
