/** Parts that give: flexible connectors and grooved couplings. */
import { once } from '../once.js';
import { field, map, oneOf } from './field.js';
import { quantity, stiffness } from './quantity.js';
import { known, weight, within } from './weight.js';

const jointStiffness = once(() => ({
  axial: field(stiffness('stiffness'), 'Stiffness along the pipe, or rigid, or free', '800 lb/in').optional(),
  lateral: field(
    stiffness('stiffness'),
    'Stiffness across the pipe, or rigid, or free',
    '700 lb/in',
  ).optional(),
  torsion: field(
    stiffness('rotational stiffness'),
    'Stiffness against twist, or rigid, or free',
    '120 ft.lbf/deg',
  ).optional(),
  bending: field(
    stiffness('rotational stiffness'),
    'Stiffness against bending, or rigid, or free',
    '15 ft.lbf/deg',
  ).optional(),
}));

/** A flexible connector with or without control rods. */
export const connector = once(() =>
  map({
    kind: field(oneOf(['rubber', 'braided metal', 'metal bellows']), 'What it is made of', 'rubber'),
    length: field(quantity('length', 'positive'), 'Length from face to face', '6 in'),
    weight: weight('Its weight', '14 lb'),
    known: known().optional(),
    within: within().optional(),
    'thrust-area': field(
      quantity('area', 'not negative'),
      'Area on which the pressure thrust acts',
      '44 in2',
    ),
    rods: field(oneOf(['none', 'taut', 'gapped']), 'Control rods: none, taut, or with a gap', 'taut'),
    'rod-gap': field(
      quantity('length', 'positive'),
      'How far it may lengthen before gapped rods hold it',
      '1/4 in',
    ).optional(),
    ...jointStiffness(),
  }),
);

/** A grooved coupling. */
export const coupling = once(() =>
  map({
    type: field(oneOf(['rigid', 'flexible']), 'Kind of joint', 'flexible'),
    weight: weight('Weight of the coupling', '9 lb'),
    known: known().optional(),
    within: within().optional(),
    'free-rotation': field(
      quantity('angle', 'positive'),
      'Angle a flexible joint bends freely before it stiffens',
      '1.5 deg',
    ).optional(),
    ...jointStiffness(),
  }),
);
