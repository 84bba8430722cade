/** A file held open, so that changes of its walks are tried without reading everything again. */
import type { Issue } from '../issues/issue.js';
import type { Installation } from './installation.js';
import { readInstallation } from './read-installation.js';
import { readText } from './read-text.js';
import { resolveLinesAlone } from './resolve/resolve-installation.js';
import { type FileContent, fileSchema } from './schema/file-schema.js';
import { step, type WalkStep } from './schema/piping.js';

/** A file that was read, ready for changes of its walks. */
export interface OpenedFile {
  /** What the file holds, as plain data. */
  readonly content: unknown;
  readonly installation: Installation;
  /**
   * The installation of a content in which steps of walks differ and nothing else: what is told of the file as a
   * whole (assumptions, fingerprint) stays that of the file. Undefined where the content cannot be used. Parts that
   * are the same objects as before are not read again.
   */
  readonly installationOf: (content: unknown) => Installation | undefined;
}

type Plain = Readonly<Record<string, unknown>>;

/**
 * Opens a file for trials.
 *
 * @param text - content of the file [-]
 * @param options - name of the file, for places in messages [-]
 * @returns the opened file, or the issues [-]
 */
export function openForTrials(
  text: string,
  options: { readonly file?: string } = {},
):
  | { readonly ok: true; readonly opened: OpenedFile; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const reading = readInstallation(text, options);
  if (!reading.ok) return reading;
  const { content } = readText(text, options.file);
  const parsed = fileSchema().parse(content, { jitless: true });
  const known = new WeakMap<object, WalkStep>();
  keep(content, parsed, known);
  const installationOf = (changed: unknown): Installation | undefined => {
    const lines = linesOf(changed).map((line, index) => ({
      ...parsed.piping.lines[index],
      walk: parsedWalk((line as Plain).walk, known),
    }));
    if (lines.some(({ walk }) => walk === undefined)) return undefined;
    const piping = { ...parsed.piping, lines: lines as FileContent['piping']['lines'] };
    const resolved = resolveLinesAlone({ ...parsed, piping });
    return resolved && { ...reading.installation, lines: resolved };
  };
  return {
    ok: true,
    opened: { content, installation: reading.installation, installationOf },
    warnings: reading.warnings,
  };
}

function linesOf(content: unknown): readonly unknown[] {
  const lines = ((content as Plain).piping as Plain).lines;
  return Array.isArray(lines) ? lines : [];
}

function keep(content: unknown, parsed: FileContent, known: WeakMap<object, WalkStep>): void {
  linesOf(content).forEach((line, index) => {
    const walk = (line as Plain).walk;
    const steps = parsed.piping.lines[index]?.walk ?? [];
    if (!Array.isArray(walk)) return;
    walk.forEach((written: object, place) => {
      const read = steps[place];
      if (read !== undefined) known.set(written, read);
    });
  });
}

function parsedWalk(walk: unknown, known: WeakMap<object, WalkStep>): readonly WalkStep[] | undefined {
  if (!Array.isArray(walk)) return undefined;
  const steps: WalkStep[] = [];
  for (const written of walk as readonly object[]) {
    const before = known.get(written);
    if (before !== undefined) {
      steps.push(before);
      continue;
    }
    const read = step().safeParse(written, { jitless: true });
    if (!read.success) return undefined;
    known.set(written, read.data);
    steps.push(read.data);
  }
  return steps;
}
