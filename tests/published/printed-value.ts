import { recordComparison } from '../tooling/record-comparison.js';

/** A number exactly as a publication prints it. The tolerance is half a unit of its last printed digit. */
export interface PrintedValue {
  /** The digits as printed: '95,600'. */
  readonly text: string;
  /** Worth of the last significant digit: 100 where the zeros after 956 are not significant. */
  readonly lastDigit: number;
  /** SI units in one printed unit. */
  readonly toSi: number;
}

/** Whether a value rounds to what is printed. */
export function withinPrintedRounding(actualSi: number, printed: PrintedValue): boolean {
  const value = Number(printed.text.replaceAll(',', '').replaceAll(' ', ''));
  // A hair of room for the binary form of decimal halves.
  const ours = actualSi / printed.toSi;
  const within = Math.abs(ours - value) <= (printed.lastDigit / 2) * (1 + 1e-9);
  recordComparison({ printed: printed.text, lastDigit: printed.lastDigit, ours, within });
  return within;
}

/** Difference from a reference value as a share of it. */
export function relativeError(actual: number, reference: number): number {
  return Math.abs(actual - reference) / Math.abs(reference);
}
