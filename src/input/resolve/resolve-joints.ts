/** Parts that give: flexible connectors and grooved joints. */

import type { ConnectorPart, CouplingPart, JointStiffness } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import { given, practice } from './input-context.js';
import { resolveGrip } from './resolve-structure.js';
import type { Step, Stepped } from './walking.js';

const RIGID = Number.POSITIVE_INFINITY;

/**
 * A flexible connector.
 *
 * @param step - the step [-]
 * @returns part [-]
 */
export function resolveConnector(step: Step<'flexible-connector'>): Stepped {
  const { walking, path, pipe, file } = step;
  const name = walking.name('flexible connector');
  const stiffness = (key: keyof JointStiffness): number => {
    const own = file[key];
    if (own !== undefined) return own;
    walking.reading.assumeAlike(`connector ${key}`, name, [...path, key], {
      what: `${key} stiffness`,
      value: 'rigid',
      citation: practice('rigid where the maker gives no rate'),
      effect: 'A softer one passes less load to the nozzle',
    });
    return RIGID;
  };
  const part: ConnectorPart = {
    kind: 'flexible-connector',
    name,
    path: pathText(path),
    section: pipe.section,
    connector: file.kind,
    length: file.length,
    mass: given(file.weight, [...path, 'weight'], file),
    stiffness: {
      axial: stiffness('axial'),
      lateral: stiffness('lateral'),
      torsion: stiffness('torsion'),
      bending: stiffness('bending'),
    },
    thrustArea: given(file['thrust-area'], [...path, 'thrust-area']),
    rods: file.rods,
    ...rodGap(step),
  };
  return { part };
}

function rodGap({ walking, path, file }: Step<'flexible-connector'>): Pick<ConnectorPart, 'rodGap'> {
  const gap = file['rod-gap'];
  const gapPath: Path = [...path, 'rod-gap'];
  if (file.rods === 'gapped' && gap === undefined)
    walking.reading.report('input.missing', gapPath, { key: 'rod-gap' }, 'holder');
  if (file.rods !== 'gapped' && gap !== undefined)
    walking.reading.report('input.rod-gap-not-gapped', gapPath, { rods: file.rods }, 'key');
  return gap === undefined ? {} : { rodGap: gap };
}

/**
 * A grooved joint: rigid in every way, or, where flexible, free to bend and turn unless its own rates are given. One
 * that bends freely only so far holds rigidly from there on.
 *
 * @param step - the step [-]
 * @returns part [-]
 */
export function resolveCoupling(step: Step<'grooved-joint'>): Stepped {
  const { walking, path, pipe, file } = step;
  const { reading } = walking;
  const name = walking.name('grooved joint');
  const free = file['free-rotation'];
  if (free !== undefined && file.type === 'rigid')
    reading.report('input.free-rotation-of-rigid', [...path, 'free-rotation'], {}, 'key');
  if (free !== undefined && file.type === 'flexible' && file.bending === undefined) {
    reading.assumeAlike('bending of grooved joint', name, [...path, 'bending'], {
      what: 'stiffness against bending beyond its free rotation',
      value: 'rigid',
      citation: practice('the housing holds once its free rotation is used up'),
      effect: 'A softer one passes less load to the nozzle',
    });
  }
  const unstated = file.bending === undefined && file.torsion === undefined && free === undefined;
  const alike =
    unstated && file.type === 'rigid' ? resolveGrip(reading, { name, alike: walking.assumed }) : undefined;
  const turning = file.type === 'rigid' ? (alike ?? RIGID) : 0;
  const part: CouplingPart = {
    kind: 'grooved-joint',
    name,
    path: pathText(path),
    section: pipe.section,
    type: file.type,
    ...(free !== undefined && { freeRotation: free }),
    mass: given(file.weight, [...path, 'weight'], file),
    ...(unstated && alike === undefined && { gripUnstated: true }),
    stiffness: {
      axial: file.axial ?? RIGID,
      lateral: file.lateral ?? RIGID,
      torsion: file.torsion ?? turning,
      bending: file.bending ?? (free === undefined ? turning : RIGID),
    },
  };
  return { part };
}
