// What is said when joints or rods find no rest. Frames that do so are not known, so the stiffness is made to disagree.
import { expect, test } from 'vitest';
import { contactsOf } from '../../src/mechanics/contact/contact.js';
import { iterateFrame } from '../../src/mechanics/contact/iterate-frame.js';
import { jointPlays } from '../../src/mechanics/contact/joint-play.js';
import { conditionLoads } from '../../src/mechanics/frame/condition-loads.js';
import { type PreparedFrame, prepareFrame } from '../../src/mechanics/frame/prepare-frame.js';
import { buildSystem } from '../../src/mechanics/frame/system/build-system.js';
import { joinClusters } from '../../src/mechanics/frame/system/cluster.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { errorOf } from './error-of.js';
import { anchor, condition, force, frame, restraint, runThrough, support } from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const UP: Vec3 = [0, 0, 1];

/** Settles the first condition of a frame on a stiffness that `standing` gives for each round. */
function settle(parts: Partial<Frame>, standing: (prepared: PreparedFrame, round: number) => PreparedFrame) {
  const built = frame(parts);
  const acting = built.conditions[0] ?? condition();
  const prepared = prepareFrame(built);
  const clusters = joinClusters(prepared, acting);
  let round = 0;
  return iterateFrame({
    prepared,
    contacts: contactsOf(prepared, clusters, acting),
    plays: jointPlays(prepared, clusters),
    loads: conditionLoads(prepared, clusters, acting),
    systemFor: (activeRestraints) => buildSystem(standing(prepared, round++), clusters, activeRestraints),
  });
}

test('rods that never hold although they engage are refused by name', () => {
  const rigid = Number.POSITIVE_INFINITY;
  const joint = {
    name: 'connector',
    from: 'a',
    to: 'b',
    axis: EAST,
    axial: 1e5,
    lateral: rigid,
    torsion: rigid,
    bending: rigid,
    thrustArea: 0,
    mass: 0,
    rodGap: 0.001,
  };
  const error = errorOf(() =>
    settle(
      {
        points: { a: [0, 0, 0], b: [0.2, 0, 0] },
        bodies: [{ name: 'block', points: ['b'], masses: [] }],
        joints: [joint],
        supports: [anchor('A', 'a')],
        conditions: [condition({ loads: [force('b', [5000, 0, 0])] })],
      },
      (prepared) => prepared,
    ),
  );
  expect(error.code).toBe('mechanics.joint-alternates');
  expect(error.data).toEqual({ condition: 'test', joints: ['connector'], rounds: 70 });
});

test('a rod whose load is another one every round is refused by name', () => {
  const error = errorOf(() =>
    settle(
      {
        ...runThrough([
          [0, 0, 0],
          [3, 0, 0],
        ]),
        supports: [
          anchor('A', 'a'),
          support('H', 'b', [restraint(UP, { sense: 'push', stiffness: 1e5, swingLength: 1 })]),
        ],
        conditions: [condition({ loads: [force('b', [0, 0, -5000])] })],
      },
      (prepared, round) => ({
        ...prepared,
        stiffness: prepared.stiffness.map((value) => value * (1 + 0.1 * (round % 7))),
      }),
    ),
  );
  expect(error.code).toBe('mechanics.swing-unsettled');
  expect(error.data).toEqual({ condition: 'test', supports: ['H'], rounds: 60 });
});
