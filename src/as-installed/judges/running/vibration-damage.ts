import { numberIn } from '../../../readings/read-box.js';
import { damagingVelocity } from '../../../report/limits/vibration.js';
import { readDirections, readSpeeds, vibrationId, vibrationPoints } from '../../../sheet/vibration-points.js';
import type { FieldComparison, Judge } from '../../judge.js';

/** Vibration past every published figure of damage stops the pump, whatever limit was or was not given. */
export const vibrationDamage: Judge = {
  id: 'vibration-damage',
  title: 'Vibration past every figure of damage',
  part: 'vibration',
  trade: 'vibration technician',
  compare: (subject) => {
    const { readings, review } = subject;
    const directions = readDirections(subject);
    const limit = damagingVelocity(review.installation.pump.motor.power);
    return readSpeeds(review.installation).flatMap(({ key, word }) =>
      vibrationPoints(review.installation).flatMap((point): readonly FieldComparison[] => {
        const boxes = directions.map((direction) => vibrationId(point.key, direction.key, key));
        const read = boxes.flatMap((box) => numberIn(readings, box) ?? []);
        return [
          {
            kind: 'measured',
            at: `${point.word.toLowerCase()}, ${word}`,
            boxes,
            demand: read.length === 0 ? undefined : Math.max(...read),
            measured: 'velocity',
            limit,
          },
        ];
      }),
    );
  },
};
