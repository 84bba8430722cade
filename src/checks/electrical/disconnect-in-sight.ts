import type { Subject } from '../../analysis/subject.js';
import { IN_SIGHT, IN_SIGHT_CITATION } from '../../catalog/index.js';
import { distanceBetween } from '../../geometry/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf } from '../room/access-subject.js';

/**
 * The disconnect of the motor is seen from the motor, and no farther than 50 ft from it.
 *
 * Why: who works on the coupling has to see that nobody closes the switch. A disconnect out of sight that can be locked
 * open is allowed by some codes under conditions of their own: the authority having jurisdiction decides, so it cannot
 * be told here.
 */
export const disconnectInSight = defineCheck({
  id: 'disconnect-in-sight',
  title: 'Disconnect within sight of motor',
  trade: 'Electrician',
  section: 'electrical',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [IN_SIGHT_CITATION],
  exceeds: 'checks.disconnect-in-sight.exceeds',
  noPlace: 'checks.disconnect-in-sight.no-place',
  places: ({ installation }) => [installation.pump.mark],
  at: () => 'disconnect',
  demands: (_mark, subject): readonly Demand[] => {
    const { disconnect } = subject.installation.pump;
    if (disconnect === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.disconnect-in-sight.unknown' }];
    const { inSight, lockable } = disconnect;
    const sight: Demand =
      inSight === false && lockable === true
        ? { kind: 'cannot-tell', label: 'sight', code: 'checks.disconnect-in-sight.lockable' }
        : {
            kind: 'forbidden',
            label: 'sight',
            happens: inSight === undefined ? undefined : !inSight,
            missing: 'checks.disconnect-in-sight.sight-unknown',
            advice: 'checks.disconnect-in-sight.hidden',
          };
    return [
      {
        kind: 'compared',
        label: 'distance',
        demand: disconnectDistance(subject),
        limit: IN_SIGHT,
        missing: 'checks.disconnect-in-sight.no-distance',
        remark: 'checks.disconnect-in-sight.near',
      },
      sight,
    ];
  },
});

/**
 * Distance of the disconnect from the motor: as given, or from the panel that it is.
 *
 * @param subject - disconnect, room and pump
 * @returns shortest distance; nothing where the file does not say [m]
 */
export function disconnectDistance(subject: Subject): number | undefined {
  const { pump, room } = subject.installation;
  const { disconnect } = pump;
  if (disconnect?.distance !== undefined) return disconnect.distance.value;
  const panel = room.objects.find(({ kind, name }) => kind === 'panel' && name === disconnect?.panel);
  if (panel === undefined) return undefined;
  const { low, high } = panel;
  return distanceBetween(accessOf(subject).pump.motorWithBox, { kind: 'box', low, high }).distance;
}
