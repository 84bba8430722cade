import { expect, test } from 'vitest';
import { changed, installationOf, issuesOf, shortest } from './sample-text.js';

const room = `room:
  floor: 0 ft
  objects:
    - kind: panel
      name: MCC 1
      from: {east: 4 ft, north: 6 ft, elevation: 3 ft}
      to: {east: 6 ft, north: 7 ft, elevation: 6 ft}
      electrical: {front: south, voltage-to-ground: 277 V, opposite: grounded}
`;
const withRoom = `${shortest}\n${room}`;
const motor = (more: string) => changed(withRoom, ['  motor:', `  ${more}\n  motor:`]);

test('a panel has its front, its voltage to ground and what faces it', () => {
  expect(installationOf(withRoom).room.objects[0]?.electrical).toMatchObject({
    front: [0, -1, 0],
    toGround: { value: 277, origin: { kind: 'given', path: 'room.objects[0].electrical.voltage-to-ground' } },
    opposite: 'grounded',
  });
});

test('a disconnect that is a panel, or one at a distance', () => {
  const panel = motor('disconnect: {panel: MCC 1, in-sight: yes, lockable: no}');
  expect(installationOf(panel).pump.disconnect).toEqual({ panel: 'MCC 1', inSight: true, lockable: false });
  const away = installationOf(motor('disconnect: {name: DS-1, distance: 50 ft}')).pump.disconnect;
  expect(away?.distance?.value).toBeCloseTo(15.24, 9);
  expect(away).not.toHaveProperty('inSight');
});

test('voltages may be in kilovolts; volts are no length and a current no voltage', () => {
  const high = changed(withRoom, ['277 V', '2.4 kV']);
  expect(installationOf(high).room.objects[0]?.electrical?.toGround?.value).toBeCloseTo(2400, 9);
  expect(issuesOf(changed(withRoom, ['277 V', '277 A'])).map(({ code }) => code)).toEqual([
    'quantity.unknown-unit',
  ]);
  expect(issuesOf(changed(withRoom, ['277 V', '-277 V'])).map(({ code }) => code)).toEqual([
    'input.not-positive',
  ]);
});

test('a limit of vibration needs its source', () => {
  const limits = (words: string) => `${withRoom}\nlimits: {vibration: ${words}}\n`;
  expect(installationOf(limits('{velocity: 0.18 in/s, source: spec 1}')).limits.vibration).toMatchObject({
    value: 0.18 * 0.0254,
    origin: { document: 'spec 1' },
  });
  expect(issuesOf(limits('{velocity: 4.5 mm/s}')).map(({ code }) => code)).toEqual(['input.missing']);
});
