/** Units and answers as they are written on site, brought to those the sheet prints. */
import type { Dimension } from '../units/index.js';

/** A unit of the trade: the unit it stands for, and how many of that. */
export interface TradeUnit {
  readonly unit: string;
  readonly times: number;
}

const one = (unit: string): TradeUnit => ({ unit, times: 1 });
const THOUSANDTH: TradeUnit = { unit: 'in', times: 1e-3 };

/** By dimension, in small letters, without blanks at the ends. */
const UNITS: Partial<Record<Dimension, Readonly<Record<string, TradeUnit>>>> = {
  voltage: {
    vac: one('V'),
    'v ac': one('V'),
    'v.a.c.': one('V'),
    volt: one('V'),
    volts: one('V'),
    'volts ac': one('V'),
    'v rms': one('V'),
  },
  current: {
    amp: one('A'),
    amps: one('A'),
    ampere: one('A'),
    amperes: one('A'),
    'a ac': one('A'),
    aac: one('A'),
  },
  length: {
    mil: THOUSANDTH,
    mils: THOUSANDTH,
    thou: THOUSANDTH,
    thous: THOUSANDTH,
    thousandths: THOUSANDTH,
  },
  velocity: {
    ips: one('in/s'),
    'in/sec': one('in/s'),
    'in./sec': one('in/s'),
    'in/s rms': one('in/s'),
    'in/sec rms': one('in/s'),
    'ips rms': one('in/s'),
    'inch/s': one('in/s'),
    'inches/s': one('in/s'),
    'mm/sec': one('mm/s'),
    'mm/s rms': one('mm/s'),
    'mm/sec rms': one('mm/s'),
  },
  pressure: {
    psig: one('psi'),
    'psi g': one('psi'),
    // A millimetre of mercury is 133.322 Pa, an inch 25.4 of them.
    inhg: { unit: 'Pa', times: 3386.389 },
    'in hg': { unit: 'Pa', times: 3386.389 },
    'in. hg': { unit: 'Pa', times: 3386.389 },
    '"hg': { unit: 'Pa', times: 3386.389 },
  },
  temperature: { f: one('degF'), c: one('degC'), 'deg f': one('degF'), 'deg c': one('degC') },
  frequency: { hz: one('Hz'), cycles: one('Hz'), cps: one('Hz') },
  speed: { 'r/min': one('rpm'), 'rev/min': one('rpm'), revs: one('rpm') },
};

/** Peak and peak to peak are other numbers than r.m.s., and are not turned into it: the shape of the motion is not known. */
const NOT_RMS = /\b(?:pk|peak|p-?p|pk-?pk)\b/iu;

/**
 * A unit as the trade writes it.
 *
 * @param written - behind the number
 * @param dimension - of the box
 * @returns the unit it stands for; nothing where it is none of the trade
 */
export function tradeUnit(written: string, dimension: Dimension): TradeUnit | undefined {
  return UNITS[dimension]?.[written.trim().toLowerCase().replace(/\s+/gu, ' ')];
}

/** Whether a velocity is told as peak instead of r.m.s. */
export function isPeak(written: string): boolean {
  return NOT_RMS.test(written);
}

/** Words behind a count that say what was counted. */
const COUNTED =
  /^(?:drops?|drips?|dpm)?(?: ?(?:\/|per|a) ?min(?:ute)?s?)?$|^(?:m(?:eg)?(?:\.|-)? ?ohms?|mω|meg(?:s|ohms?)?)$/iu;

/** Whether the words behind a bare count only say what was counted: `drops/min`, `Mohm`. */
export function saysWhatIsCounted(words: string): boolean {
  const plain = words.trim();
  return plain !== '' && COUNTED.test(plain.replace('Ω', 'ω'));
}

/** Boxes in which "none" is the reading nought. */
const NONE_IS_NOUGHT = /\.(?:leakage|gap|lean|holes|motor-top|pipe|slackened|hook-off)$/u;

/** Whether words in a box for a number say nought: `none` for drops of leakage. */
export function saysNought(text: string, id: string): boolean {
  return (
    NONE_IS_NOUGHT.test(id) && /^(?:none|nil|zero|no leak(?:age|s)?|no movement|no gap)$/iu.test(text.trim())
  );
}

const YES = ['y', 'true', 'x', '✓', '✔', 'ok', 'okay', 'o.k.', 'pass', 'passed', 'good', 'done'];
const NO = ['n', 'false', 'fail', 'failed', 'fails', 'not ok', 'nok', 'bad', 'not done', 'not yet'];
/** Other answers by the choice they stand for. */
const MEANT: Readonly<Record<string, string>> = {
  none: 'none out of the way',
  quiet: 'quietly',
  slam: 'with a slam',
  slams: 'with a slam',
  cw: 'clockwise from above',
  clockwise: 'clockwise from above',
  ccw: 'counter-clockwise from above',
  'counter-clockwise': 'counter-clockwise from above',
  counterclockwise: 'counter-clockwise from above',
  anticlockwise: 'counter-clockwise from above',
  cold: 'filled, cold',
  'filled cold': 'filled, cold',
  empty: 'dry',
};

/**
 * The choice that an answer of the trade stands for.
 *
 * @param text - as written
 * @param choices - of the box
 * @returns the choice; nothing where it stands for none of them, or is told with words that may take it back
 */
export function tradeChoice(text: string, choices: readonly string[]): string | undefined {
  const plain = text.trim().toLowerCase().replace(/[.!]$/u, '').replace(/\s+/gu, ' ');
  const exact = choices.find((choice) => choice.toLowerCase() === plain);
  if (exact !== undefined) return exact;
  const meant = YES.includes(plain) ? 'yes' : NO.includes(plain) ? 'no' : MEANT[plain];
  return choices.find((choice) => choice === meant);
}
