/** Parts a new line is made of, with the lengths the catalogue gives them. */
import { findElbow, findPipe, findReducer, findSpan, findValve } from '../catalog/index.js';
import type { Answers } from './answers.js';
import { USUAL_SCHEDULE } from './read-answers.js';
import { type Ruler, rulerOf } from './ruler.js';

/** A step of a walk as it stands in the file, or a support whose rods and springs are put in once its load is known. */
export type Step =
  | { readonly say: string; readonly note?: string }
  | { readonly support: NewSupport; readonly note?: string };

export interface NewSupport {
  readonly mark: string;
  readonly kind: 'hanger' | 'spring-hanger' | 'guide';
  readonly rods: number;
  /** From structure to clamp [m]; 0 for a guide. */
  readonly length: number;
}

export interface NewLine {
  readonly from: 'suction' | 'discharge';
  readonly steps: readonly Step[];
}

/** What every arrangement needs of pipe and catalogue; lengths in metres. */
export interface Kit {
  readonly answers: Answers;
  readonly ruler: Ruler;
  /** Centre to end of a long elbow. */
  readonly elbow: number;
  /** Longest span of the table between two hangers. */
  readonly span: number;
  /** Straight pipe that leaves room for bolts and wrench beside a flange. */
  readonly stub: number;
  /** From an elbow to the hanger beside it. */
  readonly beside: number;
  /** Half the outside diameter: where the clamp of a rod takes hold. */
  readonly radius: number;
  readonly valve: ValveLengths;
  /** Length of the reducer at a port; 0 where pipe and ports are of one size. */
  readonly reducer: number;
}

interface ValveLengths {
  readonly isolation: { readonly kind: string; readonly length: number };
  readonly check: { readonly kind: string; readonly length: number };
}

/** From this size on gate valves are long and heavy, and butterfly valves are usual [in]. */
const BUTTERFLY_FROM = 8;
const INCH = 0.0254;

/**
 * Looks up everything the answers leave to the tables.
 *
 * @param answers - as read, so that every size is in the tables [-]
 * @returns lengths [m]
 */
export function kitOf(answers: Answers): Kit {
  const { units, pipeSize, size, schedule = USUAL_SCHEDULE } = answers;
  const material = 'carbon steel';
  const ruler = rulerOf(units);
  const { nps } = pipeSize;
  const pipe = findPipe({ nps, schedule, material });
  const elbow = findElbow({ nps, schedule, material, radius: 'long', angle: Math.PI / 2 });
  const reducer = findReducer({ large: nps, small: size.nps, schedule, material });
  const inches = (pipe?.outsideDiameter ?? Number.NaN) / INCH;
  const isolation = inches < BUTTERFLY_FROM ? 'gate' : 'butterfly lug';
  const lengthOf = (kind: string) => ({
    kind,
    length: findValve({ kind, class: '150', nps })?.faceToFace.value ?? Number.NaN,
  });
  return {
    answers,
    ruler,
    elbow: elbow?.radius.value ?? Number.NaN,
    span: findSpan({ nps, material })?.value ?? Number.NaN,
    stub: ruler.round(Math.max(6 * INCH, 0.75 * inches * INCH)),
    beside: ruler.round(3 * INCH),
    radius: (inches * INCH) / 2,
    valve: { isolation: lengthOf(isolation), check: lengthOf('swing check') },
    reducer: size.nps === nps ? 0 : (reducer?.length.value ?? Number.NaN),
  };
}

/** Flange against the pump, and the reducer behind it where the pipe is larger. */
export function atThePump({ answers, reducer }: Kit, from: NewLine['from']): readonly Step[] {
  const flange: Step = { say: 'flange: {standard: B16.5, class: 150, face: flat, type: slip-on}' };
  if (reducer === 0) return [flange];
  // Flat on top, so that no air stays before the impeller.
  const shape = from === 'suction' ? 'kind: eccentric, flat: top' : 'kind: concentric';
  return [flange, { say: `reducer: {to: ${answers.pipeSize.text}, ${shape}}` }];
}

/** Straight pipe; nothing where there is no length for it. */
export function straight({ ruler }: Kit, length: number): readonly Step[] {
  const rounded = ruler.round(length);
  return rounded > 0 ? [{ say: `straight: ${ruler.text(rounded)}` }] : [];
}

export const DRAIN: Step = { say: 'drain: {}' };
export const VENT: Step = { say: 'vent: {}' };
const FLANGE: Step = { say: 'flange: {standard: B16.5, class: 150, type: slip-on}' };

/** The valves of a line between their flanges, walking away from the pump, and the length they take. */
export function valvesOf(
  kit: Kit,
  from: NewLine['from'],
): { readonly steps: readonly Step[]; readonly length: number } {
  const { isolation, check } = kit.valve;
  const between = kit.ruler.round(4 * INCH);
  const one = ({ kind }: { readonly kind: string }, note: string): readonly Step[] => [
    FLANGE,
    { say: `valve: {kind: ${kind}, class: 150}`, note },
    FLANGE,
  ];
  const last = one(isolation, 'assumed: one to shut on each side; weight and length of the tables');
  if (from === 'suction') return { steps: last, length: isolation.length };
  return {
    steps: [
      ...one(check, 'assumed: a check valve behind the pump'),
      ...straight(kit, between / 2),
      DRAIN,
      VENT,
      ...straight(kit, between - between / 2),
      ...last,
    ],
    length: check.length + between + isolation.length,
  };
}

/**
 * A level run with its hangers: none farther from the next than the table's span.
 *
 * @param kit - lengths
 * @param length - from where the run begins to where it ends [m]
 * @param hang - makes the next hanger
 * @param beside - whether one hanger stands at the very beginning
 * @returns steps
 */
export function levelRun(kit: Kit, length: number, hang: () => Step, beside: boolean): readonly Step[] {
  const { ruler, span } = kit;
  const steps: Step[] = [];
  let left = length;
  if (beside) {
    steps.push(...straight(kit, kit.beside), hang());
    left -= kit.beside;
  }
  const spans = Math.max(1, Math.ceil(left / span - 1e-9));
  const each = ruler.down(left / spans);
  for (let place = 1; place < spans; place += 1) {
    steps.push(...straight(kit, each), hang());
    left -= each;
  }
  return [...steps, ...straight(kit, left)];
}
