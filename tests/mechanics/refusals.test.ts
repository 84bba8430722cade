import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { sentenceOf } from '../../src/issues/print.js';
import { thermalStrain } from '../../src/mechanics/frame/elements/thermal-strain.js';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { sagAlong } from '../../src/mechanics/frame/recovery/movement-along.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  bend,
  condition,
  force,
  frame,
  of,
  pipe,
  restraint,
  runThrough,
  STEEL,
  support,
} from './small-frames.js';

const run = runThrough([
  [0, 0, 0],
  [3, 0, 0],
]);
const sound = { ...run, supports: [anchor('A', 'a')] };

function codeOf(action: () => unknown): string {
  try {
    action();
  } catch (error) {
    if (error instanceof EngineError) {
      expect(sentenceOf(error.told).message.length).toBeGreaterThan(20);
      return error.code;
    }
    throw error;
  }
  return 'nothing was refused';
}

const refused: readonly (readonly [string, string, Partial<Frame>])[] = [
  ['a member of an unknown point', 'mechanics.unknown-name', { members: [pipe('m', 'a', 'z')] }],
  [
    'a member of an unknown material',
    'mechanics.unknown-name',
    { members: [pipe('m', 'a', 'b', { material: 'brass' })] },
  ],
  [
    'an absent support that is not there',
    'mechanics.unknown-name',
    { conditions: [condition({ absent: ['H9'] })] },
  ],
  [
    'a removed body that is not there',
    'mechanics.unknown-name',
    { conditions: [condition({ removed: ['pump'] })] },
  ],
  [
    'a load on an unknown point',
    'mechanics.unknown-name',
    { conditions: [condition({ loads: [force('z', [1, 0, 0])] })] },
  ],
  [
    'two members of one name',
    'mechanics.repeated-name',
    { members: [pipe('m', 'a', 'b'), pipe('m', 'a', 'b')] },
  ],
  [
    'a member without length',
    'mechanics.no-length',
    { points: { ...run.points, c: [3, 0, 0] }, members: [...run.members, pipe('m', 'b', 'c')] },
  ],
  [
    'a tube whose wall does not fit',
    'mechanics.not-a-tube',
    { members: [pipe('m', 'a', 'b', { tube: { outsideDiameter: 0.1, wall: 0.06 } })] },
  ],
  [
    'a place that is not a number',
    'mechanics.not-a-number',
    { points: { a: [0, 0, 0], b: [Number.NaN, 0, 0] } },
  ],
  ['a modulus of zero', 'mechanics.out-of-range', { materials: { steel: { ...STEEL, modulus: 0 } } }],
  [
    'a direction that is not of length one',
    'mechanics.out-of-range',
    { supports: [support('S', 'a', [restraint([2, 0, 0])])] },
  ],
  [
    'a spring setting inside free play',
    'mechanics.out-of-range',
    { supports: [support('S', 'a', [restraint([0, 0, 1], { gap: 0.01, preload: 5, stiffness: 1e3 })])] },
  ],
  [
    'a flexibility factor below one',
    'mechanics.out-of-range',
    { members: [bend('m', 'a', 'b', [1.5, 2, 0], { flexibility: 0.9 })] },
  ],
  [
    'a bend whose ends are not on one circle',
    'mechanics.bend-impossible',
    { members: [bend('m', 'a', 'b', [1, 2, 0])] },
  ],
  ['a bend of half a circle', 'mechanics.bend-impossible', { members: [bend('m', 'a', 'b', [1.5, 0, 0])] }],
  [
    'a body without a point',
    'mechanics.body-without-point',
    { bodies: [{ name: 'B', points: [], masses: [] }] },
  ],
  [
    'a temperature far beyond the table',
    'mechanics.expansion-unknown',
    { conditions: [condition({ temperature: 500 })] },
  ],
];

describe('a frame is refused, with a sentence', () => {
  test.each(refused)('for %s', (_, code, parts) => {
    expect(codeOf(() => solveFrame(frame({ ...sound, ...parts })))).toBe(code);
  });

  test('but not when it is sound', () => {
    expect(codeOf(() => solveFrame(frame(sound)))).toBe('nothing was refused');
  });
});

describe('reading from a solution is refused', () => {
  const solved = () => of(solveFrame(frame(sound)).conditions, 'test');

  test('for a member that is not there', () => {
    expect(codeOf(() => memberForces(frame(sound), condition(), solved(), 'zz', [0]))).toBe(
      'mechanics.unknown-name',
    );
  });

  test('for members that do not follow one another', () => {
    const apart = frame({
      ...sound,
      points: { ...run.points, c: [3, 3, 0], d: [0, 3, 0] },
      members: [...run.members, pipe('cd', 'c', 'd')],
      supports: [anchor('A', 'a'), anchor('C', 'c')],
    });
    const answer = of(solveFrame(apart).conditions, 'test');
    expect(codeOf(() => sagAlong(apart, condition(), answer, ['ab', 'cd']))).toBe('mechanics.not-a-chain');
    expect(codeOf(() => sagAlong(apart, condition(), answer, []))).toBe('mechanics.not-a-chain');
  });
});

describe('thermal strain', () => {
  const table = {
    ...STEEL,
    expansion: [
      [290, -1e-4],
      [300, 0],
      [350, 6e-4],
    ] as const,
  };

  test('is read by straight lines between the rows of the table', () => {
    expect(thermalStrain(table, 'steel', { from: 295, to: 325 })).toBeCloseTo(3e-4 + 0.5e-4, 15);
  });

  test('goes on straight for 60 K beyond the table and no further', () => {
    expect(thermalStrain(table, 'steel', { from: 300, to: 400 })).toBeCloseTo(1.2e-3, 15);
    expect(codeOf(() => thermalStrain(table, 'steel', { from: 300, to: 411 }))).toBe(
      'mechanics.expansion-unknown',
    );
    expect(codeOf(() => thermalStrain(table, 'steel', { from: 300, to: 229 }))).toBe(
      'mechanics.expansion-unknown',
    );
  });

  test('needs no table where the temperature does not change', () => {
    expect(thermalStrain({ ...STEEL, expansion: [] }, 'steel', { from: 300, to: 300 })).toBe(0);
    expect(codeOf(() => thermalStrain({ ...STEEL, expansion: [] }, 'steel', { from: 300, to: 301 }))).toBe(
      'mechanics.expansion-unknown',
    );
  });
});
