import { expect, test } from 'vitest';
import { workingSpace } from '../../src/checks/room/working-space.js';
import { box, findingOf, findingsOf, space, walls } from './access-subject.js';

/** Racks on both sides of the pump, so far off the casing; the pipes bar north and south. */
const between = (off: number) => [
  ...walls,
  box('west rack', 'other', [-4, -3, 0], [-0.3 - off, 3, 2]),
  box('east rack', 'other', [0.3 + off, -3, 0], [4, 3, 2]),
];

test('a square of 30 in beside the pump meets', () => {
  const finding = findingOf(workingSpace, { objects: between(0.8) });
  expect(finding.verdict).toBe('meets');
  expect(finding.limit).toBeCloseTo(30 * 0.0254, 12);
  expect(finding.demand).toBeCloseTo(0.8, 2);
});

test('racks that leave less on every side exceed', () => {
  const finding = findingOf(workingSpace, { objects: between(0.6) });
  expect(finding.verdict).toBe('exceeds');
  expect(finding.demand).toBeCloseTo(0.6, 2);
});

test('what hangs over head height does not matter', () => {
  const duct = box('duct', 'duct', [-4, -3, 2.1], [4, 3, 2.5]);
  expect(findingOf(workingSpace, { objects: [...between(0.8), duct] }).verdict).toBe('meets');
});

test("the manufacturer's larger space is judged beside the code's", () => {
  const spaces = [space('working space', { width: '900 mm', depth: '900 mm', side: 'east' })];
  const findings = findingsOf(workingSpace, { spaces, objects: between(0.8) });
  expect(findings.map(({ verdict }) => verdict)).toEqual(['meets', 'exceeds']);
  expect(findings[1]?.basis).toMatchObject({ source: 'input', clause: 'manual' });
});

test('without a floor or walls it cannot be told', () => {
  expect(findingOf(workingSpace, { room: { floor: undefined } }).verdict).toBe('cannot-tell');
  expect(findingOf(workingSpace, { objects: [] })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.access.no-walls' },
  });
});
