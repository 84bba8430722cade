import { analysisOf, type Subject } from '../../analysis/subject.js';
import {
  type LargestSupportLoads,
  LOAD_MEASURES,
  type LoadMeasure,
} from '../../analysis/supports/support-loads.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { supportWord } from '../words/support-word.js';
import { NO_NUMBER, type Writer } from '../writer.js';

/** The largest loads on one support as finished text; a dash where there is none, a question mark where nothing determines it. */
export interface LargestLoadRow extends Readonly<Record<LoadMeasure | `${LoadMeasure}In`, string>> {
  readonly mark: string;
  readonly kind: string;
  /** True for what is no mark of the file: the end of a line, the base of the pump. */
  readonly isNamed: boolean;
  /** Direction that governs, or a dash; its load with unit, and the condition: `down`, `426 lb`, `pump-out`. */
  readonly governs: string;
  readonly governing: string;
  readonly governingIn: string;
}

/**
 * The largest load on every support, end of a line and base: down, up, sideways and resultant, each with its condition.
 *
 * @param subject - what was solved
 * @param write - writer
 * @returns rows of text in the order of the layout; numbers in the unit of a table of forces
 */
export function largestLoadRows(subject: Subject, write: Writer): readonly LargestLoadRow[] {
  const loads = new Map(analysisOf(subject).supportLoads.map((each) => [each.at, each]));
  return subject.layout.supports.flatMap((support) => {
    const own = loads.get(support.mark);
    return own === undefined ? [] : [textOf(support, own, write)];
  });
}

function textOf(
  support: PlacedSupport,
  { largest, governs, undetermined }: LargestSupportLoads,
  write: Writer,
): LargestLoadRow {
  const isOpen = (measure: LoadMeasure): boolean =>
    largest[measure] !== undefined && undetermined.includes(measure === 'sideways' ? 'sideways' : 'vertical');
  const cells = LOAD_MEASURES.flatMap((measure) => [
    [measure, `${write.loadNumber(largest[measure]?.load)}${isOpen(measure) ? ' ?' : ''}`],
    [`${measure}In`, titleOf(largest[measure]?.condition)],
  ]);
  const most = governs === undefined ? undefined : largest[governs];
  return {
    mark: support.mark,
    kind: supportWord(support),
    isNamed: support.part === undefined,
    ...(Object.fromEntries(cells) as Record<LoadMeasure | `${LoadMeasure}In`, string>),
    governs: governs ?? NO_NUMBER,
    governing: `${write.load(most?.load)}${governs !== undefined && isOpen(governs) ? ' ?' : ''}`,
    governingIn: titleOf(most?.condition),
  };
}

const titleOf = (condition: string | undefined): string =>
  condition === undefined ? NO_NUMBER : conditionTitle(condition);
