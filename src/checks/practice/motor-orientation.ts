import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: "the motor manufacturer's list of mounting positions",
  confidence: 'common practice',
};

/**
 * The motor stands above the pump and may stand there with its shaft down.
 *
 * Why: bearings, seals and drain holes of a motor are made for certain positions; upright it carries its own rotor, and
 * often the pump's, on a bearing meant for it. A motor below the pump stands under the seal that will leak one day.
 */
export const motorOrientation = defineCheck({
  id: 'motor-orientation',
  title: 'Motor mounting orientation',
  trade: 'Design engineer',
  section: 'practice',
  dependsOn: ['site'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: '-',
  basis: [MAKER],
  exceeds: 'checks.motor-orientation.exceeds',
  noPlace: 'checks.motor-orientation.no-place',
  places: ({ installation }) => [installation.pump.motor],
  at: () => 'motor',
  demands: ({ centre, shaftDown }): readonly Demand[] => {
    if (centre[2] < 0)
      return [{ kind: 'forbidden', happens: true, advice: 'checks.motor-orientation.below' }];
    return [
      {
        kind: 'forbidden',
        happens: shaftDown === undefined ? undefined : !shaftDown,
        missing: 'checks.motor-orientation.unknown',
      },
    ];
  },
});
