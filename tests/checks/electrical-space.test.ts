import { expect, test } from 'vitest';
import { electricalSpace } from '../../src/checks/electrical/electrical-space.js';
import { box, roomFinding, type roomSubject } from './room-subject.js';

const FOOT = 0.3048;
/** A panel 0.6 m wide, its front at 5 m east, far from the pump and its lines, facing east. */
const panel = (electrical?: object) =>
  box(
    'panel',
    'MCC 1',
    [
      [4.6, -0.3, 0.5],
      [5, 0.3, 2],
    ],
    electrical === undefined ? {} : { electrical },
  );
const asked = { front: 'east', 'voltage-to-ground': '277 V', opposite: 'grounded' };
/** A wall whose near face is so far in front of the panel. */
const wallAt = (depth: number) =>
  box('wall', 'east wall', [
    [5 + depth, -3, 0],
    [5.2 + depth, 3, 4],
  ]);
const at = (objects: Parameters<typeof roomSubject>[0], change = {}) =>
  roomFinding(electricalSpace, objects, change);

test('a wall farther than the row asks for meets it, and is named', () => {
  expect(at([panel(asked), wallAt(1.2)])).toMatchObject({
    verdict: 'meets',
    basis: { source: 'osha-1910-303', confidence: 'two sources' },
    reason: { code: 'checks.electrical-space.free', data: { obstacle: 'east wall', row: '151 to 600 V' } },
  });
});

test('the depth found is that to the wall, and the limit of a grounded wall at 277 V is 3.5 ft', () => {
  const { demand, limit } = at([panel(asked), wallAt(1.2)]);
  expect(limit).toBeCloseTo(3.5 * FOOT, 9);
  expect(demand).toBeCloseTo(1.2, 2);
});

test('a wall too near exceeds, with the way it would have to go', () => {
  const found = at([panel(asked), wallAt(0.9)]);
  expect(found).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.electrical-space.exceeds', data: { obstacle: 'east wall', way: 'east' } },
  });
  expect(found.reason?.data.move).toBeCloseTo(3.5 * FOOT - 0.9, 2);
});

test('the same wall meets the row of nothing grounded, and of a low voltage', () => {
  expect(at([panel({ ...asked, opposite: 'nothing' }), wallAt(1)]).verdict).toBe('meets');
  expect(at([panel({ ...asked, 'voltage-to-ground': '120 V' }), wallAt(1)]).verdict).toBe('meets');
});

test('a pipe under the height of the space counts, one above it does not', () => {
  const pipe = (up: number) => ({
    kind: 'pipe',
    name: 'drip line',
    points: [
      { east: '5.5 m', north: '-2 m', elevation: `${up} m` },
      { east: '5.5 m', north: '2 m', elevation: `${up} m` },
    ],
    diameter: '100 mm',
  });
  expect(at([panel(asked), wallAt(3), pipe(1.8)])).toMatchObject({
    verdict: 'exceeds',
    reason: { data: { obstacle: 'drip line' } },
  });
  expect(at([panel(asked), wallAt(3), pipe(2.2)]).verdict).toBe('meets');
});

test('the pump itself counts', () => {
  const beside = box(
    'panel',
    'MCC 1',
    [
      [0.9, -0.3, 0.5],
      [1.2, 0.3, 2],
    ],
    { electrical: { ...asked, front: 'west' } },
  );
  expect(at([beside])).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'pump' } } });
});

test('the width may lie to one side of a narrow panel, and not of one that is wide itself', () => {
  // 30 in is 0.762 m: 0.081 m may lie beyond either edge of the panel, or 0.162 m beyond one.
  const column = (from: number) =>
    box('other', 'column', [
      [5.3, from, 0],
      [5.6, from + 0.3, 4],
    ]);
  expect(at([panel(asked), wallAt(2), column(0.31)]).verdict).toBe('meets');
  const both = [
    column(0.31),
    box('other', 'post', [
      [5.3, -0.6, 0],
      [5.6, -0.31, 4],
    ]),
  ];
  expect(at([panel(asked), wallAt(2), ...both]).verdict).toBe('exceeds');
});

test('something right before the panel leaves nothing', () => {
  expect(at([panel(asked), wallAt(0)])).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.electrical-space.blocked' },
  });
});

test('what faces the panel decides only where the depth would do for some and not for others', () => {
  const { opposite: _, ...open } = asked;
  expect(at([panel(open), wallAt(1.3)]).verdict).toBe('meets');
  expect(at([panel(open), wallAt(0.8)]).verdict).toBe('exceeds');
  expect(at([panel(open), wallAt(1)])).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.electrical-space.no-opposite' },
  });
});

test('something grounded opposite that the room does not have cannot be told, nothing opposite can', () => {
  expect(at([panel(asked)])).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.electrical-space.nothing-opposite' },
  });
  expect(at([panel({ ...asked, opposite: 'nothing' })])).toMatchObject({
    verdict: 'meets',
    reason: { code: 'checks.electrical-space.open' },
  });
});

test.each([
  ['no front and voltage', [panel(), wallAt(2)], {}, 'not-described'],
  ['no voltage', [panel({ front: 'east' }), wallAt(2)], {}, 'no-voltage'],
  [
    'a voltage above the table',
    [panel({ ...asked, 'voltage-to-ground': '2.4 kV' }), wallAt(2)],
    {},
    'beyond-table',
  ],
  ['no floor', [panel(asked), wallAt(2)], { room: { floor: undefined } }, 'no-floor'],
])('with %s it cannot be told', (_what, objects, change, code) => {
  expect(at(objects, change)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: `checks.electrical-space.${code}` },
  });
});

test('the row that is only remembered never decides', () => {
  expect(at([panel({ ...asked, 'voltage-to-ground': '800 V' }), wallAt(1)])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    basis: { source: 'nfpa-70', confidence: 'memory' },
  });
});

test('a room without a panel has no place for it', () => {
  expect(at([wallAt(1)])).toMatchObject({ verdict: 'does-not-apply' });
});

test('a panel turned with its room keeps its verdict', () => {
  const north = box(
    'panel',
    'MCC 1',
    [
      [4.7, 4.6, 0.5],
      [5.3, 5, 2],
    ],
    { electrical: { ...asked, front: 'north' } },
  );
  const wall = (depth: number) =>
    box('wall', 'north wall', [
      [2, 5 + depth, 0],
      [8, 5.2 + depth, 4],
    ]);
  expect(at([north, wall(1.2)]).verdict).toBe('meets');
  expect(at([north, wall(0.9)]).verdict).toBe('exceeds');
});
