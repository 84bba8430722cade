import { inCondition } from '../../../model/conditions/condition-roles.js';
import type { WeightRow } from '../../../model/layout/layout.js';
import type { ReportContext, View } from '../../context.js';
import { originMark } from '../../words/origin-mark.js';

/**
 * Weight of every part, by line.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function weights(context: ReportContext) {
  const { layout, response } = context.subject;
  const rows = layout.weights;
  const mass = (value: number): string => context.write.number(value, 'mass', { decimals: 1 });
  const lines = [...new Set(rows.map((row) => row.line))];
  const sum = (part: (row: WeightRow) => number, chosen = rows): number =>
    chosen.reduce((all, row) => all + part(row), 0);
  const totals = (chosen: readonly WeightRow[]) => ({
    dry: mass(sum((row) => row.dry, chosen)),
    contents: mass(sum((row) => row.contents, chosen)),
    covering: mass(sum((row) => row.covering, chosen)),
    total: mass(sum(total, chosen)),
  });
  const filled = inCondition(response.conditions, 'filled');
  return {
    unit: context.write.unit('mass'),
    groups: lines.map((line) => {
      const chosen = rows.filter((row) => row.line === line);
      return {
        line,
        rows: chosen.map((row) => ({
          part: row.part,
          dry: mass(row.dry),
          contents: mass(row.contents),
          covering: mass(row.covering),
          total: mass(total(row)),
          origin: originMark(row.mass.origin, context.assumptions),
        })),
        ...totals(chosen),
      };
    }),
    ...totals(rows),
    wholeWeight: context.write.quantity(filled?.weight, 'force', { significant: 4 }),
    hasFilled: filled !== undefined,
  } satisfies View;
}

function total(row: WeightRow): number {
  return row.dry + row.contents + row.covering;
}
