import type { Installation } from '../../input/installation.js';
import type { OpenedFile } from '../../input/open-for-trials.js';
import { buildLayout } from '../../model/layout/build-layout.js';
import type { Layout } from '../../model/layout/layout.js';
import type { Edit } from './edit.js';
import { withEdits } from './edit.js';

/** An installation as a file describes it, from which changes set out. */
export interface Situation {
  /** What the file holds, as plain data. */
  readonly content: unknown;
  readonly installation: Installation;
  readonly layout: Layout;
  /** Load on each support with the line filled, down [N]. */
  readonly filled: Readonly<Record<string, number>>;
}

/**
 * The installation after some changes.
 *
 * @param opened - the file
 * @param edits - changes of it, in order
 * @returns content, installation and layout, or undefined where they cannot be used
 */
export function changedSituation(
  opened: OpenedFile,
  edits: readonly Edit[],
): Omit<Situation, 'filled'> | undefined {
  const content = withEdits(opened.content, edits);
  const installation = edits.length === 0 ? opened.installation : opened.installationOf(content);
  return installation && { content, installation, layout: buildLayout(installation) };
}
