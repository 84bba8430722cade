import { describe, expect, test } from 'vitest';
import { asFound } from '../../src/as-found/as-found.js';
import { foundFindings } from '../../src/as-found/found-findings.js';
import { isOpenAsFound } from '../../src/as-installed/open-item.js';
import { understand } from '../../src/readings/understand.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { fieldContext } from '../../src/sheet/field-context.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';
import { answersFor } from './visit.js';

const EIGHTH = 0.0254 / 8;
/** All sets in the slow lane, which asks for them; a share of them otherwise. */
const SETS = process.env.SLOW_TESTS === 'yes' ? 1000 : 100;

/** A row of numbers between -1 and 1 that is the same on every machine. */
function noise(seed: number): () => number {
  let state = seed * 2654435761 + 1;
  return () => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) + 3266489917) | 0;
    return ((state >>> 0) / 2 ** 32) * 2 - 1;
  };
}

const review = reviewedSample('pool-hot-water');
const context = fieldContext(review);
const sheet = buildSheet(review);
/** What is predicted in each box that a tape is held to [m]. */
const predicted = asFound(
  context,
  understand(
    answersFor(
      review,
      Object.fromEntries(
        boxesOf(sheet).flatMap(({ box }) =>
          /^supports\..*\.(?:position|height|rod-length)$/u.test(box.id) && box.expected !== undefined
            ? [[box.id, box.expected] as const]
            : [],
        ),
      ),
    ),
    sheet,
    'us',
  ).readings,
).compared;

/** The line as a tape that is off by up to an eighth of an inch shows it, written down to a sixteenth. */
function taped(seed: number, off: Readonly<Record<string, number>> = {}) {
  const random = noise(seed);
  const readings = Object.fromEntries(
    predicted.map(({ box, drawn }) => {
      const read = drawn + (off[box] ?? 0) + random() * EIGHTH;
      return [box, `${Math.round((read / 0.0254) * 16) / 16} in`] as const;
    }),
  );
  return asFound(context, understand(answersFor(review, readings), sheet, 'us').readings);
}

const moved = (found: ReturnType<typeof taped>): readonly string[] =>
  found.compared
    .filter(({ drawn, found: at, tolerance }) => Math.abs(at - drawn) > tolerance)
    .map(({ mark, what }) => `${mark} ${what}`);

test('a perfect line is never held for a tape that is off by an eighth of an inch', () => {
  expect(predicted.length).toBeGreaterThan(8);
  for (let seed = 1; seed <= SETS; seed++) {
    const found = taped(seed);
    expect(moved(found)).toEqual([]);
    expect(found.kind).toBe('as drawn');
    expect(found.datum).toBeUndefined();
    expect(foundFindings(found).some(isOpenAsFound)).toBe(false);
  }
});

describe('half an inch', () => {
  test('at one hanger is found in nineteen of twenty sets and more, and at no other', () => {
    let right = 0;
    for (let seed = 1; seed <= SETS; seed++) {
      const found = taped(seed, { 'supports.h2.height': seed % 2 === 0 ? 0.0127 : -0.0127 });
      const seen = moved(found);
      if (seen.length === 1 && seen[0] === 'H2 height') right += 1;
    }
    expect(right / SETS).toBeGreaterThanOrEqual(0.95);
  });

  test('at every height is a mark to be asked about, and loads nothing', () => {
    const heights = predicted
      .filter(({ what }) => what === 'height')
      .map(({ box }) => [box, 0.0254] as const);
    for (let seed = 1; seed <= SETS / 10; seed++) {
      const found = taped(seed, Object.fromEntries(heights));
      expect(found.datum).toMatchObject({ known: false });
      expect(found.kind).toBe('as drawn');
    }
  });
});
