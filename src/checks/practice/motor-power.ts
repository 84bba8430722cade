import type { Subject } from '../../analysis/subject.js';
import { compareWithLimit } from '../../judging/compare-with-limit.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const POWER: Citation = {
  source: 'statics',
  clause: 'density × gravity × flow × head over efficiency, against rated power × service factor',
  confidence: 'computed',
};

/**
 * Power given to the liquid at the duty: `P = ρ·g·Q·H`.
 *
 * @param subject - duty and density when running
 * @returns hydraulic power [W]
 */
export function hydraulicPower({ installation }: Subject): number {
  const { flow, head } = installation.pump.duty;
  return installation.service.density.running.value * STANDARD_GRAVITY * flow * head;
}

/**
 * The power taken at the shaft at the duty is within the rated power of the motor times its service factor.
 *
 * Why: a motor too small trips or burns at its duty, whatever else is right. Without the efficiency only a motor smaller
 * than the power in the liquid is certain to be too small. Between rated power and what an unknown service factor might
 * allow it cannot be told. Other points of the curve, and liquids thicker than water, are not judged.
 */
export const motorPower = defineCheck({
  id: 'motor-power',
  title: 'Motor power at duty',
  trade: 'Design engineer',
  section: 'practice',
  dependsOn: ['duty'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  unit: 'W',
  basis: [POWER],
  exceeds: 'checks.motor-power.exceeds',
  noPlace: 'checks.motor-power.no-place',
  places: ({ installation }) => [installation.pump.motor],
  at: () => 'motor',
  demands: (motor, subject): readonly Demand[] => {
    const { efficiency } = subject.installation.pump.duty;
    const hydraulic = hydraulicPower(subject);
    const limit = motor.power * (motor.serviceFactor?.value ?? 1);
    const taken = efficiency === undefined ? undefined : hydraulic / efficiency;
    const exceeds = (power: number) => compareWithLimit({ demand: power, limit }).verdict === 'exceeds';
    const certain = exceeds(hydraulic) ? hydraulic : undefined;
    const demand = taken ?? certain;
    if (motor.serviceFactor === undefined && demand !== undefined && exceeds(demand))
      return [{ kind: 'cannot-tell', code: 'checks.motor-power.no-service-factor' }];
    return [{ kind: 'compared', demand, limit, missing: 'checks.motor-power.no-efficiency' }];
  },
});
