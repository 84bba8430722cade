import { expect, test } from 'vitest';
import { withinScope } from '../../src/checks/practice/within-scope.js';
import { type PracticeFile, practiceFinding, practiceFindings } from './practice-subject.js';

const said: PracticeFile = {
  service: { duty: 'building services', hazards: 'none' },
  pump: { shaft: 'vertical' },
};

test('an installation of which everything is said is inside', () => {
  expect(practiceFindings(withinScope, said).map(({ at, verdict }) => [at, verdict])).toEqual([
    ['duty', 'meets'],
    ['liquid', 'meets'],
    ['shaft', 'meets'],
    ['build', 'meets'],
    ['temperature', 'meets'],
  ]);
});

test('nothing of it decides', () => {
  expect(practiceFindings(withinScope).every(({ comparison }) => comparison)).toBe(true);
});

test('above 250 °F what is not judged is said', () => {
  const temperatures = { running: '110 degC', hot: '122 degC', cold: '10 degC' };
  const hot = practiceFinding(withinScope, { service: { temperatures } }, 'temperature');
  expect(hot).toMatchObject({ verdict: 'exceeds', comparison: true, basis: { confidence: 'memory' } });
  expect(hot.demand).toBeCloseTo(395.15, 9);
});

test.each([
  ['duty', 'duty-unsaid'],
  ['liquid', 'hazards-unsaid'],
  ['shaft', 'shaft-unsaid'],
])('what the file leaves open of the %s cannot be told', (place, code) => {
  expect(practiceFinding(withinScope, {}, place)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: `checks.within-scope.${code}` },
  });
});

test('a seal change without lifting the motor does not apply to a close-coupled pump', () => {
  expect(practiceFinding(withinScope, { pump: { build: 'close-coupled' } }, 'build')).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.within-scope.close-coupled' },
  });
});
