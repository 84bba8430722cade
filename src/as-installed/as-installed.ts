/**
 * The as-installed review as a list of steps:
 *
 *     answers ─ understand ────▶ readings, sheet by sheet
 *             ─ mergeVisits ───▶ one set of readings, and every way in which sheets that disagree may be settled
 *             ─ judgeVariants ─▶ the line solved again as found, and the worst judgement of each place
 *             ─ openItems ─────▶ what is open, and what it keeps from happening
 *             ─ decide ────────▶ may it be started; may it run and be accepted
 */

import { coded, type Issue, IssuesError, issueOf } from '../issues/issue.js';
import type { Finding } from '../judging/finding.js';
import { overallVerdict, type Verdict } from '../judging/verdict.js';
import type { Answers } from '../readings/answers.js';
import { DATE_BOX, mergeVisits } from '../readings/merge-visits.js';
import { dateIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import { type SheetTaken, sheetTaken } from '../readings/sheet-taken.js';
import { type SiteItem, siteItems } from '../readings/site-items.js';
import { understand } from '../readings/understand.js';
import type { ReviewSubject } from '../report/compose-review.js';
import { buildSheet } from '../sheet/build-sheet.js';
import { fieldContext } from '../sheet/field-context.js';
import { boxesOf, type FieldSheet } from '../sheet/sheet.js';
import { type Decisions, decide } from './decisions/decide.js';
import type { FieldSubject } from './judge.js';
import { judgeVariants } from './judge-variants.js';
import type { Judgement } from './judgement.js';
import { judges } from './judges/all-judges.js';
import { isOfInput, partsApart } from './of-input.js';
import { type OpenItem, openItems } from './open-item.js';

/** Readings of an earlier visit, for the trend. */
export interface EarlierVisit {
  readonly date: string;
  readonly readings: ReadingsById;
  /** True where it was read with a sheet of another input. */
  readonly otherRevision: boolean;
}

/** Everything that came of a visit. */
export interface AsInstalled extends FieldSubject {
  /** Names of the sheets and files it was made from. */
  readonly files: readonly string[];
  /** Day of the visit, where it was read. */
  readonly date?: string;
  /** What could not be read or does not belong. */
  readonly issues: readonly Issue[];
  readonly judgements: readonly Judgement[];
  /** Checks of the review made again on the line as found. */
  readonly findings: readonly Finding[];
  /** Everything open, what keeps most from happening first. */
  readonly items: readonly OpenItem[];
  readonly siteItems: readonly SiteItem[];
  /** True where sheets disagree on more boxes than are judged together. */
  readonly isCut: boolean;
  readonly decisions: Decisions;
  /** Files that were made from another revision and were taken all the same. */
  readonly otherRevisions: readonly string[];
  readonly verdict: Verdict;
  /** The first decision by itself: may it be started. */
  readonly decision: 'go' | 'hold';
  readonly earlier: readonly EarlierVisit[];
}

/** How sheets are taken. */
export interface AsInstalledOptions {
  /** Take sheets of another input all the same. */
  readonly otherRevision?: boolean;
  readonly earlier?: readonly EarlierVisit[];
  /** Sheets of this unit that a store has kept: they were taken when they came, and count as much as those of today. */
  readonly kept?: readonly Answers[];
}

/**
 * Judges what was read at an installed unit.
 *
 * @param review - the review of its input
 * @param today - one or more sheets, as filled
 * @param options - whether another revision is taken, and earlier visits
 * @returns judgements, the line as found, open items, go or hold
 * @throws IssuesError `fieldwork.sheet.…` with every sheet that belongs to another pump or input
 */
export function asInstalled(
  review: ReviewSubject,
  today: readonly Answers[],
  options: AsInstalledOptions = {},
): AsInstalled {
  const sheet = buildSheet(review);
  const kept = options.kept ?? [];
  const answers = [...kept, ...today];
  const refused = [
    ...kept.flatMap((each) => belonging(each, sheet, true)),
    ...today.flatMap((each) => belonging(each, sheet, options.otherRevision === true)),
  ];
  if (refused.some(({ severity }) => severity === 'error')) throw new IssuesError(refused);
  const context = fieldContext(review);
  const understood = answers.map((each) => {
    const units = each.units ?? context.write.system;
    return understand(each, units === context.write.system ? sheet : buildSheet(review, units), units);
  });
  const sheets = understood.map(sheetTaken);
  const { readings, variants, isCut, issues } = mergeVisits(sheets, sheet);
  const asked = new Set(boxesOf(sheet).map(({ box }) => box.id));
  const common = { ...context, sheet, asked, sheets };
  const judged = judgeVariants(judges, common, variants);
  const subject: FieldSubject = { ...common, readings, asFound: judged.asFound };
  const notes = siteItems(sheets, sheet);
  const open = { ...subject, ...judged, siteItems: notes, isCut };
  const items = openItems(open);
  const decisions = decide(items, readings, sheets);
  const isHeld = decisions.start.word !== 'go' || decisions.run.word !== 'go';
  const verdict = overallVerdict([
    ...judged.judgements,
    ...(judged.findings.length === 0
      ? []
      : [{ verdict: overallVerdict(judged.findings), comparison: false }]),
    ...(judged.asFound.kind === 'fails' ? [{ verdict: 'cannot-tell' as const, comparison: false }] : []),
    ...(items.some(({ kind }) => kind === 'noted')
      ? [{ verdict: 'exceeds' as const, comparison: false }]
      : []),
    // Whoever asks for the verdict alone is told that something stands against a go.
    ...(isHeld ? [{ verdict: 'cannot-tell' as const, comparison: false }] : []),
  ]);
  const date = dateIn(readings, DATE_BOX);
  return {
    ...open,
    files: answers.map(({ file }) => file),
    ...(date !== undefined && { date }),
    issues: [...refused, ...understood.flatMap((each) => each.issues), ...untold(sheets), ...issues],
    items,
    decisions,
    verdict,
    decision: decisions.start.word === 'go' ? 'go' : 'hold',
    otherRevisions: refused.flatMap(({ data }) => (typeof data.file === 'string' ? [data.file] : [])),
    earlier: options.earlier ?? [],
  };
}

/** Sheets of several that have no day or no name: what they correct, and what corrects them, nobody knows. */
function untold(sheets: readonly SheetTaken[]): readonly Issue[] {
  if (sheets.length < 2) return [];
  const warn = (code: 'fieldwork.sheet.no-day' | 'fieldwork.sheet.no-name', file: string) =>
    issueOf('warning', coded(code, { file }));
  return sheets.flatMap(({ file, day, by }) => [
    ...(day === undefined ? [warn('fieldwork.sheet.no-day', file)] : []),
    ...(by === undefined ? [warn('fieldwork.sheet.no-name', file)] : []),
  ]);
}

/** What is wrong with the origin of a sheet. */
function belonging(answers: Answers, sheet: FieldSheet, taken: boolean): readonly Issue[] {
  const { file, fingerprint, mark } = answers;
  if (mark !== undefined && mark !== '' && mark !== sheet.mark) {
    const data = { file, found: mark, wanted: sheet.mark };
    return [{ code: 'fieldwork.sheet.other-pump', severity: 'error', data }];
  }
  if (isOfInput(answers, sheet)) return [];
  const severity = taken ? 'warning' : 'error';
  return fingerprint === undefined
    ? [{ code: 'fieldwork.sheet.unmarked', severity, data: { file, wanted: sheet.fingerprint } }]
    : [
        {
          code: 'fieldwork.sheet.other-revision',
          severity,
          data: {
            file,
            found: fingerprint,
            wanted: sheet.fingerprint,
            parts: partsApart(answers, sheet),
          },
        },
      ];
}
