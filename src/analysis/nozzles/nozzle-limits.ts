import { processPumpTable } from '../../catalog/index.js';
import type { Installation, NozzleAllowance, NozzleBasis } from '../../input/installation.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { givenIn } from '../citation-of.js';

/** Loads allowed on one nozzle by one basis. */
export interface NozzleLimits {
  readonly allowance: NozzleAllowance;
  readonly basis: Citation;
}

/** Casings of that standard are proved with twice the table; that allows the piping nothing. */
const DOUBLED: Citation = {
  source: 'api-610',
  clause: 'para 5.3.3 of the 10th edition, proof of the casing with twice the table, side nozzle',
  confidence: 'read',
};

/**
 * Loads allowed on a nozzle by the maker or by the process-pump table.
 *
 * The table is taken as printed in US units, the one of its two forms of which every value was read or found twice, so
 * that the verdict does not hang on the units of the review.
 *
 * @param basis - which limits
 * @param nozzle - its size and side
 * @param installation - for the maker's limits
 * @returns limits with their source, or undefined where there are none: no maker's values, no such size
 */
export function nozzleLimits(
  basis: NozzleBasis,
  nozzle: Pick<PlacedNozzle, 'which' | 'nps'>,
  installation: Installation,
): NozzleLimits | undefined {
  if (basis === 'nozzle principal stress') return undefined;
  if (basis === 'maker') {
    const { maker } = installation.limits.nozzle;
    const allowance = maker?.[nozzle.which];
    const isGiven = Object.values(allowance ?? {}).some((value) => value !== undefined);
    return maker && allowance && isGiven ? { allowance, basis: givenIn(maker.document) } : undefined;
  }
  const row = processPumpTable(nozzle.nps);
  if (row === undefined) return undefined;
  const times = basis === 'process-pump table doubled' ? 2 : 1;
  const { FX, FY, FZ, FR, MX, MY, MZ, MR } = row.us;
  return {
    // The table's Y is along the nozzle, its Z along the upright shaft, its X across both.
    allowance: {
      axialForce: FY * times,
      verticalForce: FZ * times,
      crossForce: FX * times,
      resultantForce: FR * times,
      axialMoment: MY * times,
      verticalMoment: MZ * times,
      crossMoment: MX * times,
      resultantMoment: MR * times,
    },
    basis: namedBy(basis, installation) ?? (times === 1 ? row.citation : DOUBLED),
  };
}

/** Where a document in the file names the basis, the limit is that document's. */
function namedBy(basis: NozzleBasis, { limits }: Installation): Citation | undefined {
  const { namedIn, basis: deciding } = limits.nozzle;
  return namedIn && deciding === basis
    ? givenIn(`${namedIn.document}, ${namedIn.clause}: ${basis}`)
    : undefined;
}
