/** Numbers with units at the border of the product: text to SI, SI to printed text. */
export { type Dimension, dimensions } from './dimension.js';
export { type FormatOptions, formatNumber, formatQuantity, unitLabel } from './format.js';
export { formatLoad, formatLoadNumber, loadNumber } from './format-load.js';
export { knownUnit, type ParsedQuantity, parseQuantity } from './parse-quantity.js';
export { printUnits, type UnitSystem } from './print-units.js';
export { plainText, readNumber } from './read-number.js';
export { temperatureZero, unitFactor, unitNames } from './unit-table.js';
