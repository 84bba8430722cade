/** Trade symbols of what stands in a line, drawn along it on paper. */
import type { Shape, Xy } from '../drawing.js';
import { distance, heading, offset } from '../plane.js';
import { line } from './tube.js';

/** Where a part lies on paper. */
export interface PartPlace {
  readonly from: Xy;
  readonly to: Xy;
  /** Direction of the cross strokes on paper, a plan direction or up [-]. */
  readonly bar: Xy;
  /** Half width of the pipe [1/72 in]. */
  readonly radius: number;
}

/** Which symbol a valve's trade name asks for. */
export type ValveSymbol = 'gate' | 'globe' | 'check' | 'butterfly' | 'ball' | 'strainer' | 'plain';

/**
 * Symbol of a valve by the name the file gives it.
 *
 * @param name - trade name, for example `swing check`
 * @returns symbol; `plain` is the bow tie of any valve
 */
export function valveSymbol(name: string): ValveSymbol {
  const rules: readonly (readonly [RegExp, ValveSymbol])[] = [
    [/check|non-?return/i, 'check'],
    [/butterfly/i, 'butterfly'],
    [/globe|balanc|control/i, 'globe'],
    [/ball/i, 'ball'],
    [/strainer|filter/i, 'strainer'],
    [/gate/i, 'gate'],
  ];
  return rules.find(([pattern]) => pattern.test(name))?.[1] ?? 'plain';
}

/**
 * A valve: bow tie of two triangles and what tells its kind.
 *
 * @param symbol - kind
 * @param place - where it lies
 * @param flowOutward - true where water runs from `from` to `to`
 * @param least - least length it is drawn with [1/72 in]
 * @returns shapes
 */
export function valveShapes(
  symbol: ValveSymbol,
  place: PartPlace,
  flowOutward: boolean,
  least = Math.max(7, 2.6 * place.radius),
): readonly Shape[] {
  const { from, to, bar, radius } = atLeast(place, least);
  const half = Math.max(3.4, 1.5 * radius);
  const middle = offset(from, [to[0] - from[0], to[1] - from[1]], 0.5);
  const corner = (at: Xy, sign: number): Xy => offset(at, bar, sign * half);
  const body: Shape = line(
    [corner(from, 1), corner(to, 1), corner(to, -1), corner(from, -1)],
    'none',
    'white',
  );
  const tie = (fill: 'white' | 'dark' = 'white'): readonly Shape[] => [
    body,
    line([corner(from, 1), middle, corner(from, -1)], 'medium', 'white'),
    line([corner(to, 1), middle, corner(to, -1)], 'medium', fill),
  ];
  const dot = (radiusOfDot: number, fill: 'white' | 'dark'): Shape => ({
    kind: 'circle',
    centre: middle,
    radius: radiusOfDot,
    stroke: 'fine',
    fill,
    ink: 'black',
  });
  const ends = [
    line([corner(from, 1), corner(from, -1)], 'medium'),
    line([corner(to, 1), corner(to, -1)], 'medium'),
  ];
  switch (symbol) {
    case 'check': {
      const run: Xy = [to[0] - from[0], to[1] - from[1]];
      const [inlet, outlet] = flowOutward
        ? [offset(from, run, 0.2), offset(to, run, -0.14)]
        : [offset(to, run, -0.2), offset(from, run, 0.14)];
      const [foot, tip] = [corner(inlet, 0.62), corner(outlet, -0.62)];
      return [
        body,
        ...ends,
        line([foot, tip], 'medium'),
        arrowHead(foot, tip, 3.6),
        { kind: 'circle', centre: foot, radius: 1.2, stroke: 'none', fill: 'dark', ink: 'black' },
      ];
    }
    case 'butterfly':
      return [body, ...ends, line([corner(from, 0.7), corner(to, -0.7)], 'medium'), dot(1.3, 'dark')];
    case 'strainer':
      return [
        line([corner(from, 1), corner(to, 1), corner(to, -1), corner(from, -1)], 'medium', 'white'),
        line([corner(from, 1), corner(to, -1)], 'dashed'),
      ];
    case 'globe':
      return [...tie(), dot(Math.min(1.9, half * 0.45), 'dark')];
    case 'ball':
      return [...tie(), dot(Math.min(2.4, half * 0.6), 'white')];
    case 'gate':
      return [...tie(), ...handwheel(middle, bar, half)];
    case 'plain':
      return tie();
  }
}

function handwheel(middle: Xy, bar: Xy, half: number): readonly Shape[] {
  const top = offset(middle, bar, half + 2.2);
  const across: Xy = [bar[1], -bar[0]];
  return [line([middle, top], 'fine'), line([offset(top, across, 2.4), offset(top, across, -2.4)], 'medium')];
}

/** The same place, lengthened about its middle to at least a length on paper. */
function atLeast(place: PartPlace, least: number): PartPlace {
  const length = distance(place.from, place.to);
  if (length >= least) return place;
  const way = heading(place.from, place.to);
  const middle: Xy = [(place.from[0] + place.to[0]) / 2, (place.from[1] + place.to[1]) / 2];
  return { ...place, from: offset(middle, way, -least / 2), to: offset(middle, way, least / 2) };
}

/**
 * Filled arrow head.
 *
 * @param from - where the arrow comes from [-]
 * @param tip - its point [-]
 * @param length - length of the head [1/72 in]
 * @returns shape
 */
export function arrowHead(from: Xy, tip: Xy, length: number, ink: Shape['ink'] = 'black'): Shape {
  const way = heading(from, tip);
  const side: Xy = [-way[1], way[0]];
  const foot = offset(tip, way, -length);
  return line(
    [tip, offset(foot, side, length * 0.36), offset(foot, side, -length * 0.36)],
    'none',
    'dark',
    true,
    ink,
  );
}

/**
 * Flange: a short dark bar across the pipe.
 *
 * @param at - face [-]
 * @param way - direction of the pipe [-]
 * @param bar - direction of the bar [-]
 * @param half - half length of the bar [1/72 in]
 * @returns shape
 */
export function flangeBar(at: Xy, way: Xy, bar: Xy, half: number): Shape {
  const thick = Math.min(0.95, Math.max(0.7, half * 0.1));
  const corner = (s: number, t: number): Xy => offset(offset(at, bar, s * half), way, t * thick);
  return line([corner(1, -1), corner(1, 1), corner(-1, 1), corner(-1, -1)], 'fine', 'dark');
}

/** Grooved joint: two fine strokes across the pipe with a white band between. @param place - where; both ends may coincide @param way - direction of the pipe [-] @returns shapes */
export function groovedShapes(place: PartPlace, way: Xy): readonly Shape[] {
  const half = place.radius * 1.35 + 1;
  const thick = Math.max(1.2, place.radius * 0.45);
  const corner = (s: number, t: number): Xy =>
    offset(offset(place.from, place.bar, s * half), way, t * thick);
  return [line([corner(1, -1), corner(1, 1), corner(-1, 1), corner(-1, -1)], 'medium', 'white')];
}

/** Flexible connector: a body with waves across it. @param given - where it lies @returns shapes */
export function connectorShapes(given: PartPlace): readonly Shape[] {
  const { from, to, bar, radius } = atLeast(given, 7);
  const half = Math.max(2.4, radius * 1.15);
  const waves = 6;
  const edge = (sign: number): readonly Xy[] =>
    Array.from({ length: 4 * waves + 1 }, (_, i): Xy => {
      const t = i / (4 * waves);
      const at: Xy = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
      return offset(at, bar, sign * (half + 0.9 * Math.cos(2 * Math.PI * waves * t)));
    });
  const ribs = Array.from({ length: waves - 1 }, (_, i) => {
    const t = (i + 1) / waves;
    const at: Xy = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
    return line([offset(at, bar, half), offset(at, bar, -half)], 'fine');
  });
  const [one, two] = [edge(1), edge(-1)];
  return [
    line([...one, ...[...two].reverse()], 'none', 'white'),
    ...ribs,
    line(one, 'medium'),
    line(two, 'medium'),
  ];
}
