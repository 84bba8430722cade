import { STANDARD_GRAVITY } from '../../../model/conventions.js';
import type { ReportContext, View } from '../../context.js';
import { askedRows } from '../../rows/asked-rows.js';
import { everyCondition } from '../../words/condition-order.js';

/**
 * Give of a thin tube by shear over that by bending, both ends kept from turning, times (L / D)²: with shear area A / 2,
 * (L / (G A / 2)) / (L³ / (12 E I)) = 48 (1 + ν) I / (A L²), I / A = D² / 8, ν = 0.3 [-].
 */
const SHEAR_SHARE = 6 * 1.3;

/**
 * What acts in each condition: contents, covering, temperature, pressure, travel stops.
 *
 * @param context - frame conditions and writer
 * @returns one row per condition
 */
export function conditions(context: ReportContext) {
  const { layout, response } = context.subject;
  const { write } = context;
  const rows = everyCondition(response).flatMap((solved) => {
    const condition = layout.frame.conditions.find((one) => one.name === solved.name);
    if (condition === undefined) return [];
    const { kind } = solved.role;
    return [
      {
        name: solved.title,
        isEmpty: kind === 'empty',
        isFilled: kind === 'filled',
        isTest: kind === 'test',
        isRunning: kind === 'running',
        isHot: kind === 'hot',
        isCold: kind === 'cold',
        isPumpOut: kind === 'pump-out',
        isMotorOff: kind === 'motor-off',
        isSlack: kind === 'slack',
        isSideways: condition.gravity[0] !== 0 || condition.gravity[1] !== 0,
        full: condition.contentsDensity > 0,
        density: write.quantity(condition.contentsDensity, 'density'),
        covering: condition.covering,
        temperature: write.quantity(condition.temperature, 'temperature'),
        pressure: write.quantity(condition.pressure, 'pressure'),
        stopped: condition.stopped.join(', '),
        hasStopped: condition.stopped.length > 0,
        removed: condition.removed.join(', '),
        hasRemoved: condition.removed.length > 0,
        drained: condition.drained.join(', '),
        hasDrained: condition.drained.length > 0,
        sideways: write.quantity(
          Math.hypot(condition.gravity[0], condition.gravity[1]) / STANDARD_GRAVITY,
          'ratio',
        ),
        loaded: condition.loads.map((load) => load.point).join(', '),
        hasLoads: condition.loads.length > 0,
        absent: condition.absent.join(', '),
        hasAbsent: condition.absent.length > 0,
      },
    ];
  });
  return {
    installation: write.quantity(layout.frame.installationTemperature, 'temperature'),
    rows,
    shearFour: write.quantity(SHEAR_SHARE / 4 ** 2, 'ratio', { decimals: 0 }),
    shearTen: write.quantity(SHEAR_SHARE / 10 ** 2, 'ratio', { decimals: 0 }),
    asked: askedRows(),
    residual: write.power(response.quality.residual),
    energy: write.power(response.quality.energy ?? 0),
    conditioning: write.power(response.quality.reciprocalCondition),
    unknowns: String(response.quality.unknowns),
    lifted: rows.length > 0 ? liftedRows(context) : [],
    hasLifted: liftedRows(context).length > 0,
  } satisfies View;
}

function liftedRows(context: ReportContext) {
  return everyCondition(context.subject.response).flatMap((condition) => {
    const marks = Object.entries(condition.supports)
      .filter(([, support]) => support.states.includes('lifted'))
      .map(([mark]) => mark);
    return marks.length === 0 ? [] : [{ condition: condition.title, marks: marks.join(', ') }];
  });
}
