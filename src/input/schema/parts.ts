import * as z from 'zod';
import { once } from '../once.js';
import { bodyFlange, flangeFace, flangeMaterial, flangeRating } from './body-flange.js';
import { end } from './end.js';
import { field, map, oneOf, text } from './field.js';
import { connector, coupling } from './joints.js';
import { direction, pipeSize } from './labels.js';
import { exactlyOneKey } from './one-key.js';
import { offset } from './position.js';
import { diffuserPractice, fittings, yesOrNo } from './practice.js';
import { quantity } from './quantity.js';
import { attachedSupport } from './supports.js';
import { known, weight, within } from './weight.js';

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);
const contents = once(() => field(quantity('volume', 'not negative'), 'Liquid held', '5 gal'));
const support = once(() =>
  field(exactlyOneKey(attachedSupport()), 'Support under it', {
    stand: { mark: 'S1' },
  }).optional(),
);
const turn = once(() =>
  field(direction(), 'Direction of travel behind it, walking away from the pump', 'up'),
);
const schedule = once(() =>
  field(text(), 'Schedule of the pipe behind it, where it changes', 'STD').optional(),
);
const ownWeight = once(() => ({
  weight: weight('Own weight in place of the catalogue', '24 lb').optional(),
  known: known().optional(),
  within: within().optional(),
}));
/** Radius of elbows: a word or a length. */
export const elbowRadius = once(() => z.union([oneOf(['long', 'short']), quantity('length', 'positive')]));

const flange = once(() =>
  map({
    class: field(text(), 'Pressure class, or own for a flange of no standard', 150),
    standard: field(oneOf(['B16.5', 'B16.1', 'own']), 'Standard of the flange', 'B16.5').optional(),
    face: field(oneOf(['raised', 'flat', 'unknown']), 'Facing of the flange', 'raised').optional(),
    type: field(
      oneOf(['weld-neck', 'slip-on', 'blind', 'grooved adapter', 'own']),
      'How it is joined to the pipe',
      'slip-on',
    ).optional(),
    ...ownWeight(),
    length: field(
      quantity('length', 'not negative'),
      'Own length from gasket face to weld',
      '2 in',
    ).optional(),
    'outside-diameter': length('Own outside diameter', '11 in').optional(),
    'bolt-circle': length('Own bolt circle diameter', '9-1/2 in').optional(),
    bolts: field(z.int().min(4).max(96), 'Own number of bolts', 8).optional(),
    bolt: field(text(), 'Own size of bolts', '3/4').optional(),
    'raised-face': length('Own diameter of the raised face', '8-1/2 in').optional(),
    'gasket-diameter': length('Diameter on which the gasket load acts', '7-3/4 in').optional(),
    rating: flangeRating().optional(),
  }),
);

const valve = once(() =>
  map({
    kind: field(text(), 'Kind of valve or device', 'gate'),
    class: field(text(), 'Pressure class', 150).optional(),
    ...ownWeight(),
    length: length('Own length from face to face', '10-1/2 in').optional(),
    contents: contents().optional(),
    'centre-of-gravity': field(offset(), 'Centre of gravity from the middle of the valve', {
      up: '6 in',
    }).optional(),
    ends: field(
      oneOf(['flanged', 'between flanges', 'welded', 'grooved', 'threaded']),
      'How its ends are made',
      'flanged',
    ).optional(),
    face: flangeFace().optional(),
    material: flangeMaterial().optional(),
    rating: flangeRating().optional(),
    shuts: yesOrNo('Whether it can be shut tight, where its kind does not say so'),
  }),
);

const elbow = once(() =>
  map({
    turn: turn(),
    radius: field(elbowRadius(), 'Radius of the centre line: long, short, or a length', '9 in').optional(),
    ...ownWeight(),
    support: support(),
  }),
);

const reducer = once(() =>
  map({
    to: field(pipeSize(), 'Size behind it, walking away from the pump', '8 in'),
    schedule: schedule(),
    kind: field(oneOf(['concentric', 'eccentric']), 'Shape', 'eccentric').optional(),
    flat: field(oneOf(['top', 'bottom']), 'Which side is flat on an eccentric reducer', 'top').optional(),
    length: length('Own length', '6 in').optional(),
    ...ownWeight(),
  }),
);

const diffuser = once(() =>
  map({
    turn: turn(),
    'pump-leg': length('From the pump-side face to the corner', '10 in'),
    'pipe-leg': length('From the corner to the pipe-side face', '9 in'),
    to: field(pipeSize(), 'Size behind it, where it changes', '8 in').optional(),
    schedule: schedule(),
    weight: weight('Its weight', '210 lb'),
    known: known().optional(),
    within: within().optional(),
    contents: contents(),
    flange: field(bodyFlange(), 'Its two flanges', {
      standard: 'B16.1',
      class: 125,
      face: 'flat',
    }).optional(),
    ...diffuserPractice(),
    support: support(),
  }),
);

/** Every part of a walk but the tee and the supports. */
export const plainParts = once(() => ({
  flange: field(flange(), 'Flange', { standard: 'B16.5', class: 150, type: 'slip-on' }),
  straight: field(quantity('length', 'positive'), 'Straight pipe of this length', '1 ft 6 in'),
  elbow: field(z.union([direction(), elbow()]), 'Elbow: the direction of travel behind it', 'up'),
  valve: field(valve(), 'Valve, strainer or other heavy device in the line', { kind: 'gate', class: 150 }),
  reducer: field(reducer(), 'Reducer to another size', { to: '8 in', kind: 'concentric' }),
  'suction-diffuser': field(diffuser(), 'Suction diffuser: an elbow, strainer and reducer in one body', {
    turn: 'down',
    'pump-leg': '10 in',
    'pipe-leg': '9 in',
    weight: '210 lb',
    contents: '5 gal',
  }),
  'flexible-connector': field(connector(), 'Flexible connector', {
    kind: 'rubber',
    length: '6 in',
    weight: '14 lb',
    'thrust-area': '44 in2',
    rods: 'taut',
    axial: '800 lb/in',
    lateral: '700 lb/in',
  }),
  'grooved-joint': field(coupling(), 'Grooved coupling', { type: 'rigid', weight: '9 lb' }),
  weight: field(
    map({
      name: field(text(), 'What hangs there', 'actuator'),
      weight: weight('Its weight', '40 lb'),
      known: known().optional(),
      within: within().optional(),
    }),
    'Weight on the line, without length',
    { name: 'actuator', weight: '40 lb' },
  ),
  ...fittings(),
  end: field(end(), 'What stands at the end of the line, once and last', 'anchored'),
}));
