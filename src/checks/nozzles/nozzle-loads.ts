import { givenIn } from '../../analysis/citation-of.js';
import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import { NOZZLE_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck } from '../define-check.js';
import { casingRemark } from './casing-remark.js';
import { largestLoad, nozzleDemands } from './nozzle-demands.js';

/**
 * Loads of the pipe on each nozzle stay within the basis that the file names for the verdict.
 *
 * Why: the nozzles of an in-line pump carry the pipe, and strain there shows as seal and bearing trouble long before
 * anything breaks. The maker's limits govern; a table made for another class of machine decides only where a clause of
 * the maker's or the owner's document names it for this pump. Without a basis the loads are given and nothing is concluded.
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
  consequence: 'hurt or break',
  conditions: NOZZLE_CONDITIONS,
  unit: 'N',
  basis: [givenIn('basis of the nozzle loads')],
  exceeds: 'checks.nozzle-loads.exceeds',
  noPlace: 'checks.nozzle-loads.no-place',
  places: ({ layout }) => [layout.nozzles.suction, layout.nozzles.discharge],
  at: ({ which }) => `${which} nozzle`,
  demands: (nozzle, subject): readonly Demand[] => {
    const { basis, unnamed } = subject.installation.limits.nozzle;
    if (basis === undefined) {
      const missing =
        unnamed === undefined ? 'checks.nozzle-loads.no-basis' : 'checks.nozzle-loads.not-named';
      return largestLoad(nozzle, subject, missing);
    }
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
    const remark = casingRemark(subject.installation.pump.casing.material);
    return basis === 'maker' ? demands : demands.map((demand) => ({ ...demand, remark }));
  },
});
