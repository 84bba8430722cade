import { EngineError } from '../../../issues/issue.js';
import type {
  Frame,
  FrameBend,
  FrameCondition,
  FrameMaterial,
  FramePipe,
} from '../../../model/frame/frame.js';
import { tubeSection } from './tube-section.js';

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

/**
 * Strain that a member would take if nothing held it: heat, and pressure where the frame asks for it.
 *
 * @param frame - materials, installation temperature [K], options
 * @param member - pipe or bend
 * @param condition - temperature [K] and pressure [Pa]
 * @returns axial strain [-]
 * @throws EngineError `mechanics.expansion-unknown`
 * @source beam-theory
 */
export function memberStrain(frame: Frame, member: FramePipe | FrameBend, condition: FrameCondition): number {
  const material = frame.materials[member.material]!;
  const step = { from: frame.installationTemperature, to: condition.temperature };
  const heat = thermalStrain(material, member.material, step);
  if (frame.options?.pressureElongation !== true) return heat;
  return heat + pressureStrain(member, material, condition.pressure);
}

/**
 * Lengthening of a closed tube under pressure.
 *
 *     ε = p d² (1 − 2ν) / (E (D² − d²))
 *
 * @param member - tube [m]
 * @param material - modulus [Pa], Poisson's ratio [-]
 * @param pressure - gauge [Pa]
 * @returns axial strain [-]
 * @source timoshenko-1
 */
export function pressureStrain(
  member: FramePipe | FrameBend,
  material: FrameMaterial,
  pressure: number,
): number {
  const { bore, area } = tubeSection(member.tube);
  return (pressure * bore * (1 - 2 * material.poisson)) / (material.modulus * area);
}
