/** Every support as a piece of the picture. */

import type { Layout, PlacedSupport } from '../../model/layout/layout.js';
import { supportFacts } from '../../model/support-parts.js';
import type { Shape } from '../drawing.js';
import { along, levelAcross } from '../space.js';
import type { Piece } from './paint-order.js';
import { type Projection, paperDirection, project } from './projection.js';
import { nearHalfRing } from './ring.js';
import type { ShortenedLine } from './shortened-line.js';
import {
  anchorShapes,
  clampShapes,
  guideShapes,
  hangerShapes,
  ROD_LENGTH,
  restShapes,
  type SupportPlace,
  standShapes,
  stopShapes,
} from './support-symbols.js';
import { tornEnd } from './tube.js';

/**
 * Pieces of the supports; the pump's own base is drawn with the pump.
 *
 * @param layout - supports [m]
 * @param drawn - the line as drawn [m]
 * @param projection - view and scale
 * @returns pieces, in the order of the supports
 */
export function supportPieces(
  layout: Layout,
  drawn: ShortenedLine,
  projection: Projection,
): readonly Piece[] {
  return layout.supports
    .filter((support) => support.kind !== 'pump base')
    .map((support): Piece => {
      const at = drawn.place(support.at);
      const radius = ((support.section?.outsideDiameter ?? 0.1) / 2) * projection.scale;
      const place: SupportPlace = {
        at: project(projection, at),
        way: paperDirection(projection.view, support.along),
        across: paperDirection(projection.view, levelAcross(support.along)),
        radius,
        upright: Math.abs(support.along[2]) > 0.8,
        ring: nearHalfRing(support.along, projection.view),
      };
      const hung = supportFacts(support).hangs;
      const top = along(at, [0, 0, 1], hung ? (radius + ROD_LENGTH) / projection.scale : 0);
      return {
        segments: [{ from: at, to: top }],
        radius: hung ? 1 : radius,
        rank: 4,
        shapes: supportShapes(support, place, layout),
      };
    });
}

function supportShapes(support: PlacedSupport, place: SupportPlace, layout: Layout): readonly Shape[] {
  switch (support.kind) {
    case 'hanger':
      return hangerShapes(place, support.part?.rods?.count ?? 1, false);
    case 'spring-hanger':
      return hangerShapes(place, support.part?.rods?.count ?? 1, true);
    case 'rest':
      return [...clampShapes(place), ...restShapes(place)];
    case 'stand':
      return [...clampShapes(place), ...standShapes(place)];
    case 'guide':
      return guideShapes(place);
    case 'stop':
      return stopShapes(place);
    case 'anchor':
      return anchorShapes(place);
    case 'end':
      return isAnchoredEnd(support, layout)
        ? anchorShapes(place)
        : tornEnd(place.at, place.way, place.radius);
    case 'pump base':
      return [];
  }
}

/** An end that is held rigidly in all six freedoms. */
export function isAnchoredEnd(support: PlacedSupport, layout: Layout): boolean {
  const held = layout.frame.supports.find((s) => s.name === support.mark);
  return (
    held !== undefined &&
    held.restraints.length >= 6 &&
    held.restraints.every((r) => r.stiffness === Number.POSITIVE_INFINITY)
  );
}
