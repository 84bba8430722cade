import { analysisOf } from '../../../analysis/subject.js';
import {
  type LargestSupportLoads,
  largestOf,
  supportLoadIn,
} from '../../../analysis/supports/support-loads.js';
import { isOf } from '../../../checks/all-checks.js';
import type { ConditionResponse } from '../../../mechanics/frame/response.js';
import { conditionTitle, ofRole, type SingleRole } from '../../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../../model/layout/layout.js';
import type { ReportContext, View } from '../../context.js';
import { largestLoadRows } from '../../rows/largest-load-rows.js';
import {
  evenGroups,
  everyCondition,
  orderedConditions,
  type PrintedCondition,
} from '../../words/condition-order.js';
import { sourcedMark } from '../../words/origin-mark.js';
import { carriesWeight, rodText, supportWord } from '../../words/support-word.js';
import { NO_NUMBER } from '../../writer.js';

/** Supports that fit beside each other, with the balance, in a table of a page's width. */
const MOST_SUPPORTS = 9;
/** Parts of a sideways load below this share of the weight are not worth a row: their resultant stands above [-]. */
const NOISE = 1e-3;

/**
 * The largest loads on every support, its load in every condition, rods and ratings, sideways loads with their signs,
 * and the balance of weight.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function supportLoads(context: ReportContext) {
  const { layout, response } = context.subject;
  const conditions = everyCondition(response);
  const service = orderedConditions(response);
  const supports = layout.supports;
  const carrying = supports.filter(carriesWeight);
  const groups = evenGroups(carrying, MOST_SUPPORTS);
  const balance = balanceRows(supports, conditions, context);
  const lifted = carrying.some((support) => conditions.some((condition) => isLifted(condition, support)));
  const sideways = sidewaysRows(supports, context);
  return {
    unit: context.write.unit('force'),
    lengthUnit: context.write.unit('length'),
    largest: largestLoadRows(context.subject, context.write).map((row) => ({
      ...row,
      distance: distanceText(row.mark, context),
    })),
    tables: groups.map((group, i) => ({
      marks: group.map((support) => support.mark),
      isLast: i === groups.length - 1,
      rows: conditions.map((condition, k) => ({
        condition: condition.title,
        // What is judged is service and test; what if something is missing is only told.
        startsUpsets: condition === conditions[service.length],
        loads: group.map((support) => ({
          load: context.write.loadNumber(supportLoadIn(condition, support.mark)?.downward),
          lifted: isLifted(condition, support),
          undetermined: isUndetermined(condition, support),
        })),
        ...balance[k],
      })),
    })),
    hasLifted: lifted,
    undetermined: undeterminedSupports(supports, conditions),
    hasUndetermined: undeterminedSupports(supports, conditions).length > 0,
    rods: carrying
      .filter((support) => support.part?.rods !== undefined)
      .map((support) => rodRow(support, context)),
    hasRods: carrying.some((support) => support.part?.rods !== undefined),
    sideways,
    hasSideways: sideways.length > 0,
    momentUnit: context.write.unit('moment'),
    springs: carrying
      .filter((support) => support.part?.spring !== undefined)
      .map((support) => springRow(support, service, context)),
    hasSprings: carrying.some((support) => support.part?.spring !== undefined),
    balance,
  } satisfies View;
}

function isLifted(condition: ConditionResponse, { mark }: PlacedSupport): boolean {
  return supportLoadIn(condition, mark)?.isLifted ?? false;
}

function distanceText(mark: string, { subject, write }: ReportContext): string {
  const support = subject.layout.supports.find((each) => each.mark === mark);
  return support === undefined || support.line === 'pump'
    ? NO_NUMBER
    : write.quantity(support.station, 'length', { feetInches: true });
}

/** Whether nothing determines what a support carries: the load printed is then one of many. */
function isUndetermined(condition: ConditionResponse, support: PlacedSupport): boolean {
  return condition.supports[support.mark]?.undetermined?.includes('vertical') ?? false;
}

/** Supports of which a load is not determined in some condition, each with what of it. */
function undeterminedSupports(
  supports: readonly PlacedSupport[],
  conditions: readonly PrintedCondition[],
): readonly { readonly mark: string; readonly parts: string }[] {
  return supports.flatMap(({ mark }) => {
    const parts = new Set(conditions.flatMap((condition) => condition.supports[mark]?.undetermined ?? []));
    return parts.size === 0 ? [] : [{ mark, parts: [...parts].join(', ') }];
  });
}

/** The largest pull along the rods, as it is judged. */
function rodRow(support: PlacedSupport, context: ReportContext) {
  const { write } = context;
  const rods = support.part?.rods;
  const { resultant } = largestOn(support, context) ?? {};
  const found = context.findings.find((finding) => isOf(finding, 'rod-load') && finding.at === support.mark);
  const rating = rods?.rating?.value;
  const attachment = rods?.attachmentRating?.value ?? support.part?.rating?.value;
  return {
    mark: support.mark,
    rods: rodText(support),
    greatest: write.loadNumber(resultant?.load),
    condition: titleOf(resultant?.condition),
    each: write.loadNumber(found?.demand),
    rating: write.loadNumber(rating),
    ratingOrigin: sourcedMark(rods?.rating, context.assumptions),
    ratio: write.ratio(found?.ratio),
    attachment: attachment === undefined ? 'not given' : write.loadNumber(attachment),
  };
}

function largestOn(
  { mark }: PlacedSupport,
  { subject }: ReportContext,
): LargestSupportLoads['largest'] | undefined {
  return analysisOf(subject).supportLoads.find(({ at }) => at === mark)?.largest;
}

function springRow(support: PlacedSupport, conditions: readonly PrintedCondition[], context: ReportContext) {
  const spring = support.part?.spring;
  const at = (kind: SingleRole): number | undefined => {
    const found = ofRole(conditions, kind);
    return supportLoadIn(found, support.mark)?.downward;
  };
  const show = context.write.loadNumber;
  return {
    mark: support.mark,
    rate: spring === undefined ? '–' : context.write.quantity(spring.rate, 'stiffness'),
    set: show(spring?.load.value),
    setOrigin: sourcedMark(spring?.load, context.assumptions),
    minimum: show(spring?.minimum),
    maximum: show(spring?.maximum),
    filled: show(at('filled')),
    hot: show(at('hot')),
    cold: show(at('cold')),
  };
}

function sidewaysRows(supports: readonly PlacedSupport[], context: ReportContext) {
  const conditions = analysisOf(context.subject).conditions.map(({ solved }) => solved);
  const rows = supports.flatMap((support) => {
    const loads = conditions.flatMap((condition) => supportLoadIn(condition, support.mark) ?? []);
    const east = largestOf(loads, (one) => Math.abs(one.east));
    const north = largestOf(loads, (one) => Math.abs(one.north));
    const moment = largestOf(loads, (one) => one.moment);
    const weight = Math.max(...conditions.map((condition) => condition.weight), 1);
    const sizes = [Math.abs(east?.east ?? 0), Math.abs(north?.north ?? 0), moment?.moment ?? 0];
    return sizes.some((size) => size > NOISE * weight) ? [{ support, east, north, moment }] : [];
  });
  const moment = context.write.scaled(
    'moment',
    rows.map((row) => row.moment?.moment),
  );
  return rows.map((row) => ({
    mark: row.support.mark,
    kind: supportWord(row.support),
    east: context.write.loadNumber(row.east?.east),
    eastCondition: titleOf(row.east?.condition),
    north: context.write.loadNumber(row.north?.north),
    northCondition: titleOf(row.north?.condition),
    moment: moment(row.moment?.moment),
    momentCondition: titleOf(row.moment?.condition),
  }));
}

/**
 * Weight against the sum of support loads, printed with one digit more than loads so that the sum can be checked.
 */
function balanceRows(
  supports: readonly PlacedSupport[],
  conditions: readonly PrintedCondition[],
  context: ReportContext,
) {
  const digits = { significant: 5 };
  return conditions.map((condition) => {
    const sum = supports.reduce(
      (total, support) => total + (supportLoadIn(condition, support.mark)?.downward ?? 0),
      0,
    );
    const show = context.write.scaled('force', [condition.weight], digits);
    return {
      condition: condition.title,
      weight: show(condition.weight),
      supports: show(sum),
      difference: show(condition.weight - sum),
      residual: context.write.power(condition.balance.residual),
    };
  });
}

const titleOf = (condition: string | undefined): string =>
  condition === undefined ? NO_NUMBER : conditionTitle(condition);
