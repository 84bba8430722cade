/** Every kind of support, told once: what its word is, what it holds and how it is set. */
import type { Part, SupportKind, SupportPart } from '../input/installation.js';

/** A support as placed: a part of a walk, the base under the pump, or an end of a line. */
export type PlacedKind = SupportKind | 'pump base' | 'end';

/** What follows from the kind of a support alone. */
export interface SupportFacts {
  /** Trade word. */
  readonly word: string;
  /** Its load on the structure includes weight; guides and stops hold sideways or along the pipe only. */
  readonly carriesWeight: boolean;
  /** Carries the pipe on rods from above. */
  readonly hangs: boolean;
  /** Carries from below, lying on the structure or the floor. */
  readonly bears: boolean;
  /** A nut or a shim sets its height; so it can also be left unset and carry nothing. */
  readonly adjustable: boolean;
  /** May be moved along the pipe without changing what it is there for. */
  readonly movable: boolean;
  /** Ends a span of pipe. */
  readonly endsSpan: boolean;
}

const SIDEWAYS = {
  carriesWeight: false,
  hangs: false,
  bears: false,
  adjustable: false,
  movable: true,
  endsSpan: false,
};
const WEIGHT = { ...SIDEWAYS, carriesWeight: true, movable: false, endsSpan: true };
const HUNG = { ...WEIGHT, hangs: true, adjustable: true, movable: true };
const BEARING = { ...WEIGHT, bears: true, adjustable: true };

/** The table of kinds. */
export const SUPPORTS = {
  hanger: { word: 'hanger', ...HUNG },
  'spring-hanger': { word: 'spring hanger', ...HUNG },
  rest: { word: 'rest', ...BEARING },
  guide: { word: 'guide', ...SIDEWAYS },
  stop: { word: 'stop', ...SIDEWAYS },
  anchor: { word: 'anchor', ...WEIGHT },
  stand: { word: 'stand', ...BEARING, movable: true },
  'pump base': { word: 'pump base', ...WEIGHT, bears: true, endsSpan: false },
  end: { word: 'end of the line', ...WEIGHT },
} satisfies Record<PlacedKind, SupportFacts>;

const NO_PARTS: readonly PlacedKind[] = ['pump base', 'end'];

/** Kinds of part that stand on a point of the pipe and hold it. */
export const SUPPORT_KINDS: ReadonlySet<string> = new Set(
  (Object.keys(SUPPORTS) as PlacedKind[]).filter((kind) => !NO_PARTS.includes(kind)),
);

/** Whether a part of a walk is a support. */
export function isSupportPart(part: Part): part is SupportPart {
  return SUPPORT_KINDS.has(part.kind);
}

/** What follows from the kind of a support. */
export function supportFacts({ kind }: { readonly kind: PlacedKind }): SupportFacts {
  return SUPPORTS[kind];
}
