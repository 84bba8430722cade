import type { Part, Sourced } from '../../input/installation.js';
import type { Dimension } from '../../units/index.js';
import type { ReportContext } from '../context.js';
import { sourcedMark } from '../words/origin-mark.js';
import { electricalInputs } from './electrical-inputs.js';

export interface PracticeInput {
  readonly [key: string]: string;
  readonly what: string;
  readonly value: string;
  readonly origin: string;
}

/**
 * What the file says of installation practice, and what it leaves open.
 *
 * @param context - installation and writer
 * @returns rows for the register of inputs
 */
export function practiceInputs(context: ReportContext): readonly PracticeInput[] {
  const { service, pump, limits, lines } = context.subject.installation;
  const word = (what: string, value: string | undefined): PracticeInput => ({
    what,
    value: value ?? 'not given',
    origin: value === undefined ? 'not given' : 'given',
  });
  const number = (what: string, sourced: Sourced | undefined, dimension: Dimension): PracticeInput => ({
    what,
    value: sourced === undefined ? 'not given' : context.write.quantity(sourced.value, dimension),
    origin: sourcedMark(sourced, context.assumptions),
  });
  const plain = (what: string, sourced: Sourced | undefined): PracticeInput => ({
    ...number(what, undefined, 'ratio'),
    ...(sourced && {
      value: context.write.plain(sourced.value),
      origin: sourcedMark(sourced, context.assumptions),
    }),
  });
  return [
    word('What the pump is for', service.duty),
    word('What makes the liquid dangerous', service.hazards),
    word('System', service.system),
    word('Shaft', pump.shaft),
    word('Drain of the casing', yesOrNo(pump.drain)),
    word('Vent of the casing', yesOrNo(pump.vent)),
    word('Gauge tap at the suction port', yesOrNo(pump.gaugeTaps?.suction)),
    word('Gauge tap at the discharge port', yesOrNo(pump.gaugeTaps?.discharge)),
    word('Liquid running back through the pump at rest', pump.backflow),
    plain('Service factor of the motor', pump.motor.serviceFactor),
    word('Motor allowed with its shaft down', yesOrNo(pump.motor.shaftDown)),
    number('Velocity in the suction, at most', limits.velocity?.suction, 'velocity'),
    number('Velocity in the discharge, at most', limits.velocity?.discharge, 'velocity'),
    plain('Straight pipe before the suction, in diameters', limits.straightRun),
    ...electricalInputs(context),
    ...lines
      .flatMap(({ walk }) => walk.flatMap(withSide))
      .flatMap((part) => {
        if (part.kind === 'valve' && part.shuts !== undefined)
          return [word(`${part.name} shuts tight`, yesOrNo(part.shuts))];
        if (part.kind !== 'suction-diffuser') return [];
        return [
          word(`${part.name} straightens the flow`, yesOrNo(part.straightens)),
          word(`${part.name} holds a strainer`, yesOrNo(part.strainer)),
          number(`Straight pipe asked for ahead of ${part.name}`, part.straightAsked, 'length'),
        ];
      }),
  ];
}

function yesOrNo(value: boolean | undefined): string | undefined {
  if (value === undefined) return undefined;
  return value ? 'yes' : 'no';
}

function withSide(part: Part): readonly Part[] {
  return part.kind === 'tee' ? [part, ...part.side.walk.flatMap(withSide)] : [part];
}
