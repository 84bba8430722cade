import { expect, test } from 'vitest';
import { sealThroughSpacer } from '../../src/checks/room/seal-through-spacer.js';
import { findingOf } from './access-subject.js';

const spacer = (entry: Readonly<Record<string, string>>) => ({
  dimensions: { spacer: { from: '250 mm', length: '200 mm', ...entry } },
});

test('a seal shorter than the spacer is changed without lifting the motor', () => {
  const finding = findingOf(sealThroughSpacer, spacer({ 'seal-length': '150 mm' }));
  expect(finding).toMatchObject({ verdict: 'meets', reason: { code: 'checks.seal-through-spacer.passes' } });
  expect(finding.ratio).toBeCloseTo(0.75, 12);
});

test('a longer one exceeds', () => {
  const finding = findingOf(sealThroughSpacer, spacer({ 'seal-length': '220 mm' }));
  expect(finding.verdict).toBe('exceeds');
  expect(finding.reason?.data.short).toBeCloseTo(0.02, 12);
});

test('without the length of the seal, or of the spacer, it cannot be told', () => {
  expect(findingOf(sealThroughSpacer, spacer({})).verdict).toBe('cannot-tell');
  expect(findingOf(sealThroughSpacer, { dimensions: { spacer: undefined } }).verdict).toBe('cannot-tell');
});

test('a close-coupled pump has no spacer', () => {
  expect(findingOf(sealThroughSpacer, { pump: { build: 'close-coupled' } }).verdict).toBe('does-not-apply');
});
