/** One publication. */
export interface Source {
  /** Name as printed in a reference list. */
  readonly title: string;
  /** Edition or year; 'various' where a value is equal in several. */
  readonly edition: string;
  /** What sort of thing it is. */
  readonly kind: 'standard' | 'book' | 'report' | 'paper' | 'public document' | 'practice' | 'derived';
}
