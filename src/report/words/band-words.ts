/** How sure a number or a verdict is, in words. */
import { isWithinLimit } from '../../judging/compare-with-limit.js';
import type { FindingBand, MissingDatum } from '../../study/bands/bands.js';
import { COVERAGE, type Uncertainty, valueAt } from '../../study/bands/uncertainty.js';
import type { Dimension } from '../../units/index.js';
import type { ReportContext } from '../context.js';
import type { Writer } from '../writer.js';
import { findingSentence } from './finding-row.js';

const dimensions: Readonly<Record<Exclude<Uncertainty['unit'], '-'>, Dimension>> = {
  kg: 'mass',
  'kg/m': 'mass per length',
  'm³': 'volume',
  N: 'force',
  'N/m': 'stiffness',
  m: 'length',
};

/**
 * A value of an uncertainty with its unit.
 *
 * @param uncertainty - the uncertainty
 * @param value - in its unit
 * @param write - writer
 * @returns text; empty where the uncertainty is not one number
 */
export function uncertaintyValue({ unit }: Uncertainty, value: number | undefined, write: Writer): string {
  return value === undefined || unit === '-' ? '' : write.quantity(value, dimensions[unit]);
}

/**
 * How far a value may be off.
 *
 * @param uncertainty - the uncertainty
 * @param write - writer
 * @returns `± 40 %`, `half to twice`, `± 1 in`, or `one or the other`
 */
export function uncertaintyWidth({ moves, half }: Uncertainty, write: Writer): string {
  switch (moves) {
    case 'share':
      return `± ${write.quantity(half, 'ratio')}`;
    case 'shift':
      return `± ${write.quantity(half, 'length')}`;
    case 'factor':
      return half === 1 ? 'half to twice' : `1/${write.plain(1 + half)} to ${write.plain(1 + half)} times`;
    case 'alternative':
      return 'one or the other';
  }
}

/** Between which values it lies, where it is one number. */
export function uncertaintyRange(uncertainty: Uncertainty, write: Writer): string {
  const [low, high] = [valueAt(uncertainty, -1), valueAt(uncertainty, 1)];
  return low === undefined
    ? ''
    : `${uncertaintyValue(uncertainty, low, write)} to ${uncertaintyValue(uncertainty, high, write)}`;
}

/**
 * What may be said of a verdict.
 *
 * @param band - the verdict with its band
 * @param share - by which all weights are taken heavier and lighter [-]
 * @param write - writer
 * @returns `meets over the whole band, also with all weights 15 % heavier (0.57)`
 */
export function bandWords(band: FindingBand, share: number, write: Writer): string {
  const { value, standard, heavier, lighter, statement, turns } = band;
  const by = write.quantity(share, 'ratio');
  const more = heavier === undefined ? '' : `with all weights ${by} heavier (${write.ratio(heavier)})`;
  const less = lighter === undefined ? '' : `with all weights ${by} lighter (${write.ratio(lighter)})`;
  const bounds = turns.map(({ uncertainty, value: at, meets }) => {
    const limit =
      at === undefined
        ? ''
        : ` is ${meets === 'below' ? 'no more' : 'no less'} than ${uncertaintyValue(uncertainty, at, write)}`;
    return `${uncertainty.what}${limit}`;
  });
  const reach = COVERAGE * standard;
  switch (statement) {
    case 'meets throughout':
      return `meets over the whole band${more === '' ? '' : `, also ${more}`}`;
    case 'meets only if':
      if (bounds.length > 0) return `meets only if the ${bounds.join(', or the ')}, all else as taken`;
      if (!isWithinLimit(value + reach))
        return `meets as taken; its band reaches ${write.ratio(value + reach)}`;
      return `meets as taken; not ${isBeyond(heavier) ? more : less}`;
    case 'exceeds throughout':
      return `exceeds over the whole band${less === '' ? '' : `, also ${less}`}`;
    case 'exceeds unless':
      if (bounds.length > 0)
        return `exceeds as taken; would meet if the ${bounds.join(', or the ')}, all else as taken`;
      if (isWithinLimit(value - reach))
        return `exceeds as taken; its band begins at ${write.ratio(value - reach)}`;
      return `exceeds as taken; not ${isBeyond(heavier) ? less : more}`;
  }
}

const isBeyond = (ratio: number | undefined) => ratio !== undefined && !isWithinLimit(ratio);

/**
 * A datum to find out, and what it would do.
 *
 * @param missingDatum - the datum
 * @param context - findings and writer
 * @returns what to get, how it is taken now, and why
 */
export function missingDatumRow(missingDatum: MissingDatum, context: ReportContext) {
  if (missingDatum.kind === 'missing') {
    const finding = context.findings.find(
      ({ check, at }) => check === missingDatum.findings[0]?.check && at === missingDatum.findings[0]?.at,
    );
    const sentence = finding && findingSentence(finding);
    const wanted = sentence?.wanted ?? sentence?.message ?? missingDatum.findings[0]?.title ?? '';
    return {
      what: `${wanted.charAt(0).toUpperCase()}${wanted.slice(1)}`,
      path: '',
      now: 'not known',
      why: `${missingDatum.isLast ? 'the only thing that is waited for: ' : 'waited for by: '}${places(missingDatum.findings)}`,
    };
  }
  const { uncertainty, turns, most } = missingDatum;
  const range = uncertaintyRange(uncertainty, context.write);
  return {
    what: `${uncertainty.what.charAt(0).toUpperCase()}${uncertainty.what.slice(1)}`,
    path: uncertainty.path ?? '',
    now: [uncertainty.obtained, uncertaintyWidth(uncertainty, context.write), range]
      .filter((text) => text !== '')
      .join(', '),
    why:
      turns.length > 0
        ? `turns a verdict: ${places(turns)}`
        : `may use up ${context.write.quantity(most.share, 'ratio', { significant: 2 })} of what is left to the limit: ${places([most])}`,
  };
}

/** Places listed in one line; the rest are counted. */
const LISTED = 3;

function places(list: readonly { readonly title: string; readonly at: string }[]): string {
  const shown = list
    .slice(0, LISTED)
    .map(({ title, at }) => `${title.charAt(0).toLowerCase()}${title.slice(1)}, ${at}`);
  const more = list.length - shown.length;
  return `${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}
