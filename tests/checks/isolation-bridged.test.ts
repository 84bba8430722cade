import { expect, test } from 'vitest';
import { isolationBridged } from '../../src/checks/practice/isolation-bridged.js';
import { type FileStep, practiceFinding, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const hanger: FileStep = { hanger: { mark: 'H1', rod: '5/8 in' } };
const spring: FileStep = { 'spring-hanger': { mark: 'V1', rate: '50 N/mm', load: '2 kN' } };
const connector: FileStep = {
  'flexible-connector': {
    kind: 'rubber',
    length: '150 mm',
    weight: '6 kg',
    'thrust-area': '300 cm2',
    rods: 'taut',
  },
};
const springs = { rate: '150 N/mm', load: '1.8 kN', count: 2 };
const sprung = { mount: 'sprung', base: { 'below-ports': '400 mm', springs } };
const at = (suction: readonly FileStep[], pump: FileStep = sprung) =>
  practiceFinding(isolationBridged, { suction, pump }, 'suction line');

test('a spring nearer to the pump than any rigid support meets it', () => {
  expect(at([pipe, spring, pipe, hanger, pipe, valve('gate'), end])).toMatchObject({
    verdict: 'meets',
    comparison: true,
  });
});

test('a rigid support before the first spring exceeds for comparison, and is named', () => {
  expect(at([pipe, hanger, pipe, spring, pipe, valve('gate'), end])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { data: { by: 'H1' } },
  });
});

test('a connector before the rigid support parts it from the pump', () => {
  expect(at([connector, pipe, hanger, pipe, valve('gate'), end]).verdict).toBe('meets');
});

test('the pipe of a hung pump is looked at where it has springs', () => {
  const walk = [pipe, hanger, pipe, spring, pipe, valve('gate'), end];
  expect(at(walk, {}).verdict).toBe('exceeds');
});

test('without any support that carries weight it cannot be told', () => {
  expect(at([pipe, valve('gate'), { end: 'free' }])).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.isolation-bridged.nothing' },
  });
});

test('it does not apply where nothing stands on springs', () => {
  expect(practiceFinding(isolationBridged).verdict).toBe('does-not-apply');
});
