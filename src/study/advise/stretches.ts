/** Stretches of straight pipe: where a support may stand, between one fitting and the next. */

import type { Part, PipeSection, Vec3 } from '../../input/installation.js';
import type { Path } from '../../input/pending-issue.js';
import type { Layout } from '../../model/layout/layout.js';
import { SUPPORT_KINDS } from '../../model/support-parts.js';
import type { Situation } from './situation.js';

/** One step of a walk that stands on straight pipe. */
export interface StretchItem {
  /** Place among the steps of the walk. */
  readonly index: number;
  readonly part: Part;
  /** Distances from the start of the stretch [m]; equal for what has no length. */
  readonly start: number;
  readonly end: number;
}

/** Straight pipe without a bend or body in it, and everything on it. */
export interface Stretch {
  readonly line: string;
  /** Path of the walk in the file. */
  readonly walk: Path;
  readonly items: readonly StretchItem[];
  readonly length: number;
  readonly from: Vec3;
  readonly along: Vec3;
  readonly section: PipeSection;
  /** Radius of the pipe with its covering [m]. */
  readonly radius: number;
  /** Kind of part before it and behind it. */
  readonly before: Part['kind'] | 'pump';
  readonly after: Part['kind'];
}

const WITHOUT_LENGTH: ReadonlySet<string> = new Set([...SUPPORT_KINDS, 'weight', 'fitting']);

/**
 * Every stretch of straight pipe of an installation.
 *
 * @param situation - the installation and its layout
 * @returns stretches in walking order, lengths in [m]
 */
export function stretchesOf({ installation, layout }: Situation): readonly Stretch[] {
  return installation.lines.flatMap((line) => stretchesOfWalk(line.walk, line.name, layout));
}

function stretchesOfWalk(parts: readonly Part[], line: string, layout: Layout): readonly Stretch[] {
  const found: Stretch[] = [];
  let open: StretchItem[] = [];
  const close = (next: number): void => {
    const stretch = stretchOf(open, parts, next, line, layout);
    if (stretch !== undefined) found.push(stretch);
    open = [];
  };
  parts.forEach((part, index) => {
    if (part.kind === 'straight' || WITHOUT_LENGTH.has(part.kind)) {
      const start = open.at(-1)?.end ?? 0;
      open.push({ index, part, start, end: start + (part.kind === 'straight' ? part.length : 0) });
      return;
    }
    close(index);
    if (part.kind === 'tee')
      found.push(...stretchesOfWalk(part.side.walk, `${line}, leg at ${part.name}`, layout));
  });
  close(parts.length - 1);
  return found;
}

function stretchOf(
  items: readonly StretchItem[],
  parts: readonly Part[],
  next: number,
  line: string,
  layout: Layout,
): Stretch | undefined {
  const first = items[0];
  const pipe = items.find(({ part }) => part.kind === 'straight');
  const place = pipe && layout.partPlaces?.[pipe.part.name];
  const behind = parts[next];
  if (!first || !pipe || !place || !behind) return undefined;
  const back = (pipe.start + pipe.end) / 2;
  const { at, along } = place;
  return {
    line,
    walk: walkPath(first.part.path),
    items,
    length: items.at(-1)?.end ?? 0,
    from: [at[0] - along[0] * back, at[1] - along[1] * back, at[2] - along[2] * back],
    along,
    section: pipe.part.section,
    radius: place.radius,
    before: parts[first.index - 1]?.kind ?? 'pump',
    after: behind.kind,
  };
}

/**
 * The path of the walk a part stands in.
 *
 * @param path - path of the part as printed: `piping.lines[0].walk[3].straight`
 * @returns keys and indexes
 */
export function walkPath(path: string): Path {
  return stepPath(path).slice(0, -1);
}

/**
 * The path of the step a part is written in.
 *
 * @param path - path of the part as printed
 * @returns keys and indexes, up to the place in the walk
 */
export function stepPath(path: string): Path {
  const steps = wholePath(path);
  const last = steps.findLastIndex((step) => typeof step === 'number');
  return steps.slice(0, last + 1);
}

/**
 * A path as printed, in its steps.
 *
 * @param path - path of a part as printed
 * @returns keys and indexes
 */
export function wholePath(path: string): Path {
  return [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key]) =>
    index === undefined ? (key ?? '') : Number(index),
  );
}

/** Share of a direction from which a pipe counts as upright [-]. */
const UPRIGHT = 0.9;

/** Whether a stretch is a riser. */
export function isUpright({ along }: Stretch): boolean {
  return Math.abs(along[2]) > UPRIGHT;
}

/**
 * A place on a stretch.
 *
 * @param stretch - the stretch
 * @param x - distance from its start [m]
 * @returns the place [m]
 */
export function pointOn({ from, along }: Stretch, x: number): Vec3 {
  return [from[0] + along[0] * x, from[1] + along[1] * x, from[2] + along[2] * x];
}
