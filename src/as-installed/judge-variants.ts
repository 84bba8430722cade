/** Judges every way in which sheets that disagree may be settled, and keeps the worse of each place. */

import { type AsFound, asFound } from '../as-found/as-found.js';
import { foundFindings } from '../as-found/found-findings.js';
import type { Finding } from '../judging/finding.js';
import { graverBy } from '../judging/verdict.js';
import type { ReadingsById } from '../readings/reading.js';
import type { FieldContext } from '../sheet/field-context.js';
import { GRAVEST_FIRST } from './decisions/requirement.js';
import type { FieldSubject, Judge } from './judge.js';
import { judgeReadings } from './judge-readings.js';
import type { Judgement } from './judgement.js';

/** What all ways have in common, but for readings and line. */
export type Common = Omit<FieldSubject, 'readings' | 'asFound'>;

/** The worst of all ways. */
export interface JudgedVariants {
  readonly judgements: readonly Judgement[];
  readonly findings: readonly Finding[];
  /** The line as found in the way whose checks come out worst. */
  readonly asFound: AsFound;
}

/**
 * Judges all ways.
 *
 * @param judges - the registry
 * @param common - the unit and its sheets
 * @param variants - ways in which sheets may be settled, one at least
 * @returns for each place the judgement that keeps most from happening
 */
export function judgeVariants(
  judges: readonly Judge[],
  common: Common,
  variants: readonly ReadingsById[],
): JudgedVariants {
  const solved = new Map<string, AsFound>();
  const each = variants.map((readings) => {
    const key = supportKey(readings);
    const found = solved.get(key) ?? asFound(common as FieldContext, readings);
    solved.set(key, found);
    return {
      judgements: judgeReadings(judges, { ...common, readings, asFound: found }),
      findings: foundFindings(found),
      found,
    };
  });
  const worst = [...each].sort((a, b) => weightOf(b) - weightOf(a))[0];
  if (worst === undefined) throw new RangeError('no set of readings');
  return {
    judgements: worstOf(
      each.map(({ judgements }) => judgements),
      ({ judge, at, title }) => `${judge}|${at}|${title}`,
      (a, b) => gravity(b) - gravity(a) || graverBy(a.verdict, b.verdict) || (a.ratio ?? 0) - (b.ratio ?? 0),
    ),
    findings: worstOf(
      each.map(({ findings }) => findings),
      ({ check, at, condition = '', title }) => `${check}|${at}|${condition}|${title}`,
      (a, b) => graverBy(a.verdict, b.verdict) || (a.ratio ?? 0) - (b.ratio ?? 0),
    ),
    asFound: worst.found,
  };
}

const gravity = ({ bars }: Judgement): number => GRAVEST_FIRST.indexOf(bars);

/** A line that cannot be worked out before one that exceeds, before one that differs, before one as drawn. */
function weightOf({ found, findings }: { readonly found: AsFound; readonly findings: readonly Finding[] }) {
  if (found.kind === 'fails') return 1e6;
  const exceeding = findings.filter(({ verdict }) => verdict === 'exceeds').length;
  return found.kind === 'solved' ? 1 + exceeding : 0;
}

/** Readings that the line as found follows from, as text. */
function supportKey(readings: ReadingsById): string {
  const own = [...readings].filter(([id]) => id.startsWith('supports.'));
  return JSON.stringify(own.map(([id, reading]) => [id, reading.kind, reading.text, { ...reading }]));
}

/** For each place the worst of what came of it, in the order of the first. */
function worstOf<One>(
  all: readonly (readonly One[])[],
  key: (one: One) => string,
  worse: (a: One, b: One) => number,
): readonly One[] {
  const kept = new Map<string, One>();
  for (const one of all.flat()) {
    const known = kept.get(key(one));
    if (known === undefined || worse(one, known) > 0) kept.set(key(one), one);
  }
  return [...kept.values()];
}
