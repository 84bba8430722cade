/** Changes of supports that are there: moved along the pipe, set higher or lower, given another rod or spring. */
import { rodSizes } from '../../catalog/index.js';
import type { SupportPart } from '../../input/installation.js';
import type { PlacedSupport } from '../../model/index.js';
import type { Change } from './change.js';
import type { Edit } from './edit.js';
import type { Overhead, RoomForSupports } from './room-for-supports.js';
import type { Situation } from './situation.js';
import { moveAlong, valueIn } from './stretch-edits.js';
import { isSupportPart, isUpright, pointOn, type Stretch, type StretchItem, wholePath } from './stretches.js';
import { type FileUnits, siValue } from './units-of-file.js';

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

/** Kinds that a contractor moves: what they are fixed to can be met elsewhere. */
const MOVED: readonly string[] = ['hanger', 'spring-hanger', 'stand', 'guide', 'stop'];

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
      isSupportPart(item.part) && MOVED.includes(item.part.kind)
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

/** Sizes above the one that is there that are tried. */
const LARGER_RODS = 3;

/**
 * Rods swapped for larger ones.
 *
 * @param workshop - situation
 * @returns changes, the smallest rod first for each support
 */
export function rodChanges({ situation }: Workshop): readonly Change[] {
  const sizes = rodSizes(situation.installation.limits.rods.edition);
  return supportsOf(situation).flatMap((part) => {
    const size = part.rods?.size;
    const path = wholePath(part.path);
    const written = valueIn(situation.content, [...path, 'rod']);
    // A rating of the user's own belongs to the rod that is there.
    if (size === undefined || written === undefined || part.rods?.rating?.origin.kind === 'given') return [];
    const own = sizes.indexOf(bare(size));
    if (own === -1) return [];
    return sizes.slice(own + 1, own + 1 + LARGER_RODS).map(
      (larger, index): Change => ({
        kind: 'rod-size',
        target: part.mark,
        key: `rod-size ${part.mark} ${larger}`,
        edits: [{ does: 'set', path: [...path, 'rod'], value: `${larger} in` }],
        size: index,
        code: 'advise.rod-size',
        data: { mark: part.mark, before: `${bare(size)} in`, after: `${larger} in` },
        cautions: ['advise.caution.carry-pipe', 'advise.caution.rod-parts'],
      }),
    );
  });
}

function bare(size: string): string {
  return size.replace(/\s*in$/, '').trim();
}

/** Shares by which the set load of a spring is altered [-]. */
const LOAD_SHARES = [0.05, 0.1, 0.2, 0.3];
/** Shares of its rate that another spring has [-]. */
const RATE_SHARES = [0.5, 0.7, 1.4, 2];

/**
 * Springs set to another load, or swapped for springs of another rate.
 *
 * @param workshop - situation and units
 * @returns changes, the smallest first for each spring
 */
export function springChanges({ situation, units }: Workshop): readonly Change[] {
  return supportsOf(situation).flatMap((part) => {
    const { spring } = part;
    if (spring === undefined) return [];
    const path = wholePath(part.path);
    const settings = LOAD_SHARES.flatMap((share) =>
      [share, -share].flatMap((by): readonly Change[] => {
        const text = units.force(spring.load.value * (1 + by));
        const load = siValue(text, 'force');
        if (load < (spring.minimum ?? 0) || load > (spring.maximum ?? Number.POSITIVE_INFINITY)) return [];
        return [
          {
            kind: 'spring-setting',
            target: part.mark,
            key: `spring-setting ${part.mark} ${Math.round(by * 1000)}`,
            edits: [{ does: 'set', path: [...path, 'load'], value: text }],
            size: share,
            code: 'advise.spring-setting',
            data: {
              mark: part.mark,
              before: units.print(spring.load.value, 'force'),
              after: units.print(load, 'force'),
            },
            cautions: ['advise.caution.spring-setting'],
          },
        ];
      }),
    );
    const rates = RATE_SHARES.map((share): Change => {
      const text = units.rate(spring.rate * share);
      return {
        kind: 'spring-rate',
        target: part.mark,
        key: `spring-rate ${part.mark} ${share}`,
        edits: [{ does: 'set', path: [...path, 'rate'], value: text }],
        size: Math.abs(Math.log2(share)),
        code: 'advise.spring-rate',
        data: {
          mark: part.mark,
          before: units.print(spring.rate, 'stiffness'),
          after: units.print(siValue(text, 'stiffness'), 'stiffness'),
        },
        cautions: ['advise.caution.carry-pipe', 'advise.caution.spring-range'],
      };
    });
    return [...settings, ...rates];
  });
}

/** Shares of the load filled that a new spring is set to, and the travel its rate is chosen for [m]. */
const NEW_LOADS = [1, 0.85, 1.15, 0.7, 1.3];
const TRAVELS = [0.04, 0.08];

/**
 * Rods swapped for springs.
 *
 * @param workshop - situation with the loads filled, and units
 * @returns changes, the spring set to the present load first
 */
export function springForRodChanges({ situation, units }: Workshop): readonly Change[] {
  return supportsOf(situation).flatMap((part) => {
    const load = situation.filled[part.mark];
    const path = wholePath(part.path);
    const written = valueIn(situation.content, path);
    if (part.kind !== 'hanger' || load === undefined || !(load > 0) || path.at(-1) !== 'hanger') return [];
    if (typeof written !== 'object' || written === null) return [];
    const { 'rigid-rods': _, mark, ...rest } = written as Readonly<Record<string, string>>;
    return NEW_LOADS.flatMap((share) =>
      TRAVELS.map((travel): Change => {
        const [rate, setting] = [units.rate((load * share) / travel), units.force(load * share)];
        const spring = { mark: mark ?? part.mark, rate, load: setting, ...rest };
        return {
          kind: 'spring-for-rod',
          target: part.mark,
          key: `spring-for-rod ${part.mark} ${share} ${travel}`,
          edits: [{ does: 'set', path: path.slice(0, -1), value: { 'spring-hanger': spring } }],
          size: 0,
          code: 'advise.spring-for-rod',
          data: {
            mark: part.mark,
            rate: units.print(siValue(rate, 'stiffness'), 'stiffness'),
            load: units.print(siValue(setting, 'force'), 'force'),
          },
          cautions: [
            'advise.caution.carry-pipe',
            'advise.caution.spring-range',
            'advise.caution.spring-stops',
          ],
        };
      }),
    );
  });
}

/** Supports of the lines, as the file gives them. */
export function supportsOf({ layout }: Pick<Situation, 'layout'>): readonly SupportPart[] {
  return layout.supports.flatMap(({ part }: PlacedSupport) => (part === undefined ? [] : [part]));
}
