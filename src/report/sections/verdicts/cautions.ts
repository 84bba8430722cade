import { supportFacts } from '../../../model/support-parts.js';
import type { ReportContext, View } from '../../context.js';
import { roughly } from '../../rows/isolation-points.js';
import { glued, hottest, SCALDS, springTexts, starterOf } from '../../words/unit-words.js';

/** Height over the floor from which a fall is more than a stumble: that of a step ladder, 4 ft [m]. */
const STEP_LADDER = 1.2;

/**
 * What can hurt someone on this installation, and which decisions belong to others.
 *
 * @param context - installation and writer
 * @returns flags and the figures the words need
 */
export function cautions(context: ReportContext) {
  const { service, pump, lines, room } = context.subject.installation;
  const { write } = context;
  const parts = lines.flatMap((line) => line.walk);
  const hot = hottest(context.subject.installation);
  const springs = springTexts(context);
  const highest = highestWork(context);
  const hasHeight = room.floor !== undefined && highest.up - room.floor > STEP_LADDER;
  const further = context.furtherCautions ?? [];
  return {
    hasFurther: further.length > 0,
    further,
    hasCard: context.printed.has('lockout'),
    isHot: hot >= SCALDS,
    hotTemperature: glued(write.quantity(hot, 'temperature')),
    voltage: glued(write.quantity(pump.motor.voltage?.value, 'voltage')),
    hasVoltage: pump.motor.voltage !== undefined,
    isDrive: starterOf(context).isDrive,
    hasHeight,
    height: hasHeight ? roughly(highest.up - (room.floor ?? 0), write) : '–',
    highest: highest.name,
    springs: springs.join(', '),
    hasRotorWeight: pump.dimensions?.rotorMass !== undefined,
    rotorWeight: glued(write.quantity(pump.dimensions?.rotorMass?.value, 'mass')),
    testPressure: write.quantity(service.testPressure.value, 'pressure'),
    workingPressure: write.quantity(service.workingPressure.value, 'pressure'),
    motorWeight: write.quantity(pump.motor.mass.value, 'mass'),
    casingWeight: write.quantity(pump.casing.mass.value, 'mass'),
    motorWeightAssumed: pump.motor.mass.origin.kind === 'assumed',
    hasSprings: springs.length > 0,
    hasConnector: parts.some((part) => part.kind === 'flexible-connector'),
    isHung: pump.mount === 'hung',
    isSplitCoupled: pump.build === 'split-coupled',
    hasGlycol: service.fluid.kind !== 'water',
    fluid: service.fluid.kind,
  } satisfies View;
}

/** The highest thing on this installation that somebody has to reach. */
function highestWork({ subject }: ReportContext): { readonly name: string; readonly up: number } {
  const { pump } = subject.installation;
  const motor = { name: 'the motor top', up: pump.position[2] + pump.outline.motorTop.value };
  const supports = subject.layout.supports
    .filter((support) => supportFacts(support).hangs)
    .map(({ mark, at }) => ({ name: `the pipe at ${mark}`, up: at[2] }));
  return [motor, ...supports].reduce((best, next) => (next.up > best.up ? next : best));
}
