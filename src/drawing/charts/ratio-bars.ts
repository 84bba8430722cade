/** Bars of demand over limit, worst first, with the limit as a line. Told apart by filling and words, not colour. */

import type { UnitSystem } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import { type Dimension, formatNumber, formatQuantity } from '../../units/index.js';
import type { Drawing, Shape, Xy } from '../drawing.js';
import { line } from '../isometric/tube.js';
import { fitText, textWidth } from '../labels/text-width.js';

export interface RatioBarsRequest {
  readonly findings: readonly Finding[];
  readonly units: UnitSystem;
  /** [1/72 in] */
  readonly width: number;
}

const MOST_BARS = 15;
/** Beyond this ratio a bar is cut. */
const LONGEST_RATIO = 2.5;
const SIZE = 7.5;
const ROW = 15;
const BAR = 8.5;
const HEAD = 18;
const FOOT = 20;
const EDGE = 3;

/** What a number measures, for printing; pressures of flanges and pipe are no stresses. */
function dimensionOf(finding: Finding): Dimension {
  const byUnit: Readonly<Record<Finding['unit'], Dimension>> = {
    Pa: /pressure|flange/.test(finding.check) ? 'pressure' : 'stress',
    N: 'force',
    N·m: 'moment',
    m: 'length',
    'm/s': 'velocity',
    W: 'power',
    rad: 'angle',
    K: 'temperature',
    Hz: 'frequency',
    '-': 'ratio',
  };
  return byUnit[finding.unit];
}

/** Worst first: ratios falling, then what exceeds without a ratio, then what cannot be told; comparisons after judgements. */
function worstRows(findings: readonly Finding[]): readonly Finding[] {
  const group = (f: Finding): number =>
    f.verdict === 'exceeds' && f.ratio === undefined
      ? 0
      : f.verdict === 'cannot-tell' || f.ratio === undefined
        ? 2
        : 1;
  const rank = (f: Finding): string => `${f.check} ${f.at} ${f.condition ?? ''}`;
  return findings
    .filter((f) => f.verdict !== 'does-not-apply' && (f.verdict !== 'meets' || f.ratio !== undefined))
    .sort(
      (a, b) =>
        group(a) - group(b) ||
        Number(a.comparison) - Number(b.comparison) ||
        (b.ratio ?? 0) - (a.ratio ?? 0) ||
        (rank(a) < rank(b) ? -1 : 1),
    );
}

/** The worst bars, with room kept for what cannot be told. */
function chosenRows(findings: readonly Finding[]): {
  readonly rows: readonly Finding[];
  readonly left: number;
} {
  const all = worstRows(findings);
  const told = all.filter((f) => f.verdict !== 'cannot-tell');
  const untold = all.filter((f) => f.verdict === 'cannot-tell');
  const keep = Math.min(untold.length, Math.max(4, MOST_BARS - told.length));
  const rows = [...told.slice(0, MOST_BARS - keep), ...untold.slice(0, keep)];
  return { rows, left: all.length - rows.length };
}

/** Words before a bar. */
function nameOf(finding: Finding): string {
  const condition = finding.condition === undefined ? '' : `, ${conditionTitle(finding.condition)}`;
  return `${finding.at}: ${finding.title}${condition}${finding.comparison ? ' (comparison)' : ''}`;
}

/** Words behind a bar. */
function resultOf(finding: Finding, units: UnitSystem): string {
  const print = (value: number) => formatQuantity(value, dimensionOf(finding), units);
  if (finding.verdict === 'cannot-tell')
    return finding.demand === undefined ? 'cannot tell' : `cannot tell (${print(finding.demand)})`;
  if (finding.ratio === undefined) return finding.verdict;
  const ratio = formatNumber(finding.ratio / 100, 'ratio', units, { decimals: 2 });
  return finding.verdict === 'exceeds' ? `${ratio} exceeds` : ratio;
}

/**
 * Horizontal bars of ratio, one per finding.
 *
 * @param request - findings, units and width [1/72 in]
 * @returns drawing named `ratios`, as high as its rows need
 */
export function ratioBars(request: RatioBarsRequest): Drawing {
  const { units, width } = request;
  const { rows, left } = chosenRows(request.findings);
  const nameRoom = Math.min(width * 0.54, Math.max(60, ...rows.map((f) => textWidth(nameOf(f), SIZE)))) + 4;
  const resultRoom = Math.max(34, ...rows.map((f) => textWidth(resultOf(f, units), SIZE, 'bold'))) + 6;
  const start = EDGE + nameRoom + 4;
  const top = Math.min(
    LONGEST_RATIO,
    Math.max(1.15, ...rows.map((f) => (Number.isFinite(f.ratio) ? (f.ratio ?? 0) : LONGEST_RATIO))),
  );
  const unit = Math.max(20, width - EDGE - resultRoom - start) / top;
  const height = HEAD + Math.max(1, rows.length) * ROW + FOOT;
  const limit = start + unit;
  const bars = rows.flatMap((finding, i) =>
    barShapes(finding, { y: HEAD + i * ROW + ROW / 2, start, unit, top, units, nameRoom }),
  );
  const none: readonly Shape[] =
    rows.length > 0 ? [] : [text([EDGE, HEAD + 10], 'Nothing was compared with a limit', 'start')];
  const axis = [
    line(
      [
        [start, HEAD - 4],
        [start, height - FOOT + 2],
      ],
      'medium',
    ),
    line(
      [
        [limit, HEAD - 4],
        [limit, height - FOOT + 2],
      ],
      'heavy',
    ),
    text([limit, HEAD - 7], 'limit = 1.00', 'middle', 'bold'),
    text([start, HEAD - 7], '0', 'middle'),
  ];
  const note = `Demand over limit. Hatched: exceeds. Dashed: cannot tell, no limit or no demand known.${left > 0 ? ` ${left} more in the tables.` : ''}`;
  const foot: Shape = {
    kind: 'text',
    at: [EDGE, height - 6],
    text: fitText(note, width - 2 * EDGE, 7.2),
    size: 7.2,
    anchor: 'start',
    weight: 'regular',
    ink: 'black',
  };
  const alt = `Bars of demand over limit, worst first. ${rows.map((f) => `${nameOf(f)}: ${resultOf(f, units)}`).join('; ')}.${left > 0 ? ` ${left} more in the tables.` : ''}`;
  return {
    name: 'ratios',
    width,
    height,
    title: 'Demand over limit',
    alt,
    shapes: [...bars, ...axis, ...none, foot],
  };
}

interface BarPlace {
  readonly y: number;
  readonly start: number;
  /** Length of ratio 1 [1/72 in]. */
  readonly unit: number;
  /** Largest ratio drawn. */
  readonly top: number;
  readonly units: UnitSystem;
  readonly nameRoom: number;
}

function text(
  at: Xy,
  words: string,
  anchor: 'start' | 'middle' | 'end',
  weight: 'regular' | 'bold' = 'regular',
  ink: 'black' | 'accent' = 'black',
): Shape {
  return { kind: 'text', at, text: words, size: SIZE, anchor, weight, ink };
}

function barShapes(finding: Finding, place: BarPlace): readonly Shape[] {
  const { y, start, unit, top, units, nameRoom } = place;
  const exceeds = finding.verdict === 'exceeds';
  const ink = exceeds ? 'accent' : 'black';
  const base = y + SIZE * 0.33;
  const name = text([start - 5, base], fitText(nameOf(finding), nameRoom, SIZE), 'end');
  const ratio =
    finding.verdict === 'cannot-tell'
      ? 1
      : Number.isFinite(finding.ratio)
        ? Math.max(0, finding.ratio ?? 0)
        : top;
  const end = start + Math.min(ratio, top) * unit;
  const corners: readonly Xy[] = [
    [start, y - BAR / 2],
    [end, y - BAR / 2],
    [end, y + BAR / 2],
    [start, y + BAR / 2],
  ];
  // Words never straddle the limit's line.
  const wide = textWidth(resultOf(finding, units), SIZE) + 8;
  const behind = end < start + unit && end + wide > start + unit ? start + unit : end;
  const result = text(
    [behind + 5, base],
    resultOf(finding, units),
    'start',
    exceeds ? 'bold' : 'regular',
    ink,
  );
  if (finding.verdict === 'cannot-tell') return [name, line(corners, 'dashed', 'none', true), result];
  const fill = exceeds ? 'hatch' : finding.comparison ? 'white' : 'mid';
  const cut = ratio > top ? cutMark([end - 9, y]) : [];
  return [name, line(corners, exceeds ? 'medium' : 'fine', fill, true, ink), ...cut, result];
}

/** A bar that goes on further than the paper. */
function cutMark(at: Xy): readonly Shape[] {
  const stroke = (shift: number): readonly Xy[] => [
    [at[0] + shift - 1.5, at[1] + BAR / 2 + 1.5],
    [at[0] + shift + 1.5, at[1] - BAR / 2 - 1.5],
  ];
  const [one, two] = [stroke(-1.6), stroke(1.6)];
  return [line([...one, two[1] as Xy, two[0] as Xy], 'none', 'white'), line(one, 'fine'), line(two, 'fine')];
}
