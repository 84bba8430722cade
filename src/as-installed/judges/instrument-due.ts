import { dateIn, textIn } from '../../readings/read-box.js';
import { DUE_BOXES } from '../../sheet/parts/identity.js';
import type { FieldComparison, Judge } from '../judge.js';

/** Instruments were calibrated when they were used. Only those that were used are asked for. */
export const instrumentDue: Judge = {
  id: 'instrument-due',
  title: 'Calibration in date',
  part: 'identity',
  trade: 'commissioning agent',
  compare: ({ sheets }) =>
    sheets.flatMap(({ readings }) =>
      DUE_BOXES.flatMap(([box, name]): readonly FieldComparison[] => {
        const [due, day] = [dateIn(readings, box), dateIn(readings, 'identity.date')];
        const serial = textIn(readings, box.replace(/-due$/u, ''));
        if (serial === undefined && !readings.has(box)) return [];
        return [
          {
            kind: 'stated',
            at: sheets.length > 1 && day !== undefined ? `${name}, ${day}` : name,
            boxes: [box, 'identity.date'],
            holds: due === undefined || day === undefined ? undefined : due >= day,
            told: due,
            wanted: day === undefined ? 'in date' : `${day} or later`,
          },
        ];
      }),
    ),
};
