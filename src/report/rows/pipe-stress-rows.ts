import { type OccasionalStress, occasionalStresses } from '../../analysis/pipes/occasional-stresses.js';
import { pipesInLines } from '../../analysis/pipes/pipes-in-lines.js';
import { stressOf, testStresses } from '../../analysis/pipes/sustained-stresses.js';
import { hoopAllowable } from '../../checks/pipes/hoop-stress.js';
import { occasionalAllowable } from '../../checks/pipes/occasional-stress.js';
import { testHead } from '../../checks/pipes/test-stress.js';
import { compareWithLimit } from '../../judging/compare-with-limit.js';
import { hoopStress, pressureDesignWall } from '../../mechanics/stress/code-stress-hoop.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { ReportContext } from '../context.js';

/** Coefficient of the code for steel below 482 °C, and what the mill may take off a wall [-]. */
const COEFFICIENT = 0.4;
const MILL_TOLERANCE = 0.125;

/**
 * Occasional stress by condition: the worst place of each line.
 *
 * @param context - results and writer
 * @returns one row per line and condition
 */
export function occasionalRows(context: ReportContext) {
  const { subject, write } = context;
  const worst = new Map<string, OccasionalStress>();
  for (const row of occasionalStresses(subject)) {
    const key = `${row.line}: ${row.condition}`;
    const before = worst.get(key);
    if (before === undefined || row.stress > before.stress) worst.set(key, row);
  }
  const allowed = occasionalAllowable(subject);
  const lines = [...new Set([...worst.values()].map(({ line }) => line))];
  return lines.flatMap((line) =>
    [...worst.values()]
      .filter((row) => row.line === line)
      .map((row) => ({ row, ...compareWithLimit({ demand: row.stress, limit: allowed }) }))
      .map(({ row, ratio, verdict }) => ({
        line,
        condition: conditionTitle(row.condition),
        part: row.part,
        sustained: write.number(stressOf(subject, row.state), 'stress', { significant: 3 }),
        together: write.number(row.stress, 'stress', { significant: 3 }),
        allowed: write.number(allowed, 'stress', { significant: 4 }),
        ratio: write.ratio(ratio),
        exceeds: verdict === 'exceeds',
      })),
  );
}

/**
 * Every pipe of every line under the design pressure and in the test.
 *
 * @param context - results and writer
 * @returns one row per pipe and line
 */
export function pipeRows(context: ReportContext) {
  const { subject, write } = context;
  const { service, limits } = subject.installation;
  const test = testStresses(subject);
  const pressure = service.designPressure.value;
  const show = (value: number | undefined) => write.number(value, 'stress', { significant: 3 });
  return pipesInLines(subject).map(({ line, section }) => ({
    pipe: section.name,
    line,
    diameter: write.number(section.outsideDiameter, 'length', { significant: 5 }),
    wall: write.number(section.wall, 'length'),
    asked: write.number(wallAsked(section.outsideDiameter), 'length'),
    hoop: show(hoopStress({ tube: section, pressure })),
    allowed: write.number(hoopAllowable(subject), 'stress', { significant: 4 }),
    test: show(hoopStress({ tube: section, pressure: service.testPressure.value + testHead(subject) })),
    along: show(largest(test.filter((row) => row.line === line).map(({ stress }) => stress))),
  }));

  function wallAsked(outsideDiameter: number): number | undefined {
    const { hot, jointFactor } = limits.stress;
    if (hot === undefined || jointFactor === undefined) return undefined;
    const design = {
      pressure,
      outsideDiameter,
      allowable: hot.value,
      quality: jointFactor.value,
      coefficient: COEFFICIENT,
    };
    return pressureDesignWall(design) / (1 - MILL_TOLERANCE);
  }
}

function largest(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : Math.max(...values);
}
