import { expect, test } from 'vitest';
import { strainer } from '../../src/checks/practice/strainer.js';
import { type FileStep, type PracticeFile, practiceFinding, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const at = (file: PracticeFile, place = 'suction side') => practiceFinding(strainer, file, place);
const open = { service: { system: 'open' } };
const diffuser = (change: FileStep): readonly FileStep[] => [
  {
    'suction-diffuser': {
      turn: 'up',
      'pump-leg': '300 mm',
      'pipe-leg': '300 mm',
      weight: '90 kg',
      contents: '20 l',
      ...change,
    },
  },
  pipe,
  valve('gate'),
  end,
];

test('a strainer ahead of the pump meets it, open or not', () => {
  const suction = [pipe, valve('strainer'), pipe, valve('gate'), end];
  expect(at({ ...open, suction })).toMatchObject({
    verdict: 'meets',
    reason: { data: { by: 'strainer 1' } },
  });
  expect(at({ suction }).verdict).toBe('meets');
});

test('none in an open system exceeds, and one on the discharge does not help', () => {
  expect(at(open)).toMatchObject({ verdict: 'exceeds', comparison: true });
  expect(at({ ...open, discharge: [pipe, valve('strainer'), valve('gate'), end] }).verdict).toBe('exceeds');
});

test('none, and nobody says whether the system is open, cannot be told', () => {
  expect(at({})).toMatchObject({ verdict: 'cannot-tell', reason: { code: 'checks.strainer.unknown' } });
});

test('a diffuser counts where the file says that it holds a strainer', () => {
  expect(at({ ...open, suction: diffuser({ strainer: 'yes' }) }).verdict).toBe('meets');
  expect(at({ ...open, suction: diffuser({ strainer: 'no' }) }).verdict).toBe('exceeds');
  expect(at({ ...open, suction: diffuser({}) })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.strainer.unsaid', data: { diffuser: 'suction diffuser 1' } },
  });
});

test('it does not apply in a closed system', () => {
  expect(at({ service: { system: 'closed' } }).verdict).toBe('does-not-apply');
});

test('a start-up screen is no strainer and is pointed out', () => {
  const file = { ...open, suction: [pipe, { 'start-up-screen': {} }, pipe, valve('gate'), end] };
  expect(at(file).verdict).toBe('exceeds');
  expect(at(file, 'start-up-screen 1')).toMatchObject({
    verdict: 'cannot-tell',
    comparison: true,
    reason: { code: 'checks.strainer.screen' },
  });
});
