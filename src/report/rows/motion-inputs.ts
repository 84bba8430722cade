import type { ReportContext, View } from '../context.js';
import { sourcedMark, textMark } from '../words/origin-mark.js';
import { startWords } from '../words/start-words.js';

/**
 * Inputs of start and vibration for the register: way of starting, torques, inertia, speeds, blades, damping, margins.
 *
 * @param context - installation and writer
 * @returns one row per input
 */
export function motionInputs(context: ReportContext) {
  const { write, assumptions } = context;
  const { pump, limits } = context.subject.installation;
  const { motor } = pump;
  const speed = (value: number) => write.quantity(value, 'speed', { significant: 4 });
  const row = (what: string, value: string | undefined, path: string) => {
    const mark = textMark(path, assumptions);
    const assumed = assumptions.find((ranked) => ranked.assumption.path === path)?.assumption.value;
    return value === undefined
      ? { what, value: assumed ?? 'not given', origin: assumed === undefined ? 'not given' : mark }
      : { what, value, origin: mark };
  };
  const sourced = (value: number | undefined, print: (value: number) => string) =>
    value === undefined ? undefined : print(value);
  const moment = (value: number) => write.quantity(value, 'moment');
  const inertia = (value: number) => write.quantity(value, 'inertia');
  const share = (value: number) => write.quantity(value, 'ratio');
  return [
    row('Start of the motor', motor.start && startWords(motor.start, write), 'pump.motor.start'),
    row(
      'Locked-rotor torque',
      sourced(motor.lockedRotorTorque?.value, moment),
      'pump.motor.locked-rotor-torque',
    ),
    row('Breakdown torque', sourced(motor.breakdownTorque?.value, moment), 'pump.motor.breakdown-torque'),
    row(
      'Locked-rotor current over full-load current',
      sourced(motor.lockedRotorCurrent?.value, share),
      'pump.motor.locked-rotor-current',
    ),
    row('Inertia of the rotor of the motor', sourced(motor.inertia?.value, inertia), 'pump.motor.inertia'),
    row(
      'Inertia of impeller, shaft and coupling',
      sourced(pump.rotorInertia?.value, inertia),
      'pump.rotor-inertia',
    ),
    row(
      'Speeds of the drive',
      motor.speeds && `${speed(motor.speeds.lowest)} to ${speed(motor.speeds.highest)}`,
      'pump.motor.speeds',
    ),
    row('Blades of the impeller', pump.blades === undefined ? undefined : String(pump.blades), 'pump.blades'),
    {
      what: 'Damping over critical damping',
      value: write.quantity(limits.damping?.value ?? 0, 'ratio'),
      origin: sourcedMark(limits.damping, assumptions),
    },
    {
      what: 'Margin of natural frequencies',
      value: write.quantity(limits.frequencyMargin?.value, 'ratio'),
      origin: sourcedMark(limits.frequencyMargin, assumptions),
    },
    {
      what: 'Largest movement of the motor top at start',
      value: write.distance(limits.startMovement?.value),
      origin: sourcedMark(limits.startMovement, assumptions),
    },
  ] satisfies View['rows'];
}
