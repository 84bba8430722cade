import type { Subject } from '../../analysis/subject.js';
import { compareWithLimit } from '../../judging/compare-with-limit.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const POWER: Citation = {
  source: 'statics',
  clause: 'density × gravity × flow × head over efficiency, against the power on the nameplate',
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
 * The power taken at the shaft at the duty is within the power on the nameplate of the motor.
 *
 * Why: a motor too small trips or burns at its duty, whatever else is right. The service factor is no part of the limit:
 * it is there for what comes unforeseen, holds for the rated voltage and frequency alone, and not on a drive. Without the
 * efficiency only a motor smaller than the power in the liquid is certain to be too small. Other points of the curve,
 * and liquids thicker than water, are not judged.
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
  consequence: 'hurt or break',
  unit: 'W',
  basis: [POWER],
  exceeds: 'checks.motor-power.exceeds',
  noPlace: 'checks.motor-power.no-place',
  places: ({ installation }) => [installation.pump.motor],
  at: () => 'motor',
  demands: (motor, subject): readonly Demand[] => {
    const { efficiency } = subject.installation.pump.duty;
    const hydraulic = hydraulicPower(subject);
    const limit = motor.power;
    const taken = efficiency === undefined ? undefined : hydraulic / efficiency;
    const exceeds = (power: number) => compareWithLimit({ demand: power, limit }).verdict === 'exceeds';
    const certain = exceeds(hydraulic) ? hydraulic : undefined;
    const demand = taken ?? certain;
    const advice =
      motor.start?.kind === 'variable-speed drive'
        ? ('checks.motor-power.exceeds-on-drive' as const)
        : ('checks.motor-power.exceeds' as const);
    return [{ kind: 'compared', demand, limit, missing: 'checks.motor-power.no-efficiency', advice }];
  },
});
