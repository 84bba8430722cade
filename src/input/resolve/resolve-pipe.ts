/** From size, schedule and material to the pipe of a line, and again where a reducer or a tee changes it. */
import { findPipe, materialNames, pipeSchedules, pipeSizes, tubeMassPerLength } from '../../catalog/index.js';
import type { Covering, PipeSection } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { computed, type InputContext, nearest, placeholder, practice } from './input-context.js';
import { resolveCovering } from './resolve-covering.js';
import type { MaterialFinder } from './resolve-materials.js';

type FilePiping = FileContent['piping'];
/** What a line or the whole piping may say of its pipe. */
export type FilePipe = Pick<
  FilePiping,
  'size' | 'schedule' | 'outside-diameter' | 'wall' | 'material' | 'elbows' | 'insulation'
>;

/** What a line is made of where the walk stands. */
export interface Pipe {
  readonly section: PipeSection;
  readonly schedule?: string;
  /** Material under which the tables know the pipe; empty for materials of the user's own. */
  readonly tableMaterial: string;
  readonly covering?: Covering;
  /** Pipe of another size of the same line. */
  readonly resized: (size: string, schedule: string | undefined, path: Path) => Pipe;
  readonly elbows: FilePipe['elbows'];
  /** Where the radius of elbows would stand. */
  readonly elbowsPath: Path;
}

/** What every choice of pipe needs. */
export interface PipeChoice {
  readonly reading: InputContext;
  readonly materials: MaterialFinder;
  readonly whole: FilePipe;
  readonly line: FilePipe;
  readonly linePath: Path;
}

/**
 * The pipe a line starts with: what the line says, else what the piping says.
 *
 * @param choice - both, and where they stand [-]
 * @returns the pipe [-]
 */
export function linePipe(choice: PipeChoice): Pipe {
  const { reading, line, whole } = choice;
  const value = <Key extends keyof FilePipe>(key: Key): FilePipe[Key] => line[key] ?? whole[key];
  const path = (key: keyof FilePipe): Path =>
    line[key] === undefined ? ['piping', key] : [...choice.linePath, key];
  const material = value('material');
  const own = { outsideDiameter: value('outside-diameter'), wall: value('wall') };
  const size = value('size');
  if (material === undefined)
    reading.report('input.missing', path('material'), { key: 'material' }, 'holder');
  if (size === undefined && own.outsideDiameter === undefined)
    reading.report('input.missing', path('size'), { key: 'size' }, 'holder');
  if (value('schedule') === undefined && own.wall === undefined)
    reading.report('input.missing', path('schedule'), { key: 'schedule' }, 'holder');
  if (value('insulation') === undefined) {
    reading.assume(['piping', 'insulation'], {
      what: 'insulation',
      value: 'none',
      citation: practice('bare pipe where nothing is said'),
      effect: 'Insulation adds weight to every span and support',
    });
  }
  return makePipe(choice, { size, schedule: value('schedule'), own, material: material ?? '' }, path);
}

interface Wanted {
  readonly size: string | undefined;
  readonly schedule: string | undefined;
  readonly own: { readonly outsideDiameter: number | undefined; readonly wall: number | undefined };
  readonly material: string;
}

function makePipe(
  choice: PipeChoice,
  wanted: Wanted,
  path: (key: 'size' | 'schedule' | 'material' | 'wall' | 'elbows' | 'insulation') => Path,
): Pipe {
  const { line, whole } = choice;
  const { section, schedule } =
    wanted.material === '' ? { section: noSection, schedule: undefined } : makeSection(choice, wanted, path);
  const covering = resolveCovering(
    choice.reading,
    line.insulation ?? whole.insulation,
    section,
    path('insulation'),
  );
  return {
    section,
    ...(schedule !== undefined && { schedule }),
    tableMaterial: materialNames().includes(section.material) ? section.material : '',
    ...(covering && { covering }),
    elbows: line.elbows ?? whole.elbows,
    elbowsPath: path('elbows'),
    resized: (size, newSchedule, at) =>
      makePipe(
        choice,
        {
          ...wanted,
          size,
          schedule: newSchedule ?? wanted.schedule,
          own: { outsideDiameter: undefined, wall: undefined },
        },
        (key) =>
          key === 'size' || (key === 'schedule' && newSchedule === undefined)
            ? at
            : key === 'schedule'
              ? [...at.slice(0, -1), 'schedule']
              : path(key),
      ),
  };
}

const noSection: PipeSection = {
  name: '',
  outsideDiameter: Number.NaN,
  wall: Number.NaN,
  material: '',
  massPerLength: placeholder,
};

function makeSection(
  choice: PipeChoice,
  wanted: Wanted,
  path: (key: 'size' | 'schedule' | 'material' | 'wall') => Path,
): { readonly section: PipeSection; readonly schedule: string | undefined } {
  const { reading, materials } = choice;
  const { size, schedule, own, material } = wanted;
  const metal = materials.find(material, path('material'));
  const isListed = materialNames().includes(material);
  const listed =
    isListed && size !== undefined && schedule !== undefined
      ? findPipe({ nps: size, schedule, material })
      : undefined;
  if (listed && own.outsideDiameter === undefined && own.wall === undefined) {
    const massPerLength = computed(
      listed.massPerLength,
      'wall area × density of the metal',
      listed.massCitation,
    );
    const { nps, outsideDiameter, wall } = listed;
    return {
      section: { name: `NPS ${nps} ${listed.schedule}`, nps, outsideDiameter, wall, material, massPerLength },
      schedule: listed.schedule,
    };
  }
  const anySchedule = isListed && size !== undefined ? pipeSchedules(size, material)[0] : undefined;
  const standard =
    size !== undefined && anySchedule !== undefined
      ? findPipe({ nps: size, schedule: anySchedule, material })
      : undefined;
  const outsideDiameter = own.outsideDiameter ?? standard?.outsideDiameter;
  if (outsideDiameter === undefined || own.wall === undefined || !metal) {
    if (metal && size !== undefined && schedule !== undefined)
      reportUnlisted(reading, { size, schedule, material }, path);
    return { section: noSection, schedule };
  }
  if (!(own.wall < outsideDiameter / 2))
    reading.report('input.wall-too-thick', path('wall'), { found: reading.print(own.wall, 'length') });
  const mass = tubeMassPerLength({ outsideDiameter, wall: own.wall }, metal.density);
  const name = `${reading.print(outsideDiameter, 'length')} × ${reading.print(own.wall, 'length')}`;
  const massPerLength = computed(mass, 'wall area × density of the metal', {
    source: 'input',
    clause: 'own pipe',
    confidence: 'computed',
  });
  return {
    section: {
      name,
      ...(size !== undefined && { nps: size }),
      outsideDiameter,
      wall: own.wall,
      material,
      massPerLength,
    },
    schedule,
  };
}

function reportUnlisted(
  reading: InputContext,
  wanted: { readonly size: string; readonly schedule: string; readonly material: string },
  path: (key: 'size' | 'schedule' | 'material') => Path,
): void {
  const { size, schedule, material } = wanted;
  const schedules = materialNames().includes(material) ? pipeSchedules(size, material) : [];
  if (!materialNames().includes(material) || pipeSizes(material).length === 0)
    reading.report('input.no-pipe-table', path('material'), { material });
  else if (schedules.length === 0)
    reading.report('input.size-not-in-material', path('size'), {
      found: size,
      material,
      sizes: pipeSizes(material),
    });
  else
    reading.report('input.unknown-schedule', path('schedule'), {
      ...nearest(schedule, schedules),
      size,
      material,
    });
}
