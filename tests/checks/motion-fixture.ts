/** Subjects with vibrations and a start, for the checks on motion. */

import type { Subject } from '../../src/analysis/subject.js';
import type { Check } from '../../src/checks/define-check.js';
import { runCheck } from '../../src/checks/run-check.js';
import type { Motor } from '../../src/input/installation.js';
import type { Finding } from '../../src/judging/finding.js';
import type { Mode } from '../../src/mechanics/modes/frequencies.js';
import { frame, type SubjectChange, subject } from './fixture.js';

/** Mass of the pump in these tests [kg]. */
const PUMP = 300;

/** A vibration in which the pump moves one metre to the east; the share of it is what is asked for. */
export function mode(frequency: number, share = 1): Mode {
  const moved = { translation: [1, 0, 0], rotation: [0, 0, 0] } as const;
  return {
    frequency,
    shape: { 'pump suction': moved, 'pump discharge': moved, H1: moved },
    modalMass: PUMP / share,
    massShare: [share, 0, 0],
  };
}

/** A pump at 30 turns a second with these vibrations, known up to a frequency. */
export function vibrating(
  modes: readonly Mode[],
  change: SubjectChange & { readonly completeTo?: number; readonly motor?: Partial<Motor> } = {},
): Subject {
  const plain = subject(change);
  const { pump } = plain.installation;
  const bodies = [
    {
      name: 'pump',
      points: ['pump suction', 'pump discharge'],
      masses: [{ name: 'pump', at: [0, 0, 1] as const, mass: PUMP, contents: 0, contentsGroup: 'none' }],
    },
  ];
  return {
    ...plain,
    installation: {
      ...plain.installation,
      pump: { ...pump, ...change.pump, motor: { ...pump.motor, speed: 60 * Math.PI, ...change.motor } },
    },
    layout: { ...plain.layout, frame: frame({ bodies }) },
    frequencies: { modes, counted: modes.length, completeTo: change.completeTo ?? 100, mass: 1000 },
  };
}

/** The finding of a check at a place. */
export function findingIn(check: Check, about: Subject, at: string): Finding {
  const found = runCheck(check, about).find((finding) => finding.at === at);
  if (found === undefined) throw new Error(`nothing found at ${at}`);
  return found;
}
