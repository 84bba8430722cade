import type { Subject } from '../../analysis/subject.js';
import type { Installation, Sourced } from '../../input/installation.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import { LOAD_CONSTANT, recommendedWeight } from '../../model/room/hand-lift.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const MANUAL: Citation = {
  source: 'niosh-lifting',
  clause: 'load constant of 51 lb (23 kg), ideal posture',
  confidence: 'two sources',
};

/** A piece that comes out of the pump. */
interface Piece {
  readonly name: string;
  readonly mass: Sourced;
  /** Height of the hands over the floor, where it is known [m]. */
  readonly height?: number;
}

/**
 * Pieces that come out are no heavier than one person may lift, held close: in the ideal posture, or at the height of the
 * coupling for what comes out there. A comparison: whoever reaches over a pipe may lift far less, and who plans the work
 * decides.
 */
export const handLift = defineCheck({
  id: 'hand-lift',
  title: 'Manual lifting',
  trade: 'Rigger, and coordination of trades',
  section: 'lift',
  dependsOn: ['weights'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'hurt or break',
  unit: 'N',
  basis: [MANUAL],
  exceeds: 'checks.hand-lift.exceeds',
  noPlace: 'checks.hand-lift.no-place',
  places: piecesOf,
  at: ({ name }) => name,
  demands: ({ mass, height }): readonly Demand[] => {
    const demand = mass.value * STANDARD_GRAVITY;
    const ideal: Demand = {
      kind: 'compared',
      demand,
      limit: LOAD_CONSTANT * STANDARD_GRAVITY,
      remark: 'checks.hand-lift.ideal',
    };
    if (height === undefined) return [ideal];
    const held = recommendedWeight({ horizontal: CLOSE, vertical: height, travel: CLOSE });
    if (!(held > 0))
      return [{ kind: 'forbidden', happens: true, demand, advice: 'checks.hand-lift.too-high' }];
    const limit = held * STANDARD_GRAVITY;
    return [{ kind: 'compared', demand, limit, remark: 'checks.hand-lift.at-height' }];
  },
});

/** Held as close to the body and moved as little as the equation counts [m]. */
const CLOSE = 0.25;

/** Pieces that come out by hand through the window of the coupling. */
const WINDOW: readonly string[] = ['coupling', 'seal', 'guard'];

/** Middle of the window over the floor [m]. */
function windowHeight({ pump, room }: Installation): number | undefined {
  const spacer = pump.dimensions?.spacer;
  if (spacer === undefined || room.floor === undefined) return undefined;
  return pump.position[2] + spacer.from + spacer.length.value / 2 - room.floor;
}

function piecesOf({ installation }: Subject): readonly Piece[] {
  const { motor, dimensions } = installation.pump;
  const pieces: readonly (readonly [string, Sourced | undefined])[] = [
    ['motor', motor.mass],
    ['rotor, shaft and cover', dimensions?.rotorMass],
    ['coupling', dimensions?.spacer?.couplingMass],
    ['seal', dimensions?.sealMass],
    ['guard', dimensions?.guardMass],
  ];
  const atWindow = windowHeight(installation);
  return pieces.flatMap(([name, mass]): readonly Piece[] => {
    if (mass === undefined) return [];
    const height = WINDOW.includes(name) ? atWindow : undefined;
    return [{ name, mass, ...(height !== undefined && { height }) }];
  });
}
