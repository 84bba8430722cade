/**
 * The one place where a demand meets its limit. A check that could not be made is never a pass, and a missing or
 * impossible number is never a fail.
 */

import type { Subject } from '../analysis/subject.js';
import type { Calculation, Finding, Verdict } from '../judging/finding.js';
import type { Check, ComparedReading, Reading, SurveyedPlace } from './define-check.js';

/** Room for the last binary digits: a hanger set exactly at its limit meets it [-]. */
const ROUNDING = 1e-9;

/** Order of gravity when several readings stand for one place. */
const GRAVITY: Readonly<Record<Verdict, number>> = {
  exceeds: 3,
  'cannot-tell': 2,
  meets: 1,
  'does-not-apply': 0,
};

/** A reading with its outcome. */
interface Judged {
  readonly reading: Reading;
  readonly verdict: Verdict;
  /** Demand over limit [-]; absent where there is none. */
  readonly ratio?: number;
  /** Why it cannot be told. */
  readonly uncertainty?: string;
}

/**
 * Runs one check: one finding per place, the governing reading of each.
 *
 * @param check - the check
 * @param subject - installation, layout and response
 * @returns findings in the order of the places; one `does-not-apply` where the check names no place
 */
export function runCheck(check: Check, subject: Subject): readonly Finding[] {
  const surveyed = check.survey(subject);
  if (surveyed.length === 0) {
    const nothing = { kind: 'does-not-apply', code: check.noPlace } as const;
    return [findingOf(check, { at: 'whole installation', readings: [nothing] })];
  }
  return surveyed.map((place) => findingOf(check, place));
}

function findingOf(check: Check, place: SurveyedPlace): Finding {
  const judged = governing(place.readings.map(judge)) ?? judge(NOTHING_READ);
  const { reading, verdict, ratio } = judged;
  const at = reading.at ?? place.at;
  const demand = usableNumber('demand' in reading ? reading.demand : undefined);
  const limit = usableNumber('limit' in reading ? reading.limit : undefined);
  const code = reasonCode(check, judged);
  const data = {
    at,
    title: check.title,
    ...(reading.condition !== undefined && { condition: reading.condition }),
    ...(reading.label !== undefined && { label: reading.label }),
    ...reading.data,
  };
  return {
    check: check.id,
    title: check.title,
    at,
    unit: reading.unit ?? check.unit,
    verdict,
    comparison: check.comparison || (reading.comparison ?? false),
    basis: reading.basis ?? check.basis[0],
    ...(reading.condition !== undefined && { condition: reading.condition }),
    ...(demand !== undefined && { demand }),
    ...(limit !== undefined && { limit }),
    ...(ratio !== undefined && { ratio }),
    ...(code !== undefined && { reason: { code, data } }),
    ...(isWorkable(reading.calculation) && { calculation: reading.calculation }),
  };
}

/** A calculation with a number missing is not printed. */
function isWorkable(calculation: Calculation | undefined): calculation is Calculation {
  return calculation?.values.every(({ value }) => Number.isFinite(value)) ?? false;
}

const NOTHING_READ: Reading = { kind: 'cannot-tell', code: 'checks.nothing-read' };

/** Compares one reading with its limit. */
function judge(reading: Reading): Judged {
  switch (reading.kind) {
    case 'compared':
      return judgeCompared(reading);
    case 'forbidden':
      if (
        reading.happens === undefined ||
        (reading.demand !== undefined && !Number.isFinite(reading.demand))
      ) {
        return { reading, verdict: 'cannot-tell', uncertainty: 'checks.demand-missing' };
      }
      return { reading, verdict: reading.happens ? 'exceeds' : 'meets' };
    default:
      return { reading, verdict: reading.kind, uncertainty: reading.code };
  }
}

function judgeCompared(reading: ComparedReading): Judged {
  const { demand, limit, least } = reading;
  const uncertainty = (code: string): Judged => ({ reading, verdict: 'cannot-tell', uncertainty: code });
  if (limit === undefined) return uncertainty('checks.limit-missing');
  if (demand === undefined) return uncertainty('checks.demand-missing');
  // Written so that "not a number" fails as well.
  if (!(Number.isFinite(limit) && limit > 0)) return uncertainty('checks.limit-unusable');
  if (!(Number.isFinite(demand) && demand >= 0)) return uncertainty('checks.demand-unusable');
  const ratio = demand / limit;
  if (ratio <= 1 + ROUNDING) return { reading, ratio, verdict: 'meets' };
  const isCertain = least === undefined || (least.demand ?? Number.NaN) / limit > 1 + ROUNDING;
  return isCertain ? { reading, ratio, verdict: 'exceeds' } : uncertainty(least.code);
}

/** The reading that stands for the place: gravest verdict, then largest ratio, ties by condition and label. */
function governing(judged: readonly Judged[]): Judged | undefined {
  const named = [...judged].sort((a, b) => byText(tieName(a.reading), tieName(b.reading)));
  return named.reduce<Judged | undefined>((worst, next) => {
    if (worst === undefined) return next;
    const graver = GRAVITY[next.verdict] - GRAVITY[worst.verdict];
    if (graver !== 0) return graver > 0 ? next : worst;
    return weight(next) > weight(worst) * (1 + ROUNDING) ? next : worst;
  }, undefined);
}

/**
 * What must not happen and does is worse than any ratio. Where it cannot be told, the largest demand is still the one
 * to report.
 */
function weight({ reading, verdict, ratio }: Judged): number {
  if (ratio !== undefined) return ratio;
  if (reading.kind === 'forbidden') {
    return verdict === 'exceeds' ? FORBIDDEN * (1 + Math.max(0, reading.demand ?? 0)) : 0;
  }
  if (reading.kind !== 'compared') return 0;
  const demand = usableNumber(reading.demand) ?? 0;
  const limit = usableNumber(reading.limit) ?? 0;
  return limit > 0 ? demand / limit : demand;
}

/** Above any ratio that a review can hold [-]. */
const FORBIDDEN = 1e9;

function tieName(reading: Reading): string {
  return `${reading.condition ?? ''} ${reading.label ?? ''} ${reading.at ?? ''}`;
}

function reasonCode(check: Check, judged: Judged): string | undefined {
  const { reading, verdict, uncertainty } = judged;
  if (verdict === 'exceeds') return reading.advice ?? check.exceeds;
  if (verdict === 'meets') return reading.remark;
  const missingNumber = uncertainty === 'checks.limit-missing' || uncertainty === 'checks.demand-missing';
  return missingNumber ? (reading.missing ?? uncertainty) : uncertainty;
}

function usableNumber(value: number | undefined): number | undefined {
  return value !== undefined && Number.isFinite(value) ? value : undefined;
}

/**
 * The verdict of a review: the gravest of what was judged. Comparisons never count, and what does not apply is no
 * pass: where nothing at all was judged, it cannot be told.
 *
 * @param findings - all findings
 * @returns exceeds before cannot-tell before meets
 */
export function overallVerdict(findings: readonly Finding[]): Verdict {
  const judged = findings.filter((finding) => !finding.comparison).map((finding) => finding.verdict);
  if (judged.includes('exceeds')) return 'exceeds';
  if (judged.includes('cannot-tell') || !judged.includes('meets')) return 'cannot-tell';
  return 'meets';
}

/**
 * Findings from the gravest to the lightest: verdict, then ratio, then check and place.
 *
 * @param findings - findings in any order
 * @returns the same findings in order; comparisons after everything that counts
 */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  const ratio = (finding: Finding): number =>
    finding.ratio ?? (finding.verdict === 'exceeds' ? Number.MAX_VALUE : 0);
  return [...findings].sort(
    (a, b) =>
      Number(a.comparison) - Number(b.comparison) ||
      GRAVITY[b.verdict] - GRAVITY[a.verdict] ||
      ratio(b) - ratio(a) ||
      byText(`${a.check} ${a.at}`, `${b.check} ${b.at}`),
  );
}

/** Order by code units, the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
