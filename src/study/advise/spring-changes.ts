/** Rods swapped for larger ones or for springs, and springs set or swapped. */
import { rodSizes } from '../../catalog/index.js';
import type { Change } from './change.js';
import { valueIn } from './stretch-edits.js';
import { wholePath } from './stretches.js';
import { supportsOf, type Workshop } from './support-changes.js';
import { siValue } from './units-of-file.js';

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
const LOAD_SHARES = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 1];
/** Share of its working range that a spring is kept from either end of it when it is set anew [-]. */
const RESERVE = 0.1;
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
    const { minimum = 0, maximum = Number.POSITIVE_INFINITY } = spring;
    const reserve = Number.isFinite(maximum) ? RESERVE * (maximum - minimum) : 0;
    const [least, most] = [minimum + reserve, maximum - reserve];
    const settings = LOAD_SHARES.flatMap((share) =>
      [share, -share].flatMap((by): readonly Change[] => {
        const text = units.force(spring.load.value * (1 + by));
        const load = siValue(text, 'force');
        if (load < least || load > most) return [];
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
