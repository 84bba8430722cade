import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import { slackQuestions } from '../../analysis/supports/slack-questions.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { rowDemands } from '../nozzles/nozzle-demands.js';
import { principalStressDemand } from '../nozzles/nozzle-principal-stress.js';

const BASIS: Citation = {
  source: 'common-practice',
  clause: 'each of the hangers nearest the pump taken to be slack in turn',
  confidence: 'common practice',
};

/**
 * The nozzles stay within their basis when one of the hangers near the pump carries nothing.
 *
 * Why: a hanger that was never set, or set dry, is the commonest fault found beside a pump, and a pump that hangs in
 * its pipe takes what the hanger does not. A layout that is safe only with every nut right needs to say so.
 */
export const slackHanger = defineCheck({
  id: 'slack-hanger',
  title: 'Nozzle loads, support unloaded',
  trade: 'Pipe fitter',
  section: 'slack',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: 'N',
  basis: [BASIS],
  exceeds: 'checks.slack-hanger.exceeds',
  noPlace: 'checks.slack-hanger.no-place',
  places: slackQuestions,
  at: ({ mark }) => `${mark} slack`,
  demands: (question, subject): readonly Demand[] => {
    const { mark, condition, nozzles } = question;
    if (question.falls !== undefined) {
      return [
        { kind: 'forbidden', condition, happens: true, advice: 'checks.slack-hanger.falls', data: { mark } },
      ];
    }
    const { basis } = subject.installation.limits.nozzle;
    return nozzles.flatMap((row): readonly Demand[] => {
      const nozzle = subject.layout.nozzles[row.nozzle];
      const named = (demand: Demand): Demand => ({
        ...demand,
        label: `${row.nozzle} nozzle${demand.label === undefined ? '' : `, ${demand.label}`}`,
        data: { ...demand.data, mark, nozzle: row.nozzle },
        advice: 'checks.slack-hanger.exceeds',
      });
      if (basis === 'nozzle principal stress') {
        return [{ ...named(principalStressDemand(nozzle, row, false, subject)), unit: 'Pa' }];
      }
      const limits = basis === undefined ? undefined : nozzleLimits(basis, nozzle, subject.installation);
      if (limits !== undefined) return rowDemands(row, limits, subject).map(named);
      const { resultantForce: demand } = row.own;
      const missing = 'checks.slack-hanger.no-basis';
      return [
        named({ kind: 'compared', condition, label: 'resultant force', demand, limit: undefined, missing }),
      ];
    });
  },
});
