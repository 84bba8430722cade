import { expect, test } from 'vitest';
import { frameOf } from '../../src/render/layout/style-sheet.js';
import { composeReview } from '../../src/report/compose-review.js';
import { reviewed } from './fixture.js';

const { drawings } = composeReview(reviewed(), { reader: 'engineer', units: 'us', version: '0.0.0' });

test.each(['isometric', 'movement', 'elevation', 'plan', 'lift', 'ratios'])(
  'the drawing %s says in words what it shows',
  (name) => {
    expect(drawings[name]?.alt.length).toBeGreaterThan(20);
    expect(drawings[name]?.shapes.length).toBeGreaterThan(5);
  },
);

test('a drawing is made once, however often it is looked at', () => {
  expect(drawings.isometric).toBe(drawings.isometric);
});

test('a drawing fits the frame of a page', () => {
  for (const drawing of Object.values(drawings)) {
    expect(drawing.width).toBeLessThanOrEqual(frameOf('a4').width);
    expect(drawing.height).toBeLessThanOrEqual(640);
  }
});
