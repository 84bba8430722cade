/** Finds the view of a section in the review of whoever gets it. */
import { composeReview, type ReviewSubject } from '../../src/report/compose-review.js';
import type { Reader } from '../../src/report/context.js';
import { outline, type SectionId } from '../../src/report/outline.js';

/** The first reader whose review has a section. */
export function readerOf(id: SectionId): Reader {
  const found = (['engineer', 'contractor', 'commissioning'] as const).find((reader) =>
    outline[reader].includes(id),
  );
  if (found === undefined) throw new Error(`nobody reads ${id}`);
  return found;
}

/** View of one section, in the review of its first reader. */
export function sectionView(
  whole: ReviewSubject,
  id: SectionId,
  units: 'us' | 'si' = 'si',
): Readonly<Record<string, unknown>> {
  const { view } = composeReview(whole, { reader: readerOf(id), units, version: '0.0.0' });
  const slots = view.sections as readonly Readonly<Record<string, unknown>>[];
  return slots.find((one) => one[id] !== false)?.[id] as Readonly<Record<string, unknown>>;
}
