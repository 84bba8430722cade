/** Two revisions side by side as finished text: for the page and for the terminal. */
import type { Comparison } from '../../compare/comparison.js';
import { NOISE } from '../../compare/comparison.js';
import type { View } from '../context.js';
import { createWriter } from '../writer.js';
import { type FindingRows, findingRows } from './finding-rows.js';
import { type InputRow, inputRows } from './input-rows.js';
import { type ValueRow, valueRows } from './value-rows.js';

/** What is said of each revision at the head. */
export interface RevisionHead {
  /** File as given. */
  readonly name: string;
  /** Project, where the file says it: results do not. */
  readonly project?: string;
  readonly revision?: string;
  readonly date?: string;
  /** Fingerprint of the input. */
  readonly fingerprint: string;
}

export interface ComparisonOptions {
  readonly before: RevisionHead;
  readonly after: RevisionHead;
  readonly units: 'us' | 'si';
  readonly version: string;
}

export interface AssumptionRow {
  readonly kind: string;
  readonly path: string;
  readonly before: string;
  readonly after: string;
}

/** Everything that is printed of a comparison. */
export interface ComposedComparison extends FindingRows {
  readonly title: string;
  readonly pump: string;
  readonly before: { readonly [key: string]: string };
  readonly after: { readonly [key: string]: string };
  readonly verdictBefore: string;
  readonly verdictAfter: string;
  readonly verdictChanged: boolean;
  readonly sameInput: boolean;
  readonly inputsKnown: boolean;
  readonly inputs: readonly InputRow[];
  readonly values: readonly ValueRow[];
  readonly assumptions: readonly AssumptionRow[];
  /** True where nothing at all differs. */
  readonly isSame: boolean;
  readonly noise: string;
  readonly version: string;
}

/**
 * Composes a comparison.
 *
 * @param comparison - what differs
 * @param options - heads of both revisions, units, version
 * @returns finished text
 */
export function composeComparison(comparison: Comparison, options: ComparisonOptions): ComposedComparison {
  const write = createWriter(options.units);
  const { pump, verdict, inputs, assumptions } = comparison;
  const findings = findingRows(comparison.findings, write);
  const values = valueRows(comparison.values, write);
  const rows = inputRows(inputs ?? [], write);
  const words = { new: 'new', gone: 'gone', changed: 'changed' } as const;
  return {
    title: `Pump ${pump.after}: what changed`,
    pump: pump.before === pump.after ? pump.after : `${pump.after}, before ${pump.before}`,
    before: headWords(options.before),
    after: headWords(options.after),
    verdictBefore: verdict.before,
    verdictAfter: verdict.after,
    verdictChanged: verdict.before !== verdict.after,
    sameInput: comparison.sameInput,
    inputsKnown: inputs !== undefined,
    inputs: rows,
    ...findings,
    values,
    assumptions: assumptions.map(({ kind, path, before, after }) => ({
      kind: words[kind],
      path,
      before: before ?? '–',
      after: after ?? '–',
    })),
    isSame:
      rows.length + values.length + assumptions.length + comparison.findings.length === 0 &&
      verdict.before === verdict.after,
    noise: `Left out as noise: values that moved by less than ${write.plain(NOISE.ofItself * 100)} % of themselves or ${write.plain(NOISE.ofLargest * 100)} % of the largest of their kind, and ratios by less than ${write.plain(NOISE.ratio)}`,
    version: options.version,
  };
}

function headWords({ name, project, revision, date, fingerprint }: RevisionHead) {
  return {
    name,
    project: project ?? '',
    revision: revision ?? '',
    date: date ?? '',
    fingerprint: fingerprint.slice(0, 12),
  };
}

/** The same as a view for a template, which must be told what is empty. */
export function comparisonView(composed: ComposedComparison): View {
  const { flipped, moved, appeared, gone, inputs, values, assumptions } = composed;
  return {
    ...(composed as unknown as View),
    hasInputs: inputs.length > 0,
    hasFlipped: flipped.length > 0,
    hasMoved: moved.length > 0,
    hasAppeared: appeared.length > 0,
    hasGone: gone.length > 0,
    hasValues: values.length > 0,
    hasAssumptions: assumptions.length > 0,
  };
}
