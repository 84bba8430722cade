import { describe, expect, test } from 'vitest';
import { slackQuestions } from '../../src/analysis/supports/slack-questions.js';
import { runCheck } from '../../src/checks/run-check.js';
import { slackHanger } from '../../src/checks/supports/slack-hanger.js';
import { end, flange, straight, support } from '../model/fixture.js';
import { makerOf, solvedSubject } from './solved-subject.js';

const found = (force: number, moment: number) =>
  runCheck(slackHanger, solvedSubject({ limits: { nozzle: makerOf(force, moment) } }));

test('every hanger near the pump is asked about, the two nearest of each line', () => {
  expect(found(1e6, 1e6).map(({ at }) => at)).toEqual(['H1 slack', 'H2 slack', 'V1 slack', 'H3 slack']);
});

test('meets where the nozzles bear it, and says in which condition', () => {
  const [first] = found(1e6, 1e6);
  expect(first).toMatchObject({ verdict: 'meets', condition: 'slack-H1', comparison: true });
});

test("is a limit where a document of the owner makes it one, and rests on that document's clause", () => {
  const ownerRules = [{ rule: 'slack-hanger', document: 'estate standard 7', clause: 'para 4.2' }];
  const judged = (force: number) =>
    runCheck(slackHanger, solvedSubject({ limits: { nozzle: makerOf(force, force), ownerRules } }))[0];
  const basis = { source: 'input', clause: 'estate standard 7, para 4.2' };
  expect(judged(1000)).toMatchObject({ verdict: 'exceeds', comparison: false, basis });
  const other = [{ rule: 'gauge-taps', document: 'estate standard 7', clause: 'para 5' }];
  const limits = { nozzle: makerOf(1000, 1000), ownerRules: other };
  expect(runCheck(slackHanger, solvedSubject({ limits }))[0]).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
  });
});

test('exceeds where a nozzle does not, with the largest ratio of both nozzles and all components', () => {
  const [first] = found(1000, 1000);
  const [question] = slackQuestions(solvedSubject());
  const ratios = (question?.nozzles ?? []).flatMap(({ own }) => [own.resultantForce, own.resultantMoment]);
  expect(first?.verdict).toBe('exceeds');
  expect(first?.ratio).toBeCloseTo(Math.max(...ratios) / 1000, 9);
  expect(first?.reason?.code).toBe('checks.slack-hanger.exceeds');
});

test('cannot be told without a basis, and gives the load', () => {
  const [first] = runCheck(slackHanger, solvedSubject());
  expect(first).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.slack-hanger.no-basis', data: { mark: 'H1' } },
  });
  expect(first?.demand).toBeGreaterThan(0);
});

test('is judged by principal stress where that is the basis', () => {
  const limits = { nozzle: { basis: 'nozzle principal stress', comparisons: [] } } as const;
  const [first] = runCheck(slackHanger, solvedSubject({ limits }));
  expect(first?.unit).toBe('Pa');
  expect(first?.verdict).not.toBe('does-not-apply');
});

test('a line that falls when its only hanger is slack exceeds', () => {
  // A free-ended discharge line of which the hanger is one of two legs: the pump on the suction line is the other, and
  // that one is anchored, so it stands; with every support of the pump gone it would not.
  const subject = solvedSubject();
  const falls = {
    code: 'mechanics.mechanism',
    data: { movement: 'moves up or down', condition: 'slack-H1', held: 'some' },
  } as const;
  const { 'slack-H1': _, ...conditions } = subject.response.conditions;
  const response = { ...subject.response, conditions, unsolved: { 'slack-H1': falls } };
  const [first] = runCheck(slackHanger, { ...subject, response });
  expect(first).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.slack-hanger.falls' } });
});

describe('who takes the share of a slack hanger', () => {
  const [question] = slackQuestions(solvedSubject());

  test('the supports that gain most are named, with what they bore before', () => {
    expect(question?.takers).toHaveLength(2);
    for (const { before, slack } of question?.takers ?? []) expect(slack).toBeGreaterThan(before);
  });

  test('the place that moves most is named', () => {
    expect(question?.furthest?.by).toBeGreaterThan(0);
  });
});

test('does not apply where nothing can go slack', () => {
  const subject = solvedSubject({
    discharge: [flange('flange 2'), straight('straight 6', 1), support('anchor', 'A1'), end('end 2', 'free')],
  });
  const { frame } = subject.layout;
  const conditions = frame.conditions.filter(({ name }) => !name.startsWith('slack-'));
  const findings = runCheck(slackHanger, {
    ...subject,
    layout: { ...subject.layout, frame: { ...frame, conditions } },
  });
  expect(findings).toMatchObject([
    { verdict: 'does-not-apply', reason: { code: 'checks.slack-hanger.no-place' } },
  ]);
});
