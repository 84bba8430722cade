import { LOCKOUT_ORDER } from '../../report/citations/card-citations.js';
import { VOLTAGE_RANGE, VOLTAGE_UNBALANCE } from '../../report/limits/electrical.js';
import { limitText, sourceText } from '../../report/limits/field-limit.js';
import { CONTROLS_TESTED, windingInsulation } from '../../report/limits/insulation.js';
import { askedBy, choiceBox, numberBox, type RowWords, sheetRow, textBox } from '../boxes.js';
import { type FieldContext, siteText } from '../field-context.js';
import type { Box, SheetRow } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';
import { PAIRS } from './electrical.js';

/** A question with two answers, and the paper that shows it. */
function asked(id: string, label: string, tip: string, more: readonly Box[] = []): readonly Box[] {
  return [choiceBox({ id: `before-start.${id}`, label, tip }), ...more];
}

/** What is settled before power is put on and before the shaft turns for the first time. */
export const beforeStart: PartDefinition = {
  id: 'before-start',
  title: 'Before power, and before the first start',
  trade: 'commissioning agent',
  how: 'In this order: test and flush, insulation and protections with power off, fill and vent, then the locks come off, each by the one who put it on.',
  caution:
    'Insulation is tested dead, with the drive disconnected; the cable keeps a charge until it is grounded. Nobody stands at the shaft when power comes back.',
  rows: (context) => [
    ...liquidRows(),
    ...insulationRows(context),
    ...powerRows(context),
    sheetRow(
      'Controls and protections',
      asked(
        'protections',
        'tried, and trip',
        'Whether stop, overload, interlocks and alarms were tried and stop the motor',
      ),
      {
        expected: 'yes',
        ...askedBy('tried before power', CONTROLS_TESTED),
      },
    ),
    sheetRow(
      'Locks and people',
      [
        ...asked('locks-off', 'all locks off', 'Whether each lock was taken off by the one who put it on'),
        ...asked(
          'people-clear',
          'people clear, told',
          'Whether everybody stands clear and was told of the start',
        ),
      ],
      { expected: 'yes', ...askedBy('each by its owner', LOCKOUT_ORDER) },
    ),
  ],
};

function liquidRows(): readonly SheetRow[] {
  const paper = (id: string, what: string) =>
    textBox({
      id: `before-start.${id}-paper`,
      label: 'certificate',
      tip: `Number of the certificate of the ${what}`,
    });
  return [
    sheetRow(
      'Pressure test',
      asked('pressure-tested', 'passed', 'Whether the line passed its pressure test', [
        paper('pressure-tested', 'pressure test'),
      ]),
      { expected: 'yes' },
    ),
    sheetRow(
      'Flushing',
      asked(
        'flushed',
        'done, clean',
        'Whether the line was flushed and cleaned, and strainers opened after it',
        [paper('flushed', 'flushing')],
      ),
      { expected: 'yes' },
    ),
    sheetRow(
      'Filled, vented, tight',
      [
        ...asked(
          'filled',
          'filled, vented',
          'Whether water without air ran from every vent, the casing of the pump included',
        ),
        ...asked('tight', 'no leak', 'Whether nothing leaks, filled and under the pressure at rest'),
      ],
      { expected: 'yes' },
    ),
  ];
}

function insulationRows(context: FieldContext): readonly SheetRow[] {
  const count = (id: string, label: string, tip: string) =>
    numberBox({ id: `before-start.${id}`, label, tip }, 'count', context);
  const { limit } = windingInsulation(context.review.installation);
  return [
    sheetRow(
      'Insulation to ground, one minute',
      [
        count(
          'motor-insulation',
          'winding, megohm',
          'Insulation of the motor winding to ground after one minute, in megohm',
        ),
        numberBox(
          {
            id: 'before-start.winding-temperature',
            label: 'winding at',
            tip: 'Temperature of the winding during the test',
          },
          'temperature',
          context,
        ),
        count(
          'cable-insulation',
          'cable, megohm',
          'Insulation of the cable to ground and between lines, the least, in megohm',
        ),
      ],
      {
        limit: `winding at least ${context.write.plain(limit.value)} megohm at 40 °C`,
        source: sourceText(limit),
      },
    ),
  ];
}

function powerRows(context: FieldContext): readonly SheetRow[] {
  const rated = context.review.installation.pump.motor.voltage?.value;
  const words: RowWords = {
    expected: siteText(rated, 'voltage', context),
    limit: `${limitText(VOLTAGE_RANGE, context)} of rated; unbalance ${limitText(VOLTAGE_UNBALANCE, context)}`,
    source: sourceText(VOLTAGE_UNBALANCE),
  };
  return [
    sheetRow(
      'Supply at the disconnect, motor at rest',
      PAIRS.map((pair) => {
        const label = `${pair[0]?.toUpperCase()} to ${pair[1]?.toUpperCase()}`;
        const tip = `Voltage ${label} at the disconnect, motor at rest`;
        return numberBox({ id: `before-start.volts-${pair}`, label, tip }, 'voltage', context, rated);
      }),
      words,
    ),
  ];
}
