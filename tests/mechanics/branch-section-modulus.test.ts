import { expect, test } from 'vitest';
import { effectiveBranchModulus } from '../../src/mechanics/stress/branch-section-modulus.js';
import { sectionModulus } from '../../src/mechanics/stress/code-stress.js';
import { teeIntensification } from '../../src/model/frame/tee-factors.js';

// NPS 4 STD on NPS 12 STD; 4.500 in × 0.237 in, wall of the run 0.375 in.
const branch = { outsideDiameter: 0.1143, wall: 0.00602 };
const mean = (0.1143 - 0.00602) / 2;

test('a run thinner than the intensified branch governs', () => {
  const modulus = effectiveBranchModulus({ branch, runWall: 0.009525, intensification: 2.744 });
  expect(modulus).toBeCloseTo(Math.PI * mean ** 2 * 0.009525, 12);
});

test('a thick run leaves the intensified wall of the branch', () => {
  const modulus = effectiveBranchModulus({ branch, runWall: 0.02, intensification: 1.5 });
  expect(modulus).toBeCloseTo(Math.PI * mean ** 2 * 1.5 * 0.00602, 12);
});

test('with walls alike and no intensification it is the modulus of a thin ring, near that of the pipe', () => {
  const modulus = effectiveBranchModulus({ branch, runWall: branch.wall, intensification: 1 });
  expect(modulus / sectionModulus(branch)).toBeGreaterThan(0.98);
  expect(modulus / sectionModulus(branch)).toBeLessThan(1.06);
});

test.each([
  // Schedule 40 welding tees: h = 3.1 t / r and i = 0.9 / h^(2/3), worked by hand from the printed dimensions.
  ['NPS 3', 3.5, 0.216, 'welding tee', 1.637],
  ['NPS 12', 12.75, 0.375, 'welding tee', 2.744],
  ['NPS 3', 3.5, 0.216, 'fabricated', 3.48],
  ['NPS 12', 12.75, 0.375, 'fabricated', 5.833],
] as const)(
  'the factor of a %s tee is that of its run: %f in × %f in, %s, %f',
  (_size, outside, wall, make, factor) => {
    expect(teeIntensification({ outsideDiameter: outside * 0.0254, wall: wall * 0.0254 }, make)).toBeCloseTo(
      factor,
      3,
    );
  },
);

test('a pad as thick as the run lies between the bare branch and the factory tee', () => {
  const run = { outsideDiameter: 0.3239, wall: 0.009525 };
  const [bare, padded, factory] = (['fabricated', 'reinforced fabricated', 'welding tee'] as const).map(
    (make) => teeIntensification(run, make),
  );
  expect(padded).toBeLessThan(bare ?? 0);
  expect(padded).toBeGreaterThan(factory ?? 0);
});
