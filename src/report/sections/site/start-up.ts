import { nozzleLoadRows } from '../../../analysis/nozzles/nozzle-load-rows.js';
import { airGapTransient } from '../../../catalog/index.js';
import { startMovements } from '../../../checks/motion/start-movement.js';
import { sentenceOf } from '../../../issues/print.js';
import type { StartRun, WorkedStart } from '../../../mechanics/start/start-up.js';
import { conditionTitle, identityOf } from '../../../model/conditions/condition-roles.js';
import { norm, subtract } from '../../../model/vector.js';
import { sources } from '../../../sources/index.js';
import { startQuestions } from '../../calculations/start-questions.js';
import { workedCalculation } from '../../calculations/worked-calculation.js';
import type { ReportContext, View } from '../../context.js';
import { startWords } from '../../words/start-words.js';

/** The two conditions of a start as they are printed. */
const STARTS = (['forward', 'reverse'] as const)
  .map((sense) => `"${identityOf({ kind: 'start', sense }).title}"`)
  .join(' and ');
/** How far the time history must be above the factor to be spoken of [-]. */
const LEADS = 1.02;
/** Twist that is nothing beside the weight of a pump [N·m]. */
const HARDLY = 1;

/**
 * What a start does to the pump in its pipes: twist, movement of the motor top, change of the nozzle loads.
 *
 * @param context - results and writer
 * @returns sentences' numbers, tables and worked calculations
 */
export function startUp(context: ReportContext) {
  const { subject } = context;
  const start = subject.startUp;
  const failed = start?.kind === 'fails' ? sentenceOf(start.why) : undefined;
  const worked = start?.kind === 'worked out' ? start : undefined;
  const runs = worked?.runs ?? [];
  return {
    full: context.reader === 'engineer',
    transient: transientRows(worked, context),
    measure: context.reader === 'commissioning',
    hasStart: worked !== undefined,
    fails: start?.kind === 'fails',
    failure: capital(failed?.message ?? ''),
    remedy: failed?.wanted ?? '',
    method: worked === undefined ? '' : startWords(worked.set.method, context.write),
    ...summary(worked, context),
    rows: worked === undefined ? [] : numberRows(worked, context),
    runs: runs.map((run) => runRow(run, context)),
    hasRuns: runs.length > 0,
    isRange: runs.length > 1,
    modes: (worked?.twisting ?? []).map(({ number, frequency, share }) => ({
      number: String(number + 1),
      frequency: context.write.quantity(frequency, 'frequency'),
      share: context.write.quantity(share, 'ratio', { decimals: 0 }),
    })),
    hasModes: (worked?.twisting.length ?? 0) > 0,
    ...nozzles(context),
    forceUnit: context.write.unit('force'),
    momentUnit: context.write.unit('moment'),
    calculations:
      worked === undefined
        ? []
        : startQuestions(subject, worked, context.write.system).map((question) =>
            workedCalculation(question, context.write),
          ),
  } satisfies View;
}

/** Methods that put the windings on the supply at once, or again while the rotor turns. */
const SWITCHED: readonly string[] = ['across the line', 'wye-delta', 'autotransformer'];

/** What the electrical transient may be; nothing where current or voltage is held down electronically. */
function transientRows(start: WorkedStart | undefined, { write }: ReportContext): readonly View[] {
  if (start === undefined || !SWITCHED.includes(start.set.method.kind)) return [];
  const { peak, reversed, cycles, followedAbove, named, sized } = airGapTransient;
  const torque = (share: number) => write.quantity(share * start.set.motor.fullLoad, 'moment');
  const stiffest = Math.max(0, ...start.twisting.map(({ frequency }) => frequency));
  return [
    {
      peak: peak.map((share) => write.plain(share, 2)).join(' to '),
      reversed: reversed.map((share) => write.plain(share, 2)).join(' to '),
      torque: torque(peak[1]),
      back: torque(reversed[1]),
      cycles: cycles.map(String).join(' to '),
      changesOver: start.set.method.kind !== 'across the line',
      followedAbove: write.quantity(followedAbove, 'frequency'),
      follows: stiffest > followedAbove,
      hasModes: start.twisting.length > 0,
      stiffest: write.quantity(stiffest, 'frequency'),
      source: `${sources[named.source].title}; ${sources[sized.source].title}`,
    },
  ];
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Numbers of the opening sentences. */
function summary(start: WorkedStart | undefined, context: ReportContext) {
  const { write, subject } = context;
  const found = startMovements(subject);
  const largest = found.reduce((most, { movement }) => Math.max(most, movement), 0);
  const byHistory = found.find(({ by }) => by === 'time history')?.movement;
  const byFactor = Math.max(
    0,
    ...found.filter(({ by }) => by !== 'time history').map(({ movement }) => movement),
  );
  const change = nozzleChanges(context);
  const durations = (start?.runs ?? []).map(({ duration }) => duration);
  const [least, most] = [Math.min(...durations), Math.max(...durations)];
  const time = (value: number) => write.quantity(value, 'time', { significant: 2 });
  const limit = subject.installation.limits.startMovement?.value;
  return {
    twist: write.quantity(start?.staticTwist, 'moment'),
    dynamicTwist: write.quantity(start && start.staticTwist * start.dynamicFactor, 'moment'),
    factor: write.plain(start?.dynamicFactor),
    stopTwist: write.quantity(start?.stopTwist, 'moment'),
    used: write.quantity(start?.twist, 'moment'),
    stopGoverns: start?.governs === 'stop',
    isHardly: (start?.twist ?? 0) < HARDLY,
    top: write.distance(largest),
    topByFactor: write.distance(byFactor),
    topByHistory: write.distance(byHistory),
    hasHistory: byHistory !== undefined,
    historyLeads: byHistory !== undefined && byHistory > LEADS * byFactor,
    hasTop: found.length > 0,
    hasLimit: limit !== undefined,
    limit: write.distance(limit),
    force: write.quantity(Math.max(0, ...change.map(({ force }) => force)), 'force'),
    moment: write.quantity(Math.max(0, ...change.map(({ moment }) => moment)), 'moment'),
    hasTime: durations.length > 0,
    time: least === most ? time(least) : `${time(least)} to ${time(most)}`,
  };
}

function numberRows(start: WorkedStart, context: ReportContext) {
  const { write, subject } = context;
  const { motor, load } = start.set;
  const moment = (value: number) => write.quantity(value, 'moment');
  const mark = (path: string) => originOf(path, context);
  const { pump } = subject.installation;
  const isDrive = start.set.method.kind === 'variable-speed drive';
  return [
    { what: 'Torque of the motor at its rating', value: moment(motor.fullLoad), origin: 'computed' },
    ...(isDrive
      ? []
      : [
          {
            what: 'Locked-rotor torque, on full voltage',
            value: moment(motor.lockedRotor),
            origin: pump.motor.lockedRotorTorque
              ? 'given'
              : mark(
                  pump.motor.breakdownTorque
                    ? 'pump.motor.locked-rotor-torque'
                    : 'pump.motor.breakdown-torque',
                ),
          },
          {
            what: 'Breakdown torque, on full voltage',
            value: moment(motor.breakdown),
            origin: pump.motor.breakdownTorque ? 'given' : mark('pump.motor.breakdown-torque'),
          },
        ]),
    {
      what: 'Torque of the water at running speed',
      value: moment(load.dutyTorque),
      origin: pump.duty.efficiency === undefined ? mark('pump.duty.efficiency') : 'computed',
    },
    {
      what: 'Largest twist of the steady torque curves at any inertia, put on slowly',
      value: moment(start.bound.largest),
      origin: 'computed',
    },
    { what: 'Twist of this start, put on slowly', value: moment(start.staticTwist), origin: 'computed' },
    { what: 'Dynamic factor', value: write.plain(start.dynamicFactor), origin: 'computed' },
    {
      what: 'Twist at switching off under load, dynamics included',
      value: moment(start.stopTwist),
      origin: 'computed',
    },
    {
      what: `Twist in the conditions ${STARTS}`,
      value: moment(start.twist),
      origin: 'computed',
    },
    { what: 'Twist at steady speed', value: 'next to nothing', origin: 'computed' },
  ];
}

/** Mark of the assumption at a path. */
function originOf(path: string, { assumptions }: ReportContext): string {
  const found = assumptions.find((ranked) => ranked.assumption.path === path);
  return found === undefined ? 'assumed' : `assumed, ${found.mark}`;
}

function runRow(run: StartRun, { write }: ReportContext) {
  return {
    inertia: write.quantity(run.inertia, 'inertia'),
    duration: write.quantity(run.duration, 'time', { significant: 2 }),
    twist: write.quantity(run.largestTwist, 'moment'),
    factor: write.plain(run.factor),
    slowly: write.distance(run.top.quasiStatic),
    byFactor: write.distance(run.top.byFactor),
    byHistory: write.distance(run.top.byHistory),
  };
}

/** Change of the loads on each nozzle from running to starting. */
function nozzleChanges({ subject }: ReportContext) {
  const rows = nozzleLoadRows(subject);
  return rows
    .filter(({ role }) => role.kind === 'start')
    .flatMap((row) => {
      const running = rows.find((one) => one.nozzle === row.nozzle && one.role.kind === 'running');
      if (running === undefined) return [];
      return [
        {
          row,
          running,
          force: norm(subtract(row.plan.force, running.plan.force)),
          moment: norm(subtract(row.plan.moment, running.plan.moment)),
        },
      ];
    });
}

function nozzles(context: ReportContext) {
  const changes = nozzleChanges(context);
  const force = context.write.scaled(
    'force',
    changes.flatMap(({ row, force: change }) => [row.own.resultantForce, change]),
  );
  const moment = context.write.scaled(
    'moment',
    changes.flatMap(({ row, moment: change }) => [row.own.resultantMoment, change]),
  );
  return {
    nozzles: changes.map(({ row, running, force: change, moment: turn }) => ({
      nozzle: row.nozzle,
      condition: conditionTitle(row.condition),
      runningForce: force(running.own.resultantForce),
      force: force(row.own.resultantForce),
      forceChange: force(change),
      runningMoment: moment(running.own.resultantMoment),
      moment: moment(row.own.resultantMoment),
      momentChange: moment(turn),
    })),
    hasNozzles: changes.length > 0,
  };
}
