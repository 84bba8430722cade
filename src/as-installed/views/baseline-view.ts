/** What the owner compares with in years to come: this visit beside the earlier ones. */

import { numberIn } from '../../readings/read-box.js';
import { type FieldContext, type Measured, siteText } from '../../sheet/field-context.js';
import { type Box, boxesOf } from '../../sheet/sheet.js';
import type { AsInstalled } from '../as-installed.js';
import { headRead } from '../judges/head.js';

/** Ids of what is worth comparing again. */
const KEPT =
  /^(vibration\.(?!limit)|knock-test\.(along|across)|electrical\.(volts|amps)|hydraulic\.(flow$|running|at-rest|temperature)|supports\..*\.(load-|height|gap|position)|coupling\.(gap-(one|other)|runout$)|plumb\.(along|across)$|seal\.leakage$|start-up\.(duration|motor-top))/u;

/** Readings that differ by less than this share are the same [-]. */
const SAME = 5e-4;

/** Most earlier visits printed beside this one. */
const MOST_EARLIER = 3;

/**
 * The baseline page.
 *
 * @param visit - what came of the visit
 * @returns dates and rows; the change is against the latest earlier reading
 */
export function baselineView(visit: AsInstalled) {
  const earlier = visit.earlier.slice(-MOST_EARLIER);
  const sets = [...earlier.map(({ readings }) => readings), visit.readings];
  const rows = boxesOf(visit.sheet)
    .filter(({ box }) => box.kind === 'number' && KEPT.test(box.id))
    .flatMap(({ box, row }) => {
      const values = sets.map((readings) => numberIn(readings, box.id));
      if (values.every((value) => value === undefined)) return [];
      return [rowOf(`${row?.label ?? ''}: ${box.label}`, values, box, visit)];
    });
  const heads = sets.map((readings) => headRead({ ...visit, readings }));
  const headRow = heads.some((value) => value !== undefined)
    ? [rowOf('Head from the gauges', heads, { dimension: 'head', unit: '' }, visit)]
    : [];
  return {
    date: visit.date ?? 'undated',
    earlier: earlier.map(({ date, otherRevision }) => ({
      date: otherRevision ? `${date} (other revision)` : date,
    })),
    hasEarlier: earlier.length > 0,
    columns: `left:4 ${'right:1.2 '.repeat(earlier.length)}right:1.3${earlier.length > 0 ? ' right:0.9' : ''}`,
    rows: [...headRow, ...rows],
    hasRows: headRow.length + rows.length > 0,
  };
}

function rowOf(
  what: string,
  values: readonly (number | undefined)[],
  box: Pick<Box, 'dimension' | 'unit'> & { readonly id?: string },
  context: FieldContext,
) {
  const measured = measuredOf(box);
  const text = (value: number | undefined) => siteText(value, measured, context) ?? '–';
  const now = values.at(-1);
  const before = values
    .slice(0, -1)
    .filter((value) => value !== undefined)
    .at(-1);
  const change =
    now === undefined || before === undefined || (before === 0 && now !== 0)
      ? '–'
      : Math.abs(now - before) <= SAME * Math.abs(before)
        ? 'same'
        : `${now >= before ? '+' : '−'}${context.write.quantity(Math.abs(now - before) / Math.abs(before), 'ratio', { significant: 2 })}`;
  return {
    what,
    earlier: values.slice(0, -1).map((value) => ({ text: text(value) })),
    now: text(now),
    change,
  };
}

/** Lengths that a tape shows; all others are read with feelers and dials. */
const BY_TAPE = /\.(position|height)$/u;

function measuredOf({ dimension, id = '' }: { readonly id?: string } & Pick<Box, 'dimension'>): Measured {
  switch (dimension) {
    case undefined:
      return 'count';
    case 'length':
      return BY_TAPE.test(id) ? 'distance' : 'gap';
    case 'velocity':
      return 'velocity';
    case 'ratio':
      return 'share';
    case 'moment':
      return 'torque';
    default:
      return dimension as Measured;
  }
}
