/** Changes of supports that are there: moved along the pipe, set higher or lower, given another rod or spring. */

import type { SupportPart } from '../../input/installation.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { isSupportPart, supportFacts } from '../../model/support-parts.js';
import type { Change } from './change.js';
import type { Edit } from './edit.js';
import type { Overhead, RoomForSupports } from './room-for-supports.js';
import type { Situation } from './situation.js';
import { moveAlong, valueIn } from './stretch-edits.js';
import { isUpright, pointOn, type Stretch, type StretchItem, wholePath } from './stretches.js';
import type { FileUnits } from './units-of-file.js';

/** What generators of changes share. */
export interface Workshop {
  readonly situation: Situation;
  readonly stretches: readonly Stretch[];
  readonly room: RoomForSupports;
  readonly units: FileUnits;
}

/** Pipe kept free between a support and the weld of a fitting, or another support [m]. */
export const CLEAR_OF_FITTING = 0.075;
export const CLEAR_OF_SUPPORT = 0.3;

/**
 * Every support moved along its stretch of straight pipe, both ways.
 *
 * @param workshop - situation, stretches and room
 * @returns changes, the shortest first for each support
 */
export function moveChanges(workshop: Workshop): readonly Change[] {
  const { stretches, units } = workshop;
  return stretches.flatMap((stretch) =>
    stretch.items.flatMap((item, place) =>
      isSupportPart(item.part) && supportFacts(item.part).movable
        ? units.moves
            .flatMap((distance) => [distance, -distance])
            .flatMap((distance) => moved(workshop, stretch, place, distance) ?? [])
        : [],
    ),
  );
}

function moved(
  { situation, room, units }: Workshop,
  stretch: Stretch,
  place: number,
  distance: number,
): Change | undefined {
  const item = stretch.items[place];
  if (item === undefined || !isSupportPart(item.part)) return undefined;
  const { part } = item;
  const x = item.start + distance;
  if (!isFree(stretch, x, item)) return undefined;
  const at = pointOn(stretch, x);
  const rise = stretch.along[2] * distance;
  const rod: Edit[] = [];
  let over: Overhead | undefined;
  if (
    part.kind === 'stand' &&
    situation.installation.room.floor !== undefined &&
    !room.stand(at, stretch.radius)
  )
    return undefined;
  if (part.kind === 'hanger' || part.kind === 'spring-hanger') {
    const length = part.rods?.length;
    const own = length === undefined ? undefined : length - rise;
    over = room.hang({ at, radius: stretch.radius, upright: isUpright(stretch) }, own);
    if (over === undefined) return undefined;
    if (length !== undefined && over.length !== undefined && Math.abs(over.length - length) > 1e-6) {
      const path = [...wholePath(part.path), 'length'];
      rod.push({ does: 'set', path, value: units.length(over.length) });
    }
  }
  // The rod first: moving may change the place of the step.
  const edits = [...rod, ...moveAlong(stretch, place, x, situation.content)];
  const away = distance > 0 ? 'away from the pump' : 'towards the pump';
  return {
    kind: 'move-support',
    target: part.mark,
    key: `move-support ${part.mark} ${Math.round(distance * 1e4)}`,
    edits,
    size: Math.abs(distance),
    code: rod.length > 0 ? 'advise.move-support.rod' : 'advise.move-support',
    data: {
      mark: part.mark,
      word: wordOf(part.kind),
      distance: units.print(Math.abs(distance), 'length'),
      away,
      line: stretch.line,
      rod: over?.length === undefined ? '' : units.print(over.length, 'length'),
    },
    cautions: [
      'advise.caution.carry-pipe',
      part.kind === 'hanger' || part.kind === 'spring-hanger'
        ? 'advise.caution.structure'
        : 'advise.caution.fixing',
    ],
  };
}

/**
 * Whether a support may stand at a place of a stretch: clear of fittings and of other supports.
 *
 * @param stretch - the stretch
 * @param x - distance from its start [m]
 * @param own - the support itself, where it moves there
 * @returns true where it may
 */
export function isFree(stretch: Stretch, x: number, own?: StretchItem): boolean {
  if (x < CLEAR_OF_FITTING - 1e-6 || x > stretch.length - CLEAR_OF_FITTING + 1e-6) return false;
  return stretch.items.every(({ part, start }) => {
    if (part.kind === 'straight' || part === own?.part) return true;
    const clear = isSupportPart(part) ? CLEAR_OF_SUPPORT : CLEAR_OF_FITTING;
    return Math.abs(start - x) > clear - 1e-6;
  });
}

/** Trade word of a kind of support. */
export function wordOf(kind: string): string {
  return kind.replace('-', ' ');
}

/**
 * Supports set higher or lower, by nuts or shims.
 *
 * @param workshop - situation and units
 * @returns changes, the smallest first for each support
 */
export function heightChanges({ situation, units }: Workshop): readonly Change[] {
  return supportsOf(situation)
    .filter(({ kind }) => kind === 'hanger' || kind === 'stand' || kind === 'rest')
    .flatMap((part) =>
      units.heights.flatMap((height) =>
        [height, -height].map((raised): Change => {
          const path = [...wholePath(part.path), 'out-of-place'];
          const before = part.imposed?.[2] ?? 0;
          const text = units.height(before + raised);
          const isThere = valueIn(situation.content, path) !== undefined;
          return {
            kind: 'set-height',
            target: part.mark,
            key: `set-height ${part.mark} ${Math.round(raised * 1e5)}`,
            edits: [
              isThere
                ? { does: 'set', path: [...path, 'up'], value: text }
                : { does: 'set', path, value: { up: text } },
            ],
            // So that each sixteenth of an inch counts.
            size: height,
            code: raised > 0 ? 'advise.set-height.raise' : 'advise.set-height.lower',
            data: { mark: part.mark, word: wordOf(part.kind), height: units.print(height, 'length') },
            cautions: ['advise.caution.set-height'],
          };
        }),
      ),
    );
}

/** Supports of the lines, as the file gives them. */
export function supportsOf({ layout }: Pick<Situation, 'layout'>): readonly SupportPart[] {
  return layout.supports.flatMap(({ part }: PlacedSupport) => (part === undefined ? [] : [part]));
}
