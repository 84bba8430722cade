/** What of an installation people wrote themselves, word for word. */
import type { Installation } from '../../input/installation.js';

/** Keys under which the words of the file stand unchanged. */
const THEIRS: ReadonlySet<string> = new Set(['name', 'mark', 'document', 'source']);

/**
 * Names, marks, documents and the title block of an installation.
 *
 * @param installation - as read
 * @returns texts that are printed as they were written
 */
export function ownWords(installation: Installation): readonly unknown[] {
  const { assumptions: _ours, ...whole } = installation;
  const found: unknown[] = [whole.review, whole.service.name];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'string' && THEIRS.has(key)) found.push(inner);
      else visit(inner);
    }
  };
  visit(whole);
  return found;
}
