import type { PipeSection } from '../../input/installation.js';
import { supportFacts } from '../support-parts.js';
import type { PlacedSpan, PlacedSupport } from './layout.js';
import type { PlacedPart } from './place-parts.js';

/** Parts that put a lump of weight into a span. */
const LUMPS: ReadonlySet<string> = new Set([
  'flange',
  'valve',
  'suction-diffuser',
  'flexible-connector',
  'weight',
  'tee',
]);

/**
 * The spans of all lines: pipe between neighbouring supports that carry weight. The stretch between the pump and the
 * first support is a span of its own, marked `pump`, because a hung pump is a weight in it and not its end.
 *
 * @param placed - parts of all lines in walking order, stations in [m]
 * @param supports - placed supports, stations in [m]
 * @returns spans in walking order, lengths in [m]
 * @source common-practice
 */
export function placedSpans(
  placed: readonly PlacedPart[],
  supports: readonly PlacedSupport[],
): readonly PlacedSpan[] {
  const lines = new Map<string, PlacedPart[]>();
  const collect = (steps: readonly PlacedPart[]): void => {
    for (const step of steps) {
      lines.set(step.line, [...(lines.get(step.line) ?? []), step]);
      if (step.side !== undefined) collect(step.side.parts);
    }
  };
  collect(placed);
  return [...lines].flatMap(([line, steps]) => {
    const holders = supports.filter((support) => support.line === line && supportFacts(support).endsSpan);
    const first = steps[0];
    if (first === undefined) return [];
    const fromPump = first.from.name.startsWith('pump ');
    const start = { mark: fromPump ? first.from.name : first.from.name, station: first.start };
    const stops = [start, ...holders.map((holder) => ({ mark: holder.mark, station: holder.station }))];
    return stops.slice(1).flatMap((stop, index): readonly PlacedSpan[] => {
      const before = stops[index];
      if (before === undefined || !(stop.station > before.station)) return [];
      return [span(line, steps, before, stop, index === 0 && fromPump, index === 0 && !fromPump)];
    });
  });
}

function span(
  line: string,
  steps: readonly PlacedPart[],
  from: { readonly mark: string; readonly station: number },
  to: { readonly mark: string; readonly station: number },
  pump: boolean,
  afterTee: boolean,
): PlacedSpan {
  const inside = steps.filter((step) => step.end > from.station && step.start < to.station);
  let level = 0;
  let section: PipeSection | undefined;
  for (const step of inside) {
    const length = Math.min(step.end, to.station) - Math.max(step.start, from.station);
    const horizontal = (Math.hypot(...plan(step.directionIn)) + Math.hypot(...plan(step.directionOut))) / 2;
    level += length * horizontal;
    if (section === undefined || step.part.section.outsideDiameter > section.outsideDiameter)
      section = step.part.section;
  }
  const touching = steps.filter((step) => step.start >= from.station && step.end <= to.station);
  return {
    line,
    from: from.mark,
    to: to.mark,
    length: to.station - from.station,
    level,
    section: section ?? (steps[0] as PlacedPart).part.section,
    lumps: afterTee || touching.some((step) => LUMPS.has(step.part.kind)),
    bent: inside.some((step) => step.part.kind === 'elbow' || step.part.kind === 'suction-diffuser'),
    pump,
  };
}

function plan(direction: readonly [number, number, number]): [number, number] {
  return [direction[0], direction[1]];
}
