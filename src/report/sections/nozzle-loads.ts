import { allChecks, nozzleLoadRows } from '../../checks/index.js';
import type { PlacedNozzle } from '../../model/layout.js';
import { columnGroups, everyCondition } from '../condition-order.js';
import type { ReportContext, View } from '../context.js';
import { findingRow } from '../finding-row.js';

/** Checks that compare nozzle loads with a basis. */
const NOZZLE = /^nozzle/;

/**
 * Loads on both nozzles in every condition, in plan axes and in the nozzle's own, and the ratio by basis.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function nozzleLoads(context: ReportContext) {
  const { layout, installation, response } = context.subject;
  const conditions = everyCondition(response).map(({ name }) => name);
  const bases = context.findings.filter(
    (finding) => NOZZLE.test(finding.check) && finding.verdict !== 'does-not-apply',
  );
  const ratios = columnGroups(everyCondition(response)).map((group) => {
    const names = group.map(({ name }) => name);
    return { conditions: names, rows: ratioRows(context, names) };
  });
  return {
    forceUnit: context.write.unit('force'),
    momentUnit: context.write.unit('moment'),
    nozzles: [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle) =>
      nozzleTables(nozzle, conditions, context),
    ),
    basis: installation.limits.nozzle.basis ?? '',
    hasBasis: installation.limits.nozzle.basis !== undefined,
    ratios: ratios.filter((table) => table.rows.length > 0),
    hasRatios: ratios.some((table) => table.rows.length > 0),
    bases: bases.map((finding) => findingRow(finding, context)),
    hasBases: bases.length > 0,
  } satisfies View;
}

function nozzleTables(nozzle: PlacedNozzle, conditions: readonly string[], context: ReportContext) {
  const rows = nozzleLoadRows(context.subject);
  const force = context.write.scaled(
    'force',
    rows.flatMap((row) => [...row.plan.force]),
  );
  const moment = context.write.scaled(
    'moment',
    rows.flatMap((row) => [...row.plan.moment]),
  );
  const found = conditions.flatMap((condition) =>
    rows.filter((row) => row.nozzle === nozzle.which && row.condition === condition),
  );
  return {
    which: nozzle.which,
    size: `NPS ${nozzle.nps}`,
    axis: context.write.bearing(nozzle.axis),
    cross: context.write.bearing(crossOf(nozzle.axis)),
    rows: found.map(({ condition, plan, own }) => ({
      condition,
      plan: [
        ...plan.force.map((value) => force(value)),
        force(own.resultantForce),
        ...plan.moment.map((value) => moment(value)),
        moment(own.resultantMoment),
      ],
      own: [
        force(own.axialForce),
        force(own.verticalForce),
        force(own.crossForce),
        force(own.resultantForce),
        moment(own.axialMoment),
        moment(own.verticalMoment),
        moment(own.crossMoment),
        moment(own.resultantMoment),
      ],
    })),
  };
}

/** Direction square to the nozzle and to the vertical, right-handed after both. */
function crossOf([east, north]: PlacedNozzle['axis']): PlacedNozzle['axis'] {
  const level = Math.hypot(east, north);
  return level === 0 ? [1, 0, 0] : [north / level, -east / level, 0];
}

/** Largest demand over limit of each basis, nozzle and condition, and what governs it. */
function ratioRows(context: ReportContext, conditions: readonly string[]) {
  const places = allChecks
    .filter((check) => NOZZLE.test(check.id))
    .flatMap((check) => check.survey(context.subject).map((place) => ({ check, place })));
  return places.flatMap(({ check, place }) => {
    const compared = place.readings.flatMap((reading) =>
      reading.kind === 'compared' &&
      reading.demand !== undefined &&
      reading.limit !== undefined &&
      reading.limit > 0
        ? [
            {
              ratio: reading.demand / reading.limit,
              condition: reading.condition,
              label: reading.label ?? '–',
            },
          ]
        : [],
    );
    const shown = compared.filter((one) => conditions.includes(one.condition ?? ''));
    if (shown.length === 0) return [];
    const worst = shown.reduce((best, one) => (one.ratio > best.ratio ? one : best));
    return [
      {
        title: check.title,
        at: place.at,
        ratios: conditions.map((condition) => {
          const here = compared.filter((one) => one.condition === condition).map((one) => one.ratio);
          return context.write.ratio(here.length === 0 ? undefined : Math.max(...here));
        }),
        governs: worst.label,
        exceeds: worst.ratio > 1,
      },
    ];
  });
}
