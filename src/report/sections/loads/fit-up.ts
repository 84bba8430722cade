import {
  MISFIT_WAYS,
  type MisfitLoads,
  misfitLoads,
  misfitUsedUp,
} from '../../../analysis/nozzles/misfit-loads.js';
import { faceDiameters } from '../../../analysis/nozzles/nozzle-faces.js';
import { isOf } from '../../../checks/all-checks.js';
import type { Sourced } from '../../../input/installation.js';
import type { MisfitWay } from '../../../mechanics/what-ifs/fit-up.js';
import type { UnitSystem } from '../../../units/index.js';
import type { ReportContext, View } from '../../context.js';
import { alignmentLimits } from '../../limits/alignment.js';
import { sourceName } from '../../limits/field-limit.js';
import { findingRow } from '../../words/finding-row.js';
import { bothText, bothUnits } from '../../words/flange-words.js';
import { sourcedMark } from '../../words/origin-mark.js';
import { createWriter, NO_NUMBER } from '../../writer.js';

const METRIC = createWriter('si');
const INCHES = createWriter('us');

/** What a fitter calls each way. */
const WORDS: Readonly<Record<MisfitWay, string>> = {
  gap: 'Gap beyond the gasket, or pressed',
  rise: 'Too high or too low',
  offset: 'Off to one side',
  'tilt-sideways': 'Out of parallel, top to bottom, across the face',
  'tilt-upright': 'Out of parallel, side to side, across the face',
  twist: 'Bolt holes turned, at the bolt circle',
};

/** Beyond this a misfit is no longer pulled shut but cut and refitted: an inch [m]. */
const LARGEST_PULLED = 0.0254;

/**
 * The card of the fitter: what each step of misfit costs on the nozzles, how much uses up the allowance, and the
 * tolerance.
 *
 * @param context - results and writer
 * @returns one table for each nozzle
 */
export function fitUp(context: ReportContext) {
  const { subject, write } = context;
  const full = context.reader === 'engineer';
  const step = fitStep(context);
  const joints = misfitLoads(subject).map((loads) => jointRows(loads, step.length, context));
  const { gap, offset, parallelism } = subject.installation.limits.fitUp ?? {};
  const line = (what: string, value: Sourced | undefined) => ({
    what,
    ...bothUnits(value?.value),
    from: sourcedMark(value, context.assumptions),
  });
  const findings = context.findings.filter((finding) => isOf(finding, 'fit-up-tolerance'));
  return {
    full,
    step: step.text,
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    joints: joints.map((joint) => ({
      ...joint,
      span: String(2 + (joint.hasLimits ? (full ? 2 : 1) : 0)),
    })),
    ways: waysOf(joints),
    hasJoints: joints.length > 0,
    tolerances: [
      line('gap more or less than the gasket', gap),
      line('offset of the centre lines', offset),
      ...parallelRows(context, line),
    ],
    hasTolerances: [gap, offset, parallelism].some((value) => value !== undefined),
    findings: findings.map((finding) => findingRow(finding, context)),
    hasFindings: findings.some(({ verdict }) => verdict !== 'does-not-apply'),
    hasLimits: joints.some(({ hasLimits }) => hasLimits),
  } satisfies View;
}

/** Out of parallel: what the file asks of both flanges, else what the practice of installing pumps asks of each. */
function parallelRows<Row>({ subject }: ReportContext, line: (what: string, value: Sourced) => Row) {
  const given = subject.installation.limits.fitUp?.parallelism;
  if (given !== undefined && given.origin.kind !== 'assumed') {
    return [line('out of parallel across the face', given)];
  }
  const tilt = (which: 'suction' | 'discharge', system: UnitSystem) =>
    alignmentLimits(subject, which, system).parallelism;
  const rows = (['suction', 'discharge'] as const).flatMap((which) => {
    const [metric, inches] = [tilt(which, 'si'), tilt(which, 'us')];
    if (metric === undefined || inches === undefined) return [];
    return [
      {
        what: `out of parallel across the ${which} face`,
        mm: METRIC.number(metric.value, 'length', { decimals: 2 }),
        inches: INCHES.number(inches.value, 'length', { decimals: 3 }),
        from: sourceName(metric.citation),
      },
    ];
  });
  const [first, second] = rows;
  const alike = first !== undefined && first.mm === second?.mm && first.inches === second.inches;
  return alike ? [{ ...first, what: 'out of parallel across either face' }] : rows;
}

type JointRows = ReturnType<typeof jointRows>;

/** One row for each way to be off, with what it costs at each nozzle; a nozzle that lacks a way has dashes. */
function waysOf(joints: readonly JointRows[]) {
  const ways = [...new Set(joints.flatMap(({ rows }) => rows.map(({ what }) => what)))];
  const none = { force: NO_NUMBER, moment: NO_NUMBER, used: NO_NUMBER, component: NO_NUMBER };
  return ways.map((what) => ({
    what,
    costs: joints.map(({ rows, hasLimits }) => ({
      ...none,
      ...rows.find((row) => row.what === what),
      hasLimits,
    })),
  }));
}

/**
 * The step in which misfit and heights are told: what a rule of the reader's units shows.
 *
 * @param context - writer
 * @returns length [m] and its name
 */
export function fitStep(context: ReportContext): { readonly length: number; readonly text: string } {
  return context.write.system === 'us'
    ? { length: 0.0254 / 16, text: '1/16 in' }
    : { length: 0.001, text: '1 mm' };
}

function jointRows(loads: MisfitLoads, step: number, context: ReportContext) {
  const { write, subject } = context;
  const { nozzle, added } = loads;
  const { face, boltCircle } = faceDiameters(subject, nozzle.point);
  /** Lever by which a length at the rim becomes an angle [m]; 1 for movements. */
  const lever = (way: MisfitWay): number | undefined => {
    if (way === 'twist') return boltCircle === undefined ? undefined : boltCircle / 2;
    return way === 'tilt-sideways' || way === 'tilt-upright' ? face : 1;
  };
  const used = misfitUsedUp(loads, subject);
  const rows = MISFIT_WAYS.flatMap((way) => {
    const arm = lever(way);
    return arm === undefined ? [] : [{ way, arm }];
  });
  /** The worse of both senses: one may lift a support that the other presses. */
  const costs = rows.map(({ way, arm }) => {
    const both = [added(way, step / arm), added(way, -step / arm)];
    return {
      force: Math.max(...both.map(({ resultantForce }) => resultantForce)),
      moment: Math.max(...both.map(({ resultantMoment }) => resultantMoment)),
    };
  });
  const force = write.scaled(
    'force',
    costs.map((cost) => cost.force),
  );
  const moment = write.scaled(
    'moment',
    costs.map((cost) => cost.moment),
  );
  return {
    title: `${nozzle.which} flange`,
    hasLimits: used !== undefined,
    rows: rows.map(({ way, arm }, index) => {
      const limit = used?.find((each) => each.way === way);
      const misfit = limit === undefined ? undefined : limit.misfit * arm;
      const isFar = misfit !== undefined && misfit > LARGEST_PULLED;
      return {
        what: WORDS[way],
        force: force(costs[index]?.force),
        moment: moment(costs[index]?.moment),
        hasLimits: used !== undefined,
        used: misfit === undefined ? '–' : isFar ? `over ${bothText(LARGEST_PULLED)}` : bothText(misfit),
        component: limit?.component.label ?? '–',
      };
    }),
  };
}
