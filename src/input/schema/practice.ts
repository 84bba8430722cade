/** What good installation practice asks about: small things on the pipe, what the pump is fitted with, what it is for. */

import * as z from 'zod';
import type { CodesFrom, IssueCode } from '../../issues/issue.js';
import { nearMiss } from '../near-miss.js';
import { once } from '../once.js';
import { field, map, oneOf, refuse, text } from './field.js';
import { pipeSize } from './labels.js';
import { quantity } from './quantity.js';
import { ratio } from './ratio.js';

/** Why an installation is not reviewed. */
type ScopeCode = Extract<IssueCode, `input.scope-${string}`> & CodesFrom<{ found: string }>;

/** Words for something that is there or is not. */
const YES_OR_NO = ['yes', 'no'] as const;

/**
 * Something that is there or is not; left out, it is not known.
 *
 * @param what - what it is, in words [-]
 * @returns schema of an optional `yes` or `no` [-]
 */
export function yesOrNo(what: string) {
  return field(oneOf(YES_OR_NO), what, 'yes').optional();
}

/**
 * One of a few words, and words that put an installation outside what is reviewed.
 *
 * @param words - what may be written [-]
 * @param outside - what may not, each with the code that says why [-]
 * @returns schema that gives the word [-]
 */
export function inScope<const Words extends readonly [string, ...string[]]>(
  words: Words,
  outside: Readonly<Record<string, ScopeCode>>,
) {
  return z
    .string()
    .meta({ enum: [...words] })
    .transform((found, context): Words[number] => {
      const code = Object.hasOwn(outside, found) ? outside[found] : undefined;
      if (code !== undefined) return refuse(context, code, { found });
      const nearest = nearMiss(found, words);
      const data = { found: `"${found}"`, words, ...(nearest !== undefined && { nearest }) };
      return words.find((word) => word === found) ?? refuse(context, 'input.not-one-of', data);
    });
}

/** How motor and pump are joined. */
export const build = once(() =>
  inScope(['split-coupled', 'close-coupled'], {
    'base-mounted': 'input.scope-base-mounted',
  }),
);

/** How the shaft stands. */
export const shaft = once(() => inScope(['vertical'], { horizontal: 'input.scope-horizontal' }));

/** What the pump is for. */
export const duty = once(() =>
  inScope(['building services', 'process'], {
    'fire protection': 'input.scope-fire-protection',
  }),
);

const HAZARDS = ['flammable', 'toxic', 'corrosive', 'oxidising', 'radioactive'] as const;

/** What makes the liquid dangerous; anything but nothing is outside what is reviewed. */
export const hazards = once(() =>
  z
    .union([z.literal('none'), z.array(oneOf(HAZARDS)).min(1)])
    .transform((found, context): 'none' =>
      found === 'none' ? found : refuse(context, 'input.scope-hazardous', { hazards: found }),
    ),
);

const fitting = once(() => map({ size: field(pipeSize(), 'Nominal size', '3/4 in').optional() }));

/** Small things on the pipe, without length or weight worth counting. */
export const fittings = once(() => ({
  drain: field(fitting(), 'Drain valve on the pipe', { size: '3/4 in' }),
  vent: field(fitting(), 'Vent on the pipe', { size: '1/2 in' }),
  'gauge-tap': field(fitting(), 'Tap for a pressure gauge', { size: '1/4 in' }),
  'start-up-screen': field(
    fitting(),
    'Screen that stands in the line for flushing and first starts only',
    {},
  ),
}));

/** What the casing is fitted with, and what could make it turn backwards. */
export const pumpPractice = once(() => ({
  shaft: field(shaft(), 'How the shaft stands', 'vertical').optional(),
  drain: yesOrNo('Whether the casing has a drain that can be used'),
  vent: yesOrNo('Whether the casing or its seal chamber has a vent that can be used'),
  'gauge-taps': field(
    map({
      suction: yesOrNo('Whether the suction port or its flange has a tap'),
      discharge: yesOrNo('Whether the discharge port or its flange has a tap'),
    }),
    'Taps for pressure gauges at the ports of the pump',
    { suction: 'yes', discharge: 'yes' },
  ).optional(),
  backflow: field(
    oneOf(['possible', 'none']),
    'Whether liquid could run back through the pump at rest: another pump beside it, or a head that remains',
    'possible',
  ).optional(),
}));

/** What the motor may do. */
export const motorPractice = once(() => ({
  'service-factor': field(ratio({ least: 1, most: 2 }), 'Service factor on the nameplate', 1.15).optional(),
  'shaft-down': yesOrNo('Whether the manufacturer lets the motor stand with its shaft down'),
}));

/** What the service is, beside its liquid. */
export const servicePractice = once(() => ({
  duty: field(duty(), 'What the pump is for', 'building services').optional(),
  hazards: field(hazards(), 'What makes the liquid dangerous, or none', 'none').optional(),
  system: field(
    oneOf(['open', 'closed']),
    'Whether the liquid meets the air on its way round, as in a cooling tower',
    'closed',
  ).optional(),
}));

/** What a suction diffuser does beside turning the flow. */
export const diffuserPractice = once(() => ({
  straightens: yesOrNo('Whether it straightens the flow with vanes'),
  strainer: yesOrNo('Whether it holds a strainer'),
  'straight-asked': field(
    quantity('length', 'not negative'),
    'Straight pipe its manufacturer asks for ahead of it; 0 in where none',
    '0 in',
  ).optional(),
}));

const velocity = (what: string, example: string) =>
  field(quantity('velocity', 'positive'), what, example).optional();

/** Limits of good practice that the user gives. */
export const practiceLimits = once(() => ({
  velocity: field(
    map({
      suction: velocity('Largest velocity in the suction pipe', '6 ft/s'),
      discharge: velocity('Largest velocity in the discharge pipe', '10 ft/s'),
      source: field(text(), 'Where the limits are taken from', "owner's design guide, section 23"),
    }),
    'Velocity of the liquid',
    { suction: '6 ft/s', discharge: '10 ft/s', source: "owner's design guide, section 23" },
  ).optional(),
  'straight-run': field(
    map({
      diameters: field(z.number().gt(0).max(100), 'Straight pipe before the suction, in diameters', 5),
      source: field(text(), 'Where the number is taken from', 'table of the pump standard, elbow'),
    }),
    'Straight pipe before the suction, for what disturbs the flow here',
    { diameters: 5, source: 'table of the pump standard, elbow' },
  ).optional(),
}));
