/** Heavy things in the line: valves, suction diffusers, weights. */
import { findValve, valveKinds, valveSizes } from '../../catalog/index.js';
import type { DiffuserPart, Sourced, ValvePart, WeightPart } from '../installation.js';
import { pathText } from '../pending-issue.js';
import { isParallel } from '../vectors.js';
import {
  catalogued,
  computed,
  given,
  nearest,
  offsetVector,
  placeholder,
  practice,
} from './input-context.js';
import { resolveBodyFlange, valveFlange } from './resolve-body-flange.js';
import { diffuserPractice, valvePractice } from './resolve-practice.js';
import { attached } from './resolve-support.js';
import { partBase, type Step, type Stepped } from './walking.js';

/**
 * A valve or another heavy device: length, mass and contents from the catalogue, or its own.
 *
 * @param step - the step [-]
 * @returns part [-]
 */
export function resolveValve(step: Step<'valve'>): Stepped {
  const { walking, path, pipe, file } = step;
  const name = walking.name(
    /valve|strainer|check|device|separator$/u.test(file.kind) ? file.kind : `${file.kind} valve`,
  );
  const listed = findValve({ kind: file.kind, class: file.class ?? '', nps: pipe.section.nps ?? '' });
  if ((file.weight === undefined || file.length === undefined) && !listed) reportUnlisted(step);
  const length =
    file.length === undefined
      ? listed
        ? catalogued(listed.faceToFace)
        : placeholder
      : given(file.length, [...path, 'length']);
  const centre = file['centre-of-gravity'];
  if (!centre) {
    walking.reading.assumeAlike('valve', name, [...path, 'centre-of-gravity'], {
      what: 'centre of gravity',
      value: 'middle of the body',
      citation: practice('middle of the body where nothing is said'),
      effect: 'An operator to one side adds moment',
    });
  }
  const ends = file.ends ?? listed?.ends ?? endsByNeighbours(step, name);
  const part: ValvePart = {
    kind: 'valve',
    ...partBase(name, pathText(path), pipe),
    valve: file.kind,
    length,
    mass:
      file.weight === undefined
        ? listed
          ? catalogued(listed.mass)
          : placeholder
        : given(file.weight, [...path, 'weight'], file),
    offset: centre ? offsetVector(centre) : [0, 0, 0],
    ends,
    ...valveFlange(step, ends, listed),
    contents: contentsOf(
      step,
      length,
      file.length === undefined && listed ? catalogued(listed.contents) : undefined,
    ),
    ...valvePractice(step),
  };
  return { part };
}

function contentsOf(
  { file, path, pipe }: Step<'valve'>,
  length: Sourced,
  listed: Sourced | undefined,
): Sourced {
  if (file.contents !== undefined) return given(file.contents, [...path, 'contents']);
  if (listed) return listed;
  const bore = pipe.section.outsideDiameter - 2 * pipe.section.wall;
  return computed(
    (Math.PI / 4) * bore ** 2 * length.value,
    'bore area of the pipe × own length',
    practice('full bore'),
  );
}

function reportUnlisted({ walking, path, pipe, file }: Step<'valve'>): void {
  const { reading } = walking;
  if (pipe.section.name === '') return;
  if (!valveKinds().includes(file.kind)) {
    const near = nearest(file.kind, valveKinds());
    reading.report('input.unknown-valve', [...path, 'kind'], near);
    return;
  }
  if (file.class === undefined) {
    reading.report('input.missing', [...path, 'class'], { key: 'class' }, 'holder');
    return;
  }
  const words = valveSizes({ kind: file.kind, class: file.class });
  const code = words.length === 0 ? 'input.valve-class' : 'input.valve-not-listed';
  reading.report(code, [...path, 'class'], {
    found: file.class,
    kind: file.kind,
    size: pipe.section.name,
    words,
  });
}

/** Ends nobody named follow from what stands beside the valve. */
function endsByNeighbours({ walking, path, before, after }: Step<'valve'>, name: string): ValvePart['ends'] {
  if (before?.flange || after?.flange) return 'flanged';
  if (before?.['grooved-joint'] || after?.['grooved-joint']) return 'grooved';
  walking.reading.assumeAlike('valve ends', name, [...path, 'ends'], {
    what: 'ends',
    value: 'flanged',
    citation: practice('flanged where nothing is said'),
    effect: 'Which flange joints are checked',
  });
  return 'flanged';
}

/**
 * A suction diffuser: an elbow, a strainer and a change of size in one body.
 *
 * @param step - the step [-]
 * @returns part, and the direction and pipe behind it [-]
 */
export function resolveDiffuser(step: Step<'suction-diffuser'>): Stepped {
  const { walking, path, pipe, file, travel } = step;
  const straight = isParallel(travel, file.turn);
  if (straight) walking.reading.report('input.no-turn', [...path, 'turn']);
  const to =
    file.to === undefined || (file.to === pipe.section.nps && file.schedule === undefined)
      ? pipe
      : pipe.resized(file.to, file.schedule, [...path, 'to']);
  walking.materials.add(to.section.material);
  const part: DiffuserPart = {
    kind: 'suction-diffuser',
    ...partBase(walking.name('suction diffuser'), pathText(path), pipe),
    turn: file.turn,
    to: to.section,
    ...diffuserFlanges(step, to),
    pumpLeg: given(file['pump-leg'], [...path, 'pump-leg']),
    pipeLeg: given(file['pipe-leg'], [...path, 'pipe-leg']),
    mass: given(file.weight, [...path, 'weight'], file),
    contents: given(file.contents, [...path, 'contents']),
    ...diffuserPractice(step),
    ...attached(file.support, { walking, path, travel, pipe }),
  };
  return { part, travel: straight ? travel : file.turn, pipe: to };
}

/** Both flanges of a suction diffuser are of one standard and class, each of the size of its side. */
function diffuserFlanges(
  { walking, path, pipe, file }: Step<'suction-diffuser'>,
  to: Step<'suction-diffuser'>['pipe'],
): Pick<DiffuserPart, 'flanges'> {
  const { flange } = file;
  if (flange === undefined) return {};
  const of = (side: Step<'suction-diffuser'>['pipe']) =>
    resolveBodyFlange(walking.reading, flange, side.section.nps ?? '', [...path, 'flange']);
  return { flanges: { pump: of(pipe), pipe: of(to) } };
}

/**
 * A weight without length.
 *
 * @param step - the step [-]
 * @returns part [-]
 */
export function resolveWeight(step: Step<'weight'>): Stepped {
  const { walking, path, pipe, file } = step;
  const part: WeightPart = {
    kind: 'weight',
    name: walking.name(file.name),
    path: pathText(path),
    section: pipe.section,
    mass: given(file.weight, [...path, 'weight'], file),
  };
  return { part };
}
