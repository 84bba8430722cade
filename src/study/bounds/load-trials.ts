/** Loads, stresses and movements at the bounds of what nobody stated: each thing alone, then the corners that matter. */
import { analysed, type Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { allChecks } from '../../checks/all-checks.js';
import type { Check } from '../../checks/define-check.js';
import { runCheck } from '../../checks/run-check.js';
import { EngineError } from '../../issues/issue.js';
import type { Compared } from '../../judging/compare-with-limit.js';
import type { Finding } from '../../judging/finding.js';
import type { AtBound } from '../../judging/over-bounds.js';
import { solveFrame } from '../../mechanics/frame/solve-frame.js';
import type { Layout } from '../../model/layout/layout.js';
import { type Amounts, atBounds } from './at-bounds.js';
import type { SupportReach } from './bounds.js';
import { layoutAtBounds } from './layout-at-bounds.js';
import type { Unstated } from './unstated.js';

/**
 * Checks that follow from loads at rest. What one millimetre of misfit makes is largest where everything is rigid, as it
 * is taken: a softer spring anywhere never raises it, so fit-up needs no trial. Distances, room and practice do not move.
 */
export const followedByLoads = allChecks.filter(
  ({ dependsOn, cost }) =>
    cost === 'quick' &&
    dependsOn.includes('supports') &&
    dependsOn.includes('weights') &&
    !dependsOn.includes('start') &&
    !dependsOn.includes('duty'),
);
const FOLLOWED: ReadonlySet<string> = new Set(followedByLoads.map(({ id }) => id));

/** Changes of a ratio below this are none [-]. */
const FELT = 1e-4;
/** How far several things together may go beyond the sum of what each does alone, before the corner itself is tried [-]. */
const BEYOND_SUM = 2;
/** Corners tried at most, so that the time is bounded [-]. */
const MOST_CORNERS = 24;

/** Findings of one place at every bound that was tried. */
export interface PlaceAtBounds {
  readonly stated: Finding;
  /** As stated first. */
  readonly bounds: readonly AtBound[];
  /** Ratio with each thing alone, the one farthest from the stated where its range was swept; in the order of the things [-]. */
  readonly alone: readonly (number | undefined)[];
}

/** What the trials gave. */
export interface LoadTrials {
  readonly places: ReadonlyMap<Finding, PlaceAtBounds>;
  readonly supports: readonly SupportReach[];
  readonly trials: number;
  readonly failed: number;
}

interface Trial {
  readonly amounts: Amounts;
  /** Words of the things that have moved. */
  readonly varied: readonly string[];
  /** By check and place; nothing where the line could not be worked out. */
  readonly findings?: ReadonlyMap<string, Finding>;
  readonly loads?: ReadonlyMap<string, number>;
}

/**
 * Tries the bounds.
 *
 *     each thing alone at its far end, and half-way where its range is swept
 *     all together at the far end
 *     for each verdict that they might turn together, the corner of those that raise (or, over its limit, lower) its ratio
 *
 * @param subject - the installation, solved as stated
 * @param findings - findings of it
 * @param things - what nobody stated and loads follow
 * @returns outcomes at every bound, by finding
 */
export function loadTrials(
  subject: Subject,
  findings: readonly Finding[],
  things: readonly Unstated[],
): LoadTrials {
  const judged = findings.filter(({ check }) => FOLLOWED.has(check));
  if (things.length === 0 || judged.length === 0)
    return { places: new Map(), supports: [], trials: 0, failed: 0 };
  const ids = new Set(judged.map(({ check }) => check));
  const checks = allChecks.filter(({ id }) => ids.has(id));
  const attempt = (amounts: Amounts): Trial => tryAt(subject, things, checks, amounts);
  const alone = things.map(({ id, isSwept }) =>
    (isSwept ? [1, 0.5] : [1]).map((amount) => attempt(new Map([[id, amount]]))),
  );
  const together = attempt(new Map(things.map(({ id }) => [id, 1])));
  const keys = placeKeys(judged);
  const singles = judged.map((finding, index) =>
    alone.map((trials) => farthest(finding, keys[index], trials)),
  );
  const corners = cornersOf(judged, singles, things).map(attempt);
  const trials = [...alone.flat(), together, ...corners];
  const places = new Map<Finding, PlaceAtBounds>();
  judged.forEach((stated, index) => {
    const key = keys[index] ?? '';
    const bounds: AtBound[] = [{ varied: [], outcome: stated }];
    for (const { varied, findings: found } of trials)
      bounds.push({ varied, outcome: outcomeAt(stated, found?.get(key)) });
    places.set(stated, { stated, bounds, alone: singles[index]?.map((one) => one?.ratio) ?? [] });
  });
  return {
    places,
    supports: reachOfSupports(subject, trials),
    trials: trials.length,
    failed: trials.filter(({ findings: found }) => found === undefined).length,
  };
}

/**
 * The outcome at a bound on the scale of the stated limit, so that low and high are of one unit also where another
 * component governs there: the ratio times that limit.
 */
function outcomeAt({ limit, unit }: Finding, found: Finding | undefined): Compared {
  if (found === undefined) return { verdict: 'cannot-tell', why: 'demand-missing' };
  const { verdict, ratio, demand } = found;
  const isSame = found.limit === limit && found.unit === unit;
  const scaled = isSame || ratio === undefined || limit === undefined ? demand : ratio * limit;
  return { verdict, ...(ratio !== undefined && { ratio }), ...(scaled !== undefined && { demand: scaled }) };
}

function tryAt(
  subject: Subject,
  things: readonly Unstated[],
  checks: readonly Check[],
  amounts: Amounts,
): Trial {
  const varied = things.filter(({ id }) => (amounts.get(id) ?? 0) > 0).map(({ what }) => what);
  try {
    const installation = atBounds(subject.installation, things, amounts);
    const layout = layoutAtBounds(judgedLayout(subject), installation);
    const solved = analysed({ installation, layout, response: solveFrame(layout.frame) });
    const found = checks.flatMap((check) => runCheck(check, solved));
    const keys = placeKeys(found);
    return {
      amounts,
      varied,
      findings: new Map(found.map((finding, index) => [keys[index] ?? '', finding])),
      loads: supportLoads(solved),
    };
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return { amounts, varied };
  }
}

/** The layout with the conditions that checks of loads at rest judge: nothing of theirs is read with the pump or motor away. */
function judgedLayout({ layout }: Subject): Layout {
  const conditions = layout.frame.conditions.filter(
    ({ role }) => role?.kind !== 'pump-out' && role?.kind !== 'motor-off',
  );
  return { ...layout, frame: { ...layout.frame, conditions } };
}

/** Which place of its check a finding is of, by its order: the words of the place may change with what governs it. */
function placeKeys(findings: readonly Finding[]): readonly string[] {
  const counts = new Map<string, number>();
  return findings.map(({ check }) => {
    const count = (counts.get(check) ?? 0) + 1;
    counts.set(check, count);
    return `${check} ${count}`;
  });
}

/** Of the trials of one thing, the finding whose ratio is farthest from the one as stated. */
function farthest(
  { ratio = 0 }: Finding,
  key: string | undefined,
  trials: readonly Trial[],
): (Finding & { readonly amount: number }) | undefined {
  let best: (Finding & { readonly amount: number }) | undefined;
  for (const { findings, amounts } of trials) {
    const found = findings?.get(key ?? '');
    const [amount = 1] = amounts.values();
    if (found?.ratio === undefined) continue;
    if (best === undefined || Math.abs(found.ratio - ratio) > Math.abs((best.ratio ?? 0) - ratio))
      best = { ...found, amount };
  }
  return best;
}

type Single = ReturnType<typeof farthest>;

/** Corners that may turn a verdict which no thing turns alone, those that come nearest first. */
function cornersOf(
  judged: readonly Finding[],
  singles: readonly (readonly Single[])[],
  things: readonly Unstated[],
): readonly Amounts[] {
  const wanted: { readonly amounts: Amounts; readonly reach: number }[] = [];
  judged.forEach(({ ratio, verdict, comparison }, index) => {
    if (ratio === undefined || comparison || (verdict !== 'meets' && verdict !== 'exceeds')) return;
    const side = verdict === 'meets' ? 1 : -1;
    const own = singles[index] ?? [];
    if (own.some((one) => one !== undefined && one.verdict !== verdict)) return;
    const adverse = own.flatMap((one, thing) => {
      const by = side * ((one?.ratio ?? ratio) - ratio);
      const { id } = things[thing] ?? {};
      return one === undefined || id === undefined || by <= FELT ? [] : [{ id, by, amount: one.amount }];
    });
    if (adverse.length < 2) return;
    const sum = adverse.reduce((total, { by }) => total + by, 0);
    if (side * (1 - ratio) > BEYOND_SUM * sum) return;
    const amounts = new Map(adverse.map(({ id, amount }) => [id, amount]));
    wanted.push({ amounts, reach: sum / Math.max(FELT, side * (1 - ratio)) });
  });
  const seen = new Map<string, Amounts>();
  for (const { amounts } of wanted.sort((a, b) => b.reach - a.reach)) {
    const key = [...amounts].map(([id, amount]) => `${id} ${amount}`).join();
    if (!seen.has(key) && seen.size < MOST_CORNERS) seen.set(key, amounts);
  }
  return [...seen.values()];
}

function supportLoads({ response }: Subject): ReadonlyMap<string, number> {
  return new Map(
    Object.values(response.conditions).flatMap((condition) =>
      Object.keys(condition.supports).map((mark) => {
        const load = supportLoadIn(condition, mark)?.downward ?? Number.NaN;
        return [`${mark}\u0000${condition.name}`, load] as const;
      }),
    ),
  );
}

function reachOfSupports(subject: Subject, trials: readonly Trial[]): readonly SupportReach[] {
  return [...supportLoads(subject)].map(([key, stated]) => {
    const [mark = '', condition = ''] = key.split('\u0000');
    const all = [stated, ...trials.flatMap(({ loads }) => loads?.get(key) ?? [])];
    return { mark, condition, stated, low: Math.min(...all), high: Math.max(...all) };
  });
}
