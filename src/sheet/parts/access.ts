import { IN_SIGHT, IN_SIGHT_CITATION } from '../../catalog/index.js';
import { disconnectDistance } from '../../checks/electrical/disconnect-in-sight.js';
import { accessOf, FAR, wayBefore } from '../../checks/room/access-subject.js';
import { LOCKOUT_ORDER } from '../../report/citations/card-citations.js';
import { limitText, sourceText } from '../../report/limits/field-limit.js';
import { headroomLimit } from '../../report/limits/room.js';
import { isolationPoints } from '../../report/rows/isolation-points.js';
import { disconnectName } from '../../report/words/unit-words.js';
import { askedBy, choiceBox, numberBox, sheetRow, textBox } from '../boxes.js';
import { type FieldContext, siteText } from '../field-context.js';
import { reportContextOf } from '../report-context.js';
import type { SheetRow } from '../sheet.js';
import { NO_LIMIT } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

/** Room over and round the pump, and whether it can be isolated and locked out. */
export const access: PartDefinition = {
  id: 'access',
  title: 'Access and lockout',
  trade: 'commissioning agent',
  how: 'Tape from the motor top to the lowest thing over it. Try the lockout for real: shut, bleed, watch the gauge for five minutes, try to start.',
  caution:
    'The lift belongs to a competent person. Prove zero energy before anything is opened; a valve that leaks lets the pressure come back.',
  rows: (context) => [...roomRows(context), ...lockoutRows(context)],
};

function roomRows(context: FieldContext): readonly SheetRow[] {
  const { pump, room } = context.review.installation;
  const limit = headroomLimit(context.review);
  const disconnect = disconnectDistance(context.review);
  return [
    sheetRow(
      'Clear height over the motor',
      [
        numberBox(
          {
            id: 'access.over-motor',
            label: 'motor top to lowest',
            tip: 'Clear height from the top of the motor to the lowest thing over it',
          },
          'distance',
          context,
          clearHeight(context),
        ),
        textBox({
          id: 'access.over-motor-what',
          label: 'what hangs there',
          tip: 'What stands lowest over the motor',
        }),
      ],
      limit === undefined
        ? { limit: NO_LIMIT }
        : { limit: limitText(limit, context), source: sourceText(limit) },
    ),
    ...(room.lift === undefined
      ? []
      : [
          sheetRow(
            'Lifting anchor over the motor',
            [
              numberBox(
                {
                  id: 'access.hook-off',
                  label: 'off centre by',
                  tip: 'How far the plumb line from the anchor misses the centre of the motor',
                },
                'distance',
                context,
              ),
              textBox(
                {
                  id: 'access.hook-tag',
                  label: 'rating on its tag',
                  tip: 'Rating on the tag of the anchor or hoist',
                },
                siteText(room.lift.rating?.value, 'mass', context),
              ),
            ],
            {
              limit: `off centre at most ${siteText(room.lift.offCentre.value, 'distance', context)}`,
              source:
                room.lift.offCentre.origin.kind === 'given' ? 'given in the file' : 'taken in the review',
            },
          ),
        ]),
    ...(pump.disconnect === undefined && disconnect === undefined
      ? []
      : [
          sheetRow(
            `Disconnect: ${disconnectName(pump)}`,
            [
              numberBox(
                {
                  id: 'access.disconnect',
                  label: 'from the motor',
                  tip: 'Distance from the motor to its disconnect',
                },
                'distance',
                context,
                disconnect,
              ),
              choiceBox({
                id: 'access.in-sight',
                label: 'in sight',
                tip: 'Whether the disconnect is seen from the motor',
              }),
            ],
            {
              limit: `at most ${siteText(IN_SIGHT, 'distance', context)}, in sight`,
              source: sourceText({ citation: IN_SIGHT_CITATION }),
            },
          ),
        ]),
  ];
}

/** Clear height over the motor as the review finds it [m]. */
function clearHeight({ review }: FieldContext): number | undefined {
  const { pump, obstacles } = accessOf(review);
  const { distance, stoppedBy } = wayBefore(pump.motorWithBox, [0, 0, 1], obstacles, FAR);
  return stoppedBy === undefined || !Number.isFinite(distance) ? undefined : distance;
}

function lockoutRows(context: FieldContext): readonly SheetRow[] {
  const report = reportContextOf(context);
  const points = (['discharge', 'suction'] as const).flatMap((side) => isolationPoints(side, report).valves);
  return [
    sheetRow(
      'Isolation',
      [
        choiceBox({
          id: 'access.isolates',
          label: 'holds',
          tip: 'Whether pressure stays down for five minutes once shut and bled',
        }),
      ],
      {
        expected: points.length === 0 ? undefined : points.join('; '),
        ...askedBy('pressure stays down five minutes', LOCKOUT_ORDER),
      },
    ),
    sheetRow(
      'Vent and drain',
      [
        choiceBox({
          id: 'access.bleeds',
          label: 'work',
          tip: 'Whether vents and drains let the pump be emptied',
        }),
      ],
      { expected: 'yes' },
    ),
    sheetRow(
      'Disconnect',
      [
        choiceBox({
          id: 'access.locks',
          label: 'locked open',
          tip: 'Whether the disconnect can be locked open, and the motor then does not start',
        }),
      ],
      { expected: 'yes', ...askedBy('can be locked open', LOCKOUT_ORDER) },
    ),
  ];
}
