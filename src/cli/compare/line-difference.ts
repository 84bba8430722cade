/** The lines in which two texts differ, in the form that tools which apply patches read. */
import { createTwoFilesPatch, FILE_HEADERS_ONLY } from 'diff';

/** Lines shown round each change. */
const AROUND = 2;
/** Most lines taken out and put in that are looked for; beyond, the whole counts as changed. */
const MOST_CHANGED = 3000;

/**
 * A unified difference. Ends of lines, `\n` or `\r\n`, count as the same.
 *
 * @param before - old text
 * @param after - new text
 * @param names - names of the two for the head
 * @returns lines without line ends; none where the texts are the same
 */
export function lineDifference(
  before: string,
  after: string,
  names: { readonly before: string; readonly after: string },
): readonly string[] {
  const [old, fresh] = [before, after].map((text) => text.replaceAll('\r\n', '\n')) as [string, string];
  if (old === fresh) return [];
  // Two texts that both leave the last line open do not differ in that.
  const end = old.endsWith('\n') || fresh.endsWith('\n') ? '' : '\n';
  const patch = createTwoFilesPatch(names.before, names.after, old + end, fresh + end, undefined, undefined, {
    context: AROUND,
    maxEditLength: MOST_CHANGED,
    headerOptions: FILE_HEADERS_ONLY,
  });
  return patch === undefined ? allChanged(linesOf(old + end), linesOf(fresh + end), names) : linesOf(patch);
}

/** Lines of a text that ends with a line feed. */
const linesOf = (text: string): readonly string[] => text.replace(/\n$/, '').split('\n');

function allChanged(
  before: readonly string[],
  after: readonly string[],
  names: { readonly before: string; readonly after: string },
): readonly string[] {
  return [
    `--- ${names.before}`,
    `+++ ${names.after}`,
    `@@ -1,${before.length} +1,${after.length} @@`,
    ...before.map((line) => `-${line}`),
    ...after.map((line) => `+${line}`),
  ];
}
