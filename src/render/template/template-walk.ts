/** The walk over a template's tree: looks names up, repeats, chooses, and writes escaped text within bounds. */
import { EngineError, type IssueData } from '../../issues/issue.js';
import type { TemplateRecord, TemplateView } from './fill-template.js';

/** Largest filled text, in characters. */
export const LARGEST_OUTPUT = 5_000_000;
/** Most steps of one filling: repeats, partials and values together. */
const MOST_STEPS = 2_000_000;
/** Deepest nesting of blocks and partials. */
const DEEPEST = 60;

const BLOCK_HELPERS = ['if', 'unless', 'each', 'with'];
const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Where the walk stands. */
export interface Scope {
  readonly template: string;
  /** Contexts from the outermost inwards. */
  readonly stack: readonly TemplateView[];
  /** Values written with @: index, first, last, key, root. */
  readonly data: Readonly<Record<string, TemplateView>>;
  readonly depth: number;
  /** Block parameters: `each rows as |row|`. */
  readonly names: ReadonlyMap<string, TemplateView>;
}

const isRecord = (value: TemplateView): value is TemplateRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isList = (value: TemplateView): value is readonly TemplateView[] => Array.isArray(value);
/** Empty text, empty list, zero, false and nothing choose the other branch. */
const holds = (value: TemplateView): boolean => (isList(value) ? value.length > 0 : Boolean(value));

export class Walk {
  private readonly parts: string[] = [];
  private size = 0;
  private steps = 0;

  constructor(
    private readonly partial: (name: string) => hbs.AST.Program | undefined,
    private readonly partialNames: readonly string[],
  ) {}

  text(): string {
    return this.parts.join('');
  }

  program(program: hbs.AST.Program, scope: Scope): void {
    for (const statement of program.body) this.statement(statement, scope);
  }

  private statement(node: hbs.AST.Statement, scope: Scope): void {
    this.steps += 1;
    if (this.steps > MOST_STEPS) this.fail('too-large', node, scope, { largest: MOST_STEPS });
    if (scope.depth > DEEPEST) this.fail('not-allowed', node, scope, { found: `nesting deeper than ${DEEPEST}` });
    switch (node.type) {
      case 'ContentStatement':
        return this.write((node as hbs.AST.ContentStatement).value, node, scope);
      case 'CommentStatement':
        return;
      case 'MustacheStatement':
        return this.mustache(node as hbs.AST.MustacheStatement, scope);
      case 'BlockStatement':
        return this.block(node as hbs.AST.BlockStatement, scope);
      case 'PartialStatement':
        return this.callPartial(node as hbs.AST.PartialStatement, scope);
      default:
        return this.fail('not-allowed', node, scope, { found: node.type });
    }
  }

  private mustache(node: hbs.AST.MustacheStatement, scope: Scope): void {
    if (node.params.length > 0 || node.hash) {
      const found = (node.path as hbs.AST.PathExpression).original ?? 'value';
      this.fail('unknown-helper', node, scope, { found: String(found), available: BLOCK_HELPERS.map((name) => `#${name}`) });
    }
    const value = this.value(node.path as hbs.AST.Expression, scope);
    if (value === null || value === undefined) return;
    if (typeof value === 'object') this.fail('not-text', node, scope, { found: (node.path as hbs.AST.PathExpression).original });
    const text = String(value);
    this.write(node.escaped ? text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign) : text, node, scope);
  }

  private block(node: hbs.AST.BlockStatement, scope: Scope): void {
    const helper = node.path.original;
    const argument = node.params[0];
    if (!BLOCK_HELPERS.includes(String(helper)) || node.params.length !== 1 || !argument || node.hash)
      this.fail('unknown-helper', node, scope, { found: String(helper), available: BLOCK_HELPERS.map((name) => `#${name}`) });
    const value = this.value(argument as hbs.AST.Expression, scope);
    const inside: Scope = { ...scope, depth: scope.depth + 1 };
    const otherwise = (): void => (node.inverse ? this.program(node.inverse, inside) : undefined);
    if (helper === 'each') return this.each(node, value, inside, otherwise);
    const holding = holds(value) !== (helper === 'unless');
    // The reader leaves no program where `{{^}}` stands alone.
    if (!holding) return otherwise();
    if (!node.program) return;
    const within = helper === 'with' ? enter(inside, value, node.program.blockParams, [value]) : inside;
    this.program(node.program, within);
  }

  private each(node: hbs.AST.BlockStatement, value: TemplateView, scope: Scope, otherwise: () => void): void {
    if (!holds(value)) return otherwise();
    if (!isList(value) && !isRecord(value))
      return this.fail('not-a-list', node, scope, { found: String((node.params[0] as hbs.AST.PathExpression).original) });
    const entries: readonly (readonly [string | number, TemplateView])[] = isList(value)
      ? value.map((item, i) => [i, item] as const)
      : Object.entries(value);
    entries.forEach(([key, item], i) => {
      const data = { ...scope.data, index: i, key, first: i === 0, last: i === entries.length - 1 };
      this.steps += 1;
      if (this.steps > MOST_STEPS) this.fail('too-large', node, scope, { largest: MOST_STEPS });
      this.program(node.program, enter({ ...scope, data }, item, node.program.blockParams, [item, key]));
    });
  }

  private callPartial(node: hbs.AST.PartialStatement, scope: Scope): void {
    if (node.name.type !== 'PathExpression') this.fail('not-allowed', node, scope, { found: 'a partial chosen by a value' });
    const name = String((node.name as hbs.AST.PathExpression).original);
    const program = this.partial(name);
    if (!program) return this.fail('unknown-partial', node, scope, { found: name, available: this.partialNames });
    const base = node.params[0] ? this.value(node.params[0] as hbs.AST.Expression, scope) : scope.stack.at(-1);
    const named = (node.hash?.pairs ?? []).map((pair) => [pair.key, this.value(pair.value, scope)] as const);
    const context = named.length > 0 ? { ...(isRecord(base) ? base : {}), ...Object.fromEntries(named) } : base;
    this.program(program, { ...scope, template: name, stack: [...scope.stack, context], depth: scope.depth + 1, names: new Map() });
  }

  private value(node: hbs.AST.Expression, scope: Scope): TemplateView {
    switch (node.type) {
      case 'StringLiteral':
      case 'NumberLiteral':
      case 'BooleanLiteral':
        return (node as hbs.AST.StringLiteral).value;
      case 'PathExpression':
        return this.lookUp(node as hbs.AST.PathExpression, scope);
      default:
        return this.fail('not-allowed', node, scope, { found: node.type });
    }
  }

  private lookUp(path: hbs.AST.PathExpression, scope: Scope): TemplateView {
    const parts = [...path.parts].map(String);
    let value: TemplateView;
    if (path.data) value = scope.data as TemplateRecord;
    else if (path.depth === 0 && !/^(\.|this)/.test(path.original) && scope.names.has(parts[0] ?? ''))
      value = scope.names.get(parts.shift() ?? '');
    else {
      const at = scope.stack.length - 1 - path.depth;
      if (at < 0) this.fail('unknown-name', path, scope, { found: path.original, missing: '..', available: [] });
      value = scope.stack[at];
    }
    for (const part of parts) {
      if (isList(value) && (part === 'length' || /^\d+$/.test(part))) {
        value = part === 'length' ? value.length : value[Number(part)];
      } else if (isRecord(value) && Object.hasOwn(value, part)) value = value[part];
      else {
        const available = isRecord(value) ? Object.keys(value) : [];
        this.fail('unknown-name', path, scope, { found: path.original, missing: part, available });
      }
    }
    if (typeof value === 'function') this.fail('not-allowed', path, scope, { found: path.original });
    return value;
  }

  private write(text: string, node: hbs.AST.Node, scope: Scope): void {
    this.size += text.length;
    if (this.size > LARGEST_OUTPUT) this.fail('too-large', node, scope, { largest: LARGEST_OUTPUT });
    this.parts.push(text);
  }

  private fail(code: string, node: hbs.AST.Node, scope: Scope, data: IssueData): never {
    throw new EngineError(`render.template.${code}`, { template: scope.template, line: node.loc?.start.line ?? 1, ...data });
  }
}

/** Steps into a value, giving it the names after `as`. */
function enter(scope: Scope, value: TemplateView, blockNames: readonly string[] | undefined, given: readonly TemplateView[]): Scope {
  const names = new Map(scope.names);
  blockNames?.forEach((name, i) => {
    names.set(name, given[i]);
  });
  return { ...scope, stack: [...scope.stack, value], names };
}
