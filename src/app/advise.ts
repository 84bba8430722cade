/** Advice on the text of a file: the search of `study`, with the review as the judge of what it finds. */
import { type OpenedFile, openForTrials } from '../input/open-for-trials.js';
import { readInstallation } from '../input/read-installation.js';
import { EngineError, IssuesError } from '../issues/issue.js';
import {
  type Advice,
  type AdviseOptions,
  type AdviseTools,
  adviseWith,
  type ReviewedText,
} from '../study/advise/advise.js';
import type { Edit } from '../study/advise/edit.js';
import { type ScreenOutcome, type ScreenPlan, screen } from '../study/advise/screen.js';
import { type Review, review } from './review.js';

export type {
  Advice,
  AdviseOptions,
  AdviseTools,
  Alternative,
  ReviewedText,
  Unsolved,
} from '../study/advise/advise.js';
export type { Change, ChangeKind } from '../study/advise/change.js';
export { changeKinds, usualEffort } from '../study/advise/change.js';
export type { FindingPair } from '../study/advise/compare-findings.js';
export type { Edit } from '../study/advise/edit.js';
export type { ScreenOutcome, ScreenPlan } from '../study/advise/screen.js';

/** Trials to be made of one file. */
export interface TrialsOfFile {
  readonly text: string;
  readonly plan: ScreenPlan;
  readonly chains: readonly (readonly Edit[])[];
}

/** A file with its review, and what advice was found. */
export interface AdvisedFile {
  readonly review: Review;
  readonly advice: Advice;
}

/**
 * The smallest changes of supports and legs that make an installation meet its limits.
 *
 * @param text - the file
 * @param options - how far to search and what must stay; `tools` run trials elsewhere, and here where left out
 * @returns the review of the file as it is, and the advice
 * @throws IssuesError where the text cannot be read; EngineError where it cannot be worked out
 */
export async function advise(
  text: string,
  options: AdviseOptions & { readonly tools?: Partial<AdviseTools> } = {},
): Promise<AdvisedFile> {
  const reading = readInstallation(text);
  if (!reading.ok) throw new IssuesError(reading.issues);
  const reviewed = review(reading.installation);
  const look = trialsInPlace();
  const tools: AdviseTools = {
    screenMany: async (plan, chains) => look({ text, plan, chains }),
    reviewMany: async (texts) => texts.map(findingsOfText),
    ...options.tools,
  };
  return { review: reviewed, advice: await adviseWith(text, reviewed, tools, options) };
}

/**
 * Makes trials in this thread; the file of the last ones is held open.
 *
 * @returns function that looks at trials, in the order asked; undefined for one that cannot be worked out
 */
export function trialsInPlace(): (trials: TrialsOfFile) => readonly (ScreenOutcome | undefined)[] {
  let open: { readonly text: string; readonly opened: OpenedFile } | undefined;
  return ({ text, plan, chains }) => {
    if (open?.text !== text) {
      const opening = openForTrials(text);
      if (!opening.ok) throw new IssuesError(opening.issues);
      open = { text, opened: opening.opened };
    }
    const { opened } = open;
    return chains.map((chain) => screen(opened, plan, chain));
  };
}

/**
 * The findings of a whole file.
 *
 * @param text - the file
 * @returns findings and verdict; undefined where it cannot be read or worked out
 */
export function findingsOfText(text: string): ReviewedText | undefined {
  const reading = readInstallation(text);
  if (!reading.ok) return undefined;
  try {
    const { findings, verdict } = review(reading.installation);
    return { findings, verdict };
  } catch (error) {
    if (error instanceof EngineError) return undefined;
    throw error;
  }
}
