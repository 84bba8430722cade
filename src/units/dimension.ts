/** What a number measures. Every quantity inside is in the SI unit of its dimension. */
export const dimensions = [
  'length',
  'area',
  'volume',
  'mass',
  'force',
  'moment',
  'pressure',
  'stress',
  'temperature',
  'temperature difference',
  'flow',
  'head',
  'power',
  'speed',
  'frequency',
  'angle',
  'stiffness',
  'rotational stiffness',
  'density',
  'mass per length',
  'mass per area',
  'expansion',
  'ratio',
  'velocity',
  'time',
  'inertia',
  'second moment of area',
  'section modulus',
] as const;

/** What a number measures, in words. */
export type Dimension = (typeof dimensions)[number];
