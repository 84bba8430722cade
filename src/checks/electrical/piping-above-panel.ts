import { DEDICATED_CITATION, DEDICATED_HEIGHT } from '../../catalog/index.js';
import { boxAbove } from '../../model/room/panel-space.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, clashOf } from '../room/access-subject.js';
import { inTheWay } from '../room/in-the-way.js';
import { panelsOf, surroundings } from './panel-surroundings.js';

/**
 * Neither pipes nor ducts cross the space above a panel, 6 ft or up to the structure.
 *
 * Why: a pipe drips, sweats and is drained by people on ladders, and what falls from it falls into the panel. The rule
 * is remembered rather than read, so that it is shown for comparison; the authority having jurisdiction decides.
 */
export const pipingAbovePanel = defineCheck({
  id: 'piping-above-panel',
  title: 'Piping above electrical panels',
  trade: 'Electrician',
  section: 'electrical',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'room',
  unit: 'm',
  basis: [DEDICATED_CITATION],
  exceeds: 'checks.piping-above-panel.exceeds',
  noPlace: 'checks.piping-above-panel.no-place',
  places: panelsOf,
  at: ({ name }) => name,
  demands: (panel, subject): readonly Demand[] => {
    const { room } = subject.installation;
    const space = boxAbove(panel, room, DEDICATED_HEIGHT);
    if (space === undefined)
      return [{ kind: 'does-not-apply', code: 'checks.piping-above-panel.to-structure' }];
    const wet = new Set(
      room.objects.filter(({ kind }) => kind === 'pipe' || kind === 'duct').map(({ name }) => name),
    );
    const pipes = surroundings(panel, subject).filter(
      ({ kind, name }) => kind === 'line' || name === 'pump' || (kind === 'object' && wet.has(name)),
    );
    const clash = clashOf(space, pipes);
    return [
      {
        kind: 'forbidden',
        happens: clash !== undefined,
        remark: 'checks.piping-above-panel.free',
        ...(clash && { data: inTheWay(clash.name, 0, space, accessOf(subject), pipes) }),
      },
    ];
  },
});
