/** Findings before and after a change, side by side; none is left out. */
import type { Finding } from '../../judging/finding.js';

/** One place judged, before and after; one of the two is absent where the place came or went. */
export interface FindingPair {
  readonly before?: Finding;
  readonly after?: Finding;
  readonly became: Became;
}

/** What became of a finding. */
export type Became =
  | 'mended'
  | 'better'
  | 'same'
  | 'worse'
  | 'exceeds now'
  | 'told now'
  | 'doubtful now'
  | 'gone'
  | 'new';

/** Ratios closer than this print alike [-]. */
const FELT = 0.005;

/**
 * Puts findings side by side.
 *
 * @param before - all findings of the file as it is
 * @param after - all findings of the changed file
 * @returns pairs in the order of the findings before, then those of new places
 */
export function compareFindings(
  before: readonly Finding[],
  after: readonly Finding[],
): readonly FindingPair[] {
  const left = new Set(after);
  const partnerOf = (one: Finding, isPartner: (one: Finding, other: Finding) => boolean) => {
    const other = [...left].find((candidate) => isPartner(one, candidate));
    if (other !== undefined) left.delete(other);
    return other;
  };
  const exact = before.map((one) => partnerOf(one, isSamePlace));
  const pairs = before.map((one, index): FindingPair => {
    const other = exact[index] ?? partnerOf(one, isSameLine);
    return { before: one, ...(other && { after: other }), became: became(one, other) };
  });
  return [...pairs, ...[...left].map((one): FindingPair => ({ after: one, became: became(undefined, one) }))];
}

function isSamePlace(one: Finding, other: Finding): boolean {
  return one.check === other.check && one.at === other.at && one.comparison === other.comparison;
}

/** The place of a line where a stress is largest may move along it: `elbow 2, suction line`. */
function isSameLine(one: Finding, other: Finding): boolean {
  const [line, otherLine] = [one.at, other.at].map((at) => /, (.+)$/.exec(at)?.[1]);
  return line !== undefined && one.check === other.check && line === otherLine;
}

function became(before: Finding | undefined, after: Finding | undefined): Became {
  const was = before?.verdict ?? 'does-not-apply';
  const is = after?.verdict ?? 'does-not-apply';
  // A place that is not judged any more is no place that was mended.
  if (after === undefined && was !== 'does-not-apply') return 'gone';
  if (is === 'exceeds' && was !== 'exceeds') return 'exceeds now';
  if (was === 'exceeds' && is !== 'exceeds') return is === 'cannot-tell' ? 'doubtful now' : 'mended';
  if (is === 'cannot-tell' && was !== 'cannot-tell') return 'doubtful now';
  if (was === 'cannot-tell' && is !== 'cannot-tell') return 'told now';
  if (before === undefined && is === 'meets') return 'new';
  const difference = (after?.ratio ?? 0) - (before?.ratio ?? 0);
  if (before === undefined || after === undefined || Math.abs(difference) < FELT) return 'same';
  return difference > 0 ? 'worse' : 'better';
}
