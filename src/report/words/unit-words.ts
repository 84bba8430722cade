/** What the cards for the fitter say of one unit: its disconnect, its pieces, its springs, the props of its pipe. */

import { isNotWorkedOut } from '../../analysis/memoized.js';
import { lineAt } from '../../analysis/nozzles/nozzle-faces.js';
import { pumpOutLines } from '../../analysis/supports/pump-out-lines.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { disconnectDistance } from '../../checks/electrical/disconnect-in-sight.js';
import type { Installation, Sourced } from '../../input/installation.js';
import { inCondition } from '../../model/conditions/condition-roles.js';
import { LOAD_CONSTANT } from '../../model/room/hand-lift.js';
import type { FormatOptions } from '../../units/index.js';
import type { ReportContext } from '../context.js';
import { roughly } from '../rows/isolation-points.js';

/** Temperature from which water scalds in seconds: 140 °F [K]. */
export const SCALDS = 333.15;

/** Temperature that bare hands bear on metal for a moment: 120 °F [K]. */
export const TOUCHABLE = 322.04;

/** A number and its unit stay on one line. */
export function glued(quantity: string): string {
  return quantity.replaceAll(' ', '\u00a0');
}

/** Vibration is read in thousandths of a metre or in inches a second, whatever velocity of liquid is read in. */
export function vibrationUnit({ system }: ReportContext['write']): FormatOptions {
  return { unit: system === 'us' ? 'in/s' : 'mm/s', significant: 2 };
}

/** The hottest that the liquid gets in service [K]. */
export function hottest({ service }: Installation): number {
  return Math.max(service.hotTemperature.value, service.runningTemperature.value);
}

/**
 * The disconnect of the motor in one phrase.
 *
 * @param context - installation and writer
 * @returns for example `starter MS-1, 12'-0" from the motor, in sight, can be locked open`; empty where there is none
 */
export function disconnectText(context: ReportContext): string {
  const { disconnect } = context.subject.installation.pump;
  if (disconnect === undefined) return '';
  const { inSight, lockable } = disconnect;
  const distance = disconnectDistance(context.subject);
  return [
    disconnectName(context.subject.installation.pump),
    ...(distance === undefined ? [] : [`${roughly(distance, context.write)} from the motor`]),
    ...(inSight === undefined ? [] : [inSight ? 'in sight' : 'out of sight']),
    ...(lockable === undefined ? [] : [lockable ? 'can be locked open' : 'cannot be locked open']),
  ].join(', ');
}

/** Name of the disconnect, or what it is. */
export function disconnectName({ disconnect }: Installation['pump']): string {
  return disconnect?.name ?? disconnect?.panel ?? 'the disconnect';
}

/** How the motor is started, as far as it matters to who locks it out. */
export function starterOf({ subject, assumptions }: ReportContext) {
  const kind = subject.installation.pump.motor.start?.kind;
  return {
    isDrive: kind === 'variable-speed drive',
    isSoftStarter: kind === 'soft starter',
    isStartUnknown: assumptions.some(({ assumption }) => assumption.path === 'pump.motor.start'),
  };
}

/**
 * Pieces that come out, with what they weigh and whether one person may lift them in the ideal posture.
 *
 * @param context - installation and writer
 * @returns rows; a piece without a weight says so
 */
export function pieceRows({ subject, write }: ReportContext) {
  const { motor, dimensions, build } = subject.installation.pump;
  const split = build === 'split-coupled';
  const pieces: readonly (readonly [string, Sourced | undefined])[] = [
    ['Guard, heaviest half', dimensions?.guardMass],
    ...(split ? ([['Coupling, heaviest piece', dimensions?.spacer?.couplingMass]] as const) : []),
    ['Seal or cartridge', dimensions?.sealMass],
    ['Rotor, shaft and cover', dimensions?.rotorMass],
    ['Motor', motor.mass],
  ];
  return pieces.map(([piece, mass]) => ({
    piece,
    weight: mass === undefined ? 'not in the file' : weightText(mass, write),
    how:
      mass === undefined
        ? 'weigh it before lifting it'
        : mass.value > LOAD_CONSTANT
          ? 'hoist'
          : 'by hand, close to the body',
    isHoist: mass === undefined || mass.value > LOAD_CONSTANT,
  }));
}

function weightText({ value, origin }: Sourced, write: ReportContext['write']): string {
  return `${write.quantity(value, 'mass')}${origin.kind === 'assumed' ? ' (assumed: read the nameplate)' : ''}`;
}

/** Weight one person lifts in the ideal posture, printed. */
export function handLiftText({ write }: ReportContext): string {
  return write.quantity(LOAD_CONSTANT, 'mass', { significant: 2 });
}

/**
 * Springs with what they carry when the line is filled.
 *
 * @param context - layout and response
 * @returns phrases such as `H3 2.4 kN`
 */
export function springTexts({ subject, write }: ReportContext): readonly string[] {
  const { layout, response, installation } = subject;
  const load = (mark: string): string => {
    const down = supportLoadIn(inCondition(response.conditions, 'filled'), mark)?.downward;
    return down === undefined ? '' : `\u00a0${glued(write.load(Math.abs(down)))}`;
  };
  const hung = layout.supports
    .filter(({ part }) => part?.spring !== undefined)
    .map(({ mark }) => `${mark}${load(mark)}`);
  const { springs } = installation.pump.base ?? {};
  const base =
    springs === undefined
      ? []
      : [
          `${springs.count} under the pump, ${glued(write.quantity(springs.load.value, 'force'))} each as set`,
        ];
  return [...hung, ...base];
}

/**
 * What props the pipe where the pump comes out, springs pinned.
 *
 * @param context - solved lines
 * @returns phrases such as `suction line 1.2 kN up`; empty where it was not worked out
 */
export function propTexts({ subject, write }: ReportContext): readonly string[] {
  const worked = pumpOutLines(subject);
  if (isNotWorkedOut(worked)) return [];
  return worked.flanges.flatMap(({ which, prop, pinnedProp, falls }) => {
    const load = pinnedProp ?? prop;
    if (load === undefined) return [`${lineAt(subject, which)}: a prop at its flange is not enough`];
    const way = load < 0 ? 'hold down with' : 'prop with';
    const first = falls === undefined ? '' : ', or it falls';
    return [`${lineAt(subject, which)}: ${way} ${glued(write.quantity(Math.abs(load), 'force'))}${first}`];
  });
}
