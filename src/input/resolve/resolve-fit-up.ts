import type { Citation } from '../../sources/index.js';
import type { Limits, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, given, type InputContext } from './input-context.js';

type FileFitUp = NonNullable<NonNullable<FileContent['limits']>['fit-up']>;

/** 1 in [m]. */
const INCH = 0.0254;
const assembly = (clause: string): Citation => ({ source: 'asme-pcc-1', clause, confidence: 'read' });

/** What is taken where the file says nothing. */
const published: Readonly<
  Record<
    keyof FileFitUp,
    {
      readonly what: string;
      readonly value: number;
      readonly citation: Citation;
      readonly effect: string;
    }
  >
> = {
  gap: {
    what: 'largest gap between flanges beyond the gasket',
    value: INCH / 16,
    citation: {
      source: 'api-686',
      clause: 'chapter 6, sections 4.6 to 4.8: gasket spacing within 1/16 in',
      confidence: 'read',
    },
    effect: 'How far a joint may be pulled together, and the nozzle load of it',
  },
  offset: {
    what: 'largest offset of the centre lines of two flanges',
    value: INCH / 16,
    citation: assembly('appendix E, centre lines within 1/16 in'),
    effect: 'How far a joint may be pushed across, and the nozzle load of it',
  },
  parallelism: {
    what: 'largest difference of the gap round the sealing faces',
    value: INCH / 32,
    citation: assembly('appendix E, 1/32 in at the outside of the sealing faces'),
    effect:
      'The nozzle load of a tilt; API RP 686 asks a third of it and less at a pump, 0.001 in to the inch of flange',
  },
};

/**
 * What two flanges may be off when they are brought together.
 *
 * @param reading - where assumptions go [-]
 * @param file - content of `limits.fit-up` [-]
 * @returns gap, offset and parallelism [m]
 */
export function resolveFitUp(
  reading: InputContext,
  file: FileFitUp | undefined,
): NonNullable<Limits['fitUp']> {
  const entry = (key: keyof FileFitUp): Sourced => {
    const path: Path = ['limits', 'fit-up', key];
    const own = file?.[key];
    if (own !== undefined) return given(own, path);
    const { value, ...taken } = published[key];
    reading.assume(path, { ...taken, value: reading.print(value, 'length') });
    return assumed(value, path);
  };
  return { gap: entry('gap'), offset: entry('offset'), parallelism: entry('parallelism') };
}
