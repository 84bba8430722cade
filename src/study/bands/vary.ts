/** The installation with some of its values other than they were taken. */
import type { Installation, JointStiffness, Part, Sourced, Vec3 } from '../../input/installation.js';
import { massOwner, stiffnessOwner } from './uncertain-parts.js';
import { factorAt, type Uncertainty } from './uncertainty.js';

/**
 * The installation in which each uncertainty has gone by its amount.
 *
 * @param installation - as read
 * @param uncertainties - what may be off
 * @param amounts - one an uncertainty, from −1 to 1; an alternative is there from above 0 [-]
 * @returns the varied installation; what is not touched stays the same object
 */
export function varied(
  installation: Installation,
  uncertainties: readonly Uncertainty[],
  amounts: readonly number[],
): Installation {
  const by = new Map<string, { readonly uncertainty: Uncertainty; readonly amount: number }>();
  uncertainties.forEach((uncertainty, index) => {
    const amount = amounts[index] ?? 0;
    if (amount !== 0) by.set(uncertainty.id, { uncertainty, amount });
  });
  if (by.size === 0) return installation;
  const factor = (id: string): number => {
    const found = by.get(id);
    return found === undefined ? 1 : factorAt(found.uncertainty, found.amount);
  };
  const shift = (id: string): number => {
    const found = by.get(id);
    return found === undefined ? 0 : found.uncertainty.half * found.amount;
  };
  const centre = (at: Vec3): Vec3 => [
    at[0] + shift('centre of set, east'),
    at[1] + shift('centre of set, north'),
    at[2],
  ];
  const { pump } = installation;
  return {
    ...installation,
    pump: {
      ...pump,
      contents: scaled(pump.contents, factor('contents of pump')),
      casing: {
        ...pump.casing,
        mass: scaled(pump.casing.mass, factor('mass of casing')),
        centre: centre(pump.casing.centre),
      },
      motor: {
        ...pump.motor,
        mass: scaled(pump.motor.mass, factor('mass of motor')),
        centre: centre(pump.motor.centre),
      },
      ...(pump.base?.inertiaBase && {
        base: {
          ...pump.base,
          inertiaBase: {
            ...pump.base.inertiaBase,
            mass: scaled(pump.base.inertiaBase.mass, factor('mass of inertia base')),
          },
        },
      }),
    },
    lines: installation.lines.map((line) => ({ ...line, walk: variedWalk(line.walk, factor, by) })),
  };
}

type Factor = (id: string) => number;

function variedWalk(
  walk: readonly Part[],
  factor: Factor,
  by: ReadonlyMap<string, unknown>,
): readonly Part[] {
  return walk.map((part) => variedPart(part, factor, by));
}

function variedPart(part: Part, factor: Factor, by: ReadonlyMap<string, unknown>): Part {
  const { covering } = part;
  const covered = covering && {
    covering: { ...covering, massPerLength: scaled(covering.massPerLength, factor('mass of insulation')) },
  };
  const owner = massOwner(part);
  const heavy = <Kind extends Part & { readonly mass: Sourced }>(own: Kind): Kind => ({
    ...own,
    ...covered,
    mass: scaled(own.mass, owner === undefined ? 1 : factor(`mass of ${owner}`)),
  });
  switch (part.kind) {
    case 'straight': {
      const { section } = part;
      const massPerLength = scaled(section.massPerLength, factor('mass of pipe'));
      return { ...part, ...covered, section: { ...section, massPerLength } };
    }
    case 'valve':
    case 'suction-diffuser': {
      const full = {
        ...part,
        contents: scaled(
          part.contents,
          factor(`contents of ${part.kind === 'valve' ? 'valves' : part.name}`),
        ),
      };
      return heavy(full);
    }
    case 'flexible-connector':
    case 'grooved-joint': {
      const own = heavy(part);
      return { ...own, stiffness: stiffened(own.stiffness, factor(`stiffness of ${stiffnessOwner(part)}`)) };
    }
    case 'tee': {
      const own = heavy(part);
      return { ...own, side: { ...own.side, walk: variedWalk(own.side.walk, factor, by) } };
    }
    case 'spring-hanger': {
      if (part.spring === undefined) return part;
      const { rate, load } = part.spring;
      const spring = {
        ...part.spring,
        rate: rate * factor(`spring rate of ${part.mark}`),
        load: scaled(load, factor(`spring load of ${part.mark}`)),
      };
      return { ...part, spring };
    }
    case 'end':
      return variedEnd(part, factor, by);
    default:
      return 'mass' in part ? heavy(part) : part;
  }
}

function variedEnd(
  part: Extract<Part, { kind: 'end' }>,
  factor: Factor,
  by: ReadonlyMap<string, unknown>,
): Part {
  if (part.end === 'continues' && part.stiffness !== undefined) {
    const by3 = factor(`pipe beyond ${part.name}`);
    const times = (values: Vec3): Vec3 => [values[0] * by3, values[1] * by3, values[2] * by3];
    const { translation, rotation } = part.stiffness;
    return { ...part, stiffness: { translation: times(translation), rotation: times(rotation) } };
  }
  if (!by.has(`${part.name} turns`)) return part;
  const rigid = Number.POSITIVE_INFINITY;
  return {
    ...part,
    end: 'continues',
    stiffness: { translation: [rigid, rigid, rigid], rotation: [0, 0, 0] },
  };
}

function scaled(sourced: Sourced, factor: number): Sourced {
  return factor === 1 ? sourced : { ...sourced, value: sourced.value * factor };
}

function stiffened(own: JointStiffness, factor: number): JointStiffness {
  const { axial, lateral, torsion, bending } = own;
  return {
    axial: axial * factor,
    lateral: lateral * factor,
    torsion: torsion * factor,
    bending: bending * factor,
  };
}
