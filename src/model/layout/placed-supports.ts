import type { Installation, SupportPart } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { isSupportPart } from '../support-parts.js';
import { add, unit } from '../vector.js';
import type { PlacedSupport } from './layout.js';
import type { NamedPoint, PlacedPart } from './place-parts.js';

/**
 * Every support with its place along the line: in the walk, under an elbow, under a suction diffuser, line ends and
 * the pump's own base.
 *
 * @param installation - for the pump base
 * @param placed - parts in walking order, stations in [m]
 * @returns supports in walking order, the pump base first
 */
export function placedSupports(
  installation: Installation,
  placed: readonly PlacedPart[],
): readonly PlacedSupport[] {
  const { pump } = installation;
  const base: readonly PlacedSupport[] =
    pump.base === undefined || pump.mount === 'hung'
      ? []
      : [
          {
            mark: 'pump base',
            kind: 'pump base',
            point: 'pump base',
            at: add(pump.position, pump.base.position),
            line: 'pump',
            station: 0,
            along: [0, 0, 1],
          },
        ];
  return [...base, ...lineSupports(placed)];
}

function lineSupports(placed: readonly PlacedPart[]): readonly PlacedSupport[] {
  return placed.flatMap((step) => {
    const { part } = step;
    const here = (support: SupportPart, point: NamedPoint, station: number, along: Vec3): PlacedSupport => ({
      mark: support.mark,
      kind: support.kind,
      point: point.name,
      at: point.at,
      line: step.line,
      station,
      part: support,
      section: part.section,
      along,
    });
    const side = step.side === undefined ? [] : lineSupports(step.side.parts);
    if (isSupportPart(part)) return [here(part, step.from, step.start, step.directionIn)];
    if (part.kind === 'elbow' && part.support !== undefined && step.middle !== undefined) {
      const along = unit(add(step.directionIn, step.directionOut));
      return [here(part.support, step.middle, (step.start + step.end) / 2, along)];
    }
    if (part.kind === 'suction-diffuser' && part.support !== undefined && step.centre !== undefined) {
      return [here(part.support, step.centre, step.start + part.pumpLeg.value, step.directionIn)];
    }
    if (part.kind === 'end' && part.end !== 'free') {
      const mark = `end of ${step.line}`;
      const { section, line, from, start, directionIn } = { ...step, section: part.section };
      return [
        {
          mark,
          kind: 'end' as const,
          point: from.name,
          at: from.at,
          line,
          station: start,
          section,
          along: directionIn,
        },
      ];
    }
    return side;
  });
}
