/** Pump from the side with floor, ceiling and what stands in the way of drawing the motor. */
import type { Installation, Sourced, UnitSystem } from '../input/installation.js';
import type { Layout } from '../model/layout.js';
import { formatQuantity } from '../units/index.js';
import { clippedBox } from './clip.js';
import type { Drawing, Ink, Shape, Xy } from './drawing.js';
import { type ElevationFrame, elevationFrame, overPump, seenObjects } from './elevation-frame.js';
import { elevationPipeObstacles, elevationPipes, elevationPump } from './elevation-pipes.js';
import { footNote } from './isometric.js';
import { type Label, labelShapes } from './label.js';
import { placeLabels } from './label-placement.js';
import { MARK_SIZE, NOTE_SIZE } from './load-labels.js';
import { arrowHead } from './part-symbols.js';
import type { Capsule } from './plane.js';
import { project } from './projection.js';
import { line } from './tube.js';

export interface ElevationRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
}

/** A measure between two elevations. */
interface Measure {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** Place across the paper, from the middle of the pump [1/72 in]. */
  readonly x: number;
  /** How near to the middle of the pump its witness lines come [1/72 in]. */
  readonly reach: number;
  readonly words: string;
  readonly ink: Ink;
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
  const measures = measuresOf(request, elevation);
  const labels = placeLabels({
    frame: elevation.frame,
    labels: allLabels(request, elevation, measures),
    obstacles: [
      ...obstacles(elevation, measures),
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
    ...measures.flatMap((m) => measureShapes(m, elevation)),
    ...placed.flatMap((l) => l.leader),
    ...placed.flatMap((l) => l.plate),
    ...footNote(
      'To scale, from the side with the discharge to the right. The height to draw the motor takes no account of lifting gear.',
      width,
      height,
    ),
  ];
  const words = [...measures.map((m) => m.words), ...notGiven(installation)];
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

const assumed = (value: Sourced): string => (value.origin.kind === 'assumed' ? ' (assumed)' : '');

function notGiven(installation: Installation): readonly string[] {
  const { room, pump } = installation;
  return [
    ...(room.floor === undefined ? ['floor not given'] : []),
    ...(room.ceiling === undefined ? ['ceiling not given'] : []),
    ...(pump.outline.withdrawal === undefined ? ['height to draw the motor not given'] : []),
  ];
}

function measuresOf(request: ElevationRequest, elevation: ElevationFrame): readonly Measure[] {
  const { installation, units } = request;
  const { outline, position } = installation.pump;
  const print = (metres: number) => formatQuantity(metres, 'length', units, { feetInches: true });
  const half = (Math.max(outline.motorDiameter.value, 0.1) / 2) * elevation.projection.scale;
  const far = (elevation.window.right - elevation.window.left) / 2 - 10;
  const lowest = elevation.overhead[0];
  const needed = outline.withdrawal;
  const found: Measure[] = [];
  if (needed !== undefined)
    found.push({
      name: 'needed',
      low: elevation.motorTop,
      high: elevation.motorTop + needed.value,
      x: half + 9,
      reach: half + 9,
      words: `needed to draw the motor ${print(needed.value)}${assumed(needed)}`,
      ink: 'black',
    });
  if (lowest !== undefined) {
    const clear = lowest.at - elevation.motorTop;
    const short =
      needed !== undefined && clear < needed.value ? `, short by ${print(needed.value - clear)}` : '';
    const clash =
      clear <= 0
        ? `${lowest.name} reaches ${print(-clear)} under the motor top`
        : `clear ${print(clear)} to ${lowest.name}${short}`;
    found.push({
      name: 'clear',
      low: elevation.motorTop,
      high: lowest.at,
      x: -half - 9,
      reach: half + 9,
      words: clash,
      ink: short !== '' || clear <= 0 ? 'accent' : 'black',
    });
  }
  found.push({
    name: 'motor top',
    low: position[2],
    high: elevation.motorTop,
    x: far,
    reach: half,
    words: `motor top ${print(outline.motorTop.value)} over port centre${assumed(outline.motorTop)}`,
    ink: 'black',
  });
  if (elevation.floor.given && installation.room.floor !== undefined)
    found.push({
      name: 'port',
      low: installation.room.floor,
      high: position[2],
      x: -far,
      reach: 0,
      words: `port centre ${print(position[2] - installation.room.floor)} over floor`,
      ink: 'black',
    });
  return found;
}

function placeAt(
  request: { readonly installation: Installation },
  elevation: ElevationFrame,
  at: number,
  x: number,
): Xy {
  const p = project(elevation.projection, overPump(request.installation, at));
  return [p[0] + x, p[1]];
}

function measureEnds(measure: Measure, elevation: ElevationFrame): readonly [Xy, Xy] {
  const { projection, window, floor } = elevation;
  const y = (at: number) => window.bottom - (at - floor.at) * projection.scale;
  const x = (window.left + window.right) / 2 + measure.x;
  return [
    [x, y(measure.low)],
    [x, y(measure.high)],
  ];
}

function measureShapes(measure: Measure, elevation: ElevationFrame): readonly Shape[] {
  const [low, high] = measureEnds(measure, elevation);
  if (Math.abs(low[1] - high[1]) < 0.5) return [];
  const head = Math.min(4.5, Math.abs(low[1] - high[1]) / 2);
  const tick = (p: Xy): Shape =>
    line(
      [
        [p[0] - 4, p[1]],
        [p[0] + 4, p[1]],
      ],
      'fine',
      'none',
      false,
      measure.ink,
    );
  const centre = (elevation.window.left + elevation.window.right) / 2;
  const inward = centre + Math.sign(low[0] - centre) * Math.min(Math.abs(measure.x), measure.reach);
  const witness = [low, high]
    .filter((p) => p[1] < elevation.window.bottom - 1)
    .map(
      (p): Shape =>
        line(
          [
            [p[0], p[1]],
            [inward, p[1]],
          ],
          'dotted',
          'none',
          false,
          'grey',
        ),
    );
  return [
    ...(Math.abs(inward - low[0]) > 12 ? witness : []),
    line([low, high], 'fine', 'none', false, measure.ink),
    arrowHead(low, high, head, measure.ink),
    arrowHead(high, low, head, measure.ink),
    tick(low),
    tick(high),
  ];
}

/** Height the motor needs over itself: dashed box; open at the top where the height is not given. */
function withdrawalBox(installation: Installation, elevation: ElevationFrame): readonly Shape[] {
  const { outline } = installation.pump;
  const half = (outline.motorDiameter.value / 2) * elevation.projection.scale;
  const foot = placeAt({ installation }, elevation, elevation.motorTop, 0);
  const top = placeAt(
    { installation },
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

function roomShapes(installation: Installation, elevation: ElevationFrame): readonly Shape[] {
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
        placeAt(request, elevation, elevation.motorTop + 0.25 * installation.pump.outline.motorTop.value, 0),
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
    anchor: placeAt(request, elevation, middle, 0),
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

function objectObstacles(installation: Installation, elevation: ElevationFrame): readonly Capsule[] {
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
