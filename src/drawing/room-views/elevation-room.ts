/** Floor, ceiling and what stands in the room, from the side. */
import type { Installation } from '../../input/installation.js';
import { clippedBox } from '../clip.js';
import type { Shape, Xy } from '../drawing.js';
import { project } from '../isometric/projection.js';
import { line } from '../isometric/tube.js';
import type { Capsule } from '../plane.js';
import { type ElevationFrame, overPump, seenObjects } from './elevation-frame.js';

/** Place over or beside the middle of the pump. @param installation - pump [m] @param elevation - frame of the elevation @param at - elevation [m] @param x - how far beside the middle [1/72 in] @returns place on paper [-] */
export function placeAt(installation: Installation, elevation: ElevationFrame, at: number, x: number): Xy {
  const p = project(elevation.projection, overPump(installation, at));
  return [p[0] + x, p[1]];
}

/**
 * Height the motor needs over itself: dashed box; open at the top where the height is not given.
 *
 * @param installation - pump [m]
 * @param elevation - frame of the elevation
 * @returns shapes
 */
export function withdrawalBox(installation: Installation, elevation: ElevationFrame): readonly Shape[] {
  const { outline } = installation.pump;
  const half = (outline.motorDiameter.value / 2) * elevation.projection.scale;
  const foot = placeAt(installation, elevation, elevation.motorTop, 0);
  const top = placeAt(
    installation,
    elevation,
    elevation.motorTop + (outline.withdrawal?.value ?? 0.5 * outline.motorTop.value),
    0,
  );
  const high = Math.max(elevation.window.top, top[1]);
  const points: readonly Xy[] = [
    [foot[0] - half, foot[1]],
    [foot[0] - half, high],
    [foot[0] + half, high],
    [foot[0] + half, foot[1]],
  ];
  if (outline.withdrawal !== undefined) return [line(points, 'dashed')];
  return [
    line([points[0] as Xy, points[1] as Xy], 'dashed'),
    line([points[3] as Xy, points[2] as Xy], 'dashed'),
  ];
}

/**
 * Floor, ceiling and things of the room; what is not given is dashed.
 *
 * @param installation - room [m]
 * @param elevation - frame of the elevation
 * @returns shapes
 */
export function roomShapes(installation: Installation, elevation: ElevationFrame): readonly Shape[] {
  const { window, floor, ceiling } = elevation;
  const level = (y: number, given: boolean, away: number): readonly Shape[] => {
    const edge = line(
      [
        [window.left, y],
        [window.right, y],
      ],
      given ? 'heavy' : 'dashed',
    );
    if (!given) return [edge];
    const count = Math.floor((window.right - window.left) / 12);
    return [
      edge,
      ...Array.from(
        { length: count },
        (_, i): Shape =>
          line(
            [
              [window.left + 4 + i * 12, y],
              [window.left + 4 + i * 12 + 5, y + away * 6],
            ],
            'fine',
          ),
      ),
    ];
  };
  const objects = seenObjects(installation, elevation).flatMap((object): readonly Shape[] => {
    const cut = clippedBox(object.box, window);
    if (cut === undefined) return [];
    const corners: readonly Xy[] = [
      [cut.left, cut.top],
      [cut.right, cut.top],
      [cut.right, cut.bottom],
      [cut.left, cut.bottom],
    ];
    return [
      line(
        corners,
        object.overMotor ? 'medium' : 'fine',
        object.overMotor ? 'mid' : 'light',
        true,
        object.overMotor ? 'black' : 'grey',
      ),
    ];
  });
  return [...level(window.bottom, floor.given, 1), ...level(window.top, ceiling.given, -1), ...objects];
}

/** Things of the room, for labels to keep clear of. @param installation - room [m] @param elevation - frame of the elevation @returns strokes on paper */
export function objectObstacles(installation: Installation, elevation: ElevationFrame): readonly Capsule[] {
  return seenObjects(installation, elevation).flatMap((object) => {
    const cut = clippedBox(object.box, elevation.window);
    if (cut === undefined) return [];
    const [wide, high] = [cut.right - cut.left, cut.bottom - cut.top];
    const radius = Math.min(wide, high) / 2;
    const [x, y] = [(cut.left + cut.right) / 2, (cut.top + cut.bottom) / 2];
    const [dx, dy] = wide > high ? [wide / 2 - radius, 0] : [0, high / 2 - radius];
    return [{ from: [x - dx, y - dy] as const, to: [x + dx, y + dy] as const, radius }];
  });
}
