import { isOf } from '../../checks/all-checks.js';
import { accessOf } from '../../checks/room/access-subject.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import { carryingLegs, legPull, slingFactor } from '../../model/room/lift-geometry.js';
import type { ReportContext, View } from '../context.js';
import { findingRow } from '../words/finding-row.js';

interface Row {
  readonly what: string;
  readonly value: string;
  readonly note: string;
}

/**
 * Tables of the lift: the heights that add up from the eyes of the motor to the anchor, and the loads.
 *
 * @param context - pump, lift and writer
 * @returns rows of text; what the file does not give is left out
 */
export function liftRows(context: ReportContext) {
  const { installation } = context.subject;
  const { lift } = installation.room;
  const verdicts = context.findings
    .filter((finding) => isOf(finding, 'lift-anchor', 'sling-legs') && finding.verdict !== 'does-not-apply')
    .map((finding) => findingRow(finding, context));
  return {
    hasLift: lift !== undefined,
    heights: heights(context),
    loads: loads(context),
    verdicts,
    hasVerdicts: verdicts.length > 0,
  } satisfies View;
}

function heights(context: ReportContext): readonly View[] {
  const access = accessOf(context.subject);
  const { lift, withdrawal } = access;
  const { write } = context;
  const print = (metres: number): string => write.quantity(metres, 'length', { feetInches: true });
  const row = (what: string, metres: number | undefined, note = ''): readonly Row[] =>
    metres === undefined ? [] : [{ what, value: print(metres), note }];
  if (lift === undefined) return [];
  const hook =
    lift.hookHeight === undefined || lift.slingHeight === undefined
      ? undefined
      : lift.hookHeight - lift.slingHeight;
  const needed = withdrawal === undefined || lift.gear === undefined ? undefined : withdrawal + lift.gear;
  const left = needed === undefined ? undefined : lift.available - needed;
  return [
    ...row('Motor drawn by', withdrawal, access.withdrawalSource ?? ''),
    ...row('Sling, from its eyes to its top', lift.slingHeight),
    ...row('Hook to sling', hook),
    ...row('Hoist, pulled up', lift.hoistHeight),
    ...row('Together', needed),
    ...row('From the eyes to the anchor', lift.available),
    ...row(
      left !== undefined && left < 0 ? 'Short by' : 'Left over',
      left === undefined ? left : Math.abs(left),
    ),
    ...row('Anchor off the centre line of the motor', lift.offCentre),
  ].map((each) => ({ ...each }));
}

function loads(context: ReportContext): readonly View[] {
  const { installation } = context.subject;
  const { lift } = installation.room;
  const { write } = context;
  const weight = installation.pump.motor.mass.value * STANDARD_GRAVITY;
  const force = (newtons: number): string => write.quantity(newtons, 'force');
  const factor = lift?.factor;
  const sling = lift?.sling;
  const rotor = installation.pump.dimensions?.rotorMass;
  const document = (origin: { readonly kind: string; readonly document?: string } | undefined): string =>
    origin?.document ?? '';
  const rows: readonly (Row | undefined)[] = [
    { what: 'Motor', value: force(weight), note: '' },
    rotor && { what: 'Rotor, shaft and cover', value: force(rotor.value * STANDARD_GRAVITY), note: '' },
    {
      what: 'Casing, empty',
      value: force(installation.pump.casing.mass.value * STANDARD_GRAVITY),
      note: 'never on the eyes of the motor',
    },
    factor && {
      what: "Owner's factor",
      value: write.plain(factor.value),
      note: document(factor.origin.kind === 'given' ? factor.origin : undefined),
    },
    factor && {
      what: 'Load the anchor is asked for',
      value: force(weight * factor.value),
      note: 'motor times factor',
    },
    lift?.rating && {
      what: 'Anchor and hoist rated for',
      value: force(lift.rating.value * STANDARD_GRAVITY),
      note: 'structure not judged',
    },
    sling && {
      what: 'Legs of the sling',
      value: `${sling.legs} at ${write.quantity(sling.angle.value, 'angle')}`,
      note: `factor ${write.plain(slingFactor(sling.angle.value), 4)}, ${carryingLegs(sling.legs)} carrying`,
    },
    sling && {
      what: 'Pull in a leg',
      value: force(legPull(weight, sling.legs, sling.angle.value)),
      note: 'without factor',
    },
    sling?.rating && {
      what: 'Leg rated for',
      value: force(sling.rating.value * STANDARD_GRAVITY),
      note: 'straight pull',
    },
  ];
  return rows.flatMap((row) => (row === undefined ? [] : [{ ...row }]));
}
