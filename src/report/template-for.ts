import type { Reader } from './context.js';
import { outline, type SectionId } from './outline.js';

/** Templates a review is made of, by their paths below the templates folder, without `.hbs`. */
export interface ReviewTemplates {
  /** Master template. */
  readonly master: 'review';
  /** Templates of the reader's sections; a section's template is also the name of its partial. */
  readonly sections: readonly `sections/${SectionId}`[];
}

/**
 * Templates that make the review of one reader.
 *
 * @param reader - who reads it
 * @returns master template and partials, in printing order
 */
export function templateFor(reader: Reader): ReviewTemplates {
  return { master: 'review', sections: outline[reader].map((id) => `sections/${id}` as const) };
}
