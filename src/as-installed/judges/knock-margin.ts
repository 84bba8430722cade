import { numberIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import { knockMargin } from '../../report/limits/knock.js';
import { siteText } from '../../sheet/field-context.js';
import { directionsOf } from '../../sheet/pump-directions.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';
import { setBands } from './before-start/locked-speeds.js';

/** The frequencies that the hammer finds keep their margin from running speed, or the drive is kept out of it. */
export const knockMarginJudge: Judge = {
  id: 'knock-margin',
  title: 'Natural frequency, as struck, near running speed',
  part: 'knock-test',
  trade: 'vibration technician',
  compare: (subject) => {
    const { along, across } = directionsOf(subject);
    return [atDirection('along', along, subject), atDirection('across', across, subject)];
  },
};

/** A range of turns a second [Hz]. */
interface Range {
  readonly from: number;
  readonly to: number;
}

function atDirection(key: string, way: string, subject: FieldSubject): FieldComparison {
  const { readings, review } = subject;
  const boxes = [`knock-test.${key}-first`, `knock-test.${key}-second`];
  const found = boxes.flatMap((box) => numberIn(readings, box) ?? []);
  const { motor } = review.installation.pump;
  const { lowest, highest } = motor.speeds ?? { lowest: motor.speed, highest: motor.speed };
  const running: Range = { from: lowest / (2 * Math.PI), to: highest / (2 * Math.PI) };
  const given = knockMargin(review.installation);
  const own = given.isPublished ? siteLimit(readings, 'knock-test.margin', 'share', 'at least') : undefined;
  const share = own?.value ?? given.share;
  const locked = lockedRanges(subject);
  const judged = found.map((frequency) => ({ frequency, nearness: nearness(frequency, running, locked) }));
  const [worst] = [...judged].sort((a, b) => b.nearness - a.nearness);
  return {
    kind: 'measured',
    at: `motor top, ${way}`,
    boxes,
    // The lowest alone tells enough: the next is higher still, and asked for where it is near.
    demand: worst?.nearness,
    measured: 'share',
    limit: {
      value: 1 - share,
      measured: 'share',
      words: 'at most',
      citation: own?.citation ?? given.citation,
    },
    comparison: given.isPublished && own === undefined,
    data: {
      frequency: siteText(worst?.frequency, 'frequency', subject) ?? '',
      from: siteText((2 * Math.PI * (worst?.frequency ?? 0)) / (1 + share), 'speed', subject) ?? '',
      to: siteText((2 * Math.PI * (worst?.frequency ?? 0)) / (1 - share), 'speed', subject) ?? '',
    },
  };
}

/** Speeds the drive is kept out of, as turns a second. */
function lockedRanges({ readings }: FieldSubject): readonly Range[] {
  return setBands(readings).map(({ from, to }) => ({ from: from / (2 * Math.PI), to: to / (2 * Math.PI) }));
}

/**
 * Nearness of a frequency to the nearest speed that may be run: 1 at it, 0.75 a quarter of that speed away.
 *
 * @param frequency - natural frequency [Hz]
 * @param running - speeds the motor runs at, as turns a second
 * @param locked - stretches of speed it is kept out of; those that leave nothing to run at are taken for a slip
 * @returns nearness [-]
 */
export function nearness(frequency: number, running: Range, locked: readonly Range[] = []): number {
  const left = locked.reduce<readonly Range[]>(
    (ranges, band) =>
      ranges
        .flatMap((range) => [
          { from: range.from, to: Math.min(range.to, band.from) },
          { from: Math.max(range.from, band.to), to: range.to },
        ])
        .filter(({ from, to }) => to >= from),
    [running],
  );
  const each = (left.length === 0 ? [running] : left).map(({ from, to }) => {
    const nearest = Math.min(Math.max(frequency, from), to);
    return Math.max(0, 1 - Math.abs(frequency - nearest) / nearest);
  });
  return Math.max(0, ...each);
}
