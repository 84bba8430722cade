/** Forces and moments on everything that hangs together, as a calculator adds them up. */

import { nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import { supportLoadIn, supportWrenchIn } from '../../analysis/supports/support-loads.js';
import type { ConditionResponse } from '../../mechanics/frame/response.js';
import { inCondition } from '../../model/conditions/condition-roles.js';
import { STANDARD_GRAVITY, type Vec3 } from '../../model/conventions.js';

/** A force [N] and a moment [N·m] at a place [m], as they act on the pipe and the pump. */
export interface PlacedForce {
  readonly name: string;
  readonly at: Vec3;
  readonly force: Vec3;
  readonly moment: Vec3;
}

const NOTHING: Vec3 = [0, 0, 0];

/**
 * Weight of each line and of the pump when filled, at its centre of gravity.
 *
 * @param subject - layout with the weight of every part
 * @returns one force a line [N], down
 */
export function weightForces({ layout }: Subject): readonly PlacedForce[] {
  const lines = [...new Set(layout.weights.map((row) => row.line))];
  return lines.map((line) => {
    const rows = layout.weights
      .filter((row) => row.line === line)
      .map((row) => ({ at: row.at, mass: row.dry + row.contents + row.covering }));
    const mass = rows.reduce((sum, row) => sum + row.mass, 0);
    const mean = (axis: 0 | 1 | 2): number =>
      mass === 0 ? 0 : rows.reduce((sum, row) => sum + row.mass * row.at[axis], 0) / mass;
    return {
      name: line,
      at: [mean(0), mean(1), mean(2)],
      force: [0, 0, -mass * STANDARD_GRAVITY],
      moment: NOTHING,
    };
  });
}

/**
 * What every support does to the pipe in one condition.
 *
 * @param subject - layout
 * @param condition - solved condition
 * @returns one force and moment a support [N], [N·m]
 */
export function heldForces({ layout }: Subject, condition: ConditionResponse): readonly PlacedForce[] {
  return layout.supports.flatMap(({ mark, at }) => {
    const wrench = supportWrenchIn(condition, mark);
    return wrench === undefined
      ? []
      : [{ name: mark, at, force: reversed(wrench.force), moment: reversed(wrench.moment) }];
  });
}

/** Adding nothing turns −0 into 0, which prints without a sign. */
const reversed = ([x, y, z]: Vec3): Vec3 => [-x + 0, -y + 0, -z + 0];

/**
 * Turning of a force and its moment about a centre: (r − c) × F + M [N·m], [m], [N].
 *
 * @param centre - point turned about [m]
 * @param one - force [N] and moment [N·m] at its place [m]
 * @returns moment about the centre [N·m]
 */
export function turnsAbout(centre: Vec3, { at, force, moment }: PlacedForce): Vec3 {
  const [x, y, z] = [at[0] - centre[0], at[1] - centre[1], at[2] - centre[2]];
  return [
    y * force[2] - z * force[1] + moment[0],
    z * force[0] - x * force[2] + moment[1],
    x * force[1] - y * force[0] + moment[2],
  ];
}

/**
 * What acts up and down on the pump with the line filled: its weight, the pipe at its nozzles, its own supports.
 *
 * @param subject - layout and solved conditions
 * @returns upward forces [N] that add up to nothing
 */
export function pumpForces(subject: Subject): readonly { readonly name: string; readonly up: number }[] {
  const own = weightForces(subject).find(({ name }) => name === 'pump');
  const nozzles = nozzleLoadRows(subject)
    .filter(({ role }) => role.kind === 'filled')
    .map(({ nozzle, plan }) => ({ name: `pipe at the ${nozzle} nozzle`, up: plan.force[2] }));
  const held = subject.layout.supports.flatMap(({ mark, line }) => {
    const down = supportLoadIn(inCondition(subject.response.conditions, 'filled'), mark)?.downward;
    return line === 'pump' && down !== undefined ? [{ name: mark, up: down }] : [];
  });
  return own === undefined || nozzles.length === 0
    ? []
    : [{ name: 'weight of pump, motor and liquid', up: own.force[2] }, ...nozzles, ...held];
}
