import { type MisfitLoads, misfitLoads } from '../../analysis/nozzles/misfit-loads.js';
import { nozzleComponents } from '../../analysis/nozzles/nozzle-components.js';
import { faceDiameters } from '../../analysis/nozzles/nozzle-faces.js';
import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import type { NozzleAxisLoads } from '../../analysis/nozzles/nozzle-load-rows.js';
import { gapBeyondGasket, gapIds, gapsAt, type Which } from '../../as-installed/read-flange.js';
import type { MisfitWay } from '../../mechanics/what-ifs/fit-up.js';
import { numberIn } from '../../readings/read-box.js';
import { siteText } from '../../sheet/field-context.js';
import { flangeBoxes } from '../../sheet/parts/before-bolt-up.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';

/** What the bolts lock into the pump: the misfit as read, by the stiffness of line and pump, on top of the filled line. */
export const misfitLoad: Judge = {
  id: 'misfit-load',
  title: 'Nozzle load with the misfit pulled shut',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) => misfitLoads(subject.review).flatMap((loads) => atNozzle(loads, subject)),
};

function atNozzle(loads: MisfitLoads, subject: FieldSubject): readonly FieldComparison[] {
  const { which } = loads.nozzle;
  const ids = flangeBoxes(which);
  const boxes = [...gapIds(which), ids.gasket, ids.rise, ids.offset];
  const total = loadsWithMisfit(loads, subject);
  const { basis } = subject.review.installation.limits.nozzle;
  const limits =
    basis === undefined ? undefined : nozzleLimits(basis, loads.nozzle, subject.review.installation);
  const judged = nozzleComponents.filter(({ key }) =>
    limits === undefined ? key === 'resultantForce' : limits.allowance[key] !== undefined,
  );
  return judged.map(({ key, label, unit }): FieldComparison => {
    const measured = unit === 'N' ? 'force' : 'torque';
    const limit = limits?.allowance[key];
    return {
      kind: 'measured',
      at: `${which} nozzle, ${label}`,
      boxes,
      demand: total === undefined ? undefined : Math.abs(total[key]),
      measured,
      expected: Math.abs(loads.filled[key]),
      limit:
        limit === undefined || limits === undefined
          ? undefined
          : { value: limit, measured, words: 'at most', citation: limits.basis },
      noLimit: 'fieldwork.no-nozzle-basis',
      data: {
        which,
        component: label,
        filled: siteText(Math.abs(loads.filled[key]), measured, subject) ?? '',
      },
    };
  });
}

/**
 * How much wider bolt holes are than their bolts, an eighth of an inch: holes that are turned by less let the bolts pass,
 * and nothing is twisted shut [m].
 */
const HOLE_CLEARANCE = 3.175e-3;

/** Misfit of one flange by ways [m], [rad]; nothing unless gaps, gasket and centre lines were all read. */
export function misfitRead(which: Which, subject: FieldSubject): ReadonlyMap<MisfitWay, number> | undefined {
  const ids = flangeBoxes(which);
  const gaps = gapsAt(which, subject);
  const gap = gapBeyondGasket(which, subject);
  const rise = numberIn(subject.readings, ids.rise);
  const offset = numberIn(subject.readings, ids.offset);
  if (gaps === undefined || gap === undefined || rise === undefined || offset === undefined) return undefined;
  const { boltCircle } = faceDiameters(subject.review, subject.review.layout.nozzles[which].point);
  const holes = numberIn(subject.readings, ids.holes);
  const forced = holes === undefined ? 0 : Math.sign(holes) * Math.max(0, Math.abs(holes) - HOLE_CLEARANCE);
  const twist = boltCircle === undefined ? 0 : (2 * forced) / boltCircle;
  return new Map<MisfitWay, number>([
    ['gap', gap],
    ['rise', rise],
    ['offset', offset],
    ['twist', twist],
    ['tilt-sideways', gaps.sideways],
    ['tilt-upright', gaps.upright],
  ]);
}

/**
 * Loads on a nozzle, filled, with its misfit pulled shut, way by way.
 *
 * @param loads - of the filled line, and what each way adds
 * @param subject - readings
 * @returns loads in the axes of the nozzle [N], [N·m]; nothing where the misfit was not read
 */
export function loadsWithMisfit(loads: MisfitLoads, subject: FieldSubject): NozzleAxisLoads | undefined {
  const misfit = misfitRead(loads.nozzle.which, subject);
  if (misfit === undefined) return undefined;
  const added = [...misfit].flatMap(([way, amount]) => (amount === 0 ? [] : [loads.added(way, amount)]));
  const sum = (key: keyof NozzleAxisLoads) =>
    added.reduce((total, each) => total + each[key], loads.filled[key]);
  const [axialForce, verticalForce, crossForce] = [
    sum('axialForce'),
    sum('verticalForce'),
    sum('crossForce'),
  ];
  const [axialMoment, verticalMoment, crossMoment] = [
    sum('axialMoment'),
    sum('verticalMoment'),
    sum('crossMoment'),
  ];
  return {
    axialForce,
    verticalForce,
    crossForce,
    resultantForce: Math.hypot(axialForce, verticalForce, crossForce),
    axialMoment,
    verticalMoment,
    crossMoment,
    resultantMoment: Math.hypot(axialMoment, verticalMoment, crossMoment),
  };
}
