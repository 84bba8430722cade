import { connectorsOf } from '../../../analysis/pipes/connectors.js';
import type { ReportContext, View } from '../../context.js';
import { usualCovering, walkRows } from '../../rows/walk-rows.js';

/** Parts are named by the point at their far end. */
const FAR = / far end$/;

/**
 * The line as described and as solved: the walk of each line, coordinates of points, objects in the room.
 *
 * @param context - installation, layout and writer
 * @returns table rows
 */
export function geometry(context: ReportContext) {
  const { installation, layout } = context.subject;
  const { write } = context;
  const coordinate = (value: number): string =>
    write.number(value, 'length', { decimals: write.system === 'us' ? 2 : 0 });
  const walks = walkRows(context);
  const usual = usualCovering(walks);
  return {
    walks: walks.map((walk) => ({
      ...walk,
      rows: walk.rows.map((row) => ({
        ...row,
        isOther: row.covering !== usual && row.covering !== '–',
        isBare: row.covering === 'none',
        hasSize: row.size !== '–',
      })),
    })),
    usual,
    isUsuallyBare: usual === 'none',
    hasConnectors: connectorsOf(context.subject).length > 0,
    lengthUnit: write.unit('length'),
    points: Object.entries(layout.frame.points).map(([name, at]) => ({
      name: name.replace(FAR, ''),
      east: coordinate(at[0]),
      north: coordinate(at[1]),
      up: coordinate(at[2]),
    })),
    objects: installation.room.objects.map((object) => ({
      name: object.name,
      kind: object.kind,
      low: write.vector(object.low, 'length'),
      high: write.vector(object.high, 'length'),
    })),
    hasObjects: installation.room.objects.length > 0,
  } satisfies View;
}
