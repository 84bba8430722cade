import { isWithinLimit } from '../../../judging/compare-with-limit.js';
import { conditionId, conditionTitle } from '../../../model/conditions/condition-roles.js';
import type { Bands, FindingBand, NozzleBand } from '../../../study/bands/bands.js';
import { COVERAGE } from '../../../study/bands/uncertainty.js';
import { shortCitation } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import {
  bandWords,
  missingDatumRow,
  uncertaintyRange,
  uncertaintyValue,
  uncertaintyWidth,
} from '../../words/band-words.js';
import { findingRow } from '../../words/finding-row.js';
import type { Writer } from '../../writer.js';

/** Ratios of which the band stays below this are counted, not listed [-]. */
const LISTED_FROM = 0.5;

/**
 * How sure the verdicts are: bands, what would turn them, and what to find out first.
 *
 * @param context - results with their bands
 * @returns table rows; all empty where no bands were worked out
 */
export function bands(context: ReportContext) {
  const { bands: found, write } = context;
  const judged = found?.findings.filter(({ comparison }) => !comparison) ?? [];
  const listed = judged.filter(isListed);
  const first = found?.missingData.map((missingDatum) => missingDatumRow(missingDatum, context)) ?? [];
  const ends = found?.uncertainties.filter(({ moves }) => moves === 'alternative') ?? [];
  const uncertainties = found?.uncertainties.filter(({ moves }) => moves !== 'alternative') ?? [];
  const share = found?.heavier ?? 0;
  return {
    heavier: write.quantity(share, 'ratio'),
    coverage: write.plain(COVERAGE),
    first,
    hasFirst: first.length > 0,
    rows: listed.map((band) => verdictRow(band, share, context)),
    hasRows: listed.length > 0,
    others: String(judged.length - listed.length),
    hasOthers: judged.length > listed.length,
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    nozzles: nozzleRows(found, write),
    supports: supportRows(found, write),
    uncertainties: uncertainties.map((uncertainty) => ({
      what: uncertainty.what,
      taken: uncertaintyValue(uncertainty, uncertainty.taken, write),
      width: uncertaintyWidth(uncertainty, write),
      range: uncertaintyRange(uncertainty, write),
      known: uncertainty.obtained,
      source: shortCitation(uncertainty.citation, context),
    })),
    ends: ends.flatMap(({ id, what }) => {
      const strongest = strongestOf(judged, id);
      return strongest === undefined
        ? []
        : [
            {
              what,
              at: strongest.band.at,
              title: strongest.band.title,
              before: write.ratio(strongest.band.value),
              after: write.ratio(strongest.high),
            },
          ];
    }),
    hasEnds: ends.length > 0,
    sampled: sampledView(found, write),
    hasSampled: found?.sampled !== undefined,
  } satisfies View;
}

function isListed({ value, standard, statement }: FindingBand): boolean {
  return (
    value + COVERAGE * standard > LISTED_FROM ||
    statement === 'meets only if' ||
    statement === 'exceeds unless'
  );
}

function verdictRow(band: FindingBand, share: number, context: ReportContext) {
  const { write } = context;
  const { value, standard, check, at, sensitivities } = band;
  const finding = context.findings.find((one) => one.check === check && one.at === at);
  return {
    title: band.title,
    at,
    section: finding === undefined ? 'bands' : findingRow(finding, context).section,
    ratio: write.ratio(value),
    low: write.ratio(Math.max(0, value - COVERAGE * standard)),
    high: write.ratio(value + COVERAGE * standard),
    words: bandWords(band, share, write),
    most: sensitivities
      .filter(({ uncertainty }) => uncertainty.moves !== 'alternative')
      .slice(0, 2)
      .map(({ uncertainty }) => uncertainty.what)
      .join('; '),
    exceeds: !isWithinLimit(value),
  };
}

function nozzleRows(found: Bands | undefined, write: Writer) {
  const loads = found?.nozzles ?? [];
  const of = (key: NozzleBand['key']) => loads.filter((one) => one.key === key).map(({ value }) => value);
  const force = write.scaled('force', of('resultantForce'));
  const moment = write.scaled('moment', of('resultantMoment'));
  const conditions = [...new Set(loads.map(({ condition }) => condition))];
  return conditions.map((condition) => ({
    condition: conditionTitle(condition),
    loads: (['suction', 'discharge'] as const).flatMap((nozzle) =>
      (['resultantForce', 'resultantMoment'] as const).map((key) => {
        const one = loads.find(
          (each) => each.nozzle === nozzle && each.condition === condition && each.key === key,
        );
        const print = key === 'resultantForce' ? force : moment;
        return { load: print(one?.value), band: print(COVERAGE * (one?.standard ?? Number.NaN)) };
      }),
    ),
  }));
}

/** Loads below this are rounding [N]. */
const NOTHING = 1e-3;

/** Filled, hot and cold: what a rod is set and sized for. */
const SUPPORT_CONDITIONS = ['filled', 'hot', 'cold'] as const;

function supportRows(found: Bands | undefined, write: Writer) {
  const loads = found?.supports ?? [];
  const force = write.scaled(
    'force',
    loads.map(({ value }) => value),
  );
  // What holds sideways only carries nothing.
  const carries = loads.filter(({ value, standard }) => Math.abs(value) + standard > NOTHING);
  const marks = [...new Set(carries.map(({ mark }) => mark))];
  return marks.map((mark) => ({
    mark,
    loads: SUPPORT_CONDITIONS.map((condition) => {
      const one = loads.find((each) => each.mark === mark && each.condition === conditionId(condition));
      return { load: force(one?.value), band: force(COVERAGE * (one?.standard ?? Number.NaN)) };
    }),
  }));
}

/** The verdict that an alternative moves most. */
function strongestOf(judged: readonly FindingBand[], id: string) {
  const moved = judged.flatMap((band) => {
    const high = band.sensitivities.find(({ uncertainty }) => uncertainty.id === id)?.high;
    return high === undefined ? [] : [{ band, high }];
  });
  return moved.sort((a, b) => Math.abs(b.high - b.band.value) - Math.abs(a.high - a.band.value))[0];
}

function sampledView(found: Bands | undefined, write: Writer) {
  const { sampled } = found ?? {};
  const judged = new Map(found?.findings.map((band) => [`${band.check} ${band.at}`, band]));
  return {
    count: String(sampled?.count ?? 0),
    seed: String(sampled?.seed ?? 0),
    failed: String(sampled?.failed ?? 0),
    hasFailed: (sampled?.failed ?? 0) > 0,
    rows:
      sampled?.findings.flatMap(({ check, at, low, high, beyond }) => {
        const band = judged.get(`${check} ${at}`);
        return band === undefined || band.comparison || !isListed(band)
          ? []
          : [
              {
                title: band.title,
                at,
                low: write.ratio(low),
                high: write.ratio(high),
                beyond: write.quantity(beyond, 'ratio', { significant: 2 }),
              },
            ];
      }) ?? [],
  };
}
