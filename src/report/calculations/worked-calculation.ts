/**
 * Worked calculations: one formula text, read once; the tree is evaluated with the very numbers that are printed,
 * and printed with symbols and with numbers. A reader with a calculator gets the printed result.
 */
import type { Calculation } from '../../judging/finding.js';
import { type Dimension, unitFactor } from '../../units/index.js';
import { parseExpression } from '../../units/mathjs.js';
import type { View } from '../context.js';
import type { Writer } from '../writer.js';

/** How a value is printed and put into a formula. An empty unit is a plain number. */
export interface WorkedUnit {
  readonly dimension: Dimension;
  readonly unit: string;
  readonly label: string;
}

export interface WorkedValue {
  readonly symbol: string;
  /** In SI units. */
  readonly value: number;
  readonly unit: WorkedUnit;
  readonly meaning: string;
}

/** Something to be worked out in the units it is printed in. */
export interface WorkedQuestion {
  readonly id: string;
  readonly title: string;
  readonly symbol: string;
  /** Formula in the units of the values, as the expression reader takes it. */
  readonly formula: string;
  readonly values: readonly WorkedValue[];
  readonly unit: WorkedUnit;
  readonly source: string;
  /** What the result is compared with, in SI units. */
  readonly limit?: number;
}

/** Digits put into a formula, and more where differences of near numbers would spoil the result. */
const FEWEST_DIGITS = 5;
const MOST_DIGITS = 9;

export const PLAIN: WorkedUnit = { dimension: 'ratio', unit: '', label: '' };

/** Units in which formulas hold as they stand: force and length only, so that stress is force over length squared. */
const COHERENT: Readonly<Record<'us' | 'si', Readonly<Record<string, WorkedUnit>>>> = {
  us: {
    Pa: { dimension: 'stress', unit: 'psi', label: 'psi' },
    N: { dimension: 'force', unit: 'lb', label: 'lb' },
    N·m: { dimension: 'moment', unit: 'in.lb', label: 'in·lb' },
    m: { dimension: 'length', unit: 'in', label: 'in' },
    'm²': { dimension: 'area', unit: 'in2', label: 'in²' },
    'm³': { dimension: 'section modulus', unit: 'in3', label: 'in³' },
    'm⁴': { dimension: 'second moment of area', unit: 'in4', label: 'in⁴' },
    'N/m': { dimension: 'stiffness', unit: 'lb/in', label: 'lb/in' },
    Hz: { dimension: 'frequency', unit: 'Hz', label: 'Hz' },
    K: { dimension: 'temperature difference', unit: 'degF', label: '°F' },
    '1/K': { dimension: 'expansion', unit: '1/degF', label: '1/°F' },
  },
  si: {
    Pa: { dimension: 'stress', unit: 'MPa', label: 'MPa' },
    N: { dimension: 'force', unit: 'N', label: 'N' },
    N·m: { dimension: 'moment', unit: 'N.mm', label: 'N·mm' },
    m: { dimension: 'length', unit: 'mm', label: 'mm' },
    'm²': { dimension: 'area', unit: 'mm2', label: 'mm²' },
    'm³': { dimension: 'section modulus', unit: 'mm3', label: 'mm³' },
    'm⁴': { dimension: 'second moment of area', unit: 'mm4', label: 'mm⁴' },
    'N/m': { dimension: 'stiffness', unit: 'N/mm', label: 'N/mm' },
    Hz: { dimension: 'frequency', unit: 'Hz', label: 'Hz' },
    K: { dimension: 'temperature difference', unit: 'K', label: 'K' },
    '1/K': { dimension: 'expansion', unit: '1/K', label: '1/K' },
  },
};

/** Units of the inside, for formulas that hold a factor of their own and so cannot be turned into others. */
const INSIDE: Readonly<Record<string, WorkedUnit>> = {
  Pa: { dimension: 'stress', unit: 'Pa', label: 'Pa' },
  N: { dimension: 'force', unit: 'N', label: 'N' },
  N·m: { dimension: 'moment', unit: 'N.m', label: 'N·m' },
  m: { dimension: 'length', unit: 'm', label: 'm' },
  'm²': { dimension: 'area', unit: 'm2', label: 'm²' },
  'm³': { dimension: 'section modulus', unit: 'm3', label: 'm³' },
  'm⁴': { dimension: 'second moment of area', unit: 'm4', label: 'm⁴' },
  'N/m': { dimension: 'stiffness', unit: 'N/m', label: 'N/m' },
  Hz: { dimension: 'frequency', unit: 'Hz', label: 'Hz' },
  K: { dimension: 'temperature difference', unit: 'K', label: 'K' },
  '1/K': { dimension: 'expansion', unit: '1/K', label: '1/K' },
  kg: { dimension: 'mass', unit: 'kg', label: 'kg' },
  'kg/m': { dimension: 'mass per length', unit: 'kg/m', label: 'kg/m' },
  'kg/m³': { dimension: 'density', unit: 'kg/m3', label: 'kg/m³' },
};

/**
 * Works one question out and prints it.
 *
 * @param question - formula, values in SI, printed units
 * @param write - writer of the review
 * @returns formula, numbers, result and the list of symbols, as text
 */
export function workedCalculation(question: WorkedQuestion, write: Writer) {
  const expression = parseExpression(question.formula);
  const exact = scopeOf(question.values, (value) => value);
  const wanted = expression.evaluate(exact);
  let digits = FEWEST_DIGITS;
  let printed = exact;
  let result = wanted;
  for (; digits <= MOST_DIGITS; digits += 1) {
    printed = scopeOf(question.values, (value) => Number(bare(value, digits, write)));
    result = expression.evaluate(printed);
    if (write.plain(result, FEWEST_DIGITS) === write.plain(wanted, FEWEST_DIGITS)) break;
  }
  const used = Math.min(digits, MOST_DIGITS);
  return {
    id: question.id,
    title: question.title,
    formula: raised(`${question.symbol} = ${expression.withSymbols()}`),
    numbers: raised(
      `${question.symbol} = ${expression.withNumbers(printed, (value) => bare(value, used, write).replace('-', '\u2212'))}`,
    ),
    result: `${question.symbol} = ${labelled(write.plain(result, FEWEST_DIGITS), question.unit)}`,
    where: question.values.map((value) => ({
      symbol: value.symbol,
      value: labelled(write.plain(printed[value.symbol], used), value.unit),
      meaning: value.meaning,
    })),
    limit: limitText(question, write),
    hasLimit: question.limit !== undefined,
    source: question.source,
  } satisfies View;
}

/**
 * Turns the calculation of a finding into a question in the units of the review. A formula that does not give the
 * same answer in them holds a factor of its own: it stays in SI units.
 *
 * @param calculation - formula and values in SI
 * @param about - id, title and source to print
 * @param write - writer of the review
 * @returns question to work out
 */
export function questionOfFinding(
  calculation: Calculation,
  about: Pick<WorkedQuestion, 'id' | 'title' | 'source' | 'limit'>,
  write: Writer,
): WorkedQuestion {
  const inUnits = (units: Readonly<Record<string, WorkedUnit>>): WorkedQuestion => ({
    ...about,
    symbol: calculation.symbol,
    formula: calculation.formula,
    values: calculation.values.map((value) => ({ ...value, unit: units[value.unit] ?? PLAIN })),
    unit: units[calculation.unit] ?? PLAIN,
  });
  const coherent = inUnits(COHERENT[write.system]);
  const known = calculation.values.every((value) => value.unit === '-' || value.unit in COHERENT.us);
  return known && holdsIn(coherent) ? coherent : inUnits(INSIDE);
}

function limitText({ limit, unit }: WorkedQuestion, write: Writer): string {
  return limit === undefined ? '' : labelled(write.plain(limit / factorOf(unit), FEWEST_DIGITS), unit);
}

function holdsIn(question: WorkedQuestion): boolean {
  const expression = parseExpression(question.formula);
  const inside = expression.evaluate(
    Object.fromEntries(question.values.map((value) => [value.symbol, value.value])),
  );
  const printed = expression.evaluate(scopeOf(question.values, (value) => value)) * factorOf(question.unit);
  return Math.abs(printed - inside) <= 1e-9 * Math.max(Math.abs(inside), Number.MIN_VALUE);
}

function scopeOf(
  values: readonly WorkedValue[],
  turn: (value: number) => number,
): Readonly<Record<string, number>> {
  return Object.fromEntries(values.map((value) => [value.symbol, turn(value.value / factorOf(value.unit))]));
}

function factorOf(unit: WorkedUnit): number {
  return unit.unit === '' ? 1 : (unitFactor(unit.unit, unit.dimension) ?? 1);
}

/** Number as put into a formula: no thousands separators, an ordinary minus sign, no powers of ten. */
function bare(value: number, digits: number, write: Writer): string {
  const text = write
    .plain(value, digits)
    .replace(/[,\u202f]/gu, '')
    .replace('\u2212', '-');
  return text.includes('×') ? String(value) : text;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Whole powers as raised digits: `d^2` as `d²`. */
function raised(text: string): string {
  return text.replace(/\^(\d+)(?![\d.])/gu, (_all, digits: string) =>
    digits.replace(/\d/gu, (digit) => RAISED.charAt(Number(digit))),
  );
}

function labelled(number: string, unit: WorkedUnit): string {
  return unit.label === '' ? number : `${number} ${unit.label}`;
}
