/** Keeps what a published check compared, for the validation table. */
import { TestRunner } from 'vitest';

/** One printed value and ours, in the unit of the publication. */
export interface Comparison {
  readonly printed: string;
  readonly lastDigit: number;
  readonly ours: number;
  readonly within: boolean;
}

declare module '@vitest/runner' {
  interface TaskMeta {
    comparisons?: Comparison[];
  }
}

/** Notes a comparison with the test that makes it; outside a test nothing is noted. */
export function recordComparison(comparison: Comparison): void {
  const meta = TestRunner.getCurrentTest()?.meta;
  if (meta !== undefined) meta.comparisons = [...(meta.comparisons ?? []), comparison];
}
