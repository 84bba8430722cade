import type { SingleRole } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { supportFacts } from '../../model/support-parts.js';
import { sourceText } from '../../report/limits/field-limit.js';
import { ROD_LEAN } from '../../report/limits/rods.js';
import { rodText, supportWord } from '../../report/words/support-word.js';
import { choiceBox, limitWords, makerRow, numberBox, type RowWords, sheetRow } from '../boxes.js';
import { type FieldContext, siteText } from '../field-context.js';
import type { SheetRow } from '../sheet.js';
import { NO_LIMIT } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';
import { namedSupports, supportBoxes } from '../support-ids.js';
import { type SupportPlace, supportPlaces } from '../support-places.js';
import { baseRows } from './base-rows.js';
import { withLargestLoad } from './largest-load-row.js';
import { datumRows, heightOf, loadOf } from './support-expectations.js';

/** Every support by its mark: where it stands, what it shows, whether it is free to do its work. */
export const supports: PartDefinition = {
  id: 'supports',
  title: 'Supports',
  trade: 'pipe fitter',
  how: 'Tape along the pipe for places, level or laser for heights, the scale of the spring for loads. Springs are read dry, filled and cold, and hot.',
  caution:
    'Never pull a travel stop of a spring under load by force: it is stuck because it carries. Use a ladder or a lift, not the pipe.',
  rows: (context) => {
    const { layout, installation } = context.review;
    const places = supportPlaces(installation);
    const hasRods = layout.supports.some(({ part }) => part?.rods !== undefined);
    const named = namedSupports(layout.supports).flatMap(({ support, word }) =>
      withLargestLoad(
        support,
        support.kind === 'pump base'
          ? baseRows(support, word, context)
          : [
              ...placeRows(support, word, places, context),
              ...rodRows(support, word, context),
              ...springRows(support, word, context),
              ...standRows(support, word, context),
            ],
        context,
      ),
    );
    const ends = layout.supports
      .filter(({ kind }) => kind === 'end')
      .flatMap((support) => withLargestLoad(support, [], context));
    return [
      ...datumRows(context),
      ...named,
      ...ends,
      ...(hasRods
        ? [makerRow('supports.lean-limit', 'lean of a rod, over its length', 'share', context)]
        : []),
    ];
  },
};

function placeRows(
  support: PlacedSupport,
  word: string,
  places: readonly SupportPlace[],
  context: FieldContext,
): readonly SheetRow[] {
  const ids = supportBoxes(word);
  const { mark } = support;
  const place = places.find((each) => each.mark === mark);
  const datum = context.review.installation.room.floor === undefined ? 'as an elevation' : 'over the floor';
  const boxes = [
    ...(place === undefined
      ? []
      : [
          numberBox(
            {
              id: ids.position,
              label: `from ${place.from}`,
              tip: `Length of pipe from ${place.from} to ${mark}`,
            },
            'distance',
            context,
            place.distance,
          ),
        ]),
    ...(supportFacts(support).adjustable && support.part?.spring === undefined
      ? [
          numberBox(
            {
              id: ids.height,
              label: `centre line ${datum}`,
              tip: `Height of the centre line of the pipe at ${mark} ${datum}, line filled and cold`,
            },
            'distance',
            context,
            heightOf(support, 'filled', context),
          ),
        ]
      : []),
  ];
  const title = `${mark}, ${supportWord(support)}: place`;
  return boxes.length === 0 ? [] : [sheetRow(title, boxes, { limit: 'as drawn; put back into the model' })];
}

function rodRows(support: PlacedSupport, word: string, context: FieldContext): readonly SheetRow[] {
  const rods = support.part?.rods;
  if (rods === undefined) return [];
  const ids = supportBoxes(word);
  const { mark } = support;
  const boxes = [
    numberBox(
      { id: ids.rodLength, label: 'length as set', tip: `Length of the rods of ${mark}, structure to clamp` },
      'distance',
      context,
      rods.length,
    ),
    numberBox(
      {
        id: ids.lean,
        label: 'leans sideways by',
        tip: `How far the top of the rods of ${mark} stands sideways of the bottom`,
      },
      'gap',
      context,
      0,
    ),
    choiceBox(
      {
        id: ids.loaded,
        since: '0.2.0',
        label: 'rod carries',
        tip: `Whether the rods of ${mark} carry: struck, they ring; by hand, they cannot be turned or pushed`,
      },
      ['carries', 'slack'],
      'carries',
    ),
    choiceBox(
      { id: ids.nuts, label: 'lock nuts tight', tip: `Whether the lock nuts of ${mark} are tight` },
      undefined,
      'yes',
    ),
  ];
  return [
    sheetRow(`${mark}: rods, ${rodText(support)}`, boxes, {
      limit: 'lean at most four degrees, 0.07 of the length',
      source: sourceText(ROD_LEAN),
    }),
  ];
}

function springRows(support: PlacedSupport, word: string, context: FieldContext): readonly SheetRow[] {
  const spring = support.part?.spring;
  if (spring === undefined) return [];
  const ids = supportBoxes(word);
  const { mark } = support;
  const load = (id: string, label: string, condition: SingleRole) =>
    numberBox(
      { id, label, tip: `Load on the scale of ${mark}, ${label}` },
      'force',
      context,
      loadOf(mark, condition, context),
    );
  const range: RowWords =
    spring.minimum === undefined || spring.maximum === undefined
      ? { limit: NO_LIMIT }
      : {
          limit: `${siteText(spring.minimum, 'force', context)} to ${siteText(spring.maximum, 'force', context)}`,
          source: 'working range, given in the file',
        };
  return [
    sheetRow(
      `${mark}: spring`,
      [
        load(ids.dry, 'dry', 'empty'),
        load(ids.filled, 'filled, cold', 'filled'),
        load(ids.hot, 'hot', 'hot'),
      ],
      range,
    ),
    sheetRow(
      `${mark}: travel stops`,
      [
        choiceBox({
          id: ids.stops,
          label: 'taken out',
          tip: `Whether the travel stops of ${mark} are taken out, after the pressure test`,
        }),
      ],
      { expected: 'yes', limit: 'out', source: 'the review takes the spring as free' },
    ),
  ];
}

function standRows(support: PlacedSupport, word: string, context: FieldContext): readonly SheetRow[] {
  const ids = supportBoxes(word);
  const { mark, kind, part } = support;
  if (kind === 'rest' || kind === 'stand') {
    return [
      sheetRow(
        `${mark}: gap under the pipe or foot`,
        [
          numberBox(
            {
              id: ids.gap,
              label: 'paper or feeler',
              tip: `Gap under the pipe or the foot at ${mark}, filled and cold; 0 where paper is held`,
            },
            'gap',
            context,
            0,
          ),
        ],
        { limit: 'carries', source: 'the review takes it as carrying' },
      ),
    ];
  }
  if (kind === 'guide' || kind === 'stop') {
    return [
      sheetRow(
        `${mark}: clearance and freedom`,
        [
          numberBox(
            { id: ids.gap, label: 'clearance', tip: `Clearance of ${mark} to either side` },
            'gap',
            context,
            part?.gap ?? 0,
          ),
          choiceBox(
            { id: ids.free, label: 'slides freely', tip: `Whether the pipe slides through ${mark}` },
            undefined,
            'yes',
          ),
        ],
        limitWords(undefined, context),
      ),
    ];
  }
  if (kind !== 'anchor') return [];
  return [
    sheetRow(`${mark}: anchor`, [
      choiceBox(
        { id: ids.bolts, label: 'bolted tight', tip: `Whether the anchor ${mark} is bolted tight` },
        undefined,
        'yes',
      ),
    ]),
  ];
}
