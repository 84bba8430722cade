import { courseOf, SIDES, waysOut } from '../../analysis/pipes/line-course.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'a valve that shuts on both sides of the pump',
  confidence: 'common practice',
};

/**
 * On both sides a valve shuts the pump off from the system, and so on every leg that leaves the line before it.
 *
 * Why: a seal is changed with the pump empty and the rest of the plant full. Without a valve on either side, or with a
 * leg that goes round it, the plant is drained for a seal, or somebody opens a pump under pressure. A leg that ends free
 * is taken as closed by a blind flange or a cap; a valve of which nobody says that it shuts leaves the answer open.
 */
export const isolationValves = defineCheck({
  id: 'isolation-valves',
  title: 'Isolation valves',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: '-',
  basis: [PRACTICE],
  exceeds: 'checks.isolation-valves.exceeds',
  noPlace: 'checks.isolation-valves.no-place',
  places: ({ installation }) => SIDES.filter((side) => installation.lines.some(({ from }) => from === side)),
  at: (side) => `${side} side`,
  demands: (side, subject): readonly Demand[] => {
    const ways = waysOut(courseOf(subject, side)).filter(({ kind }) => kind !== 'closed end');
    if (ways.length === 0) return [{ kind: 'does-not-apply', code: 'checks.isolation-valves.capped' }];
    return ways.map(({ kind, by }) => ({
      kind: 'forbidden',
      happens: kind === 'unsure' ? undefined : kind === 'open',
      label: by,
      missing: 'checks.isolation-valves.unknown',
      remark: 'checks.isolation-valves.by',
      data: { by },
    }));
  },
});
