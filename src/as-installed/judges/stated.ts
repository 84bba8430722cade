/** Questions that are answered by a word: one entry of the table each. */

import { choiceIn } from '../../readings/read-box.js';
import { GUARD, LOCKOUT_ORDER } from '../../report/citations/card-citations.js';
import { namedSupports } from '../../sheet/support-ids.js';
import type { Citation } from '../../sources/index.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';

/** One question. */
interface Stated {
  readonly id: string;
  readonly title: string;
  readonly trade: string;
  readonly blocksStart?: boolean;
  /** Boxes that ask it. */
  readonly box: RegExp;
  /** Place; the support's mark or the flange where the id names one. */
  readonly at: string;
  /** Answers that are as they must be; `yes` where not said. */
  readonly wanted?: readonly string[];
  readonly citation?: Citation;
  /** True for what is noted and decides nothing. */
  readonly comparison?: boolean;
}

const QUESTIONS: readonly Stated[] = [
  {
    id: 'closes-by-hand',
    title: 'Faces close by hand',
    trade: 'pipe fitter',
    blocksStart: true,
    box: /\.by-hand$/u,
    at: 'flange',
  },
  {
    id: 'lock-nuts',
    title: 'Lock nuts tight',
    trade: 'pipe fitter',
    box: /^supports\..*\.nuts$/u,
    at: 'support',
  },
  {
    id: 'travel-stops',
    title: 'Travel stops out',
    trade: 'pipe fitter',
    blocksStart: true,
    box: /^supports\..*\.stops-out$/u,
    at: 'support',
  },
  {
    id: 'slides-freely',
    title: 'Pipe slides',
    trade: 'pipe fitter',
    box: /^supports\..*\.free$/u,
    at: 'support',
  },
  {
    id: 'anchor-bolts',
    title: 'Anchor bolted tight',
    trade: 'pipe fitter',
    blocksStart: true,
    box: /^supports\.(?!pump-base).*\.bolts$/u,
    at: 'support',
  },
  {
    id: 'coupling-bolts',
    title: 'Coupling bolts to torque',
    trade: 'millwright',
    blocksStart: true,
    box: /^coupling\.bolts$/u,
    at: 'coupling',
  },
  {
    id: 'shaft-turns',
    title: 'Shaft turns by hand',
    trade: 'millwright',
    blocksStart: true,
    box: /^coupling\.turns$/u,
    at: 'shaft',
  },
  {
    id: 'guard',
    title: 'Guard in place',
    trade: 'millwright',
    blocksStart: true,
    box: /^coupling\.guard$/u,
    at: 'coupling',
    citation: GUARD,
  },
  {
    id: 'seal-vented',
    title: 'Seal chamber vented',
    trade: 'millwright',
    blocksStart: true,
    box: /^seal\.vented$/u,
    at: 'seal',
  },
  {
    id: 'flush-open',
    title: 'Flush line open',
    trade: 'millwright',
    blocksStart: true,
    box: /^seal\.flush$/u,
    at: 'seal',
    wanted: ['yes', 'has none'],
  },
  {
    id: 'valves-open',
    title: 'Isolation valves open',
    trade: 'balancing contractor',
    blocksStart: true,
    box: /^hydraulic\.valves-open$/u,
    at: 'valves',
  },
  {
    id: 'check-holds',
    title: 'Check valve holds',
    trade: 'pipe fitter',
    box: /^hydraulic\.check-holds$/u,
    at: 'check valve',
  },
  {
    id: 'strainer-clean',
    title: 'Strainer clean',
    trade: 'pipe fitter',
    box: /^hydraulic\.strainer-clean$/u,
    at: 'strainer',
  },
  {
    id: 'screen-out',
    title: 'Start-up screen out',
    trade: 'pipe fitter',
    box: /^hydraulic\.screen-out$/u,
    at: 'start-up screen',
  },
  {
    id: 'rotation',
    title: 'Rotation',
    trade: 'electrician',
    blocksStart: true,
    box: /^electrical\.rotation$/u,
    at: 'shaft',
  },
  {
    id: 'noise',
    title: 'Noise while running',
    trade: 'commissioning agent',
    box: /^start-up\.noise$/u,
    at: 'pump',
    wanted: ['none out of the way'],
    comparison: true,
  },
  {
    id: 'valve-slam',
    title: 'Check valve at the stop',
    trade: 'pipe fitter',
    box: /^start-up\.stop$/u,
    at: 'check valve',
    wanted: ['quietly', 'has none'],
    comparison: true,
  },
  {
    id: 'in-sight',
    title: 'Disconnect in sight',
    trade: 'electrician',
    box: /^access\.in-sight$/u,
    at: 'disconnect',
  },
  {
    id: 'isolates',
    title: 'Isolation holds',
    trade: 'pipe fitter',
    box: /^access\.isolates$/u,
    at: 'isolation valves',
    citation: LOCKOUT_ORDER,
  },
  {
    id: 'bleeds',
    title: 'Vents and drains work',
    trade: 'pipe fitter',
    box: /^access\.bleeds$/u,
    at: 'vents and drains',
    citation: LOCKOUT_ORDER,
  },
  {
    id: 'locks',
    title: 'Disconnect locks open',
    trade: 'electrician',
    blocksStart: true,
    box: /^access\.locks$/u,
    at: 'disconnect',
    citation: LOCKOUT_ORDER,
  },
];

const PARTS = /^[a-z-]+/u;

/** Judges of all questions. */
export const statedJudges: readonly Judge[] = QUESTIONS.map((question): Judge => {
  const { id, title, trade, blocksStart = false, box } = question;
  const sample = box.source.replace(/^\^/u, '').replaceAll('\\', '');
  return {
    id,
    title,
    part: id === 'closes-by-hand' ? 'before-bolt-up' : (PARTS.exec(sample)?.[0] ?? ''),
    trade,
    blocksStart,
    compare: (subject) => comparisons(question, subject),
  };
});

function comparisons(question: Stated, subject: FieldSubject): readonly FieldComparison[] {
  const { box, wanted = ['yes'], citation, comparison } = question;
  return [...subject.asked]
    .filter((id) => box.test(id))
    .map((id): FieldComparison => {
      const told = choiceIn(subject.readings, id);
      return {
        kind: 'stated',
        at: placeOf(id, question.at, subject),
        boxes: [id],
        holds: told === undefined ? undefined : wanted.includes(told),
        told,
        wanted: wanted[0] ?? 'yes',
        ...(citation && { limit: { citation } }),
        ...(comparison === true && { comparison }),
        data: { told: told ?? '' },
      };
    });
}

function placeOf(id: string, at: string, { review }: FieldSubject): string {
  const [, word = ''] = id.split('.');
  if (at === 'flange') return `${word} flange`;
  if (at !== 'support') return at;
  return namedSupports(review.layout.supports).find((each) => each.word === word)?.support.mark ?? word;
}
