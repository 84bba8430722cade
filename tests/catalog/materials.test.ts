import { expect, test } from 'vitest';
import {
  allowableStress,
  allowableStressMaterials,
  findMaterial,
  materialNames,
  modulusAt,
  thermalStrain,
} from '../../src/catalog/index.js';

const PSI = 6894.757293168361;
const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;

test.each(materialNames())('%s is complete, unstrained at 70 °F and grows with temperature', (id) => {
  const material = findMaterial(id);
  if (material === undefined) throw new Error('listed and not found');
  expect(material.modulus.value).toBeGreaterThan(9e10);
  expect(material.poisson).toBeGreaterThan(0.2);
  expect(material.density).toBeGreaterThan(7000);
  expect(thermalStrain(id, kelvin(70))).toBeCloseTo(0, 12);
  for (const [i, [temperature, strain]] of material.expansion.entries()) {
    const before = material.expansion[i - 1];
    if (before === undefined) continue;
    expect(temperature).toBeGreaterThan(before[0]);
    expect(strain).toBeGreaterThan(before[1]);
  }
  expect(material.expansionCitation.clause).not.toBe('');
});

test('carbon steel grows 6.7e-6 per °F from 70 to 200 °F', () => {
  expect(thermalStrain('carbon steel', kelvin(200))).toBeCloseTo(6.7e-6 * 130, 12);
});

test('strain is read between rows by a straight line, and nowhere beyond the table', () => {
  const between = (6.7e-6 * 130 + 6.6e-6 * 80) / 2;
  expect(thermalStrain('carbon steel', kelvin(175))).toBeCloseTo(between, 12);
  expect(thermalStrain('carbon steel', kelvin(401))).toBeUndefined();
  expect(thermalStrain('carbon steel', kelvin(-21))).toBeUndefined();
  expect(thermalStrain('brass', 300)).toBeUndefined();
});

test('chilled steel shrinks by the coefficient of 70 °F', () => {
  expect(thermalStrain('carbon steel', kelvin(40))).toBeCloseTo(-6.4e-6 * 30, 9);
});

test('the modulus falls with temperature', () => {
  expect((modulusAt('carbon steel', kelvin(70)) ?? 0) / PSI / 1e6).toBeCloseTo(29.5, 9);
  expect((modulusAt('carbon steel', kelvin(200)) ?? 0) / PSI / 1e6).toBeCloseTo(28.8, 9);
  expect((modulusAt('carbon steel', kelvin(40)) ?? 0) / PSI / 1e6).toBeCloseTo(29.5, 9);
  expect(modulusAt('carbon steel', kelvin(501))).toBeUndefined();
  expect(modulusAt('brass', 300)).toBeUndefined();
});

test('iron values say that they are from memory', () => {
  expect(findMaterial('cast iron')?.modulus.citation.confidence).toBe('memory');
  expect(findMaterial('ductile iron')?.expansionCitation.confidence).toBe('memory');
  expect(findMaterial('brass')).toBeUndefined();
});

test.each([
  ['B31.9', 'carbon steel', 200, 15000, 'read'],
  ['B31.9', 'copper', 200, 9000, 'read'],
  ['B31.1', 'carbon steel', 650, 17100, 'memory'],
  ['B31.1', 'stainless steel', 250, 15850, 'memory'],
] as const)('%s allows %s at %d °F %d psi', (code, material, degrees, psi, confidence) => {
  const stress = allowableStress({ code, material, temperature: kelvin(degrees) });
  expect((stress?.value ?? 0) / PSI).toBeCloseTo(psi, 6);
  expect(stress?.citation.confidence).toBe(confidence);
});

test('where no allowable stress was sourced there is none', () => {
  expect(allowableStress({ code: 'B31.9', material: 'stainless steel', temperature: 300 })).toBeUndefined();
  expect(allowableStress({ code: 'B31.1', material: 'copper', temperature: 300 })).toBeUndefined();
  expect(allowableStress({ code: 'B31.9', material: 'copper', temperature: kelvin(251) })).toBeUndefined();
  expect(
    allowableStress({ code: 'B31.9', material: 'carbon steel', temperature: Number.NaN }),
  ).toBeUndefined();
  expect(allowableStressMaterials('B31.9')).toEqual(['carbon steel', 'copper']);
});
