import { expect, test } from 'vitest';
import { findValve, valveKinds, valveSizes } from '../../src/catalog/index.js';

const everyKind = valveKinds().flatMap((kind) => ['150', '125'].map((name) => [kind, name] as const));

test.each(everyKind)('%s valves of class %s grow longer and heavier with size', (kind, name) => {
  const found = valveSizes({ kind, class: name }).map((nps) => findValve({ kind, class: name, nps }));
  expect(found.length).toBeGreaterThan(8);
  for (const [i, valve] of found.entries()) {
    const before = found[i - 1];
    if (before === undefined || valve === undefined) continue;
    expect(valve.faceToFace.value).toBeGreaterThanOrEqual(before.faceToFace.value);
    expect(valve.mass.value).toBeGreaterThan(before.mass.value);
    expect(valve.contents.value).toBeGreaterThan(before.contents.value);
  }
});

test('a gate valve of class 150 NPS 6 is 10.5 in and 185 lb, give or take a fifth', () => {
  const valve = findValve({ kind: 'gate', class: '150', nps: '6 in' });
  expect(valve?.faceToFace.value).toBeCloseTo(0.2667, 9);
  expect((valve?.mass.value ?? 0) / 0.45359237).toBeCloseTo(185, 9);
  expect([valve?.massSpread, valve?.ends, valve?.body]).toEqual([0.2, 'flanged', 'cast steel']);
  expect(valve?.contents.value).toBeCloseTo((Math.PI / 4) * 0.1524 ** 2 * 0.2667, 9);
});

test('class 150 and class 125 share the face to face', () => {
  for (const nps of valveSizes({ kind: 'gate', class: '125' })) {
    const length = (name: string) => findValve({ kind: 'gate', class: name, nps })?.faceToFace.value;
    expect(length('125'), nps).toBe(length('150'));
  }
});

test('butterfly valves stand between flanges; a lug body is heavier than a wafer', () => {
  for (const nps of valveSizes({ kind: 'butterfly lug', class: '125' })) {
    const lug = findValve({ kind: 'butterfly lug', class: '125', nps });
    const wafer = findValve({ kind: 'butterfly wafer', class: '150', nps });
    expect(lug?.ends).toBe('between flanges');
    expect(lug?.mass.value ?? 0).toBeGreaterThan(wafer?.mass.value ?? Number.NaN);
    expect(lug?.faceToFace.value).toBe(wafer?.faceToFace.value);
  }
});

test('what was not read on a page says so', () => {
  const confidence = (kind: string, nps: string) =>
    findValve({ kind, class: '150', nps })?.faceToFace.citation.confidence;
  expect(confidence('globe', '6')).toBe('memory');
  expect(confidence('swing check', '16')).toBe('memory');
  expect(confidence('butterfly lug', '14')).toBe('memory');
  expect(confidence('gate', '6')).toBe('two sources');
  expect(findValve({ kind: 'swing check', class: '150', nps: '16' })?.uncertain).toBe(true);
});

test.each([
  [{ kind: 'gate', class: '150', nps: '7' }],
  [{ kind: 'gate', class: '300', nps: '6' }],
  [{ kind: 'ball', class: '150', nps: '6' }],
  [{ kind: 'globe', class: '150', nps: '18' }],
])('%o is not in the tables', (query) => {
  expect(findValve(query)).toBeUndefined();
});

test('unknown kinds have no sizes', () => {
  expect(valveSizes({ kind: 'ball', class: '150' })).toEqual([]);
});
