import { expect, test } from 'vitest';
import { firstSupportBend } from '../../src/checks/supports/first-support-bend.js';
import { findingAt, findingsOf } from './findings-of.js';
import { frame, hangerSupport, placedSupport, type SubjectChange, sourced, UNUSABLE } from './fixture.js';

/** The bend runs from 1.0 to 1.3591 m. */
const supportAt = (station: number, limit = 0.3048): SubjectChange => ({
  layout: {
    frame: frame({ supports: [hangerSupport('H2')] }),
    supports: [placedSupport('H2', 'discharge line', station)],
  },
  limits: { firstSupport: { bend: sourced(limit) } },
});

test.each([
  ['before', 0.8, 0.2],
  ['behind', 1.5591, 0.2],
  ['on', 1.2, 0],
])('a hanger %s the bend within a foot meets it', (_word, station, distance) => {
  const finding = findingAt(firstSupportBend, 'elbow 1', supportAt(station));
  expect(finding.verdict).toBe('meets');
  expect(finding.demand).toBeCloseTo(distance, 12);
});

test('a hanger set at exactly one foot meets it', () => {
  expect(findingAt(firstSupportBend, 'elbow 1', supportAt(1.3591 + 0.3048)).verdict).toBe('meets');
});

test('a hanger a metre away exceeds it and is named', () => {
  expect(findingAt(firstSupportBend, 'elbow 1', supportAt(2.3591))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.first-support-bend.exceeds', data: { support: 'H2' } },
  });
});

test.each(UNUSABLE)('a distance that is %s cannot be told', (_word, limit) => {
  expect(findingAt(firstSupportBend, 'elbow 1', supportAt(1.2, limit)).verdict).toBe('cannot-tell');
});

test('a place along the line that is not a number cannot be told', () => {
  expect(findingAt(firstSupportBend, 'elbow 1', supportAt(Number.NaN)).verdict).toBe('cannot-tell');
});

test('a bend of a line that nothing carries exceeds: the pump is no support', () => {
  expect(findingAt(firstSupportBend, 'elbow 1', { layout: { supports: [] } })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.first-support-bend.none' },
  });
});

test('an assumed distance rests on the guide specification', () => {
  const bend = sourced(0.3048, { kind: 'assumed', path: 'limits.first-support.bend' });
  const change = { ...supportAt(1.2), limits: { firstSupport: { bend } } };
  expect(findingAt(firstSupportBend, 'elbow 1', change).basis.source).toBe('ufgs-15562a');
});

test('between a hung pump and the first support the distance of the guide is a comparison', () => {
  const bend = sourced(0.3048, { kind: 'assumed', path: 'limits.first-support.bend' });
  const beyond = { ...supportAt(2.3591), limits: { firstSupport: { bend } } };
  expect(findingAt(firstSupportBend, 'elbow 1', beyond)).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { code: 'checks.first-support-bend.beside-hung-pump' },
  });
  // Elsewhere it decides where a document of the owner makes it a limit.
  const ownerRules = [{ rule: 'first-support-bend', document: 'estate standard', clause: 'para 4.2' }];
  const before = { ...supportAt(0.2), limits: { firstSupport: { bend }, ownerRules } };
  expect(findingAt(firstSupportBend, 'elbow 1', before)).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
  });
  const unsaid = { ...supportAt(0.2), limits: { firstSupport: { bend } } };
  expect(findingAt(firstSupportBend, 'elbow 1', unsaid).comparison).toBe(true);
  const limits = { firstSupport: { bend }, ownerRules };
  const onBase = { ...beyond, limits, pump: { mount: 'bolted' as const } };
  expect(findingAt(firstSupportBend, 'elbow 1', onBase)).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
  });
});

test('lines without bends are no place of this check', () => {
  expect(findingsOf(firstSupportBend, { layout: { bends: [] } })).toMatchObject([
    { verdict: 'does-not-apply' },
  ]);
});
