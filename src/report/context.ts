/**
 * What every section of a review is written from: the results, the reader, and the writer that turns SI numbers
 * into printed text. Sections are pure functions from this to a view of strings, booleans and lists.
 */

import type { Subject } from '../analysis/subject.js';
import type { Finding } from '../judging/finding.js';
import type { Verdict } from '../judging/verdict.js';
import type { Bands } from '../study/bands/bands.js';
import type { Bounds } from '../study/bounds/bounds.js';
import type { RankedAssumption } from './rows/rank-assumptions.js';
import type { Writer } from './writer.js';

/** Who reads the review: decides which sections it has, and how much each of them says. */
export type Reader = 'contractor' | 'engineer' | 'commissioning';

export interface ReportContext {
  readonly subject: Subject;
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
  /** What nobody stated, where it was tried. */
  readonly bounds?: Bounds;
  /** How sure the numbers are, where that was worked out. */
  readonly bands?: Bands;
  readonly reader: Reader;
  /** Ids of the sections this reader gets: a link to another section would lead nowhere. */
  readonly printed: ReadonlySet<string>;
  /** Version of the program, printed on page one. */
  readonly version: string;
  readonly write: Writer;
  /** Cautions of the firm, printed behind those of every review. */
  readonly furtherCautions?: readonly string[];
  /** Assumptions in the order of what they bear on; their number is their place, counted from 1. */
  readonly assumptions: readonly RankedAssumption[];
}

/** A view holds finished text: a template prints it and computes nothing. */
export type ViewValue = string | boolean | readonly ViewValue[] | { readonly [key: string]: ViewValue };

/** View of one section. One with `omitted: true` is not printed and takes no number. */
export type View = { readonly [key: string]: ViewValue };
