/** A line as a fitter walks it: which parts stand between the pump and the valves that shut it off. */

import type { Part, ValvePart } from '../../input/installation.js';
import { canShut } from '../../model/layout/contents-group.js';
import { type PlacedPart, placeLine } from '../../model/layout/place-parts.js';
import { pointNames } from '../../model/layout/point-names.js';
import type { Subject } from '../subject.js';

/** The two sides of the pump. */
export type Side = 'suction' | 'discharge';
export const SIDES: readonly Side[] = ['suction', 'discharge'];

/** Devices in the line that no one shuts. */
const NEVER_SHUTS = /check|non-?return|strainer|filter|separator|meter|device/i;

/**
 * Parts of one side in walking order, outward from the pump.
 *
 * @param subject - installation
 * @param side - side of the pump
 * @returns placed parts; none where no line starts there
 */
export function courseOf({ installation }: Subject, side: Side): readonly PlacedPart[] {
  const line = installation.lines.find((candidate) => candidate.from === side);
  return line === undefined ? [] : placeLine(line, installation.pump, pointNames());
}

/**
 * Parts of one side up to the first valve that shuts.
 *
 * @param course - parts in walking order
 * @returns parts before it, and the valve where there is one
 */
export function beforeShutOff(course: readonly PlacedPart[]): {
  readonly parts: readonly PlacedPart[];
  readonly valve?: PlacedPart;
} {
  const at = course.findIndex(({ part }) => canShut(part));
  const valve = course[at];
  return valve === undefined ? { parts: course } : { parts: course.slice(0, at), valve };
}

/** Whether a part lets the liquid pass one way only. */
export function isCheckValve(part: Part): part is ValvePart {
  return part.kind === 'valve' && /check|non-?return|multi-purpose/i.test(part.valve);
}

/** Whether a part is a strainer of its own. */
export function isStrainer(part: Part): part is ValvePart {
  return part.kind === 'valve' && /strainer|filter/i.test(part.valve);
}

/** Whether a part may be able to shut, and nothing says so. */
export function mayShut(part: Part): part is ValvePart {
  return part.kind === 'valve' && part.shuts === undefined && !canShut(part) && !NEVER_SHUTS.test(part.valve);
}

/** How the pump is cut off from one end of the piping. */
export type WayOut =
  | { readonly kind: 'shut' | 'unsure'; readonly by: string }
  | { readonly kind: 'open' | 'closed end'; readonly by: string };

/**
 * Every way from the pump to an end of the piping, side legs of tees too, up to the first valve that shuts.
 *
 * @param course - parts in walking order
 * @param unsure - name of a valve passed that may shut [-]
 * @returns one entry for each way
 */
export function waysOut(course: readonly PlacedPart[], unsure?: string): readonly WayOut[] {
  const sides: WayOut[] = [];
  let uncertainty = unsure;
  for (const { part, side, line } of course) {
    if (canShut(part)) return [...sides, { kind: 'shut', by: part.name }];
    if (mayShut(part)) uncertainty ??= part.name;
    if (side !== undefined) sides.push(...waysOut(side.parts, uncertainty));
    if (part.kind === 'end' && part.end === 'free') return [...sides, { kind: 'closed end', by: line }];
    if (part.kind === 'end') break;
  }
  const line = course[0]?.line ?? 'line';
  return [
    ...sides,
    uncertainty === undefined ? { kind: 'open', by: line } : { kind: 'unsure', by: uncertainty },
  ];
}

/** All parts, those of side legs after their tee, up to the valves that shut. */
export function partsInside(course: readonly PlacedPart[]): readonly PlacedPart[] {
  return beforeShutOff(course).parts.flatMap((step) => [
    step,
    ...(step.side === undefined ? [] : partsInside(step.side.parts)),
  ]);
}
