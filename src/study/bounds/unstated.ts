/** Everything an installation does not say that loads, stresses or vibrations rest on. One registry. */
import type { Installation, Part, SupportPart } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import { everyPart } from '../bands/uncertain-parts.js';
import { bracketReach, type Reach, ranges } from './ranges.js';

/** What kind of thing it is; how it is varied follows from it. */
export type UnstatedKind = 'structure' | 'friction' | 'anchor' | 'grip' | 'loose-grip' | 'bracket';

/** A thing that the file does not say. Plain data. */
export interface Unstated {
  /** `structure at H1`; unique. */
  readonly id: string;
  readonly kind: UnstatedKind;
  /** Mark of the support, name of the end, or what it is of. */
  readonly owner: string;
  /** Trade words: `stiffness of the structure at H1`. */
  readonly what: string;
  /** Where in the file it would be said, and what to write there. */
  readonly path: string;
  readonly say: string;
  /** What was taken: the one end of the range. */
  readonly taken: 'rigid' | 'none' | 'free';
  /** The other end: least stiffness [N/m], [N·m/rad], frequency [Hz], or largest friction [-]. */
  readonly end: number;
  readonly unit: 'N/m' | 'N·m/rad' | 'Hz' | '-';
  /** Second end where a movement and a turn belong together [N·m/rad]. */
  readonly turning?: number;
  readonly citation: Citation;
  /** Whether loads at rest follow it; vibrations follow all of them. */
  readonly movesLoads: boolean;
  /** True where what follows from it may turn back within the range, so that its middle is tried too. */
  readonly isSwept: boolean;
}

/**
 * What an installation leaves unsaid.
 *
 * @param installation - as read
 * @returns things, pump first, then in walking order; none where everything is said
 */
export function unstatedOf(installation: Installation): readonly Unstated[] {
  const { lines } = installation;
  const grips = everyPart(installation).flatMap(({ part }) =>
    part.kind === 'grooved-joint' && part.gripUnstated === true ? [part] : [],
  );
  const typed = (type: 'rigid' | 'flexible') => grips.filter((part) => part.type === type);
  return [
    ...pumpThings(installation),
    ...lines.flatMap(({ walk }) => supportsIn(walk).flatMap(supportThings)),
    ...everyPart(installation).flatMap(({ part, line }) => endThings(part, line)),
    ...gripThing('grip', typed('rigid')),
    ...gripThing('loose-grip', typed('flexible')),
  ];
}

function pumpThings({ pump }: Installation): readonly Unstated[] {
  const { base, mount, motor } = pump;
  const found: Unstated[] = [];
  if (motor.bracket === undefined) {
    const reach = bracketReach(pump);
    found.push({
      id: 'motor bracket',
      kind: 'bracket',
      owner: 'motor bracket',
      what: 'stiffness of the bracket between casing and motor',
      path: 'pump.motor.bracket',
      say: "bracket: {frequency: …}, the maker's natural frequency of the motor on its bracket",
      taken: 'rigid',
      ...reachOf(reach, 'Hz'),
      movesLoads: false,
      isSwept: true,
    });
  }
  if (mount === 'resting' && base !== undefined) {
    if (base.friction === undefined) found.push(frictionThing('pump base', 'pump.base.friction'));
    if (base.structure === undefined)
      found.push(structureThing('pump base', 'pump.base.structure', ranges.stood));
  }
  if (mount === 'bolted' && base !== undefined && base.anchors === undefined)
    found.push(anchorThing('pump base', 'pump.base.anchors'));
  return found;
}

function supportThings(part: SupportPart): readonly Unstated[] {
  const { kind, mark, path } = part;
  const rests = kind === 'rest' || kind === 'stand';
  const found: Unstated[] = [];
  if (rests && part.friction === undefined) found.push(frictionThing(mark, `${path}.friction`));
  // A spring is so much softer than what it hangs on that this changes nothing.
  if (part.structure !== undefined || kind === 'spring-hanger') return found;
  if (kind === 'anchor') found.push(anchorThing(mark, `${path}.structure`));
  else found.push(structureThing(mark, `${path}.structure`, rests ? ranges.stood : ranges.hung));
  return found;
}

function endThings(part: Part, line: string): readonly Unstated[] {
  if (part.kind !== 'end' || part.end !== 'anchored' || part.structure !== undefined) return [];
  return [anchorThing(part.name, `${part.path}.anchored.structure`, `the end of the ${line}`)];
}

function structureThing(mark: string, path: string, reach: Reach): Unstated {
  return {
    id: `structure at ${mark}`,
    kind: 'structure',
    owner: mark,
    what: `stiffness of the structure at ${mark}`,
    path,
    say: 'structure: …, its stiffness, or rigid',
    taken: 'rigid',
    ...reachOf(reach, 'N/m'),
    movesLoads: true,
    isSwept: false,
  };
}

function anchorThing(owner: string, path: string, place = owner): Unstated {
  return {
    id: `anchor at ${owner}`,
    kind: 'anchor',
    owner,
    what: `stiffness of the anchor at ${place}`,
    path,
    say: 'structure: {translation: …, rotation: …}, its stiffness, or rigid',
    taken: 'rigid',
    ...reachOf(ranges.anchored, 'N/m'),
    turning: ranges.anchoredTurning.end,
    movesLoads: true,
    isSwept: false,
  };
}

function frictionThing(owner: string, path: string): Unstated {
  return {
    id: `friction at ${owner}`,
    kind: 'friction',
    owner,
    what: owner === 'pump base' ? 'friction under the pump base' : `friction at ${owner}`,
    path,
    say: 'friction: …, its coefficient, 0 where it slides on rollers or PTFE',
    taken: 'none',
    ...reachOf(ranges.friction, '-'),
    movesLoads: true,
    isSwept: true,
  };
}

function gripThing(
  kind: 'grip' | 'loose-grip',
  parts: readonly { readonly name: string; readonly path: string }[],
): readonly Unstated[] {
  const [first] = parts;
  if (first === undefined) return [];
  const type = kind === 'grip' ? 'rigid' : 'flexible';
  return [
    {
      id: `grip of ${type} grooved joints`,
      kind,
      owner: type,
      what: `grip of the grooved joints of the ${type} type against bending and twist`,
      path: `${first.path}.bending`,
      say:
        kind === 'grip'
          ? 'bending: and torsion: of each, or rigid-grooved-joints under assumed'
          : 'bending: and torsion: of each, or free',
      taken: kind === 'grip' ? 'rigid' : 'free',
      ...reachOf(kind === 'grip' ? ranges.gripDiameters : ranges.looseGrip, '-'),
      movesLoads: true,
      isSwept: false,
    },
  ];
}

function reachOf(
  { end, citation }: Reach,
  unit: Unstated['unit'],
): Pick<Unstated, 'end' | 'unit' | 'citation'> {
  return { end, unit, citation };
}

/**
 * The same of an installation of which bracket and structure are taken as if nobody had stated them: what a sweep shows
 * beside values that are stated.
 *
 * @param installation - as read
 * @returns bracket, structure and anchors
 */
export function asIfUnstated(installation: Installation): readonly Unstated[] {
  const { pump, lines } = installation;
  const { bracket: _, ...motor } = pump.motor;
  const bare = (part: Part): Part => {
    if (part.kind === 'end') {
      const { structure: __, ...rest } = part;
      return rest;
    }
    if (part.kind === 'tee') return { ...part, side: { ...part.side, walk: part.side.walk.map(bare) } };
    if ((part.kind === 'elbow' || part.kind === 'suction-diffuser') && part.support)
      return { ...part, support: bareSupport(part.support) };
    return 'holds' in part ? bareSupport(part) : part;
  };
  const found = unstatedOf({
    ...installation,
    pump: { ...pump, motor },
    lines: lines.map((line) => ({ ...line, walk: line.walk.map(bare) })),
  });
  return found.filter(({ kind }) => kind === 'bracket' || kind === 'structure' || kind === 'anchor');
}

function bareSupport(part: SupportPart): SupportPart {
  const { structure: _, structureTurning: __, ...rest } = part;
  return rest;
}

/**
 * All supports of a walk: those of their own, those under elbows and diffusers, and those on the legs of tees.
 *
 * @param walk - parts in walking order
 * @returns supports in walking order
 */
export function supportsIn(walk: readonly Part[]): readonly SupportPart[] {
  return walk.flatMap((part): readonly SupportPart[] => {
    switch (part.kind) {
      case 'elbow':
      case 'suction-diffuser':
        return part.support === undefined ? [] : [part.support];
      case 'tee':
        return supportsIn(part.side.walk);
      case 'hanger':
      case 'spring-hanger':
      case 'rest':
      case 'guide':
      case 'stop':
      case 'anchor':
      case 'stand':
        return [part];
      default:
        return [];
    }
  });
}
