import { wrenchOnBody } from '../../mechanics/frame/recovery/wrench-on-body.js';
import type { ConditionRole } from '../../model/conditions/condition-roles.js';
import type { Wrench } from '../../model/conventions.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import { nozzleAxes } from '../../model/nozzle-axes.js';
import { dot, norm } from '../../model/vector.js';
import { solvedConditions } from '../conditions.js';
import type { Facts } from '../facts.js';

/** Loads in the axes of a nozzle: along it, upright, and across both. Forces in [N], moments in [N·m]. */
export interface NozzleAxisLoads {
  /** Positive when the pipe pulls on the nozzle. */
  readonly axialForce: number;
  readonly verticalForce: number;
  readonly crossForce: number;
  /** Never negative. */
  readonly resultantForce: number;
  /** About the nozzle's own axis: torsion. */
  readonly axialMoment: number;
  readonly verticalMoment: number;
  readonly crossMoment: number;
  /** Never negative. */
  readonly resultantMoment: number;
}

/** Loads of the pipe on one nozzle in one condition, about the centre of the flange face. */
export interface NozzleLoadRow {
  readonly condition: string;
  /** What the condition stands for. */
  readonly role: ConditionRole;
  readonly nozzle: 'suction' | 'discharge';
  /** East, north, up. */
  readonly plan: Wrench;
  readonly own: NozzleAxisLoads;
}

/**
 * Loads on both nozzles in every condition with the pump in place, as the pipe acts on the pump, in plan axes and in nozzle axes.
 *
 * @param subject - layout with its frame, and response
 * @returns one row per condition and nozzle, suction first; empty where the frame has no pump body
 */
export function nozzleLoadRows(subject: Facts): readonly NozzleLoadRow[] {
  const { frame, nozzles } = subject.layout;
  const both = [nozzles.suction, nozzles.discharge];
  const pump = frame.bodies.find(({ points }) => both.every(({ point }) => points.includes(point)));
  if (pump === undefined) return [];
  const standing = solvedConditions(subject).filter(({ acts }) => !acts.removed.includes(pump.name));
  return standing.flatMap(({ name, role, acts, solved }) =>
    both.map((nozzle) => {
      const plan = wrenchOnBody(frame, acts, solved, pump.name, nozzle.point);
      return { condition: name, role, nozzle: nozzle.which, plan, own: nozzleAxisLoads(plan, nozzle) };
    }),
  );
}

/**
 * A wrench on a nozzle in the nozzle's own axes.
 *
 * @param load - force [N] and moment [N·m] in plan axes
 * @param nozzle - its axis, outward
 * @returns components and resultants, forces [N], moments [N·m]
 */
export function nozzleAxisLoads(load: Wrench, nozzle: Pick<PlacedNozzle, 'axis'>): NozzleAxisLoads {
  const { along: axial, upright, across } = nozzleAxes(nozzle.axis);
  return {
    axialForce: dot(load.force, axial),
    verticalForce: dot(load.force, upright),
    crossForce: dot(load.force, across),
    resultantForce: norm(load.force),
    axialMoment: dot(load.moment, axial),
    verticalMoment: dot(load.moment, upright),
    crossMoment: dot(load.moment, across),
    resultantMoment: norm(load.moment),
  };
}
