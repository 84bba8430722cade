import { isNotWorkedOut } from '../../analysis/memoized.js';
import { lineAt } from '../../analysis/nozzles/nozzle-faces.js';
import { pumpOutLines } from '../../analysis/supports/pump-out-lines.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const STATICS: Citation = {
  source: 'statics',
  clause: 'equilibrium of one-way supports',
  confidence: 'computed',
};

/**
 * Each line stands by itself when the pump is lifted out.
 *
 * Why: a pump that hangs in its pipe holds the pipe as well. Who takes it out for repair must find lines that stand
 * alone, or be told before the first bolt is loosened. How far a flange then springs has no published limit: it is
 * given and not judged. Loads of rods and supports with the pump out are judged with those of all other conditions.
 */
export const pumpOutSupports = defineCheck({
  id: 'pump-out-supports',
  title: 'Piping with pump removed',
  trade: 'Pipe fitter',
  section: 'pump-out',
  dependsOn: ['supports', 'weights'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [STATICS],
  exceeds: 'checks.pump-out-supports.exceeds',
  noPlace: 'checks.pump-out-supports.no-place',
  places: (subject) => {
    const lines = pumpOutLines(subject);
    return isNotWorkedOut(lines) ? [] : lines.flanges;
  },
  at: ({ which }, subject) => lineAt(subject, which),
  demands: (flange, subject): readonly Demand[] => {
    const { spring, falls, which } = flange;
    const data = {
      line: lineAt(subject, which),
      ...(falls && { movement: String(falls.data.movement ?? '') }),
    };
    const isSelfHolding = falls === undefined;
    const code = falls?.code === 'mechanics.mechanism' ? 'checks.pump-out-supports.exceeds' : undefined;
    if (isSelfHolding) {
      const demand =
        spring === undefined ? undefined : Math.hypot(spring.rise, spring.gap, ...spring.sideways);
      return [
        {
          kind: 'forbidden',
          condition: conditionId('pump-out'),
          happens: false,
          data,
          ...(demand !== undefined && { demand }),
        },
      ];
    }
    if (code === undefined) {
      return [
        {
          kind: 'cannot-tell',
          condition: conditionId('pump-out'),
          code: 'checks.pump-out-supports.no-answer',
          data,
        },
      ];
    }
    return [{ kind: 'forbidden', condition: conditionId('pump-out'), happens: true, data }];
  },
});
