import { decides } from '../../report/limits/field-limit.js';
import { vibrationLimit } from '../../report/limits/vibration.js';
import { limitWords, makerRow, numberBox, sheetRow } from '../boxes.js';
import { siteText } from '../field-context.js';
import type { SheetRow } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';
import { readDirections, readSpeeds, vibrationId, vibrationPoints } from '../vibration-points.js';

/** The grid of the other rows begins below it. */
const alone = (row: SheetRow): SheetRow => ({ ...row, alone: true });

/** Vibration by place, direction and speed. */
export const vibration: PartDefinition = {
  id: 'vibration',
  title: 'Vibration',
  trade: 'vibration technician',
  commonLimit: 'at every place and speed, running',
  how: 'r.m.s. velocity on stiff metal, not on covers or fins, at steady flow. First with this pump stopped and its neighbours running: what is left then comes from elsewhere.',
  caution: 'Guard closed. Keep sleeves and cables from the shaft.',
  rows: (context) => {
    const { installation } = context.review;
    const limit = vibrationLimit(installation);
    const directions = readDirections(context);
    const rows = readSpeeds(installation).flatMap(({ key, word, speed }) =>
      vibrationPoints(installation).map((point) =>
        sheetRow(
          `${point.word}, ${word}${siteText(speed, 'speed', context) === undefined ? '' : `, ${siteText(speed, 'speed', context)}`}`,
          directions.map((direction) =>
            numberBox(
              {
                id: vibrationId(point.key, direction.key, key),
                label: direction.word.split(',')[0] ?? direction.word,
                tip: `Vibration of the ${point.word.toLowerCase()} ${direction.word}, ${word}`,
              },
              'velocity',
              context,
            ),
          ),
          limitWords(limit, context),
        ),
      ),
    );
    const stopped = alone(
      sheetRow(
        'Pump stopped, neighbours running: motor bottom',
        [
          numberBox(
            {
              id: 'vibration.stopped',
              label: 'largest',
              tip: 'Largest vibration of the motor bottom with this pump stopped',
            },
            'velocity',
            context,
          ),
        ],
        { limit: 'at most a quarter of the limit', source: 'ANSI/HI 9.6.4 (read)' },
      ),
    );
    const own =
      limit !== undefined && decides(limit.citation)
        ? []
        : [makerRow('vibration.limit', 'r.m.s. velocity', 'velocity', context)];
    return [stopped, ...rows, ...own];
  },
};
