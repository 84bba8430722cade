/**
 * Expressions of worked calculations: one source text, one tree; the tree is evaluated and printed twice, with its
 * symbols and with their numbers, so that what is printed is what was computed.
 */
import type { MathNode } from 'mathjs';

/** What is wrong with an expression; a fault of the text, not of the user's input. */
export class ExpressionError extends Error {
  override readonly name = 'ExpressionError';
  constructor(
    readonly code:
      | 'expression.unreadable'
      | 'expression.not-allowed'
      | 'expression.missing-symbol'
      | 'expression.not-a-number',
    readonly data: Readonly<Record<string, string>>,
  ) {
    super(`${code} ${JSON.stringify(data)}`);
  }
}

/** Numbers by symbol. */
export type Scope = Readonly<Record<string, number>>;

/** An expression that was read and allowed. */
export interface ParsedExpression {
  /** Symbols whose numbers it needs, each once, in the order they appear. */
  readonly symbols: readonly string[];
  /** Its value for these numbers. Throws `ExpressionError` where a symbol is missing or the value is no number. */
  readonly evaluate: (scope: Scope) => number;
  /** Printed with its symbols: `sqrt(F ^ 2 + 4 T ^ 2)` as `√(F^2 + 4 × T^2)`. */
  readonly withSymbols: () => string;
  /** Printed with numbers in place of the symbols; `print` makes the text of one number. */
  readonly withNumbers: (scope: Scope, print?: (value: number, symbol: string) => string) => string;
}

/** Functions an expression may call, and how each is printed. */
const functions: Readonly<Record<string, string>> = {
  sqrt: '√',
  abs: 'abs',
  min: 'min',
  max: 'max',
  sin: 'sin',
  cos: 'cos',
  tan: 'tan',
};
const operators: readonly string[] = [
  'add',
  'subtract',
  'multiply',
  'divide',
  'pow',
  'unaryMinus',
  'unaryPlus',
];
const LONGEST_EXPRESSION = 500;

/**
 * Reads and judges an expression; `parseExpression` of `mathjs.ts` is the way in.
 *
 * @param text - source text [-]
 * @param parse - the library's parser [-]
 * @returns the expression, ready to evaluate and print [-]
 * @throws ExpressionError `expression.unreadable`, `expression.not-allowed`
 */
export function readExpression(text: string, parse: (plain: string) => MathNode): ParsedExpression {
  if (text.length > LONGEST_EXPRESSION)
    throw new ExpressionError('expression.unreadable', { text: text.slice(0, 40) });
  const tree = readTree(text, parse);
  const symbols: string[] = [];
  tree.traverse((node, _path, parent) => {
    const refused = refusal(node, parent);
    if (refused !== undefined) throw new ExpressionError('expression.not-allowed', { text, part: refused });
    if (isSymbol(node, parent) && node.name !== 'pi' && !symbols.includes(node.name)) symbols.push(node.name);
  });
  return {
    symbols,
    evaluate: (scope) => evaluate(tree, symbols, scope, text),
    withSymbols: () => printTree(tree, (name) => name),
    withNumbers: (scope, print = (value) => String(value)) => {
      requireSymbols(symbols, scope, text);
      return printTree(tree, (name) => inParentheses(print(scope[name] ?? Number.NaN, name)));
    },
  };
}

function plainExpression(text: string): string {
  return text.replace(/[×·]/gu, '*').replace(/−/gu, '-').replace(/√/gu, 'sqrt').replace(/π/gu, 'pi');
}

function readTree(text: string, parse: (plain: string) => MathNode): MathNode {
  try {
    return parse(plainExpression(text));
  } catch {
    throw new ExpressionError('expression.unreadable', { text });
  }
}

interface NamedNode {
  readonly name: string;
}

function isSymbol(node: MathNode, parent: MathNode | null): node is MathNode & NamedNode {
  return (
    node.type === 'SymbolNode' && !(parent?.type === 'FunctionNode' && 'fn' in parent && parent.fn === node)
  );
}

/** What is not allowed about a node, or undefined where all is well. */
function refusal(node: MathNode, parent: MathNode | null): string | undefined {
  switch (node.type) {
    case 'ConstantNode':
      return 'value' in node && typeof node.value === 'number' ? undefined : node.toString();
    case 'SymbolNode':
      if (!isSymbol(node, parent)) return undefined;
      return /^[A-Za-z][A-Za-z0-9_]*$/u.test(node.name) && !Object.hasOwn(functions, node.name)
        ? undefined
        : node.name;
    case 'ParenthesisNode':
      return undefined;
    case 'OperatorNode':
      return 'fn' in node && typeof node.fn === 'string' && operators.includes(node.fn)
        ? undefined
        : node.toString();
    case 'FunctionNode':
      return 'fn' in node && Object.hasOwn(functions, String(node.fn)) ? undefined : node.toString();
    default:
      return node.toString();
  }
}

function requireSymbols(symbols: readonly string[], scope: Scope, text: string): void {
  const missing = symbols.find((symbol) => !Object.hasOwn(scope, symbol));
  if (missing !== undefined)
    throw new ExpressionError('expression.missing-symbol', { text, symbol: missing });
}

function evaluate(tree: MathNode, symbols: readonly string[], scope: Scope, text: string): number {
  requireSymbols(symbols, scope, text);
  const value: unknown = tree
    .compile()
    .evaluate(Object.fromEntries(symbols.map((symbol) => [symbol, scope[symbol]])));
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new ExpressionError('expression.not-a-number', { text });
  return value;
}

/** Anything but a plain positive number stands in parentheses, else `b^2` with b = −3 would re-read as −(3^2). */
function inParentheses(text: string): string {
  return /^\d+(?:\.\d+)?$/u.test(text) ? text : `(${text})`;
}

function printTree(tree: MathNode, symbolText: (name: string) => string): string {
  const handler = (node: MathNode): string | undefined => {
    if (node.type === 'SymbolNode' && 'name' in node)
      return node.name === 'pi' ? 'π' : symbolText(String(node.name));
    if (node.type === 'FunctionNode' && 'args' in node && Array.isArray(node.args) && 'fn' in node) {
      return `${functions[String(node.fn)] ?? ''}(${node.args.map((argument) => printTree(argument, symbolText)).join(', ')})`;
    }
    if (
      node.type === 'OperatorNode' &&
      'fn' in node &&
      node.fn === 'pow' &&
      'args' in node &&
      Array.isArray(node.args)
    ) {
      return node.args.map((argument) => printTree(argument, symbolText)).join('^');
    }
    return undefined;
  };
  return tree
    .toString({ parenthesis: 'keep', implicit: 'show', handler })
    .replace(/ \* /gu, ' × ')
    .replace(/ - /gu, ' − ');
}
