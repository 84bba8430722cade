import { supportLoadIn } from '../../../analysis/supports/support-loads.js';
import { inCondition, type SingleRole } from '../../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../../model/layout/layout.js';
import type { ReportContext, View } from '../../context.js';
import { alignmentLimits } from '../../limits/alignment.js';
import { type FieldLimit, limitText, sourceName } from '../../limits/field-limit.js';
import { carriesWeight, rodText, supportWord } from '../../words/support-word.js';

/**
 * What to measure on the installed unit, with what to expect beside the space for the reading.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function readings(context: ReportContext) {
  const { installation, layout } = context.subject;
  const { write } = context;
  const { pump, service } = installation;
  const carrying = layout.supports.filter((support) => carriesWeight(support) && support.kind !== 'end');
  return {
    supports: carrying.map((support) => supportRow(support, context)),
    hasSupports: carrying.length > 0,
    forceUnit: write.unit('force'),
    lengthUnit: write.unit('length'),
    flanges: (['suction', 'discharge'] as const).map((which) => ({
      which,
      outside: write.quantity(pump.ports[which].flange.outsideDiameter, 'length'),
      ...toleranceTexts(which, context),
    })),
    power: write.quantity(pump.motor.power, 'power'),
    speed: write.quantity(pump.motor.speed, 'speed', { significant: 4 }),
    flow: write.quantity(pump.duty.flow, 'flow'),
    head: write.quantity(pump.duty.head, 'head'),
    workingPressure: write.quantity(service.workingPressure.value, 'pressure'),
    runningTemperature: write.quantity(service.runningTemperature.value, 'temperature'),
    testPressure: write.quantity(service.testPressure.value, 'pressure'),
    isHung: pump.mount === 'hung',
    isResting: pump.mount === 'resting',
    isSprung: pump.mount === 'sprung',
    isBolted: pump.mount === 'bolted',
  } satisfies View;
}

/** Tolerances of one flange in the words of the field sheet, and where they come from. */
function toleranceTexts(which: 'suction' | 'discharge', context: ReportContext) {
  const limits = alignmentLimits(context.subject, which, context.write.system);
  const text = (limit: FieldLimit | undefined) => (limit === undefined ? '' : limitText(limit, context));
  const { parallelism, holes, gap, offset, shaft } = limits;
  const from = [parallelism, gap, offset, holes, shaft].flatMap((limit) =>
    limit ? [sourceName(limit.citation)] : [],
  );
  return {
    tilt: text(parallelism),
    hasTilt: parallelism !== undefined,
    gap: text(gap),
    hasGap: gap !== undefined,
    offset: text(offset),
    hasOffset: offset !== undefined,
    holes: text(holes),
    shaft: text(shaft),
    sources: [...new Set(from)].join('; '),
  };
}

/** A spring so near its setting is at it [m]. */
const NO_DROP = 2e-4;

function supportRow(support: PlacedSupport, context: ReportContext) {
  const { response } = context.subject;
  const { write } = context;
  const load = (condition: SingleRole): number | undefined => {
    return supportLoadIn(inCondition(response.conditions, condition), support.mark)?.downward;
  };
  const height = (condition: SingleRole): number | undefined =>
    inCondition(response.conditions, condition)?.movements[support.point]?.translation[2];
  const [filled, hot] = [height('filled'), height('hot')];
  const rise = filled === undefined || hot === undefined ? undefined : hot - filled;
  const loads = (['empty', 'filled', 'hot'] as const).map(load);
  const show = write.scaled('force', loads);
  const spring = support.part?.spring;
  const drop =
    spring === undefined || loads[1] === undefined ? undefined : (loads[1] - spring.load.value) / spring.rate;
  return {
    mark: support.mark,
    kind: supportWord(support),
    rods: rodText(support),
    empty: show(loads[0]),
    filled: show(loads[1]),
    hot: show(loads[2]),
    rise: write.number(rise, 'length', { decimals: write.system === 'us' ? 3 : 2 }),
    isSpring: spring !== undefined,
    drop: fine(write, drop === undefined ? undefined : Math.abs(drop)),
    sinks: drop !== undefined && drop > NO_DROP,
    stands: drop !== undefined && drop < -NO_DROP,
  };
}

/** Small movements and tolerances are read with a feeler gauge: thousandths of an inch, hundredths of a millimetre. */
function fine(write: ReportContext['write'], value: number | undefined): string {
  return write.quantity(value, 'length', { decimals: write.system === 'us' ? 3 : 2 });
}
