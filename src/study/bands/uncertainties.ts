/** Every uncertainty of an installation. */
import type { Installation, Origin, Part, Sourced } from '../../input/installation.js';
import { everyPart, massOwner, type PartInLine, stiffnessOwner } from './uncertain-parts.js';
import type { Obtained, Uncertainty } from './uncertainty.js';
import { type Width, widths } from './widths.js';

/**
 * What is uncertain in an installation: weights, liquid held, centres of gravity, springs, soft joints, ends.
 *
 * Parts whose weight comes from one table of the catalogue are off together, so that what is uncertain about them does
 * not average out; what the file gives one by one is off one by one.
 *
 * @param installation - as read
 * @returns uncertainties, each once: pump first, then in walking order
 */
export function uncertaintiesOf(installation: Installation): readonly Uncertainty[] {
  const { base, casing, contents, motor } = installation.pump;
  const under = base?.inertiaBase?.mass;
  const found = [
    massUncertainty('casing', 'weight of the pump casing', casing.mass, weightWidth(casing.mass)),
    massUncertainty('motor', 'weight of the motor', motor.mass, motorWidth(motor.mass)),
    under && massUncertainty('inertia base', 'weight of the inertia base', under, weightWidth(under)),
    ...(['east', 'north'] as const).map(centreUncertainty),
    contentsUncertainty('pump', 'liquid in the pump casing', contents),
    ...everyPart(installation).flatMap(partUncertainties),
  ];
  const byId = new Map<string, Uncertainty>();
  for (const uncertainty of found)
    if (uncertainty !== undefined && !byId.has(uncertainty.id)) byId.set(uncertainty.id, uncertainty);
  return [...byId.values()];
}

function partUncertainties({ part, line }: PartInLine): readonly (Uncertainty | undefined)[] {
  const uncertainties: (Uncertainty | undefined)[] = [];
  const owner = massOwner(part);
  if (owner !== undefined) {
    if (part.kind === 'straight') {
      const { massPerLength } = part.section;
      uncertainties.push(massUncertainty(owner, 'weight of the pipe', massPerLength, widths.pipe, 'kg/m'));
    } else if ('mass' in part)
      uncertainties.push(
        massUncertainty(owner, ownerWords(part, owner), part.mass, partWidth(part.mass, owner)),
      );
  }
  if (part.covering !== undefined) {
    const { massPerLength } = part.covering;
    uncertainties.push(
      massUncertainty('insulation', 'weight of the insulation', massPerLength, widths.insulation, 'kg/m'),
    );
  }
  switch (part.kind) {
    case 'valve':
      uncertainties.push(contentsUncertainty('valves', 'liquid in the valves', part.contents));
      break;
    case 'suction-diffuser':
      uncertainties.push(contentsUncertainty(part.name, `liquid in ${part.name}`, part.contents));
      break;
    case 'spring-hanger':
      uncertainties.push(...springUncertainties(part));
      break;
    case 'flexible-connector':
    case 'grooved-joint':
      if (isSoft(part.stiffness)) uncertainties.push(jointUncertainty(part));
      break;
    case 'end':
      uncertainties.push(endUncertainty(part, line));
      break;
    default:
      break;
  }
  return uncertainties;
}

function massUncertainty(
  owner: string,
  what: string,
  { value, origin }: Sourced,
  { half, citation }: Width,
  unit: 'kg' | 'kg/m' = 'kg',
): Uncertainty | undefined {
  if (value === 0) return undefined;
  return {
    id: `mass of ${owner}`,
    what,
    varied: { kind: 'mass', owner },
    moves: 'share',
    half: givenWidth(origin) ?? half,
    taken: value,
    unit,
    obtained: obtainedBy(origin),
    citation:
      givenWidth(origin) === undefined
        ? citation
        : { source: 'input', clause: 'within, as given', confidence: 'read' },
    ...pathOf(origin),
  };
}

function contentsUncertainty(
  owner: string,
  what: string,
  { value, origin }: Sourced,
): Uncertainty | undefined {
  if (value === 0) return undefined;
  const obtained = obtainedBy(origin);
  const { half, citation } =
    obtained === 'given' || obtained === 'maker' ? widths.volume.given : widths.volume.other;
  const varied = { kind: 'contents', owner } as const;
  return {
    id: `contents of ${owner}`,
    what,
    varied,
    moves: 'share',
    half,
    taken: value,
    unit: 'm³',
    obtained,
    citation,
    ...pathOf(origin),
  };
}

function centreUncertainty(way: 'east' | 'north'): Uncertainty {
  return {
    id: `centre of set, ${way}`,
    what: `centre of gravity of pump and motor, to the ${way}`,
    varied: { kind: 'centre', way },
    moves: 'shift',
    ...widths.centre,
    unit: 'm',
    taken: 0,
    obtained: 'given',
    path: 'pump.motor.centre-of-gravity',
  };
}

function springUncertainties(part: Extract<Part, { spring?: unknown }>): readonly Uncertainty[] {
  const { mark, spring, path } = part;
  if (spring === undefined) return [];
  const common = { moves: 'share', obtained: 'given', path } as const;
  return [
    {
      id: `spring load of ${mark}`,
      what: `load that spring hanger ${mark} is set to`,
      varied: { kind: 'spring-load', mark },
      taken: spring.load.value,
      unit: 'N',
      ...widths.springLoad,
      ...common,
    },
    {
      id: `spring rate of ${mark}`,
      what: `rate of spring hanger ${mark}`,
      varied: { kind: 'spring-rate', mark },
      taken: spring.rate,
      unit: 'N/m',
      ...widths.springRate,
      ...common,
    },
  ];
}

function jointUncertainty(
  part: Extract<Part, { kind: 'flexible-connector' | 'grooved-joint' }>,
): Uncertainty {
  return {
    id: `stiffness of ${stiffnessOwner(part)}`,
    what: `stiffness of ${part.name} and its like`,
    varied: { kind: 'joint-stiffness', owner: stiffnessOwner(part) },
    moves: 'factor',
    ...widths.jointStiffness,
    unit: '-',
    obtained: 'given',
    path: part.path,
  };
}

function endUncertainty(
  { name, path, end }: Extract<Part, { kind: 'end' }>,
  line: string,
): Uncertainty | undefined {
  if (end === 'free') return undefined;
  const common = { unit: '-', path } as const;
  if (end === 'continues') {
    return {
      id: `pipe beyond ${name}`,
      what: `stiffness of the pipe beyond the ${line}`,
      varied: { kind: 'pipe-beyond', owner: name },
      moves: 'factor',
      ...widths.pipeBeyond,
      obtained: 'estimated',
      ...common,
    };
  }
  return {
    id: `${name} turns`,
    what: `the anchored end of the ${line} (${name}) holds in place but turns`,
    varied: { kind: 'end-turns', owner: name },
    moves: 'alternative',
    ...widths.endTurns,
    obtained: 'given',
    ...common,
  };
}

const isSoft = (stiffness: object) =>
  Object.values(stiffness).some((value) => Number.isFinite(value) && value > 0);

function ownerWords(part: Part, owner: string): string {
  if (owner === 'flanges') return 'weight of the flanges';
  if (owner === 'fittings') return 'weight of elbows, tees and reducers';
  return owner.startsWith('suction-diffuser')
    ? `weight of ${part.name}`
    : `weight of ${part.name} and its like`;
}

function partWidth(mass: Sourced, owner: string): Width {
  return owner === 'flanges' || owner === 'fittings' ? widths.standardParts : weightWidth(mass);
}

function weightWidth({ origin }: Sourced): Width {
  return widths.weights[obtainedBy(origin)];
}

function motorWidth({ origin }: Sourced): Width {
  const obtained = obtainedBy(origin);
  return obtained === 'assumed' || obtained === 'estimated' ? widths.motorGuess : widths.weights[obtained];
}

function obtainedBy(origin: Origin): Obtained {
  switch (origin.kind) {
    case 'given':
      return origin.known ?? 'given';
    case 'catalogue':
      return 'catalogue';
    case 'computed':
      return 'computed';
    case 'assumed':
      return 'assumed';
  }
}

/** Half width that the file itself gives [-]. */
function givenWidth(origin: Origin): number | undefined {
  return origin.kind === 'given' ? origin.within : undefined;
}

function pathOf(origin: Origin): { readonly path?: string } {
  return 'path' in origin ? { path: origin.path } : {};
}
