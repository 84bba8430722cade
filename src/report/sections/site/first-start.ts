import { startMovements } from '../../../checks/motion/start-movement.js';
import type { ReportContext, View } from '../../context.js';
import { CURRENT_UNBALANCE, currentLimit } from '../../limits/electrical.js';
import { decides, limitNumber, limitText, sourceText } from '../../limits/field-limit.js';
import { siteText } from '../../limits/site-text.js';
import { startMovementLimit } from '../../limits/start.js';
import { damagingVelocity, vibrationLimit } from '../../limits/vibration.js';
import { isolationPoints, named } from '../../rows/isolation-points.js';
import { hottest, SCALDS, springTexts, starterOf } from '../../words/unit-words.js';

/**
 * Card for the first start of this unit: who stands where, what is watched, what is expected, and what stops it.
 *
 * @param context - results and writer
 * @returns finished text; what the file sets no limit for says so
 */
export function firstStart(context: ReportContext) {
  const { subject, write } = context;
  const { installation, startUp } = subject;
  const { pump, service } = installation;
  const { motor } = pump;
  const found = startMovements(subject);
  const movement = Math.max(0, ...found.map((one) => one.movement));
  const durations = startUp?.kind === 'worked out' ? startUp.runs.map(({ duration }) => duration) : [];
  const [least, most] = [Math.min(...durations), Math.max(...durations)];
  const time = (value: number) => write.quantity(value, 'time', { significant: 2 });
  const current = currentLimit(installation);
  const moved = startMovementLimit(installation);
  const vibration = vibrationLimit(installation);
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
    movement: siteText(movement, 'gap', context) ?? '',
    hasMovement: found.length > 0,
    movementLimit: moved === undefined ? '' : limitNumber(moved, context),
    hasMovementLimit: moved !== undefined,
    duration: least === most ? time(least) : `${time(least)} to ${time(most)}`,
    hasDuration: durations.length > 0,
    current: current === undefined ? '' : limitText(current, context),
    unbalance: limitNumber(CURRENT_UNBALANCE, context),
    hasCurrent: current !== undefined,
    serviceFactor: write.plain(motor.serviceFactor?.value),
    hasServiceFactor: (motor.serviceFactor?.value ?? 1) > 1,
    vibration: vibration === undefined ? '' : limitText(vibration, context),
    vibrationSource: vibration === undefined ? '' : sourceText(vibration),
    hasVibration: vibration !== undefined,
    vibrationDecides: vibration !== undefined && decides(vibration.citation),
    damaging: limitNumber(damagingVelocity(motor.power), context),
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
