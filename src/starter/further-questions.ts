/** What is told by option alone: each has something that is taken where it is left out. */
import { type Question, quantity } from './question.js';

/** The further options. */
export const furtherQuestions = [
  {
    key: 'pipe-size',
    asks: 'Size of the pipe, where it is larger than the ports',
    kind: { is: 'size' },
    example: { us: '8 in', si: 'DN 200' },
    otherwise: 'that of the ports',
  },
  {
    key: 'motor-speed',
    asks: 'Speed of the motor',
    kind: quantity('speed'),
    example: { us: '1770 rpm', si: '1475 rpm' },
    otherwise: 'that of a four-pole motor: 1770 rpm on 60 Hz (us), 1475 rpm on 50 Hz (si)',
  },
  {
    key: 'base-height',
    asks: 'Height of the pipe centre line at the pump above the underside of its base',
    kind: quantity('length'),
    example: { us: '17 in', si: '430 mm' },
    only: ['base'],
    otherwise: 'the base stands on the floor',
  },
  {
    key: 'efficiency',
    asks: 'Efficiency of the pump at its duty',
    kind: quantity('ratio'),
    example: '78 %',
    otherwise: 'the verdict on the power of the motor stays open',
  },
  {
    key: 'withdrawal',
    asks: 'Clear height over the motor that the manufacturer asks for to draw it',
    kind: quantity('length'),
    example: { us: '20 in', si: '500 mm' },
    otherwise: 'the verdict on the room over the motor stays open',
  },
  {
    key: 'schedule',
    asks: 'Schedule of the pipe',
    kind: { is: 'text' },
    example: 'STD',
    otherwise: 'STD',
  },
  {
    key: 'insulation',
    asks: 'Thickness of the insulation, or none',
    kind: { is: 'insulation' },
    example: { us: '2 in', si: '50 mm' },
    otherwise: 'by the service',
  },
  {
    key: 'running',
    asks: 'Usual temperature in service',
    kind: quantity('temperature'),
    example: { us: '180 degF', si: '80 degC' },
    otherwise: 'by the service',
  },
  {
    key: 'hot',
    asks: 'Highest temperature in service',
    kind: quantity('temperature'),
    example: { us: '200 degF', si: '95 degC' },
    otherwise: 'by the service',
  },
  {
    key: 'cold',
    asks: 'Lowest temperature in service',
    kind: quantity('temperature'),
    example: { us: '60 degF', si: '15 degC' },
    otherwise: 'by the service',
  },
  {
    key: 'project',
    asks: 'Name of the project',
    kind: { is: 'text' },
    example: 'Larkfield Pool',
    otherwise: 'to be named',
  },
  {
    key: 'by',
    asks: 'Who prepares the file',
    kind: { is: 'text' },
    example: 'R. Okafor',
    otherwise: 'left out',
  },
  {
    key: 'date',
    asks: 'Day printed on the review',
    kind: { is: 'day' },
    example: '2026-09-14',
    otherwise: 'today',
  },
] as const satisfies readonly Question[];
