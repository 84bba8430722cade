import { citationOf } from '../../analysis/citation-of.js';
import { linesOf, placeOnLine } from '../../analysis/pipes/lines-of.js';
import { type PipeInLine, pipesInLines } from '../../analysis/pipes/pipes-in-lines.js';
import type { Subject } from '../../analysis/subject.js';
import { hoopStress } from '../../mechanics/stress/code-stress-hoop.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld } from './code-edition.js';

const TEST: Citation = { source: 'asme-b31.9', clause: 'para 937.3', confidence: 'memory' };

/** Largest share of the yield strength around the pipe, at the bottom of a riser [-]. */
const YIELD_SHARE = 0.9;

/**
 * Stress around the pipe in the test stays within nine tenths of the yield strength.
 *
 * Why: a test that makes the pipe yield harms what it should prove. The pressure given is taken at the highest point of
 * the lines, so that the lowest has the head of the water besides: the safe side, wherever the gauge stands. Stress
 * along the pipe during the test is printed and not judged, as in the code.
 */
export const testStress = defineCheck({
  id: 'test-stress',
  title: 'Hoop stress at test pressure',
  trade: 'Design engineer',
  section: 'stress',
  dependsOn: ['pressure'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'Pa',
  basis: [TEST],
  exceeds: 'checks.test-stress.exceeds',
  noPlace: 'checks.test-stress.no-place',
  places: (subject) => linesOf(subject, pipesInLines(subject)),
  at: ({ line }) => line,
  demands: ({ rows }, subject) => editionNotHeld(subject) ?? rows.map((row) => yieldDemand(row, subject)),
});

/**
 * Head of the test water from the highest to the lowest point of the lines.
 *
 * @param subject - installation and layout
 * @returns pressure [Pa]
 */
export function testHead({ installation, layout }: Subject): number {
  const heights = layout.frame.members
    .flatMap(({ from, to }) => [layout.frame.points[from], layout.frame.points[to]])
    .flatMap((at) => (at === undefined ? [] : [at[2]]));
  if (heights.length === 0) return 0;
  const rise = heights.reduce((most, height) => Math.max(most, height), Number.NEGATIVE_INFINITY);
  const foot = heights.reduce((least, height) => Math.min(least, height), Number.POSITIVE_INFINITY);
  return installation.service.density.test.value * STANDARD_GRAVITY * (rise - foot);
}

function yieldDemand({ line, section }: PipeInLine, subject: Subject): Demand {
  const { service, materials } = subject.installation;
  const strength = materials[section.material]?.yieldStrength;
  const head = testHead(subject);
  const pressure = service.testPressure.value;
  return {
    kind: 'compared',
    at: placeOnLine({ part: section.name, line }),
    condition: conditionId('test'),
    label: 'stress around the pipe at its foot',
    demand: hoopStress({ tube: section, pressure: pressure + head }),
    limit: strength && YIELD_SHARE * strength.value,
    missing: 'checks.test-stress.no-yield',
    data: { material: section.material },
    basis: strength?.origin.kind === 'given' ? citationOf(strength, TEST) : TEST,
    calculation: {
      symbol: 'S',
      formula: '(Pt + Ph) * D / (2 * t)',
      unit: 'Pa',
      values: [
        { symbol: 'Pt', value: pressure, unit: 'Pa', meaning: 'test pressure' },
        { symbol: 'Ph', value: head, unit: 'Pa', meaning: 'head of water over the lowest point' },
        { symbol: 'D', value: section.outsideDiameter, unit: 'm', meaning: 'outside diameter' },
        { symbol: 't', value: section.wall, unit: 'm', meaning: 'nominal wall' },
      ],
    },
  };
}
