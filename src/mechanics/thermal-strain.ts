import { EngineError } from '../issues/issue.js';
import type { FrameMaterial } from '../model/frame.js';

/** Temperatures between which a material grows [K]. */
export interface TemperatureStep {
  readonly from: number;
  readonly to: number;
}

/**
 * Thermal strain between two temperatures, read by straight lines from the table of the material. Beyond the table
 * the nearest straight line goes on for at most 60 K.
 *
 * @param material - table of expansion, [K] and [-]
 * @param name - name of the material, for messages [-]
 * @param step - temperatures [K]
 * @returns strain, positive for growth [-]
 * @throws EngineError `mechanics.expansion-unknown` when a temperature is further than 60 K outside the table, or the
 *   table has fewer than two rows; data: `material`, `temperature` [K]
 * @source beam-theory
 */
export function thermalStrain(material: FrameMaterial, name: string, step: TemperatureStep): number {
  if (step.from === step.to) return 0;
  return strainAt(material, name, step.to) - strainAt(material, name, step.from);
}

/** How far outside its table a material is still read [K]. */
const REACH = 60;

function strainAt(material: FrameMaterial, name: string, temperature: number): number {
  const table = material.expansion;
  const low = table[0];
  const high = table[table.length - 1];
  if (
    low === undefined ||
    high === undefined ||
    table.length < 2 ||
    !(temperature >= low[0] - REACH && temperature <= high[0] + REACH)
  ) {
    throw new EngineError('mechanics.expansion-unknown', { material: name, temperature });
  }
  let row = 1;
  while (row < table.length - 1 && temperature > table[row]![0]) row++;
  const [from, start] = table[row - 1]!;
  const [to, end] = table[row]!;
  return start + ((end - start) * (temperature - from)) / (to - from);
}
