import { expect, test } from 'vitest';
import { dischargeVelocity } from '../../src/checks/practice/discharge-velocity.js';
import { runCheck } from '../../src/checks/run-check.js';
import { practiceFinding, practiceSubject } from './practice-subject.js';

const at = (discharge: string) =>
  practiceFinding(dischargeVelocity, { limits: { velocity: { discharge, source: 'design guide' } } });

test('a limit of the file decides: meets and exceeds', () => {
  expect(at('3 m/s')).toMatchObject({ verdict: 'meets', comparison: false, limit: 3 });
  // 150 m³/h through 6.065 in.
  expect(at('2 m/s').ratio).toBeCloseTo(2.2355 / 2, 3);
  expect(at('2 m/s').verdict).toBe('exceeds');
});

test('without one it cannot be told, and the velocity is told', () => {
  const finding = practiceFinding(dischargeVelocity, {
    limits: { velocity: { suction: '2 m/s', source: 'design guide' } },
  });
  expect(finding).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.discharge-velocity.no-limit' },
  });
  expect(finding.demand).toBeCloseTo(2.2355, 3);
});

test('it does not apply without a discharge line', () => {
  const subject = practiceSubject();
  const lines = subject.installation.lines.filter(({ from }) => from !== 'discharge');
  const installation = { ...subject.installation, lines };
  expect(runCheck(dischargeVelocity, { ...subject, installation })[0]?.verdict).toBe('does-not-apply');
});
