/**
 * Equations of the piping codes for longitudinal stress in metal pipe: pressure, sustained loads, displacement
 * range and their allowances. Nothing is compared here; limits belong to the checks.
 */
import { EngineError } from '../../issues/issue.js';
import type { Tube } from '../../model/frame/frame.js';

/** Pressure inside a tube. */
export interface PressurisedTube {
  /** Dimensions of the tube [m]. */
  readonly tube: Tube;
  /** Gauge pressure [Pa]. */
  readonly pressure: number;
}

/** What acts on one cross-section under weight and other lasting loads. */
export interface SustainedState extends PressurisedTube {
  /** Resultant of the three moments [N·m]. */
  readonly moment: number;
  /** Stress intensification factor i of the fitting, 1 on plain pipe [-]. */
  readonly intensification: number;
  /** Axial force, tension or compression [N]; counted by the B31.9 sum only. */
  readonly axialForce: number;
  /** Section modulus where it is not that of the tube, as at a reduced branch [m³]. */
  readonly modulus?: number;
}

/**
 * Bore of a tube.
 *
 *     d = D − 2 t
 *
 * @param tube - dimensions of the tube [m]
 * @returns inside diameter [m]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore; data: `outsideDiameter`, `wall` [m]
 * @source statics
 */
export function insideDiameter(tube: Tube): number {
  const { outsideDiameter, wall } = tube;
  if (!(wall > 0 && outsideDiameter > 2 * wall)) {
    throw new EngineError('mechanics.stress.not-a-tube', { outsideDiameter, wall });
  }
  return outsideDiameter - 2 * wall;
}

/**
 * Metal area of a tube.
 *
 *     A = π (D² − d²) / 4
 *
 * @param tube - dimensions of the tube [m]
 * @returns cross-section of the metal [m²]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source statics
 */
export function metalArea(tube: Tube): number {
  const { outsideDiameter: D } = tube;
  const d = insideDiameter(tube);
  return (Math.PI * (D ** 2 - d ** 2)) / 4;
}

/**
 * Section modulus of a tube in bending.
 *
 *     Z = π (D⁴ − d⁴) / (32 D)
 *
 * @param tube - dimensions of the tube [m]
 * @returns section modulus [m³]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source statics
 */
export function sectionModulus(tube: Tube): number {
  const { outsideDiameter: D } = tube;
  const d = insideDiameter(tube);
  return (Math.PI * (D ** 4 - d ** 4)) / (32 * D);
}

/**
 * Section modulus that a section is judged with: its own where it has one, else that of the tube.
 *
 * @param state - tube [m], own section modulus [m³]
 * @returns section modulus [m³]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source statics
 */
export function modulusOf(state: { readonly tube: Tube; readonly modulus?: number }): number {
  return state.modulus ?? sectionModulus(state.tube);
}

/**
 * Longitudinal stress from pressure as the end force spread over the metal area.
 *
 *     S = P d² / (D² − d²)
 *
 * @param state - tube [m] and gauge pressure [Pa]
 * @returns longitudinal stress [Pa]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source asme-b31.9 para 902.3.2(e), read
 */
export function longitudinalPressureStress(state: PressurisedTube): number {
  const { outsideDiameter: D } = state.tube;
  const d = insideDiameter(state.tube);
  return (state.pressure * d ** 2) / (D ** 2 - d ** 2);
}

/**
 * Longitudinal stress from pressure by the thin-wall form, a little above the exact metal-area form.
 *
 *     S = P D / (4 t)
 *
 * @param state - tube [m] and gauge pressure [Pa]
 * @returns longitudinal stress [Pa]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source asme-b31.1 para 104.8.1, memory
 */
export function thinWallPressureStress(state: PressurisedTube): number {
  insideDiameter(state.tube);
  return (state.pressure * state.tube.outsideDiameter) / (4 * state.tube.wall);
}

/**
 * Factor on the moment of sustained loads: three quarters of the intensification factor, never less than 1,
 * because a fitting is never stronger than the plain pipe beside it.
 *
 * @param intensification - stress intensification factor i [-]
 * @returns 0.75 i, at least 1 [-]
 * @source asme-b31.1 para 104.8.1, memory
 */
export function sustainedIntensification(intensification: number): number {
  return Math.max(1, 0.75 * intensification);
}

/**
 * Longitudinal stress from sustained loads by B31.1.
 *
 *     SL = P D / (4 t) + 0.75 i MA / Z          0.75 i at least 1
 *
 * @param state - tube [m], gauge pressure [Pa], resultant moment [N·m], intensification [-]
 * @returns sustained stress SL [Pa]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source asme-b31.1 para 104.8.1, memory
 */
export function powerSustainedStress(state: SustainedState): number {
  const bending = (sustainedIntensification(state.intensification) * state.moment) / modulusOf(state);
  return thinWallPressureStress(state) + bending;
}

/**
 * Longitudinal stress from sustained loads by B31.9: the sum of the stresses from pressure, weight and other
 * lasting loads. The axial force counts as a positive stress in either sense: its compression never helps.
 * The code names no factor on bending; that of B31.1 is used, so that a fitting is not judged as plain pipe.
 *
 *     SL = P d² / (D² − d²) + 0.75 i M / Z + |N| / A          0.75 i at least 1
 *
 * @param state - tube [m], gauge pressure [Pa], resultant moment [N·m], intensification [-], axial force [N]
 * @returns sustained stress SL [Pa]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source asme-b31.9 para 902.3.2(d) and (e), read
 */
export function buildingSustainedStress(state: SustainedState): number {
  const bending = (sustainedIntensification(state.intensification) * state.moment) / modulusOf(state);
  return longitudinalPressureStress(state) + bending + Math.abs(state.axialForce) / metalArea(state.tube);
}

/**
 * Stress range from restrained expansion and other displacement.
 *
 *     SE = i MC / Z          MC the resultant of the range of the three moments
 *
 * @param state - tube [m], range of the resultant moment [N·m], intensification [-], own section modulus [m³]
 * @returns displacement stress range SE [Pa]
 * @throws EngineError `mechanics.stress.not-a-tube` when the wall leaves no bore
 * @source asme-b31.1 para 104.8.3, memory
 */
export function displacementStressRange(state: {
  readonly tube: Tube;
  readonly moment: number;
  readonly intensification: number;
  readonly modulus?: number;
}): number {
  return (state.intensification * state.moment) / modulusOf(state);
}

/**
 * Reduction of the allowable range with the number of full temperature cycles.
 *
 *     f = 6 / N^0.2, at most 1
 *
 * @param cycles - equivalent full cycles over the life N [-]
 * @returns cycle factor f [-]
 * @throws EngineError `mechanics.stress.no-cycles` when the number is not above zero; data: `cycles` [-]
 * @source asme-b31.1 para 102.3.2, memory
 */
export function cycleFactor(cycles: number): number {
  if (!(cycles > 0)) throw new EngineError('mechanics.stress.no-cycles', { cycles });
  return Math.min(1, 6 / cycles ** 0.2);
}

/** What the allowable displacement range is made of. */
export interface AllowableStresses {
  /** Allowable stress at the cold temperature Sc [Pa]. */
  readonly cold: number;
  /** Allowable stress at the hot temperature Sh [Pa]. */
  readonly hot: number;
  /** Equivalent full temperature cycles over the life [-]. */
  readonly cycles: number;
}

/**
 * Allowable displacement stress range without use of what the sustained stress leaves over.
 *
 *     SA = f (1.25 Sc + 0.25 Sh)
 *
 * @param allowables - cold and hot allowable stress [Pa], cycles [-]
 * @returns allowable range SA [Pa]
 * @throws EngineError `mechanics.stress.no-cycles` when the number of cycles is not above zero
 * @source asme-b31.1 para 102.3.2(C) eq (1), two sources; asme-b31.9 para 902.3.2(d) refers to it, read
 */
export function allowableDisplacementRange(allowables: AllowableStresses): number {
  return cycleFactor(allowables.cycles) * (1.25 * allowables.cold + 0.25 * allowables.hot);
}

/**
 * Allowable displacement stress range where the unused part of the sustained allowance, Sh − SL, is added.
 *
 *     SA = f [1.25 (Sc + Sh) − SL]
 *
 * @param allowables - cold and hot allowable stress [Pa], cycles [-]
 * @param sustained - sustained stress SL at the same place, not above the hot allowable [Pa]
 * @returns allowable range SA [Pa]
 * @throws EngineError `mechanics.stress.no-cycles` when the number of cycles is not above zero
 * @throws EngineError `mechanics.stress.nothing-left-over` when SL is above Sh; data: `sustained`, `hot` [Pa]
 * @source asme-b31.9 para 902.3.2(d), read; formula two sources
 */
export function allowableRangeWithLeftOver(allowables: AllowableStresses, sustained: number): number {
  if (!(sustained <= allowables.hot)) {
    throw new EngineError('mechanics.stress.nothing-left-over', { sustained, hot: allowables.hot });
  }
  return cycleFactor(allowables.cycles) * (1.25 * (allowables.cold + allowables.hot) - sustained);
}
