import {
  CURRENT_UNBALANCE,
  currentLimit,
  VOLTAGE_RANGE,
  VOLTAGE_UNBALANCE,
} from '../../report/limits/electrical.js';
import { limitText, sourceText } from '../../report/limits/field-limit.js';
import { choiceBox, limitWords, numberBox, sheetRow } from '../boxes.js';
import type { FieldContext, Measured } from '../field-context.js';
import { siteText } from '../field-context.js';
import type { PartDefinition } from '../sheet-part.js';

/** The three pairs of lines, and the three lines. */
export const PAIRS = ['ab', 'bc', 'ca'] as const;
export const PHASES = ['a', 'b', 'c'] as const;

/** Supply, current, rotation. */
export const electrical: PartDefinition = {
  id: 'electrical',
  title: 'Electrical readings',
  trade: 'electrician',
  how: 'Qualified persons only. All three voltages and all three currents within one minute, at steady load; with a drive, at its input and at its highest speed.',
  caution:
    'Live parts: shock and arc flash. Qualified persons with the protection their code asks for. Lock out to fit instruments.',
  rows: (context) => {
    const { motor } = context.review.installation.pump;
    const current = currentLimit(context.review.installation);
    return [
      sheetRow(
        'Voltage between lines, running',
        PAIRS.map((pair) =>
          three('volts', pair, `${pair[0]?.toUpperCase()} to ${pair[1]?.toUpperCase()}`, 'voltage', context),
        ),
        {
          expected: siteText(motor.voltage?.value, 'voltage', context),
          limit: `${limitText(VOLTAGE_RANGE, context)} of rated; unbalance ${limitText(VOLTAGE_UNBALANCE, context)}`,
          source: sourceText(VOLTAGE_UNBALANCE),
        },
      ),
      sheetRow(
        'Current in each line, running',
        PHASES.map((phase) => three('amps', phase, phase.toUpperCase(), 'current', context)),
        {
          expected:
            current === undefined
              ? undefined
              : `not over ${siteText(current.value, 'current', context)}, the plate`,
          limit: `${current === undefined ? '' : `${limitText(current, context)}; `}unbalance ${limitText(CURRENT_UNBALANCE, context)}`,
          source: sourceText(CURRENT_UNBALANCE),
        },
      ),
      sheetRow('Frequency of the supply', [
        numberBox(
          { id: 'electrical.frequency', label: 'frequency', tip: 'Frequency of the supply' },
          'frequency',
          context,
        ),
      ]),
      sheetRow(
        'Overload relay or drive limit',
        [
          numberBox(
            {
              id: 'electrical.overload',
              label: 'set to',
              tip: 'Setting of the overload relay, or of the current limit of the drive',
            },
            'current',
            context,
          ),
        ],
        limitWords(undefined, context),
      ),
      sheetRow(
        'Rotation',
        [
          choiceBox(
            {
              id: 'electrical.rotation',
              label: 'as the arrow',
              tip: 'Whether the shaft turns as the arrow on the pump says, seen in a bump start',
            },
            ['yes', 'no', 'clockwise from above', 'counter-clockwise from above'],
          ),
        ],
        { expected: 'yes', limit: 'as the arrow', source: 'the manufacturer’s arrow' },
      ),
    ];
  },
};

function three(
  what: 'volts' | 'amps',
  key: string,
  label: string,
  measured: Measured,
  context: FieldContext,
) {
  const word = what === 'volts' ? 'Voltage' : 'Current';
  return numberBox({ id: `electrical.${what}-${key}`, label, tip: `${word} ${label}` }, measured, context);
}
