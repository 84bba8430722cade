import type { Coded, Issue, Place } from './issue.js';
import { sentences } from './sentences/index.js';
import type { IssueData, Sentence } from './sentences/sentence.js';

/**
 * The sentence of an issue. A code without a sentence is told by its code and data, so that nothing is ever lost.
 *
 * @param issue - code and data [-]
 * @returns the sentence [-]
 */
export function sentenceOf(issue: Coded): Sentence {
  // A code fits its own sentence, which cannot be said of a table of them.
  const table: Readonly<Record<string, (data: IssueData) => Sentence>> = sentences as never;
  const make = Object.hasOwn(table, issue.code) ? table[issue.code] : undefined;
  return make?.(issue.data) ?? { message: `${issue.code} ${JSON.stringify(issue.data)}` };
}

/**
 * An issue as printed, one entry a line, without colour:
 *
 *     error[input.unknown-key]: "trun" is not known here
 *       at pool.yaml:41:19 piping.lines[0].walk[2].elbow.trun
 *       wanted: one of turn, radius, weight, known, support
 *       hint: did you mean "turn"?
 *
 * @param issue - code, grade, data and place [-]
 * @returns lines without line ends [-]
 */
export function printIssue(issue: Issue): readonly string[] {
  const { message, wanted, example, hint } = sentenceOf(issue);
  return [
    `${issue.severity}[${issue.code}]: ${oneLine(message)}`,
    ...(issue.place ? [`  at ${placeText(issue.place)}`] : []),
    ...(wanted === undefined ? [] : [`  wanted: ${oneLine(wanted)}`]),
    ...(example === undefined ? [] : [`  example: ${oneLine(example)}`]),
    ...(hint === undefined ? [] : [`  hint: ${oneLine(hint)}`]),
  ];
}

/**
 * A place as editors and terminals understand it, with the path behind.
 *
 * @param place - file, line, column, path [-]
 * @returns for example `pool.yaml:41:19 piping.size` [-]
 */
export function placeText(place: Place): string {
  const position = `${place.line}:${place.column}`;
  const where = place.file === undefined ? `line ${position}` : `${oneLine(place.file)}:${position}`;
  return place.path === '' ? where : `${where} ${oneLine(place.path)}`;
}

/**
 * Text on one line, without signs that steer a terminal.
 *
 * What comes from a file may hold line ends and control signs; on a terminal they would draw what they like.
 *
 * @param text - whatever it is [-]
 * @returns the same with a blank in place of them [-]
 */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, ' ');
}
