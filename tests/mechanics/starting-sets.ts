import type { StartingSet } from '../../src/mechanics/start/drive-stages.js';
import { motorTorques } from '../../src/mechanics/start/motor-torque.js';

const RPM = Math.PI / 30;

/** 30 hp, four poles, 60 Hz, on a pump that asks for nine tenths of it. */
export const motor = motorTorques(
  { power: 22_371, speed: 1765 * RPM },
  { lockedRotor: 1.6, breakdown: 2.4, synchronousSpeed: 1800 * RPM },
);

export const load = { runningSpeed: 1765 * RPM, dutyTorque: 0.9 * motor.fullLoad, friction: 1.5 };

export const started = (method: StartingSet['method']): StartingSet => ({ motor, load, method });

export const softStarter = { kind: 'soft starter', currentLimit: 4, lockedRotorCurrent: 6.5 } as const;
export const drive = { kind: 'variable-speed drive', torqueLimit: 1.2, ramp: 5 } as const;
export const wyeDelta = { kind: 'wye-delta', changeover: 0.7 } as const;
