/**
 * Changes of a file's text. Every change replaces the characters of what it touches and no others, so comments, order,
 * quotes and spacing stay as the writer left them. What comes out is read again and compared with what was meant.
 */
import { type Document, isMap, isScalar, isSeq, type Node, parseDocument } from 'yaml';
import type { Path } from '../../input/pending-issue.js';
import { type Edit, type Plain, withEdits } from './edit.js';
import { flowText, type Quotes, type Style, stepText } from './written-value.js';

/**
 * Makes changes in the text of a file.
 *
 * @param text - YAML or JSON that can be read
 * @param edits - changes, in order
 * @returns the new text; undefined where a change cannot be made by itself, as what it touches is repeated elsewhere
 */
export function writeEdits(text: string, edits: readonly Edit[]): string | undefined {
  let written = text;
  let meant: unknown = readPlain(text).toJS();
  for (const edit of edits) {
    const document = readPlain(written);
    const next = writtenEdit(written, document, edit);
    if (next === undefined) return undefined;
    meant = withEdits(meant, [edit]);
    const read = readPlain(next);
    if (read.errors.length > 0 || !isSame(read.toJS(), meant)) return undefined;
    written = next;
  }
  return written;
}

function readPlain(text: string): Document {
  return parseDocument(text, { version: '1.2', schema: 'core', uniqueKeys: true });
}

function isSame(a: unknown, b: unknown): boolean {
  if (a === b || (Number.isNaN(a) && Number.isNaN(b))) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  // The order of keys is part of what is kept.
  return (
    Array.isArray(a) === Array.isArray(b) &&
    keys.length === others.length &&
    keys.every(
      (key, index) =>
        key === others[index] &&
        isSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    )
  );
}

function writtenEdit(text: string, document: Document, edit: Edit): string | undefined {
  const style = styleOf(text);
  const last = edit.path.at(-1);
  const holder = nodeAt(document, edit.path.slice(0, -1));
  if (edit.does === 'set' && document.hasIn(edit.path)) {
    const range = rangeOf(nodeAt(document, edit.path));
    if (range && isSeq(holder) && holder.flow !== true) {
      const end = lastOf(text, range) + 1;
      const indent = ' '.repeat(Math.max(0, range.from - lineStart(text, range.from) - 2));
      const block = { ...style, block: isBlockList(holder.items) };
      return spliced(text, { from: range.from, to: end }, stepText(edit.value, block, indent));
    }
    const shown = range && flowText(edit.value, style, quotesOf(nodeAt(document, edit.path)));
    return range && spliced(text, range, shown ?? '');
  }
  if (edit.does === 'set') return withNewKey(text, holder, String(last), edit.value, style);
  if (isSeq(holder)) {
    const items = holder.items.flatMap((item) => rangeOf(item as Node) ?? []);
    if (items.length !== holder.items.length) return undefined;
    const at = Number(last);
    const block = { ...style, block: isBlockList(holder.items) };
    if (edit.does === 'insert') {
      return holder.flow === true
        ? insertedInFlow(text, items, at, flowText(edit.value, style))
        : insertedLine(text, items, at, (indent) => stepText(edit.value, block, indent), style);
    }
    return holder.flow === true ? removedFromFlow(text, items, at) : removedLines(text, items[at]);
  }
  if (edit.does === 'remove' && isMap(holder)) {
    const pairs = holder.items.flatMap(({ key, value }) => {
      const [from, to] = [rangeOf(key as Node), rangeOf(value as Node)];
      return from && to ? [{ from: from.from, to: to.to }] : [];
    });
    const at = holder.items.findIndex(({ key }) => isScalar(key) && String(key.value) === String(last));
    if (pairs.length !== holder.items.length) return undefined;
    return holder.flow === true ? removedFromFlow(text, pairs, at) : removedLines(text, pairs[at]);
  }
  return undefined;
}

/** Characters of the text, the last not included. */
interface Range {
  readonly from: number;
  readonly to: number;
}

function nodeAt(document: Document, path: Path): Node | undefined {
  const node = path.length === 0 ? document.contents : document.getIn(path, true);
  return (node ?? undefined) as Node | undefined;
}

function rangeOf(node: Node | null | undefined): Range | undefined {
  const range = node?.range;
  return range ? { from: range[0], to: range[1] } : undefined;
}

function spliced(text: string, { from, to }: Range, put: string): string {
  return text.slice(0, from) + put + text.slice(to);
}

function quotesOf(node: Node | undefined): Quotes {
  if (!isScalar(node)) return 'plain';
  return node.type === 'QUOTE_DOUBLE' ? 'double' : node.type === 'QUOTE_SINGLE' ? 'single' : 'plain';
}

function styleOf(text: string): Style {
  return {
    json: text.trimStart().startsWith('{') && /^\s*\{\s*(\}|")/.test(text),
    block: false,
    lineEnd: text.includes('\r\n') ? '\r\n' : '\n',
  };
}

/** Whether steps that hold a map write it over several lines, by the first that does either. */
function isBlockList(items: readonly unknown[]): boolean {
  const inside = items.flatMap((item) =>
    isMap(item) ? item.items.flatMap(({ value }) => (isMap(value) ? [value] : [])) : [],
  );
  return inside.filter(({ flow }) => flow !== true).length > inside.length / 2;
}

function withNewKey(
  text: string,
  holder: Node | undefined,
  key: string,
  value: Plain,
  style: Style,
): string | undefined {
  const last = isMap(holder) ? holder.items.at(-1) : undefined;
  const [name, end] = [rangeOf(last?.key as Node | undefined), rangeOf(last?.value as Node | undefined)];
  if (!isMap(holder) || !name || !end) return undefined;
  const pair = flowText({ [key]: value }, style).slice(1, -1);
  if (holder.flow === true) {
    // A key on a line of its own is followed by another.
    const blank = /\s*$/.exec(text.slice(0, name.from))?.[0] ?? '';
    return spliced(text, { from: end.to, to: end.to }, `,${blank.includes('\n') ? blank : ' '}${pair}`);
  }
  const indent = ' '.repeat(name.from - lineStart(text, name.from));
  return afterLine(text, lastOf(text, end), `${indent}${pair}`, style);
}

function insertedInFlow(text: string, items: readonly Range[], at: number, put: string): string | undefined {
  const before = items[at - 1];
  const after = items[at];
  if (before === undefined) {
    return after && spliced(text, { from: after.from, to: after.from }, `${put}, `);
  }
  const earlier = items[at - 2];
  const between = after ?? before;
  const gap = text.slice((after ? before : earlier)?.to ?? before.to, between.from);
  // Two entries on two lines stay on two lines.
  const comma = /^\s*,\s*$/.test(gap) ? gap : ', ';
  return spliced(text, { from: before.to, to: before.to }, `${comma}${put}`);
}

function removedFromFlow(text: string, items: readonly Range[], at: number): string | undefined {
  const [item, before, after] = [items[at], items[at - 1], items[at + 1]];
  if (item === undefined) return undefined;
  if (after !== undefined) return spliced(text, { from: item.from, to: after.from }, '');
  return spliced(text, { from: before?.to ?? item.from, to: item.to }, '');
}

function insertedLine(
  text: string,
  items: readonly Range[],
  at: number,
  put: (indent: string) => string,
  style: Style,
): string | undefined {
  const near = items[Math.max(0, at - 1)];
  if (near === undefined) return undefined;
  const start = lineStart(text, near.from);
  const indent = /^ */.exec(text.slice(start))?.[0] ?? '';
  if (!text.slice(start).startsWith(`${indent}-`)) return undefined;
  const line = `${indent}- ${put(indent)}`;
  // Behind the item before, so that a comment above the next one stays with it.
  if (at > 0) return afterLine(text, lastOf(text, near), line, style);
  return spliced(text, { from: start, to: start }, `${line}${style.lineEnd}`);
}

function removedLines(text: string, item: Range | undefined): string | undefined {
  if (item === undefined) return undefined;
  const start = lineStart(text, item.from);
  // Something else on the same line cannot be taken along.
  if (!/^ *(- )?$/.test(text.slice(start, item.from))) return undefined;
  const end = text.indexOf('\n', lastOf(text, item));
  return spliced(text, { from: start, to: end === -1 ? text.length : end + 1 }, '');
}

function afterLine(text: string, at: number, line: string, { lineEnd }: Style): string {
  const end = text.indexOf('\n', at);
  if (end === -1) return `${text}${lineEnd}${line}${lineEnd}`;
  return spliced(text, { from: end + 1, to: end + 1 }, `${line}${lineEnd}`);
}

function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

/** The last character of a value: what runs over several lines may count the line end as its own. */
function lastOf(text: string, { from, to }: Range): number {
  return from + text.slice(from, to).trimEnd().length - 1;
}
