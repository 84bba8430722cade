import { compareWithLimit } from '../../judging/compare-with-limit.js';
import type { ConditionResponse } from '../../mechanics/frame/response.js';
import { ofRole, type SingleRole } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import type { ReportContext, View } from '../context.js';
import { supportEnvelope } from '../rows/support-envelope.js';
import {
  evenGroups,
  everyCondition,
  orderedConditions,
  type PrintedCondition,
} from '../words/condition-order.js';
import { sourcedMark } from '../words/origin-mark.js';
import { carriesWeight, rodText, supportWord } from '../words/support-word.js';

/** Supports that fit beside each other, with the balance, in a table of a page's width. */
const MOST_SUPPORTS = 9;
/** Loads below this share of the weight are noise of the arithmetic and are not a sideways load worth a row [-]. */
const NOISE = 1e-4;

/**
 * Load on every support in every condition, rods and ratings, sideways loads, and the balance of weight.
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
  const all = carrying.flatMap((support) => conditions.map((condition) => down(condition, support)));
  const load = context.write.scaled('force', all);
  const groups = evenGroups(carrying, MOST_SUPPORTS);
  const extremes = new Map(supportEnvelope(context).map((row) => [row.mark, row]));
  const balance = balanceRows(supports, conditions, context);
  const lifted = carrying.some((support) => conditions.some((condition) => isLifted(condition, support)));
  return {
    unit: context.write.unit('force'),
    lengthUnit: context.write.unit('length'),
    schedule: carrying.map((support) => ({
      mark: support.mark,
      kind: supportWord(support),
      distance: distanceText(support, context),
      rods: rodText(support),
      ...extremes.get(support.mark),
    })),
    tables: groups.map((group, i) => ({
      marks: group.map((support) => support.mark),
      isLast: i === groups.length - 1,
      rows: conditions.map((condition, k) => ({
        condition: condition.title,
        // What is judged is service and test; what if something is missing is only told.
        startsUpsets: condition === conditions[service.length],
        loads: group.map((support) => ({
          load: load(down(condition, support)),
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
      .map((support) => rodRow(support, service, context)),
    hasRods: carrying.some((support) => support.part?.rods !== undefined),
    sideways: sidewaysRows(supports, service, context),
    hasSideways: sidewaysRows(supports, service, context).length > 0,
    momentUnit: context.write.unit('moment'),
    springs: carrying
      .filter((support) => support.part?.spring !== undefined)
      .map((support) => springRow(support, service, context)),
    hasSprings: carrying.some((support) => support.part?.spring !== undefined),
    balance,
  } satisfies View;
}

/** Load the pipe puts on the support, downward positive [N]. */
function down(condition: ConditionResponse, support: PlacedSupport): number | undefined {
  const force = condition.supports[support.mark]?.load.force[2];
  return force === undefined ? undefined : -force;
}

function isLifted(condition: ConditionResponse, support: PlacedSupport): boolean {
  return condition.supports[support.mark]?.states.includes('lifted') ?? false;
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

function distanceText(support: PlacedSupport, context: ReportContext): string {
  return support.line === 'pump'
    ? '–'
    : context.write.quantity(support.station, 'length', { feetInches: true });
}

function rodRow(support: PlacedSupport, conditions: readonly PrintedCondition[], context: ReportContext) {
  const { write } = context;
  const rods = support.part?.rods;
  const worst = greatest(conditions, (condition) => down(condition, support));
  const each = worst.value === undefined || rods === undefined ? undefined : worst.value / rods.count;
  const rating = rods?.rating?.value;
  const attachment = rods?.attachmentRating?.value ?? support.part?.rating?.value;
  const show = write.scaled('force', [worst.value, each, rating, attachment]);
  return {
    mark: support.mark,
    rods: rodText(support),
    greatest: show(worst.value),
    condition: worst.condition,
    each: show(each),
    rating: show(rating),
    ratingOrigin: sourcedMark(rods?.rating, context.assumptions),
    ratio: write.ratio(compareWithLimit({ demand: each, limit: rating }).ratio),
    attachment: attachment === undefined ? 'not given' : show(attachment),
  };
}

function springRow(support: PlacedSupport, conditions: readonly PrintedCondition[], context: ReportContext) {
  const spring = support.part?.spring;
  const at = (kind: SingleRole): number | undefined => {
    const found = ofRole(conditions, kind);
    return found === undefined ? undefined : down(found, support);
  };
  const show = context.write.scaled('force', [spring?.load.value, spring?.minimum, spring?.maximum]);
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

function sidewaysRows(
  supports: readonly PlacedSupport[],
  conditions: readonly PrintedCondition[],
  context: ReportContext,
) {
  const rows = supports.flatMap((support) => {
    const load = (condition: ConditionResponse) => condition.supports[support.mark]?.load;
    const east = extreme(conditions, (condition) => load(condition)?.force[0]);
    const north = extreme(conditions, (condition) => load(condition)?.force[1]);
    const moment = greatest(conditions, (condition) => {
      const turning = load(condition)?.moment;
      return turning === undefined ? undefined : Math.hypot(...turning);
    });
    const weight = Math.max(...conditions.map((condition) => condition.weight), 1);
    const matters = [east.value, north.value].some((value) => Math.abs(value ?? 0) > NOISE * weight);
    const turns = (moment.value ?? 0) > NOISE * weight;
    return matters || turns ? [{ support, east, north, moment }] : [];
  });
  const force = context.write.scaled(
    'force',
    rows.flatMap((row) => [row.east.value, row.north.value]),
  );
  const moment = context.write.scaled(
    'moment',
    rows.map((row) => row.moment.value),
  );
  return rows.map((row) => ({
    mark: row.support.mark,
    kind: supportWord(row.support),
    east: force(row.east.value),
    eastCondition: row.east.condition,
    north: force(row.north.value),
    northCondition: row.north.condition,
    moment: moment(row.moment.value),
    momentCondition: row.moment.condition,
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
    const sum = supports.reduce((total, support) => total + (down(condition, support) ?? 0), 0);
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

interface Extreme {
  readonly value?: number;
  readonly condition: string;
}

function greatest(
  conditions: readonly PrintedCondition[],
  read: (condition: ConditionResponse) => number | undefined,
): Extreme {
  return pick(conditions, read, (value) => value);
}

function extreme(
  conditions: readonly PrintedCondition[],
  read: (condition: ConditionResponse) => number | undefined,
): Extreme {
  return pick(conditions, read, Math.abs);
}

function pick(
  conditions: readonly PrintedCondition[],
  read: (condition: ConditionResponse) => number | undefined,
  size: (value: number) => number,
): Extreme {
  let best: Extreme = { condition: '–' };
  for (const condition of conditions) {
    const value = read(condition);
    if (value === undefined || !Number.isFinite(value)) continue;
    if (best.value === undefined || size(value) > size(best.value))
      best = { value, condition: condition.title };
  }
  return best;
}
