/** Service spaces as dashed outlines with their purpose, and what reaches into them, hatched. */
import { boundingBox, distanceBetween, type Box as SolidBox } from '../../geometry/index.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import type { ServiceVolume } from '../../model/room/service-spaces.js';
import type { Shape, Xy } from '../drawing.js';
import { NOTE_SIZE } from '../isometric/load-labels.js';
import type { Projection } from '../isometric/projection.js';
import { line } from '../isometric/tube.js';
import type { Label } from '../labels/label.js';
import type { Box, Capsule } from '../plane.js';
import { boxRound, outlinesOf, sharedOutline, windowOutline } from './solid-outline.js';

/** Deeper than this is more than touching [m]. */
const MORE_THAN_TOUCHING = 1e-4;

/** A picture that spaces are drawn into. */
export interface SpacePicture {
  readonly projection: Projection;
  readonly window: Box;
}

/** A space of the picture: its outlines, and those of what reaches into it. */
export interface DrawnSpace {
  readonly volume: ServiceVolume;
  readonly outlines: readonly (readonly Xy[])[];
  readonly intrusions: readonly { readonly name: string; readonly outline: readonly Xy[] }[];
}

/**
 * Spaces as they fall on a picture.
 *
 * @param volumes - spaces [m]
 * @param obstacles - what may reach into them [m]
 * @param picture - projection and window
 * @returns outlines cut to the window; spaces outside it are left out
 */
export function drawnSpaces(
  volumes: readonly ServiceVolume[],
  obstacles: readonly Obstacle[],
  { projection, window }: SpacePicture,
): readonly DrawnSpace[] {
  const frame = windowOutline(window);
  const cut = (outline: readonly Xy[]): readonly (readonly Xy[])[] => {
    const part = sharedOutline(outline, frame);
    return part === undefined ? [] : [part];
  };
  return volumes.flatMap((volume): readonly DrawnSpace[] => {
    const outlines = outlinesOf(volume.solid, projection).flatMap(cut);
    if (outlines.length === 0) return [];
    const box = boundingBox(volume.solid);
    const intruders = obstacles.filter(
      (obstacle) =>
        obstacle.kind !== 'floor' &&
        !(volume.part !== undefined && obstacle.parts.includes(volume.part)) &&
        // Most things stand elsewhere: their boxes say so at once.
        boxesMeet(box, obstacle.box) &&
        distanceBetween(volume.solid, obstacle.solid).depth > MORE_THAN_TOUCHING,
    );
    const intrusions = intruders.flatMap(({ name, solid }) =>
      outlinesOf(solid, projection).flatMap((outline) =>
        outlines.flatMap((space) => {
          const shared = sharedOutline(outline, space);
          const inside = shared && sharedOutline(shared, frame);
          return inside === undefined ? [] : [{ name, outline: inside }];
        }),
      ),
    );
    return [{ volume, outlines, intrusions }];
  });
}

function boxesMeet(a: SolidBox, b: SolidBox): boolean {
  return ([0, 1, 2] as const).every((axis) => a.low[axis] <= b.high[axis] && b.low[axis] <= a.high[axis]);
}

/**
 * Dashed outlines of spaces, and hatching where something reaches into them.
 *
 * @param spaces - as `drawnSpaces` gives them
 * @returns shapes, hatching last
 */
export function spaceShapes(spaces: readonly DrawnSpace[]): readonly Shape[] {
  return [
    ...spaces.flatMap(({ outlines }) => outlines.map((outline) => line(outline, 'dashed', 'none', true))),
    ...spaces.flatMap(({ intrusions }) =>
      intrusions.map(({ outline }) => line(outline, 'medium', 'hatch', true, 'accent')),
    ),
  ];
}

/**
 * Labels with the purpose of each space.
 *
 * @param spaces - as `drawnSpaces` gives them
 * @returns labels, anchored at the middle of the edge of each space that lies farthest out
 */
export function spaceLabels(spaces: readonly DrawnSpace[]): readonly Label[] {
  return spaces.map(({ volume, outlines, intrusions }): Label => {
    const box = boxRound(outlines.flat());
    const struck = intrusions.length > 0;
    return {
      name: volume.name,
      rows: [
        {
          text: volume.name,
          size: NOTE_SIZE,
          weight: struck ? 'bold' : 'regular',
          ink: struck ? 'accent' : 'black',
        },
      ],
      anchor: [(box.left + box.right) / 2, box.top + Math.min(4, (box.bottom - box.top) / 2)],
      reach: 3,
      priority: struck ? 8 : 5,
      framed: false,
    };
  });
}

/**
 * Outlines of spaces as strokes for labels to keep clear of.
 *
 * @param spaces - as `drawnSpaces` gives them
 * @returns strokes on paper
 */
export function spaceStrokes(spaces: readonly DrawnSpace[]): readonly Capsule[] {
  return spaces.flatMap(({ outlines }) =>
    outlines.flatMap((outline) =>
      outline.map(
        (from, index): Capsule => ({
          from,
          to: outline[(index + 1) % outline.length] ?? from,
          radius: 0.5,
        }),
      ),
    ),
  );
}
