/** Predicted, designed and found, side by side: nozzles and supports. */

import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import type { NozzleLoadRow } from '../../analysis/nozzles/nozzle-load-rows.js';
import { nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { asDesigned } from '../../as-found/as-found.js';
import type { ModelUpdate } from '../../as-found/model-update.js';
import { coded } from '../../issues/issue.js';
import { sentenceOf } from '../../issues/print.js';
import { conditionTitle, inCondition, isService } from '../../model/conditions/condition-roles.js';
import { supportWord } from '../../report/words/support-word.js';
import { siteText } from '../../sheet/field-context.js';
import type { AsInstalled } from '../as-installed.js';

/**
 * Loads on nozzles and supports as predicted, as designed and as found.
 *
 * @param visit - what came of the visit
 * @returns table rows; columns that would only repeat others are left out
 */
export function loadsView(visit: AsInstalled) {
  const { asFound, review, write } = visit;
  const designed = asDesigned(review);
  const subjects = {
    predicted: nozzleLoadRows(review),
    designed:
      designed === undefined
        ? undefined
        : nozzleLoadRows({ ...review, response: { ...review.response, conditions: designed } }),
    found: asFound.kind === 'solved' ? nozzleLoadRows(asFound.subject) : undefined,
    levelled: asFound.kind === 'solved' && asFound.levelled ? nozzleLoadRows(asFound.levelled) : undefined,
  };
  const picked = (rows: readonly NozzleLoadRow[] | undefined, condition: string, nozzle: string) =>
    rows?.find((row) => row.condition === condition && row.nozzle === nozzle)?.own;
  const shown = subjects.predicted.filter(isService);
  const table = (of: 'resultantForce' | 'resultantMoment', dimension: 'force' | 'moment') => {
    const each = shown.map(({ condition, nozzle, own }) => ({
      condition,
      nozzle,
      values: [
        own[of],
        picked(subjects.designed, condition, nozzle)?.[of],
        picked(subjects.found, condition, nozzle)?.[of],
        picked(subjects.levelled, condition, nozzle)?.[of],
      ],
    }));
    const show = write.scaled(
      dimension,
      each.flatMap(({ values }) => values),
    );
    return each.map(({ condition, nozzle, values }) => {
      const [predicted = '', designedText = '', found = '', levelled = ''] = values.map(show);
      return {
        condition: conditionTitle(condition),
        nozzle,
        predicted,
        designed: designedText,
        found,
        levelled,
      };
    });
  };
  return {
    columns: columnsOf([true, subjects.designed, subjects.found, subjects.levelled]),
    supportColumns: columnsOf([true, subjects.designed, subjects.found]),
    isDrawn: asFound.kind === 'as drawn',
    isSolved: asFound.kind === 'solved',
    fails: asFound.kind === 'fails',
    why: asFound.kind === 'fails' ? sentenceOf(asFound.why).message : '',
    hasDesigned: subjects.designed !== undefined,
    hasLevelled: subjects.levelled !== undefined,
    put: asFound.kind === 'as drawn' ? [] : asFound.put.map((each) => putRow(each, visit)),
    left: asFound.left.map(({ mark, code }) => ({ words: sentenceOf(coded(code, { mark })).message })),
    hasLeft: asFound.left.length > 0,
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    forces: table('resultantForce', 'force'),
    moments: table('resultantMoment', 'moment'),
    limits: limitTexts(visit),
    supports: supportRows(visit),
  };
}

/** One column of numbers for each that is there, behind the two of names. */
function columnsOf(there: readonly unknown[]): string {
  return `left:1.2 left:1.2 ${there
    .filter((each) => each !== undefined)
    .map(() => 'decimal:1')
    .join(' ')}`;
}

function putRow({ mark, what, drawn, found }: ModelUpdate, visit: AsInstalled) {
  const measured = what === 'spring load' ? 'force' : what === 'gap under it' ? 'gap' : 'distance';
  const text = (value: number | undefined) => siteText(value, measured, visit) ?? '–';
  return { mark, what, drawn: text(drawn), found: what === 'travel stops in' ? 'in' : text(found) };
}

/** Resultants allowed on each nozzle by the basis of the review. */
function limitTexts({ review, write }: AsInstalled) {
  const { basis } = review.installation.limits.nozzle;
  if (basis === undefined) return 'No basis for nozzle loads is named: these are compared with nothing.';
  const each = Object.values(review.layout.nozzles).flatMap((nozzle) => {
    const allowance = nozzleLimits(basis, nozzle, review.installation)?.allowance;
    const { resultantForce, resultantMoment } = allowance ?? {};
    if (resultantForce === undefined || resultantMoment === undefined) return [];
    return [
      `${nozzle.which} ${write.quantity(resultantForce, 'force')} and ${write.quantity(resultantMoment, 'moment')}`,
    ];
  });
  return each.length === 0
    ? `Basis: ${basis}.`
    : `Allowed by the basis of the review (${basis}): ${each.join('; ')}.`;
}

function supportRows({ review, asFound, write }: AsInstalled) {
  const load = (conditions: AsInstalled['review']['response']['conditions'], mark: string) => {
    return supportLoadIn(inCondition(conditions, 'filled'), mark)?.downward;
  };
  const designed = asDesigned(review);
  const found = asFound.kind === 'solved' ? asFound.subject.response.conditions : undefined;
  const rows = review.layout.supports.map((support) => ({
    support,
    values: [
      load(review.response.conditions, support.mark),
      designed && load(designed, support.mark),
      found && load(found, support.mark),
    ],
  }));
  const show = write.scaled(
    'force',
    rows.flatMap(({ values }) => values),
  );
  return rows.map(({ support, values }) => {
    const [predicted = '', designedText = '', foundText = ''] = values.map(show);
    return {
      mark: support.mark,
      kind: supportWord(support),
      predicted,
      designed: designedText,
      found: foundText,
    };
  });
}
