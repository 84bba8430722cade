/**
 * Faults beyond those of the schema. What one field says against another can only be looked at where every field can
 * be read; so faulty fields are replaced by the schema's examples, and only what is said of the sound rest is kept.
 */
import { type Path, type PendingIssue, pathText } from './pending-issue.js';
import { resolveInstallation } from './resolve/resolve-installation.js';
import { fileSchema } from './schema/file-schema.js';
import { schemaAt } from './schema/schema-at.js';

/**
 * What is wrong with the sound sections of a file whose other sections hold faults.
 *
 * @param content - what the file holds [-]
 * @param faults - faults of the schema [-]
 * @returns pending issues that do not hang on any faulty section [-]
 */
export function lookFurther(content: unknown, faults: readonly PendingIssue[]): readonly PendingIssue[] {
  const mended = structuredClone(content);
  for (const fault of faults) mend(mended, fault);
  const parsed = fileSchema().safeParse(mended);
  if (!parsed.success) return [];
  const faulty = new Set(faults.map(({ path }) => sectionOf(path)));
  return resolveInstallation(parsed.data).pendingIssues.filter(({ path }) =>
    hangsOn(sectionOf(path)).every((section) => !faulty.has(section)),
  );
}

/** Part of the file that is judged as one: a line of the piping, or what stands behind a key of the top. */
function sectionOf(path: Path): string {
  return path[1] === 'lines' && path.length > 2 ? pathText(path.slice(0, 3)) : String(path[0]);
}

/** Sections a section is read together with. */
function hangsOn(section: string): readonly string[] {
  if (section.startsWith('piping.lines')) return [section, 'piping', 'pump', 'materials', 'limits'];
  if (section === 'piping' || section === 'pump') return [section, 'materials'];
  return [section];
}

function mend(content: unknown, fault: PendingIssue): void {
  const key = fault.path.at(-1);
  let holder: unknown = content;
  for (const step of fault.path.slice(0, -1))
    holder = isHolder(holder) && Object.hasOwn(holder, step) ? holder[step] : undefined;
  if (!isHolder(holder) || key === undefined) return;
  if (fault.code === 'input.unknown-key') {
    const { nearest } = fault.data;
    // A slip in a key hides the one that was meant.
    if (typeof nearest === 'string' && !Object.hasOwn(holder, nearest)) holder[nearest] = holder[key];
    delete holder[key];
  } else holder[key] = structuredClone(schemaAt(fileSchema(), fault.path).example);
}

function isHolder(value: unknown): value is Record<string | number, unknown> {
  return typeof value === 'object' && value !== null;
}
