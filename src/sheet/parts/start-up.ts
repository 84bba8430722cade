import { startMovements } from '../../checks/motion/start-movement.js';
import { startMovementLimit } from '../../report/limits/start.js';
import { choiceBox, limitWords, makerRow, numberBox, sheetRow, textBox } from '../boxes.js';
import { type FieldContext, siteText } from '../field-context.js';
import type { PartDefinition } from '../sheet-part.js';

/** What is seen and heard at the first start. */
export const startUpPart: PartDefinition = {
  id: 'start-up',
  title: 'Start-up observations',
  trade: 'commissioning agent',
  how: 'Two persons: one at the disconnect, one who watches from a distance. Pens taped to the pipe draw its movement on a card held still.',
  caution:
    'Stand clear of pipe and pump at the first start. Stop at once when the pipe jumps, knocks or moves more than expected.',
  rows: (context) => {
    const { installation } = context.review;
    const moved = startMovements(context.review).map(({ movement }) => movement);
    const limit = startMovementLimit(installation);
    const { start } = installation.pump.motor;
    return [
      sheetRow(
        'Start as carried out',
        [
          textBox({ id: 'start-up.method', label: 'method', tip: 'How the motor was started' }, start?.kind),
          numberBox(
            { id: 'start-up.duration', label: 'until full speed', tip: 'Time until full speed' },
            'time',
            context,
          ),
          numberBox(
            { id: 'start-up.amps', label: 'largest current', tip: 'Largest current seen at the start' },
            'current',
            context,
          ),
        ],
        { expected: durationText(context) },
      ),
      sheetRow(
        'Movement of the motor top at the start',
        [
          numberBox(
            {
              id: 'start-up.motor-top',
              label: 'largest',
              tip: 'Largest movement of the motor top at the start',
            },
            'gap',
            context,
            moved.length === 0 ? undefined : Math.max(...moved),
          ),
        ],
        limitWords(limit, context),
      ),
      sheetRow(
        'Movement of the pipe at the start',
        [
          numberBox(
            { id: 'start-up.pipe', label: 'largest', tip: 'Largest movement of the pipe seen at the start' },
            'gap',
            context,
          ),
          textBox({ id: 'start-up.pipe-place', label: 'where', tip: 'Where the pipe moved most' }),
        ],
        limitWords(undefined, context),
      ),
      makerRow('start-up.movement-limit', 'movement at the start', 'gap', context),
      sheetRow('Bearings after an hour', [
        numberBox(
          {
            id: 'start-up.bearing',
            label: 'hottest housing',
            tip: 'Temperature of the hottest bearing housing of motor and pump after an hour',
          },
          'temperature',
          context,
        ),
        choiceBox({
          id: 'start-up.bearing-steady',
          label: 'steady',
          tip: 'Whether the temperature no longer rises: two readings half an hour apart alike',
        }),
      ]),
      makerRow('start-up.bearing-limit', 'temperature of the bearings', 'temperature', context),
      sheetRow(
        'Noise',
        [
          choiceBox({ id: 'start-up.noise', label: 'heard', tip: 'What is heard while running' }, [
            'none out of the way',
            'crackling, as of gravel',
            'knocking',
            'rubbing',
            'whine',
          ]),
        ],
        { expected: 'none out of the way' },
      ),
      sheetRow(
        'Check valve at the stop',
        [
          choiceBox(
            { id: 'start-up.stop', label: 'closes', tip: 'How the check valve closes when the pump stops' },
            ['quietly', 'with a slam', 'has none'],
          ),
        ],
        { expected: 'quietly' },
      ),
    ];
  },
};

function durationText(context: FieldContext): string | undefined {
  const { startUp } = context.review;
  if (startUp?.kind !== 'worked out') return undefined;
  const times = startUp.runs.map(({ duration }) => duration);
  const [least, most] = [
    siteText(Math.min(...times), 'time', context),
    siteText(Math.max(...times), 'time', context),
  ];
  return least === most ? `full speed in ${most}` : `full speed in ${least} to ${most}`;
}
