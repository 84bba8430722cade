import type { Catalogued } from './catalogued.js';

/** Specific gas constant of water in the formulation [J/(kg·K)]. */
const GAS_CONSTANT = 461.526;

/** Coefficients I, J, n of the region 1 equation. */
const regionOne: readonly (readonly [I: number, J: number, n: number])[] = [
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -0.3756360367204e1],
  [0, 1, 0.33855169168385e1],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.16616417199501e-1],
  [0, 5, 0.81214629983568e-3],
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
];

/**
 * Density of liquid water by the region 1 equation, valid from 273.15 K to 623.15 K up to 100 MPa; not guarded.
 *
 *     1 / density = (R T / p) π Σ -n I (7.1 - π)^(I-1) (τ - 1.222)^J      π = p / 16.53 MPa, τ = 1386 K / T
 *
 * @param state - temperature [K] and absolute pressure [Pa]
 * @returns density [kg/m³]
 * @source iapws-if97
 */
export function regionOneDensity(state: { readonly temperature: number; readonly pressure: number }): number {
  const reduced = state.pressure / 16.53e6;
  const tau = 1386 / state.temperature;
  let slope = 0;
  for (const [I, J, n] of regionOne) {
    if (I > 0) slope -= n * I * (7.1 - reduced) ** (I - 1) * (tau - 1.222) ** J;
  }
  return state.pressure / (GAS_CONSTANT * state.temperature * reduced * slope);
}

/**
 * Pressure at which water boils, by the region 4 equation, valid from 273.15 K to 647.096 K.
 *
 * @param temperature - of the water [K]
 * @returns absolute pressure [Pa]
 * @source iapws-if97
 */
export function waterSaturationPressure(temperature: number): number {
  const t = temperature - 0.23855557567849 / (temperature - 650.17534844798);
  const A = t ** 2 + 1167.0521452767 * t - 724213.16703206;
  const B = -17.073846940092 * t ** 2 + 12020.82470247 * t - 3232555.0322333;
  const C = 14.91510861353 * t ** 2 - 4823.2657361591 * t + 405113.40542057;
  return 1e6 * ((2 * C) / (-B + Math.sqrt(B ** 2 - 4 * A * C))) ** 4;
}

/** Pressure taken where none is known: water in a closed system; 1 MPa more changes density by 0.05 % [Pa]. */
const USUAL_PRESSURE = 1e6;

/**
 * Density of liquid water.
 *
 * @param state - temperature [K] and absolute pressure [Pa], 1 MPa when left out
 * @returns density [kg/m³], or undefined where the water would freeze or boil, or beyond 623.15 K and 100 MPa
 * @source iapws-if97
 */
export function waterDensity(state: {
  readonly temperature: number;
  readonly pressure?: number;
}): Catalogued | undefined {
  const { temperature, pressure = USUAL_PRESSURE } = state;
  if (!(temperature >= 273.15 && temperature <= 623.15)) return undefined;
  if (!(pressure >= waterSaturationPressure(temperature) && pressure <= 1e8)) return undefined;
  return {
    value: regionOneDensity({ temperature, pressure }),
    table: 'density of water',
    row: `${temperature} K, ${pressure} Pa absolute`,
    citation: { source: 'iapws-if97', clause: 'region 1', confidence: 'computed' },
    how: 'region 1 equation',
  };
}
