import { describe, expect, test } from 'vitest';
import { clippedSegment } from '../../src/drawing/clip.js';
import { gasketEnd } from '../../src/drawing/isometric/gasket-end.js';
import { laidPieces, type Piece, paintOrder } from '../../src/drawing/isometric/paint-order.js';
import { valveSymbol } from '../../src/drawing/isometric/part-symbols.js';
import {
  cornerViews,
  ISOMETRIC_SHARE,
  type Projection,
  project,
} from '../../src/drawing/isometric/projection.js';
import { shortenedLine } from '../../src/drawing/isometric/shortened-line.js';
import { strokeAxis } from '../../src/drawing/isometric/stroke-axis.js';
import type { Label } from '../../src/drawing/labels/label.js';
import { placeLabels } from '../../src/drawing/labels/label-placement.js';
import { fitText, textWidth } from '../../src/drawing/labels/text-width.js';
import { boxesOverlap, boxInside, nearestApproach, segmentCrossesBox } from '../../src/drawing/plane.js';
import { arcPoints } from '../../src/drawing/space.js';
import { norm, subtract } from '../../src/model/vector.js';
import { branches, build, fourHangers, longRiser } from './fixture.js';

describe.each(cornerViews)('seen from the $corner', (view) => {
  const projection: Projection = { view, scale: 100, origin: [0, 0] };

  test('east, north and up are foreshortened alike', () => {
    for (const axis of [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const) {
      const [x, y] = project(projection, axis);
      expect(Math.hypot(x, y)).toBeCloseTo(100 * ISOMETRIC_SHARE, 9);
    }
  });

  test('up is up on paper', () => {
    const [x, y] = project(projection, [0, 0, 1]);
    expect(Math.abs(x)).toBeLessThan(1e-9);
    expect(y).toBeLessThan(0);
  });

  test('what stands nearer to that corner is painted later, in whatever order it was given', () => {
    const at = (shift: number): Piece => ({
      segments: [
        {
          from: [view.towards[0] * shift - 1, view.towards[1] * shift, view.towards[2] * shift],
          to: [view.towards[0] * shift + 1, view.towards[1] * shift, view.towards[2] * shift],
        },
      ],
      radius: 2,
      rank: 1,
      shapes: [],
    });
    const [far, middle, near] = [at(-1), at(0), at(1)];
    for (const given of [
      [far, middle, near],
      [near, far, middle],
      [middle, near, far],
    ])
      expect(paintOrder(laidPieces(given, projection), projection).map((l) => l.piece)).toEqual([
        far,
        middle,
        near,
      ]);
  });
});

test('points of an arc keep its radius', () => {
  const points = arcPoints({ from: [1, 0, 0], to: [0, 1, 0], centre: [0, 0, 0] }, 9);
  expect(points).toHaveLength(10);
  for (const p of points) expect(norm(p)).toBeCloseTo(1, 12);
});

test('two segments that cross meet where they cross', () => {
  const found = nearestApproach(
    { from: [0, 0], to: [10, 0], radius: 0 },
    { from: [2, -4], to: [2, 4], radius: 0 },
  );
  expect(found).toEqual({ gap: 0, first: 0.2, second: 0.5 });
});

test('two parallel segments meet in the middle of what they share', () => {
  const found = nearestApproach(
    { from: [0, 0], to: [10, 0], radius: 0 },
    { from: [4, 3], to: [20, 3], radius: 0 },
  );
  expect(found.gap).toBeCloseTo(3, 12);
  expect(found.first * 10).toBeCloseTo(7, 9);
});

test('a segment is cut at the window, and one beside it is left out', () => {
  const window = { left: 0, top: 0, right: 10, bottom: 10 };
  expect(clippedSegment([-5, 5], [5, 5], window)).toMatchObject({
    from: [0, 5],
    to: [5, 5],
    cutFrom: true,
    cutTo: false,
  });
  expect(clippedSegment([-5, 20], [5, 20], window)).toBeUndefined();
  expect(segmentCrossesBox([-5, 20], [5, 20], window)).toBe(false);
});

describe('a shortened line', () => {
  const built = build(longRiser);
  const drawn = shortenedLine(built.layout, 2);

  test('has no longer piece of pipe than the limit', () => {
    for (const { stroke, from, to } of drawn.strokes)
      if (stroke.kind === 'straight' && stroke.role === 'pipe')
        expect(norm(subtract(to, from))).toBeLessThan(2.01);
  });

  test('keeps all directions and all contacts', () => {
    for (const s of drawn.strokes) {
      const [was, is] = [subtract(s.stroke.to, s.stroke.from), subtract(s.to, s.from)];
      const cosine = (was[0] * is[0] + was[1] * is[1] + was[2] * is[2]) / (norm(was) * norm(is));
      expect(cosine).toBeCloseTo(1, 9);
    }
    drawn.strokes.forEach((s, i) => {
      const next = drawn.strokes[i + 1];
      if (next !== undefined && norm(subtract(next.stroke.from, s.stroke.to)) < 1e-9)
        expect(norm(subtract(next.from, s.to))).toBeLessThan(1e-9);
    });
  });

  test('carries supports along with their pipe', () => {
    for (const support of built.layout.supports.filter((s) => s.kind !== 'pump base')) {
      const at = drawn.place(support.at);
      const nearest = Math.min(
        ...drawn.strokes.flatMap((s) => [norm(subtract(s.from, at)), norm(subtract(s.to, at))]),
      );
      expect(nearest).toBeLessThan(1e-6);
    }
  });

  test('is the line itself without a limit', () => {
    const whole = shortenedLine(build(branches).layout, Number.POSITIVE_INFINITY);
    expect(whole.anyShortened).toBe(false);
  });
});

test('a support inside a run cuts it there, and the piece is named by the support', () => {
  const { layout } = build(fourHangers);
  const [support] = layout.supports;
  const run = layout.strokes.find((s) => s.kind === 'straight' && s.role === 'pipe');
  if (support === undefined || run === undefined) throw new Error('fixture');
  const middle = run.from.map((x, i) => (x + (run.to[i] as number)) / 2) as unknown as typeof run.from;
  const cut = shortenedLine(
    { ...layout, supports: [{ ...support, at: middle, point: 'here' }] },
    Number.POSITIVE_INFINITY,
  );
  expect(cut.strokes.filter((s) => s.stroke.name === run.name).map((s) => s.stroke.points)).toEqual([
    [run.points[0], 'here'],
    ['here', run.points[1]],
  ]);
});

describe('placing labels', () => {
  const frame = { left: 0, top: 0, right: 200, bottom: 120 };
  const label = (i: number, priority: number): Label => ({
    name: `L${i}`,
    rows: [{ text: `mark ${i + 10}`, size: 8, weight: 'bold', ink: 'black' }],
    anchor: [100, 60],
    reach: 3,
    priority,
    framed: true,
  });
  const many = Array.from({ length: 90 }, (_, i) => label(i, i));

  test('none lies on another or outside, and what finds no room is told', () => {
    const { placed, omitted } = placeLabels({ frame, labels: many, obstacles: [], reserved: [] });
    expect(placed.length + omitted.length).toBe(many.length);
    expect(omitted.length).toBeGreaterThan(0);
    placed.forEach((a, i) => {
      expect(boxInside(a.box, frame)).toBe(true);
      for (const b of placed.slice(i + 1)) expect(boxesOverlap(a.box, b.box)).toBe(false);
    });
  });

  test('the more important ones stay', () => {
    const { placed, omitted } = placeLabels({ frame, labels: many, obstacles: [], reserved: [] });
    const least = Math.min(...placed.map((p) => p.label.priority));
    expect(Math.max(...omitted.map((l) => l.priority))).toBeLessThan(least);
  });

  test('a label keeps off the pipe and off what is reserved', () => {
    const reserved = [{ left: 0, top: 0, right: 200, bottom: 40 }];
    const { placed } = placeLabels({
      frame,
      labels: [label(1, 1)],
      obstacles: [{ from: [0, 60], to: [200, 60], radius: 5 }],
      reserved,
    });
    const box = placed[0]?.box ?? frame;
    expect(box.top >= 65 || (box.bottom <= 55 && box.top >= 40)).toBe(true);
  });
});

test('text is wider in bold, and never fits narrower than it is', () => {
  expect(textWidth('H12 1,240 lb', 8, 'bold')).toBeGreaterThan(textWidth('H12 1,240 lb', 8));
  expect(fitText('discharge nozzle', 200, 8)).toBe('discharge nozzle');
  expect(fitText('discharge nozzle', 30, 8)).toMatch(/^disc.*…$/);
  expect(textWidth(fitText('discharge nozzle', 30, 8), 8)).toBeLessThanOrEqual(30);
});

test.each([
  ['swing check', 'check'],
  ['butterfly lug', 'butterfly'],
  ['gate', 'gate'],
  ['multi-purpose valve', 'plain'],
  ['balancing valve', 'globe'],
  ['strainer', 'strainer'],
  ['ball', 'ball'],
])('a %s is drawn with the symbol %s', (name, symbol) => {
  expect(valveSymbol(name)).toBe(symbol);
});

describe('a stroke without length', () => {
  const pipe = {
    kind: 'straight',
    name: 'a',
    line: 'l',
    from: [0, 0, 0],
    to: [2, 0, 0],
    diameter: 0.2,
    points: ['p', 'q'],
    role: 'pipe',
  } as const;
  const flange = { ...pipe, name: 'f', from: [2, 0, 0], to: [2, 0, 0], role: 'flange' } as const;
  const bend = {
    kind: 'arc',
    name: 'b',
    line: 'l',
    from: [2, 0, 0],
    to: [3, 0, 1],
    centre: [2, 0, 1],
    diameter: 0.2,
    points: ['q', 'r'],
  } as const;

  test('lies as the pipe it is slipped over, or as the bend leaves it', () => {
    expect(strokeAxis(flange, [pipe, flange])).toEqual([1, 0, 0]);
    const [x, y, z] = strokeAxis(flange, [flange, bend]);
    expect([x, y, z].map((v) => Math.abs(Math.round(v * 1e9) / 1e9))).toEqual([1, 0, 0]);
  });

  test('has its face where no pipe meets it', () => {
    const long = { ...flange, to: [2.1, 0, 0] } as const;
    expect(gasketEnd(long, [pipe, long])).toBe('to');
    expect(gasketEnd({ ...long, from: [-0.1, 0, 0], to: [0, 0, 0] }, [pipe])).toBe('from');
  });
});
