import type * as z from 'zod';
import type { LargestNozzleLoads } from '../../analysis/nozzles/largest-nozzle-loads.js';
import { analysisOf, type Subject } from '../../analysis/subject.js';
import type { LargestSupportLoads } from '../../analysis/supports/support-loads.js';
import type { nozzleLoadsShape, supportLoadsShape } from './load-schema.js';

type SupportLoadResults = z.infer<ReturnType<typeof supportLoadsShape>>;
type NozzleLoadResults = z.infer<ReturnType<typeof nozzleLoadsShape>>;

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

/**
 * Largest loads on both nozzles for the results file.
 *
 * @param subject - what was solved
 * @returns plain data [N], [N·m]; a nozzle that nothing loads is left out
 */
export function nozzleLoadResults(subject: Subject): NozzleLoadResults {
  const { largestNozzleLoads, nozzleLoadsByRole } = analysisOf(subject);
  return largestNozzleLoads
    .filter(({ force, moment }) => force !== undefined || moment !== undefined)
    .map((loads) => ({
      at: `${loads.nozzle} nozzle`,
      ...onNozzle(loads),
      byRole: Object.fromEntries(
        [...nozzleLoadsByRole].flatMap(([role, both]) => {
          const own = both.find(({ nozzle }) => nozzle === loads.nozzle);
          return own === undefined ? [] : [[role, onNozzle(own)]];
        }),
      ),
    }));
}

function onNozzle({ nozzle: _, ...loads }: LargestNozzleLoads) {
  return loads;
}
