import { numberIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import { siteText } from '../../sheet/field-context.js';
import { knockMargin } from '../../sheet/limits/knock.js';
import { directionsOf } from '../../sheet/pump-directions.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';

/** The frequencies that the hammer finds keep their margin from running speed, or the drive is kept out of it. */
export const knockMarginJudge: Judge = {
  id: 'knock-margin',
  title: 'Natural frequency, as struck, near running speed',
  part: 'knock-test',
  trade: 'vibration technician',
  blocksStart: false,
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
  const locked = lockedRange(subject);
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
function lockedRange({ readings }: FieldSubject): Range | undefined {
  const from = numberIn(readings, 'knock-test.locked-from');
  const to = numberIn(readings, 'knock-test.locked-to');
  return from === undefined || to === undefined || to <= from
    ? undefined
    : { from: from / (2 * Math.PI), to: to / (2 * Math.PI) };
}

/**
 * Nearness of a frequency to the nearest speed that may be run: 1 at it, 0.75 a quarter of that speed away.
 *
 * @param frequency - natural frequency [Hz]
 * @param running - speeds the motor runs at, as turns a second
 * @param locked - speeds it is kept out of
 * @returns nearness [-]
 */
export function nearness(frequency: number, running: Range, locked?: Range): number {
  const ranges =
    locked === undefined
      ? [running]
      : [
          { from: running.from, to: Math.min(running.to, locked.from) },
          { from: Math.max(running.from, locked.to), to: running.to },
        ].filter(({ from, to }) => to >= from);
  const each = ranges.map(({ from, to }) => {
    const nearest = Math.min(Math.max(frequency, from), to);
    return Math.max(0, 1 - Math.abs(frequency - nearest) / nearest);
  });
  return Math.max(0, ...each);
}
