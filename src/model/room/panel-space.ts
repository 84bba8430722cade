/** The spaces a panel asks for: in front of it to stand and work in, and above it for its own wiring. */
import type { Box, TurnedBox } from '../../geometry/index.js';
import type { PanelElectrical, Room } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { boxBeside, OVER_FLOOR } from './service-spaces.js';

/** A panel of the room of which the file says where its front is. */
export type FrontedPanel = Room['objects'][number] & { readonly electrical: PanelElectrical };

/**
 * Panels whose front is known.
 *
 * @param room - objects of the room
 * @returns those of kind panel with an electrical entry
 */
export function frontedPanels(room: Room): readonly FrontedPanel[] {
  return room.objects.filter(
    (object): object is FrontedPanel => object.kind === 'panel' && object.electrical !== undefined,
  );
}

/** Size and place of the space in front of a panel. */
export interface FrontSpace {
  /** [m] */
  readonly width: number;
  readonly depth: number;
  /** Over the floor [m]. */
  readonly height: number;
  /** Elevation of the floor [m]. */
  readonly floor: number;
  /** Off the middle of the panel, along the level axis across its front [m]. */
  readonly shift: number;
}

/** A cover's thickness in front of the panel that does not count [m]. */
const FACE = 0.001;

/**
 * Axis across the front of a panel, and the panel's width along it.
 *
 * @param panel - box and front
 * @returns number of the axis, middle and width of the panel [m]
 */
export function acrossFront({ low, high, electrical }: FrontedPanel): {
  readonly axis: 0 | 1;
  readonly middle: number;
  readonly width: number;
} {
  const axis = Math.abs(electrical.front[0]) > 0.5 ? 1 : 0;
  return { axis, middle: (low[axis] + high[axis]) / 2, width: high[axis] - low[axis] };
}

/**
 * Box in front of a panel, from just over the floor up.
 *
 * @param panel - box and front
 * @param space - sizes and place [m]
 * @returns the box [m]
 */
export function frontBox(panel: FrontedPanel, space: FrontSpace): TurnedBox {
  const { axis, middle } = acrossFront(panel);
  const { front } = panel.electrical;
  const along = axis === 0 ? 1 : 0;
  const face = front[along] > 0 ? panel.high[along] : panel.low[along];
  const foot = space.floor + OVER_FLOOR;
  const height = space.floor + space.height - foot;
  const across = middle + space.shift;
  const up = foot + height / 2;
  return boxBeside({
    axis: axis === 0 ? [across, face, up] : [face, across, up],
    side: front,
    clear: FACE,
    width: space.width,
    depth: space.depth,
    height,
  });
}

/**
 * Box above a panel over its whole footprint, up to the structure where that is lower.
 *
 * @param panel - box
 * @param room - ceiling [m]
 * @param height - how far above the panel it reaches [m]
 * @returns the box; nothing where the panel reaches the structure [m]
 */
export function boxAbove(
  { low, high }: FrontedPanel | Room['objects'][number],
  room: Room,
  height: number,
): Box | undefined {
  const top = Math.min(high[2] + height, room.ceiling ?? Number.POSITIVE_INFINITY);
  if (!(top - high[2] > FACE)) return undefined;
  const foot: Vec3 = [low[0], low[1], high[2]];
  return { kind: 'box', low: foot, high: [high[0], high[1], top] };
}
