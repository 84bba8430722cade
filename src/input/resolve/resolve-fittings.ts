/** Elbows and reducers. */
import { findElbow, findReducer, nominalInches, reducerSmallEnds } from '../../catalog/index.js';
import type { ElbowPart, ReducerPart, Sourced, Vec3 } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import { angleBetween, isParallel } from '../vectors.js';
import { catalogued, computed, given, placeholder, practice } from './input-context.js';
import { attached } from './resolve-support.js';
import { partBase, type Step, type Stepped } from './walking.js';

/** An elbow of a table turns 90 or 45 degrees; other turns are cut to measure and need their own radius [rad]. */
const LISTED_TURNS = [Math.PI / 2, Math.PI / 4];
const SAME_ANGLE = 1e-6;

/**
 * An elbow: where it turns to, its radius and mass.
 *
 * @param step - the step [-]
 * @returns part and new direction [-]
 */
export function resolveElbow(step: Step<'elbow'>): Stepped {
  const { walking, path, travel, pipe, file } = step;
  const own = Array.isArray(file) ? undefined : (file as Exclude<typeof file, readonly number[]>);
  const turn = own ? own.turn : (file as Vec3);
  const turnPath: Path = own ? [...path, 'turn'] : path;
  const straight = isParallel(travel, turn);
  if (straight) walking.reading.report('input.no-turn', turnPath, {}, 'value');
  const angle = angleBetween(travel, turn);
  const { radius, mass } = straight
    ? { radius: placeholder, mass: placeholder }
    : elbowSize(step, own, angle, turnPath);
  const name = walking.name('elbow');
  const part: ElbowPart = {
    kind: 'elbow',
    ...partBase(name, pathText(path), pipe),
    radius,
    turn,
    mass: own?.weight === undefined ? mass : given(own.weight, [...path, 'weight'], own),
    ...attached(own?.support, { walking, path, travel, pipe }),
  };
  return { part, travel: straight ? travel : turn };
}

type OwnElbow = Extract<Step<'elbow'>['file'], { readonly turn: unknown }>;

function elbowSize(
  step: Step<'elbow'>,
  own: OwnElbow | undefined,
  angle: number,
  turnPath: Path,
): { readonly radius: Sourced; readonly mass: Sourced } {
  const { walking, pipe, path } = step;
  const radius = own?.radius ?? pipe.elbows ?? 'long';
  const radiusPath: Path = own?.radius === undefined ? pipe.elbowsPath : [...path, 'radius'];
  if (own?.radius === undefined && pipe.elbows === undefined) {
    walking.reading.assume(['piping', 'elbows'], {
      what: 'radius of elbows',
      value: 'long',
      citation: practice('long-radius elbows where nothing is said'),
      effect: 'Short ones are stiffer and stressed higher',
    });
  }
  if (typeof radius === 'number') {
    const mass = radius * angle * pipe.section.massPerLength.value;
    return {
      radius: given(radius, radiusPath),
      mass: computed(mass, 'arc length × pipe mass per length', {
        source: 'input',
        clause: 'own radius',
        confidence: 'computed',
      }),
    };
  }
  if (!LISTED_TURNS.some((listed) => Math.abs(listed - angle) < SAME_ANGLE)) {
    walking.reading.report('input.odd-turn', turnPath, { angle: walking.reading.print(angle, 'angle') });
    return { radius: placeholder, mass: placeholder };
  }
  const { nps = '' } = pipe.section;
  const found = findElbow({
    nps,
    schedule: pipe.schedule ?? '',
    material: pipe.tableMaterial,
    radius,
    angle,
  });
  if (found) return { radius: catalogued(found.radius), mass: catalogued(found.mass) };
  // Where the pipe itself could not be made out, that has been said.
  if (pipe.section.name !== '')
    walking.reading.report('input.elbow-not-listed', path, { pipe: pipe.section.name });
  return { radius: placeholder, mass: placeholder };
}

/**
 * A reducer: the pipe behind it, its length and mass.
 *
 * @param step - the step [-]
 * @returns part and new pipe [-]
 */
export function resolveReducer(step: Step<'reducer'>): Stepped {
  const { walking, path, pipe, file, travel } = step;
  const { reading } = walking;
  const name = walking.name('reducer');
  const to = pipe.resized(file.to, file.schedule, [...path, 'to']);
  walking.materials.add(to.section.material);
  if (file.to === pipe.section.nps) reading.report('input.no-reduction', [...path, 'to'], { size: file.to });
  const shape = file.kind ?? 'concentric';
  if (file.kind === undefined) {
    reading.assumeAlike('reducer', name, [...path, 'kind'], {
      what: 'shape',
      value: 'concentric',
      citation: practice('concentric where nothing is said'),
      effect: 'An eccentric one moves the centre line',
    });
  }
  const isVertical = Math.hypot(travel[0], travel[1]) < 1e-6;
  if (shape === 'eccentric' && file.flat === undefined && !isVertical)
    reading.report('input.missing', [...path, 'flat'], { key: 'flat' }, 'holder');
  if (shape === 'concentric' && file.flat !== undefined)
    reading.report('input.flat-of-concentric', [...path, 'flat'], {}, 'key');
  const found = file.to === pipe.section.nps ? undefined : listedReducer(step, file.to, to.schedule);
  const length =
    file.length === undefined ? found && catalogued(found.length) : given(file.length, [...path, 'length']);
  const mass =
    file.weight === undefined
      ? found && catalogued(found.mass)
      : given(file.weight, [...path, 'weight'], file);
  if (
    (!length || !mass) &&
    file.to !== pipe.section.nps &&
    pipe.section.name !== '' &&
    to.section.name !== ''
  ) {
    const large =
      Math.max(nominalInches(file.to) ?? 0, nominalInches(pipe.section.nps ?? '') ?? 0) ===
      nominalInches(file.to)
        ? file.to
        : (pipe.section.nps ?? '');
    reading.report('input.reducer-not-listed', [...path, 'to'], {
      from: pipe.section.name,
      to: file.to,
      large,
      words: reducerSmallEnds(large),
    });
  }
  const part: ReducerPart = {
    kind: 'reducer',
    ...partBase(name, pathText(path), pipe),
    to: to.section,
    length: length ?? placeholder,
    mass: mass ?? placeholder,
    shape,
    ...(file.flat !== undefined && { flat: file.flat }),
  };
  return { part, pipe: to };
}

function listedReducer(step: Step<'reducer'>, to: string, toSchedule: string | undefined) {
  const { nps = '' } = step.pipe.section;
  const material = step.pipe.tableMaterial;
  const schedule = step.pipe.schedule ?? '';
  const grows = (nominalInches(to) ?? 0) > (nominalInches(nps) ?? 0);
  const [large, small] = grows ? [to, nps] : [nps, to];
  const [largeSchedule, smallSchedule] = grows
    ? [toSchedule ?? schedule, schedule]
    : [schedule, toSchedule ?? schedule];
  return findReducer({
    large,
    small,
    schedule: largeSchedule,
    material,
    ...(smallSchedule !== largeSchedule && { smallSchedule }),
  });
}
