import type { Sourced } from '../../input/installation.js';
import { ratedFrequency } from '../../report/limits/frequency.js';
import { choiceBox, dateBox, numberBox, sheetRow, textBox } from '../boxes.js';
import type { FieldContext, Measured } from '../field-context.js';
import type { SheetRow } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

/** States of the line in which readings are taken. */
export const STATES = ['dry', 'filled, cold', 'running', 'hot'] as const;

/** Instruments that the parts ask for, by id. */
const INSTRUMENTS: readonly (readonly [string, string])[] = [
  ['gauges', 'pressure gauges'],
  ['clamp-meter', 'clamp meter and voltmeter'],
  ['vibration-meter', 'vibration meter'],
  ['dial', 'dial gauge'],
  ['feelers', 'feelers and tape'],
];

/** Ids of the boxes for the day on which each instrument is due for calibration. */
export const DUE_BOXES: readonly (readonly [string, string])[] = INSTRUMENTS.map(([id, name]) => [
  `identity.${id}-due`,
  name,
]);

/** Who reads, when, with what, and what the plates say. */
export const identity: PartDefinition = {
  id: 'identity',
  title: 'Identity and instruments',
  trade: 'commissioning agent',
  how: 'Copy the rating plates as they are. One sheet a visit: a second visit has a sheet of its own.',
  rows: (context) => [...visitRows(context), ...plateRows(context), ...instrumentRows()],
};

function visitRows({ review }: FieldContext): readonly SheetRow[] {
  const { revisions, date } = review.installation.review;
  const drawn = revisions.at(-1);
  return [
    sheetRow('Visit', [
      dateBox({ id: 'identity.date', label: 'date', tip: 'Day on which these readings were taken' }),
      textBox({
        id: 'identity.time',
        label: 'time',
        tip: 'Time of day at which the readings were begun',
        since: '0.2.0',
      }),
      textBox({ id: 'identity.by', label: 'read by', tip: 'Name and trade of who took the readings' }),
      textBox({ id: 'identity.witness', label: 'witness', tip: 'Name of who saw the readings taken' }),
    ]),
    sheetRow(
      'Drawing on site',
      [
        textBox({
          id: 'identity.drawing',
          label: 'number, revision',
          tip: 'Drawing on site and its revision',
        }),
      ],
      {
        expected: drawn === undefined ? `as reviewed on ${date}` : `revision ${drawn.mark} of ${drawn.date}`,
      },
    ),
    sheetRow('This sheet corrects', [
      textBox({
        id: 'identity.corrects',
        label: 'which readings, and why',
        tip: 'Where this sheet takes the place of earlier or undated readings of the same boxes: of which sheet, and why',
      }),
    ]),
    sheetRow('State of the line', [
      choiceBox({ id: 'identity.state', label: 'state', tip: 'State of the line during this visit' }, STATES),
    ]),
  ];
}

function plateRows(context: FieldContext): readonly SheetRow[] {
  const { pump } = context.review.installation;
  const { motor } = pump;
  const plate = (
    id: string,
    label: string,
    measured: Measured,
    expected: number | undefined,
    words: { readonly expected?: string } = {},
  ): SheetRow =>
    sheetRow(
      `Plate: ${label}`,
      [
        numberBox(
          { id: `identity.${id}`, label, tip: `${label} on the rating plate` },
          measured,
          context,
          expected,
        ),
      ],
      words,
    );
  const assumedHint = (mass: Sourced) =>
    isUnsure(mass) ? { expected: 'estimated in the review: the plate decides' } : {};
  return [
    sheetRow('Serial numbers', [
      textBox({ id: 'identity.pump-serial', label: 'pump', tip: 'Serial number of the pump' }),
      textBox({ id: 'identity.motor-serial', label: 'motor', tip: 'Serial number of the motor' }),
    ]),
    plate('motor-power', 'motor power', 'power', motor.power),
    plate('motor-speed', 'full-load speed', 'speed', motor.speed),
    plate('motor-voltage', 'rated voltage', 'voltage', motor.voltage?.value),
    plate('motor-current', 'full-load current', 'current', motor.fullLoadCurrent?.value),
    plate('service-factor', 'service factor', 'count', motor.serviceFactor?.value),
    plate('motor-frequency', 'rated frequency', 'frequency', ratedFrequency(motor.speed)),
    plate('motor-weight', 'motor weight', 'mass', motor.mass.value, assumedHint(motor.mass)),
    plate('pump-weight', 'pump weight', 'mass', pump.casing.mass.value, assumedHint(pump.casing.mass)),
    plate('impeller', 'impeller diameter', 'distance', undefined),
  ];
}

function isUnsure({ origin }: Sourced): boolean {
  return origin.kind !== 'given' || origin.known === 'estimated' || origin.known === 'handbook';
}

function instrumentRows(): readonly SheetRow[] {
  return INSTRUMENTS.map(([id, name]) =>
    sheetRow(`Instrument: ${name}`, [
      textBox({ id: `identity.${id}`, label: 'serial number', tip: `Serial number of the ${name}` }),
      dateBox({
        id: `identity.${id}-due`,
        label: 'calibration due',
        tip: `Day the ${name} are due for calibration`,
      }),
    ]),
  );
}
