/** The installation with things that nobody stated somewhere within what they may be. */
import type {
  AnchorStructure,
  CouplingPart,
  Installation,
  Part,
  Pump,
  Sourced,
  SupportPart,
} from '../../input/installation.js';
import { ranges } from './ranges.js';
import type { Unstated } from './unstated.js';

/** Amounts by id: 0 as taken, 1 at the other end; what is not named is as taken [-]. */
export type Amounts = ReadonlyMap<string, number>;

/**
 * The installation at given amounts. Softness goes evenly: a stiffness is its least over the amount, so that 0 is rigid;
 * friction and loose grip are their largest times the amount; a natural frequency is its least over the root of it.
 *
 * @param installation - as read
 * @param things - what may vary
 * @param amounts - how far each has gone [-]
 * @returns the varied installation; what is not touched stays the same object
 */
export function atBounds(
  installation: Installation,
  things: readonly Unstated[],
  amounts: Amounts,
): Installation {
  const by = new Map<string, { readonly thing: Unstated; readonly amount: number }>();
  for (const thing of things) {
    const amount = amounts.get(thing.id) ?? 0;
    if (amount > 0) by.set(thing.id, { thing, amount });
  }
  if (by.size === 0) return installation;
  const find: Find = (id) => by.get(id);
  return {
    ...installation,
    pump: pumpAt(installation.pump, find),
    lines: installation.lines.map((line) => {
      const walk = walkAt(line.walk, find, installation);
      return walk === line.walk ? line : { ...line, walk };
    }),
  };
}

type Find = (id: string) => { readonly thing: Unstated; readonly amount: number } | undefined;

function pumpAt(pump: Pump, find: Find): Pump {
  const bracket = find('motor bracket');
  const friction = find('friction at pump base');
  const floor = find('structure at pump base');
  const anchor = find('anchor at pump base');
  const { base, motor } = pump;
  return {
    ...pump,
    ...(bracket && {
      motor: {
        ...motor,
        bracket: {
          kind: 'frequency',
          frequency: taken(bracket.thing, bracket.thing.end / Math.sqrt(bracket.amount)),
        },
      },
    }),
    ...(base && {
      base: {
        ...base,
        ...(friction && { friction: friction.thing.end * friction.amount }),
        ...(floor && { structure: soft(floor) }),
        ...(anchor && { anchors: softAnchor(anchor) }),
      },
    }),
  };
}

function walkAt(walk: readonly Part[], find: Find, of: Installation): readonly Part[] {
  let changed = false;
  const parts = walk.map((part) => {
    const at = partAt(part, find, of);
    changed ||= at !== part;
    return at;
  });
  return changed ? parts : walk;
}

function partAt(part: Part, find: Find, of: Installation): Part {
  switch (part.kind) {
    case 'elbow':
    case 'suction-diffuser': {
      if (part.support === undefined) return part;
      const support = supportAt(part.support, find);
      return support === part.support ? part : { ...part, support };
    }
    case 'tee': {
      const walk = walkAt(part.side.walk, find, of);
      return walk === part.side.walk ? part : { ...part, side: { ...part.side, walk } };
    }
    case 'end': {
      const anchor = find(`anchor at ${part.name}`);
      return anchor === undefined ? part : { ...part, structure: softAnchor(anchor) };
    }
    case 'grooved-joint': {
      const grip = part.gripUnstated === true ? find(`grip of ${part.type} grooved joints`) : undefined;
      return grip === undefined ? part : gripped(part, grip.amount, of);
    }
    case 'hanger':
    case 'spring-hanger':
    case 'rest':
    case 'guide':
    case 'stop':
    case 'anchor':
    case 'stand':
      return supportAt(part, find);
    default:
      return part;
  }
}

function supportAt(part: SupportPart, find: Find): SupportPart {
  const friction = find(`friction at ${part.mark}`);
  const structure = find(`structure at ${part.mark}`);
  const anchor = find(`anchor at ${part.mark}`);
  if (!friction && !structure && !anchor) return part;
  return {
    ...part,
    ...(friction && { friction: friction.thing.end * friction.amount }),
    ...(structure && { structure: soft(structure) }),
    ...(anchor && {
      structure: softAnchor(anchor).translation,
      structureTurning: softAnchor(anchor).rotation,
    }),
  };
}

/** Bending and twist of a grooved joint: of so many diameters of its pipe, E I / (n D), and over the amount. */
function gripped(part: CouplingPart, amount: number, { materials }: Installation): CouplingPart {
  const { outsideDiameter, wall, material } = part.section;
  const inside = outsideDiameter - 2 * wall;
  const bendingArea = (Math.PI / 64) * (outsideDiameter ** 4 - inside ** 4);
  const modulus = materials[material]?.modulus.value ?? 0;
  const rigid = (modulus * bendingArea) / (ranges.gripDiameters.end * outsideDiameter);
  const turning = part.type === 'rigid' ? rigid / amount : rigid * ranges.looseGrip.end * amount;
  return { ...part, stiffness: { ...part.stiffness, bending: turning, torsion: turning } };
}

function soft({ thing, amount }: { readonly thing: Unstated; readonly amount: number }): Sourced {
  return taken(thing, thing.end / amount);
}

function softAnchor(at: { readonly thing: Unstated; readonly amount: number }): AnchorStructure {
  const turning = at.thing.turning ?? Number.POSITIVE_INFINITY;
  return { translation: soft(at), rotation: taken(at.thing, turning / at.amount) };
}

const taken = ({ path }: Unstated, value: number): Sourced => ({ value, origin: { kind: 'assumed', path } });
