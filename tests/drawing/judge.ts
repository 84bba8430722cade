/** What every picture must keep, whatever it shows. */
import { expect } from 'vitest';
import type { Drawing, Shape } from '../../src/drawing/drawing.js';
import { boxesOverlap, shapeBox } from '../../src/drawing/plane.js';

const words = (drawing: Drawing) =>
  drawing.shapes.filter((s): s is Extract<Shape, { kind: 'text' }> => s.kind === 'text');

/** Shapes that reach over the edge of the paper, and numbers that are none. */
export function straying(drawing: Drawing): readonly Shape[] {
  return drawing.shapes.filter((shape) => {
    const box = shapeBox(shape);
    return !(box.left >= 0 && box.top >= 0 && box.right <= drawing.width && box.bottom <= drawing.height);
  });
}

/** Pairs of texts printed on top of each other. */
export function textsOnTexts(drawing: Drawing): readonly string[] {
  const texts = words(drawing);
  return texts.flatMap((a, i) =>
    texts
      .slice(i + 1)
      .flatMap((b) => (boxesOverlap(shapeBox(a), shapeBox(b)) ? [`${a.text} / ${b.text}`] : [])),
  );
}

/** Everything at once. */
export function expectSound(drawing: Drawing): void {
  expect(straying(drawing)).toEqual([]);
  expect(textsOnTexts(drawing)).toEqual([]);
  expect(words(drawing).filter((t) => t.size < 7)).toEqual([]);
  expect(drawing.alt.length).toBeGreaterThan(20);
}

/** All words of a picture. */
export const textsOf = (drawing: Drawing): readonly string[] => words(drawing).map((t) => t.text);
