/** What the readings before bolt-up say of each flange. */

import { misfitLoads } from '../../analysis/nozzles/misfit-loads.js';
import { FLANGES, gapBeyondGasket, gapsAt } from '../../as-installed/read-flange.js';
import { faceSide } from '../../report/words/flange-words.js';
import { siteText } from '../../sheet/field-context.js';
import type { AsInstalled } from '../as-installed.js';
import { loadsWithMisfit } from '../judges/misfit-load.js';

/**
 * Fit-up of both flanges: tilt with its direction, gap beyond the gasket, and the load the bolts lock in.
 *
 * @param visit - what came of the visit
 * @returns one row for each flange that was read
 */
export function flangesView(visit: AsInstalled) {
  const loads = misfitLoads(visit.review);
  const rows = FLANGES.flatMap((which) => {
    const gaps = gapsAt(which, visit);
    if (gaps === undefined) return [];
    const beyond = gapBeyondGasket(which, visit);
    const own = loads.find(({ nozzle }) => nozzle.which === which);
    const total = own && loadsWithMisfit(own, visit);
    const gap = (value: number | undefined) => siteText(value, 'gap', visit) ?? '–';
    return [
      {
        which,
        mean: gap(gaps.mean),
        beyond: gap(beyond),
        difference: gap(gaps.difference),
        side: gaps.difference > 0 ? faceSide(gaps.widest, visit.write) : 'even',
        offPlane: gap(gaps.offPlane),
        force: visit.write.quantity(total?.resultantForce, 'force'),
        moment: visit.write.quantity(total?.resultantMoment, 'moment'),
        filledForce: visit.write.quantity(own?.filled.resultantForce, 'force'),
        filledMoment: visit.write.quantity(own?.filled.resultantMoment, 'moment'),
      },
    ];
  });
  return { rows, hasRows: rows.length > 0 };
}
