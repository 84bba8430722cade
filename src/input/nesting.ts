import { Lexer } from 'yaml';

/** The sign by which the lexer says that a flow ended where it must not. */
const FLOW_BROKEN = '\u0018';

/**
 * The tokens of a text, unless it nests so deep that reading it could run out of stack. Looks without recursion: a
 * level of a block takes a column of indentation or an indicator on the line, a level of a flow takes a bracket or a
 * colon without a comma behind it. Two levels may share a column, so the true depth is at most twice the count.
 *
 * @param text - the file [-]
 * @param most - levels allowed [-]
 * @returns tokens in order, or undefined where the count passes the limit [-]
 */
export function boundedTokens(text: string, most: number): readonly string[] | undefined {
  const tokens: string[] = [];
  let indent = 0;
  let indicators = 0;
  let previous = '\n';
  /** Indicators seen before each open bracket; a comma goes back to them. */
  const open: number[] = [];
  for (const token of new Lexer().lex(text)) {
    tokens.push(token);
    if (token === FLOW_BROKEN) open.length = 0;
    else if (token === '[' || token === '{') open.push(indicators);
    else if (token === ']' || token === '}') indicators = open.pop() ?? 0;
    else if (token === ',') indicators = open.at(-1) ?? indicators;
    else if (token === '-' || token === '?' || token === ':') indicators += 1;
    else if (open.length === 0 && previous === '\n') {
      // The blanks a line starts with; a line that starts without any starts over.
      indent = /^ +$/u.test(token) ? token.length : 0;
    }
    if (open.length === 0 && (token === '\n' || token === '\r\n')) {
      indicators = 0;
      indent = 0;
    }
    if (indent + indicators + open.length > most) return undefined;
    previous = token === '\r\n' ? '\n' : token;
  }
  return tokens;
}
