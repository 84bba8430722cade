/** What good installation practice asks about: fittings on the pipe, the pump's own taps, what the service is. */

import type { DiffuserPart, FittingPart, Limits, Motor, Pump, Service, ValvePart } from '../installation.js';
import { pathText } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import type { WalkStep } from '../schema/piping.js';
import { given, givenBy, type InputContext } from './input-context.js';
import { partBase, type Step, type Stepped } from './walking.js';

/** Keys of the small things on the pipe. */
const FITTINGS = ['drain', 'vent', 'gauge-tap', 'start-up-screen'] as const;
type Fitting = (typeof FITTINGS)[number];
/** Names of services that speak of fire pumps. */
const FIRE = /\b(fire|sprinkler|hydrant|standpipe)s?\b/iu;

/**
 * Which small thing a step is, where it is one.
 *
 * @param step - step of a walk [-]
 * @returns its key [-]
 */
export function fittingOf(step: WalkStep): Fitting | undefined {
  return FITTINGS.find((key) => step[key] !== undefined);
}

/**
 * A small thing on the pipe.
 *
 * @param step - the step [-]
 * @param fitting - which it is [-]
 * @returns part [-]
 */
export function resolveFitting({ walking, path, pipe, file }: Step<Fitting>, fitting: Fitting): Stepped {
  const {
    name,
    section,
    path: at,
  } = partBase(walking.name(fitting.replace('gauge-', 'gauge ')), pathText(path), pipe);
  const part: FittingPart = {
    kind: 'fitting',
    name,
    path: at,
    section,
    fitting,
    ...(file.size !== undefined && { size: file.size }),
  };
  return { part };
}

/**
 * What the casing is fitted with.
 *
 * @param pump - content of `pump` [-]
 * @returns entries of the pump [-]
 */
export function pumpPractice(
  pump: FileContent['pump'],
): Pick<Pump, 'shaft' | 'drain' | 'vent' | 'gaugeTaps' | 'backflow'> {
  const { shaft, drain, vent, backflow } = pump;
  const taps = pump['gauge-taps'];
  return {
    ...(shaft !== undefined && { shaft }),
    ...(drain !== undefined && { drain: drain === 'yes' }),
    ...(vent !== undefined && { vent: vent === 'yes' }),
    ...(taps && {
      gaugeTaps: {
        ...(taps.suction !== undefined && { suction: taps.suction === 'yes' }),
        ...(taps.discharge !== undefined && { discharge: taps.discharge === 'yes' }),
      },
    }),
    ...(backflow !== undefined && { backflow }),
  };
}

/**
 * What the motor may do.
 *
 * @param file - content of `pump.motor` [-]
 * @returns entries of the motor [-]
 */
export function motorPractice(
  file: FileContent['pump']['motor'],
): Pick<Motor, 'serviceFactor' | 'shaftDown'> {
  const factor = file['service-factor'];
  const down = file['shaft-down'];
  return {
    ...(factor !== undefined && { serviceFactor: given(factor, ['pump', 'motor', 'service-factor']) }),
    ...(down !== undefined && { shaftDown: down === 'yes' }),
  };
}

/**
 * What the service is. A name that speaks of fire while nothing else is said is pointed out: a fire pump is not
 * reviewed here.
 *
 * @param reading - where the warning goes [-]
 * @param file - content of `service` [-]
 * @returns entries of the service [-]
 */
export function servicePractice(
  reading: InputContext,
  file: FileContent['service'],
): Pick<Service, 'duty' | 'hazards' | 'system'> {
  const { duty, hazards, system } = file;
  if (duty === undefined && FIRE.test(file.name))
    reading.warn('input.fire-in-name', ['service', 'name'], { name: file.name });
  return {
    ...(duty !== undefined && { duty }),
    ...(hazards !== undefined && { hazards }),
    ...(system !== undefined && { system }),
  };
}

/** What a suction diffuser does beside turning the flow. */
export function diffuserPractice({
  path,
  file,
}: Step<'suction-diffuser'>): Pick<DiffuserPart, 'straightens' | 'strainer' | 'straightAsked'> {
  const { straightens, strainer } = file;
  const asked = file['straight-asked'];
  return {
    ...(straightens !== undefined && { straightens: straightens === 'yes' }),
    ...(strainer !== undefined && { strainer: strainer === 'yes' }),
    ...(asked !== undefined && { straightAsked: given(asked, [...path, 'straight-asked']) }),
  };
}

/** Whether a valve can be shut, where the file says so. */
export function valvePractice({ file }: Step<'valve'>): Pick<ValvePart, 'shuts'> {
  return file.shuts === undefined ? {} : { shuts: file.shuts === 'yes' };
}

/**
 * Limits of good practice, each with the document it is taken from.
 *
 * @param file - content of `limits` [-]
 * @returns entries of the limits [-]
 */
export function practiceLimits(file: FileContent['limits']): Pick<Limits, 'velocity' | 'straightRun'> {
  const velocity = file?.velocity;
  const run = file?.['straight-run'];
  const entry = (key: 'suction' | 'discharge') => {
    const value = velocity?.[key];
    if (velocity === undefined || value === undefined) return {};
    return { [key]: givenBy(value, ['limits', 'velocity', key], velocity.source) };
  };
  return {
    ...(velocity && { velocity: { ...entry('suction'), ...entry('discharge') } }),
    ...(run && {
      straightRun: givenBy(run.diameters, ['limits', 'straight-run', 'diameters'], run.source),
    }),
  };
}
