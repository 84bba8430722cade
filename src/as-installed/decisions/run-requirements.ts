/** What must be known and in order before the pump runs on and is accepted, and what stops it at once. One row a judge. */
import type { Citation } from '../../sources/index.js';
import type { FieldSubject } from '../judge.js';
import type { Requirement } from './requirement.js';
import { serviceFactorOf } from './service-factor.js';

const MOTORS: Citation = {
  source: 'nema-mg-1',
  clause: 'parts 12.45 and 14.36: a motor is not run above five per cent of voltage unbalance',
  confidence: 'two sources',
};
const PLATE: Citation = {
  source: 'nema-mg-1',
  clause: 'service factor of the plate; 1.15 where it was not read',
  confidence: 'memory',
};
const ZONE_D: Citation = {
  source: 'iso-10816-7',
  clause:
    'a quarter over the boundary of the zone of damage; the meaning of that zone read, its numbers from memory',
  confidence: 'computed',
};

const STREAM: Citation = {
  source: 'common-practice',
  clause: 'a steady stream from a mechanical seal stops the pump',
  confidence: 'common practice',
};

/** Must be known before acceptance, and stops the pump where it is wrong. */
const stops = (judge: string): Requirement => ({ judge, against: 'running', unknown: 'acceptance' });
/** Must be known before acceptance, and holds it where it is wrong. */
const holds = (judge: string): Requirement => ({ judge, against: 'acceptance', unknown: 'acceptance' });
/** Holds acceptance where it was found so; nobody need look for it. */
const found = (judge: string): Requirement => ({ judge, against: 'acceptance', unknown: 'nothing' });

/** A motor runs above its plate up to its service factor, as a reserve. */
const serviceFactor = (subject: FieldSubject): number => serviceFactorOf(subject) ?? 1.15;

/** Rows of the second decision. */
export const runRequirements: readonly Requirement[] = [
  // Supply and current.
  stops('voltage-range'),
  {
    judge: 'voltage-unbalance',
    against: 'acceptance',
    unknown: 'acceptance',
    beyond: { factor: 5, bars: 'running', why: 'the motor is not run at all above it', citation: MOTORS },
  },
  stops('lost-phase'),
  {
    judge: 'current',
    against: 'acceptance',
    unknown: 'acceptance',
    beyond: { factor: serviceFactor, bars: 'running', why: 'over plate and service factor', citation: PLATE },
  },
  {
    judge: 'current-unbalance',
    against: 'acceptance',
    unknown: 'acceptance',
    beyond: {
      factor: 5,
      bars: 'running',
      why: 'as much as the voltage unbalance at which a motor is not run makes at the most, ten times five per cent',
      citation: MOTORS,
    },
  },
  // Hydraulics.
  stops('head-rises'),
  { judge: 'head', against: 'acceptance', unknown: 'acceptance', guidance: 'acceptance' },
  stops('flow-moves'),
  { judge: 'flow', against: 'acceptance', unknown: 'acceptance', guidance: 'acceptance' },
  stops('liquid-temperature'),
  holds('check-holds'),
  found('strainer-clean'),
  holds('screen-out'),
  // The seal.
  stops('seal-looks'),
  holds('seal-leakage'),
  {
    judge: 'seal-drops',
    against: 'acceptance',
    unknown: 'acceptance',
    beyond: {
      factor: 60,
      bars: 'running',
      why: 'five drops a second run together to a stream',
      citation: STREAM,
    },
  },
  // Motion, heat, sound.
  { judge: 'vibration', against: 'acceptance', unknown: 'acceptance', guidance: 'acceptance' },
  {
    judge: 'vibration-damage',
    against: 'running',
    unknown: 'nothing',
    guidance: 'running',
    beyond: {
      factor: 1,
      bars: 'running',
      why: 'past every figure of damage that was found',
      citation: ZONE_D,
    },
  },
  found('vibration-stopped'),
  { judge: 'bearing-temperature', against: 'running', unknown: 'acceptance', guidance: 'acceptance' },
  { judge: 'bearing-heat', against: 'running', unknown: 'nothing', guidance: 'running' },
  holds('bearing-steady'),
  stops('noise'),
  { judge: 'whine', against: 'acceptance', unknown: 'nothing' },
  { judge: 'start-movement', against: 'start', unknown: 'acceptance', guidance: 'start', unlimited: 'start' },
  { judge: 'pipe-movement', against: 'start', unknown: 'acceptance', guidance: 'start', unlimited: 'start' },
  holds('valve-slam'),
  { judge: 'knock-margin', against: 'acceptance', unknown: 'nothing', guidance: 'acceptance' },
  { judge: 'knock-at-speed', against: 'acceptance', unknown: 'nothing', guidance: 'acceptance' },
  // What an owner takes over.
  holds('headroom'),
  { judge: 'plumb-shaft', against: 'acceptance', unknown: 'nothing' },
  found('instrument-due'),
];
