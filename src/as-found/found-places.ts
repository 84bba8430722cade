/** Supports put where the tape found them: the pipe on either side grows and shrinks by as much. */
import type { Installation, Line, Part, StraightPart } from '../input/installation.js';
import { isSupportPart } from '../model/support-parts.js';

/** What was read of one support along its line. */
export interface PlaceChange {
  readonly mark: string;
  /** As drawn and as found, from the same mark [m]. */
  readonly drawn: number;
  readonly found: number;
}

/** An installation with its supports where they were found. */
export interface MovedInstallation {
  readonly installation: Installation;
  readonly moved: readonly PlaceChange[];
  /** Marks of supports that cannot stand where they were read: past a fitting, or beyond the run. */
  readonly impossible: readonly string[];
}

/** Straight pipe shorter than this is none: a hundredth of a millimetre [m]. */
const NO_LENGTH = 1e-5;

/**
 * Moves supports along straight pipe.
 *
 * @param installation - as drawn
 * @param found - distance of each support from what its place is told from, by mark [m]
 * @param step - differences up to this are as drawn [m]
 * @returns the installation as found; the same object where nothing moved
 */
export function movedSupports(
  installation: Installation,
  found: ReadonlyMap<string, number>,
  step: number,
): MovedInstallation {
  const log: Log = { moved: [], impossible: [] };
  const lines = installation.lines.map((line): Line => {
    const walk = movedWalk(line.walk, { found, step, log });
    return walk === line.walk ? line : { ...line, walk };
  });
  const same = log.moved.length === 0;
  return { installation: same ? installation : { ...installation, lines }, ...log };
}

interface Log {
  readonly moved: PlaceChange[];
  readonly impossible: string[];
}

interface Search {
  readonly found: ReadonlyMap<string, number>;
  readonly step: number;
  readonly log: Log;
}

function movedWalk(walk: readonly Part[], search: Search): readonly Part[] {
  const inSides = walk.map((part): Part => {
    if (part.kind !== 'tee') return part;
    const side = movedWalk(part.side.walk, search);
    return side === part.side.walk ? part : { ...part, side: { ...part.side, walk: side } };
  });
  const parts = inSides.every((part, index) => part === walk[index]) ? walk : inSides;
  const changes = changesIn(parts, search);
  let wanted = changes;
  for (;;) {
    const rebuilt = rebuild(parts, wanted);
    if (rebuilt.kind === 'parts') {
      search.log.moved.push(...[...wanted.values()].map(({ change }) => change));
      return wanted.size === 0 ? parts : rebuilt.parts;
    }
    // Whoever stands in the way is left as drawn, and is named.
    const blocked = wanted.has(rebuilt.mark) ? rebuilt.mark : [...wanted.keys()].at(-1);
    if (blocked === undefined) return parts;
    search.log.impossible.push(blocked);
    wanted = new Map([...wanted].filter(([mark]) => mark !== blocked));
  }
}

interface Shift {
  readonly change: PlaceChange;
  /** How far it stands from where it is drawn, away from the pump [m]. */
  readonly shift: number;
}

/** How far each support of a walk stands from where it is drawn. */
function changesIn(walk: readonly Part[], { found, step }: Search): ReadonlyMap<string, Shift> {
  const shifts = new Map<string, Shift>();
  let reference = 0;
  let drawn = 0;
  for (const part of walk) {
    if (part.kind === 'straight') drawn += part.length;
    if (part.kind === 'straight' || part.kind === 'fitting' || part.kind === 'weight') continue;
    if (isSupportPart(part)) {
      const read = found.get(part.mark);
      const shift = read === undefined ? 0 : reference + read - drawn;
      if (read !== undefined && Math.abs(shift) > step) {
        shifts.set(part.mark, { change: { mark: part.mark, drawn, found: read }, shift });
        reference = shift;
      } else reference = 0;
    } else reference = 0;
    drawn = 0;
  }
  return shifts;
}

type Rebuilt =
  | { readonly kind: 'parts'; readonly parts: readonly Part[] }
  | { readonly kind: 'blocked'; readonly mark: string };

/** The walk with its straights changed; or the mark of a support that cannot stand where it should. */
function rebuild(walk: readonly Part[], shifts: ReadonlyMap<string, Shift>): Rebuilt {
  const shiftOf = (part: Part | undefined): number =>
    part !== undefined && isSupportPart(part) ? (shifts.get(part.mark)?.shift ?? 0) : 0;
  const markBy = (...parts: readonly (Part | undefined)[]): string =>
    parts.find((part) => shiftOf(part) !== 0)?.name ?? '';
  const parts: Part[] = [];
  for (const [index, part] of walk.entries()) {
    const before = walk[index - 1];
    if (part.kind === 'straight') {
      const after = walk[index + 1];
      const length = part.length + shiftOf(after) - shiftOf(before);
      if (length < -NO_LENGTH) return { kind: 'blocked', mark: markOf(markBy(after, before), walk) };
      if (length > NO_LENGTH) parts.push(length === part.length ? part : { ...part, length });
      continue;
    }
    const gap = before?.kind === 'straight' ? 0 : shiftOf(part) - shiftOf(before);
    if (gap < -NO_LENGTH) return { kind: 'blocked', mark: markOf(markBy(part, before), walk) };
    if (gap > NO_LENGTH) parts.push(straightBeside(part, before, gap));
    parts.push(part);
  }
  return { kind: 'parts', parts };
}

function markOf(name: string, walk: readonly Part[]): string {
  const part = walk.find((each) => each.name === name);
  return part !== undefined && isSupportPart(part) ? part.mark : '';
}

/** Pipe between a support and the fitting it was drawn against. */
function straightBeside(part: Part, before: Part | undefined, length: number): StraightPart {
  const support = isSupportPart(part) || before === undefined ? part : before;
  const { section, covering, path } = support;
  return {
    kind: 'straight',
    name: `straight beside ${support.name}`,
    path,
    section,
    ...(covering && { covering }),
    length,
  };
}
