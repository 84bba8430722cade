/** From pressures to head. */

import type { Installation } from '../input/installation.js';
import { STANDARD_GRAVITY } from '../model/conventions.js';
import { boreArea } from '../model/frame/bore-area.js';

/** What both gauges show [Pa], and the flow while they were read running [m³/s]. */
export interface GaugeReadings {
  readonly rest: { readonly suction: number; readonly discharge: number };
  readonly running: { readonly suction: number; readonly discharge: number };
  readonly flow?: number;
}

/**
 * Head from two gauges, corrected for what they differ by at rest:
 *
 *     H = [(p_d − p_s)_running − (p_d − p_s)_rest] / (ρ g) + (v_d² − v_s²) / (2 g)
 *
 * At rest, in a filled line, gauges differ by their heights and by their errors only; both fall out.
 *
 * @param gauges - pressures [Pa], flow [m³/s]
 * @param density - of the liquid while running [kg/m³]
 * @param bores - areas of both ports, for the velocity head [m²]
 * @returns head [m]
 * @source statics
 */
export function headOf(
  { rest, running, flow }: GaugeReadings,
  density: number,
  bores: { readonly suction: number; readonly discharge: number },
): number {
  const pressure = running.discharge - running.suction - (rest.discharge - rest.suction);
  const velocityHead = (area: number) =>
    flow === undefined ? 0 : (flow / area) ** 2 / (2 * STANDARD_GRAVITY);
  return (
    pressure / (density * STANDARD_GRAVITY) + velocityHead(bores.discharge) - velocityHead(bores.suction)
  );
}

/** Areas of the pipes at both ports [m²]. */
export function portAreas(installation: Installation): {
  readonly suction: number;
  readonly discharge: number;
} {
  const area = (which: 'suction' | 'discharge'): number => {
    const line = installation.lines.find(({ from }) => from === which);
    return line === undefined ? Number.NaN : boreArea(line.section);
  };
  return { suction: area('suction'), discharge: area('discharge') };
}

/** Pressure difference of a head with the liquid at running temperature [Pa]. */
export function differenceOf(head: number, { service }: Installation): number {
  return head * service.density.running.value * STANDARD_GRAVITY;
}
