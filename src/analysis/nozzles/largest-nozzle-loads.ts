/**
 * The largest loads of the pipe on each nozzle, as the pipe acts on the pump, about the centre of the flange face. What
 * is printed of them anywhere is taken from here, as for supports.
 *
 * The largest of a resultant or of a component, by size, is taken over the conditions that come to pass with the pump
 * in its place; of equals the first in printing order is named. The force that governs is the resultant force, the
 * moment the resultant moment: they need not come from one condition.
 */
import { kindOf, type RoleKind } from '../../model/conditions/condition-roles.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { SolvedCondition } from '../conditions.js';
import { type LargestLoad, largestOf, NOISE } from '../supports/support-loads.js';
import { type NozzleComponent, nozzleComponents } from './nozzle-components.js';
import type { NozzleLoadRow } from './nozzle-load-rows.js';

/** The largest of one component by size, and its value there with its sign. */
export interface LargestComponent extends LargestLoad {
  /** [N] or [N·m], by the component; positive as in the axes of the nozzle. */
  readonly signed: number;
}

/** The largest loads on one nozzle over some conditions. */
export interface LargestNozzleLoads {
  readonly nozzle: PlacedNozzle['which'];
  /** Largest resultant force, and the size of its part along the nozzle [N]. */
  readonly force?: LargestLoad & { readonly axial: number };
  /** Largest resultant moment about the centre of the flange face; its load in [N·m]. */
  readonly moment?: LargestLoad;
  /** Each component and resultant by itself; one that is nothing in every condition is absent. */
  readonly components: Readonly<Partial<Record<NozzleComponent['key'], LargestComponent>>>;
}

/** The nozzles in the order in which they are told. */
const NOZZLES = ['suction', 'discharge'] as const;

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
  return NOZZLES.map((nozzle) => {
    const own = conditions.flatMap(({ name, solved }) =>
      rows
        .filter((row) => row.nozzle === nozzle && row.condition === name)
        .map((row) => ({ row, noise: NOISE * solved.weight })),
    );
    const components = componentsOf(own);
    const { resultantForce, resultantMoment: moment } = components;
    const force =
      resultantForce && own.find(({ row }) => row.condition === resultantForce.condition)?.row.own;
    return {
      nozzle,
      ...(resultantForce &&
        force && {
          force: {
            load: resultantForce.load,
            condition: resultantForce.condition,
            axial: Math.abs(force.axialForce),
          },
        }),
      ...(moment && { moment: { load: moment.load, condition: moment.condition } }),
      components,
    };
  });
}

/** Loads of a nozzle, with what of them is noise of the arithmetic [N], and over a metre [N·m]. */
interface Counted {
  readonly row: NozzleLoadRow;
  readonly noise: number;
}

function componentsOf(rows: readonly Counted[]): LargestNozzleLoads['components'] {
  const found = nozzleComponents.flatMap(({ key }) => {
    const most = largestOf(rows, ({ row, noise }) => {
      const size = Math.abs(row.own[key]);
      return size > noise ? size : undefined;
    })?.row;
    if (most === undefined) return [];
    const signed = most.own[key];
    return [[key, { load: Math.abs(signed), condition: most.condition, signed }] as const];
  });
  return Object.fromEntries(found);
}

/**
 * The largest loads on both nozzles by what the conditions stand for.
 *
 * @param rows - loads in every condition
 * @param conditions - those that count, in printing order
 * @returns for each role with the pump in its place, in printing order, both nozzles
 */
export function largestNozzleLoadsByRole(
  rows: readonly NozzleLoadRow[],
  conditions: readonly SolvedCondition[],
): ReadonlyMap<RoleKind, readonly LargestNozzleLoads[]> {
  const loaded = conditions.filter(({ name }) => rows.some(({ condition }) => condition === name));
  const roles = new Set(loaded.map(kindOf));
  return new Map(
    [...roles].map((role) => [
      role,
      largestNozzleLoads(
        rows,
        loaded.filter((condition) => kindOf(condition) === role),
      ),
    ]),
  );
}
