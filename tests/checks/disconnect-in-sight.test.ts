import { expect, test } from 'vitest';
import { disconnectInSight } from '../../src/checks/electrical/disconnect-in-sight.js';
import { box, roomFinding } from './room-subject.js';

const at = (disconnect?: object, objects: Parameters<typeof roomFinding>[1] = []) =>
  roomFinding(disconnectInSight, objects, disconnect === undefined ? {} : { pump: { disconnect } });

test('a disconnect that is seen and near meets it', () => {
  expect(at({ distance: '4 m', 'in-sight': 'yes' })).toMatchObject({
    verdict: 'meets',
    basis: { source: 'nfpa-70', confidence: 'read' },
    reason: { code: 'checks.disconnect-in-sight.near' },
  });
});

test('50 ft is in sight, more is not', () => {
  expect(at({ distance: '50 ft', 'in-sight': 'yes' }).verdict).toBe('meets');
  expect(at({ distance: '51 ft', 'in-sight': 'yes' })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.disconnect-in-sight.exceeds' },
  });
});

test('one that is hidden exceeds; one that is hidden and can be locked open is for the authority', () => {
  expect(at({ distance: '4 m', 'in-sight': 'no', lockable: 'no' })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.disconnect-in-sight.hidden' },
  });
  expect(at({ distance: '4 m', 'in-sight': 'no', lockable: 'yes' })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.disconnect-in-sight.lockable' },
  });
});

test('the distance of a panel of the room is measured to the motor', () => {
  // The motor is a cylinder of 0.2 m radius at the origin; the panel begins 3 m east of it.
  const panel = box('panel', 'MCC 1', [
    [3, -0.3, 0.5],
    [3.4, 0.3, 2],
  ]);
  const found = at({ panel: 'MCC 1', 'in-sight': 'yes' }, [panel]);
  expect(found.verdict).toBe('meets');
  expect(found.demand).toBeCloseTo(2.8, 6);
});

test.each([
  ['nothing is said of it', undefined, 'unknown'],
  ['nobody says whether it is seen', { distance: '4 m' }, 'sight-unknown'],
  ['nobody says where it is', { 'in-sight': 'yes' }, 'no-distance'],
])('where %s it cannot be told', (_what, disconnect, code) => {
  expect(at(disconnect)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: `checks.disconnect-in-sight.${code}` },
  });
});
