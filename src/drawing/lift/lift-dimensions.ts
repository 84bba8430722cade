/** Heights of the lift: on the left what is taken up, one over the other; on the right what there is. */
import type { Access } from '../../checks/room/access-subject.js';
import type { UnitSystem } from '../../input/installation.js';
import { formatQuantity } from '../../units/index.js';
import type { Ink, Xy } from '../drawing.js';
import { project } from '../isometric/projection.js';
import type { Dimension } from '../room-views/dimension-line.js';
import type { LiftFrame } from './lift-frame.js';

/** How far beside the casing the dimensions stand [1/72 in]. */
const OFF = 26;

/**
 * Heights of the lift. What is not given has no dimension.
 *
 * @param access - pump and lift [m]
 * @param frame - frame of the picture
 * @param units - units to print in
 * @returns dimensions
 */
export function liftDimensions(access: Access, frame: LiftFrame, units: UnitSystem): readonly Dimension[] {
  const { pump, lift, withdrawal } = access;
  const { projection, raised } = frame;
  const [east, north] = pump.motor.to;
  const reach = pump.casing.radius * projection.scale;
  const print = (metres: number): string => formatQuantity(metres, 'length', units, { feetInches: true });
  const at = (elevation: number): Xy => project(projection, [east, north, elevation]);
  const upright = (
    name: string,
    low: number,
    high: number,
    off: number,
    words: string,
    ink: Ink,
  ): Dimension => {
    const [from, to] = [at(low), at(high)];
    const x = from[0] + off;
    return { name, from: [x, from[1]], to: [x, to[1]], witness: [from, to], words, ink };
  };
  const left = -(reach + OFF);
  const right = reach + OFF;
  const drawn =
    withdrawal === undefined
      ? []
      : [
          upright(
            'draw',
            pump.eyes,
            pump.eyes + raised,
            left,
            `motor drawn by ${print(withdrawal)}`,
            'black',
          ),
        ];
  if (lift === undefined) return drawn;
  const { slingHeight, hookHeight, hoistHeight, gear, available } = lift;
  const start = pump.eyes + raised;
  const found: Dimension[] = [...drawn];
  if (slingHeight !== undefined)
    found.push(upright('sling', start, start + slingHeight, left, `sling ${print(slingHeight)}`, 'black'));
  if (slingHeight !== undefined && hookHeight !== undefined && hookHeight > slingHeight)
    found.push(
      upright(
        'hook',
        start + slingHeight,
        start + hookHeight,
        left,
        `hook to sling ${print(hookHeight - slingHeight)}`,
        'black',
      ),
    );
  const anchor = pump.eyes + available;
  if (hoistHeight !== undefined)
    found.push(
      upright('hoist', anchor - hoistHeight, anchor, left, `hoist pulled up ${print(hoistHeight)}`, 'black'),
    );
  if (
    gear !== undefined &&
    withdrawal !== undefined &&
    hookHeight !== undefined &&
    hoistHeight !== undefined
  ) {
    const spare = available - withdrawal - gear;
    const ends = [start + hookHeight, anchor - hoistHeight] as const;
    if (Math.abs(spare) > 1e-3)
      found.push(
        upright(
          'spare',
          Math.min(...ends),
          Math.max(...ends),
          left,
          spare > 0 ? `left over ${print(spare)}` : `short by ${print(-spare)}`,
          spare > 0 ? 'black' : 'accent',
        ),
      );
  }
  if (available > 0)
    found.push(upright('available', pump.eyes, anchor, right, `eyes to anchor ${print(available)}`, 'black'));
  return found;
}
