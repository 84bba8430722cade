import type { PanelElectrical, Sourced } from '../../input/installation.js';
import { frontedPanels } from '../../model/room/panel-space.js';
import type { Dimension, FormatOptions } from '../../units/index.js';
import type { ReportContext } from '../context.js';
import { sourcedMark } from '../words/origin-mark.js';
import { disconnectText, vibrationUnit } from '../words/unit-words.js';

const FACING: Readonly<Record<NonNullable<PanelElectrical['opposite']>, string>> = {
  nothing: 'nothing live or grounded opposite',
  grounded: 'something grounded opposite',
  live: 'live parts opposite',
};

/**
 * What the file says of the nameplate, the disconnect, the panels and the limit of vibration.
 *
 * @param context - installation and writer
 * @returns rows for the register of inputs
 */
export function electricalInputs(context: ReportContext) {
  const { pump, limits, room } = context.subject.installation;
  const { write } = context;
  const row = (what: string, value: string, origin: string) => ({ what, value, origin });
  const number = (
    what: string,
    sourced: Sourced | undefined,
    dimension: Dimension,
    options?: FormatOptions,
  ) =>
    row(
      what,
      sourced === undefined ? 'not given' : write.quantity(sourced.value, dimension, options),
      sourcedMark(sourced, context.assumptions),
    );
  const disconnect = disconnectText(context);
  return [
    number('Voltage of the motor', pump.motor.voltage, 'voltage'),
    number('Full-load current of the motor', pump.motor.fullLoadCurrent, 'current'),
    disconnect === ''
      ? row('Disconnect', 'not given', 'not given')
      : row(
          'Disconnect',
          disconnect,
          pump.disconnect?.panel === undefined ? 'given' : 'given, distance computed',
        ),
    ...frontedPanels(room).map(({ name, electrical }) => {
      const { front, toGround, opposite } = electrical;
      const words = [
        `front to the ${write.bearing(front)}`,
        ...(toGround === undefined ? [] : [`${write.quantity(toGround.value, 'voltage')} to ground`]),
        ...(opposite === undefined ? [] : [FACING[opposite]]),
      ];
      return row(name, words.join(', '), 'given');
    }),
    number('Vibration at the bearings, at most', limits.vibration, 'velocity', vibrationUnit(write)),
  ];
}
