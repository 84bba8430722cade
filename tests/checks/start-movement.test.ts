import { expect, test } from 'vitest';
import type { Subject } from '../../src/analysis/subject.js';
import { startMovement, startMovements } from '../../src/checks/motion/start-movement.js';
import { runCheck } from '../../src/checks/run-check.js';
import type { StartUp, WorkedStart } from '../../src/mechanics/start/start-up.js';
import { roleOfId } from '../../src/model/conditions/condition-roles.js';
import type { Movement } from '../../src/model/conventions.js';
import { layout, solved, sourced, subject, UNUSABLE } from './fixture.js';

/** Motor seat 0.4 m over the ports, motor top at 1.2 m and 0.4 m across; ports at 1 m over the floor. */
const seat: Movement = { translation: [0, 0, 0], rotation: [0, 0, 0] };
const moved = (east: number, turn: number, lean = 0): Movement => ({
  translation: [east, 0, 0],
  rotation: [0, lean, turn],
});

const worked = { kind: 'worked out', runs: [], twist: 100, twisting: [] } as unknown as WorkedStart;

function starting(
  change: {
    readonly start?: StartUp;
    readonly limit?: number;
    readonly plain?: Movement;
    readonly opposite?: Movement;
    readonly unsolved?: boolean;
  } = {},
): Subject {
  const plain = subject(
    change.limit === undefined ? {} : { limits: { startMovement: sourced(change.limit) } },
  );
  const placed = layout();
  const running = placed.frame.conditions.find(({ name }) => name === 'running');
  if (running === undefined) throw new Error('no condition running');
  const conditions = ['starting', 'starting-opposite'].map((name) => ({
    ...running,
    name,
    role: roleOfId(name),
  }));
  const answers = {
    running: solved('running', { movements: { 'motor seat': seat } }),
    ...(change.unsolved !== true && {
      starting: solved('starting', { movements: { 'motor seat': change.plain ?? moved(1e-3, 0) } }),
      'starting-opposite': solved('starting-opposite', {
        movements: { 'motor seat': change.opposite ?? moved(-1e-3, 0) },
      }),
    }),
  };
  return {
    ...plain,
    startUp: change.start ?? worked,
    layout: {
      ...placed,
      frame: {
        ...placed.frame,
        points: { ...placed.frame.points, 'motor seat': [0, 0, 1.4] },
        conditions: [...placed.frame.conditions, ...conditions],
      },
    },
    response: { ...plain.response, conditions: { ...plain.response.conditions, ...answers } },
  };
}

const finding = (about: Subject) => {
  const [first] = runCheck(startMovement, about);
  if (first === undefined) throw new Error('no finding');
  return first;
};

test('a movement within the limit meets it', () => {
  expect(finding(starting({ limit: 2e-3 }))).toMatchObject({
    at: 'motor top',
    verdict: 'meets',
    ratio: expect.closeTo(0.5, 9),
    basis: { source: 'input' },
  });
});

test('the worse of both senses exceeds and is named', () => {
  expect(finding(starting({ limit: 2e-3, opposite: moved(-3e-3, 0) }))).toMatchObject({
    verdict: 'exceeds',
    condition: 'starting-opposite',
    reason: { code: 'checks.start-movement.exceeds' },
  });
});

test('turn about the shaft counts at the rim, and leaning at the height of the top', () => {
  const [one] = startMovements(starting({ plain: moved(0, 0.01) }));
  expect(one?.movement).toBeCloseTo(0.01 * 0.2, 12);
  // The top stands 0.8 m over the seat.
  const [leaning] = startMovements(starting({ plain: moved(0, 0, 0.01) }));
  expect(leaning?.movement).toBeCloseTo(0.008, 12);
});

test('a time history that moves farther governs', () => {
  const runs = [1e-3, 5e-3].map((byHistory) => ({ top: { byHistory } }));
  const start = { ...worked, runs } as unknown as WorkedStart;
  expect(startMovements(starting({ start })).map(({ by }) => by)).toEqual([
    'dynamic factor',
    'dynamic factor',
    'time history',
  ]);
  expect(finding(starting({ start, limit: 4e-3 }))).toMatchObject({ verdict: 'exceeds', demand: 5e-3 });
});

test('without a limit it cannot be told, and the movement is', () => {
  expect(finding(starting())).toMatchObject({
    verdict: 'cannot-tell',
    demand: expect.closeTo(1e-3, 12),
    reason: { code: 'checks.start-movement.no-limit' },
  });
});

test.each(UNUSABLE)('a limit that is %s cannot be told', (_word, limit) => {
  expect(finding(starting({ limit })).verdict).toBe('cannot-tell');
});

test('a start that fails, and lines that find no state, cannot be told', () => {
  const fails: StartUp = {
    kind: 'fails',
    why: { code: 'mechanics.never-reaches-speed', data: { reached: 70, several: ['a'] } },
  };
  expect(finding(starting({ start: fails }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'mechanics.never-reaches-speed', data: { reached: 70 } },
  });
  expect(finding(starting({ unsolved: true }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.start-movement.not-solved' },
  });
});

test('where no start was worked out it does not apply', () => {
  expect(finding(subject()).verdict).toBe('does-not-apply');
});
