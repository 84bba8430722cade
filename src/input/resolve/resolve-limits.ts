import { allowableStress, heldEdition, heldEditionsText } from '../../catalog/index.js';
import type { Limits, NozzleAllowance, Service, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, catalogued, given, givenBy, type InputContext, practice } from './input-context.js';
import { vibrationLimit } from './resolve-electrical.js';
import { resolveFitUp } from './resolve-fit-up.js';
import { resolveJointFactor } from './resolve-joint-factor.js';
import { resolveLateral, resolveOccasionalFactor } from './resolve-lateral.js';
import { practiceLimits } from './resolve-practice.js';

type FileLimits = NonNullable<FileContent['limits']>;
type FileAllowance = NonNullable<NonNullable<NonNullable<FileLimits['nozzle-loads']>['maker']>['suction']>;

/** Cycles of heating and cooling up to which a code takes nothing off [-]. */
const USUAL_CYCLES = 7000;
/** 1 ft [m]. */
const BEND_DISTANCE = 0.3048;

/**
 * What the results are held against. A limit nobody gave is left out, never invented.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `limits` [-]
 * @param service - temperatures for the allowable stresses [-]
 * @param pipeMaterials - materials of the pipes [-]
 * @returns the limits, SI [-]
 */
export function resolveLimits(
  reading: InputContext,
  file: FileContent['limits'],
  service: Service,
  pipeMaterials: readonly string[],
): Limits {
  const longest = file?.span?.longest;
  const stress = resolveStress(reading, file?.['pipe-stress'], service, pipeMaterials);
  return {
    nozzle: resolveNozzle(reading, file?.['nozzle-loads']),
    ...(file?.['owner-rules'] !== undefined && { ownerRules: file['owner-rules'] }),
    stress,
    rods: { edition: rodEdition(reading, file) },
    span: longest === undefined ? {} : { longest: given(longest, ['limits', 'span', 'longest']) },
    firstSupport: resolveFirstSupport(reading, file?.['first-support']),
    ...resolveLateral(reading, file, stress.occasionalFactor),
    ...resolveVibration(reading, file),
    ...practiceLimits(file),
    ...vibrationLimit(file),
    fitUp: resolveFitUp(reading, file?.['fit-up']),
  };
}

/**
 * Edition of the rod ratings; the older ratings are lower.
 *
 * @param reading - where the assumption goes [-]
 * @param file - content of `limits` [-]
 * @returns the edition [-]
 */
export function rodEdition(reading: InputContext, file: FileContent['limits']): 'older' | 'later' {
  if (file?.rods) return file.rods.edition;
  reading.assume(['limits', 'rods', 'edition'], {
    what: 'edition of the rod ratings',
    value: 'older',
    citation: {
      source: 'mss-sp-58',
      clause: '1993 and before; its ratings are the lower ones',
      confidence: 'read',
    },
    effect: 'The later edition allows about a fifth more on each rod',
  });
  return 'older';
}

function resolveNozzle(reading: InputContext, file: FileLimits['nozzle-loads']): Limits['nozzle'] {
  const path: Path = ['limits', 'nozzle-loads'];
  const { basis, compare = [], maker, 'named-in': namedIn } = file ?? {};
  // A table made for other machines decides nothing by itself.
  const decides = basis === 'maker' || namedIn !== undefined;
  if ((basis === 'maker' || compare.includes('maker')) && !maker)
    reading.report('input.missing', [...path, 'maker'], { key: 'maker' }, 'holder');
  if (maker && !maker.suction && !maker.discharge) reading.report('input.maker-empty', [...path, 'maker']);
  return {
    ...(basis !== undefined && (decides ? { basis } : { unnamed: basis })),
    ...(namedIn && { namedIn }),
    comparisons: [...new Set([...(basis === undefined || decides ? [] : [basis]), ...compare])],
    ...(maker && {
      maker: {
        document: maker.document,
        suction: allowance(maker.suction),
        discharge: allowance(maker.discharge),
      },
    }),
  };
}

function allowance(file: FileAllowance | undefined): NozzleAllowance {
  const keys = {
    axialForce: file?.['axial-force'],
    verticalForce: file?.['vertical-force'],
    crossForce: file?.['cross-force'],
    resultantForce: file?.['resultant-force'],
    axialMoment: file?.['axial-moment'],
    verticalMoment: file?.['vertical-moment'],
    crossMoment: file?.['cross-moment'],
    resultantMoment: file?.['resultant-moment'],
  };
  return Object.fromEntries(Object.entries(keys).filter(([, value]) => value !== undefined));
}

function resolveStress(
  reading: InputContext,
  file: FileLimits['pipe-stress'],
  service: Service,
  materials: readonly string[],
): ResolvedStress {
  const path = (key: string): Path => ['limits', 'pipe-stress', key];
  const code = file?.code ?? 'B31.9';
  if (file?.code === undefined) {
    reading.assume(path('code'), {
      what: 'code of the pipe stresses',
      value: code,
      citation: practice('building services piping'),
      effect: 'Allowable stresses and stress factors',
    });
  }
  const edition = file?.edition?.trim();
  const held = heldEdition({ code, ...(edition !== undefined && { edition }) });
  const by = edition ?? held;
  if (edition === undefined && held !== undefined) {
    reading.assume(path('edition'), {
      what: 'edition of the code of the pipe stresses',
      value: held,
      citation: practice(`the newest held; held are ${heldEditionsText()}`),
      effect: 'Every stress verdict; the edition in force may be another',
    });
  }
  if (file?.cycles === undefined) {
    reading.assume(path('cycles'), {
      what: 'heating and cooling cycles',
      value: '7,000',
      citation: {
        source: 'asme-b31.1',
        clause: 'stress range factor 1.0 to 7,000 cycles',
        confidence: 'memory',
      },
      effect: 'More cycles lower the allowable displacement stress',
    });
  }
  const allowable = (key: 'hot' | 'cold', temperature: number): Sourced | undefined => {
    const own = file?.[key];
    if (own !== undefined) return given(own, path(key));
    if (held === undefined) return undefined;
    const found = materials.map((material) => allowableStress({ code, material, temperature }));
    // Where one material of the piping has no sourced value, none is taken for the whole.
    const listed = found.filter((entry) => entry !== undefined);
    const least = listed.find(({ value }) => value === Math.min(...listed.map((entry) => entry.value)));
    return least && listed.length === found.length ? catalogued(least) : undefined;
  };
  const hot = allowable('hot', service.hotTemperature.value);
  const cold = allowable(
    'cold',
    Math.min(service.coldTemperature.value, service.installationTemperature.value),
  );
  return {
    code,
    ...(by !== undefined && { edition: by }),
    ...(hot && { hot }),
    ...(cold && { cold }),
    cycles:
      file?.cycles === undefined ? assumed(USUAL_CYCLES, path('cycles')) : given(file.cycles, path('cycles')),
    occasionalFactor: resolveOccasionalFactor(reading, file?.['occasional-factor'], code),
    jointFactor: resolveJointFactor(reading, file?.['joint-factor'], materials),
  };
}

type ResolvedStress = Limits['stress'] & Required<Pick<Limits['stress'], 'occasionalFactor'>>;

function resolveFirstSupport(
  reading: InputContext,
  file: FileLimits['first-support'],
): Limits['firstSupport'] {
  const path = (key: string): Path => ['limits', 'first-support', key];
  const pump = file?.pump === undefined ? {} : { pump: given(file.pump, path('pump')) };
  if (file?.bend !== undefined) return { ...pump, bend: given(file.bend, path('bend')) };
  reading.assume(path('bend'), {
    what: 'farthest support from a bend',
    value: reading.print(BEND_DISTANCE, 'length'),
    citation: {
      source: 'ufgs-15562a',
      clause: 'support within 1 ft of each change of direction',
      confidence: 'read',
    },
    effect: 'Bends without a support so near are listed',
  });
  return { ...pump, bend: assumed(BEND_DISTANCE, path('bend')) };
}

function resolveVibration(
  reading: InputContext,
  file: FileContent['limits'],
): Pick<Limits, 'frequencyMargin' | 'damping' | 'startMovement'> {
  const margin = file?.['frequency-margin'];
  const movement = file?.['start-movement'];
  const damping: Path = ['limits', 'damping'];
  if (file?.damping === undefined) {
    reading.assume(damping, {
      what: 'damping of the piping',
      value: 'none',
      citation: practice('none, the safe side'),
      effect: 'Damping lowers the movement and the loads while the motor starts',
    });
  }
  return {
    ...(margin && {
      frequencyMargin: givenBy(margin.share, ['limits', 'frequency-margin', 'share'], margin.source),
    }),
    damping: file?.damping === undefined ? assumed(0, damping) : given(file.damping, damping),
    ...(movement !== undefined && { startMovement: given(movement, ['limits', 'start-movement']) }),
  };
}
