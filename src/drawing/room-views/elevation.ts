/** Pump from the side with floor, ceiling and what stands in the way of drawing the motor. */

import { accessOf } from '../../checks/room/access-subject.js';
import { accessVolumes } from '../../checks/room/access-volumes.js';
import type { Installation, UnitSystem } from '../../input/installation.js';
import type { Layout } from '../../model/layout/layout.js';
import type { PumpSolids } from '../../model/room/pump-solids.js';
import { clippedBox } from '../clip.js';
import type { Drawing, Ink, Shape, Xy } from '../drawing.js';
import { elevationFittings } from '../isometric/fitting-pieces.js';
import { footNote } from '../isometric/isometric.js';
import { MARK_SIZE, NOTE_SIZE } from '../isometric/load-labels.js';
import { project } from '../isometric/projection.js';
import { line } from '../isometric/tube.js';
import { type Label, labelShapes } from '../labels/label.js';
import { placeLabels } from '../labels/label-placement.js';
import type { Capsule } from '../plane.js';
import { type ElevationFrame, elevationFrame, seenObjects } from './elevation-frame.js';
import { type Measure, measureEnds, measureShapes, measuresOf } from './elevation-measures.js';
import { elevationPipeObstacles, elevationPipes, elevationPump } from './elevation-pipes.js';
import { objectObstacles, placeAt, roomShapes, withdrawalBox } from './elevation-room.js';
import { drawnSpaces, spaceLabels, spaceShapes, spaceStrokes } from './service-outlines.js';
import { outlinesOf } from './solid-outline.js';

export interface ElevationRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
}

/**
 * Side view to scale: pump and first pipes, floor, ceiling, things of the room near the pump, the height needed to
 * draw the motor and the height that is clear. What is not given is drawn dashed and says so.
 *
 * @param request - installation, layout, units and size [1/72 in]
 * @returns drawing named `elevation`
 */
export function elevationDrawing(request: ElevationRequest): Drawing {
  const { installation, layout, width, height } = request;
  const elevation = elevationFrame(installation, layout, width, height);
  const measures = measuresOf(installation, request.units, elevation);
  const access = accessOf(request);
  const volumes = accessVolumes(request).filter(({ purpose }) => !FROM_ABOVE.includes(purpose));
  const spaces = drawnSpaces(volumes, access.obstacles, elevation);
  const labels = placeLabels({
    frame: elevation.frame,
    labels: [...allLabels(request, elevation, measures), ...spaceLabels(spaces)],
    obstacles: [
      ...obstacles(elevation, measures),
      ...spaceStrokes(spaces),
      ...objectObstacles(installation, elevation),
      ...elevationPipeObstacles(layout, elevation),
    ],
    reserved: [],
  });
  const placed = labels.placed.map(labelShapes);
  const shapes: readonly Shape[] = [
    ...roomShapes(installation, elevation),
    ...withdrawalBox(installation, elevation),
    ...elevationPipes(installation, layout, elevation),
    ...elevationPump(layout, elevation),
    ...terminalBoxShapes(access.pump, elevation),
    ...elevationFittings(layout, elevation),
    ...spaceShapes(spaces),
    ...measures.flatMap((m) => measureShapes(m, elevation)),
    ...placed.flatMap((l) => l.leader),
    ...placed.flatMap((l) => l.plate),
    ...footNote(
      'To scale, from the side with the discharge to the right. Dashed: spaces to be kept free. Hatched: what reaches into them.',
      width,
      height,
    ),
  ];
  const struck = spaces.filter(({ intrusions }) => intrusions.length > 0);
  const words = [
    ...measures.map((m) => m.words),
    ...struck.map(({ volume, intrusions }) => `${intrusions[0]?.name ?? ''} reaches into ${volume.name}`),
    ...notGiven(installation),
  ];
  const alt = `Side view of pump ${installation.pump.mark} with its first pipes. ${words.join('; ')}.`;
  return {
    name: 'elevation',
    width,
    height,
    title: `${installation.pump.mark} from the side, with room to draw the motor`,
    alt,
    shapes,
  };
}

/** Spaces that a plan shows and a side view does not. */
const FROM_ABOVE: readonly string[] = ['aisle', 'working space'];

function terminalBoxShapes({ terminalBox }: PumpSolids, elevation: ElevationFrame): readonly Shape[] {
  if (terminalBox === undefined) return [];
  return outlinesOf(terminalBox, elevation.projection).map((outline) => line(outline, 'fine', 'white', true));
}

function notGiven(installation: Installation): readonly string[] {
  const { room, pump } = installation;
  return [
    ...(room.floor === undefined ? ['floor not given'] : []),
    ...(room.ceiling === undefined ? ['ceiling not given'] : []),
    ...(pump.outline.withdrawal === undefined ? ['height to draw the motor not given'] : []),
  ];
}

function allLabels(
  request: ElevationRequest,
  elevation: ElevationFrame,
  measures: readonly Measure[],
): readonly Label[] {
  const { installation } = request;
  const { window } = elevation;
  const plain = (
    name: string,
    words: string,
    anchor: Xy,
    priority: number,
    ink: Ink = 'black',
    reach = 5,
  ): Label => ({
    name,
    rows: [{ text: words, size: NOTE_SIZE, weight: ink === 'accent' ? 'bold' : 'regular', ink }],
    anchor,
    reach,
    priority,
    framed: false,
  });
  const labels: Label[] = measures.map((m) => {
    const [low, high] = measureEnds(m, elevation);
    return plain(m.name, m.words, [low[0], (low[1] + high[1]) / 2], 8, m.ink);
  });
  labels.push(
    plain('floor', elevation.floor.given ? 'floor' : 'floor not given', [window.left + 12, window.bottom], 6),
    plain(
      'ceiling',
      elevation.ceiling.given ? 'ceiling' : 'ceiling not given',
      [window.right - 12, window.top],
      6,
    ),
  );
  if (installation.pump.outline.withdrawal === undefined)
    labels.push(
      plain(
        'withdrawal',
        'height to draw the motor not given',
        placeAt(
          installation,
          elevation,
          elevation.motorTop + 0.25 * installation.pump.outline.motorTop.value,
          0,
        ),
        7,
        'black',
        12,
      ),
    );
  for (const object of seenObjects(installation, elevation)) {
    const cut = clippedBox(object.box, window);
    if (cut !== undefined)
      labels.push(
        plain(
          object.name,
          object.name,
          [(cut.left + cut.right) / 2, (cut.top + cut.bottom) / 2],
          4,
          'black',
          Math.min(8, (cut.bottom - cut.top) / 2 + 2),
        ),
      );
  }
  const motor = elevation.cylinders.at(-1);
  const middle = motor === undefined ? elevation.motorTop : (motor.low[2] + motor.high[2]) / 2;
  labels.push({
    name: installation.pump.mark,
    rows: [{ text: installation.pump.mark, size: MARK_SIZE, weight: 'bold', ink: 'black' }],
    anchor: placeAt(installation, elevation, middle, 0),
    reach: 0,
    priority: 9,
    framed: true,
  });
  return labels;
}

function obstacles(elevation: ElevationFrame, measures: readonly Measure[]): readonly Capsule[] {
  const { window, projection, cylinders } = elevation;
  const bodies = cylinders.map(
    (c): Capsule => ({
      from: project(projection, c.low),
      to: project(projection, c.high),
      radius: c.radius * projection.scale,
    }),
  );
  const levels = [window.top, window.bottom].map(
    (y): Capsule => ({ from: [window.left, y], to: [window.right, y], radius: 1 }),
  );
  const dimensions = measures.map((m): Capsule => {
    const [from, to] = measureEnds(m, elevation);
    return { from, to, radius: 2 };
  });
  return [...bodies, ...levels, ...dimensions];
}
