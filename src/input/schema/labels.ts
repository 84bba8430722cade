/** Fields whose words come from tables: sizes, rods, directions, dates. */

import * as z from 'zod';
import { nominalSize, pipeSizes, rodSizes } from '../../catalog/index.js';
import { once } from '../once.js';
import { directionWords, readDirection } from '../read-direction.js';
import { refuse } from './field.js';

const LEVEL =
  '([Nn]orth|[Ss]outh|[Ee]ast|[Ww]est|([Nn]orth|[Ss]outh)[ -]?([Ee]ast|[Ww]est)|[Bb]earing\\s+\\S.*)';
const LEVEL_PATTERN = `^\\s*${LEVEL}\\s*$`;
const DIRECTION_PATTERN = `^\\s*([Uu]p|[Dd]own|${LEVEL}(\\s+([Rr]ising|[Ff]alling)\\s+\\S.*)?)\\s*$`;

/**
 * A nominal pipe size: `6 in`, `2-1/2 in`, `NPS 6`, `DN 150`.
 *
 * @returns schema that gives the label of the catalogue, for example `2-1/2` [-]
 */
export function pipeSize() {
  return anyPipeSize();
}

const anyPipeSize = once(() =>
  z
    .string()
    .meta({ pattern: '^\\s*(\\d.*(in|inch|")|NPS\\s*\\d.*|DN\\s*\\d+)\\s*$' })
    .transform((found, context) => {
      const written = /^\s*(?:.*(?:in|inch|inches|"|″)|nps\s*\d.*|dn\s*\d+)\s*$/iu.test(found);
      const label = written ? nominalSize(found) : undefined;
      return label ?? refuse(context, 'input.unknown-size', { found, sizes: pipeSizes() });
    }),
);

/**
 * A size of hanger rod: `5/8 in`.
 *
 * @returns schema that gives the label of the catalogue, for example `5/8` [-]
 */
export function rodSize() {
  return anyRodSize();
}

const anyRodSize = once(() =>
  z
    .string()
    .meta({ pattern: '^\\s*\\d.*(in|inch|")\\s*$' })
    .transform((found, context) => {
      const label = found
        .replace(/\s*(in|inch|inches|"|″)\s*$/u, '')
        .replace(/^(\d+) (?=\d+\/)/u, '$1-')
        .trim();
      if (rodSizes().includes(label)) return label;
      return refuse(context, 'input.unknown-rod', { found, sizes: rodSizes() });
    }),
);

/**
 * A direction of the building plan.
 *
 * @returns schema that gives a unit vector [-]
 */
export function direction() {
  return anyDirection();
}

const anyDirection = once(() =>
  z
    .string()
    .meta({ pattern: DIRECTION_PATTERN })
    .transform((found, context) => {
      return (
        readDirection(found) ?? refuse(context, 'input.unknown-direction', { found, words: directionWords })
      );
    }),
);

/** Like `direction`, and level. */
export function levelDirection() {
  return anyLevelDirection();
}

const anyLevelDirection = once(() =>
  z
    .string()
    .meta({ pattern: LEVEL_PATTERN })
    .transform((found, context) => {
      const read = readDirection(found);
      if (!read) return refuse(context, 'input.unknown-direction', { found, words: directionWords });
      return read[2] === 0 ? read : refuse(context, 'input.not-level', { found });
    }),
);

/**
 * A day of the calendar, as ISO 8601 writes it.
 *
 * @returns schema that gives the text [-]
 */
export function day() {
  return z
    .string()
    .meta({ format: 'date' })
    .transform((found, context) => (isDay(found) ? found : refuse(context, 'input.not-a-day', { found })));
}

/**
 * Whether a text is a day of the calendar as ISO 8601 writes it.
 *
 * @param text - for example `2026-09-14` [-]
 * @returns true for a day that there is [-]
 */
export function isDay(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(text);
  if (!match) return false;
  const [year, month, dayOfMonth] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return dayOfMonth >= 1 && dayOfMonth <= days;
}
