// A frame written by hand through its own door: a cantilever of a steel tube, whose sag, frequency and load on a body at
// its end have closed forms, and what a caller without types may hand in.
import { expect, test } from 'vitest';
import { EngineError, type Frame, naturalFrequencies, solveFrame, wrenchOnBody } from '../../src/frame.js';
import { printIssue } from '../../src/review.js';

const LENGTH = 3;
const TUBE = { outsideDiameter: 0.1143, wall: 0.00602 };
const MODULUS = 2.0e11;
const LINE_MASS = 16.07;
const GRAVITY = 9.80665;
const MASS = 40;

/** A tube held rigidly at one end; where asked for, a body of a mass on the other. */
const cantilever = (bodyMass?: number): Frame => ({
  points: { wall: [0, 0, 0], tip: [LENGTH, 0, 0] },
  materials: { steel: { modulus: MODULUS, poisson: 0.3, expansion: [] } },
  members: [
    {
      kind: 'pipe',
      name: 'arm',
      from: 'wall',
      to: 'tip',
      tube: TUBE,
      material: 'steel',
      mass: { metal: LINE_MASS, covering: 0 },
      contentsGroup: 'line',
    },
  ],
  bodies:
    bodyMass === undefined
      ? []
      : [
          {
            name: 'pump',
            points: ['tip'],
            masses: [
              { name: 'pump', at: [LENGTH + 0.2, 0, 0], mass: bodyMass, contents: 0, contentsGroup: 'pump' },
            ],
          },
        ],
  joints: [],
  supports: [
    {
      name: 'A1',
      word: 'anchor',
      point: 'wall',
      restraints: (['translation', 'rotation'] as const).flatMap((acts) =>
        (
          [
            [1, 0, 0],
            [0, 1, 0],
            [0, 0, 1],
          ] as const
        ).map((direction) => ({
          direction,
          acts,
          stiffness: Number.POSITIVE_INFINITY,
          sense: 'both' as const,
          preload: 0,
          gap: 0,
          imposed: 0,
          friction: 0,
        })),
      ),
    },
  ],
  conditions: [
    {
      name: 'cold',
      gravity: [0, 0, -GRAVITY],
      contentsDensity: 0,
      drained: [],
      covering: false,
      temperature: 293.15,
      pressure: 0,
      absent: [],
      stopped: [],
      removed: [],
      loads: [],
    },
  ],
  installationTemperature: 293.15,
  options: { withoutShear: true },
});

const INERTIA = (Math.PI / 64) * (TUBE.outsideDiameter ** 4 - (TUBE.outsideDiameter - 2 * TUBE.wall) ** 4);

test('sags as w L^4 / 8 E I', () => {
  const tip = solveFrame(cantilever()).conditions.cold?.movements.tip;
  expect(tip?.translation[2]).toBeCloseTo((-LINE_MASS * GRAVITY * LENGTH ** 4) / (8 * MODULUS * INERTIA), 9);
});

test('vibrates lowest at (1.8751^2 / 2 pi) sqrt(E I / m L^4), the closed form of the uniform cantilever', () => {
  const { modes, completeTo } = naturalFrequencies(cantilever(), 'cold');
  const wanted =
    (1.87510407 ** 2 / (2 * Math.PI)) * Math.sqrt((MODULUS * INERTIA) / (LINE_MASS * LENGTH ** 4));
  expect((modes[0]?.frequency ?? 0) / wanted).toBeCloseTo(1, 3);
  expect(completeTo).toBe(modes.at(-1)?.frequency);
});

test('gives what was asked for: more frequencies up to a higher one', () => {
  const few = naturalFrequencies(cantilever(), 'cold');
  const more = naturalFrequencies(cantilever(), 'cold', { upTo: (few.modes.at(-1)?.frequency ?? 0) * 2 });
  expect(more.modes.length).toBeGreaterThan(few.modes.length);
});

test('the pipe carries the body at its end: its weight up, and its moment about the point', () => {
  const frame = cantilever(MASS);
  const where = { condition: 'cold', body: 'pump', point: 'tip' };
  const { force, moment } = wrenchOnBody(frame, solveFrame(frame), where);
  expect(force[2]).toBeCloseTo(MASS * GRAVITY, 6);
  // The body's weight W at +0.2 m east turns by r x F = (0, 0.2 W, 0); the pipe holds against it.
  expect(moment[1]).toBeCloseTo(-0.2 * MASS * GRAVITY, 6);
});

/** What an argument is refused with. */
function refusalOf(act: () => unknown): EngineError {
  try {
    act();
  } catch (error) {
    if (error instanceof EngineError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

const solvedOne = cantilever(MASS);
/** The frame with one part replaced by something a caller without types may write. */
const spoilt = (change: Record<string, unknown>): Frame => ({ ...solvedOne, ...change }) as unknown as Frame;
const notAFrame = (value: unknown) => value as Frame;

test.each<[string, string, () => unknown]>([
  ['nothing', 'frame', () => solveFrame(notAFrame(undefined))],
  ['a text', 'frame', () => solveFrame(notAFrame('frame'))],
  ['an empty object', 'frame.points', () => solveFrame(notAFrame({}))],
  ['points as a list', 'frame.points', () => solveFrame(spoilt({ points: [] }))],
  ['a point in the plane', 'frame.points.tip', () => solveFrame(spoilt({ points: { tip: [0, 1] } }))],
  [
    'a member without tube',
    'frame.members[0].tube',
    () => solveFrame(spoilt({ members: [{ ...solvedOne.members[0], tube: undefined }] })),
  ],
  [
    'a member of another kind',
    'frame.members[0].kind',
    () => solveFrame(spoilt({ members: [{ ...solvedOne.members[0], kind: 'beam' }] })),
  ],
  [
    'a support without direction',
    'frame.supports[0].restraints[0].direction',
    () => solveFrame(spoilt({ supports: [{ ...solvedOne.supports[0], restraints: [{}] }] })),
  ],
  [
    'a condition without loads',
    'frame.conditions[0].loads',
    () => solveFrame(spoilt({ conditions: [{ ...solvedOne.conditions[0], loads: undefined }] })),
  ],
  [
    'a load without moment',
    'frame.conditions[0].loads[0].wrench.moment',
    () =>
      solveFrame(
        spoilt({
          conditions: [
            { ...solvedOne.conditions[0], loads: [{ point: 'tip', wrench: { force: [0, 0, 0] } }] },
          ],
        }),
      ),
  ],
  [
    'no temperature',
    'frame.installationTemperature',
    () => solveFrame(spoilt({ installationTemperature: undefined })),
  ],
  ['a condition that is not there', 'condition', () => naturalFrequencies(solvedOne, 'hot')],
  ['a frequency below nothing', 'options.upTo', () => naturalFrequencies(solvedOne, 'cold', { upTo: -1 })],
  [
    'no response',
    'response',
    () => wrenchOnBody(solvedOne, undefined as never, { condition: 'cold', body: 'pump', point: 'tip' }),
  ],
  [
    'the response of another frame',
    'response.conditions',
    () =>
      wrenchOnBody(solvedOne, { conditions: {} } as never, { condition: 'cold', body: 'pump', point: 'tip' }),
  ],
  [
    'no names',
    'where.body',
    () => wrenchOnBody(solvedOne, solveFrame(solvedOne), { condition: 'cold' } as never),
  ],
])('%s is refused by the name of the argument: %s', (_, argument, act) => {
  const refusal = refusalOf(act);
  const { code, data } = refusal;
  expect(code).toBe('argument.wrong');
  expect(data.argument).toBe(argument);
  expect(data.wanted).not.toBe('');
  const words = printIssue({ ...refusal.told, severity: 'error' }).join('\n');
  expect(words).toContain(argument);
});

test('a body that has no such point is refused by the mechanics', () => {
  const where = { condition: 'cold', body: 'pump', point: 'wall' };
  expect(refusalOf(() => wrenchOnBody(solvedOne, solveFrame(solvedOne), where)).code).toBe(
    'mechanics.not-of-body',
  );
});

test('numbers that cannot be are refused by the mechanics', () => {
  const bad = spoilt({ materials: { steel: { modulus: -1, poisson: 0.3, expansion: [] } } });
  expect(refusalOf(() => solveFrame(bad)).code).toBe('mechanics.out-of-range');
});
