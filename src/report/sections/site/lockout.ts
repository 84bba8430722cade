import type { Side } from '../../../analysis/pipes/line-course.js';
import { LOCKOUT_ORDER } from '../../citations/card-citations.js';
import type { ReportContext, View } from '../../context.js';
import { isolationPoints, named } from '../../rows/isolation-points.js';
import {
  disconnectName,
  disconnectText,
  glued,
  hottest,
  propTexts,
  SCALDS,
  springTexts,
  starterOf,
  TOUCHABLE,
} from '../../words/unit-words.js';

/**
 * Lockout card of this unit: every energy, where it is shut off, let out and proved gone.
 *
 * @param context - installation, results and writer
 * @returns names of valves, drains, vents, taps and springs; what the file does not say is listed to be found on site
 */
export function lockout(context: ReportContext) {
  const { installation } = context.subject;
  const { pump, service } = installation;
  const { write } = context;
  const told = (...asked: Parameters<typeof write.quantity>): string => glued(write.quantity(...asked));
  const discharge = sideView('discharge', context);
  const suction = sideView('suction', context);
  const disconnect = disconnectText(context);
  const springs = springTexts(context);
  const props = propTexts(context);
  const hot = hottest(installation);
  const rotor = pump.dimensions?.rotorMass;
  const starter = starterOf(context);
  const missing = [
    ...(disconnect === '' ? ['the disconnect of the motor'] : []),
    ...(pump.motor.voltage === undefined ? ['the voltage of the motor'] : []),
    ...(starter.isStartUnknown ? ['how the motor is started (a drive stays charged)'] : []),
    ...[suction, discharge].flatMap(({ gaps }) => gaps),
    ...(pump.backflow === undefined ? ['whether another pump or a bypass feeds this one'] : []),
  ];
  return {
    mark: pump.mark,
    power: told(pump.motor.power, 'power'),
    voltage: told(pump.motor.voltage?.value, 'voltage'),
    hasVoltage: pump.motor.voltage !== undefined,
    disconnect,
    hasDisconnect: disconnect !== '',
    ...starter,
    sides: [discharge.view, suction.view],
    pressure: told(service.workingPressure.value, 'pressure'),
    check: discharge.check,
    hasCheck: discharge.check !== '',
    backflowPossible: pump.backflow === 'possible',
    backflowUnknown: pump.backflow === undefined,
    isHot: hot >= SCALDS,
    running: told(service.runningTemperature.value, 'temperature'),
    hottest: told(hot, 'temperature'),
    scalds: told(SCALDS, 'temperature'),
    touchable: told(TOUCHABLE, 'temperature', { significant: 2 }),
    motorWeight: told(pump.motor.mass.value, 'mass'),
    rotorWeight: told(rotor?.value, 'mass'),
    hasRotorWeight: rotor !== undefined,
    isSplit: pump.build === 'split-coupled',
    props: props.join('; '),
    hasProps: props.length > 0,
    springs: springs.join(', '),
    hasSprings: springs.length > 0,
    hasConnector: suction.hasConnector || discharge.hasConnector,
    locks: [
      { point: disconnectName(pump) },
      ...[discharge, suction].flatMap(({ points }) => points.map((point) => ({ point }))),
    ],
    missing: missing.join('; '),
    hasMissing: missing.length > 0,
    order: LOCKOUT_ORDER.confidence,
  } satisfies View;
}

/** One side of the pump as a row of the card, and what the file does not say of it. */
function sideView(side: Side, context: ReportContext) {
  const {
    valves,
    unsure,
    open,
    drains,
    vents,
    taps,
    check = '',
    hasConnector,
  } = isolationPoints(side, context);
  const shuts = [...valves, ...unsure.map((name) => `${name}: see that it shuts tight`)];
  const wanted = [
    ...(vents.length + drains.length === 0 ? ['a vent or drain'] : []),
    ...(taps.length === 0 ? ['a tap for a gauge'] : []),
  ];
  const gaps = [
    ...(shuts.length === 0
      ? [`what shuts off the ${side} side`]
      : open.map((line) => `what shuts off ${line}`)),
    ...(wanted.length === 0 ? [] : [`${wanted.join(' and ')} on the ${side} side`]),
  ];
  return {
    view: {
      side,
      valves: named(shuts),
      hasValves: shuts.length > 0,
      open: named(open),
      hasOpen: open.length > 0,
      relief: named([...vents, ...drains]),
      hasRelief: vents.length + drains.length > 0,
      taps: named(taps),
      hasTaps: taps.length > 0,
    },
    points: [...valves, ...unsure].length === 0 ? [`Valve, ${side} side`] : [...valves, ...unsure],
    gaps,
    check,
    hasConnector,
  };
}
