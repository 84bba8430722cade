// Source   J. S. Page, Estimator's Piping Man-Hour Manual, 5th ed., section eleven, hanger load calculations, pp. 240-246
// Printed  loads at hangers by moments on two supports, weights in lb and arms in ft, one row below per equation: 841, 638,
//          927, 4224, 3804, 3835, 4175, 2128, 3747, 453 lb.
// Checked  by hand from the printed weights and arms: 840.8, 638.4, 926.6, 4223.8, 3803.8, 3835.2, 4175.4, 2127.6, 3747.2,
//          453.2 lb.
// Limits   the isometric and the weight table are not at hand: weights and arms are those of the printed equations. The scan
//          shows 1.x83 and 10.183 where the printed products ask for 1.583 and 10.813; those are used.
import { expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import {
  condition,
  force,
  frame,
  of,
  POUND_FORCE,
  pipe,
  prop,
  restraint,
  support,
} from '../mechanics/small-frames.js';
import { withinPrintedRounding } from './printed-value.js';

const FOOT = 0.3048;
const UP: Vec3 = [0, 0, 1];

interface Row {
  readonly at: string;
  /** Distance between the two supports [ft]. */
  readonly span: number;
  /** Weight [lb] and arm from the support the moments are taken about [ft]; a negative arm overhangs it. */
  readonly loads: readonly (readonly [number, number])[];
  readonly printed: string;
}

const rows: readonly Row[] = [
  {
    at: "(H-1)'",
    span: 7.458,
    loads: [
      [775, 3.625],
      [543, 6.375],
    ],
    printed: '841',
  },
  {
    at: 'R at H-1 from O to H-2',
    span: 9,
    loads: [
      [790, 2],
      [775, 5.375],
    ],
    printed: '638',
  },
  {
    at: "(H-2)'",
    span: 9,
    loads: [
      [775, 3.625],
      [790, 7],
    ],
    printed: '927',
  },
  {
    at: "(H-1)''",
    span: 3.708,
    loads: [
      [4354, 1.583],
      [500, 3.291],
      [638, 11.166],
    ],
    printed: '4224',
  },
  {
    at: "(H-3)'",
    span: 14.5,
    loads: [
      [477, -9],
      [790, 2],
      [1550, 7.187],
      [3173, 9],
      [1550, 10.813],
      [99, 14.25],
    ],
    printed: '3804',
  },
  {
    at: "(H-2)''",
    span: 14.5,
    loads: [
      [99, 0.25],
      [1550, 3.683],
      [3173, 5.5],
      [1550, 7.317],
      [790, 12.5],
      [477, 23.5],
    ],
    printed: '3835',
  },
  {
    at: "(H-3)''",
    span: 17,
    loads: [
      [2488, 6.292],
      [3667, 14.417],
      [148, 16.625],
    ],
    printed: '4175',
  },
  {
    at: "(H-4)'",
    span: 17,
    loads: [
      [148, 0.375],
      [3667, 2.583],
      [2488, 10.708],
    ],
    printed: '2128',
  },
  {
    at: "(H-4)''",
    span: 7.083,
    loads: [
      [285, 1.083],
      [247, 2.125],
      [5418, 4.583],
      [130, 6.75],
    ],
    printed: '3747',
  },
  {
    at: 'R at H-6',
    span: 11.3,
    loads: [
      [95, 0.25],
      [653, 5.458],
      [146, 10.5],
    ],
    printed: '453',
  },
];

/** Load on the far one of two supports under point loads between and beyond them. */
function farLoad({ span, loads }: Pick<Row, 'span' | 'loads'>): number {
  const stations = [...new Set([0, span, ...loads.map(([, arm]) => arm)])].sort((a, b) => a - b);
  const name = (station: number) => `at ${station}`;
  const built = frame({
    points: Object.fromEntries(stations.map((x): [string, Vec3] => [name(x), [x * FOOT, 0, 0]])),
    members: stations.slice(1).map((x, i) => pipe(`to ${x}`, name(stations[i] ?? 0), name(x))),
    supports: [
      prop('near', name(0), [1, 0, 0], [0, 1, 0], UP),
      prop('far', name(span), UP),
      support('turns', name(0), [
        restraint([1, 0, 0], { acts: 'rotation' }),
        restraint(UP, { acts: 'rotation' }),
      ]),
    ],
    conditions: [
      condition({ loads: loads.map(([weight, arm]) => force(name(arm), [0, 0, -weight * POUND_FORCE])) }),
    ],
  });
  return -of(of(solveFrame(built).conditions, 'test').supports, 'far').load.force[2];
}

test.each(rows)('hanger load $at by moments on two supports', (row) => {
  expect(withinPrintedRounding(farLoad(row), { text: row.printed, lastDigit: 1, toSi: POUND_FORCE })).toBe(
    true,
  );
});

test('hanger H-3 in all', () => {
  const total = rows.filter(({ at }) => at.startsWith('(H-3)')).reduce((sum, row) => sum + farLoad(row), 0);
  expect(withinPrintedRounding(total, { text: '7979', lastDigit: 1, toSi: POUND_FORCE })).toBe(true);
});

test('the check can fail: a load that overhangs, taken within the span, is refused', () => {
  const wrong = farLoad({
    span: 14.5,
    loads: [
      [477, 9],
      [790, 2],
      [1550, 7.187],
      [3173, 9],
      [1550, 10.813],
      [99, 14.25],
    ],
  });
  expect(withinPrintedRounding(wrong, { text: '3804', lastDigit: 1, toSi: POUND_FORCE })).toBe(false);
});
