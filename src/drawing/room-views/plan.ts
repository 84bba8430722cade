/** The pump from above, with walls, way out, service spaces and what reaches into them. */
import { accessOf } from '../../checks/room/access-subject.js';
import { accessVolumes, routeOut } from '../../checks/room/access-volumes.js';
import type { Installation, UnitSystem } from '../../input/installation.js';
import type { Layout } from '../../model/layout/layout.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import { clippedSegment } from '../clip.js';
import type { Drawing, Shape, Xy } from '../drawing.js';
import { footNote } from '../isometric/isometric.js';
import { MARK_SIZE, NOTE_SIZE } from '../isometric/load-labels.js';
import { NORTH_ARROW_ROOM, northArrow } from '../isometric/north-arrow.js';
import { project } from '../isometric/projection.js';
import { line } from '../isometric/tube.js';
import { type Label, labelShapes } from '../labels/label.js';
import { placeLabels } from '../labels/label-placement.js';
import type { Capsule } from '../plane.js';
import { dimensionLabel, dimensionShapes, dimensionStroke } from './dimension-line.js';
import { planDimensions } from './plan-dimensions.js';
import { type PlanFrame, planFrame } from './plan-frame.js';
import { drawnSpaces, spaceLabels, spaceShapes, spaceStrokes } from './service-outlines.js';
import { boxRound, outlinesOf, sharedOutline, windowOutline } from './solid-outline.js';

export interface PlanRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
}

/**
 * Plan to scale: the pump, its pipes, walls and things of the room, spaces to be kept free, the way out and the anchor
 * of the lift. What hangs over head height is drawn in dash-dot.
 *
 * @param request - installation, layout, units and size [1/72 in]
 * @returns drawing named `plan`
 */
export function planDrawing(request: PlanRequest): Drawing {
  const { installation, width, height } = request;
  const access = accessOf(request);
  const volumes = accessVolumes(request).filter(({ purpose }) => purpose !== 'motor withdrawal');
  const plan = planFrame(installation, volumes, width, height);
  // From above everything overlaps everything: only what reaches into a space in truth is hatched.
  const spaces = drawnSpaces(volumes, access.obstacles, plan);
  const dimensions = planDimensions(installation, plan, request.units);
  const things = access.obstacles.filter(({ kind }) => kind === 'object');
  const arrow: Xy = [plan.window.right - NORTH_ARROW_ROOM / 2, plan.window.top + NORTH_ARROW_ROOM / 2];
  const half = NORTH_ARROW_ROOM / 2;
  const labels = placeLabels({
    frame: plan.frame,
    labels: [
      ...spaceLabels(spaces),
      ...dimensions.map(dimensionLabel),
      ...thingLabels(things, plan),
      pumpLabel(installation, plan),
      ...wayLabels(installation, plan),
    ],
    obstacles: [...dimensions.map(dimensionStroke), ...spaceStrokes(spaces), ...pumpStrokes(request, plan)],
    reserved: [
      { left: arrow[0] - half, right: arrow[0] + half, top: arrow[1] - half, bottom: arrow[1] + half },
    ],
  });
  const placed = labels.placed.map(labelShapes);
  const shapes: readonly Shape[] = [
    ...things.flatMap((thing) => thingShapes(thing, installation, plan)),
    ...access.obstacles.filter(({ kind }) => kind === 'line').flatMap((pipe) => pipeShapes(pipe, plan)),
    ...pumpShapes(request, plan),
    ...spaceShapes(spaces),
    ...routeShapes(request, plan),
    ...anchorShapes(installation, plan),
    ...dimensions.flatMap(dimensionShapes),
    ...northArrow(plan.projection.view, arrow),
    ...placed.flatMap((label) => label.leader),
    ...placed.flatMap((label) => label.plate),
    ...footNote(
      'To scale, from above. Dashed: spaces to be kept free. Hatched: what reaches into them. Dash-dot: over head height.',
      width,
      height,
    ),
  ];
  const struck = spaces.filter(({ intrusions }) => intrusions.length > 0);
  const words = [
    ...dimensions.map(({ words }) => words),
    ...struck.map(({ volume, intrusions }) => `${intrusions[0]?.name ?? ''} reaches into ${volume.name}`),
  ];
  return {
    name: 'plan',
    width,
    height,
    title: `${installation.pump.mark} from above, with the room round it`,
    alt: `Plan of pump ${installation.pump.mark} and the room round it. ${words.join('; ')}.`,
    shapes,
  };
}

function cutToWindow(outline: readonly Xy[], plan: PlanFrame): readonly (readonly Xy[])[] {
  const part = sharedOutline(outline, windowOutline(plan.window));
  return part === undefined ? [] : [part];
}

function thingShapes(thing: Obstacle, installation: Installation, plan: PlanFrame): readonly Shape[] {
  const over = isOverHead(thing, installation);
  return outlinesOf(thing.solid, plan.projection)
    .flatMap((outline) => cutToWindow(outline, plan))
    .map((outline) =>
      over
        ? line(outline, 'dash-dot', 'none', true, 'grey')
        : line(outline, 'fine', thing.name.includes('wall') ? 'mid' : 'light', true, 'black'),
    );
}

function isOverHead({ box }: Obstacle, { room }: Installation): boolean {
  if (room.floor === undefined || room.headHeight === undefined) return false;
  return box.low[2] > room.floor + room.headHeight.value;
}

function pipeShapes(pipe: Obstacle, plan: PlanFrame): readonly Shape[] {
  return outlinesOf(pipe.solid, plan.projection)
    .flatMap((outline) => cutToWindow(outline, plan))
    .map((outline) => line(outline, 'fine', 'white', true));
}

function pumpShapes(request: PlanRequest, plan: PlanFrame): readonly Shape[] {
  const { pump } = accessOf(request);
  const outline = (solid: Parameters<typeof outlinesOf>[0], fill: 'light' | 'white'): readonly Shape[] =>
    outlinesOf(solid, plan.projection).map((each) => line(each, 'medium', fill, true));
  return [...outline(pump.casingWithPorts, 'light'), ...outline(pump.motorWithBox, 'white')];
}

function pumpStrokes(request: PlanRequest, plan: PlanFrame): readonly Capsule[] {
  const { pump } = accessOf(request);
  const centre = project(plan.projection, request.installation.pump.position);
  const casing: Capsule = { from: centre, to: centre, radius: pump.casing.radius * plan.projection.scale };
  const pipes = request.layout.strokes.flatMap((stroke): readonly Capsule[] => {
    const [a, b] = [project(plan.projection, stroke.from), project(plan.projection, stroke.to)];
    const cut = clippedSegment(a, b, plan.window);
    const radius = (stroke.diameter / 2) * plan.projection.scale;
    return cut === undefined ? [] : [{ from: cut.from, to: cut.to, radius }];
  });
  return [casing, ...pipes];
}

function routeShapes(request: PlanRequest, plan: PlanFrame): readonly Shape[] {
  const route = routeOut(request) ?? [];
  return route.slice(1).flatMap(([east, north], index): readonly Shape[] => {
    const [x, y] = route[index] ?? [east, north];
    const cut = clippedSegment(
      project(plan.projection, [x, y, 0]),
      project(plan.projection, [east, north, 0]),
      plan.window,
    );
    return cut === undefined ? [] : [line([cut.from, cut.to], 'dotted')];
  });
}

function anchorShapes({ room }: Installation, plan: PlanFrame): readonly Shape[] {
  if (room.lift === undefined) return [];
  const at = project(plan.projection, room.lift.anchor);
  const arm = 5;
  return [
    { kind: 'circle', centre: at, radius: 2.6, stroke: 'medium', fill: 'white', ink: 'black' },
    line([[at[0] - arm, at[1]] as const, [at[0] + arm, at[1]] as const], 'fine'),
    line([[at[0], at[1] - arm] as const, [at[0], at[1] + arm] as const], 'fine'),
  ];
}

const note = (name: string, anchor: Xy, priority: number, reach: number): Label => ({
  name,
  rows: [{ text: name, size: NOTE_SIZE, weight: 'regular', ink: 'black' }],
  anchor,
  reach,
  priority,
  framed: false,
});

function thingLabels(things: readonly Obstacle[], plan: PlanFrame): readonly Label[] {
  return things.flatMap((thing): readonly Label[] => {
    const outlines = outlinesOf(thing.solid, plan.projection).flatMap((outline) =>
      cutToWindow(outline, plan),
    );
    if (outlines.length === 0) return [];
    const box = boxRound(outlines.flat());
    const middle: Xy = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    return [
      note(thing.name, middle, 4, Math.min(6, Math.min(box.right - box.left, box.bottom - box.top) / 2)),
    ];
  });
}

function pumpLabel(installation: Installation, plan: PlanFrame): Label {
  const { mark, outline } = installation.pump;
  return {
    name: mark,
    rows: [{ text: mark, size: MARK_SIZE, weight: 'bold', ink: 'black' }],
    anchor: project(plan.projection, installation.pump.position),
    reach: (outline.motorDiameter.value / 2) * plan.projection.scale,
    priority: 9,
    framed: true,
  };
}

function wayLabels({ room }: Installation, plan: PlanFrame): readonly Label[] {
  if (room.wayOut === undefined) return [];
  const [east, north] = room.wayOut.at;
  const at = project(plan.projection, [east, north, 0]);
  const { left, right, top, bottom } = plan.window;
  const inside = at[0] >= left && at[0] <= right && at[1] >= top && at[1] <= bottom;
  return inside ? [note('way out', at, 7, 3)] : [];
}
