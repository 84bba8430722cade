/** What changed between the findings of two results: verdicts, ratios, findings that are new or gone. */
import { type ComparedResults, nowCalled, withoutRepeats } from './compared-results.js';
import { type FindingChange, type FindingSide, NOISE } from './comparison.js';

/** One finding of a results file. */
type FoundFinding = ComparedResults['findings'][number];

/** Findings by check and place. */
export function findingsOf(
  results: ComparedResults,
  renamed?: ReadonlyMap<string, string>,
): ReadonlyMap<string, FoundFinding> {
  const found = results.findings.map((finding) => ({
    ...finding,
    at: nowCalled(finding.at, renamed),
    ...(finding.condition !== undefined && { condition: nowCalled(finding.condition, renamed) }),
  }));
  return withoutRepeats(found, ({ check, at, comparison }) => `${check}|${at}|${comparison}`);
}

/** Changes, in the order of the newer results; what changed by less than noise is left out. */
export function findingChanges(
  before: ReadonlyMap<string, FoundFinding>,
  after: ReadonlyMap<string, FoundFinding>,
): readonly FindingChange[] {
  const pairs: (readonly [FoundFinding | undefined, FoundFinding | undefined])[] = [];
  const keys = new Set([...after.keys(), ...before.keys()]);
  for (const key of keys) pairs.push([before.get(key), after.get(key)]);
  return governingPaired(pairs).flatMap(([one, other]): readonly FindingChange[] => {
    const known = other ?? one;
    const kind = kindOf(one, other);
    if (!known || kind === undefined) return [];
    const { check, at, condition, comparison, unit } = known;
    return [
      {
        kind,
        check,
        at,
        ...(one && one.at !== at && { atBefore: one.at }),
        ...(condition !== undefined && { condition }),
        comparison,
        unit,
        ...(one && { before: sideOf(one) }),
        ...(other && { after: sideOf(other) }),
      },
    ];
  });
}

type Pair = readonly [FoundFinding | undefined, FoundFinding | undefined];

/**
 * Where a check has one place that is gone and one that is new, the place that governs has moved: one finding, not two.
 * Places on different lines, named behind a comma, are not taken for each other.
 */
function governingPaired(pairs: readonly Pair[]): readonly Pair[] {
  const groupOf = ({ check, at, comparison }: FoundFinding): string =>
    `${check}|${comparison}|${at.includes(', ') ? at.slice(at.lastIndexOf(', ')) : ''}`;
  const count = (side: 0 | 1, group: string): number =>
    pairs.filter((pair) => pair[1 - side] === undefined && pair[side] && groupOf(pair[side]) === group)
      .length;
  const isSingle = (group: string): boolean => count(0, group) === 1 && count(1, group) === 1;
  return pairs.flatMap((pair): readonly Pair[] => {
    const [one, other] = pair;
    const found = one && other ? undefined : (one ?? other);
    if (!found || !isSingle(groupOf(found))) return [pair];
    if (one) return [];
    const gone = pairs.find(([old, now]) => old && !now && groupOf(old) === groupOf(found));
    return [[gone?.[0], other]];
  });
}

function kindOf(
  one: FoundFinding | undefined,
  other: FoundFinding | undefined,
): FindingChange['kind'] | undefined {
  if (!one) return 'new';
  if (!other) return 'gone';
  if (one.verdict !== other.verdict) return 'flipped';
  if (one.ratio === undefined || other.ratio === undefined) return undefined;
  const apart = Math.abs(one.ratio - other.ratio);
  const isPrintedAlike = Math.round(one.ratio * 100) === Math.round(other.ratio * 100);
  return apart < NOISE.ratio || isPrintedAlike ? undefined : 'moved';
}

const sideOf = ({ verdict, demand, limit, ratio }: FoundFinding): FindingSide => ({
  verdict,
  ...(demand !== undefined && { demand }),
  ...(limit !== undefined && { limit }),
  ...(ratio !== undefined && { ratio }),
});
