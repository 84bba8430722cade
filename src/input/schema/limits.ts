import * as z from 'zod';
import { once } from '../once.js';
import { vibrationLimit } from './electrical.js';
import { field, map, oneOf, text } from './field.js';
import { lateral } from './lateral.js';
import { namedIn, ownerRules } from './owner-rules.js';
import { practiceLimits } from './practice.js';
import { quantity, share } from './quantity.js';
import { ratio } from './ratio.js';

const bases = [
  'maker',
  'process-pump table',
  'process-pump table doubled',
  'nozzle principal stress',
] as const;
const force = (what: string) => field(quantity('force', 'positive'), what, '1200 lb').optional();
const moment = (what: string) => field(quantity('moment', 'positive'), what, '700 ft.lbf').optional();

const allowance = once(() =>
  map({
    'axial-force': force('Allowable force along the nozzle'),
    'vertical-force': force('Allowable vertical force'),
    'cross-force': force('Allowable level force across the nozzle'),
    'resultant-force': force('Allowable resultant force'),
    'axial-moment': moment('Allowable moment about the axis of the nozzle'),
    'vertical-moment': moment('Allowable moment about the vertical'),
    'cross-moment': moment('Allowable moment about the level axis across the nozzle'),
    'resultant-moment': moment('Allowable resultant moment'),
  }),
);

const nozzleLoads = once(() =>
  map({
    basis: field(
      oneOf(bases),
      'Basis of the verdict; without one the verdict stays open',
      'maker',
    ).optional(),
    'named-in': namedIn(),
    compare: field(z.array(oneOf(bases)), 'Bases shown for comparison', ['process-pump table']).optional(),
    maker: field(
      map({
        document: field(text(), "Manufacturer's document the loads are taken from", 'data sheet 4471 rev 2'),
        suction: field(allowance(), 'Allowable loads on the suction nozzle', {
          'resultant-force': '1600 lb',
        }).optional(),
        discharge: field(allowance(), 'Allowable loads on the discharge nozzle', {
          'resultant-force': '1600 lb',
        }).optional(),
      }),
      "Manufacturer's allowable nozzle loads",
      { document: 'data sheet 4471 rev 2', suction: { 'resultant-force': '1600 lb' } },
    ).optional(),
  }),
);

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);
const stress = (what: string) => field(quantity('stress', 'positive'), what, '15000 psi').optional();

/** What the results are held against. */
export const limits = once(() =>
  map({
    'nozzle-loads': field(nozzleLoads(), 'Nozzle loads', { basis: 'maker' }).optional(),
    'pipe-stress': field(
      map({
        code: field(oneOf(['B31.9', 'B31.1']), 'Code of the pipe stresses', 'B31.9').optional(),
        edition: field(text(), 'Edition of the code', '2004').optional(),
        hot: stress('Allowable stress at the hot temperature'),
        cold: stress('Allowable stress at the cold temperature'),
        cycles: field(z.int().min(1).max(1e9), 'Number of heating and cooling cycles', 7000).optional(),
        'occasional-factor': field(
          ratio({ least: 1, most: 3 }),
          'How far an occasional load may take the stress over the allowable',
          1.33,
        ).optional(),
        'joint-factor': field(
          ratio({ least: 0.6, most: 1 }),
          'Factor of the weld along the pipe: 1 for seamless pipe',
          0.85,
        ).optional(),
      }),
      'Pipe stresses',
      { code: 'B31.9', edition: '2004' },
    ).optional(),
    rods: field(
      map({ edition: field(oneOf(['older', 'later']), 'Edition of the rod table', 'older') }),
      'Hanger rods',
      { edition: 'older' },
    ).optional(),
    span: field(
      map({ longest: field(quantity('length', 'positive'), 'Longest span between supports', '12 ft') }),
      'Spans',
      { longest: '12 ft' },
    ).optional(),
    'first-support': field(
      map({
        pump: field(
          quantity('length', 'positive'),
          'Farthest first support from the pump',
          '3 ft',
        ).optional(),
        bend: field(quantity('length', 'positive'), 'Farthest support from a bend', '1 ft').optional(),
      }),
      'First supports',
      { pump: '3 ft', bend: '1 ft' },
    ).optional(),
    'owner-rules': ownerRules(),
    lateral: field(lateral(), 'Sideways load, as in an earthquake', {
      coefficient: 0.3,
      source: 'structural drawing S-2',
    }).optional(),
    'frequency-margin': field(
      map({
        share: field(share(), 'Margin as a share of the exciting frequency', '25 %'),
        source: field(text(), 'Where the margin is taken from', "owner's specification 23 21 23"),
      }),
      'Margin a natural frequency keeps from an exciting one',
      { share: '25 %', source: "owner's specification 23 21 23" },
    ).optional(),
    ...practiceLimits(),
    vibration: vibrationLimit(),
    damping: field(
      ratio({ most: 0.2, range: 'not negative' }),
      'Damping of the piping over critical damping',
      '2 %',
    ).optional(),
    'start-movement': length('Largest movement of the motor top while it starts', '2 mm').optional(),
    'fit-up': field(
      map({
        gap: length('Largest gap between flanges beyond the gasket', '1/16 in').optional(),
        offset: length('Largest offset of the centre lines of two flanges', '1/16 in').optional(),
        parallelism: length('Largest difference of the gap round the sealing faces', '1/32 in').optional(),
      }),
      'What two flanges may be off when they are brought together',
      { gap: '1/16 in', offset: '1/16 in', parallelism: '1/32 in' },
    ).optional(),
  }),
);
