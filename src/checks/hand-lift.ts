import type { Sourced } from '../input/installation.js';
import { STANDARD_GRAVITY } from '../model/conventions.js';
import { LOAD_CONSTANT } from '../model/hand-lift.js';
import type { Citation } from '../sources/index.js';
import { defineCheck, type Reading } from './define-check.js';
import type { Subject } from './finding.js';

const MANUAL: Citation = {
  source: 'niosh-lifting',
  clause: 'load constant of 51 lb (23 kg), ideal posture',
  confidence: 'two sources',
};

/** A piece that comes out of the pump. */
interface Piece {
  readonly name: string;
  readonly mass: Sourced;
}

/**
 * Pieces that come out are no heavier than one person may lift in the ideal posture. A comparison: whoever reaches over a
 * pipe may lift far less, and who plans the work decides.
 */
export const handLift = defineCheck({
  id: 'hand-lift',
  title: 'Pieces lifted by hand',
  unit: 'N',
  basis: [MANUAL],
  comparison: true,
  exceeds: 'checks.hand-lift.exceeds',
  noPlace: 'checks.hand-lift.no-place',
  places: piecesOf,
  at: ({ name }) => name,
  readings: ({ mass }): readonly Reading[] => [
    {
      kind: 'compared',
      demand: mass.value * STANDARD_GRAVITY,
      limit: LOAD_CONSTANT * STANDARD_GRAVITY,
      remark: 'checks.hand-lift.ideal',
    },
  ],
});

function piecesOf({ installation }: Subject): readonly Piece[] {
  const { motor, dimensions } = installation.pump;
  const pieces: readonly (readonly [string, Sourced | undefined])[] = [
    ['motor', motor.mass],
    ['rotor, shaft and cover', dimensions?.rotorMass],
    ['coupling', dimensions?.spacer?.couplingMass],
    ['seal', dimensions?.sealMass],
    ['guard', dimensions?.guardMass],
  ];
  return pieces.flatMap(([name, mass]) => (mass === undefined ? [] : [{ name, mass }]));
}
