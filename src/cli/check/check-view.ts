/** What `check` prints for one file: aligned columns, 80 wide, readable without colour. */
import { type Review, reviewSummary, type UnitSystem } from '../../index.js';
import { LINE_WIDTH } from '../environment.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { type Paint, paintFor } from '../terminal/paint.js';
import { brokenColumns, column, columns, wrapped } from '../terminal/text-columns.js';

/** How to print. */
export interface PictureOptions {
  /** File as given, for the next command. */
  readonly file: string;
  /** Name of the input, as shown. */
  readonly name: string;
  readonly colour: boolean;
  readonly units: UnitSystem;
}

type ReviewSummary = ReturnType<typeof reviewSummary>;

/**
 * The picture of one review.
 *
 * @param review - the review
 * @param options - names, and whether to colour
 * @returns lines that end with a line feed
 */
export function checkPicture(review: Review, options: PictureOptions): string {
  const seen = reviewSummary(review, options.units);
  const paint = paintFor(options.colour);
  const lines = [
    ...headLines(seen, options, paint),
    '',
    ...findingLines(seen, paint),
    '',
    ...supportLines(seen, paint),
    '',
    ...nozzleLines(seen, paint),
    '',
    ...wrapped(countLine(seen), LINE_WIDTH),
    ...nextLines(seen, options, paint),
  ];
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

function headLines(seen: ReviewSummary, { name }: PictureOptions, paint: Paint): readonly string[] {
  const verdict = words(seen.verdict);
  return [
    `${paint.bold(column(`${seen.pump}: ${seen.project}`, LINE_WIDTH - verdict.length - 1))} ${paint.verdict(seen.verdict, verdict)}`,
    paint.dim(column(name, LINE_WIDTH)),
  ];
}

function findingLines(seen: ReviewSummary, paint: Paint): readonly string[] {
  const widths = [-5, 11, 28, 23, 9] as const;
  const head = columns(['ratio', 'verdict', 'check', 'at', 'condition'], widths);
  const rows = seen.findings.flatMap(({ ratio, verdict, fromMemory, title, at, condition }) => {
    const name = fromMemory ? `${title} *` : title;
    const lines = brokenColumns([ratio, words(verdict), name, at, condition], widths);
    return verdict === 'meets' ? lines : lines.map((line) => paint.verdict(verdict, line));
  });
  const more =
    seen.unlisted === 0 ? [] : [`      and ${seen.unlisted} more that do not meet; the review lists them`];
  const remembered = seen.findings.some(({ fromMemory }) => fromMemory)
    ? ['      * rests on a value that is remembered and was not read']
    : [];
  return [paint.dim(head), ...rows, ...more, ...remembered];
}

function supportLines(seen: ReviewSummary, paint: Paint): readonly string[] {
  const widths = [21, -14, -7, -7, -8, 18] as const;
  const unit = ` ${seen.loadUnit}`;
  const head = columns(['support', 'filled', `down${unit}`, `up${unit}`, 'sideways', 'governs'], widths);
  const rows = seen.supports.flatMap(
    ({ mark, word, isNamed, filled, down, up, sideways, governs, condition }) => {
      const name = isNamed ? mark : `${mark} ${word}`;
      const most = condition === governs ? condition : `${governs}, ${condition}`;
      return brokenColumns([name, filled, down, up, sideways, most], widths);
    },
  );
  return [paint.dim('largest load on each support, of all conditions'), paint.dim(head), ...rows];
}

function nozzleLines(seen: ReviewSummary, paint: Paint): readonly string[] {
  const widths = [10, -10, 22, -13, 21] as const;
  const head = columns(['nozzle', 'force', 'condition', 'moment', 'condition'], widths);
  const rows = seen.nozzles.flatMap(({ nozzle, force, forceIn, moment, momentIn }) =>
    brokenColumns([nozzle, force, forceIn, moment, momentIn], widths),
  );
  return [paint.dim('largest force and moment of the pipe on each nozzle'), paint.dim(head), ...rows];
}

function countLine({ counts, compared, assumptions }: ReviewSummary): string {
  const judged = counts.meets + counts.exceeds + counts['cannot-tell'];
  const parts = [
    `${counts.meets} ${counts.meets === 1 ? 'meets' : 'meet'}`,
    ...(counts.exceeds === 0 ? [] : [`${counts.exceeds} ${counts.exceeds === 1 ? 'exceeds' : 'exceed'}`]),
    ...(counts['cannot-tell'] === 0 ? [] : [`${counts['cannot-tell']} cannot be told`]),
  ];
  const rest = assumptions === 1 ? 'It rests on 1 assumption.' : `It rests on ${assumptions} assumptions.`;
  const beside = compared.meets + compared.exceeds + compared['cannot-tell'];
  const told =
    beside === 0
      ? ''
      : ` ${beside} compared, which decide nothing: ${compared.exceeds} beyond, ${compared['cannot-tell']} cannot be told.`;
  return `${judged} ${judged === 1 ? 'place' : 'places'} judged: ${parts.join(', ')}.${told} ${rest}`;
}

function nextLines(
  { todos, asked, verdict }: ReviewSummary,
  { file }: PictureOptions,
  paint: Paint,
): readonly string[] {
  const named = /[^\w./:@%+,-]/.test(file) ? `'${file.replaceAll("'", "'\\''")}'` : file;
  const steps = todos.flatMap(({ at, todo }, index) => {
    const lines = wrapped(`${at}: ${todo}`, LINE_WIDTH - 4);
    return lines.map((line, row) => `${row === 0 ? ` ${index + 1}` : '  '}  ${line}`);
  });
  // What reads standard input once cannot be told to read it again.
  const advise = verdict === 'exceeds' && file !== STANDARD_INPUT;
  return [
    ...(steps.length === 0 ? [] : ['', paint.dim('to do'), ...steps]),
    ...(asked.length === 0
      ? []
      : [
          '',
          paint.dim('to be supplied by the manufacturer'),
          ...asked.flatMap((what) => wrapped(`  - ${what}`, LINE_WIDTH)),
        ]),
    '',
    ...(advise ? [`The smallest changes that help: pipeborne advise ${named}`] : []),
    `The review itself: pipeborne review ${named}`,
  ];
}

/** A verdict as words. */
function words(verdict: string): string {
  return verdict.replaceAll('-', ' ');
}
