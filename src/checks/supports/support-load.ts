import { citationOf, givenIn } from '../../analysis/citation-of.js';
import { judgedConditions, operatingOnly, type SolvedCondition } from '../../analysis/conditions.js';
import type { Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { type Demand, defineCheck } from '../define-check.js';

/**
 * The load of a stand, spring or other rated support stays within its rating, and that of a spring within its
 * working range.
 *
 * Why: a spring loaded past its range sits on its stop and becomes a rigid support; one loaded below it hangs on its
 * upper stop and carries nothing it was bought to carry. Either throws the difference on the pump nozzle. A spring
 * held by its travel stops (erection, pressure test) is rigid by intention and is judged by its rating alone.
 */
export const supportLoad = defineCheck({
  id: 'support-load',
  title: 'Support and spring load',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  turnsUnannounced: true,
  unit: 'N',
  basis: [givenIn('rating of the support')],
  exceeds: 'checks.support-load.exceeds',
  noPlace: 'checks.support-load.no-place',
  places: ({ layout }) => layout.supports.filter(isRated),
  at: ({ mark }) => mark,
  demands: (support, subject) => [...ratingDemands(support, subject), ...springDemands(support, subject)],
});

function isRated({ part }: PlacedSupport): boolean {
  return (
    part?.rating !== undefined || part?.spring?.minimum !== undefined || part?.spring?.maximum !== undefined
  );
}

function ratingDemands({ mark, part }: PlacedSupport, subject: Subject): readonly Demand[] {
  const rating = part?.rating;
  if (rating === undefined) return [];
  return judgedConditions(subject).map((condition) => ({
    kind: 'compared',
    condition: condition.name,
    label: 'rating',
    demand: supportLoadIn(condition.solved, mark)?.resultant,
    limit: rating.value,
    missing: 'checks.support-not-solved',
    basis: citationOf(rating, givenIn('rating of the support')),
  }));
}

function springDemands({ mark, part }: PlacedSupport, subject: Subject): readonly Demand[] {
  const { minimum, maximum } = part?.spring ?? {};
  const free = operatingOnly(subject).filter((condition) => !isStopped(condition, mark));
  return free.flatMap((condition): readonly Demand[] => {
    const load = supportLoadIn(condition.solved, mark)?.resultant;
    const common = {
      condition: condition.name,
      missing: 'checks.support-not-solved' as const,
      basis: givenIn('working range of the spring'),
    };
    const high: Demand = {
      ...common,
      kind: 'compared',
      label: 'top of the working range',
      demand: load,
      limit: maximum,
      advice: 'checks.support-load.above-range',
    };
    const below = load === undefined || minimum === undefined ? Number.NaN : minimum - load;
    const shortfall = Number.isFinite(below) ? Math.max(0, below) : undefined;
    const low: Demand = {
      ...common,
      kind: 'forbidden',
      label: 'bottom of the working range',
      happens: shortfall === undefined ? undefined : shortfall > 0,
      ...(shortfall !== undefined && { demand: shortfall }),
      advice: 'checks.support-load.below-range',
    };
    return [...(maximum === undefined ? [] : [high]), ...(minimum === undefined ? [] : [low])];
  });
}

function isStopped(condition: SolvedCondition, mark: string): boolean {
  return (
    condition.acts.stopped.includes(mark) ||
    (condition.solved.supports[mark]?.states.includes('stopped') ?? false)
  );
}
