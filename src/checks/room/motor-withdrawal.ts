import { givenIn } from '../../analysis/citation-of.js';
import { type Capsule, plus, sweepUp } from '../../geometry/index.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { type Access, accessOf, clashOf, FAR, wayBefore, withoutHolder } from './access-subject.js';
import { inTheWay } from './in-the-way.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: "the manufacturer's dimension for drawing the motor governs",
  confidence: 'read',
};

const STATICS: Citation = {
  source: 'statics',
  clause: 'height to draw, sling, hook and hoist add up',
  confidence: 'computed',
};

/** Radius of the chain and hoist over the hook: half an inch, the least they take [m]. */
const CHAIN = 0.0127;

/**
 * The motor comes out upward: its own way is free, the sling's too, and sling, hook and hoist fit under the anchor.
 *
 * Why: the motor and rotor of a vertical pump come out upward. What stands over the motor on the day of the
 * layout, a beam, a duct, another pipe, is what the crew finds there on the day the seal fails; and a height that is
 * free is of no use where the hoist hangs in it.
 */
export const motorWithdrawal = defineCheck({
  id: 'motor-withdrawal',
  title: 'Motor removal clearance',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [MAKER, STATICS],
  exceeds: 'checks.motor-withdrawal.exceeds',
  noPlace: 'checks.motor-withdrawal.no-place',
  places: ({ installation }) => [installation.pump.mark],
  at: () => 'motor',
  demands: (_mark, subject): readonly Demand[] => {
    const access = accessOf(subject);
    const { pump, obstacles, withdrawal, withdrawalSource } = access;
    const basis = withdrawalSource === undefined ? {} : { basis: givenIn(withdrawalSource) };
    const clash = clashOf(pump.motorWithBox, obstacles);
    if (clash !== undefined) {
      const advice = 'checks.motor-withdrawal.clash';
      const data = inTheWay(clash.name, 0, pump.motorWithBox, access);
      return [{ kind: 'forbidden', happens: true, label: 'motor', advice, data }];
    }
    const way = wayBefore(pump.motorWithBox, [0, 0, 1], obstacles, FAR);
    const stopped = way.stoppedBy !== undefined && Number.isFinite(way.distance);
    const missing =
      withdrawal === undefined ? 'checks.motor-withdrawal.no-height' : 'checks.motor-withdrawal.no-ceiling';
    const short = stopped && withdrawal !== undefined ? withdrawal - way.distance : 0;
    const swept = short > 0 && withdrawal !== undefined ? sweepUp(pump.motorWithBox, withdrawal) : undefined;
    return [
      {
        kind: 'compared',
        label: 'motor',
        sense: 'at least',
        demand: stopped ? Math.max(0, way.distance) : undefined,
        limit: withdrawal,
        missing,
        remark: 'checks.motor-withdrawal.free',
        ...(stopped && { data: inTheWay(way.stoppedBy ?? '', Math.max(0, short), swept, access) }),
        ...basis,
      },
      ...(withdrawal === undefined || short > 0 ? [] : riggingDemands(access, withdrawal)),
    ];
  },
});

/** Sling, hook and hoist over the drawn motor. */
function riggingDemands(access: Access, withdrawal: number): readonly Demand[] {
  const { lift, pump } = access;
  if (lift === undefined) return [];
  if (lift.gear === undefined || lift.hookHeight === undefined || lift.rigging === undefined)
    return [{ kind: 'cannot-tell', label: 'lifting gear', code: 'checks.motor-withdrawal.no-gear' }];
  const needed = withdrawal + lift.gear;
  const obstacles = withoutHolder(access);
  const way = wayBefore(lift.rigging, [0, 0, 1], obstacles, withdrawal + CHAIN);
  const hook = plus([pump.motor.to[0], pump.motor.to[1], pump.eyes], [0, 0, withdrawal + lift.hookHeight]);
  const chain: Capsule = { kind: 'capsule', from: lift.anchor, to: hook, radius: CHAIN };
  const crossed = needed <= lift.available ? clashOf(chain, obstacles) : undefined;
  const gear: Demand =
    lift.available > 0
      ? {
          kind: 'compared',
          label: 'lifting gear',
          sense: 'at least',
          demand: lift.available,
          limit: needed,
          advice: 'checks.motor-withdrawal.gear',
          remark: 'checks.motor-withdrawal.gear-fits',
          basis: STATICS,
          data: { obstacle: 'anchor', short: Math.max(0, needed - lift.available) },
        }
      : {
          kind: 'forbidden',
          label: 'lifting gear',
          happens: true,
          advice: 'checks.motor-withdrawal.anchor-low',
          basis: STATICS,
        };
  const sling: readonly Demand[] =
    way.stoppedBy === undefined || way.distance >= withdrawal
      ? []
      : [
          {
            kind: 'forbidden',
            label: 'sling',
            happens: true,
            demand: withdrawal - way.distance,
            advice: 'checks.motor-withdrawal.sling',
            basis: STATICS,
            data: inTheWay(
              way.stoppedBy,
              withdrawal - way.distance,
              sweepUp(lift.rigging, withdrawal),
              access,
              obstacles,
            ),
          },
        ];
  const hanging: readonly Demand[] =
    crossed === undefined
      ? []
      : [
          {
            kind: 'forbidden',
            label: 'hoist',
            happens: true,
            advice: 'checks.motor-withdrawal.hoist',
            basis: STATICS,
            data: inTheWay(crossed.name, 0, chain, access, obstacles),
          },
        ];
  return [gear, ...sling, ...hanging];
}
