import { compareWithLimit } from '../../judging/compare-with-limit.js';
import { numberIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import type { FieldLimit } from '../../report/limits/field-limit.js';
import { decides } from '../../report/limits/field-limit.js';
import { vibrationLimit, vibrationZones, zoneOf } from '../../report/limits/vibration.js';
import { siteText } from '../../sheet/field-context.js';
import { readDirections, readSpeeds, vibrationId, vibrationPoints } from '../../sheet/vibration-points.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';

/** The limit of the file, else one written on the sheet, else the published boundary as a comparison. */
export function vibrationLimitOf({ readings, review }: FieldSubject): FieldLimit | undefined {
  const own = vibrationLimit(review.installation);
  if (own !== undefined && decides(own.citation)) return own;
  return siteLimit(readings, 'vibration.limit', 'velocity') ?? own;
}

/** Vibration at each place and speed: the worst of its three directions, with the published zone it falls into. */
export const vibration: Judge = {
  id: 'vibration',
  title: 'Vibration',
  part: 'vibration',
  trade: 'vibration technician',
  compare: (subject) => {
    const { readings, review } = subject;
    const limit = vibrationLimitOf(subject);
    const zones = vibrationZones(review.installation.pump.motor.power);
    const directions = readDirections(subject);
    return readSpeeds(review.installation).flatMap(({ key, word }) =>
      vibrationPoints(review.installation).map((point): FieldComparison => {
        const boxes = directions.map((direction) => vibrationId(point.key, direction.key, key));
        const read = boxes.map((box) => numberIn(readings, box));
        const whole = read.every((value) => value !== undefined);
        const worst = Math.max(...read.map((value) => value ?? 0));
        const at = directions[read.indexOf(worst)]?.word ?? '';
        // One direction over its limit is enough; to be within it takes all three.
        const known = whole || compareWithLimit({ demand: worst, limit: limit?.value }).verdict === 'exceeds';
        const zone = zones && zoneOf(worst, zones);
        return {
          kind: 'measured',
          at: `${point.word.toLowerCase()}, ${word}`,
          boxes,
          demand: known ? worst : undefined,
          measured: 'velocity',
          limit,
          data: { direction: at, zone: zone ?? 'no zone', worst: siteText(worst, 'velocity', subject) ?? '' },
        };
      }),
    );
  },
};
