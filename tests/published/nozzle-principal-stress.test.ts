// Source   API 610, annex F.2, sample of an NPS 4 × NPS 3 vertical in-line pump
// Printed  in US units, from memory of the standard: suction F = (500, -1200, 300) lbf, M = (100, -1500, 1000) ft·lbf:
//          sigma 3367.5, tau 2977.8, principal 5104.6 psi; discharge F = (300, -500, 100), M = (500, -2500, 500): sigma
//          4688.5, tau 8825.3, principal 11 475.6 psi; with MY = 700 the principal stress is 5825.0 psi, inside 5950.
//          In SI units the three are 35.31, 79.38 and 40.30 MPa, against 41 MPa.
// Checked  by hand for the suction: 1.27 × (-1200) / (4.5² - 4.026²) + 122 × 4.5 × √(100² + 1000²) / (4.5⁴ - 4.026⁴)
//          = -377 + 3745 = 3367.5 psi.
// Limits   the standard rounds 4/π, 384/π and 192/π to 1.27, 122 and 61 (in SI 1.27, 10 200, 5100). The exact constants
//          of the product give 0.1 to 0.3 % more, so exact values are compared to 0.3 %, and the standard's own
//          arithmetic, which this test repeats with the product's principal stress, to its printed digits.
import { expect, test } from 'vitest';
import { nozzleStress, principalStress } from '../../src/mechanics/stress/nozzle-stress.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const PSI = POUND_FORCE / INCH ** 2;
const FOOT_POUND = POUND_FORCE * 12 * INCH;
const MPA = 1e6;

interface Sample {
  readonly name: string;
  /** Schedule 40, outside and inside diameter [in]. */
  readonly section: readonly [number, number];
  /** X, Y, Z with Y along the nozzle [lbf] and [ft·lbf]. */
  readonly force: readonly [number, number, number];
  readonly moment: readonly [number, number, number];
  readonly normal: string;
  readonly shear: string;
  readonly principal: string;
  readonly megapascal: string;
}

const samples: readonly Sample[] = [
  {
    name: 'suction',
    section: [4.5, 4.026],
    force: [500, -1200, 300],
    moment: [100, -1500, 1000],
    normal: '3367.5',
    shear: '2977.8',
    principal: '5104.6',
    megapascal: '35.31',
  },
  {
    name: 'discharge',
    section: [3.5, 3.068],
    force: [300, -500, 100],
    moment: [500, -2500, 500],
    normal: '4688.5',
    shear: '8825.3',
    principal: '11475.6',
    megapascal: '79.38',
  },
  {
    name: 'discharge with less torsion',
    section: [3.5, 3.068],
    force: [300, -500, 100],
    moment: [500, -700, 500],
    normal: '4688.5',
    shear: '2573.0',
    principal: '5825.0',
    megapascal: '40.30',
  },
];

/** The standard's own arithmetic in inches, its rounded constants included [psi]. */
function printedArithmetic({ section: [Do, Di], force: [fx, fy, fz], moment: [mx, my, mz] }: Sample) {
  const [squares, fourths] = [Do ** 2 - Di ** 2, Do ** 4 - Di ** 4];
  return {
    normal: (1.27 * fy) / squares + (122 * Do * Math.hypot(mx, mz)) / fourths,
    shear: (1.27 * Math.hypot(fx, fz)) / squares + (61 * Do * Math.abs(my)) / fourths,
  };
}

function ours({ section, force, moment }: Sample) {
  return nozzleStress({
    outsideDiameter: section[0] * INCH,
    insideDiameter: section[1] * INCH,
    axialForce: force[1] * POUND_FORCE,
    crossForce: Math.hypot(force[0], force[2]) * POUND_FORCE,
    bendingMoment: Math.hypot(moment[0], moment[2]) * FOOT_POUND,
    torsion: moment[1] * FOOT_POUND,
  });
}

test.each(samples)(
  'the principal stress of $name, from the stresses as the standard rounds them',
  (sample) => {
    const { normal, shear } = printedArithmetic(sample);
    expect(withinPrintedRounding(normal * PSI, { text: sample.normal, lastDigit: 0.1, toSi: PSI })).toBe(
      true,
    );
    expect(withinPrintedRounding(shear * PSI, { text: sample.shear, lastDigit: 0.1, toSi: PSI })).toBe(true);
    const principal = principalStress({ normal: normal * PSI, shear: shear * PSI });
    expect(withinPrintedRounding(principal, { text: sample.principal, lastDigit: 0.1, toSi: PSI })).toBe(
      true,
    );
  },
);

test.each(samples)('the exact constants give $name up to 0.3 % more in US units', (sample) => {
  const stress = ours(sample);
  for (const [value, text] of [
    [stress.normal, sample.normal],
    [stress.shear, sample.shear],
    [principalStress(stress), sample.principal],
  ] as const) {
    expect(relativeError(value / PSI, Number(text))).toBeLessThan(0.003);
    expect(value / PSI).toBeGreaterThan(Number(text));
  }
});

test.each(samples)('and $name within 0.4 % of the sample in SI units', (sample) => {
  expect(relativeError(principalStress(ours(sample)) / MPA, Number(sample.megapascal))).toBeLessThan(0.004);
});

test('the check can fail: shear doubled, as for the peak of a thin ring, is refused', () => {
  const sample = samples[0] as Sample;
  const { normal, shear } = printedArithmetic(sample);
  const principal = principalStress({ normal: normal * PSI, shear: 2 * shear * PSI });
  expect(withinPrintedRounding(principal, { text: sample.principal, lastDigit: 0.1, toSi: PSI })).toBe(false);
});
