import type { Part, SupportPart } from '../input/installation.js';

/** Kinds of part that stand on a point of the pipe and hold it. */
export const SUPPORT_KINDS: ReadonlySet<Part['kind']> = new Set([
  'hanger',
  'spring-hanger',
  'rest',
  'guide',
  'stop',
  'anchor',
  'stand',
]);

/** Whether a part of a walk is a support. */
export function isSupportPart(part: Part): part is SupportPart {
  return SUPPORT_KINDS.has(part.kind);
}
