/** North arrow lying in the plan, as seen from the chosen corner. */
import type { Shape, Xy } from '../drawing.js';
import { type Box, type Capsule, grown, offset, segmentCrossesBox } from '../plane.js';
import { paperDirection, type View } from './projection.js';
import { line } from './tube.js';

const LENGTH = 24;
/** Square it needs on paper [1/72 in]. */
export const NORTH_ARROW_ROOM = 44;

/**
 * Arrow and letter about a place.
 *
 * @param view - direction to look from
 * @param middle - middle of the arrow on paper
 * @returns shapes within half the room on every side
 */
export function northArrow(view: View, middle: Xy): readonly Shape[] {
  const north = paperDirection(view, [0, 1, 0]);
  const east = paperDirection(view, [1, 0, 0]);
  const tip = offset(middle, north, LENGTH / 2);
  const tail = offset(middle, north, -LENGTH / 2);
  const notch = offset(tail, north, LENGTH * 0.22);
  const wing = (sign: number): Xy => offset(tail, east, sign * 5.5);
  const letter = offset(tip, north, 6.5);
  return [
    line([tip, wing(1), notch], 'fine', 'white', true),
    line([tip, wing(-1), notch], 'fine', 'dark', true),
    {
      kind: 'text',
      at: [letter[0], letter[1] + 2.7],
      text: 'N',
      size: 8,
      anchor: 'middle',
      weight: 'bold',
      ink: 'black',
    },
  ];
}

/**
 * The corner of the frame where the arrow covers least.
 *
 * @param frame - free part of the paper
 * @param obstacles - what is drawn
 * @returns box for the arrow
 */
export function northArrowBox(frame: Box, obstacles: readonly Capsule[]): Box {
  const room = NORTH_ARROW_ROOM;
  const corners = [
    [frame.right - room, frame.top],
    [frame.left, frame.top],
    [frame.right - room, frame.bottom - room],
    [frame.left, frame.bottom - room],
  ] as const;
  const boxes = corners.map(([left, top]): Box => ({ left, top, right: left + room, bottom: top + room }));
  const covered = boxes.map(
    (box) => obstacles.filter((o) => segmentCrossesBox(o.from, o.to, grown(box, o.radius + 2))).length,
  );
  return boxes[covered.indexOf(Math.min(...covered))] as Box;
}
