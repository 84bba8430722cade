import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { velocityDemand } from './largest-velocity.js';

const OWN: Citation = {
  source: 'common-practice',
  clause: 'by noise, erosion and energy; the owner or the designer sets the limit',
  confidence: 'common practice',
};

/**
 * The velocity in the discharge pipe is within the limit of the job.
 *
 * Why: fast water is loud, wears elbows and costs power for ever. What is fast depends on the building: without a limit
 * in the file it cannot be told.
 */
export const dischargeVelocity = defineCheck({
  id: 'discharge-velocity',
  title: 'Discharge velocity',
  trade: 'Design engineer',
  section: 'practice',
  dependsOn: ['duty', 'parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: 'm/s',
  basis: [OWN],
  exceeds: 'checks.discharge-velocity.exceeds',
  noPlace: 'checks.discharge-velocity.no-place',
  places: ({ installation }) => installation.lines.filter(({ from }) => from === 'discharge'),
  at: () => 'discharge side',
  demands: (_line, subject): readonly Demand[] => [
    {
      ...velocityDemand(subject, 'discharge', subject.installation.limits.velocity?.discharge, OWN),
      missing: 'checks.discharge-velocity.no-limit',
    },
  ],
});
