import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { fastestPipe, velocityDemand } from './largest-velocity.js';

const EIGHT_FEET: Citation = {
  source: 'hi-9.6.6',
  clause: '8 ft/s in the suction of a closed system, quoted by a second hand',
  confidence: 'read',
};
/** 8 ft/s [m/s]. */
const QUOTED = 8 * 0.3048;

/**
 * The velocity in the suction pipe is within the limit of the job.
 *
 * Why: a fast suction loses the pressure that keeps the liquid from boiling in the impeller, and makes every elbow
 * before it felt. Without a limit in the file the figure quoted from the pump standard is shown and never decides.
 */
export const suctionVelocity = defineCheck({
  id: 'suction-velocity',
  title: 'Suction velocity',
  trade: 'Design engineer',
  section: 'practice',
  dependsOn: ['duty', 'parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: 'm/s',
  basis: [EIGHT_FEET],
  exceeds: 'checks.suction-velocity.exceeds',
  noPlace: 'checks.suction-velocity.no-place',
  places: ({ installation }) => installation.lines.filter(({ from }) => from === 'suction'),
  at: () => 'suction side',
  demands: (_line, subject): readonly Demand[] => {
    const limit = subject.installation.limits.velocity?.suction;
    if (limit !== undefined) return [velocityDemand(subject, 'suction', limit, EIGHT_FEET)];
    const { section, velocity } = fastestPipe(subject, 'suction');
    const data = { pipe: section.name };
    return [{ kind: 'compared', demand: velocity, limit: QUOTED, comparison: true, data }];
  },
});
