import { citationOf, givenIn } from '../../analysis/citation-of.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { askedConditions, SUPPORT_CONDITIONS } from '../asked-conditions.js';
import { defineCheck } from '../define-check.js';

/**
 * The load of a support stays within the rating of its clamp, beam attachment or anchor, where one is given.
 *
 * Why: the rod is rarely the weakest link; the concrete anchor or beam clamp above it often is. Its rating depends on
 * what it is fixed to and belongs to its maker and to the structural engineer, so only a given rating is judged.
 */
export const attachmentLoad = defineCheck({
  id: 'attachment-load',
  title: 'Structural attachment load',
  trade: 'Structural engineer',
  section: 'support-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: SUPPORT_CONDITIONS,
  unit: 'N',
  basis: [givenIn('rating of the attachment')],
  exceeds: 'checks.attachment-load.exceeds',
  noPlace: 'checks.attachment-load.no-place',
  places: ({ layout }) =>
    layout.supports.flatMap((support) => {
      const rating = support.part?.rods?.attachmentRating;
      return rating === undefined ? [] : [{ mark: support.mark, rating }];
    }),
  at: ({ mark }) => mark,
  demands: ({ mark, rating }, subject) =>
    askedConditions(SUPPORT_CONDITIONS, subject).map((condition) => ({
      kind: 'compared' as const,
      condition: condition.name,
      demand: supportLoadIn(condition.solved, mark)?.resultant,
      limit: rating.value,
      missing: 'checks.support-not-solved',
      basis: citationOf(rating, givenIn('rating of the attachment')),
    })),
});
