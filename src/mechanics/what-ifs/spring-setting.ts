import { singularValues } from '../../algebra/singular-values.js';
import type { Frame, FrameCondition, FrameSupport } from '../../model/frame/frame.js';
import { dot, UP } from '../../model/vector.js';
import { isSetSpring } from '../frame/held-frame.js';
import type { ConditionResponse } from '../frame/response.js';
import { standingFrame } from '../frame/standing-frame.js';

/** How one spring is to be set so that it carries its load in the end. */
export interface SpringSetting {
  readonly mark: string;
  /** Load it is meant to carry: that of the file [N]. */
  readonly design: number;
  /** How far its upper end is to stand above the position at which the file sets it [m]. */
  readonly raise: number;
  /** Load once all springs are so set, by condition [N]. */
  readonly loads: Readonly<Record<string, number>>;
  /** Load with the springs as the file sets them, by condition [N]. */
  readonly asGiven: Readonly<Record<string, number>>;
  /** False where no height gives it its load: the line's weight decides what it carries. */
  readonly reached: boolean;
  /**
   * Height over the file's setting that would give it its load, where its adjustment does not go so far: it then stays as
   * the file sets it [m].
   */
  readonly beyond?: number;
}

/** Settings of all springs together, and what the other supports carry then. */
export interface DrySetting {
  readonly springs: readonly SpringSetting[];
  /** Response of every condition asked for, with the springs so set. */
  readonly responses: Readonly<Record<string, ConditionResponse>>;
}

/**
 * Finds the heights of all springs together at which each carries its load in the target condition, and what they and
 * all other supports then show in the other conditions: what to set dry.
 *
 *     h ← h + S⁻¹ (design − L(h))        S: change of the loads by the heights, one-way supports as they are
 *
 * Where supports change between acting and not acting on the way, the next round starts from what they then do.
 *
 * @param frame - the frame
 * @param conditions - the one to come right in, and all that are to be read, itself included
 * @param wanted - loads by mark [N], where others than those of the frame are wanted; springs without one stay as set
 * @returns heights [m] and loads [N]; undefined where there is no spring
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function drySetting(
  frame: Frame,
  conditions: { readonly target: FrameCondition; readonly read: readonly FrameCondition[] },
  wanted?: Readonly<Record<string, number>>,
): DrySetting | undefined {
  const upright = frame.supports.flatMap((support) => {
    const restraint = support.restraints.find(isUprightSpring);
    if (restraint === undefined) return [];
    const load = wanted === undefined ? restraint.preload : wanted[support.name];
    return load === undefined ? [] : [{ support, load, rate: restraint.stiffness }];
  });
  if (upright.length === 0) return undefined;
  const springs = upright.map(({ support }) => support);
  const design = upright.map(({ load }) => load);
  const rates = upright.map(({ rate }) => rate);
  const raise = springs.map(() => 0);
  for (let round = 0; round < ROUNDS; round++) {
    const standing = standingFrame(raised(frame, springs, raise), conditions.target);
    const lacking = springs.map((spring, i) => design[i]! - down(standing.response, spring));
    if (lacking.every((force, i) => Math.abs(force) <= EXACT * design[i]!)) break;
    // Row j is what raising spring j does to every spring, over the rate of the spring that is read.
    const rows = springs.map((spring) => {
      const { response } = standing.disturb({ imposed: { [spring.name]: UP } });
      return Float64Array.from(springs, (other, i) => down(response, other) / rates[i]!);
    });
    const { rank, values, left, right } = singularValues(rows, 0);
    const needed = lacking.map((force, i) => force / rates[i]!);
    let step = 0;
    for (let s = 0; s < rank; s++) {
      if (values[s]! < LEAST_EFFECT) continue;
      const share = needed.reduce((sum, value, i) => sum + value * right[s]![i]!, 0) / values[s]!;
      springs.forEach((_, j) => {
        raise[j] = raise[j]! + share * left[s]![j]!;
      });
      step = Math.max(step, Math.abs(share));
    }
    if (step < SMALLEST_STEP) break;
  }
  const set = raised(frame, springs, raise);
  const solved = (whole: Frame) =>
    Object.fromEntries(conditions.read.map((each) => [each.name, standingFrame(whole, each).response]));
  const responses = solved(set);
  const given = solved(frame);
  const loads = (of: typeof responses, spring: FrameSupport) =>
    Object.fromEntries(Object.entries(of).map(([name, response]) => [name, down(response, spring)]));
  return {
    responses,
    springs: springs.map((spring, i) => {
      const own = loads(responses, spring);
      const reached = Math.abs((own[conditions.target.name] ?? Number.NaN) - design[i]!) <= NEAR * design[i]!;
      return {
        mark: spring.name,
        design: design[i]!,
        raise: raise[i]!,
        loads: own,
        asGiven: loads(given, spring),
        reached,
      };
    }),
  };
}

/**
 * The setting as `drySetting` finds it, leaving out what cannot be made: a hanger is not raised by more than its rod is
 * long, and a spring without a rod not by more than it is compressed at its load, since there it is free. Such springs
 * stay as the file sets them and carry what they then do; the others are set with them so.
 *
 * @param frame - the frame
 * @param conditions - as `drySetting`
 * @returns heights [m] and loads [N]; undefined where there is no spring
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function possibleSetting(
  frame: Frame,
  conditions: { readonly target: FrameCondition; readonly read: readonly FrameCondition[] },
): DrySetting | undefined {
  const beyond = new Map<string, SpringSetting>();
  const upright = frame.supports.flatMap(({ name, restraints }) => {
    const spring = restraints.find(isUprightSpring);
    return spring === undefined ? [] : [{ name, spring }];
  });
  const wanted = () =>
    Object.fromEntries(
      upright.flatMap(({ name, spring }) => (beyond.has(name) ? [] : [[name, spring.preload] as const])),
    );
  let found = drySetting(frame, conditions);
  for (let known = -1; found !== undefined && known !== beyond.size; ) {
    known = beyond.size;
    for (const { name, spring } of upright) {
      const set = found.springs.find(({ mark }) => mark === name);
      const most = spring.swingLength ?? spring.preload / spring.stiffness;
      if (set !== undefined && Math.abs(set.raise) > most) {
        beyond.set(name, { ...set, raise: 0, reached: false, beyond: set.raise });
      }
    }
    if (known !== beyond.size)
      found = drySetting(frame, conditions, wanted()) ?? asTheyAre(frame, conditions);
  }
  if (found === undefined || beyond.size === 0) return found;
  const { responses, springs } = found;
  return {
    responses,
    springs: upright.flatMap(({ name }) => {
      const left = beyond.get(name);
      if (left === undefined) return springs.find(({ mark }) => mark === name) ?? [];
      const loads = Object.fromEntries(
        Object.entries(responses).map(([id, { supports }]) => [id, -supports[name]!.load.force[2]]),
      );
      return { ...left, loads };
    }),
  };
}

function asTheyAre(frame: Frame, { read }: { readonly read: readonly FrameCondition[] }): DrySetting {
  const responses = Object.fromEntries(read.map((each) => [each.name, standingFrame(frame, each).response]));
  return { responses, springs: [] };
}

/** Rounds; one is enough where no support changes between acting and not acting [-]. */
const ROUNDS = 8;
/** Share of its load to which a spring is set [-]. */
const EXACT = 1e-9;
/** Share of its load within which a spring counts as set [-]. */
const NEAR = 0.005;
/** Below this share of its rate, raising a spring does not change what it carries [-]. */
const LEAST_EFFECT = 1e-3;
/** Heights are not changed by less than this [m]. */
const SMALLEST_STEP = 1e-12;

function isUprightSpring(restraint: FrameSupport['restraints'][number]): boolean {
  return isSetSpring(restraint) && Math.abs(dot(restraint.direction, UP)) > 0.999;
}

function raised(frame: Frame, springs: readonly FrameSupport[], raise: readonly number[]): Frame {
  const supports = frame.supports.map((support) => {
    const index = springs.indexOf(support);
    if (index === -1) return support;
    const restraints = support.restraints.map((restraint) =>
      isUprightSpring(restraint)
        ? { ...restraint, imposed: restraint.imposed + raise[index]! * restraint.direction[2] }
        : restraint,
    );
    return { ...support, restraints };
  });
  return { ...frame, supports };
}

function down(response: ConditionResponse, support: FrameSupport): number {
  return -response.supports[support.name]!.load.force[2];
}
