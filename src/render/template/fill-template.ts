/**
 * Fills a template. Handlebars reads the text; the walk over its tree is ours and runs no generated code: only own
 * members of plain data are seen, every unknown name is an error with its line, and the size of what comes out is
 * bounded, since a firm's templates come from strangers.
 */
import Handlebars from 'handlebars';
import { EngineError } from '../../issues/issue.js';
import type { TemplateView } from './template-view.js';
import { walkTemplate } from './walk-template.js';

export interface TemplateOptions {
  /** Name of the template, for messages. */
  readonly name?: string;
  /** Texts that `{{> name}}` may call. */
  readonly partials?: Readonly<Record<string, string>>;
}

/** Largest template or partial that is read, in characters. */
const LARGEST_TEMPLATE = 500_000;

/**
 * Fills a template with a view. Understands `{{path}}`, `{{{path}}}`, `if`, `unless`, `each`, `with`, `else`,
 * partials with named values, and comments. Values are escaped for the markup.
 *
 * @param template - text of the template
 * @param view - plain data
 * @param options - name for messages, and partials
 * @returns the filled text, at most 5 million characters
 * @throws EngineError `render.template.broken` | `.unknown-name` | `.unknown-helper` | `.unknown-partial` |
 *   `.not-text` | `.not-a-list` | `.not-allowed` | `.too-large` with template, line and what is available
 */
export function fillTemplate(template: string, view: TemplateView, options: TemplateOptions = {}): string {
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
  return walkTemplate(readTemplate(template, name), name, view, { names: Object.keys(partials), find });
}

function readTemplate(text: string, template: string): hbs.AST.Program {
  if (text.length > LARGEST_TEMPLATE)
    throw new EngineError('render.template.too-large', {
      template,
      line: 1,
      size: text.length,
      largest: LARGEST_TEMPLATE,
    });
  try {
    return Handlebars.parse(text);
  } catch (error) {
    const message = (error as Error).message;
    const line = Number(/line (\d+)/.exec(message)?.[1] ?? / - (\d+):/.exec(message)?.[1] ?? 1);
    const reason = message.split('\n').at(-1) ?? message;
    throw new EngineError('render.template.broken', { template, line, reason });
  }
}
