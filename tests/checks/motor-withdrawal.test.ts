import { expect, test } from 'vitest';
import { motorWithdrawal } from '../../src/checks/room/motor-withdrawal.js';
import { type AccessFile, box, findingOf, lift, walls, without } from './access-subject.js';

const found = (file: AccessFile = {}) => findingOf(motorWithdrawal, file);
const noLift = { room: { lift: undefined } };
/** The motor's top is at 2.2 m and it is drawn by 0.5 m. */
const over = (low: number, east = 0) => [
  ...walls,
  box('duct D2', 'duct', [east - 0.1, -1, low], [east + 0.1, 1, low + 0.4]),
];

test('a ceiling high enough over the motor meets it', () => {
  const finding = found(noLift);
  expect(finding.verdict).toBe('meets');
  expect(finding.demand).toBeCloseTo(1.8, 9);
});

test('a ceiling too low exceeds, is named, and nothing is said of moving it', () => {
  const finding = found({ room: { ceiling: '2.6 m', lift: undefined } });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'ceiling' } } });
  expect(finding.ratio).toBeCloseTo(1.25, 9);
  expect(finding.reason?.data.short).toBeCloseTo(0.1, 9);
  expect(finding.reason?.data.move).toBeUndefined();
});

test('a duct over the motor governs over a higher ceiling, with the move that clears it', () => {
  const finding = found({ ...noLift, objects: over(2.5) });
  expect(finding).toMatchObject({
    verdict: 'exceeds',
    reason: { data: { obstacle: 'duct D2', way: 'up' } },
  });
  expect(finding.reason?.data.move).toBeCloseTo(0.2, 9);
});

test('sideways is the smaller move where a duct only catches the rim of the motor', () => {
  const data = found({ ...noLift, objects: over(2.5, 0.25) }).reason?.data;
  expect(data).toMatchObject({ obstacle: 'duct D2', way: 'east' });
  expect(data?.move).toBeCloseTo(0.05, 6);
});

test.each([
  ['a ceiling over it', { room: { ceiling: '3 m', lift: undefined } }],
  ['a sling in its way', {}],
])(
  'the move offered under %s has been made: judged again the duct is out of the way',
  (_, file: AccessFile) => {
    const before = found({ ...file, objects: over(2.5) });
    expect(before.reason?.data.obstacle).toBe('duct D2');
    const { move, way } = before.reason?.data ?? {};
    expect(['east', 'west']).toContain(way);
    const shift = Number(move) * (way === 'east' ? 1 : -1);
    const after = found({ ...file, objects: over(2.5, shift) });
    expect(after.verdict).toBe('meets');
    // Twenty millimetres less, and it is in the way again.
    const short = found({ ...file, objects: over(2.5, shift - Math.sign(shift) * 0.02) });
    expect(short.reason?.data.obstacle).toBe('duct D2');
  },
);

test('no move is offered where every way strikes something else', () => {
  const shut = [
    ...over(2.5),
    box('wall east of it', 'beam', [0.11, -1, 2.4], [0.16, 1, 4]),
    box('wall west of it', 'beam', [-0.16, -1, 2.4], [-0.11, 1, 4]),
    box('wall over it', 'beam', [-0.1, -1, 2.92], [0.1, 1, 3]),
    box('wall north of it', 'beam', [-0.1, 1.01, 2.4], [0.1, 1.1, 3]),
    box('wall south of it', 'beam', [-0.1, -1.1, 2.4], [0.1, -1.01, 3]),
  ];
  const finding = found({ ...noLift, objects: shut });
  expect(finding.verdict).toBe('exceeds');
  expect(finding.reason?.data.move).toBeUndefined();
});

test('what is provided stands before what is required', () => {
  const finding = found({ ...noLift, objects: over(2.5) });
  expect(finding).toMatchObject({ sense: 'at least', verdict: 'exceeds' });
  expect(finding.demand).toBeCloseTo(0.3, 9);
  expect(finding.limit).toBeCloseTo(0.5, 9);
});

test('a duct beside the motor, or a slab under it, does not stand over it', () => {
  expect(found({ ...noLift, objects: over(2.5, 0.4) }).verdict).toBe('meets');
  expect(found({ ...noLift, objects: over(0) }).verdict).toBe('meets');
});

test("the terminal box is drawn with the motor, and strikes what the motor's own rim passes", () => {
  const dimensions = {
    'terminal-box': { side: 'east', out: '200 mm', width: '200 mm', height: '200 mm', up: '900 mm' },
  };
  expect(found({ ...noLift, dimensions, objects: over(2.2, 0.4) }).verdict).toBe('exceeds');
});

test('a duct inside the motor is a clash, whatever height is needed', () => {
  expect(found({ ...noLift, objects: over(2) })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-withdrawal.clash' },
  });
});

test('without the height needed it cannot be told, but the height there is is given', () => {
  const finding = found({ ...noLift, outline: { withdrawal: undefined } });
  expect(finding).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.motor-withdrawal.no-height' },
  });
  expect(finding.demand).toBeCloseTo(1.8, 9);
});

test('without a ceiling or anything else overhead it cannot be told', () => {
  const finding = found({ room: { ceiling: undefined, lift: undefined } });
  expect(finding).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.motor-withdrawal.no-ceiling' },
  });
});

test('sling, hook and hoist are added to the height: 0.5 + 0.15 tan 60° + 0.04 + 0.4 under 1.7 m', () => {
  const finding = found();
  expect(finding).toMatchObject({ verdict: 'meets', reason: { code: 'checks.motor-withdrawal.gear-fits' } });
  expect(finding.limit).toBeCloseTo(0.94 + 0.15 * Math.sqrt(3), 9);
  expect(finding.demand).toBeCloseTo(1.7, 9);
});

test('a hoist that takes up the height exceeds, though the motor itself comes free', () => {
  const finding = found({ room: { lift: { ...lift, 'hoist-height': '1 m' } } });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.motor-withdrawal.gear' } });
  expect(finding.reason?.data.short).toBeCloseTo(1.54 + 0.15 * Math.sqrt(3) - 1.7, 9);
});

test('an anchor below the eyes of the motor exceeds', () => {
  const anchor = { east: '0 m', north: '0 m', elevation: '2 m' };
  expect(found({ room: { lift: { ...lift, anchor } } })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-withdrawal.anchor-low' },
  });
});

test('a lift without hoist height cannot be told', () => {
  expect(found({ room: { lift: without(lift, 'hoist-height') } })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.motor-withdrawal.no-gear' },
  });
});

test('the beam the anchor hangs on is not in the way, another between anchor and motor is', () => {
  const beam = box('lifting beam', 'beam', [-2, -0.1, 3.9], [2, 0.1, 4]);
  const tray = box('cable tray', 'other', [0.005, -1, 3.3], [0.4, 1, 3.32]);
  expect(found({ objects: [...walls, beam] }).verdict).toBe('meets');
  expect(found({ objects: [...walls, beam, tray] })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-withdrawal.hoist', data: { obstacle: 'cable tray' } },
  });
});

test('the sling strikes what the drawn motor stays under', () => {
  // Motor up to 2.7 m; the sling's top up to 2.7 + 0.26 m.
  const tray = box('cable tray', 'other', [-1, -1, 2.8], [1, 1, 2.82]);
  expect(found({ objects: [...walls, tray] })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-withdrawal.sling', data: { obstacle: 'cable tray' } },
  });
});
