/**
 * Numbers the assumptions, those first that bear on a verdict which is nearest its limit or beyond it. What an
 * assumption bears on follows from what it is about (a weight, a temperature, a rating), not from a trial run.
 */

import type { Assumption } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';

export interface RankedAssumption {
  readonly assumption: Assumption;
  /** `A1`, `A2` …, printed beside every value that rests on it. */
  readonly mark: string;
  /** Titles of the checks it bears on,, those nearest their limit first. */
  readonly bearsOn: readonly string[];
  /** Largest ratio among the judged findings it bears on; undefined where none has one [-]. */
  readonly nearest?: number;
}

/** Checks an assumption bears on, by what its path speaks of. The first row that fits decides; anything else shapes the line. */
const BEARING: readonly (readonly [RegExp, RegExp])[] = [
  [
    /motor\.(start|locked-rotor|breakdown|inertia)|rotor-inertia|limits\.damping/,
    /^(start-movement|nozzle-loads)/,
  ],
  [
    /outline\.motor-(top|diameter)/,
    /^(frequency-margin|start-movement|motor-withdrawal|coupling-space|lift-anchor|sling-legs)/,
  ],
  [/limits\.rods/, /^rod-load/],
  [/limits\.first-support\.bend/, /^first-support-bend/],
  [/limits\.first-support/, /^first-support/],
  [/(hanger|spring)\.rods$/, /^rod-load/],
  [/limits\.span/, /^support-span/],
  [/limits\.pipe-stress\.cycles/, /^displacement/],
  [/limits\.pipe-stress/, /^(sustained|displacement)/],
  [/limits\.nozzle/, /^nozzle/],
  [/\bface\b/, /^(raised-face|flange-equivalent)/],
  [
    /outline|withdrawal|motor-top|diameter$|dimensions|room\./,
    /^(motor-withdrawal|coupling-space|wrench-room|working-space|way-out|lift-anchor|sling-legs|casing-lift-out)/,
  ],
  [/temperature/, /^(displacement|nozzle|flange|support|rod|attachment)/],
  [/pressure/, /^(sustained|flange)/],
  [/class\b|bolt|gasket/, /^flange/],
  [
    /weight|insulation|contents|centre-of-gravity|density|fluid|jacket/,
    /^(nozzle|sustained|rod|attachment|support|flange-equivalent)/,
  ],
  [/./, /^(nozzle|sustained|displacement|rod|attachment|support|flange-equivalent)/],
];

/**
 * Ranks and numbers assumptions.
 *
 * @param assumptions - as recorded while reading
 * @param findings - all findings
 * @returns ranked assumptions, `A1` first
 */
export function rankAssumptions(
  assumptions: readonly Assumption[],
  findings: readonly Finding[],
): readonly RankedAssumption[] {
  const judged = findings.filter((finding) => !finding.comparison && finding.verdict !== 'does-not-apply');
  const weighed = assumptions.map((assumption, order) => {
    const checks = BEARING.find(([path]) => path.test(assumption.path))?.[1];
    const touched = judged
      .filter((finding) => checks?.test(finding.check))
      .sort((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0));
    const ratios = touched.flatMap((finding) => (finding.ratio === undefined ? [] : [finding.ratio]));
    return {
      assumption,
      order,
      bearsOn: [...new Set(touched.map((finding) => finding.title))],
      ...(ratios.length > 0 ? { nearest: Math.max(...ratios) } : {}),
    };
  });
  const rank = (one: { readonly bearsOn: readonly string[]; readonly nearest?: number }): number =>
    one.nearest ?? (one.bearsOn.length > 0 ? 0 : -1);
  return weighed
    .sort((a, b) => rank(b) - rank(a) || a.order - b.order)
    .map(({ order: _order, ...rest }, index) => ({ ...rest, mark: `A${index + 1}` }));
}
