import type { Sentences } from './sentence.js';

/** Sentences of solids, distances and ways. */
export const geometrySentences = {
  'geometry.no-direction': (data: { east: number; north: number; up: number }) => ({
    message: `a direction is wanted, but ${data.east} east, ${data.north} north, ${data.up} up leads nowhere`,
    wanted: 'a direction of finite length, other than zero',
  }),
  'geometry.not-a-solid': (data: { kind: string }) => ({
    message: `the sizes of a solid of the kind "${data.kind}" do not make a solid`,
    wanted:
      'finite coordinates, no negative size, a cylinder with a length, a run with a point, a group with a piece',
  }),
  'geometry.no-volume': (data: { corners: number; most: number }) => ({
    message: `${data.corners} corners were given for a solid with flat faces, and they enclose no volume`,
    wanted: `at least four corners that are not all in one plane, and no more than ${data.most}`,
  }),
  'geometry.no-sector': (data: { radius: number; angle: number }) => ({
    message: `a sector of radius ${data.radius} m and angle ${data.angle} rad cannot be swept`,
    wanted: 'a radius and a thickness above zero, and an angle above zero and up to a full turn',
  }),
  'geometry.no-clearance': (data: { clearance: number }) => ({
    message: `${data.clearance} m cannot be kept clear`,
    wanted: 'a clearance of zero or more',
  }),
  'geometry.no-plan': (data: { width: number; east: number; north: number }) => ({
    message: `no way can be looked for with a width of ${data.width} m in a room of ${data.east} m by ${data.north} m`,
    wanted: 'a width above zero and a room with length, breadth and height',
  }),
} as const satisfies Sentences;
