import { linesOf, placeOnLine } from '../../analysis/pipes/lines-of.js';
import { type PipeInLine, pipesInLines } from '../../analysis/pipes/pipes-in-lines.js';
import type { Subject } from '../../analysis/subject.js';
import { hoopStress as hoopOf } from '../../mechanics/stress/code-stress-hoop.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld } from './code-edition.js';

const BUILDING: Citation = {
  source: 'asme-b31.9',
  clause: 'pressure design of straight pipe; form of B31.1 para 104.1.2',
  confidence: 'memory',
};
const POWER: Citation = { source: 'asme-b31.1', clause: 'para 104.1.2', confidence: 'memory' };

/** Outside diameter over wall below which a pipe is no thin wall and these forms do not hold [-]. */
export const THIN_WALL = 6;

/**
 * Stress around the pipe from the design pressure stays within the hot allowable times the factor of the weld.
 *
 * Why: the pipe splits along its weld first. The form is that of a thin wall, on the outside diameter and the nominal
 * wall; it holds where the diameter is six walls or more. Mill tolerance and corrosion are not taken off: the report
 * prints the wall that pressure asks for beside the nominal one.
 */
export const hoopStress = defineCheck({
  id: 'hoop-stress',
  title: 'Hoop stress',
  trade: 'Design engineer',
  section: 'stress',
  dependsOn: ['pressure'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'Pa',
  basis: [BUILDING, POWER],
  exceeds: 'checks.hoop-stress.exceeds',
  noPlace: 'checks.hoop-stress.no-place',
  places: (subject) => linesOf(subject, pipesInLines(subject)),
  at: ({ line }) => line,
  demands: ({ rows }, subject) => editionNotHeld(subject) ?? rows.map((row) => demandAt(row, subject)),
});

/**
 * What the stress around the pipe may come to.
 *
 * @param subject - installation
 * @returns hot allowable times factor of the weld [Pa], or undefined where either is not known
 */
export function hoopAllowable({ installation }: Subject): number | undefined {
  const { hot, jointFactor } = installation.limits.stress;
  return hot && jointFactor && hot.value * jointFactor.value;
}

/**
 * Whether a pipe is thin enough for the thin-wall forms.
 *
 * @param tube - outside diameter and wall [m]
 * @returns true where the diameter is six walls or more
 */
export function isThinWall(tube: PipeInLine['section']): boolean {
  return tube.outsideDiameter / tube.wall >= THIN_WALL;
}

function demandAt(row: PipeInLine, subject: Subject): Demand {
  const { section } = row;
  const { stress } = subject.installation.limits;
  const at = placeOnLine({ part: section.name, line: row.line });
  const basis = stress.code === 'B31.1' ? POWER : BUILDING;
  if (!isThinWall(section)) return { kind: 'cannot-tell', at, basis, code: 'checks.hoop-stress.thick-wall' };
  const pressure = subject.installation.service.designPressure.value;
  return {
    kind: 'compared',
    at,
    basis,
    demand: hoopOf({ tube: section, pressure }),
    limit: hoopAllowable(subject),
    missing: stress.hot === undefined ? 'checks.stress.no-allowable' : 'checks.hoop-stress.no-joint-factor',
    calculation: {
      symbol: 'S',
      formula: 'P * D / (2 * t)',
      unit: 'Pa',
      values: [
        { symbol: 'P', value: pressure, unit: 'Pa', meaning: 'design pressure' },
        { symbol: 'D', value: section.outsideDiameter, unit: 'm', meaning: 'outside diameter' },
        { symbol: 't', value: section.wall, unit: 'm', meaning: 'nominal wall' },
      ],
    },
  };
}
