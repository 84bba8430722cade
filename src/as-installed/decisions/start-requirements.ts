/** What must be known, and what must be in order, before the pump is started for the first time. One row a judge. */
import type { Citation } from '../../sources/index.js';
import type { FieldSubject } from '../judge.js';
import type { Requirement } from './requirement.js';
import { serviceFactorOf } from './service-factor.js';

const MANUALS: Citation = {
  source: 'common-practice',
  clause: 'the loosest of the installation manuals that were read, 0.10 mm (0.004 in) in all',
  confidence: 'read',
};
const MOTORS: Citation = {
  source: 'nema-mg-1',
  clause: 'parts 12.45 and 14.36: a motor is not run above five per cent of voltage unbalance',
  confidence: 'two sources',
};
const OVERLOADS: Citation = {
  source: 'nfpa-70',
  clause: '430.32(C): 140 % of the plate, or 130 %, at most',
  confidence: 'two sources',
};

/** Known before a start, and a start waits for it. */
const must = (judge: string): Requirement => ({ judge, against: 'start', unknown: 'start' });
/** Keeps from a start where it was found so; nobody need look for it. */
const found = (judge: string): Requirement => ({ judge, against: 'start', unknown: 'nothing' });

/**
 * How far the setting of the overload may be over its ordinary limit before nobody starts the motor with it: 140 over 125 %
 * where the service factor is 1.15 or more, 130 over 115 % where it is less or not known.
 */
function overloadMost(subject: FieldSubject): number {
  return (serviceFactorOf(subject) ?? 1) >= 1.15 ? 1.4 / 1.25 : 1.3 / 1.15;
}

/** Rows of the first decision. */
export const startRequirements: readonly Requirement[] = [
  // The line at the pump.
  must('flange-parallelism'),
  must('flange-gap'),
  must('flange-offset'),
  must('shaft-movement'),
  must('misfit-load'),
  must('closes-by-hand'),
  { judge: 'bolt-holes', against: 'acceptance', unknown: 'nothing' },
  must('recovery'),
  // What carries it.
  must('spring-range'),
  must('travel-stops'),
  must('rods-loaded'),
  must('support-contact'),
  must('base-state'),
  must('anchor-bolts'),
  must('lock-nuts'),
  must('slides-freely'),
  { judge: 'rod-lean', against: 'start', unknown: 'nothing', guidance: 'start' },
  { judge: 'support-moved', against: 'acceptance', unknown: 'nothing' },
  must('level-datum'),
  // The rotor.
  {
    judge: 'coupling-gaps',
    against: 'start',
    unknown: 'start',
    guidance: 'start',
    beyond: { factor: 2, bars: 'start', why: 'twice the finest figure is the loosest', citation: MANUALS },
  },
  {
    judge: 'shaft-runout',
    against: 'start',
    unknown: 'start',
    guidance: 'start',
    beyond: { factor: 2, bars: 'start', why: 'twice the finest figure is the loosest', citation: MANUALS },
  },
  must('coupling-bolts'),
  must('shaft-turns'),
  must('guard'),
  // The liquid.
  must('line-state'),
  must('pressure-tested'),
  must('flushed'),
  must('filled'),
  must('tight'),
  must('seal-vented'),
  must('flush-open'),
  must('valves-open'),
  // Energy.
  must('isolates'),
  must('bleeds'),
  must('locks'),
  must('in-sight'),
  { judge: 'disconnect-distance', against: 'acceptance', unknown: 'nothing', guidance: 'acceptance' },
  must('locks-off'),
  must('people-clear'),
  must('protections'),
  must('motor-insulation'),
  must('cable-insulation'),
  {
    judge: 'overload',
    against: 'acceptance',
    unknown: 'start',
    beyond: {
      factor: overloadMost,
      bars: 'start',
      why: 'more than the code allows even a motor that cannot start',
      citation: OVERLOADS,
    },
  },
  must('supply-voltage'),
  {
    judge: 'supply-unbalance',
    against: 'acceptance',
    unknown: 'start',
    beyond: { factor: 5, bars: 'start', why: 'the motor is not run at all above it', citation: MOTORS },
  },
  must('supply-frequency'),
  must('rotation'),
  found('plate'),
  { judge: 'plate-weight', against: 'acceptance', unknown: 'nothing' },
  must('locked-speeds'),
];
