/** A firm's own style: the file `firm.yaml` in a folder of templates. */
import { type Issue, issueOf, withMore } from '../issues/issue.js';
import type { Letterhead } from './installation.js';
import { nearMiss } from './near-miss.js';
import type { PendingIssue } from './pending-issue.js';
import { type ReadText, readText } from './read-text.js';
import { resolveLetterhead } from './resolve/resolve-letterhead.js';
import { firmSchema } from './schema/firm-schema.js';
import { schemaIssues, stated } from './schema-issues.js';

/** What a firm changes without writing a template. */
export interface Firm {
  readonly letterhead?: Letterhead;
  /** Headings by section. */
  readonly headings: Readonly<Record<string, string>>;
  /** Cautions behind those of every review. */
  readonly cautions: readonly string[];
  /** Sections by reader, in printing order. */
  readonly outline: {
    readonly [reader in 'contractor' | 'engineer' | 'commissioning']?: readonly string[] | undefined;
  };
}

/** What reading gave: the style, or every issue at once. */
export type ReadFirm =
  | { readonly ok: true; readonly firm: Firm }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Sections a firm may move but not leave out: the verdict, what was assumed, what is dangerous. */
export const KEPT_SECTIONS: readonly string[] = ['summary', 'assumptions', 'cautions'];

/**
 * Reads `firm.yaml`. Never throws; all issues come at once with line and column.
 *
 * @param text - content of the file [-]
 * @param options - name for messages, and the sections there are: those of the program and the firm's own [-]
 * @returns the style, or the issues [-]
 */
export function readFirm(
  text: string,
  options: { readonly file: string; readonly sections: readonly string[] },
): ReadFirm {
  const read = readText(text, options.file);
  if (read.faults.length > 0) {
    const faults = read.faults.map(({ stated: fault, place }) => issueOf('error', fault, place));
    return { ok: false, issues: faults };
  }
  const parsed = firmSchema().safeParse(read.content ?? {}, { jitless: true });
  if (!parsed.success) {
    return {
      ok: false,
      issues: issuesOf(schemaIssues(parsed.error.issues, read.content, firmSchema()), read),
    };
  }
  const { letterhead, headings = {}, cautions = [], outline = {} } = parsed.data;
  const pendingIssues = [
    ...Object.keys(headings).flatMap((id) => unknownSection(id, ['headings', id], 'key', options.sections)),
    ...Object.entries(outline).flatMap(([reader, ids = []]) => outlineIssues(reader, ids, options.sections)),
  ];
  if (pendingIssues.length > 0) return { ok: false, issues: issuesOf(pendingIssues, read) };
  return {
    ok: true,
    firm: { ...(letterhead && { letterhead: resolveLetterhead(letterhead) }), headings, cautions, outline },
  };
}

function outlineIssues(
  reader: string,
  ids: readonly string[],
  sections: readonly string[],
): readonly PendingIssue[] {
  const path = ['outline', reader] as const;
  const unknown = ids.flatMap((id, index) => unknownSection(id, [...path, index], 'value', sections));
  const twice = ids.flatMap((section, index): readonly PendingIssue[] =>
    ids.indexOf(section) === index
      ? []
      : [{ code: 'input.section-twice', path: [...path, index], at: 'value', data: { section } }],
  );
  const missing = KEPT_SECTIONS.filter((id) => !ids.includes(id));
  const kept: readonly PendingIssue[] =
    missing.length === 0 ? [] : [{ code: 'input.section-kept', path, at: 'key', data: { missing } }];
  return [...unknown, ...twice, ...kept];
}

function unknownSection(
  found: string,
  path: PendingIssue['path'],
  at: PendingIssue['at'],
  sections: readonly string[],
): readonly PendingIssue[] {
  if (sections.includes(found)) return [];
  const nearest = nearMiss(found, sections);
  const data = { found, sections, ...(nearest !== undefined && { nearest }) };
  return [{ code: 'input.unknown-section', path, at, data }];
}

function issuesOf(pendingIssues: readonly PendingIssue[], read: ReadText): readonly Issue[] {
  return pendingIssues.map((pending) =>
    issueOf(
      pending.severity ?? 'error',
      withMore(pending, stated(firmSchema(), pending.path)),
      read.placeOf(pending.path, pending.at),
    ),
  );
}
