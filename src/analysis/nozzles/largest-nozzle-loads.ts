import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { SolvedCondition } from '../conditions.js';
import { type LargestLoad, largestOf } from '../supports/support-loads.js';
import type { NozzleLoadRow } from './nozzle-load-rows.js';

/** The largest loads on one nozzle over the conditions that come to pass, as the pipe acts on the pump. */
export interface LargestNozzleLoads {
  readonly nozzle: PlacedNozzle['which'];
  /** Largest resultant force, and the size of its part along the nozzle [N]. */
  readonly force?: LargestLoad & { readonly axial: number };
  /** Largest resultant moment about the centre of the flange face; its load in [N·m]. */
  readonly moment?: LargestLoad;
}

/**
 * The largest loads on both nozzles, by the same rule of which of equals is named as for supports.
 *
 * @param rows - loads in every condition
 * @param conditions - those that count, in printing order
 * @returns suction first
 */
export function largestNozzleLoads(
  rows: readonly NozzleLoadRow[],
  conditions: readonly SolvedCondition[],
): readonly LargestNozzleLoads[] {
  return (['suction', 'discharge'] as const).map((nozzle) => {
    const own = conditions.flatMap(({ name }) =>
      rows.filter((row) => row.nozzle === nozzle && row.condition === name),
    );
    const force = largestOf(own, (row) => row.own.resultantForce);
    const moment = largestOf(own, (row) => row.own.resultantMoment);
    return {
      nozzle,
      ...(force && {
        force: {
          load: force.own.resultantForce,
          condition: force.condition,
          axial: Math.abs(force.own.axialForce),
        },
      }),
      ...(moment && { moment: { load: moment.own.resultantMoment, condition: moment.condition } }),
    };
  });
}
