/** The way in: text to a checked installation, or every issue at once. */
import { type Issue, issueOf, withMore } from '../issues/issue.js';
import type { SourceId } from '../sources/index.js';
import { checkWalks } from './check-walks.js';
import { contentDigest } from './content-digest.js';
import { digestOf } from './digest.js';
import type { Installation } from './installation.js';
import { lookFurther } from './look-further.js';
import type { PendingIssue } from './pending-issue.js';
import { type ReadText, readText } from './read-text.js';
import { resolveInstallation } from './resolve/resolve-installation.js';
import { fileSchema } from './schema/file-schema.js';
import { schemaIssues, stated } from './schema-issues.js';
import { sourcesOf } from './sources-of.js';

/** A file is read once: compiling the schema first would take longer than walking it. */
const ONE_PASS = { jitless: true } as const;

/** What reading gave: an installation with warnings, or issues. */
export type ReadInstallation =
  | { readonly ok: true; readonly installation: Installation; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Reads an input file: YAML 1.2 or JSON, format `pipeborne/1`. Never throws; all issues come at once, in the order of
 * the file, each with its line and column.
 *
 * @param text - content of the file [-]
 * @param options - name of the file, for places in messages [-]
 * @returns the installation in SI with its assumptions, or the issues [-]
 */
export function readInstallation(text: string, options: { readonly file?: string } = {}): ReadInstallation {
  const read = readText(text, options.file);
  if (read.faults.length > 0) {
    return {
      ok: false,
      issues: inOrder(read.faults.map(({ stated: fault, place }) => issueOf('error', fault, place))),
    };
  }
  if (read.content === null || read.content === undefined) {
    return {
      ok: false,
      issues: [{ code: 'input.nothing', severity: 'error', data: {}, place: read.placeOf([], 'value') }],
    };
  }
  const written = checkWalks(read.content);
  // A walk that is too deep or too long is not looked at any further.
  const isTooMuch = written.some(
    ({ code }) => code === 'input.too-many-parts' || code === 'input.walk-too-deep',
  );
  const parsed = isTooMuch ? undefined : fileSchema().safeParse(read.content, ONE_PASS);
  if (!parsed?.success) {
    const faults = parsed ? schemaIssues(parsed.error.issues, read.content, fileSchema()) : [];
    const further = parsed ? lookFurther(read.content, faults) : [];
    return { ok: false, issues: issuesOf([...faults, ...written, ...further], read) };
  }
  const { installation, pendingIssues } = resolveInstallation(parsed.data);
  const issues = issuesOf([...written, ...pendingIssues], read);
  if (issues.some(({ severity }) => severity === 'error')) return { ok: false, issues };
  const fingerprint = digestOf(text);
  const content = contentDigest(installation);
  const sourcesUsed: readonly SourceId[] = sourcesOf(installation);
  return { ok: true, installation: { ...installation, fingerprint, content, sourcesUsed }, warnings: issues };
}

function issuesOf(pendingIssues: readonly PendingIssue[], read: ReadText): readonly Issue[] {
  return inOrder(
    pendingIssues.map((pending) =>
      issueOf(
        pending.severity ?? 'error',
        withMore(pending, stated(fileSchema(), pending.path)),
        read.placeOf(pending.path, pending.at),
      ),
    ),
  );
}

/** Most issues told one by one: more help nobody, and are counted. */
const MOST_ISSUES = 100;

function inOrder(issues: readonly Issue[]): readonly Issue[] {
  const sorted = [...issues].sort(
    (a, b) => (a.place?.line ?? 0) - (b.place?.line ?? 0) || (a.place?.column ?? 0) - (b.place?.column ?? 0),
  );
  const rest = sorted.slice(MOST_ISSUES);
  const [next] = rest;
  if (next === undefined) return sorted;
  const severity = rest.some((issue) => issue.severity === 'error') ? 'error' : 'warning';
  const more = { code: 'input.more-issues', data: { count: rest.length } } as const;
  return [...sorted.slice(0, MOST_ISSUES), issueOf(severity, more, next.place)];
}
