/**
 * Fills a template. Handlebars reads the text; the walk over its tree is ours and runs no generated code: only own
 * members of plain data are seen, every unknown name is an error with its line, and the size of what comes out is
 * bounded, since a firm's templates come from strangers.
 */
import Handlebars from 'handlebars';
import { EngineError } from '../../issues/issue.js';
import { openOrigins, type TemplatePlace } from './origins.js';
import type { TemplateView } from './template-view.js';
import { DEEPEST, walkTemplate } from './walk-template.js';

export interface TemplateOptions {
  /** Name of the template, for messages. */
  readonly name?: string;
  /** Texts that `{{> name}}` may call. */
  readonly partials?: Readonly<Record<string, string>>;
}

/** A filled template that knows where each of its places was written. */
export interface FilledTemplate {
  readonly text: string;
  /** Line and column of the text, counted from 1, to the place in a template. */
  readonly placeOf: (line: number, column: number) => TemplatePlace | undefined;
}

/** Largest template or partial that is read, in characters. */
const LARGEST_TEMPLATE = 500_000;
/** Most branches `{{else if}}` of one template. */
const MOST_CHAINED = 200;

/**
 * Fills a template with a view. Understands `{{path}}`, `{{{path}}}`, `if`, `unless`, `each`, `with`, `else`,
 * partials with named values, and comments. Values are escaped for the markup.
 *
 * @param template - text of the template
 * @param view - plain data
 * @param options - name for messages, and partials
 * @returns the filled text, at most 5 million characters
 * @throws EngineError `render.template.broken` | `.unknown-name` | `.unknown-helper` | `.unknown-partial` |
 *   `.not-text` | `.not-a-list` | `.not-allowed` | `.too-large` with template, line, column, what is available and what was probably meant
 */
export function fillTemplate(template: string, view: TemplateView, options: TemplateOptions = {}): string {
  return fillTraced(template, view, options).text;
}

/** As `fillTemplate`, with the place in the templates that every place of the text comes from. */
export function fillTraced(
  template: string,
  view: TemplateView,
  options: TemplateOptions = {},
): FilledTemplate {
  const partials = options.partials ?? {};
  const parsed = new Map<string, hbs.AST.Program>();
  const find = (name: string): hbs.AST.Program | undefined => {
    const text = Object.hasOwn(partials, name) ? partials[name] : undefined;
    if (text === undefined) return undefined;
    const known = parsed.get(name) ?? readTemplate(text, name);
    parsed.set(name, known);
    return known;
  };
  const name = options.name ?? 'template';
  const origins = openOrigins();
  const called = { names: Object.keys(partials), find };
  const text = walkTemplate(readTemplate(template, name), name, view, called, origins);
  return { text, placeOf: origins.placeOf };
}

/** Reads a template, within bounds. @throws EngineError `render.template.broken` | `.too-large` | `.not-allowed` */
export function readTemplate(text: string, template: string): hbs.AST.Program {
  if (text.length > LARGEST_TEMPLATE)
    throw new EngineError('render.template.too-large', {
      template,
      line: 1,
      column: 1,
      size: text.length,
      largest: LARGEST_TEMPLATE,
    });
  refuseDeep(text, template);
  try {
    return Handlebars.parse(text);
  } catch (error) {
    const message = (error as Error).message;
    throw new EngineError('render.template.broken', { template, ...placeOfBreak(message, text) });
  }
}

/**
 * Counts what is open before the reader sees the text: its time grows with the square of the nesting, and ten thousand
 * open blocks would keep it busy for minutes.
 */
function refuseDeep(text: string, template: string): void {
  let open = 0;
  let chained = 0;
  for (const { 1: kind, index } of text.matchAll(/\{\{~?\s*(#|\^(?=\s*[\w.[])|\/|else\s+\w)/g)) {
    if (kind === '/') open -= 1;
    else if (kind === '#' || kind === '^') open += 1;
    else chained += 1;
    if (open <= DEEPEST && chained <= MOST_CHAINED) continue;
    const before = text.slice(0, index).split('\n');
    const place = { template, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    const found = open > DEEPEST ? `nesting deeper than ${DEEPEST}` : `more than ${MOST_CHAINED} else if`;
    throw new EngineError('render.template.not-allowed', { ...place, found });
  }
}

/** Where the reader stopped, as far as it says: `Parse error on line 3:`, or the line and column at the end. */
function placeOfBreak(
  message: string,
  text: string,
): { readonly line: number; readonly column: number; readonly reason: string } {
  const reason = message.split('\n').at(-1) ?? message;
  const end = / - (\d+):(\d+)$/.exec(message);
  if (end) return { line: Number(end[1]), column: Number(end[2]) + 1, reason: message };
  const line = Number(/line (\d+)/.exec(message)?.[1] ?? 1);
  // The reader shows the text round the spot and a rule of dashes up to it.
  const [, shown = '', rule = ''] = message.split('\n');
  const row = text.split('\n', line)[line - 1] ?? '';
  let before = shown.slice(0, Math.max(0, rule.indexOf('^'))).replace(/^\.\.\./, '');
  // What it shows runs over the end of the line above: the longest end of it that this line holds is the place.
  while (before !== '' && !row.includes(before)) before = before.slice(1);
  return { line, column: before === '' ? 1 : row.indexOf(before) + before.length + 1, reason };
}
