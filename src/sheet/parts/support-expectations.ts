/** What the review expects at a support, and the mark all heights are told from. */
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { inCondition, type SingleRole } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { supportFacts } from '../../model/support-parts.js';
import { numberBox, sheetRow } from '../boxes.js';
import type { FieldContext } from '../field-context.js';
import type { SheetRow } from '../sheet.js';

/** Height of the pipe's centre line at a support over the floor, or as an elevation [m]. */
export function heightOf(
  support: PlacedSupport,
  condition: SingleRole,
  { review }: FieldContext,
): number | undefined {
  const moved = inCondition(review.response.conditions, condition)?.movements[support.point]?.translation[2];
  return moved === undefined ? undefined : support.at[2] + moved - (review.installation.room.floor ?? 0);
}

/** Load of the pipe on a support, downward [N]. */
export function loadOf(mark: string, condition: SingleRole, { review }: FieldContext): number | undefined {
  return supportLoadIn(inCondition(review.response.conditions, condition), mark)?.downward;
}

/** Height of the pump's suction port as drawn, in the same datum as the supports [m]. */
export function portHeight({ review }: FieldContext): number {
  return review.layout.nozzles.suction.at[2] - (review.installation.room.floor ?? 0);
}

/** The mark all heights are told from: without it a common difference may be the floor or the pipe. */
export function datumRows(context: FieldContext): readonly SheetRow[] {
  const heights = context.review.layout.supports.filter((support) => supportFacts(support).adjustable);
  if (heights.length === 0) return [];
  return [
    sheetRow('Pump: height of the suction port', [
      numberBox(
        {
          id: 'supports.port-height',
          label: 'centre line, same datum',
          tip: 'Height of the centre line of the suction port of the pump, read from the same datum as the supports',
        },
        'distance',
        context,
        portHeight(context),
      ),
    ]),
  ];
}
