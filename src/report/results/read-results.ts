/** Reads a results file back: of this format, whole, and of bearable size. */
import type * as z from 'zod';
import { type Coded, type Issue, issueOf } from '../../issues/issue.js';
import { type ResultsFile, resultsShape } from './results-schema.js';

/** Largest results file read [characters]; those of the samples have some four hundred thousand. */
const LARGEST = 16_000_000;
/** Most faults listed. */
const MOST_ISSUES = 10;

/** What reading gave: the results, or what is wrong. */
export type ReadResults =
  | { readonly ok: true; readonly results: ResultsFile }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Reads results. Never throws.
 *
 * @param text - content of the file
 * @param options - name of the file, for messages
 * @returns the results, or the issues
 */
export function readResults(text: string, options: { readonly file: string }): ReadResults {
  const { file } = options;
  const refuse = (told: Coded, path = ''): Issue =>
    issueOf('error', told, { file, line: 1, column: 1, path });
  if (text.length > LARGEST)
    return {
      ok: false,
      issues: [
        refuse({ code: 'report.results-too-large', data: { file, found: text.length, most: LARGEST } }),
      ],
    };
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch (error) {
    const reason = error instanceof SyntaxError ? error.message.slice(0, 120) : 'it is nested too deeply';
    return { ok: false, issues: [refuse({ code: 'report.results-not-json', data: { file, reason } })] };
  }
  const format =
    typeof content === 'object' && content !== null && 'format' in content ? content.format : undefined;
  if (format !== 'pipeborne-results/1')
    return {
      ok: false,
      issues: [
        refuse(
          { code: 'report.results-format', data: { file, found: String(format).slice(0, 60) } },
          'format',
        ),
      ],
    };
  const parsed = resultsShape().safeParse(content, { jitless: true });
  if (parsed.success) return { ok: true, results: parsed.data };
  const faults = parsed.error.issues.slice(0, MOST_ISSUES);
  return {
    ok: false,
    issues: faults.map((issue) =>
      refuse(
        { code: 'report.results-shape', data: { file, reason: reasonOf(issue) } },
        issue.path.map(String).join('.').slice(0, 200),
      ),
    ),
  };
}

/** In words of ours: the library's own change with its versions. */
function reasonOf(issue: z.core.$ZodIssue): string {
  if (issue.code === 'unrecognized_keys')
    return `it holds ${issue.keys.slice(0, 5).join(', ')}, which is not known`;
  if (issue.code === 'invalid_type') return `a ${issue.expected} is wanted`;
  if (issue.code === 'invalid_value')
    return `one of ${issue.values.slice(0, 8).map(String).join(', ')} is wanted`;
  return 'its value is not one that a review writes';
}
