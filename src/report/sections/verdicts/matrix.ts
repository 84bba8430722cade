import { allChecks } from '../../../checks/all-checks.js';
import { judgeDemand } from '../../../checks/run-check.js';
import { governing } from '../../../judging/worst-first.js';
import { conditionTitle } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';
import { largestNozzleRows } from '../../rows/largest-nozzle-rows.js';
import { everyCondition } from '../../words/condition-order.js';
import { findingRow } from '../../words/finding-row.js';

/** The largest ratio in one condition, as judged. */
interface Cell {
  readonly ratio: number;
  readonly isOver: boolean;
}

/** One basis at one nozzle: its ratio in every condition. */
interface MatrixColumn {
  readonly basis: string;
  readonly nozzle: string;
  readonly check: string;
  readonly at: string;
  readonly ratios: ReadonlyMap<string, Cell>;
  readonly governs: string;
}

/**
 * Demand over limit of the nozzles by basis, nozzle and condition, and what governs each.
 *
 * @param context - results and writer
 * @returns columns by basis and nozzle, rows by condition
 */
export function matrix(context: ReportContext) {
  const { write } = context;
  const { installation } = context.subject;
  const columns = matrixColumns(context);
  const conditions = everyCondition(context.subject.response)
    .map(({ name }) => name)
    .filter((name) => columns.some((column) => column.ratios.has(name)));
  const bases = [...new Set(columns.map((column) => column.basis))];
  return {
    largest: largestNozzleRows(context.subject, write).map((row) => ({ ...row })),
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
      condition: conditionTitle(condition),
      ratios: columns.map((column) => {
        const cell = column.ratios.get(condition);
        return { ratio: write.ratio(cell?.ratio), isOver: cell?.isOver ?? false };
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
  return allChecks
    .filter(({ section }) => section === 'nozzle-loads')
    .flatMap((check) =>
      check.survey(subject).flatMap((place) => {
        const ratios = new Map<string, Cell>();
        const compared = place.demands.map(judgeDemand);
        for (const { demand, outcome } of compared) {
          const { ratio, verdict } = outcome;
          if (ratio === undefined) continue;
          const condition = demand.condition ?? '';
          const before = ratios.get(condition);
          if (before === undefined || ratio > before.ratio)
            ratios.set(condition, { ratio, isOver: verdict === 'exceeds' });
        }
        const governs = governing(compared.filter(({ outcome }) => outcome.ratio !== undefined));
        if (ratios.size === 0) return [];
        const [, nozzle, against] = PLACE.exec(place.at) ?? [];
        const basis = against === undefined ? check.title : `${check.title}, ${against}`;
        return [
          {
            basis,
            nozzle: nozzle ?? place.at,
            check: check.id,
            at: place.at,
            ratios,
            governs: governs?.demand.label ?? '–',
          },
        ];
      }),
    );
}
