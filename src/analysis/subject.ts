import { type Analysis, analyse } from './analysis.js';
import type { Facts } from './facts.js';

/** Everything a check may look at: what was solved, and what follows from it. */
export interface Subject extends Facts {
  /** Made with `analysed`; one of other facts is never used. */
  readonly analysis?: Analysis;
}

/**
 * What was solved, with its analysis, so that whoever asks for a part of it gets the same.
 *
 * @param facts - installation, layout and response
 * @returns the same with its analysis
 */
export function analysed<Known extends Facts>(facts: Known): Known & { readonly analysis: Analysis } {
  return { ...facts, analysis: analyse(facts) };
}

/**
 * The analysis of a subject.
 *
 * @param subject - what was solved
 * @returns its own; a new one where it has none, or where that was made of another layout or response
 */
export function analysisOf(subject: Subject): Analysis {
  const { analysis } = subject;
  return analysis?.isOf(subject) ? analysis : analyse(subject);
}
