/** The few words the renderer writes by itself, for the PDF and the HTML page alike. */
import type { NoteKind } from './layout/styled.js';
import type { VerdictWord } from './vocabulary.js';

export const VERDICT_WORDS: Readonly<Record<VerdictWord, string>> = {
  meets: 'meets',
  exceeds: 'exceeds',
  'cannot-tell': 'cannot tell',
  'does-not-apply': 'does not apply',
};

export const NOTE_WORDS: Readonly<Record<NoteKind, string>> = {
  caution: 'Caution',
  information: 'Note',
  assumption: 'Assumption',
};

/** A head or group that is printed again where its table goes on. */
export const CONTINUED = 'continued';

export const pageWords = (page: number, pages: number): string => `page ${page} of ${pages}`;

/** Leads from a section back to the first one. */
export const BACK_WORDS = '↑ summary';

/** A title after its kind: `Caution – hot surfaces`; a title that already starts with the word is left alone. */
export function noteTitle(kind: NoteKind, title: string | undefined): string {
  const word = NOTE_WORDS[kind];
  if (!title?.trim()) return word;
  return title.toLowerCase().startsWith(word.toLowerCase()) ? title : `${word} – ${title}`;
}
