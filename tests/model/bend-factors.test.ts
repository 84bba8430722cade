import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { bendFactors } from '../../src/model/frame/bend-factors.js';
import { teeIntensification } from '../../src/model/frame/tee-factors.js';

const INCH = 0.0254;

/** NPS 4 schedule 40 long-radius elbow: D 4.500, t 0.237, R 6.000 in; r = 2.1315, h = 0.237·6/4.5433 = 0.31299. */
const nps4 = { bendRadius: 6 * INCH, outsideDiameter: 4.5 * INCH, wall: 0.237 * INCH };

describe('bend factors of the code equations, by hand for an NPS 4 long-radius elbow', () => {
  test('k = 1.65/h and i = 0.9/h^(2/3)', () => {
    const factors = bendFactors({ ...nps4, stiffEnds: 0 });
    expect(factors.characteristic).toBeCloseTo(0.31299, 5);
    expect(factors.flexibility).toBeCloseTo(1.65 / 0.31299, 3);
    expect(factors.intensification).toBeCloseTo(0.9 / 0.31299 ** (2 / 3), 4);
  });

  test('one stiff end multiplies k by h^(1/6), two by h^(1/3), and i stays', () => {
    const free = bendFactors({ ...nps4, stiffEnds: 0 });
    const one = bendFactors({ ...nps4, stiffEnds: 1 });
    const two = bendFactors({ ...nps4, stiffEnds: 2 });
    expect(one.flexibility / free.flexibility).toBeCloseTo(0.31299 ** (1 / 6), 4);
    expect(two.flexibility / free.flexibility).toBeCloseTo(0.31299 ** (1 / 3), 4);
    expect(one.intensification).toBe(free.intensification);
    expect(two.intensification).toBe(free.intensification);
    expect(two.stiffening).toBeLessThan(one.stiffening);
  });

  test('a thick bend is never stiffer than straight pipe', () => {
    const thick = bendFactors({ bendRadius: 1, outsideDiameter: 0.1, wall: 0.02, stiffEnds: 2 });
    expect(thick).toMatchObject({ flexibility: 1, intensification: 1, stiffening: 1 });
  });

  test('a radius under the mean radius of the pipe, or no number, is refused', () => {
    expect(() => bendFactors({ ...nps4, bendRadius: 0.02, stiffEnds: 0 })).toThrow(EngineError);
    expect(() => bendFactors({ ...nps4, bendRadius: Number.NaN, stiffEnds: 0 })).toThrow(/radius-too-small/);
  });
});

describe('tee intensification', () => {
  // NPS 6 schedule 40: t = 0.280, r = 3.1725 in. Welding tee h = 3.1·0.28/3.1725 = 0.2736, i = 0.9/0.2736^(2/3) = 2.136.
  const run = { outsideDiameter: 6.625 * INCH, wall: 0.28 * INCH };
  test('a welding tee follows h = 3.1 t/r', () => {
    expect(teeIntensification(run, 'welding tee')).toBeCloseTo(0.9 / ((3.1 * 0.28) / 3.1725) ** (2 / 3), 6);
  });
  test('fabricated is worst, a pad helps, a grooved fitting counts as fabricated', () => {
    expect(teeIntensification(run, 'fabricated')).toBeGreaterThan(
      teeIntensification(run, 'reinforced fabricated'),
    );
    expect(teeIntensification(run, 'reinforced fabricated')).toBeGreaterThan(1);
    expect(teeIntensification(run, 'grooved fitting')).toBe(teeIntensification(run, 'fabricated'));
  });
});
