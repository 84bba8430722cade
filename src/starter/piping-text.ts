/** How the pipe and its lines stand in a new file. */
import type { Kit, NewLine, NewSupport, Step } from './parts.js';
import type { Ruler } from './ruler.js';
import { serviceOf } from './service-values.js';
import { yamlText } from './yaml-text.js';

/** Rods and springs of a support, once its load is known. */
export interface Sizing {
  /** Label of the rod table. */
  readonly rod: string;
  /** Load the support carries with the line filled, as it is written. */
  readonly load: string;
  /** Rate and working range of a spring. */
  readonly rate: string;
  readonly minimum: string;
  readonly maximum: string;
}

/** A value with the comment that says it was assumed. */
export type Assume = (what: string, value: string, why: string) => string;

/**
 * The part of the file that says what the pipe is and how it runs.
 *
 * @param kit - answers, and lengths of the tables [-]
 * @param lines - both lines [-]
 * @param sizing - rods and springs by mark; a support that is not in it hangs on a rod of no size [-]
 * @param assume - notes a value and its reason [-]
 * @returns lines of the file [-]
 */
export function pipingLines(
  { answers, ruler, valve }: Kit,
  lines: readonly NewLine[],
  sizing: ReadonlyMap<string, Sizing>,
  assume: Assume,
): readonly string[] {
  const insulation =
    answers.insulation === undefined
      ? assume('insulation', serviceOf(answers).insulation, 'usual for the service')
      : answers.insulation === 'none'
        ? 'none'
        : `{kind: ${serviceOf(answers).insulationKind}, thickness: ${yamlText(answers.insulation.text)}}`;
  const { isolation, check } = valve;
  const supports = lines.flatMap(({ steps }) =>
    steps.flatMap((step) => ('support' in step ? [step.support] : [])),
  );
  const kinds = new Set(supports.map(({ kind }) => kind));
  assume('flanges of the pump', 'B16.1, class 125, flat face', 'usual on cast iron');
  assume('valves', `${isolation.kind}, ${check.kind}`, 'one to shut on each side, one against backflow');
  assume('drains, vents and gauge taps', 'one of each beside the pump', 'good practice');
  if (kinds.has('hanger')) assume('rods', 'one to a hanger', 'sized for what hangs on it');
  if (kinds.has('spring-hanger')) assume('spring hangers', 'set with the line filled', SPRING_WORDS);
  assume('ends of the lines', 'anchored', 'held in every direction and turn');
  return [
    'piping:',
    `  size: ${yamlText(answers.pipeSize.text)}`,
    `  schedule: ${answers.schedule === undefined ? assume('schedule of the pipe', 'STD', 'standard weight') : yamlText(answers.schedule)}`,
    '  material: carbon steel',
    '  elbows: long',
    `  insulation: ${insulation}`,
    '  # Lengths are those of the pipe between the parts. Rods are chosen for what hangs on them as the file stands.',
    ...(kinds.has('spring-hanger')
      ? [`  # Spring hangers are assumed: set with the line filled, and ${SPRING_WORDS}.`]
      : []),
    '  lines:',
    ...lines.flatMap(({ from, steps }) => [
      `    - name: ${from} line`,
      `      from: ${from}`,
      // A line starts with pipe of the size of its port.
      ...(answers.pipeSize.nps === answers.size.nps ? [] : [`      size: ${yamlText(answers.size.text)}`]),
      '      walk:',
      ...steps.map((step) => `        - ${stepText(step, ruler, sizing)}`),
    ]),
    '',
  ];
}

const SPRING_WORDS = 'to give half an inch (13 mm) under their load';

function stepText(step: Step, ruler: Ruler, sizing: ReadonlyMap<string, Sizing>): string {
  const note = step.note === undefined ? '' : `  # ${step.note}`;
  if ('say' in step) return `${step.say}${note}`;
  return `${supportText(step.support, ruler, sizing.get(step.support.mark))}${note}`;
}

function supportText(support: NewSupport, ruler: Ruler, size: Sizing | undefined): string {
  const { mark, kind, rods } = support;
  if (kind === 'guide') return `guide: {mark: ${mark}}`;
  const own = [
    `mark: ${mark}`,
    ...(kind === 'spring-hanger' && size !== undefined
      ? [`rate: ${size.rate}`, `load: ${size.load}`, `minimum: ${size.minimum}`, `maximum: ${size.maximum}`]
      : []),
    `rods: ${rods}`,
    ...(size === undefined ? [] : [`rod: ${size.rod} in`]),
    `length: ${ruler.text(support.length)}`,
  ].join(', ');
  return `${size === undefined ? 'hanger' : kind}: {${own}}`;
}
