import { courseOf, SIDES } from '../../analysis/pipes/line-course.js';
import type { Part } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'a tap at each port, one gauge read on both',
  confidence: 'common practice',
};

/**
 * Both sides have a tap for a pressure gauge, at the pump's port or in the pipe next to it.
 *
 * Why: the head of a pump, and so its flow, is read from two taps with one gauge. A tap behind a valve, a strainer or a
 * diffuser reads the loss of that as well and has spoilt many a curve; it is shown and never decides.
 */
export const gaugeTaps = defineCheck({
  id: 'gauge-taps',
  title: 'Gauge tappings',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: '-',
  basis: [PRACTICE],
  exceeds: 'checks.gauge-taps.exceeds',
  noPlace: 'checks.gauge-taps.no-place',
  places: ({ installation }) => SIDES.filter((side) => installation.lines.some(({ from }) => from === side)),
  at: (side) => `${side} side`,
  demands: (side, subject): readonly Demand[] => {
    const atPort = subject.installation.pump.gaugeTaps?.[side];
    const course = courseOf(subject, side);
    const at = course.findIndex(({ part }) => part.kind === 'fitting' && part.fitting === 'gauge-tap');
    const before = course.slice(0, Math.max(0, at)).find(({ part }) => losesPressure(part));
    if (atPort === true || (at >= 0 && before === undefined)) {
      const data = { by: atPort === true ? "the pump's own port" : (course[at]?.part.name ?? 'tap') };
      return [{ kind: 'forbidden', happens: false, remark: 'checks.gauge-taps.by', data }];
    }
    if (before !== undefined) {
      const data = { tap: course[at]?.part.name ?? 'tap', behind: before.part.name };
      return [
        { kind: 'forbidden', happens: true, comparison: true, advice: 'checks.gauge-taps.behind', data },
      ];
    }
    return [
      {
        kind: 'forbidden',
        happens: atPort === undefined ? undefined : true,
        missing: 'checks.gauge-taps.unknown',
      },
    ];
  },
});

function losesPressure(part: Part): boolean {
  return part.kind === 'valve' || part.kind === 'suction-diffuser' || part.kind === 'tee';
}
