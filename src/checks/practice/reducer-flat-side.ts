import { courseOf } from '../../analysis/pipes/line-course.js';
import type { Subject } from '../../analysis/subject.js';
import type { ReducerPart } from '../../input/installation.js';
import type { PlacedPart } from '../../model/layout/place-parts.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const FLAT_ON_TOP: Citation = {
  source: 'reducer-articles',
  clause: 'eccentric, flat on top in a level suction, flat below where the supply comes down from above',
  confidence: 'read',
};
/** A direction is level up to this rise [-]. */
const LEVEL = 0.05;

/** A reducer in the suction line and where it stands. */
interface SuctionReducer {
  readonly step: PlacedPart;
  readonly part: ReducerPart;
}

/**
 * A reducer in the level part of the suction line keeps no air pocket: it is eccentric, with its flat side on top.
 *
 * Why: air gathers under the widest crown of the pipe and goes through the pump in gulps. Where the supply comes down
 * from above, air finds its way back up and the flat side may lie below. Upright reducers hold no air either way.
 */
export const reducerFlatSide = defineCheck({
  id: 'reducer-flat-side',
  title: 'Eccentric reducer orientation',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: '-',
  basis: [FLAT_ON_TOP],
  exceeds: 'checks.reducer-flat-side.exceeds',
  noPlace: 'checks.reducer-flat-side.no-place',
  places: (subject): readonly SuctionReducer[] =>
    courseOf(subject, 'suction').flatMap((step) =>
      step.part.kind === 'reducer' ? [{ step, part: step.part }] : [],
    ),
  at: ({ part }) => part.name,
  demands: ({ step, part }, subject): readonly Demand[] => {
    if (Math.abs(step.directionIn[2]) > LEVEL)
      return [{ kind: 'does-not-apply', code: 'checks.reducer-flat-side.upright' }];
    const supply = supplyOf(subject, step);
    const isFlatOnTop = part.shape === 'eccentric' && part.flat === 'top';
    const mayBeBelow = part.shape === 'eccentric' && supply === 'above';
    // A flat side below is right or wrong by where the supply comes from, and the description may end before that.
    const isOpen = part.shape === 'eccentric' && supply === 'not described';
    return [
      {
        kind: 'forbidden',
        happens: isFlatOnTop || mayBeBelow ? false : isOpen ? undefined : true,
        missing: 'checks.reducer-flat-side.unknown',
        data: { shape: part.shape, flat: part.flat ?? 'neither side' },
      },
    ];
  },
});

/** Where the liquid comes from: the first change of height behind the reducer, walking against the flow. */
function supplyOf(subject: Subject, reducer: PlacedPart): 'above' | 'below' | 'not described' {
  const beyond = courseOf(subject, 'suction').filter(({ start }) => start >= reducer.end);
  const rise = beyond.map(({ directionOut }) => directionOut[2]).find((up) => Math.abs(up) > LEVEL);
  if (rise === undefined) return 'not described';
  return rise > 0 ? 'above' : 'below';
}
