import { nozzleLoadRows } from '../../../analysis/nozzles/nozzle-load-rows.js';
import { supportLoadIn } from '../../../analysis/supports/support-loads.js';
import type { Origin } from '../../../input/installation.js';
import type { ConditionResponse } from '../../../mechanics/frame/response.js';
import { conditionId, conditionTitle, inCondition } from '../../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../../model/layout/layout.js';
import { citationText } from '../../../sources/index.js';
import type { ReportContext, View } from '../../context.js';
import { everyCondition, type PrintedCondition } from '../../words/condition-order.js';
import { carriesWeight, supportWord } from '../../words/support-word.js';

/**
 * What a sideways load and a motor lifted away do: loads of the nozzles by condition, loads of every support, and what
 * this table does not judge.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function upsets(context: ReportContext) {
  const { subject, write } = context;
  const { conditions, unsolved } = subject.response;
  const filled = inCondition(conditions, 'filled');
  const motorOff = inCondition(conditions, 'motor-off');
  const sideways = everyCondition(subject.response).filter(({ role }) => role.kind === 'lateral');
  const shown = [filled, motorOff, ...sideways].flatMap((condition) => condition ?? []);
  const lateral = subject.installation.limits.lateral?.coefficient;
  const supports = supportRows(context, { filled, motorOff, sideways });
  return {
    motorOff: conditionTitle(conditionId('motor-off')),
    hasSideways: sideways.length > 0,
    coefficient: lateral === undefined ? '' : write.plain(lateral.value),
    origin: lateral === undefined ? '' : groundsOf(lateral.origin),
    motorStands: inCondition(unsolved ?? {}, 'motor-off') === undefined,
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    nozzles: nozzleRows(context, shown),
    supports,
    hasUplift: supports.some(({ lifted }) => lifted),
  } satisfies View;
}

/** Where the coefficient is from: a document of the engineer, or the published formula with its numbers. */
function groundsOf(origin: Origin): string {
  switch (origin.kind) {
    case 'given':
      return origin.document ?? 'the file';
    case 'computed':
      return `${citationText(origin.citation)}: ${origin.how}`;
    default:
      return 'the file';
  }
}

/** Resultants on both nozzles, one row per condition. */
function nozzleRows(context: ReportContext, conditions: readonly ConditionResponse[]) {
  const rows = nozzleLoadRows(context.subject);
  const shown = rows.filter(({ condition }) => conditions.some(({ name }) => name === condition));
  const force = context.write.scaled(
    'force',
    shown.map(({ own }) => own.resultantForce),
  );
  const moment = context.write.scaled(
    'moment',
    shown.map(({ own }) => own.resultantMoment),
  );
  return conditions.map(({ name }) => {
    const own = (nozzle: 'suction' | 'discharge') =>
      shown.find((row) => row.condition === name && row.nozzle === nozzle)?.own;
    return {
      condition: conditionTitle(name),
      isFilled: name === conditionId('filled'),
      loads: (['suction', 'discharge'] as const).flatMap((nozzle) => [
        force(own(nozzle)?.resultantForce),
        moment(own(nozzle)?.resultantMoment),
      ]),
    };
  });
}

interface Shown {
  readonly filled: ConditionResponse | undefined;
  readonly motorOff: ConditionResponse | undefined;
  readonly sideways: readonly PrintedCondition[];
}

/** Every support that carries weight or is pushed sideways: down when filled, without the motor, and under the sideways load. */
function supportRows(context: ReportContext, { filled, motorOff, sideways }: Shown) {
  const { supports } = context.subject.layout;
  const rows = supports.map((support) => {
    const most = greatest(sideways, (condition) => downOn(condition, support));
    const least = greatest(sideways, (condition) => negative(downOn(condition, support)));
    const across = greatest(sideways, (condition) => acrossOn(condition, support));
    return {
      support,
      filled: downOn(filled, support),
      motorOff: downOn(motorOff, support),
      most,
      least: { value: negative(least.value), condition: least.condition },
      across,
      lifted: sideways.some((one) => supportLoadIn(one, support.mark)?.isLifted ?? false),
    };
  });
  const force = context.write.scaled(
    'force',
    rows.flatMap((row) => [row.filled, row.most.value, row.across.value]),
  );
  return rows.map((row) => ({
    mark: row.support.mark,
    kind: supportWord(row.support),
    carries: carriesWeight(row.support),
    filled: force(row.filled),
    motorOff: force(row.motorOff),
    ...printed('most', row.most, force),
    ...printed('least', row.least, force),
    ...printed('across', row.across, force),
    lifted: row.lifted,
  }));
}

/** A load and the direction it is read in; no load has no direction. */
function printed<Name extends 'most' | 'least' | 'across'>(
  name: Name,
  { value, condition }: { readonly value?: number | undefined; readonly condition: string },
  force: (value: number | undefined) => string,
) {
  const text = force(value);
  const direction = /[1-9]/u.test(text) ? condition : '–';
  return { [name]: text, [`${name}In`]: direction } as Record<Name | `${Name}In`, string>;
}

function downOn(condition: ConditionResponse | undefined, { mark }: PlacedSupport): number | undefined {
  return supportLoadIn(condition, mark)?.downward;
}

function acrossOn(condition: ConditionResponse, { mark }: PlacedSupport): number | undefined {
  return supportLoadIn(condition, mark)?.sideways;
}

function negative(value: number | undefined): number | undefined {
  return value === undefined ? undefined : 0 - value;
}

/** Way in plan in which a sideways load acts. */
const towards = ({ role, title }: PrintedCondition): string =>
  role.kind === 'lateral' ? role.towards : title;

function greatest(
  conditions: readonly PrintedCondition[],
  read: (condition: ConditionResponse) => number | undefined,
): { readonly value?: number; readonly condition: string } {
  return conditions.reduce<{ readonly value?: number; readonly condition: string }>(
    (best, condition) => {
      const value = read(condition);
      if (value === undefined || !Number.isFinite(value)) return best;
      return best.value === undefined || value > best.value ? { value, condition: towards(condition) } : best;
    },
    { condition: '–' },
  );
}
