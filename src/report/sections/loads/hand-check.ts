import type { Vec3 } from '../../../model/conventions.js';
import { calculationPlan } from '../../calculations/calculation-plan.js';
import {
  heldForces,
  type PlacedForce,
  pumpForces,
  turnsAbout,
  weightForces,
} from '../../calculations/statics-rows.js';
import { type TributaryLoad, tributaryLoads } from '../../calculations/tributary-loads.js';
import type { ReportContext, View } from '../../context.js';

/** Digits of sums, one or two more than an estimate deserves, so that they can be added up again. */
const DIGITS = { significant: 5 };

/**
 * One page for a second engineer with a calculator: forces and their turning about the pump add up to nothing, the
 * pump hangs on its nozzles, and support loads by tributary lengths stand beside the solved ones.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function handCheck(context: ReportContext) {
  const { subject, write } = context;
  const { filled } = subject.response.conditions;
  const checks = tributaryLoads(subject);
  const load = write.scaled(
    'force',
    checks.flatMap((check) => [check.byHand, check.solved]),
  );
  const pump = pumpForces(subject);
  const pumpForce = write.scaled(
    'force',
    pump.map(({ up }) => up),
    DIGITS,
  );
  return {
    hasFilled: filled !== undefined,
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    lengthUnit: write.unit('length'),
    ...balanceOf(context),
    pump: pump.map(({ name, up }) => ({ name, up: pumpForce(up) })),
    pumpSum: pumpForce(pump.reduce((sum, { up }) => sum + up, 0)),
    hasPump: pump.length > 0,
    handChecks: checks.map((check) => tributaryRow(check, load, context)),
    hasHandChecks: checks.length > 0,
    worked: calculationPlan(context)
      .map(({ question }, index) => ({ mark: String(index + 1), to: question.id }))
      .filter(({ to }) => /^(total-weight|sum-of-support-loads|hand-check)/.test(to)),
  } satisfies View;
}

/** Forces, and their turning about the pump's reference point, of weights and supports, with their sums. */
function balanceOf({ subject, write }: ReportContext) {
  const { filled } = subject.response.conditions;
  const centre = subject.installation.pump.position;
  const weights = weightForces(subject);
  const supports = filled === undefined ? [] : heldForces(subject, filled);
  const all = [...weights, ...supports].map((one) => ({ ...one, turns: turnsAbout(centre, one) }));
  const force = write.scaled(
    'force',
    all.flatMap((one) => one.force),
    DIGITS,
  );
  const moment = write.scaled(
    'moment',
    all.flatMap((one) => [one.turns[0], one.turns[1]]),
    DIGITS,
  );
  const place = (at: Vec3): readonly string[] =>
    at.map((value, axis) =>
      write.number(value - (centre[axis] ?? 0), 'length', { decimals: write.system === 'us' ? 2 : 1 }),
    );
  const row = (one: PlacedForce & { readonly turns: Vec3 }) => ({
    name: one.name,
    cells: [
      ...place(one.at),
      ...one.force.map((value) => force(value)),
      moment(one.moment[0]),
      moment(one.moment[1]),
      moment(one.turns[0]),
      moment(one.turns[1]),
    ],
  });
  const sum = (read: (one: (typeof all)[number]) => number): number =>
    all.reduce((total, one) => total + read(one), 0);
  return {
    weights: all.slice(0, weights.length).map(row),
    supports: all.slice(weights.length).map(row),
    sums: [
      force(sum((one) => one.force[0])),
      force(sum((one) => one.force[1])),
      force(sum((one) => one.force[2])),
    ],
    turns: [moment(sum((one) => one.turns[0])), moment(sum((one) => one.turns[1]))],
  };
}

function tributaryRow(
  check: TributaryLoad,
  load: (value: number | undefined) => string,
  { write }: ReportContext,
) {
  return {
    mark: check.mark,
    before: write.quantity(check.before, 'length', { feetInches: true }),
    after: write.quantity(check.after, 'length', { feetInches: true }),
    parts: check.parts.map((part) => ({
      part: part.part,
      weight: write.number(part.weight, 'force', { significant: 4 }),
      share: write.plain(part.share, 3),
    })),
    byHand: load(check.byHand),
    solved: load(check.solved),
    difference: write.quantity((check.solved - check.byHand) / check.byHand, 'ratio', { decimals: 0 }),
  };
}
