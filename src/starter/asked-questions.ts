/** What a person at a terminal is asked, in this order. */
import { type AnswerKind, type Question, quantity } from './question.js';

const words = (...values: readonly string[]): AnswerKind => ({
  is: 'choice',
  choices: values.map((value) => ({ value })),
});
const PLAN = ['north', 'south', 'east', 'west'] as const;

/** The questions of the conversation. */
export const askedQuestions = [
  {
    key: 'units',
    asks: 'Units',
    kind: {
      is: 'choice',
      choices: [
        { value: 'us', means: 'feet, inches, pounds' },
        { value: 'si', means: 'metres, kilograms' },
      ],
    },
    example: 'us',
  },
  {
    key: 'arrangement',
    asks: 'How the pump stands in its pipe',
    kind: {
      is: 'choice',
      choices: [
        { value: 'elbows', means: 'hung between two elbows, both pipes going up to overhead' },
        { value: 'riser', means: 'in a riser: pipe comes up from below and goes on up' },
        { value: 'header', means: 'hung in a level run between two headers' },
        { value: 'base', means: 'resting on a base, both pipes going up to overhead' },
      ],
    },
    example: 'elbows',
  },
  { key: 'mark', asks: 'Mark of the pump', kind: { is: 'text' }, example: 'HWP-1' },
  {
    key: 'service',
    asks: 'Service',
    kind: {
      is: 'choice',
      choices: [
        { value: 'heating', means: 'heating hot water' },
        { value: 'chilled', means: 'chilled water' },
        { value: 'condenser', means: 'condenser water' },
      ],
    },
    example: 'heating',
  },
  {
    key: 'pressure',
    asks: 'Design pressure of the piping',
    kind: quantity('pressure'),
    example: { us: '125 psi', si: '1000 kPa' },
  },
  { key: 'flow', asks: 'Flow', kind: quantity('flow'), example: { us: '640 gpm', si: '145 m3/h' } },
  { key: 'head', asks: 'Head', kind: quantity('head'), example: { us: '74 ft', si: '22 m' } },
  {
    key: 'size',
    asks: 'Size of the pump ports',
    kind: { is: 'size' },
    example: { us: '6 in', si: 'DN 150' },
  },
  {
    key: 'casing-weight',
    asks: 'Weight of the pump without its motor',
    kind: quantity('mass'),
    example: { us: '465 lb', si: '210 kg' },
  },
  {
    key: 'motor-power',
    asks: 'Power of the motor',
    kind: quantity('power'),
    example: { us: '20 hp', si: '15 kW' },
  },
  {
    key: 'motor-weight',
    asks: 'Weight of the motor',
    kind: quantity('mass'),
    example: { us: '290 lb', si: '130 kg' },
    otherwise: 'estimated from its power',
  },
  {
    key: 'motor-top',
    asks: 'Height of the motor top above the pipe centre line at the pump',
    kind: quantity('length'),
    example: { us: '41 in', si: '1040 mm' },
  },
  {
    key: 'faces',
    asks: 'Distance between the faces of the two pump flanges',
    kind: quantity('length'),
    example: { us: '30 in', si: '760 mm' },
  },
  {
    key: 'pump-height',
    asks: 'Height of the pipe centre line at the pump above the floor',
    kind: quantity('length'),
    example: { us: '4 ft 6 in', si: '1.4 m' },
  },
  {
    key: 'pipe-height',
    asks: 'Height of the centre line of the overhead pipe above the floor',
    kind: quantity('length'),
    example: { us: '11 ft', si: '3.4 m' },
    only: ['elbows', 'riser', 'base'],
  },
  {
    key: 'ceiling',
    asks: 'Height of the underside of the structure above the floor',
    kind: quantity('length'),
    example: { us: '14 ft', si: '4.3 m' },
  },
  {
    key: 'facing',
    asks: 'Direction the suction flange faces, away from the pump',
    kind: words(...PLAN),
    example: 'south',
  },
  {
    key: 'drop',
    asks: 'How far below the pump the riser is held',
    kind: quantity('length'),
    example: { us: '8 ft', si: '2.5 m' },
    only: ['riser'],
  },
  {
    key: 'turn',
    asks: 'Direction the pipe runs behind the turn, seen walking away from the pump',
    kind: words(...PLAN),
    example: 'west',
  },
  {
    key: 'suction-run',
    asks: 'Suction side: length of the level run, from the turn to where it is held',
    asksInHeader: 'Suction side: length of the level run, from the pump to the turn',
    kind: quantity('length'),
    example: { us: '20 ft', si: '6 m' },
    only: ['elbows', 'header', 'base'],
  },
  {
    key: 'discharge-run',
    asks: 'Discharge side: length of the level run, from the turn to where it is held',
    asksInHeader: 'Discharge side: length of the level run, from the pump to the turn',
    kind: quantity('length'),
    example: { us: '20 ft', si: '6 m' },
  },
  {
    key: 'leg',
    asks: 'Length of the legs from the turn to the header',
    kind: quantity('length'),
    example: { us: '6 ft', si: '1.8 m' },
    only: ['header'],
  },
  {
    key: 'nozzle-force',
    asks: "Manufacturer's allowable resultant force on a nozzle",
    kind: quantity('force'),
    example: { us: '1400 lb', si: '6.2 kN' },
    otherwise: 'the verdict on the nozzles stays open',
  },
  {
    key: 'nozzle-moment',
    asks: "Manufacturer's allowable resultant moment on a nozzle",
    kind: quantity('moment'),
    example: { us: '2600 ft.lbf', si: '3.5 kN.m' },
    otherwise: 'the verdict on the nozzles stays open',
  },
] as const satisfies readonly Question[];
