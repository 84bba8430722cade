import { POUND_PER_CUBIC_INCH } from './printed-units.js';

/** Densities of pipe and fitting metals as handbooks print them [lb/in³]. */
const printedDensities: Readonly<Record<string, number>> = {
  'carbon steel': 0.2833,
  'stainless steel': 0.29,
  copper: 0.323,
  'cast iron': 0.26,
  'ductile iron': 0.256,
};

/**
 * Density of a metal of the catalogue.
 *
 * @param material - name of the material [-]
 * @returns density [kg/m³], or undefined where the material is unknown
 * @source metals-handbook
 */
export function densityOf(material: string): number | undefined {
  const printed = Object.hasOwn(printedDensities, material) ? printedDensities[material] : undefined;
  return printed === undefined ? undefined : printed * POUND_PER_CUBIC_INCH;
}
