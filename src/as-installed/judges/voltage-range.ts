import { numberIn, numbersIn } from '../../readings/read-box.js';
import { VOLTAGE_RANGE } from '../../report/limits/electrical.js';
import { PAIRS } from '../../sheet/parts/electrical.js';
import type { FieldSubject, Judge, MeasuredComparison } from '../judge.js';

/** The voltage is near the rated one: that of the plate as read, else that of the file. */
export const voltageRange: Judge = {
  id: 'voltage-range',
  title: 'Voltage against rated',
  part: 'electrical',
  trade: 'electrician',
  compare: (subject) => [
    voltageComparison(
      PAIRS.map((pair) => `electrical.volts-${pair}`),
      'supply',
      subject,
    ),
  ],
};

/**
 * The worst of three voltages against the rated one.
 *
 * @param boxes - of the three
 * @param at - place
 * @param subject - readings and motor
 * @returns the comparison [V]
 */
export function voltageComparison(
  boxes: readonly string[],
  at: string,
  { readings, review }: FieldSubject,
): MeasuredComparison {
  const all = numbersIn(readings, boxes);
  const some = boxes.flatMap((box) => numberIn(readings, box) ?? []);
  const rated = review.installation.pump.motor.voltage?.value ?? numberIn(readings, 'identity.motor-voltage');
  const farthest = (from: number) =>
    some.reduce<number | undefined>(
      (worst, value) =>
        worst === undefined || Math.abs(value - from) > Math.abs(worst - from) ? value : worst,
      undefined,
    );
  const worst = rated === undefined ? some[0] : farthest(rated);
  const off = worst === undefined || rated === undefined ? undefined : Math.abs(worst - rated);
  // One voltage out of range is enough; that all are within takes all three.
  const isOut = off !== undefined && rated !== undefined && off > VOLTAGE_RANGE.value * rated;
  return {
    kind: 'measured',
    at,
    boxes,
    demand: all !== undefined || isOut ? (off ?? worst) : undefined,
    read: worst,
    expected: rated,
    measured: 'voltage',
    limit:
      rated === undefined
        ? undefined
        : { ...VOLTAGE_RANGE, value: VOLTAGE_RANGE.value * rated, measured: 'voltage' },
    noLimit: 'fieldwork.no-rated-voltage',
  };
}
