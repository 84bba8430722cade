import { betweenRows, type Catalogued } from './catalogued.js';
import { celsius } from './printed-units.js';

/** Glycols of the table. */
export type Glycol = 'ethylene glycol' | 'propylene glycol';

/** Temperatures of the columns [°C]. */
const columns = [-20, -10, 0, 5, 10, 20, 30, 40, 50, 60, 70, 80, 90] as const;

/** No entry: near or below freezing. */
const X = undefined;

/** Share of glycol by volume, densities by column [kg/m³]; ASHRAE 2001 fits, evaluated. */
const densities: Readonly<
  Record<Glycol, readonly (readonly [share: number, row: readonly (number | undefined)[]])[]>
> = {
  'ethylene glycol': [
    [0.2, [X, X, 1035.7, 1034.4, 1032.9, 1029.7, 1026, 1021.8, 1017.2, 1012, 1006.4, 1000.2, 993.6]],
    [0.25, [X, 1046.3, 1043.9, 1042.5, 1041, 1037.6, 1033.8, 1029.5, 1024.6, 1019.3, 1013.5, 1007.3, 1000.5]],
    [0.3, [X, 1054.3, 1051.8, 1050.3, 1048.8, 1045.2, 1041.3, 1036.8, 1031.8, 1026.4, 1020.4, 1014, 1007.1]],
    [0.35, [X, 1062.1, 1059.4, 1057.9, 1056.2, 1052.6, 1048.4, 1043.8, 1038.7, 1033.1, 1027, 1020.4, 1013.4]],
    [
      0.4,
      [1072, 1069.6, 1066.8, 1065.2, 1063.5, 1059.7, 1055.4, 1050.6, 1045.4, 1039.6, 1033.4, 1026.6, 1019.4],
    ],
    [
      0.5,
      [1086.9, 1084.2, 1081.1, 1079.3, 1077.5, 1073.3, 1068.7, 1063.7, 1058.1, 1052, 1045.5, 1038.5, 1031],
    ],
  ],
  'propylene glycol': [
    [0.2, [X, X, 1025.8, 1024.3, 1022.7, 1019, 1014.8, 1010.2, 1005, 999.3, 993.1, 986.4, 979.3]],
    [0.25, [X, X, 1031.2, 1029.6, 1027.8, 1023.9, 1019.4, 1014.5, 1009, 1003, 996.6, 989.6, 982.1]],
    [0.3, [X, 1039.4, 1036.2, 1034.5, 1032.5, 1028.3, 1023.6, 1018.4, 1012.7, 1006.4, 999.7, 992.4, 984.7]],
    [0.35, [X, 1044.3, 1040.9, 1038.9, 1036.9, 1032.5, 1027.5, 1022, 1016, 1009.5, 1002.5, 995, 986.9]],
    [0.4, [1051.9, 1048.8, 1045.1, 1043.1, 1040.9, 1036.2, 1031, 1025.3, 1019.1, 1012.3, 1005, 997.2, 988.9]],
    [0.5, [1060.5, 1056.9, 1052.7, 1050.4, 1048, 1042.9, 1037.2, 1031, 1024.3, 1017, 1009.3, 1001, 992.3]],
  ],
};

/**
 * Density of a mixture of glycol and water, by straight lines between the rows and columns of the table.
 *
 * @param mixture - glycol, its share by volume [-] and temperature [K]
 * @returns density [kg/m³], or undefined outside the table and near freezing
 * @source ashrae-2001-fits
 */
export function glycolDensity(mixture: {
  readonly fluid: Glycol;
  /** By volume [-]. */
  readonly share: number;
  /** [K] */
  readonly temperature: number;
}): Catalogued | undefined {
  const { fluid, share, temperature } = mixture;
  const table = densities[fluid];
  const atTemperature = (row: readonly (number | undefined)[]) => {
    const known = columns.flatMap((degrees, i) => {
      const density = row[i];
      return density === undefined ? [] : [[celsius(degrees), density] as const];
    });
    return betweenRows(known, temperature);
  };
  const above = table.findIndex(([known]) => known >= share);
  const neighbours = table.slice(table[above]?.[0] === share ? above : Math.max(0, above - 1), above + 1);
  const pairs = neighbours.flatMap(([known, row]) => {
    const density = atTemperature(row);
    return density === undefined ? [] : [[known, density] as const];
  });
  if (above < 0 || pairs.length !== neighbours.length) return undefined;
  const value = betweenRows(pairs, share);
  if (value === undefined) return undefined;
  return {
    value,
    table: `density of ${fluid} and water`,
    row: `share ${share} by volume, ${temperature} K`,
    citation: { source: 'ashrae-2001-fits', clause: 'density, percent by volume', confidence: 'read' },
  };
}

/**
 * Shares by volume the table covers.
 *
 * @param fluid - glycol [-]
 * @returns lowest and highest share [-]
 * @source ashrae-2001-fits
 */
export function glycolShares(fluid: Glycol): readonly [number, number] {
  const shares = densities[fluid].map(([share]) => share);
  return [Math.min(...shares), Math.max(...shares)];
}
