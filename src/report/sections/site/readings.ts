import { supportLoadIn } from '../../../analysis/supports/support-loads.js';
import { inCondition, type SingleRole } from '../../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../../model/layout/layout.js';
import { type Citation, citationText } from '../../../sources/index.js';
import type { ReportContext, View } from '../../context.js';
import { carriesWeight, rodText, supportWord } from '../../words/support-word.js';

/** Where the tolerances of flange alignment come from. */
const ALIGNMENT: Citation = {
  source: 'api-686',
  clause: 'chapter 6, sections 4.6 to 4.8',
  confidence: 'read',
};
/** Flange size from which the alignment tolerance grows with the diameter: 250 mm [m]. */
const LARGE_FLANGE = 0.25;
/** Out of parallel allowed: fixed below that size, then so much per diameter, up to a cap [m], [-], [m]. */
const SMALL_TILT = 0.25e-3;
const TILT = 1e-3;
const MOST_TILT = 0.75e-3;
/** Gasket gap either side of its thickness, and offset of bolt holes [m]. */
const GAP = 1.5e-3;

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
    flanges: (['suction', 'discharge'] as const).map((which) => {
      const outside = pump.ports[which].flange.outsideDiameter;
      return {
        which,
        outside: write.quantity(outside, 'length'),
        tilt:
          outside === undefined
            ? '–'
            : fine(write, outside < LARGE_FLANGE ? SMALL_TILT : Math.min(MOST_TILT, TILT * outside)),
        offset: fine(write, GAP),
        gap: fine(write, GAP),
      };
    }),
    alignment: citationText(ALIGNMENT),
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
