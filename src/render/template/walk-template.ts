/** The walk over a template's tree: repeats, chooses, calls partials, and writes escaped text within bounds. */

import { evaluate, fail, isList, isRecord, type Scope } from './look-up.js';
import type { Origins, TemplatePlace } from './origins.js';
import type { TemplateView } from './template-view.js';

/** Largest filled text, in characters. */
export const LARGEST_OUTPUT = 5_000_000;
/** Most steps of one filling: repeats, partials and values together. */
const MOST_STEPS = 2_000_000;
/** Deepest nesting of blocks and partials. */
export const DEEPEST = 60;

const BLOCK_HELPERS = ['if', 'unless', 'each', 'with'];
const HELPER_NAMES = BLOCK_HELPERS.map((name) => `#${name}`);
const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Partials by name, read when they are first called. */
export interface Partials {
  readonly names: readonly string[];
  readonly find: (name: string) => hbs.AST.Program | undefined;
}

/** Empty text, empty list, zero, false and nothing choose the other branch. */
const holds = (value: TemplateView): boolean => (isList(value) ? value.length > 0 : Boolean(value));

/** Words of a path, for messages. */
const wordsOf = (node: hbs.AST.Expression): string =>
  String((node as hbs.AST.PathExpression).original ?? node.type);

/**
 * Fills a template that has been read.
 *
 * @param program - tree of the template
 * @param name - name of the template, for messages
 * @param view - plain data
 * @param partials - partials by name
 * @param origins - where to note what comes from where
 * @returns the filled text
 */
export function walkTemplate(
  program: hbs.AST.Program,
  name: string,
  view: TemplateView,
  partials: Partials,
  origins?: Origins,
): string {
  const parts: string[] = [];
  let size = 0;
  let steps = 0;

  const step = (node: hbs.AST.Node, scope: Scope): void => {
    steps += 1;
    if (steps > MOST_STEPS) fail('too-large', node, scope, { largest: MOST_STEPS });
  };

  const write = (text: string, node: hbs.AST.Node, scope: Scope): void => {
    size += text.length;
    if (size > LARGEST_OUTPUT) fail('too-large', node, scope, { largest: LARGEST_OUTPUT });
    parts.push(text);
    if (!origins) return;
    const { line = 1, column = 0 } = node.loc?.start ?? {};
    const place = { template: scope.template, line, column: column + 1 };
    const original =
      node.type === 'ContentStatement' ? (node as hbs.AST.ContentStatement).original : undefined;
    if (original === undefined) origins.note(text, place, false);
    else origins.note(text, afterStripped(String(original), text, place), true);
  };

  const walk = (body: hbs.AST.Program, scope: Scope): void => {
    if (scope.depth > DEEPEST) fail('not-allowed', body, scope, { found: `nesting deeper than ${DEEPEST}` });
    for (const statement of body.body) walkStatement(statement, scope);
  };

  const walkStatement = (node: hbs.AST.Statement, scope: Scope): void => {
    step(node, scope);
    if (node.type === 'ContentStatement') write((node as hbs.AST.ContentStatement).value, node, scope);
    else if (node.type === 'MustacheStatement') walkValue(node as hbs.AST.MustacheStatement, scope);
    else if (node.type === 'BlockStatement') walkBlock(node as hbs.AST.BlockStatement, scope);
    else if (node.type === 'PartialStatement') walkPartial(node as hbs.AST.PartialStatement, scope);
    else if (node.type !== 'CommentStatement') fail('not-allowed', node, scope, { found: node.type });
  };

  const walkValue = (node: hbs.AST.MustacheStatement, scope: Scope): void => {
    if (node.params.length > 0 || node.hash)
      fail('unknown-helper', node, scope, { found: wordsOf(node.path), available: HELPER_NAMES });
    const value = evaluate(node.path, scope);
    if (value === null || value === undefined) return;
    if (typeof value === 'object') fail('not-text', node, scope, { found: wordsOf(node.path) });
    const text = String(value);
    write(node.escaped ? text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign) : text, node, scope);
  };

  const walkBlock = (node: hbs.AST.BlockStatement, scope: Scope): void => {
    const helper = wordsOf(node.path);
    const [argument] = node.params;
    if (!argument || node.params.length !== 1 || node.hash || !BLOCK_HELPERS.includes(helper))
      fail('unknown-helper', node, scope, { found: helper, available: HELPER_NAMES });
    const value = evaluate(argument, scope);
    const inside: Scope = { ...scope, depth: scope.depth + 1 };
    // The reader leaves a branch out where a block has none.
    const { program: first, inverse: other } = node as {
      program?: hbs.AST.Program;
      inverse?: hbs.AST.Program;
    };
    if (holds(value) === (helper === 'unless')) {
      if (other) walk(other, inside);
    } else if (first && helper === 'each') repeat(node, first, value, inside);
    else if (first) walk(first, helper === 'with' ? enter(inside, value, first, [value]) : inside);
  };

  const repeat = (
    node: hbs.AST.BlockStatement,
    body: hbs.AST.Program,
    value: TemplateView,
    scope: Scope,
  ): void => {
    if (!isList(value) && !isRecord(value))
      fail('not-a-list', node, scope, { found: wordsOf(node.params[0] ?? node.path) });
    const entries: readonly (readonly [string | number, TemplateView])[] = isList(value)
      ? value.map((item, i) => [i, item] as const)
      : Object.entries(value);
    entries.forEach(([key, item], i) => {
      step(node, scope);
      const data = { ...scope.data, index: i, key, first: i === 0, last: i === entries.length - 1 };
      walk(body, enter({ ...scope, data }, item, body, [item, key]));
    });
  };

  const walkPartial = (node: hbs.AST.PartialStatement, scope: Scope): void => {
    if (node.name.type !== 'PathExpression')
      fail('not-allowed', node, scope, { found: 'a partial chosen by a value' });
    const called = wordsOf(node.name as hbs.AST.PathExpression);
    const body = partials.find(called);
    if (!body) fail('unknown-partial', node, scope, { found: called, available: partials.names });
    const [given] = node.params;
    const base = given ? evaluate(given, scope) : scope.stack.at(-1);
    const named = Object.fromEntries(
      (node.hash?.pairs ?? []).map((pair) => [pair.key, evaluate(pair.value, scope)]),
    );
    const context = Object.keys(named).length > 0 ? { ...(isRecord(base) ? base : {}), ...named } : base;
    const stack = [...scope.stack, context];
    walk(body, { ...scope, template: called, stack, depth: scope.depth + 1, names: new Map() });
  };

  walk(program, { template: name, stack: [view], data: { root: view }, depth: 0, names: new Map() });
  return parts.join('');
}

/** The reader takes blanks round a block that stands alone: where what is left begins. */
function afterStripped(original: string, text: string, place: TemplatePlace): TemplatePlace {
  const at = original.endsWith(text) ? original.length - text.length : Math.max(0, original.indexOf(text));
  const before = original.slice(0, at).split('\n');
  const last = before.at(-1)?.length ?? 0;
  return {
    ...place,
    line: place.line + before.length - 1,
    column: before.length === 1 ? place.column + last : last + 1,
  };
}

/** Steps into a value, giving it the names after `as`. */
function enter(
  scope: Scope,
  value: TemplateView,
  body: hbs.AST.Program,
  given: readonly TemplateView[],
): Scope {
  const names = new Map(scope.names);
  body.blockParams?.forEach((name, i) => {
    names.set(name, given[i]);
  });
  return { ...scope, stack: [...scope.stack, value], names };
}
