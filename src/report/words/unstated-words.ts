/** What an unstated thing may be, in words. */
import type { Unstated } from '../../study/bounds/unstated.js';
import type { Dimension } from '../../units/index.js';
import type { Writer } from '../writer.js';

const dimensions: Readonly<Record<Exclude<Unstated['unit'], '-'>, Dimension>> = {
  'N/m': 'stiffness',
  'N·m/rad': 'rotational stiffness',
  Hz: 'frequency',
};

/**
 * The range an unstated thing was taken over.
 *
 * @param thing - with its other end
 * @param write - writer
 * @returns for example `rigid down to 10,000 lb/in`
 */
export function thingRange(thing: Unstated, write: Writer): string {
  const { kind, end, unit, turning } = thing;
  if (kind === 'friction') return `none up to ${write.plain(end)}`;
  if (kind === 'grip') return `rigid down to that of ${write.plain(end)} diameters of pipe`;
  if (kind === 'loose-grip') return 'free up to 1/20 of a rigid joint';
  if (unit === '-') return write.plain(end);
  const far = write.quantity(end, dimensions[unit]);
  const turn =
    turning === undefined ? '' : ` and ${write.quantity(turning, 'rotational stiffness')} against turning`;
  return `rigid down to ${far}${turn}`;
}
