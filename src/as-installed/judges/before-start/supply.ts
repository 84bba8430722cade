/** The supply at the disconnect before the motor is started, judged as when it runs. */
import { numberIn, numbersIn } from '../../../readings/read-box.js';
import { unbalance } from '../../../readings/unbalance.js';
import { VOLTAGE_UNBALANCE } from '../../../report/limits/electrical.js';
import { FREQUENCY_RANGE, ratedFrequency } from '../../../report/limits/frequency.js';
import { PAIRS, PHASES } from '../../../sheet/parts/electrical.js';
import type { FieldSubject, Judge, MeasuredComparison, StatedComparison } from '../../judge.js';
import { voltageComparison } from '../voltage-range.js';

const AT_REST = PAIRS.map((pair) => `before-start.volts-${pair}`);
const RUNNING = PAIRS.map((pair) => `electrical.volts-${pair}`);

/** Boxes in which the supply is read for a start: at rest; running, where a sheet has only those filled in. */
function supplyBoxes({ readings }: FieldSubject): readonly string[] {
  const isEmpty = AT_REST.every((box) => !readings.has(box));
  return isEmpty && RUNNING.some((box) => readings.has(box)) ? RUNNING : AT_REST;
}

/** Voltage at the disconnect near the rated one. */
export const supplyVoltage: Judge = {
  id: 'supply-voltage',
  title: 'Supply against rated voltage',
  part: 'before-start',
  trade: 'electrician',
  compare: (subject) => [voltageComparison(supplyBoxes(subject), 'supply at rest', subject)],
};

/** The three voltages at the disconnect alike: a phase that is not there is the worst of unbalances. */
export const supplyUnbalance: Judge = {
  id: 'supply-unbalance',
  title: 'Unbalance of the supply',
  part: 'before-start',
  trade: 'electrician',
  compare: (subject): readonly MeasuredComparison[] => {
    const boxes = supplyBoxes(subject);
    const read = numbersIn(subject.readings, boxes);
    return [
      {
        kind: 'measured',
        at: 'supply at rest',
        boxes,
        demand: read && unbalance(read),
        measured: 'share',
        limit: VOLTAGE_UNBALANCE,
        expected: 0,
      },
    ];
  },
};

/** The motor is made for the frequency of the supply. */
export const supplyFrequency: Judge = {
  id: 'supply-frequency',
  title: 'Frequency against rated',
  part: 'electrical',
  trade: 'electrician',
  compare: ({ readings, review }) => {
    const rated =
      numberIn(readings, 'identity.motor-frequency') ?? ratedFrequency(review.installation.pump.motor.speed);
    const read = numberIn(readings, 'electrical.frequency');
    return [
      {
        kind: 'measured',
        at: 'supply',
        boxes: ['electrical.frequency'],
        demand: read === undefined || rated === undefined ? undefined : Math.abs(read - rated),
        read,
        expected: rated,
        measured: 'frequency',
        limit:
          rated === undefined
            ? undefined
            : { ...FREQUENCY_RANGE, value: FREQUENCY_RANGE.value * rated, measured: 'frequency' },
        noLimit: 'fieldwork.no-rated-frequency',
      },
    ];
  },
};

/** Below this share of the largest a line carries nothing [-]. */
const NOTHING = 0.1;

/**
 * All three lines carry: a running motor makes up nearly the whole voltage on a phase that is gone, so that only the currents
 * show it.
 */
export const lostPhase: Judge = {
  id: 'lost-phase',
  title: 'All three phases carry',
  part: 'electrical',
  trade: 'electrician',
  compare: (subject): readonly StatedComparison[] => {
    const boxes = PHASES.map((phase) => `electrical.amps-${phase}`);
    const read = boxes.map((box) => numberIn(subject.readings, box));
    const known = read.filter((value) => value !== undefined);
    const most = Math.max(0, ...known);
    // One line without current is enough; that all carry takes all three.
    const isLost = most > 0 && known.some((value) => value < NOTHING * most);
    const told = read.map((value) => (value === undefined ? '?' : subject.write.plain(value))).join(' / ');
    return [
      {
        kind: 'stated',
        at: 'motor',
        boxes,
        holds: isLost ? false : known.length === boxes.length && most > 0 ? true : undefined,
        told: known.length === 0 ? undefined : `${told} A`,
        wanted: 'current in all three',
      },
    ];
  },
};
