import { givenIn } from '../citation-of.js';
import { type Demand, defineCheck } from '../define-check.js';
import { largestLoad, nozzleDemands } from './nozzle-demands.js';
import { nozzleLimits } from './nozzle-limits.js';

/**
 * Loads of the pipe on each nozzle stay within the basis that the file names for the verdict.
 *
 * Why: the nozzles of an in-line pump carry the pipe, and strain there shows as seal and bearing trouble long before
 * anything breaks. The maker's limits govern; a published table decides only when the file names it. Without a basis
 * the loads are given and nothing is concluded.
 */
export const nozzleLoads = defineCheck({
  id: 'nozzle-loads',
  title: 'Nozzle loads',
  trade: 'Design engineer',
  section: 'nozzle-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  unit: 'N',
  basis: [givenIn('basis of the nozzle loads')],
  exceeds: 'checks.nozzle-loads.exceeds',
  noPlace: 'checks.nozzle-loads.no-place',
  places: ({ layout }) => [layout.nozzles.suction, layout.nozzles.discharge],
  at: ({ which }) => `${which} nozzle`,
  demands: (nozzle, subject): readonly Demand[] => {
    const { basis } = subject.installation.limits.nozzle;
    if (basis === undefined) return largestLoad(nozzle, subject, 'checks.nozzle-loads.no-basis');
    if (basis === 'nozzle principal stress') {
      return [{ kind: 'does-not-apply', code: 'checks.nozzle-loads.judged-by-stress' }];
    }
    const limits = nozzleLimits(basis, nozzle, subject.installation);
    if (limits === undefined) {
      const missing =
        basis === 'maker' ? 'checks.nozzle-loads.no-maker-limits' : 'checks.nozzle-loads.not-in-table';
      return largestLoad(nozzle, subject, missing);
    }
    const demands = nozzleDemands(nozzle, limits, subject);
    const isIron = subject.installation.pump.casing.material === 'cast iron';
    return basis === 'maker' || !isIron
      ? demands
      : demands.map((demand) => ({ ...demand, remark: 'checks.nozzle-loads.iron-casing' }));
  },
});
