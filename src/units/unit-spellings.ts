/** Units with many spellings: how a user writes them, and the expression handed to the library. */

/** Units that are spelt as in the library. */
const same = (...names: readonly string[]): Record<string, string> =>
  Object.fromEntries(names.map((name) => [name, name]));

/** Spellings of a length. */
export const length = {
  ...same('in', 'ft', 'yd', 'mm', 'cm', 'm', 'km'),
  inch: 'in',
  inches: 'in',
  '"': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  metre: 'm',
  metres: 'm',
};
/** Spellings of a pressure; a stress may be in more. */
export const pressure = {
  ...same('psi', 'ksi', 'psf', 'Pa', 'kPa', 'MPa', 'bar', 'ftH2O', 'inH2O', 'mH2O'),
  psig: 'psi',
  barg: 'bar',
  'lbf/in2': 'psi',
  'lb/in2': 'psi',
  'lb/ft2': 'psf',
  'N/mm2': 'MPa',
  'N/m2': 'Pa',
};
/** Spellings of a flow. */
export const flow = {
  ...same('gpm', 'cfm'),
  'L/s': 'L/s',
  'L/min': 'L/minute',
  'm3/h': 'm^3/hour',
  'm3/s': 'm^3/s',
  'ft3/min': 'cfm',
};
/** Spellings of a velocity. */
export const velocity = {
  ...same('ft/s', 'in/s', 'm/s', 'mm/s'),
  fps: 'ft/s',
  'ft/min': 'ft/minute',
  fpm: 'ft/minute',
};
