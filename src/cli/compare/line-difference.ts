/** The lines in which two texts differ, in the form that tools which apply patches read. */

/** Lines shown round each change. */
const AROUND = 2;
/** Most lines compared each with each; beyond, the whole middle counts as changed. */
const MOST_COMPARED = 3000;

interface Line {
  readonly sign: ' ' | '-' | '+';
  readonly text: string;
}

/**
 * A unified difference.
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
  if (before === after) return [];
  const lines = compared(before.split(/\r?\n/), after.split(/\r?\n/));
  const near = (at: number) =>
    lines.slice(Math.max(0, at - AROUND), at + AROUND + 1).some(({ sign }) => sign !== ' ');
  const out = [`--- ${names.before}`, `+++ ${names.after}`];
  let [old, fresh] = [1, 1];
  for (let at = 0; at < lines.length; ) {
    if (!near(at)) {
      old += 1;
      fresh += 1;
      at += 1;
      continue;
    }
    let end = at;
    while (end < lines.length && near(end)) end += 1;
    const hunk = lines.slice(at, end);
    const [gone, come] = [
      hunk.filter(({ sign }) => sign !== '+').length,
      hunk.filter(({ sign }) => sign !== '-').length,
    ];
    out.push(`@@ -${old},${gone} +${fresh},${come} @@`, ...hunk.map(({ sign, text }) => `${sign}${text}`));
    old += gone;
    fresh += come;
    at = end;
  }
  return out;
}

function compared(before: readonly string[], after: readonly string[]): readonly Line[] {
  let start = 0;
  while (start < before.length && start < after.length && before[start] === after[start]) start += 1;
  let tail = 0;
  while (
    tail < before.length - start &&
    tail < after.length - start &&
    before[before.length - 1 - tail] === after[after.length - 1 - tail]
  )
    tail += 1;
  const same = (text: string): Line => ({ sign: ' ', text });
  return [
    ...before.slice(0, start).map(same),
    ...middle(before.slice(start, before.length - tail), after.slice(start, after.length - tail)),
    ...before.slice(before.length - tail).map(same),
  ];
}

/** The longest list of lines that both hold in the same order stays; everything else goes or comes. */
function middle(before: readonly string[], after: readonly string[]): readonly Line[] {
  const gone = before.map((text): Line => ({ sign: '-', text }));
  const come = after.map((text): Line => ({ sign: '+', text }));
  if (before.length > MOST_COMPARED || after.length > MOST_COMPARED) return [...gone, ...come];
  const width = after.length + 1;
  const longest = new Uint16Array((before.length + 1) * width);
  for (let i = before.length - 1; i >= 0; i -= 1)
    for (let j = after.length - 1; j >= 0; j -= 1)
      longest[i * width + j] =
        before[i] === after[j]
          ? (longest[(i + 1) * width + j + 1] ?? 0) + 1
          : Math.max(longest[(i + 1) * width + j] ?? 0, longest[i * width + j + 1] ?? 0);
  const lines: Line[] = [];
  let [i, j] = [0, 0];
  while (i < before.length || j < after.length) {
    if (i < before.length && j < after.length && before[i] === after[j]) {
      lines.push({ sign: ' ', text: before[i] ?? '' });
      i += 1;
      j += 1;
    } else if (
      i < before.length &&
      (j === after.length || (longest[(i + 1) * width + j] ?? 0) >= (longest[i * width + j + 1] ?? 0))
    ) {
      lines.push({ sign: '-', text: before[i] ?? '' });
      i += 1;
    } else {
      lines.push({ sign: '+', text: after[j] ?? '' });
      j += 1;
    }
  }
  return lines;
}
