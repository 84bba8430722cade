/** Where a walk stands: direction, pipe, names so far. */

import type { Covering, Part, PipeSection, Vec3 } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { WalkStep } from '../schema/piping.js';
import type { InputContext } from './input-context.js';
import type { Pipe } from './resolve-pipe.js';
import type { AssumedAlike } from './resolve-structure.js';

/** What every part of the installation shares while walking. */
export interface Walking {
  readonly reading: InputContext;
  /** Edition of the rod ratings. */
  readonly rods: 'older' | 'later';
  /** Next name of a kind: `elbow 2`. Counts over the whole installation in walking order. */
  readonly name: (kind: string) => string;
  /** What one person takes for everything alike that nothing says. */
  readonly assumed: AssumedAlike;
  /** Materials of the pipes met. */
  readonly materials: Set<string>;
}

/** One step to be taken. */
export interface Step<Kind extends keyof WalkStep> {
  readonly walking: Walking;
  readonly file: NonNullable<WalkStep[Kind]>;
  readonly path: Path;
  readonly travel: Vec3;
  readonly pipe: Pipe;
  readonly before: WalkStep | undefined;
  readonly after: WalkStep | undefined;
}

/** What a step made: a part, and where the walk goes on. */
export interface Stepped {
  readonly part: Part;
  readonly travel?: Vec3;
  readonly pipe?: Pipe;
}

/**
 * Counts names by kind.
 *
 * @returns function that gives the next name of a kind [-]
 */
export function nameCounter(): (kind: string) => string {
  const counts = new Map<string, number>();
  return (kind) => {
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    return `${kind} ${count}`;
  };
}

/** Section and covering of a part, and where it stands in the file. */
export function partBase(
  name: string,
  path: string,
  pipe: Pipe,
): {
  readonly name: string;
  readonly path: string;
  readonly section: PipeSection;
  readonly covering?: Covering;
} {
  return { name, path, section: pipe.section, ...(pipe.covering && { covering: pipe.covering }) };
}
