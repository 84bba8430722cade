import type { ReportContext, View } from '../context.js';
import { walkRows } from '../walk-rows.js';

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
  return {
    walks: walkRows(context),
    lengthUnit: write.unit('length'),
    points: Object.entries(layout.frame.points).map(([name, at]) => ({
      name,
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
