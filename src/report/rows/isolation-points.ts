/** Where one side of the pump is shut off, let out and read, by the names of the parts that stand there. */
import { courseOf, isCheckValve, partsInside, type Side, waysOut } from '../../analysis/pipes/line-course.js';
import type { FittingPart } from '../../input/installation.js';
import type { PlacedPart } from '../../model/layout/place-parts.js';
import type { ReportContext } from '../context.js';

/** Names with their heights, ready to print; empty lists where the file has nothing. */
export interface IsolationPoints {
  readonly line: string;
  /** Valves that shut, one for every leg that stays full. */
  readonly valves: readonly string[];
  /** Valves of which nobody says whether they shut. */
  readonly unsure: readonly string[];
  /** Legs that nothing shuts. */
  readonly open: readonly string[];
  readonly drains: readonly string[];
  readonly vents: readonly string[];
  readonly taps: readonly string[];
  /** Check valve between the pump and the valve that shuts. */
  readonly check?: string;
  readonly hasConnector: boolean;
}

/**
 * Where one side of the pump is shut off, let out and read.
 *
 * @param side - side of the pump
 * @param context - installation and writer
 * @returns names by what they are for
 */
export function isolationPoints(side: Side, context: ReportContext): IsolationPoints {
  const { pump } = context.subject.installation;
  const course = courseOf(context.subject, side);
  const ways = waysOut(course);
  const byName = new Map(everyStep(course).map((step) => [step.part.name, step]));
  const placed = (name: string): string => {
    const step = byName.get(name);
    return step === undefined ? name : withHeight(step, context);
  };
  const of = (kind: 'shut' | 'unsure' | 'open'): readonly string[] =>
    ways.filter((way) => way.kind === kind).map(({ by }) => (kind === 'open' ? by : placed(by)));
  const inside = partsInside(course);
  const checkAt = inside.findIndex(({ part }) => isCheckValve(part));
  const check = inside[checkAt]?.part.name;
  const fittings = (which: FittingPart['fitting']): readonly string[] =>
    inside.flatMap((step, index) => {
      if (step.part.kind !== 'fitting' || step.part.fitting !== which) return [];
      const behind = check !== undefined && index > checkAt ? ' behind the check valve' : '';
      return [`${withHeight(step, context)}${behind}`];
    });
  return {
    line: course[0]?.line ?? `${side} side`,
    valves: of('shut'),
    unsure: of('unsure'),
    open: of('open'),
    drains: [...(pump.drain === true ? ['the casing’s drain'] : []), ...fittings('drain')],
    vents: [...(pump.vent === true ? ['the casing’s vent'] : []), ...fittings('vent')],
    taps: [
      ...(pump.gaugeTaps?.[side] === true ? [`the tap at the ${side} port`] : []),
      ...fittings('gauge-tap'),
    ],
    ...(check !== undefined && { check }),
    hasConnector: inside.some(({ part }) => part.kind === 'flexible-connector'),
  };
}

/** Name of a part with its height over the floor, where there is one. */
function withHeight({ part, from, to }: PlacedPart, { subject, write }: ReportContext): string {
  const { floor } = subject.installation.room;
  if (floor === undefined) return part.name;
  return `${part.name} (${roughly((from.at[2] + to.at[2]) / 2 - floor, write)} up)`;
}

function everyStep(course: readonly PlacedPart[]): readonly PlacedPart[] {
  return course.flatMap((step) => [step, ...(step.side === undefined ? [] : everyStep(step.side.parts))]);
}

/** Several names, which may hold commas of their own, as one text. */
export function named(names: readonly string[]): string {
  return names.join('; ');
}

/** How finely a place is told to somebody who looks for it: a whole inch, or a centimetre [m]. */
const INCH = 0.0254;
const CENTIMETRE = 0.01;

/** A distance for somebody who looks for a thing: to the inch, or to the centimetre. */
export function roughly(value: number, write: ReportContext['write']): string {
  const step = write.system === 'us' ? INCH : CENTIMETRE;
  return write.distance(Math.round(value / step) * step);
}
