import { type SlackQuestion, slackQuestions } from '../../../analysis/supports/slack-questions.js';
import { isOf } from '../../../checks/all-checks.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';
import { bothText } from '../../words/flange-words.js';

/**
 * What happens when each hanger near the pump is slack: nozzle loads, who takes over, what moves, and which is worst.
 *
 * @param context - results, findings and writer
 * @returns one row for each hanger
 */
export function slack(context: ReportContext) {
  const { write } = context;
  const questions = slackQuestions(context.subject);
  const own = questions.flatMap(({ nozzles }) => nozzles.map((row) => row.own));
  const force = write.scaled('force', [
    ...own.map(({ resultantForce }) => resultantForce),
    ...questions.flatMap(({ takers }) => takers.flatMap(({ before, slack: then }) => [before, then])),
  ]);
  const moment = write.scaled(
    'moment',
    own.map(({ resultantMoment }) => resultantMoment),
  );
  const worst = worstOf(questions, context);
  const rows = questions.map((question) => {
    const { mark, falls, nozzles, takers, furthest } = question;
    const on = (which: 'suction' | 'discharge') => nozzles.find(({ nozzle }) => nozzle === which)?.own;
    const finding = findingOf(question, context);
    const { ratio, verdict } = finding === undefined ? NOT_JUDGED : findingRow(finding, context);
    return {
      mark,
      falls: falls !== undefined,
      isWorst: question === worst,
      suctionForce: force(on('suction')?.resultantForce),
      suctionMoment: moment(on('suction')?.resultantMoment),
      dischargeForce: force(on('discharge')?.resultantForce),
      dischargeMoment: moment(on('discharge')?.resultantMoment),
      ratio,
      verdict,
      exceeds: verdict === 'exceeds',
      takers: takers
        .map(({ mark: name, before, slack: then }) => `${name}: ${force(before)} to ${force(then)}`)
        .join('; '),
      furthest: furthest === undefined ? '–' : `${furthest.point}, ${bothText(furthest.by)}`,
    };
  });
  return {
    full: context.reader === 'engineer',
    unit: write.unit('force'),
    momentUnit: write.unit('moment'),
    rows,
    hasRows: rows.length > 0,
    worst: worst?.mark ?? '',
    hasWorst: worst !== undefined && questions.length > 1,
    worstFalls: worst?.falls !== undefined,
  } satisfies View;
}

const NOT_JUDGED = { ratio: '–', verdict: 'cannot-tell' } as const;

function findingOf({ condition }: SlackQuestion, context: ReportContext) {
  return context.findings.find((finding) => isOf(finding, 'slack-hanger') && finding.condition === condition);
}

/** The hanger whose slackness is worst: one whose line falls, then by ratio, then by the force on a nozzle. */
function worstOf(questions: readonly SlackQuestion[], context: ReportContext): SlackQuestion | undefined {
  const gravity = (question: SlackQuestion): readonly [number, number] => {
    if (question.falls !== undefined) return [Number.MAX_VALUE, 0];
    const forces = question.nozzles.map(({ own }) => own.resultantForce);
    return [findingOf(question, context)?.ratio ?? 0, Math.max(0, ...forces)];
  };
  return questions.reduce<SlackQuestion | undefined>((worst, next) => {
    if (worst === undefined) return next;
    const [a, b] = [gravity(next), gravity(worst)];
    return a[0] > b[0] || (a[0] === b[0] && a[1] > b[1]) ? next : worst;
  }, undefined);
}
