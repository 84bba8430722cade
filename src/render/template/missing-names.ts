/**
 * Names of a template that nothing is called, also in branches that no review at hand takes: the tree is walked with
 * all that could stand in each place, the values of many views together.
 */
import { readTemplate } from './fill-template.js';
import { isList, isRecord } from './look-up.js';
import { nearName } from './near-name.js';
import type { TemplateView } from './template-view.js';

/** A name that nothing is called. */
export interface MissingName {
  readonly template: string;
  readonly line: number;
  readonly column: number;
  /** As written. */
  readonly found: string;
  /** What there is in its place. */
  readonly available: readonly string[];
  readonly nearest?: string;
}

type Candidates = readonly TemplateView[];

/** Deepest nesting of partials looked into. */
const DEEPEST_PARTIALS = 8;

/**
 * Looks a template through.
 *
 * @param name - name of the template
 * @param partials - all templates by name
 * @param views - what it may be filled with
 * @returns names that none of the views has, in the order of the template
 */
export function missingNames(
  name: string,
  partials: Readonly<Record<string, string>>,
  views: Candidates,
): readonly MissingName[] {
  const missing: MissingName[] = [];

  const lookUp = (node: hbs.AST.Expression, stack: readonly Candidates[], template: string): Candidates => {
    if (node.type !== 'PathExpression') return [];
    const path = node as hbs.AST.PathExpression;
    // Names with @ and after `as` are of the block, which filling judges.
    if (path.data) return [];
    let values = stack.at(-1 - path.depth) ?? [];
    for (const part of [...path.parts].map(String)) {
      const inside = values.flatMap((value): Candidates => {
        if (isRecord(value) && Object.hasOwn(value, part)) return [value[part]];
        return isList(value) && (part === 'length' || /^\d+$/.test(part))
          ? [part === 'length' ? 0 : value[Number(part)]]
          : [];
      });
      if (inside.length === 0 && values.length > 0) {
        const available = [
          ...new Set(values.flatMap((value) => (isRecord(value) ? Object.keys(value) : []))),
        ];
        const nearest = nearName(part, available);
        const { line = 1, column = 0 } = path.loc?.start ?? {};
        missing.push({
          template,
          line,
          column: column + 1,
          found: path.original,
          available,
          ...(nearest !== undefined && { nearest }),
        });
      }
      values = inside;
    }
    return values;
  };

  const walk = (
    program: hbs.AST.Program | undefined,
    stack: readonly Candidates[],
    template: string,
    depth: number,
  ): void => {
    for (const node of program?.body ?? []) visit(node, stack, template, depth);
  };

  const visit = (
    node: hbs.AST.Statement,
    stack: readonly Candidates[],
    template: string,
    depth: number,
  ): void => {
    if (node.type === 'MustacheStatement')
      lookUp((node as hbs.AST.MustacheStatement).path as hbs.AST.Expression, stack, template);
    if (node.type === 'PartialStatement') {
      const { name: called, params } = node as hbs.AST.PartialStatement;
      const partial = called.type === 'PathExpression' ? (called as hbs.AST.PathExpression).original : '';
      const text = Object.hasOwn(partials, partial) ? partials[partial] : undefined;
      const hasHash = (node as hbs.AST.PartialStatement).hash !== undefined;
      if (text === undefined || hasHash || depth >= DEEPEST_PARTIALS) return;
      const inside = params[0] ? lookUp(params[0], stack, template) : (stack.at(-1) ?? []);
      walk(readTemplate(text, partial), [...stack, inside], partial, depth + 1);
    }
    if (node.type !== 'BlockStatement') return;
    const block = node as hbs.AST.BlockStatement;
    const [argument] = block.params;
    // Names given by `as` would have to be followed; such blocks are judged when they are filled.
    if (!argument || (block.program?.blockParams?.length ?? 0) > 0) return;
    const values = lookUp(argument, stack, template);
    const helper = String((block.path as hbs.AST.PathExpression).original);
    const entries = (value: TemplateView): Candidates =>
      isList(value) ? value : isRecord(value) ? Object.values(value) : [];
    const inside = helper === 'each' ? values.flatMap(entries) : values.filter((value) => value !== false);
    const enters = helper === 'each' || helper === 'with';
    // What no view has anything of cannot be judged.
    if (!enters || inside.length > 0)
      walk(block.program, enters ? [...stack, inside] : stack, template, depth);
    walk(block.inverse as hbs.AST.Program | undefined, stack, template, depth);
  };

  const text = Object.hasOwn(partials, name) ? partials[name] : undefined;
  if (text !== undefined) walk(readTemplate(text, name), [views], name, 0);
  return missing;
}
