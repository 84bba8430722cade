import type { PlacedSupport } from '../../model/layout/layout.js';
import { choiceBox, numberBox, sheetRow } from '../boxes.js';
import type { FieldContext } from '../field-context.js';
import type { SheetRow } from '../sheet.js';
import { NO_LIMIT } from '../sheet.js';
import { supportBoxes } from '../support-ids.js';

/**
 * Rows of what stands under the pump, by how the review takes it: free to slide, on springs, or bolted.
 *
 * @param support - the base
 * @param word - word of its ids
 * @param context - review and writer
 * @returns rows
 */
export function baseRows(_support: PlacedSupport, word: string, context: FieldContext): readonly SheetRow[] {
  const ids = supportBoxes(word);
  const { mount } = context.review.installation.pump;
  const gap = (expected: number) =>
    numberBox(
      {
        id: ids.gap,
        label: 'largest, any foot',
        tip: 'Largest gap under the feet of the pump, filled and cold; 0 where paper is held',
      },
      'gap',
      context,
      expected,
    );
  if (mount === 'sprung') {
    return [
      sheetRow(
        'Pump base: springs',
        [
          numberBox(
            {
              id: ids.filled,
              label: 'load each, filled',
              tip: 'Load of each spring under the pump, filled and cold',
            },
            'force',
            context,
          ),
          choiceBox(
            {
              id: ids.stops,
              label: 'stops out',
              tip: 'Whether the stops of the springs under the pump are out',
            },
            undefined,
            'yes',
          ),
        ],
        { limit: NO_LIMIT },
      ),
    ];
  }
  const bolted = mount === 'bolted';
  return [
    sheetRow('Pump base: gap under a foot', [gap(0)], {
      limit: 'no gap: it carries',
      source: 'the review takes it as carrying',
    }),
    sheetRow(
      'Pump base: bolts',
      [
        choiceBox(
          { id: ids.bolts, label: 'state', tip: 'Whether the pump is bolted down or free to slide' },
          ['bolted tight', 'free to slide', 'loose'],
          bolted ? 'bolted tight' : 'free to slide',
        ),
      ],
      { limit: bolted ? 'bolted tight' : 'free to slide', source: 'the review takes it so' },
    ),
  ];
}
