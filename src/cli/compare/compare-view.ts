/** What `compare` prints: aligned columns, 80 wide, without colour. */
import type { ComparedRevisions } from '../../index.js';
import { LINE_WIDTH } from '../environment.js';
import { brokenColumns, column, wrapped } from '../terminal/text-columns.js';

type Composed = ComparedRevisions['composed'];
type Side = Composed['before'];

/** Most rows of one list; the page and --json have them all. */
const MOST_ROWS = 12;

/**
 * The picture of a comparison.
 *
 * @param seen - what differs, as text
 * @param written - name of the PDF, where one was written
 * @returns lines that end with a line feed
 */
export function comparePicture(seen: Composed, written: string | undefined): string {
  const lines = [
    ...headLines(seen),
    ...(seen.isSame
      ? ['', `Nothing differs${seen.sameInput ? ': both come from the same input' : ''}.`]
      : []),
    ...block('Verdicts that changed', findingLines(seen.flipped)),
    ...block('Findings that are new', oneSided(seen.appeared, 'after')),
    ...block('Findings that are gone', oneSided(seen.gone, 'before')),
    ...inputLines(seen),
    ...block('Loads, weights and frequencies', valueLines(seen)),
    ...block('Ratios that moved', ratioLines(seen.moved)),
    ...block('Assumptions', assumptionLines(seen)),
    '',
    ...wrapped(`${seen.noise}.`, LINE_WIDTH),
    ...(written === undefined ? [] : [`Written to ${written}`]),
  ];
  // Texts come from files of strangers: signs that steer a terminal are blanks.
  return lines.map((line) => `${line.replace(/[\p{Cc}\p{Cf}]/gu, ' ').trimEnd()}\n`).join('');
}

const words = (verdict: string): string => verdict.replaceAll('-', ' ');

function headLines(seen: Composed): readonly string[] {
  const { verdictBefore, verdictAfter, verdictChanged } = seen;
  const verdict = verdictChanged
    ? `${words(verdictBefore)} -> ${words(verdictAfter)}`
    : `${words(verdictAfter)}, as before`;
  const side = (word: string, { name, revision, date, fingerprint }: Side): string => {
    const more = [revision === '' ? '' : `revision ${revision}`, date]
      .filter((part) => part !== '')
      .join(', ');
    return [word, name, more, `input ${fingerprint}`].filter((part) => part !== '').join('  ');
  };
  return [
    `${column(seen.title, LINE_WIDTH - verdict.length - 1)} ${verdict}`,
    ...wrapped(side('before', seen.before), LINE_WIDTH),
    ...wrapped(side('after ', seen.after), LINE_WIDTH),
  ];
}

/** A list under its heading; no heading without a list. */
function block(title: string, rows: readonly (readonly string[])[]): readonly string[] {
  if (rows.length === 0) return [];
  const left = rows.length - MOST_ROWS;
  const more = left > 0 ? [`  and ${left} more; -o and --json have them all`] : [];
  return ['', title, ...rows.slice(0, MOST_ROWS).flat(), ...more];
}

const row = (cells: readonly string[], widths: readonly number[]): readonly string[] =>
  brokenColumns(['', ...cells], [1, ...widths]);

const placed = (at: string, condition: string): string => (condition === '' ? at : `${at}, ${condition}`);

function findingLines(rows: Composed['flipped']): readonly (readonly string[])[] {
  return rows.map(({ title, at, condition, verdictBefore, verdictAfter, numbersAfter }) =>
    row(
      [title, placed(at, condition), `${words(verdictBefore)} -> ${words(verdictAfter)}`, numbersAfter],
      [22, 17, 18, 17],
    ),
  );
}

function oneSided(rows: Composed['gone'], side: 'before' | 'after'): readonly (readonly string[])[] {
  return rows.map((found) =>
    row(
      [
        found.title,
        placed(found.at, found.condition),
        words(side === 'before' ? found.verdictBefore : found.verdictAfter),
        side === 'before' ? found.numbersBefore : found.numbersAfter,
      ],
      [24, 20, 14, 16],
    ),
  );
}

function inputLines(seen: Composed): readonly string[] {
  if (seen.isSame) return [];
  if (!seen.inputsKnown) {
    const reason = seen.sameInput
      ? 'Both were made from the same input.'
      : 'Not known: a results file does not hold its input.';
    return ['', 'Input', `  ${reason}`];
  }
  if (seen.inputs.length === 0) return ['', 'Input', '  Nothing but the way of writing, if anything.'];
  const rows = seen.inputs.map(({ group, place, kind, before, after }) => {
    const change = kind === 'added' ? after : kind === 'removed' ? before : `${before} -> ${after}`;
    return row([group, place, kind, change], [14, 22, 7, 31]);
  });
  return ['', 'Input', ...rows.flat()];
}

function valueLines(seen: Composed): readonly (readonly string[])[] {
  return seen.values.map(({ at, what, condition, before, after, change, others }) =>
    row(
      [at, what, condition, `${before} -> ${after}`, [change, others].filter(Boolean).join(', ')],
      [15, 9, 10, 20, 19],
    ),
  );
}

function ratioLines(rows: Composed['moved']): readonly (readonly string[])[] {
  return rows.map(({ title, at, condition, ratioBefore, ratioAfter, verdictAfter }) =>
    row(
      [title, placed(at, condition), `${ratioBefore} -> ${ratioAfter}`, words(verdictAfter)],
      [28, 24, 13, 11],
    ),
  );
}

function assumptionLines(seen: Composed): readonly (readonly string[])[] {
  return seen.assumptions.map(({ kind, path, before, after }) =>
    row(
      [kind, path, kind === 'new' ? after : kind === 'gone' ? before : `${before} -> ${after}`],
      [8, 38, 30],
    ),
  );
}
