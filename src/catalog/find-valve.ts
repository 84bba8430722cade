import type { Citation } from '../sources/index.js';
import type { Catalogued } from './catalogued.js';
import { nominalInches, nominalSize } from './nominal-size.js';
import { INCH, POUND } from './printed-units.js';
import { type PrintedValves, valves } from './valves.js';

/** A valve of the tables. */
export interface CataloguedValve {
  readonly kind: string;
  readonly body: 'cast steel' | 'cast iron' | 'ductile iron';
  readonly ends: 'flanged' | 'between flanges';
  /** Face to face [m]. */
  readonly faceToFace: Catalogued;
  /** Without actuator [kg]. */
  readonly mass: Catalogued;
  /** How far the mass may be off, as a share of it: 0.2 is plus or minus 20 %. */
  readonly massSpread: number;
  /** True where the sources of this row disagree. */
  readonly uncertain: boolean;
  /** Liquid held [m³]. */
  readonly contents: Catalogued;
}

/** Which valve is asked for. */
export interface ValveQuery {
  /** `gate`, `globe`, `swing check`, `butterfly lug` or `butterfly wafer`. */
  readonly kind: string;
  /** `150` (cast steel) or `125` (cast iron); butterfly valves answer to both. */
  readonly class: string;
  readonly nps: string;
}

/** Plus or minus share of a weight, by body. */
const spreads = { 'cast steel': 0.2, 'cast iron': 0.25, 'ductile iron': 0.3 } as const;

/**
 * Length, mass and contents of a typical valve.
 *
 *     contents = π/4 × nominal bore² × face to face
 *
 * @param query - kind, class and nominal size [-]
 * @returns length [m], mass [kg] and contents [m³], or undefined where no such valve is listed
 * @source asme-b16.10, api-609, valve-weight-list
 */
export function findValve(query: ValveQuery): CataloguedValve | undefined {
  const nps = nominalSize(query.nps);
  const printed = valves.find(({ kind, classes }) => kind === query.kind && classes.includes(query.class));
  const found = printed?.rows.find(([size]) => size === nps);
  const inches = nominalInches(query.nps);
  if (printed === undefined || found === undefined || inches === undefined) return undefined;
  const [size, faceToFace, pounds, uncertain = false] = found;
  const entry = { table: `${printed.kind} valves, ${printed.body}`, row: `class ${query.class} NPS ${size}` };
  return {
    kind: printed.kind,
    body: printed.body,
    ends: printed.kind.startsWith('butterfly') ? 'between flanges' : 'flanged',
    faceToFace: { ...entry, value: faceToFace * INCH, citation: lengthCitation(printed.kind, inches) },
    mass: { ...entry, value: pounds * POUND, citation: massCitation(printed.body) },
    massSpread: spreads[printed.body],
    uncertain,
    contents: {
      ...entry,
      value: (Math.PI / 4) * (inches * INCH) ** 2 * faceToFace * INCH,
      citation: { source: 'asme-b16.10', clause: 'nominal bore and face to face', confidence: 'computed' },
      how: 'nominal bore area × face to face',
    },
  };
}

/** Globe lengths and the largest swing check and butterfly lengths were not found on a page that could be trusted. */
function lengthCitation(kind: string, inches: number): Citation {
  const butterfly = kind.startsWith('butterfly');
  const remembered =
    kind === 'globe' || (kind === 'swing check' && inches >= 16) || (butterfly && inches >= 14);
  return {
    source: butterfly ? 'api-609' : 'asme-b16.10',
    clause: `face to face, ${kind}`,
    confidence: remembered ? 'memory' : 'two sources',
  };
}

function massCitation(body: PrintedValves['body']): Citation {
  if (body === 'cast steel') return { source: 'valve-weight-list', clause: 'class 150', confidence: 'read' };
  return { source: 'common-practice', clause: `typical weight, ${body}`, confidence: 'memory' };
}

/**
 * Kinds of valve in the tables.
 *
 * @returns kind labels [-]
 * @source asme-b16.10
 */
export function valveKinds(): readonly string[] {
  return [...new Set(valves.map(({ kind }) => kind))];
}

/**
 * Nominal sizes of one kind and class.
 *
 * @param query - kind and class [-]
 * @returns size labels from the smallest up; empty where kind or class is unknown [-]
 * @source asme-b16.10, api-609
 */
export function valveSizes(query: { readonly kind: string; readonly class: string }): readonly string[] {
  const printed = valves.find(({ kind, classes }) => kind === query.kind && classes.includes(query.class));
  return printed?.rows.map(([nps]) => nps) ?? [];
}
