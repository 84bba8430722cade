import { expect, test } from 'vitest';
import { heldCodes, heldEdition } from '../../src/catalog/index.js';
import { hoopStress } from '../../src/checks/pipes/hoop-stress.js';
import { sustainedStress } from '../../src/checks/pipes/sustained-stress.js';
import { runCheck } from '../../src/checks/run-check.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { installationOf, shortest } from '../input/sample-text.js';
import { findingsOf } from './findings-of.js';
import { type SubjectChange, sourced, subject, wrench } from './fixture.js';

const stressBy = (code: 'B31.9' | 'B31.1', edition?: string): SubjectChange => ({
  limits: {
    stress: {
      code,
      cycles: sourced(7000),
      hot: sourced(103e6),
      jointFactor: sourced(1),
      ...(edition !== undefined && { edition }),
    },
  },
  answers: { filled: { members: { 'straight 1': wrench([0, 0, 0], [1000, 0, 0]) } } },
});

test('an edition whose values are held is judged by, and so is the newest held where none is named', () => {
  expect(findingsOf(sustainedStress, stressBy('B31.9', '2004'))[0]?.verdict).toBe('meets');
  expect(findingsOf(sustainedStress, stressBy('B31.9'))[0]?.verdict).toBe('meets');
  expect(findingsOf(sustainedStress, stressBy('B31.1', '2016'))[0]?.verdict).toBe('meets');
});

test.each([
  ['B31.9', '2023'],
  ['B31.1', '2022'],
] as const)('%s of %s is read, cannot be told and says which are held', (code, edition) => {
  for (const check of [sustainedStress, hoopStress]) {
    const [finding] = runCheck(check, subject(stressBy(code, edition)));
    expect(finding).toMatchObject({
      verdict: 'cannot-tell',
      reason: { code: 'checks.stress.edition-not-held', data: { code, edition } },
    });
    expect(finding).not.toHaveProperty('demand');
    expect(String(finding?.reason?.data.held)).toContain('B31.9: 2004; B31.1: 2007');
  }
});

test('no allowable stress is looked up for an edition that is not held', () => {
  const withEdition = (edition: string) =>
    installationOf(`${shortest}limits: {pipe-stress: {code: B31.9, edition: '${edition}'}}\n`).limits.stress;
  expect(withEdition('2004').hot?.value).toBeCloseTo(15000 * 6894.757, -3);
  expect(withEdition('2023')).not.toHaveProperty('hot');
  expect(withEdition('2023').edition).toBe('2023');
  expect(readInstallation(`${shortest}limits: {pipe-stress: {edition: ' '}}\n`).ok).toBe(false);
});

test('every code says of everything held how it is known', () => {
  for (const { code, editions, held } of heldCodes()) {
    expect(heldEdition({ code })).toBe(editions.at(-1));
    expect(heldEdition({ code, edition: '1914' })).toBeUndefined();
    for (const { citation } of held) expect(citation.clause).not.toBe('');
  }
});
