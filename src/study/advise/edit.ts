/** Changes of a file as data: of plain content here, of its text in `write-edits`. */
import type { Path } from '../../input/pending-issue.js';

/** Data as a file may hold it. */
export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** One change. Those of a list are made in order: places are those after all changes before it. */
export type Edit =
  /** Puts a value in the place of another, or a new key into a map. */
  | { readonly does: 'set'; readonly path: Path; readonly value: Plain }
  /** Puts a value before the item of a list that the path names, or after the last. */
  | { readonly does: 'insert'; readonly path: Path; readonly value: Plain }
  /** Takes out a key of a map, or an item of a list. */
  | { readonly does: 'remove'; readonly path: Path };

/**
 * Makes changes of plain data. What is not touched stays the same object.
 *
 * @param content - what a file holds
 * @param edits - changes, in order
 * @returns the changed content
 */
export function withEdits(content: unknown, edits: readonly Edit[]): unknown {
  return edits.reduce((before, edit) => withEdit(before, edit, 0), content);
}

function withEdit(holder: unknown, edit: Edit, depth: number): unknown {
  const step = edit.path[depth];
  if (step === undefined) return edit.does === 'set' ? edit.value : holder;
  const isLast = depth === edit.path.length - 1;
  if (Array.isArray(holder)) {
    const at = Number(step);
    const list: readonly unknown[] = holder;
    if (!isLast) return list.map((item, index) => (index === at ? withEdit(item, edit, depth + 1) : item));
    if (edit.does === 'remove') return list.filter((_, index) => index !== at);
    const kept = edit.does === 'set' ? at + 1 : at;
    return [...list.slice(0, at), edit.value, ...list.slice(kept)];
  }
  const map = (holder ?? {}) as Readonly<Record<string, unknown>>;
  if (!isLast) return { ...map, [step]: withEdit(map[step], edit, depth + 1) };
  if (edit.does !== 'remove') return { ...map, [step]: edit.value };
  return Object.fromEntries(Object.entries(map).filter(([key]) => key !== String(step)));
}
