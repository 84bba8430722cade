/** What is taken for a start where the file says nothing; the model takes the same values. */
import { greatestTorqueAssumed, turningInertia } from '../../catalog/index.js';
import type { Motor, Pump } from '../installation.js';
import type { Path } from '../pending-issue.js';
import { type InputContext, practice } from './input-context.js';

const MOTOR: Path = ['pump', 'motor'];

/**
 * Notes what a start is worked out with where the file leaves it open: torques, inertia, torque of the water.
 *
 * @param reading - where assumptions go [-]
 * @param pump - the pump as far as it was read [-]
 */
export function noteStart(reading: InputContext, pump: Pump): void {
  noteTorques(reading, pump.motor);
  noteInertia(reading, pump);
  if (pump.duty.efficiency === undefined) {
    reading.assume(['pump', 'duty', 'efficiency'], {
      what: 'torque of the water at running speed',
      value: `${reading.print(pump.motor.power / pump.motor.speed, 'moment')}, that of the rated motor`,
      citation: practice('the motor is no smaller than its pump needs'),
      effect: 'Run-up time, and the twist underway and at switching off: give the efficiency at the duty',
    });
  }
}

/** Under a drive the limit of the torque takes the place of the motor's own. */
function noteTorques(reading: InputContext, motor: Motor): void {
  const { lockedRotorTorque, breakdownTorque } = motor;
  if (motor.start?.kind === 'variable-speed drive') return;
  if (lockedRotorTorque !== undefined && breakdownTorque !== undefined) return;
  const listed = greatestTorqueAssumed({ power: motor.power });
  const taken = Math.max((listed.value * motor.power) / motor.speed, lockedRotorTorque?.value ?? 0);
  const effect = 'Twist of the pump at start, in proportion: give the torques of the data sheet';
  if (breakdownTorque !== undefined) {
    reading.assume([...MOTOR, 'locked-rotor-torque'], {
      what: 'locked-rotor torque of the motor',
      value: `${reading.print(breakdownTorque.value, 'moment')}, as much as at breakdown`,
      citation: { source: 'nema-mg-1', clause: 'tables 12-2 and 12-3', confidence: 'memory' },
      effect,
    });
    return;
  }
  reading.assume([...MOTOR, 'breakdown-torque'], {
    what:
      lockedRotorTorque === undefined
        ? 'locked-rotor and breakdown torque of the motor'
        : 'breakdown torque of the motor',
    value: reading.print(taken, 'moment'),
    citation: listed.citation,
    effect,
  });
}

function noteInertia(reading: InputContext, pump: Pump): void {
  const { motor, rotorInertia } = pump;
  const range = turningInertia({
    power: motor.power,
    speed: motor.speed,
    ...(motor.inertia && { motorInertia: motor.inertia.value }),
    ...(rotorInertia && { pumpInertia: rotorInertia.value }),
  });
  if (range === undefined || range.how === 'both given') return;
  const path: Path = motor.inertia === undefined ? [...MOTOR, 'inertia'] : ['pump', 'rotor-inertia'];
  reading.assume(path, {
    what: 'inertia of all that turns',
    value: `between ${reading.print(range.least, 'inertia')} and ${reading.print(range.most, 'inertia')}`,
    citation: range.citation,
    effect: 'Run-up time and dynamic factor; the worst of the range is taken: give both inertias',
  });
}
