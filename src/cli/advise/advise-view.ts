/** What `advise` prints: the alternatives, one of them with its findings before and after, and what none mends. */
import { type AdviceView, type AlternativeView, adviceView, summaryOf } from '../../app/advice-words.js';
import type { AdvisedFile } from '../../app/advise.js';
import type { UnitSystem } from '../../index.js';
import { lineDifference } from '../compare/line-difference.js';
import { LINE_WIDTH } from '../environment.js';
import { type Paint, paintFor } from '../terminal/paint.js';
import { brokenColumns, column, columns, wrapped } from '../terminal/text-columns.js';

/** How to print. */
export interface AdvisePictureOptions {
  /** File as given. */
  readonly file: string;
  readonly name: string;
  readonly text: string;
  /** Number of the alternative shown in full, from 1. */
  readonly chosen: number;
  readonly colour: boolean;
  readonly units: UnitSystem;
  /** Name of the file written, where one was. */
  readonly written?: string;
}

/**
 * The picture of some advice.
 *
 * @param advised - review and advice
 * @param options - names, and which alternative to show in full
 * @returns lines that end with a line feed
 */
export function advisePicture(advised: AdvisedFile, options: AdvisePictureOptions): string {
  const { review, advice } = advised;
  const view = adviceView(advice, options.units);
  const paint = paintFor(options.colour);
  const { pump, review: title } = review.installation;
  const word = view.verdict.replaceAll('-', ' ');
  const chosen = view.alternatives[options.chosen - 1];
  const lines = [
    `${paint.bold(column(`${pump.mark}: ${title.project}`, LINE_WIDTH - word.length - 1))} ${paint.verdict(view.verdict, word)}`,
    paint.dim(column(options.name, LINE_WIDTH)),
    '',
    ...wrapped(summaryOf(advice, view), LINE_WIDTH),
    ...view.alternatives.flatMap((one) => ['', ...alternativeLines(one, paint)]),
    ...(chosen === undefined ? [] : ['', ...chosenLines(chosen, advised, options, paint)]),
    ...unsolvedLines(view, paint),
  ];
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

function alternativeLines(one: AlternativeView, paint: Paint): readonly string[] {
  const mended = `${one.solves ? '' : 'in part: '}mends ${one.mended}`;
  const inHand = one.inHand === '' ? '' : `, the closest then at ${one.inHand} of its limit`;
  const head = `${one.number}  effort ${one.effort}, ${mended}${inHand}`;
  return [
    paint.bold(head),
    ...one.steps.flatMap((step) =>
      wrapped(step, LINE_WIDTH - 5).map((line, index) => `   ${index === 0 ? '-' : ' '} ${line}`),
    ),
  ];
}

/** Widths of the columns of findings. */
const WIDTHS = [12, 34, 32] as const;

function chosenLines(
  one: AlternativeView,
  { advice }: AdvisedFile,
  options: AdvisePictureOptions,
  paint: Paint,
): readonly string[] {
  const changed = one.rows.filter(({ became }) => became !== 'same');
  const counted = changed.filter(({ comparison }) => !comparison);
  const compared = changed.length - counted.length;
  const left = one.rows.filter(
    ({ became, verdict, comparison }) =>
      became === 'same' && verdict !== 'meets' && verdict !== 'does-not-apply' && !comparison,
  );
  const rest = one.rows.length - changed.length - left.length;
  const text = advice.alternatives[options.chosen - 1]?.text ?? options.text;
  const row = ({ became, title, at, before, after, verdict }: AlternativeView['rows'][number]) =>
    brokenColumns(
      became === 'same'
        ? ['stays', `${title}: ${at}`, after]
        : [became, `${title}: ${at}`, `${before} → ${after}`],
      WIDTHS,
    ).map((line) => (verdict === 'meets' ? line : paint.verdict(verdict, line)));
  return [
    paint.bold(`Alternative ${one.number}: what becomes of the findings`),
    paint.dim(columns(['', 'check and place', 'before → after'], WIDTHS)),
    ...[...counted, ...left].flatMap(row),
    ...wrapped(
      `${rest} findings stay as they are${compared === 0 ? '' : `, and ${compared} comparisons change, which decide nothing`}; --json lists every one.`,
      LINE_WIDTH,
    ),
    '',
    paint.bold('Heed'),
    ...one.cautions.flatMap((caution) =>
      wrapped(caution, LINE_WIDTH - 2).map((line, index) => `${index === 0 ? '-' : ' '} ${line}`),
    ),
    ...wrapped('An estimate for review by the engineer of record, who alone decides.', LINE_WIDTH - 2).map(
      (line, index) => `${index === 0 ? '-' : ' '} ${line}`,
    ),
    '',
    ...lineDifference(options.text, text, {
      before: options.name,
      after: options.written ?? 'changed',
    }),
    '',
    ...nextLines(options),
  ];
}

function nextLines({ file, written, chosen }: AdvisePictureOptions): readonly string[] {
  const quoted = (name: string) => (/[^\w./:@%+,-]/.test(name) ? `'${name.replaceAll("'", "'\\''")}'` : name);
  if (written !== undefined) return [`Written: ${written}`, `Next: pipeborne check ${quoted(written)}`];
  return [`Next: pipeborne advise ${quoted(file)} --alternative ${chosen} --write changed.yaml`];
}

function unsolvedLines({ unsolved }: AdviceView, paint: Paint): readonly string[] {
  if (unsolved.length === 0) return [];
  const groups = [...new Set(unsolved.map(({ why }) => why))];
  return groups.flatMap((why) => [
    '',
    ...wrapped(`${why.charAt(0).toUpperCase()}${why.slice(1)}:`, LINE_WIDTH).map(paint.bold),
    ...unsolved
      .filter((one) => one.why === why)
      .flatMap(({ at, title, todo }) =>
        wrapped(`${title}, ${at}${todo === '' ? '' : `: ${todo}`}`, LINE_WIDTH - 2).map(
          (line, index) => `${index === 0 ? '-' : ' '} ${line}`,
        ),
      ),
  ]);
}
