/** The picture a fitter and a checker read first: the line with its parts, supports and what they carry. */

import type { Analysis } from '../../analysis/analysis.js';
import type { Installation, UnitSystem } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';
import type { Response } from '../../mechanics/frame/response.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { Layout } from '../../model/layout/layout.js';
import type { Drawing, Shape, Xy } from '../drawing.js';
import { type Label, labelShapes } from '../labels/label.js';
import { type Placement, placeLabels } from '../labels/label-placement.js';
import { fitText, textWidth } from '../labels/text-width.js';
import type { Box } from '../plane.js';
import { type LinePicture, linePicture } from './line-picture.js';
import { type LoadSubject, MARK_SIZE, nozzleRows, supportRows } from './load-labels.js';
import { northArrow, northArrowBox } from './north-arrow.js';
import { partNameLabels } from './part-names.js';
import { project } from './projection.js';
import { pumpCylinders } from './pump-shapes.js';

export interface IsometricRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly response: Response;
  readonly analysis?: Analysis;
  readonly findings: readonly Finding[];
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
  /** Only this condition's loads; without it the largest of all conditions. */
  readonly condition?: string;
}

/** Clear edge, room for labels round the line, and the height of the note at the foot [1/72 in]. */
export const EDGE = 3;
export const NOTE_HEIGHT = 22;
export const LETTER = 7.2;

/**
 * Parts of the paper for a picture of the line: the frame for labels, and the room for the line itself.
 *
 * @param width - width of the picture [1/72 in]
 * @param height - height of the picture [1/72 in]
 * @returns frame and room
 */
export function paperParts(width: number, height: number): { readonly frame: Box; readonly room: Box } {
  const frame = { left: EDGE, top: EDGE, right: width - EDGE, bottom: height - NOTE_HEIGHT };
  const [sides, ends] = [Math.min(58, width * 0.12), Math.min(30, height * 0.08)];
  return {
    frame,
    room: {
      left: frame.left + sides,
      top: frame.top + ends,
      right: frame.right - sides,
      bottom: frame.bottom - ends,
    },
  };
}

/**
 * Isometric view of the line from the corner where least covers least: parts with trade symbols, supports with their
 * marks and largest loads, both nozzles with their largest force and moment.
 *
 * @param request - results, units and size [1/72 in]
 * @returns drawing named `isometric`
 */
export function isometricDrawing(request: IsometricRequest): Drawing {
  const { installation, layout, width, height } = request;
  const { frame, room } = paperParts(width, height);
  const picture = linePicture(installation, layout, room);
  const north = northArrowBox(frame, picture.obstacles);
  const placement = placeLabels({
    frame,
    labels: allLabels(request, picture),
    obstacles: picture.obstacles,
    reserved: [north],
  });
  const labels = placement.placed.map(labelShapes);
  const shapes: readonly Shape[] = [
    ...picture.shapes,
    ...northArrow(picture.projection.view, [(north.left + north.right) / 2, (north.top + north.bottom) / 2]),
    ...labels.flatMap((l) => l.leader),
    ...labels.flatMap((l) => l.plate),
    ...footNote(noteText(request, picture, placement), width, height),
  ];
  const pump = installation.pump.mark;
  return {
    name: 'isometric',
    width,
    height,
    title: `${pump} and its piping, with supports and loads`,
    alt: altText(request, picture, placement),
    shapes,
  };
}

/**
 * Small text at the foot of a picture, in two lines where one is too short.
 *
 * @param text - words
 * @param width - width of the picture [1/72 in]
 * @param height - height of the picture [1/72 in]
 * @returns shapes
 */
export function footNote(text: string, width: number, height: number): readonly Shape[] {
  const room = width - 2 * EDGE;
  const words = text.split(' ');
  let count = words.length;
  while (count > 1 && textWidth(words.slice(0, count).join(' '), LETTER) > room) count -= 1;
  const rows = [words.slice(0, count).join(' '), words.slice(count).join(' ')].filter((row) => row !== '');
  return rows.map(
    (row, i): Shape => ({
      kind: 'text',
      at: [EDGE, height - 4 - (rows.length - 1 - i) * 9],
      text: fitText(row, room, LETTER),
      size: LETTER,
      anchor: 'start',
      weight: 'regular',
      ink: 'black',
    }),
  );
}

function allLabels(request: IsometricRequest, picture: LinePicture): readonly Label[] {
  const { layout, installation } = request;
  const subject: LoadSubject = request;
  const { projection, drawn } = picture;
  const supports = layout.supports.map((support): Label => {
    const rows = supportRows(support, subject);
    const radius = ((support.section?.outsideDiameter ?? 0.1) / 2) * projection.scale;
    const anchor: Xy =
      support.kind === 'pump base'
        ? baseEdge(request, picture)
        : project(projection, drawn.place(support.at));
    const exceeds = rows[0]?.ink === 'accent';
    return {
      name: support.mark,
      rows,
      short: rows.slice(0, 1),
      anchor,
      reach: radius + 3,
      priority: exceeds ? 9 : 8,
      framed: true,
    };
  });
  const nozzles = [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle): Label => {
    const rows = nozzleRows(nozzle, subject);
    const anchor = project(projection, nozzle.at);
    return {
      name: `${nozzle.which} nozzle`,
      rows,
      short: rows.slice(0, 1),
      anchor,
      reach: (nozzle.section.outsideDiameter / 2) * projection.scale + 2,
      priority: 10,
      framed: true,
    };
  });
  const motor = pumpCylinders(installation, layout).at(-1);
  const top = project(projection, motor?.high ?? installation.pump.position);
  const reach = (motor?.radius ?? 0) * projection.scale * 0.6;
  const pump: Label = {
    name: installation.pump.mark,
    rows: [{ text: installation.pump.mark, size: MARK_SIZE + 1.5, weight: 'bold', ink: 'black' }],
    anchor: top,
    reach,
    priority: 11,
    framed: true,
  };
  return [pump, ...nozzles, ...supports, ...partNameLabels(request, picture)];
}

/** Near edge of the plate the pump stands on. */
function baseEdge(request: IsometricRequest, picture: LinePicture): Xy {
  const base = pumpCylinders(request.installation, request.layout)[0];
  if (base === undefined) return project(picture.projection, request.installation.pump.position);
  const foot = project(picture.projection, base.low);
  return [foot[0], foot[1] + (base.radius * picture.projection.scale) / Math.sqrt(3)];
}

function noteText(request: IsometricRequest, picture: LinePicture, placement: Placement): string {
  const loads =
    request.condition === undefined
      ? 'largest load of all conditions'
      : `load ${conditionTitle(request.condition)}`;
  const parts = [
    `Seen from the ${picture.projection.view.corner}, not to scale`,
    ...(picture.drawn.anyShortened ? ['long runs shortened at the break marks'] : []),
    `${loads}, as the pipe acts on the support or pump`,
    ...missing(placement),
  ];
  return `${parts.join('; ')}.`;
}

/** Marks whose load, or whose whole label, found no room. */
function missing(placement: Placement): readonly string[] {
  const bare = [...placement.shortened, ...placement.omitted]
    .filter((label) => label.framed)
    .map((label) => label.name);
  return bare.length === 0 ? [] : [`loads in the table only: ${bare.join(', ')}`];
}

function altText(request: IsometricRequest, picture: LinePicture, placement: Placement): string {
  const { layout, installation } = request;
  const supports = layout.supports.map((support) => {
    const rows = supportRows(support, request).slice(1);
    const words = rows.map(
      (row) =>
        `${row.text}${row.arrow === undefined ? '' : ` ${row.arrow === 'across' ? 'sideways' : row.arrow}`}`,
    );
    return `${support.mark} (${support.kind.replace('-', ' ')}): ${words.join(', ')}`;
  });
  const nozzles = [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle) => {
    const rows = nozzleRows(nozzle, request);
    return `${nozzle.which} nozzle: ${rows
      .slice(1)
      .map((row) => row.text)
      .join(', ')}`;
  });
  const omitted =
    placement.omitted.length === 0
      ? ''
      : ` Left without a label for want of room: ${placement.omitted.map((l) => l.name).join(', ')}.`;
  const short = picture.drawn.anyShortened ? ' Long runs shortened.' : '';
  return `Isometric view of pump ${installation.pump.mark} and its piping, seen from the ${picture.projection.view.corner}.${short} ${[...nozzles, ...supports].join('; ')}.${omitted}`;
}
