/** The closed list of what a template may write: each element, what may stand inside it, and its attributes. */

/** What stands inside an element. `mixed` takes inline content or blocks. */
export type Content = 'blocks' | 'inline' | 'mixed' | 'empty' | readonly string[];

/** What an attribute may say: one of a list, or text judged by a pattern with a name for messages. */
export type AttributeRule =
  | { readonly oneOf: readonly string[] }
  | { readonly pattern: RegExp; readonly wanted: string };

export interface ElementRule {
  readonly content: Content;
  readonly required: readonly string[];
  readonly attributes: Readonly<Record<string, AttributeRule>>;
}

const text: AttributeRule = { pattern: /\S/, wanted: 'a text' };
const anyText: AttributeRule = { pattern: /^/, wanted: 'a text' };
const id: AttributeRule = {
  pattern: /^[A-Za-z][\w.:-]*$/,
  wanted: 'an id: a letter, then letters, digits, - . : _',
};
const boxName: AttributeRule = {
  pattern: /^[A-Za-z0-9][A-Za-z0-9-]*(\.[A-Za-z0-9][A-Za-z0-9-]*)*$/,
  wanted: 'a name of words separated by dots; in a word letters, digits and hyphens',
};
const span: AttributeRule = { pattern: /^([1-9]|[1-3]\d)$/, wanted: 'a whole number from 1 to 39' };
const columns: AttributeRule = {
  pattern:
    /^\s*(left|right|centre|decimal)(:\d{1,3}(\.\d+)?)?(\s+(left|right|centre|decimal)(:\d{1,3}(\.\d+)?)?)*\s*$/,
  wanted:
    'a word for each column: left, right, centre or decimal, with a share if wished, as in "left:3 decimal:1"',
};
const shares: AttributeRule = {
  pattern: /^\s*\d{1,3}(\.\d+)?(\s+\d{1,3}(\.\d+)?)*\s*$/,
  wanted: 'a number for each side, by which the width is shared, as in "3 2"',
};

const rule = (
  content: Content,
  attributes: Record<string, AttributeRule> = {},
  required: readonly string[] = [],
): ElementRule => ({ content, attributes, required });

export const BLOCKS = [
  'section',
  'p',
  'list',
  'note',
  'table',
  'figure',
  'calculation',
  'facts',
  'signatures',
  'readings',
  'keep',
  'columns',
  'beside',
  'contents',
  'page-break',
] as const;

export const INLINE = ['b', 'i', 'sub', 'sup', 'small', 'br', 'ref', 'verdict'] as const;

export const VERDICTS = ['meets', 'exceeds', 'cannot-tell', 'does-not-apply'] as const;
export type VerdictWord = (typeof VERDICTS)[number];

export const VOCABULARY: Readonly<Record<string, ElementRule>> = {
  review: rule(
    ['letterhead', ...BLOCKS],
    {
      title: text,
      language: { pattern: /^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, wanted: 'a language such as en-US' },
    },
    ['title', 'language'],
  ),
  letterhead: rule(['p'], { name: text, logo: { oneOf: ['none'] } }, ['name']),
  section: rule('blocks', { id, title: text, level: { oneOf: ['1', '2'] }, page: { oneOf: ['new'] } }, [
    'id',
    'title',
  ]),
  p: rule('inline', { role: { oneOf: ['lead', 'small', 'verdict', 'caution'] } }),
  list: rule(['item'], { ordered: { oneOf: ['yes', 'no'] } }),
  item: rule('mixed'),
  note: rule('mixed', { kind: { oneOf: ['caution', 'information', 'assumption'] }, title: anyText }, [
    'kind',
  ]),
  table: rule(['head', 'row'], { caption: anyText, id, columns }, ['columns']),
  head: rule(['row']),
  row: rule(['cell'], { id, role: { oneOf: ['total', 'group', 'exceeds', 'remark'] } }),
  cell: rule('inline', { span, to: id }),
  figure: rule('empty', { drawing: text, caption: anyText, width: { oneOf: ['full', 'half'] } }, ['drawing']),
  calculation: rule(['step'], { id, title: text }, ['id', 'title']),
  step: rule('inline', { role: { oneOf: ['formula', 'numbers', 'result', 'where', 'source'] } }, ['role']),
  facts: rule(['fact'], { columns: { oneOf: ['1', '2', '3'] } }),
  fact: rule('inline', { label: text }, ['label']),
  signatures: rule(['line']),
  line: rule('empty', { label: text }, ['label']),
  readings: rule(
    ['reading'],
    { what: text, filled: text, 'left-out': text, abreast: { oneOf: ['1', '2', '3'] } },
    ['what', 'filled', 'left-out'],
  ),
  reading: rule(['aside', 'box'], { label: text, width: { oneOf: ['full'] } }, ['label']),
  aside: rule('inline', { role: { oneOf: ['expected', 'limit', 'source'] } }, ['role']),
  box: rule(
    ['choice'],
    {
      id: boxName,
      kind: { oneOf: ['number', 'text', 'choice', 'tick', 'date', 'signature'] },
      tip: text,
      label: anyText,
      unit: anyText,
      expected: anyText,
      lines: { pattern: /^([1-9]|1\d|20)$/, wanted: 'a whole number from 1 to 20' },
      place: { oneOf: ['row', 'left-out'] },
    },
    ['id', 'kind', 'tip'],
  ),
  choice: rule('inline'),
  keep: rule('blocks'),
  columns: rule('blocks', { count: { oneOf: ['2', '3'] } }),
  beside: rule(['side'], { shares }),
  side: rule('mixed'),
  contents: rule('empty', { title: anyText, level: { oneOf: ['1', '2'] } }),
  'page-break': rule('empty'),
  b: rule('inline'),
  i: rule('inline'),
  sub: rule('inline'),
  sup: rule('inline'),
  small: rule('inline'),
  br: rule('empty'),
  ref: rule('inline', { to: id }, ['to']),
  verdict: rule('empty', { is: { oneOf: VERDICTS } }, ['is']),
};

/** Blocks that take the whole width of the page: nothing else may hold them in. */
const WHOLE_WIDTH: ReadonlySet<string> = new Set(['section', 'columns']);

/** Names that may stand inside an element. */
export function allowedInside(name: string): readonly string[] {
  const content = VOCABULARY[name]?.content ?? 'empty';
  if (content === 'blocks') return BLOCKS;
  if (content === 'inline') return INLINE;
  if (content === 'mixed') return [...BLOCKS.filter((block) => !WHOLE_WIDTH.has(block)), ...INLINE];
  return content === 'empty' ? [] : content;
}

/** Whether words may stand directly inside an element. */
export const takesText = (name: string): boolean => {
  const content = VOCABULARY[name]?.content;
  return content === 'inline' || content === 'mixed';
};

export const isInline = (name: string): boolean => (INLINE as readonly string[]).includes(name);
