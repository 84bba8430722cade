/** Looks names of a template up in plain data: own members only, and an unknown name is an error. */
import { EngineError, type IssueData, type IssueDataBeside, type TailsOf } from '../../issues/issue.js';
import type { TemplateSpot } from '../../issues/sentences/render.js';
import { nearName } from './near-name.js';
import type { TemplateRecord, TemplateView } from './template-view.js';

/** Where the walk over a template stands. */
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

export const isRecord = (value: TemplateView): value is TemplateRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isList = (value: TemplateView): value is readonly TemplateView[] => Array.isArray(value);

/** Stops the filling with the template, line and column, what is known of the fault, and the name that was meant. */
export function fail<Fault extends TailsOf<'render.template'>>(
  fault: Fault,
  node: hbs.AST.Node,
  scope: Scope,
  data: IssueDataBeside<`render.template.${Fault}`, TemplateSpot>,
): never {
  const { line = 1, column = 0 } = node.loc?.start ?? {};
  const { available, missing, found }: IssueData = data;
  const nearest = Array.isArray(available) ? nearName(String(missing ?? found ?? ''), available) : undefined;
  const spot: TemplateSpot = { template: scope.template, line, column: column + 1 };
  const told = { ...spot, ...data, ...(nearest !== undefined && { nearest }) };
  throw new EngineError(`render.template.${fault}`, told as never);
}

/**
 * Value of an expression: a literal or a path.
 *
 * @param node - expression of the template's tree
 * @param scope - where the walk stands
 * @returns the value, which may be empty but must have been given
 * @throws EngineError `render.template.unknown-name` | `render.template.not-allowed`
 */
export function evaluate(node: hbs.AST.Expression, scope: Scope): TemplateView {
  switch (node.type) {
    case 'StringLiteral':
    case 'NumberLiteral':
    case 'BooleanLiteral':
      return (node as hbs.AST.StringLiteral).value;
    case 'PathExpression':
      return lookUp(node as hbs.AST.PathExpression, scope);
    default:
      return fail('not-allowed', node, scope, { found: node.type });
  }
}

function lookUp(path: hbs.AST.PathExpression, scope: Scope): TemplateView {
  const parts = [...path.parts].map(String);
  let value: TemplateView;
  const isNamed = path.depth === 0 && !/^(\.|this)/.test(path.original) && scope.names.has(parts[0] ?? '');
  if (path.data) value = scope.data;
  else if (isNamed) value = scope.names.get(parts.shift() ?? '');
  else {
    const at = scope.stack.length - 1 - path.depth;
    if (at < 0) fail('unknown-name', path, scope, { found: path.original, missing: '..', available: [] });
    value = scope.stack[at];
  }
  for (const part of parts) {
    if (isList(value) && (part === 'length' || Number(part) < value.length)) {
      value = part === 'length' ? value.length : value[Number(part)];
    } else if (isRecord(value) && Object.hasOwn(value, part)) value = value[part];
    else {
      const available = isRecord(value) ? Object.keys(value) : [];
      fail('unknown-name', path, scope, { found: path.original, missing: part, available });
    }
  }
  // Plain data only: a function is no value, whatever the type says.
  if (typeof value === 'function') fail('not-allowed', path, scope, { found: path.original });
  return value;
}
