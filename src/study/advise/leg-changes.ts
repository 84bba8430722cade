/**
 * Legs of a line made longer. The pump and the end of the line stay where they are, so two pieces of pipe change: what
 * one leg gains, another of the same direction loses, or one of the opposite direction gains as well.
 */
import { intersects } from '../../geometry/index.js';
import type { Vec3 } from '../../input/installation.js';
import type { OpenedFile } from '../../input/open-for-trials.js';
import { buildLayout } from '../../model/layout/build-layout.js';
import { obstaclesOf } from '../../model/room/obstacles.js';
import { isSupportPart } from '../../model/support-parts.js';
import type { Change } from './change.js';
import { type Edit, withEdits } from './edit.js';
import { setStraight, valueIn } from './stretch-edits.js';
import { type Stretch, type StretchItem, wholePath } from './stretches.js';
import type { Workshop } from './support-changes.js';

/** Shortest piece of pipe that is left [m]. */
const SHORTEST_PIPE = 0.15;
/** Shortest rod that is left, from the middle of the pipe [m]. */
const SHORTEST_ROD = 0.3;
/** Cosine from which directions count as the same [-]. */
const SAME_DIRECTION = 0.9999;

/**
 * Legs made longer or shorter in pairs.
 *
 * @param workshop - situation and stretches
 * @param opened - the file, to see whether the line still fits between what stands round it
 * @returns changes, the shortest first for each pair of legs
 */
export function legChanges(workshop: Workshop, opened: OpenedFile): readonly Change[] {
  const { stretches, units } = workshop;
  return stretches.flatMap((first, index) =>
    stretches.slice(index + 1).flatMap((second, later) => {
      if (first.walk.join() !== second.walk.join()) return [];
      const cosine = dot(first.along, second.along);
      if (Math.abs(cosine) < SAME_DIRECTION) return [];
      const between = stretches.slice(index + 1, index + 1 + later);
      // Without a turn between them they are one leg, and a valve would only slide along it.
      const middle = between.filter(({ walk }) => walk.join() === first.walk.join());
      if (!middle.some(({ along }) => Math.abs(dot(first.along, along)) < SAME_DIRECTION)) return [];
      return units.legs
        .flatMap((length) => [length, -length])
        .flatMap(
          (length) =>
            leg(workshop, opened, [first, ...middle, second], {
              name: `leg ${index} ${index + 1 + later}`,
              by: length,
              other: cosine > 0 ? -length : length,
            }) ?? [],
        );
    }),
  );
}

interface Leg {
  readonly name: string;
  readonly by: number;
  readonly other: number;
}

function leg(
  workshop: Workshop,
  opened: OpenedFile,
  between: readonly Stretch[],
  { name, by, other }: Leg,
): Change | undefined {
  const { situation, units } = workshop;
  const [first, second] = [between[0], between.at(-1)];
  const [grows, gives] = [longest(first), longest(second)];
  if (!first || !second || !grows || !gives) return undefined;
  if (lengthOf(grows) + by < SHORTEST_PIPE || lengthOf(gives) + other < SHORTEST_PIPE) return undefined;
  const rods = rodEdits(workshop, between, grows, gives, by);
  if (rods === undefined) return undefined;
  const straight = (stretch: Stretch, item: StretchItem, length: number): Edit => {
    const path = [...stretch.walk, item.index];
    const like = String(valueIn(situation.content, [...path, 'straight']));
    return setStraight(path, lengthOf(item) + length, like);
  };
  const edits = [...rods, straight(first, grows, by), straight(second, gives, other)];
  if (!isInsideRoom(workshop, opened, edits)) return undefined;
  const words = (length: number) => (length > 0 ? 'longer' : 'shorter');
  return {
    kind: 'lengthen-leg',
    target: name,
    key: `lengthen-leg ${name} ${Math.round(by * 1e4)}`,
    edits,
    size: Math.abs(by),
    code: 'advise.lengthen-leg',
    data: {
      line: first.line,
      length: units.print(Math.abs(by), 'length'),
      first: `${grows.part.name} (${bearing(first.along)}) ${words(by)}`,
      second: `${gives.part.name} (${bearing(second.along)}) ${words(other)}`,
    },
    cautions: ['advise.caution.cut-and-test', 'advise.caution.room', 'advise.caution.carry-pipe'],
  };
}

/** Rods over pipe that goes up get shorter by as much; undefined where one would be too short. */
function rodEdits(
  { units }: Workshop,
  between: readonly Stretch[],
  grows: StretchItem,
  gives: StretchItem,
  by: number,
): readonly Edit[] | undefined {
  const rise = (between[0]?.along[2] ?? 0) * by;
  if (Math.abs(rise) < 1e-9) return [];
  const edits: Edit[] = [];
  for (const { items } of between) {
    for (const { index, part } of items) {
      const moves = index > grows.index && index < gives.index;
      if (!moves || !isSupportPart(part) || part.rods?.length === undefined) continue;
      const length = part.rods.length - rise;
      if (length < SHORTEST_ROD) return undefined;
      edits.push({ does: 'set', path: [...wholePath(part.path), 'length'], value: units.length(length) });
    }
  }
  return edits;
}

/** Whether the changed line touches nothing of the room that it did not touch before. */
function isInsideRoom({ situation }: Workshop, opened: OpenedFile, edits: readonly Edit[]): boolean {
  const installation = opened.installationOf(withEdits(situation.content, edits));
  if (installation === undefined) return false;
  const touching = (where: Pick<Workshop['situation'], 'installation' | 'layout'>): number => {
    const obstacles = obstaclesOf(where.installation, where.layout);
    const room = obstacles.filter(({ kind }) => kind !== 'line' && kind !== 'support');
    const lines = obstacles.filter(({ kind }) => kind === 'line' || kind === 'support');
    return lines.filter((line) =>
      room.some((other) => isNear(line.box, other.box) && intersects(line.solid, other.solid)),
    ).length;
  };
  return touching({ installation, layout: buildLayout(installation) }) <= touching(situation);
}

function isNear(
  a: { readonly low: Vec3; readonly high: Vec3 },
  b: { readonly low: Vec3; readonly high: Vec3 },
): boolean {
  return [0, 1, 2].every((axis) => {
    const [lowA = 0, highA = 0, lowB = 0, highB = 0] = [a.low[axis], a.high[axis], b.low[axis], b.high[axis]];
    return lowA <= highB && lowB <= highA;
  });
}

function longest(stretch: Stretch | undefined): StretchItem | undefined {
  const pipes = stretch?.items.filter(({ part }) => part.kind === 'straight') ?? [];
  return pipes.reduce<StretchItem | undefined>(
    (most, next) => (most === undefined || lengthOf(next) > lengthOf(most) + 1e-9 ? next : most),
    undefined,
  );
}

function lengthOf({ start, end }: StretchItem): number {
  return end - start;
}

function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

const BEARINGS: readonly (readonly [string, Vec3])[] = [
  ['up', [0, 0, 1]],
  ['down', [0, 0, -1]],
  ['north', [0, 1, 0]],
  ['south', [0, -1, 0]],
  ['east', [1, 0, 0]],
  ['west', [-1, 0, 0]],
];

function bearing(along: Vec3): string {
  return BEARINGS.find(([, axis]) => dot(axis, along) > SAME_DIRECTION)?.[0] ?? 'skew';
}
