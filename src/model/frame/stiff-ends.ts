import type { PlacedPart } from '../layout/place-parts.js';

const STIFF_KINDS: ReadonlySet<string> = new Set(['flange', 'valve', 'suction-diffuser']);

/**
 * Counts the ends of each elbow that carry a flange, a valve or the pump within one outside diameter, where the code
 * reduces the flexibility because the end cannot become oval.
 *
 * @param placed - parts of one line in walking order, stations in [m]
 * @returns 0, 1 or 2 by elbow name [-]
 * @source asme-b31.1 (appendix D note on flanged ends; the distance of one diameter is common practice)
 */
export function stiffEnds(placed: readonly PlacedPart[]): Readonly<Record<string, 0 | 1 | 2>> {
  const counts: Record<string, 0 | 1 | 2> = {};
  placed.forEach((step, index) => {
    if (step.part.kind === 'elbow') {
      const reach = step.part.section.outsideDiameter;
      const before = placed.slice(0, index).findLast((other) => STIFF_KINDS.has(other.part.kind));
      const after = placed.slice(index + 1).find((other) => STIFF_KINDS.has(other.part.kind));
      // The pump's own flange stands at station 0 of the two main lines.
      const nearStiff =
        step.start - (before?.end ?? (isFromPump(placed) ? 0 : Number.NEGATIVE_INFINITY)) <= reach;
      const farStiff = after !== undefined && after.start - step.end <= reach;
      counts[step.part.name] = ((nearStiff ? 1 : 0) + (farStiff ? 1 : 0)) as 0 | 1 | 2;
    }
    if (step.side !== undefined) Object.assign(counts, stiffEnds(step.side.parts));
  });
  return counts;
}

function isFromPump(placed: readonly PlacedPart[]): boolean {
  return placed[0]?.start === 0;
}
