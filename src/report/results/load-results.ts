import type * as z from 'zod';
import { analysisOf, type Subject } from '../../analysis/subject.js';
import type { LargestSupportLoads } from '../../analysis/supports/support-loads.js';
import type { supportLoadsShape } from './load-schema.js';

type SupportLoadResults = z.infer<ReturnType<typeof supportLoadsShape>>;

/**
 * Largest loads on every support for the results file.
 *
 * @param subject - what was solved
 * @returns plain data [N]
 */
export function supportLoadResults(subject: Subject): SupportLoadResults {
  const { supportLoads, supportLoadsByRole } = analysisOf(subject);
  const kinds = new Map(subject.layout.supports.map(({ mark, kind }) => [mark, kind]));
  return supportLoads.map((loads) => ({
    at: loads.at,
    kind: kinds.get(loads.at) ?? '',
    ...plain(loads),
    byRole: Object.fromEntries(
      [...(supportLoadsByRole.get(loads.at) ?? [])].map(([role, own]) => [role, plain(own)]),
    ),
  }));
}

function plain({ largest, governs }: LargestSupportLoads) {
  return { ...largest, ...(governs && { governs }) };
}
