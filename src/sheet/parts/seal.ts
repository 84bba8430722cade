import { choiceBox, makerRow, numberBox, sheetRow } from '../boxes.js';
import { NO_LIMIT } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

/** What a seal shows while it runs. */
export const SEAL_LOOKS = ['dry', 'drops', 'steady stream', 'spray or smoke'] as const;

/** Seal and venting. */
export const seal: PartDefinition = {
  id: 'seal',
  title: 'Seal and venting',
  trade: 'millwright',
  how: 'Vent the seal chamber before the first turn: it is the highest place of a pump with an upright shaft. Count drops ten minutes after the start.',
  caution:
    'Hot water and pressure: open vents slowly, face away. Nothing is tightened with the shaft turning.',
  rows: (context) => [
    sheetRow(
      'Seal chamber vented',
      [
        choiceBox({
          id: 'seal.vented',
          label: 'vented',
          tip: 'Whether air was let out of the seal chamber before the start',
        }),
      ],
      { expected: 'yes' },
    ),
    sheetRow(
      'Flush line',
      [
        choiceBox(
          {
            id: 'seal.flush',
            label: 'open',
            tip: 'Whether the flush line of the seal is open, where it has one',
          },
          ['yes', 'no', 'has none'],
        ),
      ],
      { expected: 'yes' },
    ),
    sheetRow(
      'Leakage ten minutes after the start',
      [
        choiceBox(
          { id: 'seal.looks', label: 'seen', tip: 'What is seen at the seal while running', since: '0.2.0' },
          SEAL_LOOKS,
        ),
        numberBox(
          {
            id: 'seal.leakage',
            label: 'drops in a minute',
            tip: 'Drops of leakage a minute, ten minutes after the start',
          },
          'count',
          context,
        ),
      ],
      { limit: NO_LIMIT },
    ),
    makerRow('seal.leakage-limit', 'drops in a minute', 'count', context),
  ],
};
