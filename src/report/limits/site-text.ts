/** How what is read on site is printed: one unit for each instrument, on the sheet, in the review and by the judges. */
import { type Dimension, type FormatOptions, knownUnit } from '../../units/index.js';
import type { Writer } from '../writer.js';

/** The writer that a value is printed by. */
export interface Printing {
  readonly write: Writer;
}

/** What is read on site, by the instrument it is read with: each has a unit of its own beside the box. */
export type Measured =
  | 'gap'
  | 'distance'
  | 'force'
  | 'mass'
  | 'pressure'
  | 'head'
  | 'flow'
  | 'temperature'
  | 'velocity'
  | 'frequency'
  | 'speed'
  | 'voltage'
  | 'current'
  | 'power'
  | 'time'
  | 'share'
  | 'torque'
  | 'count';

interface SiteUnit {
  readonly dimension?: Dimension;
  readonly us: string;
  readonly si: string;
  readonly format?: { readonly us: FormatOptions; readonly si: FormatOptions };
}

const both = (us: FormatOptions, si: FormatOptions = us) => ({ us, si });

const SITE_UNITS: Readonly<Record<Measured, SiteUnit>> = {
  // Feelers and dials: thousandths of an inch, hundredths of a millimetre.
  gap: { dimension: 'length', us: 'in', si: 'mm', format: both({ decimals: 3 }, { decimals: 2 }) },
  distance: { dimension: 'length', us: 'in', si: 'mm' },
  force: { dimension: 'force', us: 'lb', si: 'N', format: both({ unit: 'lb' }, { unit: 'N' }) },
  mass: { dimension: 'mass', us: 'lb', si: 'kg' },
  pressure: { dimension: 'pressure', us: 'psi', si: 'kPa' },
  head: { dimension: 'head', us: 'ft', si: 'm' },
  flow: { dimension: 'flow', us: 'gpm', si: 'm³/h' },
  temperature: { dimension: 'temperature', us: '°F', si: '°C' },
  velocity: {
    dimension: 'velocity',
    us: 'in/s',
    si: 'mm/s',
    format: both({ unit: 'in/s', significant: 2 }, { unit: 'mm/s', significant: 2 }),
  },
  frequency: { dimension: 'frequency', us: 'Hz', si: 'Hz' },
  speed: { dimension: 'speed', us: 'rpm', si: 'rpm', format: both({ significant: 4 }) },
  voltage: { dimension: 'voltage', us: 'V', si: 'V' },
  current: { dimension: 'current', us: 'A', si: 'A' },
  power: { dimension: 'power', us: 'hp', si: 'kW' },
  time: { dimension: 'time', us: 's', si: 's', format: both({ significant: 2 }) },
  share: { dimension: 'ratio', us: '%', si: '%' },
  torque: { dimension: 'moment', us: 'ft·lb', si: 'N·m' },
  count: { us: '', si: '' },
};

/**
 * Unit and dimension of a box.
 *
 * @param measured - what is read
 * @param context - writer
 * @returns what a box carries; an empty unit for a bare count
 */
export function siteUnit(measured: Measured, { write }: Printing) {
  const { dimension, [write.system]: unit } = SITE_UNITS[measured];
  return { unit, ...(dimension && { dimension }) };
}

/**
 * A value as it is expected in a box, with its unit.
 *
 * @param value - SI value; nothing where there is none
 * @param measured - what is read
 * @param context - writer
 * @returns printed text, or undefined
 */
export function siteText(
  value: number | undefined,
  measured: Measured,
  { write }: Printing,
): string | undefined {
  if (value === undefined || !Number.isFinite(value)) return undefined;
  const { dimension, format, [write.system]: unit } = SITE_UNITS[measured];
  if (dimension === undefined) return write.plain(value);
  if (measured === 'gap') return gapText(value, write);
  if (measured === 'distance' && write.system === 'us')
    return write.quantity(value, 'length', { feetInches: true });
  const known =
    format?.[write.system].unit ?? (measured === 'distance' ? knownUnit(unit, 'length') : undefined);
  return write.quantity(value, dimension, { ...format?.[write.system], ...(known && { unit: known }) });
}

/** A feeler shows thousandths of an inch; what was read finer, or worked out, is not printed coarser than it is. */
function gapText(value: number, write: Writer): string {
  const decimals = write.system === 'us' ? 3 : 2;
  const steps = (value / (write.system === 'us' ? 0.0254 : 0.001)) * 10 ** decimals;
  const isFiner = Math.abs(steps) < 10 && Math.abs(steps - Math.round(steps)) > 0.05;
  return write.quantity(value, 'length', {
    decimals: isFiner ? decimals + 1 : decimals,
    unit: write.system === 'us' ? 'in' : 'mm',
  });
}
