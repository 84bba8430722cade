import { expect, test } from 'vitest';
import { runCheck } from '../../src/checks/run-check.js';
import { pumpOutSupports } from '../../src/checks/supports/pump-out-supports.js';
import { elbow, end, flange, straight, support } from '../model/fixture.js';
import { findingsOf } from './findings-of.js';
import { solvedSubject } from './solved-subject.js';

test('lines that stand alone meet, with how far the flange springs', () => {
  const findings = runCheck(pumpOutSupports, solvedSubject());
  expect(findings).toMatchObject([
    { at: 'suction line', verdict: 'meets', condition: 'pump-out', comparison: false },
    { at: 'discharge line', verdict: 'meets' },
  ]);
  for (const { demand, limit } of findings) {
    expect(demand).toBeGreaterThan(0);
    expect(limit).toBeUndefined();
  }
});

test('a line that the pump alone keeps from falling exceeds, and the other is not blamed', () => {
  // One hanger over a stub with a free end: it swings about its rod as soon as the pump lets go.
  const subject = solvedSubject({
    discharge: [
      flange('flange 2'),
      straight('straight 6', 1),
      elbow('elbow 3', [0, 0, 1]),
      straight('straight 7', 1),
      support('hanger', 'H3'),
      end('end 2', 'free'),
    ],
  });
  const [suction, discharge] = runCheck(pumpOutSupports, subject);
  expect(suction?.verdict).toBe('meets');
  expect(discharge).toMatchObject({
    at: 'discharge line',
    verdict: 'exceeds',
    reason: { code: 'checks.pump-out-supports.exceeds', data: { line: 'discharge line' } },
  });
});

test('a frame that cannot be solved has no place for it', () => {
  expect(findingsOf(pumpOutSupports)).toMatchObject([
    { verdict: 'does-not-apply', reason: { code: 'checks.pump-out-supports.no-place' } },
  ]);
});
