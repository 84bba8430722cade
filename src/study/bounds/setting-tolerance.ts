/**
 * How exactly each support has to be set: the heights between which every verdict that meets goes on meeting, the height in
 * their middle, and the load it then carries. On a stiff line a tape's error swamps everything, so a height is an
 * instruction to the fitter and no doubt of the model.
 */
import { memoized } from '../../analysis/memoized.js';
import { analysed, type Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { runCheck } from '../../checks/run-check.js';
import type { Installation, Part, SupportPart } from '../../input/installation.js';
import { EngineError } from '../../issues/issue.js';
import { solveFrame } from '../../mechanics/frame/solve-frame.js';
import { conditionId, roleOf } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { supportFacts } from '../../model/support-parts.js';
import { layoutAtBounds } from './layout-at-bounds.js';
import { followedByLoads } from './load-trials.js';

/** Farthest that a height is tried off what is drawn: nobody sets worse [m]. */
export const FARTHEST = 0.25 * 0.0254;
/** Halvings of that: to 1/256 in [-]. */
const HALVINGS = 6;
/** Half an interval below which no tape sets a height: 1/32 in [m]. */
export const TAPE = 0.0254 / 32;

/** How one support is to be set. */
export interface SettingTolerance {
  readonly mark: string;
  /** How far it may stand off what is drawn with every verdict held [m]; the farthest tried where none turns. */
  readonly up: number;
  readonly down: number;
  /** Height of the widest tolerance: in their middle, up from what is drawn [m]; the tolerance there, either way [m]. */
  readonly height: number;
  readonly tolerance: number;
  /** Load at that height with the line filled, and change of it over the tolerance, upward height adding [N]. */
  readonly load: number;
  readonly change: number;
  /** False where no tape sets it: it is set by load, by turns of the nut, or is a spring. */
  readonly byTape: boolean;
  /** Check and place that turns first, where one does within what was tried. */
  readonly first?: { readonly title: string; readonly at: string };
  /** Largest load on it with any one other support unset, down [N]. */
  readonly unset: number;
}

/** Tolerances of every support that is set by hand and is no spring. Worked out once for each review. */
export const settingTolerances = memoized((subject: Subject): readonly SettingTolerance[] =>
  subject.layout.supports
    .filter((support) => supportFacts(support).adjustable && support.part?.spring === undefined)
    .map((support) => toleranceOf(subject, support)),
);

interface Held {
  /** The verdicts that meet as drawn still do. */
  readonly holds: boolean;
  readonly first?: { readonly title: string; readonly at: string };
  /** With the line filled, down [N]. */
  readonly load: number;
}

function toleranceOf(subject: Subject, { mark }: PlacedSupport): SettingTolerance {
  const tried = heightTrials(subject, mark);
  const up = farthestHeld(tried, 1);
  const down = farthestHeld(tried, -1);
  const height = (up.reach - down.reach) / 2;
  const tolerance = (up.reach + down.reach) / 2;
  const load = tried(height).load;
  const change = (tried(height + tolerance / 2).load - tried(height - tolerance / 2).load) / 2;
  const first = up.reach < down.reach ? (up.first ?? down.first) : (down.first ?? up.first);
  return {
    mark,
    up: up.reach,
    down: down.reach,
    height,
    tolerance,
    load,
    change: 2 * change,
    byTape: tolerance >= TAPE,
    ...(first && { first }),
    unset: largestWithAnotherUnset(subject, mark),
  };
}

type Trials = (height: number) => Held;

/** Solves with one support off its height and judges again; verdicts that did not meet as drawn are not asked. */
function heightTrials(subject: Subject, mark: string): Trials {
  const judged = (of: Subject) =>
    followedByLoads.flatMap((check) => runCheck(check, of).map((one, place) => ({ ...one, place })));
  const met = new Set(
    judged(subject)
      .filter(({ verdict, comparison }) => verdict === 'meets' && !comparison)
      .map(({ check, place }) => `${check} ${place}`),
  );
  const known = new Map<number, Held>();
  return (height) => {
    const before = known.get(height);
    if (before !== undefined) return before;
    const held = attempt(() => {
      const installation = raised(subject.installation, mark, height);
      const layout = layoutAtBounds(subject.layout, installation);
      const solved = analysed({ installation, layout, response: solveFrame(layout.frame) });
      const turned = judged(solved).find(
        ({ check, place, verdict }) => met.has(`${check} ${place}`) && verdict !== 'meets',
      );
      const filled = solved.response.conditions[conditionId('filled')];
      const load = supportLoadIn(filled, mark)?.downward ?? 0;
      return turned === undefined
        ? { holds: true, load }
        : { holds: false, load, first: { title: turned.title, at: turned.at } };
    });
    known.set(height, held);
    return held;
  };
}

/** A height at which the line cannot be worked out holds nothing. */
function attempt(work: () => Held): Held {
  try {
    return work();
  } catch (error) {
    if (error instanceof EngineError) return { holds: false, load: Number.NaN };
    throw error;
  }
}

/** Largest height to one side at which all holds, by halving. */
function farthestHeld(
  tried: Trials,
  side: 1 | -1,
): { readonly reach: number; readonly first?: Held['first'] } {
  const end = tried(side * FARTHEST);
  if (end.holds) return { reach: FARTHEST };
  let [low, high] = [0, FARTHEST];
  let first = end.first;
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (low + high) / 2;
    const found = tried(side * middle);
    if (found.holds) low = middle;
    else {
      high = middle;
      first = found.first ?? first;
    }
  }
  return { reach: low, ...(first && { first }) };
}

function largestWithAnotherUnset({ layout, response }: Subject, mark: string): number {
  const loads = layout.frame.conditions.flatMap((condition) => {
    const role = roleOf(condition);
    const load = supportLoadIn(response.conditions[condition.name], mark)?.downward;
    return role.kind === 'slack' && role.support !== mark && load !== undefined ? [load] : [];
  });
  return Math.max(0, ...loads);
}

/** The installation with one support higher than it stands in the file. */
function raised(installation: Installation, mark: string, height: number): Installation {
  const at = (support: SupportPart): SupportPart => {
    if (support.mark !== mark) return support;
    const [east, north, up] = support.imposed ?? [0, 0, 0];
    return { ...support, imposed: [east, north, up + height] };
  };
  const part = (one: Part): Part => {
    if (one.kind === 'tee') return { ...one, side: { ...one.side, walk: one.side.walk.map(part) } };
    if ((one.kind === 'elbow' || one.kind === 'suction-diffuser') && one.support)
      return { ...one, support: at(one.support) };
    return 'holds' in one ? at(one) : one;
  };
  return {
    ...installation,
    lines: installation.lines.map((line) => ({ ...line, walk: line.walk.map(part) })),
  };
}
