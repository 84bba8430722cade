/** Reads the paths of a template and looks each of them up in views, also in branches a fixture does not take. */
import Handlebars from 'handlebars';

type Node = Readonly<Record<string, unknown>> & { readonly type: string };
/** What may stand in a place of the template: the values of all views there. */
type Candidates = readonly unknown[];

/**
 * Paths of a template that no view holds.
 *
 * @param template - text
 * @param views - views of the section in several reviews
 * @returns `line: path` for each that is in none of them
 */
export function missingPaths(template: string, views: Candidates): readonly string[] {
  const missing: string[] = [];
  const program = (node: Node | undefined, stack: readonly Candidates[]): void => {
    for (const statement of (node?.body ?? []) as readonly Node[]) visit(statement, stack);
  };
  const look = (path: Node, stack: readonly Candidates[]): Candidates => {
    if (path.type !== 'PathExpression' || path.data === true) return [];
    let values = stack.at(-1 - Number(path.depth)) ?? [];
    for (const part of path.parts as readonly string[]) {
      values = values.flatMap((value) =>
        isRecord(value) && Object.hasOwn(value, part) ? [value[part]] : [],
      );
    }
    if (values.length === 0) missing.push(`${lineOf(path)}: ${String(path.original)}`);
    return values;
  };
  const visit = (node: Node, stack: readonly Candidates[]): void => {
    if (node.type === 'MustacheStatement') look(node.path as Node, stack);
    if (node.type !== 'BlockStatement') return;
    const [argument] = node.params as readonly Node[];
    if (argument === undefined) return;
    const values = look(argument, stack);
    const helper = String((node.path as Node).original);
    const inside =
      helper === 'each' ? values.flatMap((value) => (Array.isArray(value) ? value : [])) : values;
    const enters = helper === 'each' || helper === 'with';
    program(node.program as Node, enters ? [...stack, inside] : stack);
    program(node.inverse as Node | undefined, stack);
  };
  program(Handlebars.parse(template) as unknown as Node, [views]);
  return missing;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function lineOf(node: Node): number {
  return (node.loc as { readonly start: { readonly line: number } }).start.line;
}
