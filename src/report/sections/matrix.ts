import { allChecks } from '../../checks/all-checks.js';
import type { ReportContext, View } from '../context.js';
import { isNozzleCheck } from '../rows/nozzle-checks.js';
import { everyCondition } from '../words/condition-order.js';
import { findingRow } from '../words/finding-row.js';

/** One basis at one nozzle: its ratio in every condition. */
interface MatrixColumn {
  readonly basis: string;
  readonly nozzle: string;
  readonly check: string;
  readonly at: string;
  readonly ratios: ReadonlyMap<string, number>;
  readonly governs: string;
}

/**
 * Demand over limit of the nozzles by basis, nozzle and condition, and what governs each.
 *
 * @param context - results and writer
 * @returns columns by basis and nozzle, rows by condition
 */
export function matrix(context: ReportContext) {
  const { installation } = context.subject;
  const columns = matrixColumns(context);
  const conditions = everyCondition(context.subject.response)
    .map(({ name }) => name)
    .filter((name) => columns.some((column) => column.ratios.has(name)));
  const bases = [...new Set(columns.map((column) => column.basis))];
  const { write } = context;
  return {
    hasColumns: columns.length > 0,
    basis: installation.limits.nozzle.basis ?? '',
    hasBasis: installation.limits.nozzle.basis !== undefined,
    bases: bases.map((basis) => ({
      basis,
      span: String(columns.filter((column) => column.basis === basis).length),
    })),
    columns: columns.map((column) => ({
      nozzle: column.nozzle,
      governs: column.governs,
      finding: findingOf(column, context),
    })),
    rows: conditions.map((condition) => ({
      condition,
      ratios: columns.map((column) => {
        const ratio = column.ratios.get(condition);
        return { ratio: write.ratio(ratio), isOver: (ratio ?? 0) > 1 };
      }),
    })),
  } satisfies View;
}

/** What the columns need of the finding that sums one up. */
function findingOf({ check, at }: MatrixColumn, context: ReportContext) {
  const found = context.findings.find((finding) => finding.check === check && finding.at === at);
  const row = found && findingRow(found, context);
  return {
    number: row?.number ?? '–',
    section: row?.section ?? 'findings',
    demand: row?.demand ?? '–',
    limit: row?.limit ?? '–',
    verdict: row?.verdict ?? 'cannot-tell',
    comparison: row?.comparison ?? true,
  };
}

/** A place is named after its nozzle, with the basis behind it where there are several. */
const PLACE = /^(suction|discharge) nozzle(?: (.*))?$/;

function matrixColumns({ subject }: ReportContext): readonly MatrixColumn[] {
  return allChecks.filter(isNozzleCheck).flatMap((check) =>
    check.survey(subject).flatMap((place) => {
      const ratios = new Map<string, number>();
      let worst = { ratio: Number.NEGATIVE_INFINITY, label: '–' };
      for (const reading of place.readings) {
        if (reading.kind !== 'compared' || reading.demand === undefined || !reading.limit) continue;
        const ratio = reading.demand / reading.limit;
        const condition = reading.condition ?? '';
        ratios.set(condition, Math.max(ratio, ratios.get(condition) ?? 0));
        if (ratio > worst.ratio) worst = { ratio, label: reading.label ?? '–' };
      }
      if (ratios.size === 0) return [];
      const [, nozzle, against] = PLACE.exec(place.at) ?? [];
      const basis = against === undefined ? check.title : `${check.title}, ${against}`;
      return [
        { basis, nozzle: nozzle ?? place.at, check: check.id, at: place.at, ratios, governs: worst.label },
      ];
    }),
  );
}
