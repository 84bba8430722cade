import { numberIn } from '../../../readings/read-box.js';
import type { ReadingsById } from '../../../readings/reading.js';
import { speedBands } from '../../../report/sections/loads/frequencies.js';
import { siteText } from '../../../sheet/field-context.js';
import type { FieldSubject, Judge, StatedComparison } from '../../judge.js';

/** A band as set in the drive [rad/s]. */
export interface SetBand {
  readonly from: number;
  readonly to: number;
}

const PAIRS = ['', '-2', '-3', '-4', '-5', '-6'] as const;

/** Boxes of all bands that a sheet may have. */
export const BAND_BOXES: readonly string[] = PAIRS.flatMap((end) => [
  `knock-test.locked-from${end}`,
  `knock-test.locked-to${end}`,
]);

/** Bands set in the drive, as read; one that ends before it begins is none [rad/s]. */
export function setBands(readings: ReadingsById): readonly SetBand[] {
  return PAIRS.flatMap((end) => {
    const from = numberIn(readings, `knock-test.locked-from${end}`);
    const to = numberIn(readings, `knock-test.locked-to${end}`);
    return from === undefined || to === undefined || !(to > from) ? [] : [{ from, to }];
  });
}

/** What a drive is set to is believed to one turn a minute [rad/s]. */
const TURN = Math.PI / 30;

/** Every band that the review finds is set in the drive, and something is left to run at. */
export const lockedSpeeds: Judge = {
  id: 'locked-speeds',
  title: 'Speeds locked out in the drive',
  part: 'knock-test',
  trade: 'electrician',
  compare: (subject): readonly StatedComparison[] => {
    const { speeds } = subject.review.installation.pump.motor;
    if (speeds === undefined) return [];
    const wanted = speedBands({ subject: subject.review });
    const boxes = BAND_BOXES.filter((box) => subject.asked.has(box));
    const set = setBands(subject.readings);
    const isWhole = set.some(({ from, to }) => from <= speeds.lowest && to >= speeds.highest);
    if (wanted.length === 0 && !isWhole) return [];
    const open = wanted.filter(
      (band) => !set.some(({ from, to }) => from <= band.from + TURN && to >= band.to - TURN),
    );
    const text = (bands: readonly SetBand[]) => bands.map((band) => bandText(band, subject)).join(', ');
    return [
      {
        kind: 'stated',
        at: 'drive',
        boxes,
        holds: isWhole ? false : set.length === 0 ? undefined : open.length === 0,
        told: set.length === 0 ? undefined : text(set),
        wanted: wanted.length === 0 ? 'something left to run at' : text(wanted),
        data: { open: isWhole ? 'every speed' : text(open) },
      },
    ];
  },
};

function bandText({ from, to }: SetBand, subject: FieldSubject): string {
  return `${siteText(from, 'speed', subject) ?? ''} to ${siteText(to, 'speed', subject) ?? ''}`;
}
