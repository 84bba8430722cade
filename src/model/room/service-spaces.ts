/** Spaces that service asks for, as solids in their place. */
import {
  type Group,
  plus,
  type Solid,
  sectorPrism,
  sweepUp,
  type TurnedBox,
  times,
} from '../../geometry/index.js';
import type { Installation, ServiceSpace, SpacePurpose } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { Layout, PartPlace } from '../layout/layout.js';
import type { PumpSolids } from './pump-solids.js';

/** A space with whose number it is. */
export interface ServiceVolume {
  readonly purpose: SpacePurpose;
  /** Purpose with the part it belongs to: `handle of gate valve 1`. */
  readonly name: string;
  readonly solid: Solid;
  /** Document or path the number is taken from. */
  readonly source: string;
  /** Part of a line it belongs to. */
  readonly part?: string;
}

/** A level box that stands on one side of an upright axis. */
export interface BoxBeside {
  /** Point of the axis at the height of the middle of the box [m]. */
  readonly axis: Vec3;
  /** Level unit vector [-]. */
  readonly side: Vec3;
  /** From the axis to the near face of the box [m]. */
  readonly clear: number;
  /** Across the side, along it, and upright [m]. */
  readonly width: number;
  readonly depth: number;
  readonly height: number;
}

/**
 * A level box beside an upright axis.
 *
 * @param box - axis, side and sizes [m]
 * @returns the box [m]
 */
export function boxBeside({ axis, side, clear, width, depth, height }: BoxBeside): TurnedBox {
  return {
    kind: 'turned-box',
    centre: plus(axis, times(side, clear + depth / 2)),
    size: [width, depth, height],
    bearing: Math.atan2(side[0], side[1]),
  };
}

/**
 * The height to draw the motor that governs: the larger of those given.
 *
 * @param installation - outline and service spaces [m]
 * @returns height and where it is given, or nothing [m]
 */
export function withdrawalOf(
  installation: Installation,
): { readonly height: number; readonly source: string } | undefined {
  const { withdrawal } = installation.pump.outline;
  const given = spacesFor(installation, 'motor withdrawal').flatMap(({ height, source }) =>
    height === undefined ? [] : [{ height, source }],
  );
  const own =
    withdrawal === undefined ? [] : [{ height: withdrawal.value, source: 'pump.outline.withdrawal' }];
  return [...own, ...given].sort((a, b) => b.height - a.height)[0];
}

/**
 * The service spaces of one purpose.
 *
 * @param installation - service spaces
 * @param purpose - what they are kept free for
 * @returns those of the file
 */
export function spacesFor(installation: Installation, purpose: SpacePurpose): readonly ServiceSpace[] {
  return (installation.serviceSpaces ?? []).filter((space) => space.purpose === purpose);
}

/**
 * Every space that has a place of its own, for drawings: what the file gives, each as a solid.
 *
 * @param installation - service spaces, outline [m]
 * @param layout - places of parts [m]
 * @param pump - solids of the pump [m]
 * @returns solids by purpose [m]
 */
export function serviceVolumes(
  installation: Installation,
  layout: Layout,
  pump: PumpSolids,
): readonly ServiceVolume[] {
  const drawn = withdrawalOf(installation);
  const motor: readonly ServiceVolume[] =
    drawn === undefined
      ? []
      : [
          {
            purpose: 'motor withdrawal',
            name: 'motor withdrawal',
            solid: sweepUp(pump.motorWithBox, drawn.height),
            source: drawn.source,
          },
        ];
  const others = (installation.serviceSpaces ?? []).flatMap((space): readonly ServiceVolume[] => {
    const solid = solidOf(space, installation, layout, pump);
    const name = space.at === undefined ? space.purpose : `${space.purpose} of ${space.at}`;
    return solid === undefined
      ? []
      : [
          {
            purpose: space.purpose,
            name,
            solid,
            source: space.source,
            ...(space.at !== undefined && { part: space.at }),
          },
        ];
  });
  return [...motor, ...others];
}

function solidOf(
  space: ServiceSpace,
  installation: Installation,
  layout: Layout,
  pump: PumpSolids,
): Solid | undefined {
  const place = space.at === undefined ? undefined : layout.partPlaces?.[space.at];
  switch (space.purpose) {
    case 'wrench room':
      return pump.window && { ...pump.window, radius: pump.window.radius + (space.reach ?? 0) };
    case 'handle':
      return place && handleSweep(space, place);
    case 'drain':
    case 'vent':
    case 'gauge':
      return place && boxAtFitting(space, place);
    case 'aisle':
      return aisleBoxes(space, installation);
    case 'casing lift-out':
      return sweepUp(pump.casingWithPorts, space.height ?? 0);
    default:
      return undefined;
  }
}

/**
 * What a handle sweeps, with the room for the hand along its stem.
 *
 * @param space - sizes and directions [m]
 * @param place - middle of the valve [m]
 * @param reach - radius in place of that of the space [m]
 * @returns the sector; nothing where a size is missing [m]
 */
export function handleSweep(space: ServiceSpace, place: PartPlace, reach = space.reach): Group | undefined {
  const { side, from, depth, angle, start } = space;
  if (side === undefined || from === undefined || depth === undefined || angle === undefined)
    return undefined;
  if (reach === undefined) return undefined;
  const first: Vec3 = start ?? (Math.abs(side[2]) > 0.7 ? [1, 0, 0] : [0, 0, 1]);
  return sectorPrism({
    centre: plus(place.at, times(side, from)),
    axis: side,
    start: first,
    angle: Math.min(angle, 2 * Math.PI),
    radius: reach,
    thickness: depth,
  }).solid;
}

/**
 * The room in front of a fitting, from where it ends or else from the skin of its pipe outward.
 *
 * @param space - sizes and side [m]
 * @param place - place of the fitting and radius of its pipe [m]
 * @param depth - depth in place of that of the space [m]
 * @returns the box; nothing where a size is missing [m]
 */
export function boxAtFitting(space: ServiceSpace, place: PartPlace, depth = space.depth): Solid | undefined {
  const { side, width, height } = space;
  if (side === undefined || width === undefined || height === undefined || depth === undefined)
    return undefined;
  const clear = space.from ?? place.radius;
  if (Math.abs(side[2]) < 0.7) return boxBeside({ axis: place.at, side, clear, width, depth, height });
  const near = place.at[2] + side[2] * clear;
  const far = near + side[2] * depth;
  const [x, y] = place.at;
  return {
    kind: 'box',
    low: [x - width / 2, y - height / 2, Math.min(near, far)],
    high: [x + width / 2, y + height / 2, Math.max(near, far)],
  };
}

/**
 * An aisle over the floor, one box from point to point of its centre line.
 *
 * @param space - width, height and points [m]
 * @param installation - floor [m]
 * @param width - width in place of that of the space [m]
 * @returns boxes; nothing where there is no floor [m]
 */
export function aisleBoxes(
  space: ServiceSpace,
  { room }: Installation,
  width = space.width,
): Group | undefined {
  const { through = [], height } = space;
  const { floor } = room;
  if (floor === undefined || height === undefined || width === undefined) return undefined;
  const pieces = through.slice(1).flatMap((to, index): readonly TurnedBox[] => {
    const from = through[index] ?? to;
    const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (!(run > 0)) return [];
    return [
      {
        kind: 'turned-box',
        centre: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, floor + OVER_FLOOR + height / 2],
        size: [width, run, height - OVER_FLOOR],
        bearing: Math.atan2(to[0] - from[0], to[1] - from[1]),
      },
    ];
  });
  return pieces.length === 0 ? undefined : { kind: 'group', pieces };
}

/** Spaces on the floor begin this far above it, so that they do not touch it [m]. */
export const OVER_FLOOR = 0.02;
