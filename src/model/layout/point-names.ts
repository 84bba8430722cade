import type { Part, TeePart } from '../../input/installation.js';
import { SUPPORT_KINDS } from '../support-parts.js';

/** Gives points names by what stands there, each name once. */
export interface PointNames {
  /** Name of the point after `part`, before `next`. */
  after(part: Part, next: Part | undefined, line: string): string;
  /** Name of the point at the branch outlet of a tee. */
  afterSide(part: TeePart, next: Part | undefined, line: string): string;
}

/**
 * A naming that remembers what it has given: a support's mark, the end of a line, or the end of the part before.
 *
 * @returns a fresh naming for one installation
 */
export function pointNames(): PointNames {
  const given = new Set<string>(['pump suction', 'pump discharge', 'pump base']);
  const once = (wanted: string): string => {
    let name = wanted;
    for (let copy = 2; given.has(name); copy += 1) name = `${wanted} (${copy})`;
    given.add(name);
    return name;
  };
  const standing = (next: Part | undefined, line: string): string | undefined => {
    if (next === undefined) return undefined;
    if (next.kind === 'end') return `end of ${line}`;
    if (SUPPORT_KINDS.has(next.kind) && 'mark' in next) return next.mark;
    if (next.kind === 'elbow') return `${next.name} near end`;
    return undefined;
  };
  return {
    after: (part, next, line) => once(standing(next, line) ?? `${part.name} far end`),
    afterSide: (part, next, line) => once(standing(next, line) ?? `${part.name} branch`),
  };
}
