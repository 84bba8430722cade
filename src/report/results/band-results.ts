import type * as z from 'zod';
import { citationText } from '../../sources/index.js';
import type { Bands, MissingDatum } from '../../study/bands/bands.js';
import { COVERAGE } from '../../study/bands/uncertainty.js';
import type { bandsShape } from './band-schema.js';

type BandResults = z.infer<ReturnType<typeof bandsShape>>;

/**
 * Bands for the results file.
 *
 * @param bands - as worked out
 * @returns plain data in SI units
 */
export function bandResults(bands: Bands): BandResults {
  const { sampled } = bands;
  return {
    coverage: COVERAGE,
    heavier: bands.heavier,
    doubts: bands.uncertainties.map(({ id, what, moves, half, taken, unit, obtained, citation, path }) => ({
      id,
      what,
      moves,
      halfWidth: half,
      ...(taken !== undefined && { taken }),
      unit,
      known: obtained,
      source: citationText(citation),
      ...(path !== undefined && { path }),
    })),
    ratios: bands.findings.map(
      ({ check, at, comparison, value, standard, statement, heavier, lighter, turns }) => ({
        check,
        at,
        comparison,
        ratio: value,
        standard,
        statement,
        ...(heavier !== undefined && { heavier }),
        ...(lighter !== undefined && { lighter }),
        turns: turns.map((turn) => ({
          doubt: turn.uncertainty.id,
          ...(turn.value !== undefined && { value: turn.value }),
          meets: turn.meets,
        })),
      }),
    ),
    nozzles: bands.nozzles.flatMap(({ nozzle, condition, key, value, standard }) =>
      key === 'resultantForce' || key === 'resultantMoment'
        ? [{ nozzle, condition, load: key, value, standard }]
        : [],
    ),
    supports: bands.supports.map((one) => ({ ...one })),
    ...(sampled && {
      sampled: {
        count: sampled.count,
        seed: sampled.seed,
        failed: sampled.failed,
        ratios: sampled.findings.map((one) => ({ ...one })),
      },
    }),
    findOut: bands.missingData.map(missingDatumResult),
  };
}

function missingDatumResult(datum: MissingDatum): BandResults['findOut'][number] {
  const placed = (list: readonly { readonly check: string; readonly at: string }[]) =>
    list.map(({ check, at }) => ({ check, at }));
  if (datum.kind === 'missing') return { kind: 'missing', code: datum.code, turns: placed(datum.findings) };
  return { kind: 'rough', doubt: datum.uncertainty.id, turns: placed(datum.turns), share: datum.most.share };
}
