import { pumpModes } from '../../analysis/motion/pump-modes.js';
import { sourceText } from '../../report/limits/field-limit.js';
import { knockMargin } from '../../report/limits/knock.js';
import { speedBands } from '../../report/sections/loads/frequencies.js';
import { makerRow, numberBox, sheetRow } from '../boxes.js';
import { siteText } from '../field-context.js';
import { directionsOf } from '../pump-directions.js';
import type { PartDefinition } from '../sheet-part.js';

/** Natural frequencies by a blow with a soft hammer, pump stopped and filled. */
export const knockTest: PartDefinition = {
  id: 'knock-test',
  title: 'Knock test',
  trade: 'vibration technician',
  how: 'Pump stopped and locked out, line filled. Soft hammer on the motor top, probe beside it, in two level directions. Write down the two lowest frequencies in each.',
  caution: 'Locked out: nothing turns. A soft head only; never on a cover or a fan cowl.',
  rows: (context) => {
    const { review } = context;
    const { installation } = review;
    const { motor } = installation.pump;
    const fastest = Math.max(motor.speed, motor.speeds?.highest ?? 0) / (2 * Math.PI);
    const predicted = pumpModes(review)
      .filter(({ counts, mode }) => counts && mode.frequency <= LISTED_TO * fastest)
      .map(({ mode }) => siteText(mode.frequency, 'frequency', context) ?? '');
    const { share, citation, isPublished } = knockMargin(installation);
    const margin = siteText(share, 'share', context);
    const { along, across } = directionsOf(context);
    const expected = predicted.length === 0 ? undefined : `of the pump: ${predicted.join(', ')}`;
    const row = (key: string, way: string) =>
      sheetRow(
        `Motor top struck ${way}`,
        ['first', 'second'].map((which) =>
          numberBox(
            {
              id: `knock-test.${key}-${which}`,
              label: which,
              tip: `${which === 'first' ? 'Lowest' : 'Second'} frequency, motor top struck ${way}`,
            },
            'frequency',
            context,
          ),
        ),
        { expected, limit: `not within ${margin} of running speed`, source: sourceText({ citation }) },
      );
    const bands = sheetRow('Speeds locked out in the drive', [
      numberBox(
        { id: 'knock-test.locked-from', label: 'from', tip: 'Lowest speed the drive is kept out of' },
        'speed',
        context,
      ),
      numberBox(
        { id: 'knock-test.locked-to', label: 'to', tip: 'Highest speed the drive is kept out of' },
        'speed',
        context,
      ),
    ]);
    const further = Array.from({ length: Math.max(2, speedBands({ subject: review }).length) - 1 }, (_, i) =>
      sheetRow(`Speeds locked out in the drive, band ${i + 2}`, [
        numberBox(
          { id: `knock-test.locked-from-${i + 2}`, label: 'from', tip: `Lowest speed of band ${i + 2}` },
          'speed',
          context,
        ),
        numberBox(
          { id: `knock-test.locked-to-${i + 2}`, label: 'to', tip: `Highest speed of band ${i + 2}` },
          'speed',
          context,
        ),
      ]),
    );
    return [
      row('along', along),
      row('across', across),
      ...(motor.speeds === undefined ? [] : [bands, ...further]),
      ...(isPublished
        ? [makerRow('knock-test.margin', 'margin from running speed, at least', 'share', context)]
        : []),
    ];
  },
};

/** Vibrations listed up to so many times the fastest turns a second [-]. */
const LISTED_TO = 1.5;
