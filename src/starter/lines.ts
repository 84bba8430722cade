/** The two lines of each arrangement, as steps of a walk, or why they do not fit. */
import { type CodesFrom, coded, type Issue, issueOf } from '../issues/issue.js';
import type { Measured } from './answers.js';
import {
  atThePump,
  DRAIN,
  type Kit,
  levelRun,
  type NewLine,
  type NewSupport,
  type Step,
  straight,
  VENT,
  valvesOf,
} from './parts.js';

/** What laying out gave. */
export interface NewLines {
  readonly lines: readonly NewLine[];
  readonly supports: readonly NewSupport[];
  readonly issues: readonly Issue[];
}

/** Codes of what does not fit. */
type TooTight = Extract<CodesFrom<{ option: string; found: string; least: string }>, `starter.${string}`>;

/** What one line is laid out with. */
interface Laying {
  readonly kit: Kit;
  readonly from: NewLine['from'];
  /** Elevation of the pump's ports and of the overhead pipe [m]. */
  readonly low: number;
  readonly high: number;
  /** The next support, marked in the order of the walk. */
  readonly support: (kind: NewSupport['kind'], elevation: number, rods?: number) => Step;
  readonly refuse: (code: TooTight, option: string, found: Measured | undefined, least: number) => void;
}

/**
 * Lays out both lines.
 *
 * @param kit - answers, and lengths of the tables [-]
 * @returns steps, supports, and everything that does not fit [-]
 */
export function layLines(kit: Kit): NewLines {
  const { answers, ruler, radius } = kit;
  const supports: NewSupport[] = [];
  const issues: Issue[] = [];
  const refuse: Laying['refuse'] = (code, option, found, least) => {
    const data = {
      option,
      found: found?.text ?? '',
      least: ruler.text(ruler.round(least) < least ? ruler.round(least) + 0.0127 : least),
    };
    // Both lines may stumble over one answer they share: what the longer one needs is told.
    const same = issues.findIndex((issue) => issue.code === code && issue.data.option === option);
    const issue = issueOf('error', coded(code, data));
    if (same < 0) issues.push(issue);
    else issues[same] = issue;
  };
  const counts = { H: 0, V: 0, G: 0 };
  const support: Laying['support'] = (kind, elevation, rods = 1) => {
    const letter = kind === 'hanger' ? 'H' : kind === 'guide' ? 'G' : 'V';
    counts[letter] += 1;
    const length = kind === 'guide' ? 0 : ruler.down(answers.ceiling.value - elevation - radius);
    const made = { mark: `${letter}${counts[letter]}`, kind, rods, length };
    supports.push(made);
    return { support: made };
  };
  const low = answers.pumpHeight.value;
  const high = answers.pipeHeight?.value ?? low;
  if (answers.ceiling.value - high < radius + LEAST_ROD)
    refuse('starter.no-room-for-rods', '--ceiling', answers.ceiling, high + radius + LEAST_ROD);
  const top = low + answers.motorTop.value;
  if (top > answers.ceiling.value) refuse('starter.motor-over-structure', '--ceiling', answers.ceiling, top);
  const lines = (['suction', 'discharge'] as const).map((from): NewLine => {
    const laying = { kit, from, low, high, support, refuse };
    return { from, steps: [...atThePump(kit, from), ...arrangements[answers.arrangement](laying)] };
  });
  return { lines, supports, issues };
}

/** Shortest rod with its clamp and nuts [m]. */
const LEAST_ROD = 0.15;

const arrangements = {
  elbows: (laying: Laying) => overhead(laying, 0),
  base: (laying: Laying) => overhead(laying, 1),
  riser: (laying: Laying) => (laying.from === 'suction' ? below(laying) : overhead(laying, 2)),
  header,
} as const;

const END: Step = {
  say: 'end: anchored',
  note: 'assumed: held in every direction; `continues` gives it the stiffness of the pipe beyond',
};

const TAP: Step = {
  say: 'gauge-tap: {}',
  note: 'assumed, as drains and vents: where there is none, leave it out',
};

/** Straight pipe beside the pump, with a tap for a gauge and a drain at the lowest place. */
function tapped(kit: Kit): readonly Step[] {
  const half = kit.ruler.round(kit.stub / 2);
  return [...straight(kit, half), TAP, DRAIN, ...straight(kit, kit.stub - half)];
}

/**
 * Out of the pump, up through the valves, and away overhead. Where the pump or the riser below cannot give, the first
 * hangers are springs: they take up what the leg grows.
 */
function overhead(laying: Laying, springs: number): readonly Step[] {
  const { kit, from, low, high, support, refuse } = laying;
  const { answers, elbow, beside, ruler } = kit;
  const valves = valvesOf(kit, from);
  const free = high - low - 2 * elbow - valves.length;
  const least = 2 * ruler.round(LEAST_STRAIGHT);
  if (free < least) refuse('starter.pipe-too-low', '--pipe-height', answers.pipeHeight, high - free + least);
  const under = ruler.round(Math.min(free / 2, Math.max(LEAST_STRAIGHT, kit.stub)));
  const over = free - under;
  const option = from === 'suction' ? 'suction-run' : 'discharge-run';
  const run = (from === 'suction' ? answers.suctionRun : answers.dischargeRun) ?? answers.dischargeRun;
  const shortest = elbow + beside + LEAST_END;
  if (run.value < shortest) refuse('starter.run-too-short', `--${option}`, run, shortest);
  const isRiser = answers.arrangement === 'riser';
  const leg = isRiser ? riserLeg(laying, over, low + elbow + under + valves.length) : straight(kit, over);
  let hung = 0;
  const hang = (): Step => {
    hung += 1;
    return support(hung <= springs ? 'spring-hanger' : 'hanger', high);
  };
  return [
    ...tapped(kit),
    { say: 'elbow: up' },
    ...straight(kit, under),
    ...(from === 'suction' ? [VENT] : []),
    ...valves.steps,
    ...leg,
    { say: `elbow: ${answers.turn}` },
    ...levelRun(kit, run.value - elbow, hang, true),
    END,
  ];
}

/** Above the valves of a riser: a spring hanger on two rods, and guides no farther apart than the table's span. */
function riserLeg({ kit, support }: Laying, over: number, from: number): readonly Step[] {
  const { beside, span } = kit;
  // A short leg is carried well enough by the hanger beside the elbow on top of it.
  if (over < LEAST_RISER) return straight(kit, over);
  const hung: readonly Step[] = [...straight(kit, beside), support('spring-hanger', from + beside, 2)];
  const left = over - beside;
  const spans = Math.floor(left / span);
  const each = kit.ruler.down(left / (spans + 1));
  const guided = Array.from({ length: spans }, () => [...straight(kit, each), support('guide', 0)]).flat();
  return [...hung, ...guided, ...straight(kit, left - spans * each)];
}

/** Out of the pump and down to where the riser is held. */
function below({ kit, from, refuse }: Laying): readonly Step[] {
  const { answers, elbow, ruler } = kit;
  const valves = valvesOf(kit, from);
  const drop = answers.drop?.value ?? Number.NaN;
  const free = drop - elbow - valves.length;
  const least = 2 * ruler.round(LEAST_STRAIGHT);
  if (free < least) refuse('starter.drop-too-short', '--drop', answers.drop, drop - free + least);
  const over = ruler.round(Math.min(free / 2, Math.max(LEAST_STRAIGHT, kit.stub)));
  return [
    ...straight(kit, kit.stub),
    { say: 'elbow: down' },
    ...straight(kit, over),
    TAP,
    DRAIN,
    ...valves.steps,
    ...straight(kit, free - over),
    END,
  ];
}

/** Out of the pump and level through the valves to the turn, and along the leg to the header. */
function header(laying: Laying): readonly Step[] {
  const { kit, from, low, support, refuse } = laying;
  const { answers, elbow, stub, beside } = kit;
  const valves = valvesOf(kit, from);
  const option = from === 'suction' ? 'suction-run' : 'discharge-run';
  const run = (from === 'suction' ? answers.suctionRun : answers.dischargeRun) ?? answers.dischargeRun;
  // A hanger on each side of the valves, and one at the turn.
  const taken = kit.reducer + 2 * stub + valves.length + beside + elbow;
  if (run.value < taken + 2 * LEAST_STRAIGHT)
    refuse('starter.run-too-short', `--${option}`, run, taken + 2 * LEAST_STRAIGHT);
  const leg = answers.leg ?? answers.dischargeRun;
  if (leg.value < elbow + LEAST_END) refuse('starter.leg-too-short', '--leg', leg, elbow + LEAST_END);
  const hang = (): Step => support('hanger', low);
  return [
    ...tapped(kit),
    hang(),
    ...straight(kit, stub),
    ...(from === 'suction' ? [VENT] : []),
    ...valves.steps,
    ...levelRun(kit, run.value - taken, hang, false),
    hang(),
    ...straight(kit, beside),
    { say: `elbow: ${answers.turn}` },
    ...levelRun(kit, leg.value - elbow, hang, false),
    END,
  ];
}

/** Straight pipe that may not be missing between an elbow and a flange [m]. */
const LEAST_STRAIGHT = 0.1;
/** From the last hanger to where the line is held [m]. */
const LEAST_END = 0.3;
/** From this length on a riser gets a hanger of its own [m]. */
const LEAST_RISER = 1.2;
