import type { Installation } from '../../input/installation.js';
import type { IssueCode } from '../../issues/issue.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const SCOPE: Citation = {
  source: 'common-practice',
  clause: 'pumps of building services; fire pumps and dangerous liquids have standards of their own',
  confidence: 'common practice',
};
const TEMPERATURE: Citation = {
  source: 'common-practice',
  clause: 'guides for building-service pumps are written for 250 °F and less',
  confidence: 'memory',
};
/** 250 °F [K]. */
const HOTTEST = (250 + 459.67) / 1.8;

/** What decides whether an installation is one this review is meant for. */
const MATTERS = ['duty', 'liquid', 'shaft', 'build', 'temperature'] as const;
type Matter = (typeof MATTERS)[number];

/**
 * The installation is of the kind this review is meant for, and what is not judged is said.
 *
 * Why: a review that looks complete is taken for complete. Fire pumps, dangerous liquids, level shafts and pumps on a
 * base are refused when the file is read. What the file leaves open is listed here, with what is not judged of a
 * close-coupled pump or of a hot line; none of it decides.
 */
export const withinScope = defineCheck({
  id: 'within-scope',
  title: 'Scope of review',
  trade: 'Design engineer',
  section: 'scope',
  dependsOn: ['site'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'practice',
  unit: 'K',
  basis: [SCOPE],
  exceeds: 'checks.within-scope.hot',
  noPlace: 'checks.within-scope.no-place',
  places: () => MATTERS,
  at: (matter) => matter,
  demands: (matter, { installation }): readonly Demand[] => [demandAt(matter, installation)],
});

function demandAt(matter: Matter, { pump, service }: Installation): Demand {
  switch (matter) {
    case 'duty':
      return said(service.duty !== undefined, 'checks.within-scope.duty-unsaid');
    case 'liquid':
      return said(service.hazards !== undefined, 'checks.within-scope.hazards-unsaid');
    case 'shaft':
      return said(pump.shaft !== undefined, 'checks.within-scope.shaft-unsaid');
    case 'build':
      return pump.build === 'close-coupled'
        ? { kind: 'does-not-apply', code: 'checks.within-scope.close-coupled' }
        : { kind: 'forbidden', happens: false };
    case 'temperature': {
      const { value } = service.hotTemperature;
      return { kind: 'forbidden', happens: value > HOTTEST, demand: value, basis: TEMPERATURE };
    }
  }
}

/** What the file says is inside; what it leaves open cannot be told. */
function said(isSaid: boolean, missing: IssueCode): Demand {
  return isSaid ? { kind: 'forbidden', happens: false } : { kind: 'cannot-tell', code: missing };
}
