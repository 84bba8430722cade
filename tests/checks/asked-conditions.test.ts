import { describe, expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import { ASKED_STATES, askedConditions, askedIn } from '../../src/checks/asked-conditions.js';
import { flangeEquivalentPressure } from '../../src/checks/flanges/flange-equivalent-pressure.js';
import { runCheck } from '../../src/checks/run-check.js';
import { rodLoad } from '../../src/checks/supports/rod-load.js';
import { askedRows } from '../../src/report/rows/asked-rows.js';
import { solvedSubject } from './solved-subject.js';

const declared = allChecks.filter(({ conditions }) => conditions !== undefined);

test('no check has a demand in a condition in which its declaration says that it is not asked', () => {
  const subject = solvedSubject();
  for (const check of declared) {
    const conditions = check
      .survey(subject)
      .flatMap(({ demands }) => demands.flatMap(({ condition }) => condition ?? []));
    const astray = conditions.filter(
      (one) => !one.includes(' to ') && typeof askedIn(check, one) !== 'string',
    );
    expect({ check: check.id, astray: [...new Set(astray)] }).toEqual({ check: check.id, astray: [] });
  }
});

test('a condition of a frame written by hand is judged', () => {
  expect(askedIn(rodLoad, 'a condition of my own')).toBe('judged');
});

describe('an unloaded support', () => {
  const subject = solvedSubject();
  test('is compared for the rods of the others, beside what is judged', () => {
    const findings = runCheck(rodLoad, subject);
    const judged = findings.filter(({ at }) => at === 'H1');
    const beside = findings.filter(({ at }) => at === 'H1, compared');
    expect(judged.map(({ comparison }) => comparison)).toEqual([false]);
    expect(beside.map(({ comparison }) => comparison)).toEqual([true]);
    expect(beside[0]?.condition).toMatch(/^slack-/);
    expect(judged[0]?.condition).not.toMatch(/^slack-/);
  });

  test('never decides a flange joint, and is looked at', () => {
    const slack = askedConditions(flangeEquivalentPressure.conditions ?? never(), subject).filter(
      ({ role }) => role.kind === 'slack',
    );
    expect(slack.length).toBeGreaterThan(0);
    for (const finding of runCheck(flangeEquivalentPressure, subject))
      expect(finding.comparison).toBe(finding.condition?.startsWith('slack-') === true);
  });
});

test('the table of the review has every declared rule and condition, and every figure its reason', () => {
  const { heads, rows, reasons } = askedRows();
  expect(heads).toHaveLength(ASKED_STATES.length);
  expect(rows.map(({ title }) => title)).toEqual(declared.map(({ title }) => title));
  const figures = new Set(rows.flatMap(({ cells }) => cells.map(({ mark }) => mark)));
  for (const { figure, reason } of reasons) {
    expect(figures).toContain(figure);
    expect(reason).not.toBe('');
  }
  expect([...figures].filter((mark) => !['J', 'C'].includes(mark)).length).toBe(reasons.length);
});

function never(): never {
  throw new Error('the check declares no conditions');
}
