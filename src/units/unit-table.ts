import type { Dimension } from './dimension.js';
import { conversionFactor } from './unit-library.js';
import { flow, length, pressure, velocity } from './unit-spellings.js';

/** Units a dimension may be written in: how a user writes it, and the expression handed to the library. */
interface DimensionUnits {
  /** SI unit, in the library's notation; empty for plain ratios. */
  readonly si: string;
  readonly units: Readonly<Record<string, string>>;
}

/** Every unit accepted, by dimension. Keys are what a file may hold after `normaliseUnit`. */
const unitTable: Readonly<Record<Dimension, DimensionUnits>> = {
  length: { si: 'm', units: length },
  head: { si: 'm', units: { ...length, ftH2O: 'ft', mH2O: 'm' } },
  area: {
    si: 'm^2',
    units: {
      in2: 'in^2',
      ft2: 'ft^2',
      mm2: 'mm^2',
      cm2: 'cm^2',
      m2: 'm^2',
      'sq in': 'in^2',
      'sq ft': 'ft^2',
    },
  },
  volume: {
    si: 'm^3',
    units: {
      gal: 'gal',
      gallon: 'gal',
      gallons: 'gal',
      L: 'L',
      litre: 'L',
      litres: 'L',
      m3: 'm^3',
      ft3: 'ft^3',
      in3: 'in^3',
      cm3: 'cm^3',
    },
  },
  mass: {
    si: 'kg',
    units: {
      lb: 'lbm',
      lbs: 'lbm',
      lbm: 'lbm',
      lbf: 'lbm',
      kip: 'klbm',
      kg: 'kg',
      g: 'g',
      tonne: 'tonne',
      t: 'tonne',
      N: 'kgOfNewton',
      kN: 'kkgOfNewton',
      ton: 'shortTon',
      tons: 'shortTon',
    },
  },
  force: {
    si: 'N',
    units: { lb: 'lbf', lbs: 'lbf', lbf: 'lbf', kip: 'kip', kips: 'kip', N: 'N', kN: 'kN', kgf: 'kgf' },
  },
  moment: {
    si: 'N m',
    units: {
      'ft.lbf': 'ft lbf',
      'ft.lb': 'ft lbf',
      'lbf.ft': 'ft lbf',
      'lb.ft': 'ft lbf',
      'in.lbf': 'in lbf',
      'in.lb': 'in lbf',
      'lbf.in': 'in lbf',
      'lb.in': 'in lbf',
      'ft.kip': 'ft kip',
      'kip.ft': 'ft kip',
      'N.m': 'N m',
      'kN.m': 'kN m',
      'N.mm': 'N mm',
      Nm: 'N m',
      kNm: 'kN m',
    },
  },
  pressure: { si: 'Pa', units: pressure },
  stress: { si: 'Pa', units: { ...pressure, Mpsi: 'Mpsi', GPa: 'GPa' } },
  temperature: { si: 'K', units: { degF: 'stepF', degC: 'K', K: 'K' } },
  'temperature difference': { si: 'K', units: { degF: 'stepF', degC: 'K', K: 'K' } },
  flow: { si: 'm^3/s', units: flow },
  power: { si: 'W', units: { hp: 'hp', bhp: 'hp', W: 'W', kW: 'kW', MW: 'MW' } },
  speed: { si: 'rad/s', units: { rpm: 'rpm', 'r/min': 'rpm', 'rad/s': 'rad/s', 'r/s': 'cycle/s' } },
  frequency: { si: 's^-1', units: { Hz: 'hertz1', cpm: 'cpm' } },
  angle: { si: 'rad', units: { deg: 'deg', rad: 'rad' } },
  stiffness: {
    si: 'N/m',
    units: {
      'lb/in': 'lbf/in',
      'lbf/in': 'lbf/in',
      'lb/ft': 'lbf/ft',
      'lbf/ft': 'lbf/ft',
      'kip/in': 'kip/in',
      'kip/ft': 'kip/ft',
      'N/mm': 'N/mm',
      'N/m': 'N/m',
      'kN/m': 'kN/m',
      'kN/mm': 'kN/mm',
    },
  },
  'rotational stiffness': {
    si: 'N m/rad',
    units: {
      'ft.lbf/deg': 'ft lbf/deg',
      'ft.lb/deg': 'ft lbf/deg',
      'ft.lbf/rad': 'ft lbf/rad',
      'ft.lb/rad': 'ft lbf/rad',
      'in.lbf/deg': 'in lbf/deg',
      'in.lb/deg': 'in lbf/deg',
      'in.lbf/rad': 'in lbf/rad',
      'N.m/deg': 'N m/deg',
      'N.m/rad': 'N m/rad',
      'kN.m/rad': 'kN m/rad',
      'kN.m/deg': 'kN m/deg',
    },
  },
  density: {
    si: 'kg/m^3',
    units: {
      'lb/ft3': 'lbm/ft^3',
      pcf: 'lbm/ft^3',
      'lb/in3': 'lbm/in^3',
      'lb/gal': 'lbm/gal',
      'kg/m3': 'kg/m^3',
      'g/cm3': 'g/cm^3',
      'kg/L': 'kg/L',
    },
  },
  'mass per length': {
    si: 'kg/m',
    units: {
      'lb/ft': 'lbm/ft',
      'lbf/ft': 'lbm/ft',
      plf: 'lbm/ft',
      'lb/in': 'lbm/in',
      'kg/m': 'kg/m',
      'N/m': 'kgOfNewton/m',
    },
  },
  'mass per area': {
    si: 'kg/m^2',
    units: { 'lb/ft2': 'lbm/ft^2', psf: 'lbm/ft^2', 'kg/m2': 'kg/m^2', 'N/m2': 'kgOfNewton/m^2' },
  },
  expansion: {
    si: 'K^-1',
    units: {
      '1/degF': 'stepF^-1',
      '/degF': 'stepF^-1',
      'in/in/degF': 'stepF^-1',
      '1/K': 'K^-1',
      '/K': 'K^-1',
      '1/degC': 'K^-1',
      '/degC': 'K^-1',
      'mm/m/K': '1e-3 K^-1',
    },
  },
  ratio: { si: '', units: { '%': '%', percent: '%' } },
  velocity: { si: 'm/s', units: velocity },
  time: { si: 's', units: { s: 's', min: 'minute', h: 'hour', ms: 'ms' } },
  inertia: { si: 'kg m^2', units: { 'lb.ft2': 'lbm ft^2', 'lb.in2': 'lbm in^2', 'kg.m2': 'kg m^2' } },
  'second moment of area': { si: 'm^4', units: { in4: 'in^4', cm4: 'cm^4', mm4: 'mm^4', m4: 'm^4' } },
  'section modulus': { si: 'm^3', units: { in3: 'in^3', cm3: 'cm^3', mm3: 'mm^3', m3: 'm^3' } },
  voltage: { si: 'V', units: { V: 'V', kV: 'kV' } },
  current: { si: 'A', units: { A: 'A', kA: 'kA', mA: 'mA' } },
};

const factors = new Map<string, number>();

/**
 * Units a dimension may be written in, as a user writes them.
 *
 * @param dimension - what is measured [-]
 * @returns spellings, the usual ones first [-]
 */
export function unitNames(dimension: Dimension): readonly string[] {
  return Object.keys(unitTable[dimension].units);
}

/**
 * How many SI units one of a written unit is. For temperatures this is the size of the degree.
 *
 * @param unit - unit as in `unitNames` [-]
 * @param dimension - what is measured [-]
 * @returns the factor, or undefined where the dimension has no such unit [-]
 */
export function unitFactor(unit: string, dimension: Dimension): number | undefined {
  const { si, units } = unitTable[dimension];
  const expression = Object.hasOwn(units, unit) ? units[unit] : undefined;
  if (expression === undefined) return undefined;
  if (expression === '%') return 0.01;
  const key = `${expression}|${si}`;
  let factor = factors.get(key);
  if (factor === undefined) {
    factor = scaledFactor(expression, si);
    factors.set(key, factor);
  }
  return factor;
}

/** Thousands of a made unit and thousandths have no prefix in the library. */
function scaledFactor(expression: string, si: string): number {
  if (expression === 'klbm') return 1000 * conversionFactor('lbm', si);
  if (expression === 'kkgOfNewton') return 1000 * conversionFactor('kgOfNewton', si);
  if (expression.startsWith('1e-3 ')) return 1e-3 * conversionFactor(expression.slice(5), si);
  return conversionFactor(expression, si);
}

/** Kelvin at zero of each temperature scale. Exact by definition of the scales [K]. */
export const temperatureZero: Readonly<Record<string, number>> = { K: 0, degC: 273.15, degF: 459.67 / 1.8 };
