/** From text to plain data with places: the YAML reader, bounded. */
import {
  Composer,
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  Parser,
  type YAMLError,
} from 'yaml';
import type { Coded, Place } from '../issues/issue.js';
import { keysOfMaps, MOST_KEYS } from './keys-of-maps.js';
import { boundedTokens } from './nesting.js';
import { type Path, type PendingIssue, pathText } from './pending-issue.js';
import { steeringSigns } from './steering-signs.js';

/** Longest file read [characters]; the largest sample has some six thousand. */
const LONGEST_FILE = 1_048_576;
/** Deepest nesting; eight tees in each other need about forty levels. */
const DEEPEST_NESTING = 64;
/** Where the count of columns, brackets and indicators stops; eight tees in each other reach some eighty. */
const DEEPEST_COUNT = 128;
/** How often anchors may be repeated. */
const MOST_ALIASES = 100;

/** What a text holds, with a way to find places in it. */
export interface ReadText {
  readonly content: unknown;
  readonly faults: readonly { readonly stated: Coded; readonly place: Place }[];
  readonly placeOf: (path: Path, at: PendingIssue['at']) => Place;
}

/** Nothing was read, and why. */
type Stop = (stated: Coded) => ReadText;

/**
 * Reads YAML 1.2 or JSON: no custom tags, no key twice, bounded size, depth and repetition. Never throws.
 *
 * @param text - the file [-]
 * @param file - its name, for places [-]
 * @returns content, or faults with their places [-]
 */
export function readText(text: string, file?: string): ReadText {
  const top: Place = { ...(file !== undefined && { file }), line: 1, column: 1, path: '' };
  const stop: Stop = (stated) => ({
    content: undefined,
    faults: [{ stated, place: top }],
    placeOf: () => top,
  });
  if (text.length > LONGEST_FILE)
    return stop({ code: 'input.file-too-large', data: { found: text.length, most: LONGEST_FILE } });
  if (text.includes('\0')) return stop({ code: 'input.not-text', data: {} });
  try {
    const tokens = boundedTokens(text, DEEPEST_COUNT);
    return tokens
      ? readDocument(text, tokens, top, stop)
      : stop({ code: 'input.too-deep', data: { most: DEEPEST_NESTING } });
  } catch (error) {
    if (error instanceof ReferenceError)
      return stop({ code: 'input.too-many-aliases', data: { most: MOST_ALIASES } });
    return stop({
      code: 'input.not-yaml',
      data: {
        reason: error instanceof Error ? (error.message.split('\n')[0] ?? '') : '',
      },
    });
  }
}

function readDocument(text: string, tokens: readonly string[], top: Place, stop: Stop): ReadText {
  const lines = new LineCounter();
  const [document, second] = composed(text, tokens, lines);
  const placeAt = (offset: number, path: Path): Place => {
    const { line, col } = lines.linePos(Math.min(offset, text.length));
    return { ...top, line: Math.max(1, line), column: Math.max(1, col), path: pathText(path) };
  };
  // Whatever follows at the same spot is the echo of the first fault there.
  const errors = [...document.errors, ...document.warnings];
  const seen = new Set<number>();
  const faults: { stated: Coded; place: Place }[] = [];
  for (const error of errors) {
    const [offset] = error.pos;
    if (!seen.has(offset)) faults.push({ stated: yamlFault(error), place: placeAt(offset, []) });
    seen.add(offset);
  }
  const placeOf = (path: Path, at: PendingIssue['at']): Place => placeAt(offsetOf(document, path, at), path);
  if (second)
    faults.push({
      stated: { code: 'input.many-documents', data: {} },
      place: placeAt(second.range?.[0] ?? 0, []),
    });
  if (faults.length > 0) return { content: undefined, faults, placeOf };
  if (isTooDeep(document.contents)) return stop({ code: 'input.too-deep', data: { most: DEEPEST_NESTING } });
  const { repeated, tooMany } = keysOfMaps(document);
  if (tooMany)
    faults.push({
      stated: { code: 'input.too-many-keys', data: { found: tooMany.found, most: MOST_KEYS } },
      place: placeAt(tooMany.offset, []),
    });
  for (const { key, first, again } of repeated)
    faults.push({
      stated: { code: 'input.key-twice', data: { key, first: placeAt(first, []).line } },
      place: placeAt(again, []),
    });
  for (const { sign, offset } of steeringSigns(document))
    faults.push({ stated: { code: 'input.steering-sign', data: { sign } }, place: placeAt(offset, []) });
  if (faults.length > 0) return { content: undefined, faults, placeOf };
  const content: unknown = document.toJS({ maxAliasCount: MOST_ALIASES });
  if (isTooDeepData(content)) return stop({ code: 'input.too-deep', data: { most: DEEPEST_NESTING } });
  return { content, faults: [], placeOf };
}

/** The documents of a text, the first of which is always there. */
function composed(
  text: string,
  tokens: readonly string[],
  lines: LineCounter,
): readonly [Document, ...Document[]] {
  const parser = new Parser(lines.addNewLine);
  // The reader would compare each key with each; `keysOfMaps` looks once.
  const composer = new Composer({ version: '1.2', schema: 'core', uniqueKeys: false });
  lines.addNewLine(0);
  const parts = [...tokens.flatMap((token) => [...parser.next(token)]), ...parser.end()];
  const [first, ...rest] = composer.compose(parts, true, text.length);
  if (!first) throw new TypeError('the reader gave no document');
  return [first, ...rest];
}

function yamlFault(error: YAMLError): Coded {
  if (error.code === 'TAG_RESOLVE_FAILED') return { code: 'input.tag', data: {} };
  if (error.code === 'TAB_AS_INDENT') return { code: 'input.tab', data: {} };
  return { code: 'input.not-yaml', data: { reason: error.message.split('\n')[0] ?? '' } };
}

/** Looks level by level, so that depth costs no stack. */
function isTooDeep(root: unknown): boolean {
  let level: readonly unknown[] = [root];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > DEEPEST_NESTING) return true;
    level = level.flatMap((node) =>
      isCollection(node)
        ? node.items.flatMap((item) => (isPair(item) ? [item.key, item.value] : [item]))
        : [],
    );
  }
  return false;
}

/** Aliases may nest what they repeat, even in themselves. */
function isTooDeepData(root: unknown): boolean {
  let level: readonly unknown[] = [root];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > DEEPEST_NESTING) return true;
    level = [
      ...new Set(
        level.flatMap((value) => (typeof value === 'object' && value !== null ? Object.values(value) : [])),
      ),
    ];
  }
  return false;
}

function offsetOf(document: Document, path: Path, at: PendingIssue['at']): number {
  if (at === 'holder')
    return offsetOf(
      document,
      path.slice(0, -1),
      path.length > 1 && typeof path.at(-2) === 'string' ? 'key' : 'value',
    );
  const key = at === 'key' ? keyNode(document, path) : undefined;
  const node = key ?? document.getIn(path, true);
  if (isNode(node) && !isAlias(node) && node.range) return node.range[0];
  if (isAlias(node) && node.range) return node.range[0];
  return path.length === 0
    ? 0
    : offsetOf(document, path.slice(0, -1), typeof path.at(-2) === 'string' ? 'key' : 'value');
}

function keyNode(document: Document, path: Path): Node | undefined {
  const holder = document.getIn(path.slice(0, -1), true);
  if (!isMap(holder)) return undefined;
  const pair = holder.items.find(({ key }) => isScalar(key) && String(key.value) === String(path.at(-1)));
  return isNode(pair?.key) ? pair.key : undefined;
}
