import { startMovements } from '../../../checks/motion/start-movement.js';
import type { Sourced } from '../../../input/installation.js';
import type { ReportContext, View } from '../../context.js';
import { isolationPoints, named } from '../../rows/isolation-points.js';
import { hottest, SCALDS, springTexts, starterOf, vibrationUnit } from '../../words/unit-words.js';

/**
 * Card for the first start of this unit: who stands where, what is watched, what is expected, and what stops it.
 *
 * @param context - results and writer
 * @returns finished text; what the file sets no limit for says so
 */
export function firstStart(context: ReportContext) {
  const { subject, write } = context;
  const { installation, startUp } = subject;
  const { pump, limits, service } = installation;
  const { motor } = pump;
  const found = startMovements(subject);
  const movement = Math.max(0, ...found.map((one) => one.movement));
  const durations = startUp?.kind === 'worked out' ? startUp.runs.map(({ duration }) => duration) : [];
  const [least, most] = [Math.min(...durations), Math.max(...durations)];
  const time = (value: number) => write.quantity(value, 'time', { significant: 2 });
  const current = motor.fullLoadCurrent;
  const springs = springTexts(context);
  const { check = '', vents } = isolationPoints('discharge', context);
  const allVents = [...new Set([...isolationPoints('suction', context).vents, ...vents])];
  return {
    mark: pump.mark,
    vents: named(allVents),
    hasVents: allVents.length > 0,
    springs: springs.join(', '),
    hasSprings: springs.length > 0,
    ...starterOf(context),
    movement: write.quantity(movement, 'length', { decimals: write.system === 'us' ? 3 : 2 }),
    hasMovement: found.length > 0,
    movementLimit: write.distance(limits.startMovement?.value),
    hasMovementLimit: limits.startMovement !== undefined,
    duration: least === most ? time(least) : `${time(least)} to ${time(most)}`,
    hasDuration: durations.length > 0,
    current: write.quantity(current?.value, 'current'),
    hasCurrent: current !== undefined,
    serviceFactor: write.plain(motor.serviceFactor?.value),
    hasServiceFactor: (motor.serviceFactor?.value ?? 1) > 1,
    vibration: write.quantity(limits.vibration?.value, 'velocity', vibrationUnit(write)),
    vibrationSource: sourceText(limits.vibration),
    hasVibration: limits.vibration !== undefined,
    speed: write.quantity(motor.speed, 'speed', { significant: 4 }),
    lowest: write.quantity(motor.speeds?.lowest, 'speed', { significant: 4 }),
    highest: write.quantity(motor.speeds?.highest, 'speed', { significant: 4 }),
    hasSpeeds: motor.speeds !== undefined,
    head: write.quantity(pump.duty.head, 'head'),
    pressure: write.quantity(service.designPressure.value, 'pressure'),
    isHot: hottest(installation) >= SCALDS,
    hottest: write.quantity(hottest(installation), 'temperature'),
    isOpen: service.system === 'open',
    isSystemUnknown: service.system === undefined,
    check,
    hasCheck: check !== '',
    isHung: pump.mount === 'hung',
  } satisfies View;
}

function sourceText(limit: Sourced | undefined): string {
  return limit?.origin.kind === 'given' ? (limit.origin.document ?? limit.origin.path) : '';
}
