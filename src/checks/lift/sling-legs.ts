import { citationOf } from '../../analysis/citation-of.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import { carryingLegs, legPull } from '../../model/room/lift-geometry.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const TABLE: Citation = {
  source: 'sling-tables',
  clause: 'factor 1/sin of the angle from the level; nothing below 30°',
  confidence: 'two sources',
};

/** Flattest angle of a leg from the level [rad]: 30 degrees. */
const FLATTEST = Math.PI / 6;

/**
 * The legs of the sling stand steep enough, and each carries its pull times the owner's factor.
 *
 * Why: at 30 degrees a leg pulls twice what an upright one does, and the eyes are bent sideways besides. The eyes of a
 * motor are for the motor alone, never for the whole pump.
 */
export const slingLegs = defineCheck({
  id: 'sling-legs',
  title: 'Sling load',
  trade: 'Rigger, and coordination of trades',
  section: 'lift',
  dependsOn: ['room', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: 'rad',
  basis: [TABLE],
  exceeds: 'checks.sling-legs.flat',
  noPlace: 'checks.sling-legs.no-place',
  places: ({ installation }) =>
    installation.room.lift?.sling === undefined ? [] : (['angle', 'pull'] as const),
  at: (what) => (what === 'angle' ? 'sling, angle' : 'sling, pull in a leg'),
  demands: (what, { installation }): readonly Demand[] => {
    const { lift } = installation.room;
    const sling = lift?.sling;
    if (lift === undefined || sling === undefined) return [];
    if (what === 'angle')
      return [
        {
          kind: 'compared',
          demand: FLATTEST,
          limit: sling.angle.value,
          remark: 'checks.sling-legs.steep',
        },
      ];
    const { factor } = lift;
    const weight = installation.pump.motor.mass.value * STANDARD_GRAVITY;
    const pull = legPull(weight, sling.legs, sling.angle.value);
    const allowed = sling.rating === undefined ? undefined : sling.rating.value * STANDARD_GRAVITY;
    return [
      {
        kind: 'compared',
        unit: 'N',
        demand: factor === undefined ? undefined : pull * factor.value,
        limit: factor === undefined ? undefined : allowed,
        missing: factor === undefined ? 'checks.lift-anchor.no-factor' : 'checks.sling-legs.no-rating',
        basis: sling.rating === undefined ? TABLE : citationOf(sling.rating, TABLE),
        advice: 'checks.sling-legs.exceeds',
        ...(factor && {
          calculation: {
            formula: 'f * W / (n * sin(a))',
            symbol: 'F',
            unit: 'N',
            values: [
              { symbol: 'f', value: factor.value, unit: '-', meaning: "owner's factor" },
              { symbol: 'W', value: weight, unit: 'N', meaning: 'weight of the motor' },
              { symbol: 'n', value: carryingLegs(sling.legs), unit: '-', meaning: 'legs that carry' },
              {
                symbol: 'a',
                value: sling.angle.value,
                unit: 'rad',
                meaning: 'angle of the legs from the level',
              },
            ],
          },
        }),
      },
    ];
  },
});
