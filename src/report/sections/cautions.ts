import type { ReportContext, View } from '../context.js';

/** Surface temperature from which bare skin is burnt in seconds: 140 °F [K]. */
const BURNS = 333.15;

/**
 * What can hurt someone on this installation, and which decisions belong to others.
 *
 * @param context - installation and writer
 * @returns flags and the figures the words need
 */
export function cautions(context: ReportContext) {
  const { service, pump, lines } = context.subject.installation;
  const { write } = context;
  const parts = lines.flatMap((line) => line.walk);
  return {
    isHot: service.hotTemperature.value >= BURNS,
    hotTemperature: write.quantity(service.hotTemperature.value, 'temperature'),
    testPressure: write.quantity(service.testPressure.value, 'pressure'),
    workingPressure: write.quantity(service.workingPressure.value, 'pressure'),
    motorWeight: write.quantity(pump.motor.mass.value, 'mass'),
    casingWeight: write.quantity(pump.casing.mass.value, 'mass'),
    motorWeightAssumed: pump.motor.mass.origin.kind === 'assumed',
    hasSprings: parts.some((part) => part.kind === 'spring-hanger') || pump.mount === 'sprung',
    hasConnector: parts.some((part) => part.kind === 'flexible-connector'),
    isHung: pump.mount === 'hung',
    isSplitCoupled: pump.build === 'split-coupled',
    hasGlycol: service.fluid.kind !== 'water',
    fluid: service.fluid.kind,
  } satisfies View;
}
