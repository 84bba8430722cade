import { testPressureAllowed } from '../../analysis/flanges/flange-rating.js';
import { describedJoints, isDescribed } from '../../analysis/flanges/flange-sides.js';
import type { Subject } from '../../analysis/subject.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { FlangeSide } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld } from '../pipes/code-edition.js';

const TEST: Citation = { source: 'asme-b31.9', clause: 'para 937.3', confidence: 'memory' };
const FLANGES: Citation = {
  source: 'asme-b16.5',
  clause: 'system test at 1.5 times the rating',
  confidence: 'memory',
};

/** Least test pressure over design pressure [-]. */
const LEAST = 1.5;

type TestPlace = 'least' | readonly FlangeSide[];

/**
 * The pressure of the test is high enough to prove the line and not above what any flange of it may see.
 *
 * Why: a test below one and a half times the design pressure proves too little; above what the weakest flange may see it
 * breaks what it should prove. What pumps, valves and gauges may see is for their makers to say.
 */
export const testPressure = defineCheck({
  id: 'test-pressure',
  title: 'Test pressure',
  trade: 'Pipe fitter',
  section: 'stress',
  dependsOn: ['pressure'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'Pa',
  basis: [TEST, FLANGES],
  exceeds: 'checks.test-pressure.exceeds',
  noPlace: 'checks.test-pressure.no-place',
  places: (subject): readonly TestPlace[] => {
    const sides = describedSides(subject);
    return ['least', ...(sides.length === 0 ? [] : [sides])];
  },
  at: (place) => (place === 'least' ? 'whole installation' : 'weakest flange'),
  demands: (place, subject) =>
    place === 'least'
      ? (editionNotHeld(subject) ?? [leastPressure(subject)])
      : place.map((side) => flangeDemand(side, subject)),
});

/** Every described flange once: a flange between two joints stands in both. */
function describedSides(subject: Subject): readonly FlangeSide[] {
  const sides = describedJoints(subject).flatMap((joint) => joint.sides.filter(isDescribed));
  return [...new Map(sides.map((side) => [`${side.owner} ${side.dimensions?.nps}`, side])).values()];
}

function leastPressure({ installation }: Subject): Demand {
  const { designPressure, testPressure: test } = installation.service;
  return {
    kind: 'compared',
    condition: conditionId('test'),
    label: 'least pressure of the test',
    chosen: true,
    demand: LEAST * designPressure.value,
    limit: test.value,
    advice: 'checks.test-pressure.too-low',
    calculation: {
      symbol: 'Pt',
      formula: '1.5 * P',
      unit: 'Pa',
      values: [{ symbol: 'P', value: designPressure.value, unit: 'Pa', meaning: 'design pressure' }],
    },
  };
}

function flangeDemand(side: FlangeSide, { installation }: Subject): Demand {
  const { service } = installation;
  return {
    kind: 'compared',
    at: side.owner,
    condition: conditionId('test'),
    label: side.owner,
    demand: service.testPressure.value,
    limit: testPressureAllowed(side.dimensions?.rating, service.installationTemperature.value),
    missing: 'checks.test-pressure.no-rating',
    data: { owner: side.owner },
    basis: side.dimensions?.ratingCitation ?? FLANGES,
  };
}
