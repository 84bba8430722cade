import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { connectorEffects } from '../../src/mechanics/what-ifs/connector-effect.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameJoint } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import { anchor, condition, frame, INCH, POUND_FORCE, PSI, restraint, support } from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const RIGID = Number.POSITIVE_INFINITY;
// NPS 6, effective diameter 7.5 in at 125 psi: π/4 × 7.5² × 125 = 5522 lb.
const area = (Math.PI / 4) * (7.5 * INCH) ** 2;
const pressure = 125 * PSI;
const thrust = pressure * area;

// The pump stands on a spring along the pipe, the far side of the connector is anchored.
const mount = 4e6;
const own = 6e5;
const standing = (changes: Partial<FrameJoint>): Frame =>
  frame({
    points: { face: [0, 0, 0], foot: [-0.5, 0, 0], far: [0.2, 0, 0] },
    bodies: [{ name: 'pump', points: ['face', 'foot'], masses: [] }],
    joints: [
      {
        name: 'connector',
        from: 'face',
        to: 'far',
        axis: EAST,
        axial: own,
        lateral: RIGID,
        torsion: RIGID,
        bending: RIGID,
        thrustArea: area,
        mass: 0,
        ...changes,
      },
    ],
    supports: [anchor('A', 'far'), support('S', 'foot', [restraint(EAST, { stiffness: mount })])],
    conditions: [
      condition({ name: 'filled', pressure }),
      condition({ name: 'test', pressure: 1.5 * pressure }),
    ],
  });

const effects = (changes: Partial<FrameJoint> = {}, isTied = false) => {
  const built = standing(changes);
  return connectorEffects(
    built,
    solveFrame(built),
    { joint: 'connector', thrustArea: area, isTied },
    [{ name: 'nozzle', body: 'pump', point: 'face', axis: EAST }],
    ['filled', 'test'],
  );
};

describe('a connector beside a pump', () => {
  test('without rods pushes the pump with all that its own rate leaves of the thrust', () => {
    const [filled, tested] = effects();
    expect(relativeError(filled?.thrust ?? 0, 5522 * POUND_FORCE)).toBeLessThan(1e-4);
    // The pump moves by x:  (mount + own) x = thrust,  so that it feels mount × x.
    const push = (thrust * mount) / (mount + own);
    expect(relativeError(-(filled?.faces[0]?.axialForce ?? 0), push)).toBeLessThan(1e-10);
    expect(filled?.faces[0]?.without).toBeCloseTo(0, 6);
    expect(relativeError(filled?.lengthening ?? 0, thrust / (mount + own))).toBeLessThan(1e-10);
    expect(filled).toMatchObject({ rods: 'none', rodTension: 0 });
    expect(relativeError(filled?.unheld ?? 0, thrust)).toBeLessThan(1e-12);
    expect(relativeError(tested?.thrust ?? 0, 1.5 * thrust)).toBeLessThan(1e-12);
  });

  test('with rods that hold from the start the pump feels nothing of it, and the rods all', () => {
    const [filled] = effects({ axial: RIGID, thrustArea: 0 }, true);
    expect(filled?.faces[0]?.axialForce).toBeCloseTo(0, 6);
    expect(filled).toMatchObject({ rods: 'tied', unheld: 0 });
    expect(relativeError(filled?.rodTension ?? 0, thrust)).toBeLessThan(1e-12);
  });

  test('with rods that have a gap the pump is pushed until they engage', () => {
    const gap = 0.004;
    const [filled] = effects({ rodGap: gap });
    expect(filled?.rods).toBe('engaged');
    const tension = thrust - (mount + own) * gap;
    expect(relativeError(filled?.rodTension ?? 0, tension)).toBeLessThan(1e-9);
    expect(relativeError(-(filled?.faces[0]?.axialForce ?? 0), mount * gap)).toBeLessThan(1e-9);
    expect(relativeError(filled?.unheld ?? 0, (mount + own) * gap)).toBeLessThan(1e-9);
  });

  test('a joint that is not there does nothing', () => {
    const built = standing({});
    const asked = { joint: 'another', thrustArea: area, isTied: false };
    expect(connectorEffects(built, solveFrame(built), asked, [], ['filled'])).toEqual([]);
  });
});
