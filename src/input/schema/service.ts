import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { servicePractice } from './practice.js';
import { quantity, share } from './quantity.js';

const fluid = once(() =>
  z.union([
    z.literal('water'),
    map({
      kind: field(
        oneOf(['water', 'ethylene glycol', 'propylene glycol']),
        'What the water is mixed with',
        'propylene glycol',
      ),
      share: field(share(), 'Share of glycol by volume', '30 %').optional(),
    }),
  ]),
);

const temperature = (what: string, example: string) => field(quantity('temperature'), what, example);
const pressure = (what: string, example: string) => field(quantity('pressure', 'positive'), what, example);

/** What flows, how warm and at which pressure. */
export const service = once(() =>
  map({
    name: field(text(), 'Name of the service', 'heating hot water'),
    fluid: field(fluid(), 'What flows: water, or a mixture of water and glycol', 'water'),
    ...servicePractice(),
    temperatures: field(
      map({
        installation: temperature('Temperature of the pipe when it is closed up', '65 degF').optional(),
        running: temperature('Usual temperature in service', '180 degF'),
        hot: temperature('Highest temperature in service', '200 degF').optional(),
        cold: temperature('Lowest temperature in service', '60 degF').optional(),
      }),
      'Temperatures of the pipe',
      { installation: '65 degF', running: '180 degF', hot: '200 degF', cold: '60 degF' },
    ),
    pressures: field(
      map({
        working: pressure('Usual gauge pressure at the pump', '60 psi'),
        design: pressure('Gauge pressure the piping is designed for', '125 psi'),
        test: pressure('Gauge pressure of the test', '188 psi').optional(),
      }),
      'Gauge pressures',
      { working: '60 psi', design: '125 psi', test: '188 psi' },
    ),
    density: field(
      quantity('density', 'positive'),
      'Own density of the liquid, for every condition',
      '1000 kg/m3',
    ).optional(),
  }),
);

/** A material of the user's own. */
export const material = once(() =>
  map({
    modulus: field(quantity('stress', 'positive'), "Young's modulus at ambient temperature", '14.5 Mpsi'),
    poisson: field(quantity('ratio', 'not negative'), "Poisson's ratio", 0.26),
    density: field(quantity('density', 'positive'), 'Density of the metal', '450 lb/ft3'),
    expansion: field(quantity('expansion', 'positive'), 'Coefficient of thermal expansion', '6.0e-6 1/degF'),
    yield: field(
      quantity('stress', 'positive'),
      'Least yield strength at ambient temperature',
      '35000 psi',
    ).optional(),
  }),
);
