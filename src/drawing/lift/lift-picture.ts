/** The motor drawn and hanging: sling, hook, hoist and anchor, with the heights they take up. */
import { type Access, accessOf } from '../../checks/room/access-subject.js';
import { plus, sweepUp } from '../../geometry/index.js';
import type { Installation, UnitSystem } from '../../input/installation.js';
import type { Layout } from '../../model/layout/layout.js';
import type { LiftGeometry } from '../../model/room/lift-geometry.js';
import type { Drawing, Shape, Xy } from '../drawing.js';
import { footNote } from '../isometric/isometric.js';
import { NOTE_SIZE } from '../isometric/load-labels.js';
import { project } from '../isometric/projection.js';
import { line } from '../isometric/tube.js';
import { type Label, labelShapes } from '../labels/label.js';
import { placeLabels } from '../labels/label-placement.js';
import type { Capsule } from '../plane.js';
import { dimensionLabel, dimensionShapes, dimensionStroke } from '../room-views/dimension-line.js';
import { type DrawnSpace, drawnSpaces, spaceShapes, spaceStrokes } from '../room-views/service-outlines.js';
import { boxRound, outlinesOf, sharedOutline, windowOutline } from '../room-views/solid-outline.js';
import { liftDimensions } from './lift-dimensions.js';
import { type LiftFrame, liftFrame } from './lift-frame.js';

export interface LiftRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
}

/**
 * The lift to scale: motor in its seat in thin dashes, raised by the height to draw it, with sling, hook, hoist and
 * anchor over it, and what stands in its way hatched.
 *
 * @param request - installation, layout, units and size [1/72 in]
 * @returns drawing named `lift`
 */
export function liftDrawing(request: LiftRequest): Drawing {
  const { installation, units, width, height } = request;
  const access = accessOf(request);
  const frame = liftFrame(installation, request.layout, access, width, height);
  const dimensions = liftDimensions(access, frame, units);
  const spaces = drawnSpaces(
    [
      {
        purpose: 'motor withdrawal',
        name: 'motor withdrawal',
        solid: sweepUp(access.pump.motorWithBox, frame.raised),
        source: '',
      },
    ],
    access.obstacles,
    frame,
  );
  const labels = placeLabels({
    frame: frame.frame,
    labels: [...dimensions.map(dimensionLabel), ...nameLabels(access, frame, spaces)],
    obstacles: [...dimensions.map(dimensionStroke), ...spaceStrokes(spaces), ...columnStrokes(access, frame)],
    reserved: [],
  });
  const placed = labels.placed.map(labelShapes);
  const given = access.withdrawal !== undefined;
  const shapes: readonly Shape[] = [
    ...structureShapes(access, frame),
    ...pumpShapes(access, frame),
    ...raisedShapes(access, frame),
    ...spaceShapes(spaces),
    ...dimensions.flatMap(dimensionShapes),
    ...placed.flatMap((label) => label.leader),
    ...placed.flatMap((label) => label.plate),
    ...footNote(
      given
        ? 'To scale. Solid: motor drawn. Dashed: its seat and its way. A competent person chooses and checks anchor and rigging.'
        : 'To scale. The height to draw the motor is not given: it is shown raised by half its own height.',
      width,
      height,
    ),
  ];
  const words = dimensions.map((each) => each.words).join('; ');
  return {
    name: 'lift',
    width,
    height,
    title: `Lift of the motor of ${installation.pump.mark}`,
    alt: `Motor of pump ${installation.pump.mark} raised on its sling under the anchor. ${words}.`,
    shapes,
  };
}

const cut = (outline: readonly Xy[], { window }: LiftFrame): readonly (readonly Xy[])[] => {
  const part = sharedOutline(outline, windowOutline(window));
  return part === undefined ? [] : [part];
};

/** Motor and rigging over it, for labels to keep clear of. */
function columnStrokes({ pump, lift }: Access, frame: LiftFrame): readonly Capsule[] {
  const [east, north] = pump.motor.to;
  const at = (elevation: number): Xy => project(frame.projection, [east, north, elevation]);
  const radius = pump.motor.radius * frame.projection.scale;
  const body = {
    from: at(pump.motor.from[2] + frame.raised),
    to: at(pump.motor.to[2] + frame.raised),
    radius,
  };
  if (lift === undefined) return [body];
  return [
    body,
    { from: at(pump.eyes + frame.raised), to: project(frame.projection, lift.anchor), radius: 8 },
  ];
}

/** Ceiling and what stands near the plane of the lift. */
function structureShapes({ obstacles }: Access, frame: LiftFrame): readonly Shape[] {
  return obstacles
    .filter(({ name }) => frame.seen.has(name))
    .flatMap(({ solid, kind }) =>
      outlinesOf(solid, frame.projection)
        .flatMap((outline) => cut(outline, frame))
        .map((outline) => line(outline, 'fine', kind === 'ceiling' ? 'mid' : 'light', true, 'black')),
    );
}

function pumpShapes({ pump }: Access, frame: LiftFrame): readonly Shape[] {
  const solid = pump.stages.flatMap(({ part, ...stage }) => {
    const outlines = outlinesOf(stage, frame.projection).flatMap((outline) => cut(outline, frame));
    return outlines.map((outline) =>
      part === 'motor'
        ? line(outline, 'dashed', 'none', true, 'grey')
        : line(outline, 'medium', part === 'casing' ? 'light' : 'white', true),
    );
  });
  return solid;
}

/** Motor, sling, hook, hoist and anchor, motor drawn. */
function raisedShapes({ pump, lift }: Access, frame: LiftFrame): readonly Shape[] {
  const up = [0, 0, frame.raised] as const;
  const { motor, terminalBox } = pump;
  const body = [{ ...motor, from: plus(motor.from, up), to: plus(motor.to, up) }].flatMap((each) =>
    outlinesOf(each, frame.projection).map((outline) => line(outline, 'heavy', 'white', true)),
  );
  const box =
    terminalBox === undefined
      ? []
      : outlinesOf({ ...terminalBox, centre: plus(terminalBox.centre, up) }, frame.projection).map(
          (outline) => line(outline, 'medium', 'white', true),
        );
  return [...box, ...body, ...(lift === undefined ? [] : riggingShapes(lift, pump.eyes, frame))];
}

function riggingShapes(lift: LiftGeometry, eyesAt: number, frame: LiftFrame): readonly Shape[] {
  const { raised, projection } = frame;
  const anchor = project(projection, lift.anchor);
  const plate: Shape = line(
    [
      [anchor[0] - 7, anchor[1] - 3],
      [anchor[0] + 7, anchor[1] - 3],
      [anchor[0], anchor[1] + 6],
    ],
    'medium',
    'dark',
    true,
  );
  if (lift.slingHeight === undefined || lift.hookHeight === undefined) return [plate];
  const [east, north] = lift.eyes.reduce(
    ([x, y], eye) => [x + eye[0] / lift.eyes.length, y + eye[1] / lift.eyes.length],
    [0, 0],
  );
  const at = (height: number): Xy => project(projection, [east ?? 0, north ?? 0, eyesAt + raised + height]);
  const top = at(lift.slingHeight);
  const bearing = at(lift.hookHeight);
  const legs = lift.eyes.map((eye) =>
    line([project(projection, plus(eye, [0, 0, raised])), top], 'heavy', 'none', false),
  );
  const eyes = lift.eyes.map(
    (eye): Shape => ({
      kind: 'circle',
      centre: project(projection, plus(eye, [0, 0, raised])),
      radius: 2,
      stroke: 'medium',
      fill: 'white',
      ink: 'black',
    }),
  );
  const hook: readonly Shape[] = [
    line([top, bearing], 'medium'),
    { kind: 'circle', centre: bearing, radius: 3.2, stroke: 'medium', fill: 'white', ink: 'black' },
  ];
  if (lift.hoistHeight === undefined) return [plate, ...legs, ...eyes, ...hook];
  const drawnUp = project(projection, plus(lift.anchor, [0, 0, -lift.hoistHeight]));
  const half = 6;
  const hoist = line(
    [
      [anchor[0] - half, anchor[1] + 5],
      [anchor[0] + half, anchor[1] + 5],
      [anchor[0] + half * 0.7, drawnUp[1] - 3],
      [anchor[0] - half * 0.7, drawnUp[1] - 3],
    ],
    'medium',
    'mid',
    true,
  );
  return [line([drawnUp, bearing], 'fine'), hoist, plate, ...legs, ...eyes, ...hook];
}

function nameLabels(
  { pump, lift, obstacles }: Access,
  frame: LiftFrame,
  spaces: readonly DrawnSpace[],
): readonly Label[] {
  const struck = new Set(spaces.flatMap(({ intrusions }) => intrusions.map(({ name }) => name)));
  const note = (name: string, anchor: Xy, reach: number, priority: number): Label => ({
    name,
    rows: [
      {
        text: struck.has(name) ? `${name} in the way` : name,
        size: NOTE_SIZE,
        weight: struck.has(name) ? 'bold' : 'regular',
        ink: struck.has(name) ? 'accent' : 'black',
      },
    ],
    anchor,
    reach,
    priority,
    framed: false,
  });
  const raised = project(frame.projection, plus(pump.motor.to, [0, 0, frame.raised]));
  const things = obstacles
    .filter(({ name }) => frame.seen.has(name))
    .flatMap(({ name, solid }): readonly Label[] => {
      const outlines = outlinesOf(solid, frame.projection).flatMap((outline) => cut(outline, frame));
      if (outlines.length === 0) return [];
      const box = boxRound(outlines.flat());
      const middle: Xy = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
      return [note(name, middle, 4, struck.has(name) ? 8 : 4)];
    });
  const beside = pump.motor.radius * frame.projection.scale;
  const motor = note('motor, drawn', [raised[0] + beside, raised[1] + 12], 2, 7);
  if (lift === undefined) return [motor, ...things];
  return [motor, note('anchor', project(frame.projection, lift.anchor), 8, 6), ...things];
}
