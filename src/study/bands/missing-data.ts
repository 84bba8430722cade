/** What to find out: the datum that would settle or turn a verdict, what matters most first. */
import type { Finding } from '../../judging/finding.js';
import type { FindingBand, MissingDatum } from './bands.js';
import { turnsWithin } from './finding-band.js';

/** Part of what is left to a limit from which on a rough value is worth finding out [-]. */
const WORTH = 0.25;

/**
 * What is known so roughly that it turns verdicts comes first; then what is missing, by how many verdicts wait for it;
 * then what may use up much of what is left to a limit.
 *
 * @param findings - all findings
 * @param bands - ratios with their bands
 * @returns data to get
 */
export function missingDataOf(
  findings: readonly Finding[],
  bands: readonly FindingBand[],
): readonly MissingDatum[] {
  const known = rough(bands.filter(({ comparison }) => !comparison));
  const turning = known.filter(({ turns }) => turns.length > 0);
  return [...turning, ...missing(findings), ...known.slice(turning.length)];
}

function missing(findings: readonly Finding[]): readonly MissingDatum[] {
  const waiting = findings.filter(({ verdict, comparison }) => verdict === 'cannot-tell' && !comparison);
  const byCode = new Map<string, Finding[]>();
  for (const finding of waiting) {
    const code = finding.reason?.code ?? finding.check;
    byCode.set(code, [...(byCode.get(code) ?? []), finding]);
  }
  return [...byCode]
    .sort(([, one], [, other]) => other.length - one.length)
    .map(([code, held]) => ({
      kind: 'missing',
      code,
      findings: held.map(({ check, title, at }) => ({ check, title, at })),
      isLast: held.length === waiting.length,
    }));
}

function rough(bands: readonly FindingBand[]): readonly Extract<MissingDatum, { kind: 'rough' }>[] {
  const byUncertainty = new Map<string, Extract<MissingDatum, { kind: 'rough' }>[]>();
  for (const { check, title, at, value, sensitivities } of bands) {
    for (const sensitivity of sensitivities) {
      const place = { check, title, at };
      const share = Math.max(usedUp(value, sensitivity.low), usedUp(value, sensitivity.high));
      const turns = turnsWithin(value, sensitivity) ? [place] : [];
      const list = byUncertainty.get(sensitivity.uncertainty.id) ?? [];
      list.push({ kind: 'rough', uncertainty: sensitivity.uncertainty, turns, most: { ...place, share } });
      byUncertainty.set(sensitivity.uncertainty.id, list);
    }
  }
  return [...byUncertainty.values()]
    .flatMap((list) => {
      const [first] = [...list].sort((a, b) => b.most.share - a.most.share);
      return first === undefined ? [] : [{ ...first, turns: list.flatMap(({ turns }) => turns) }];
    })
    .filter(({ turns, most }) => turns.length > 0 || most.share > WORTH)
    .sort((a, b) => b.turns.length - a.turns.length || b.most.share - a.most.share);
}

/** Change towards the limit over what is left to it [-]; what is gained by moving away counts for nothing. */
function usedUp(value: number, other: number | undefined): number {
  const left = 1 - value;
  return other === undefined || left === 0 ? 0 : Math.max(0, (other - value) / left);
}
