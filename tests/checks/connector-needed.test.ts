import { expect, test } from 'vitest';
import { connectorNeeded } from '../../src/checks/practice/connector-needed.js';
import { type FileStep, practiceFinding, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const connector: FileStep = {
  'flexible-connector': {
    kind: 'rubber',
    length: '150 mm',
    weight: '6 kg',
    'thrust-area': '300 cm2',
    rods: 'taut',
    axial: 'rigid',
    lateral: 'rigid',
    torsion: 'rigid',
    bending: 'rigid',
  },
};
const at = (suction: readonly FileStep[], pump: FileStep = {}) =>
  practiceFinding(connectorNeeded, { suction, pump }, 'suction side');

test('none at a hung pump meets it', () => {
  expect(at([pipe, valve('gate'), end])).toMatchObject({ verdict: 'meets', comparison: true });
});

test('one between a hung pump and its valve exceeds for comparison', () => {
  expect(at([connector, pipe, valve('gate'), end])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { data: { by: 'flexible connector 1' } },
  });
});

test('one behind the valve cannot be told', () => {
  expect(at([pipe, valve('gate'), pipe, connector, pipe, end])).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.connector-needed.behind' },
  });
});

test('it does not apply to a pump that stands on something', () => {
  const pump = { mount: 'resting', base: { 'below-ports': '400 mm' } };
  expect(practiceFinding(connectorNeeded, { pump }).verdict).toBe('does-not-apply');
});
