/** The motor: weight, rating, how it starts and between which speeds it runs. */
import { lockedRotorCurrentAssumed } from '../../catalog/index.js';
import type { Motor, Sourced, StartMethod } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, given, type InputContext, offsetVector, practice } from './input-context.js';
import { motorElectrical } from './resolve-electrical.js';
import { motorPractice } from './resolve-practice.js';
import { resolveBracket } from './resolve-structure.js';

type FileMotor = FileContent['pump']['motor'];

const MOTOR: Path = ['pump', 'motor'];
/** 18 lb per hp, the upper end of what cast-iron enclosed four-pole motors weigh [kg/W]. */
const MASS_PER_POWER = (18 * 0.45359237) / 745.6998715822702;

/**
 * The motor with its rating, how it starts, and between which speeds it runs.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `pump.motor` [-]
 * @returns the motor, SI [-]
 */
export function resolveMotor(reading: InputContext, file: FileMotor): Motor {
  const start = startMethod(reading, file);
  const { inertia } = file;
  return {
    mass: motorMass(reading, file),
    centre: offsetVector(file['centre-of-gravity']),
    power: file.power,
    speed: file.speed,
    start,
    ...torques(reading, file),
    ...lockedRotorCurrent(reading, file, start),
    ...(inertia !== undefined && { inertia: given(inertia, [...MOTOR, 'inertia']) }),
    ...driveSpeeds(reading, file, start),
    ...motorPractice(file),
    ...motorElectrical(file),
    ...resolveBracket(reading, file.bracket),
  };
}

function motorMass(reading: InputContext, file: FileMotor): Sourced {
  const path: Path = [...MOTOR, 'weight'];
  if (file.weight !== undefined) return given(file.weight, path, file);
  const mass = MASS_PER_POWER * file.power;
  reading.assume(path, {
    what: 'weight of the motor',
    value: reading.print(mass, 'mass'),
    citation: practice('18 lb per hp, upper end for cast-iron enclosed motors'),
    effect: 'Support and nozzle loads; may be off by 40 %: read the nameplate',
  });
  return assumed(mass, path);
}

function startMethod(reading: InputContext, { start }: FileMotor): StartMethod {
  if (start === undefined) {
    reading.assume([...MOTOR, 'start'], {
      what: 'start of the motor',
      value: 'across the line',
      citation: practice('across the line where nothing is said'),
      effect: 'The hardest start: every other one twists the pump less',
    });
    return { kind: 'across the line' };
  }
  if (typeof start === 'string') return { kind: start };
  const soft = start['soft starter'];
  const drive = start['variable-speed drive'];
  if (drive) return { kind: 'variable-speed drive', torqueLimit: drive['torque-limit'], ramp: drive.ramp };
  if (soft) {
    const ramp = soft.ramp === undefined ? {} : { ramp: soft.ramp };
    return { kind: 'soft starter', currentLimit: soft['current-limit'], ...ramp };
  }
  // The schema has seen to it that one of the three is there.
  return { kind: 'autotransformer', tap: start.autotransformer?.tap ?? 1 };
}

function torques(
  reading: InputContext,
  file: FileMotor,
): Pick<Motor, 'lockedRotorTorque' | 'breakdownTorque'> {
  const lockedRotor = file['locked-rotor-torque'];
  const breakdown = file['breakdown-torque'];
  const path: Path = [...MOTOR, 'breakdown-torque'];
  const rated = file.power / file.speed;
  if (breakdown !== undefined && !(breakdown > rated)) {
    reading.report('input.breakdown-below-rated', path, {
      breakdown: reading.print(breakdown, 'moment'),
      rated: reading.print(rated, 'moment'),
    });
  } else if (breakdown !== undefined && lockedRotor !== undefined && lockedRotor > breakdown)
    reading.warn('input.locked-rotor-over-breakdown', [...MOTOR, 'locked-rotor-torque'], {
      lockedRotor: reading.print(lockedRotor, 'moment'),
      breakdown: reading.print(breakdown, 'moment'),
    });
  return {
    ...(lockedRotor !== undefined && {
      lockedRotorTorque: given(lockedRotor, [...MOTOR, 'locked-rotor-torque']),
    }),
    ...(breakdown !== undefined && { breakdownTorque: given(breakdown, path) }),
  };
}

/** Needed only where a limit of the current stands against it. */
function lockedRotorCurrent(
  reading: InputContext,
  file: FileMotor,
  start: StartMethod,
): Pick<Motor, 'lockedRotorCurrent'> {
  const path: Path = [...MOTOR, 'locked-rotor-current'];
  const own = file['locked-rotor-current'];
  const listed = lockedRotorCurrentAssumed();
  const current = own ?? listed.value;
  if (start.kind === 'soft starter' && start.currentLimit >= current) {
    reading.warn('input.current-limit-idle', [...MOTOR, 'start', 'soft starter', 'current-limit'], {
      limit: reading.print(start.currentLimit, 'ratio'),
      current: reading.print(current, 'ratio'),
    });
  }
  if (own !== undefined) return { lockedRotorCurrent: given(own, path) };
  if (start.kind !== 'soft starter') return {};
  reading.assume(path, {
    what: 'locked-rotor current over full-load current',
    value: reading.print(listed.value, 'ratio'),
    citation: listed.citation,
    effect: 'A higher one leaves less torque under the same limit of current: read the nameplate',
  });
  return { lockedRotorCurrent: assumed(listed.value, path) };
}

function driveSpeeds(reading: InputContext, file: FileMotor, start: StartMethod): Pick<Motor, 'speeds'> {
  const { speeds } = file;
  if (!speeds) return {};
  const path: Path = [...MOTOR, 'speeds'];
  if (start.kind !== 'variable-speed drive')
    reading.report('input.speeds-without-drive', path, { start: start.kind }, 'key');
  if (speeds.lowest > speeds.highest) {
    reading.report('input.speeds-out-of-order', [...path, 'lowest'], {
      lowest: reading.print(speeds.lowest, 'speed'),
      highest: reading.print(speeds.highest, 'speed'),
    });
  }
  return { speeds };
}
