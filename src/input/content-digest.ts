/**
 * What an installation is, without what is said about it: two files that differ in a comment, a date, a letterhead or the
 * words of a source describe the same one. Whole and part by part, so that what differs can be named.
 */
import { digestOf } from './digest.js';
import type { Installation, Part } from './installation.js';

/** Signs kept of the digest of a part: it only names what differs, the whole decides. */
const SHORT = 8;

/** Where a thing is written and who says so: nothing of the thing itself. */
const TOLD = new Set([
  'path',
  'citation',
  'expansionCitation',
  'ratingCitation',
  'document',
  'clause',
  'source',
]);

/**
 * Digests of what an installation is: masses, sizes, places, supports, service, room and limits. Title block, notes,
 * letterhead, units of print, assumptions and sources are left out.
 *
 * @param installation - after reading [SI]
 * @returns one line of text to go with a sheet: SHA-256 of the whole, then the first signs of each part's as `name=digest`,
 *   names escaped as in a URI
 */
export function contentDigest({
  service,
  materials,
  pump,
  lines,
  room,
  serviceSpaces,
  limits,
}: Omit<Installation, 'fingerprint'>): string {
  const { motor, ...rest } = pump;
  const whole = canonical({ service, materials, pump, lines, room, serviceSpaces, limits });
  const named: (readonly [string, unknown])[] = [
    ['pump', rest],
    ['motor', motor],
    ['service', service],
    ['materials', materials],
    ['room', room],
    ['service spaces', serviceSpaces ?? []],
    ['limits', limits],
    ...lines.flatMap(({ walk, ...line }) => [
      [line.name, { ...line, order: walk.map(({ name }) => name) }] as const,
      ...walk.flatMap(partsOf),
    ]),
  ];
  const texts = new Map<string, string>();
  for (const [name, what] of named) texts.set(name, `${texts.get(name) ?? ''}${canonical(what)}`);
  const parts = [...texts].map(
    ([name, text]) => `${encodeURIComponent(name)}=${digestOf(text).slice(0, SHORT)}`,
  );
  return [digestOf(whole), ...parts].join(' ');
}

/** A part, and what stands on it, each under its own name. */
function partsOf(part: Part): readonly (readonly [string, unknown])[] {
  if (part.kind === 'tee') {
    const { walk, ...side } = part.side;
    const order = walk.map(({ name }) => name);
    return [[part.name, { ...part, side: { ...side, order } }], ...walk.flatMap(partsOf)];
  }
  if ('support' in part && part.support !== undefined) {
    const { support, ...alone } = part;
    return [
      [part.name, { ...alone, support: support.mark }],
      [support.mark, support],
    ];
  }
  return [[part.name, part]];
}

/** JSON with its keys in order, numbers as JavaScript writes them, without what is only told. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  // A pipe and its covering are named by their sizes, in the units of print.
  const isNamedBySize = 'wall' in value || 'thickness' in value;
  const entries = Object.entries(value).flatMap(([key, each]: [string, unknown]) => {
    if (each === undefined || TOLD.has(key) || (isNamedBySize && key === 'name')) return [];
    return [`${JSON.stringify(key)}:${key === 'origin' ? boundOf(each) : canonical(each)}`];
  });
  return `{${entries.sort().join(',')}}`;
}

/** Of how a value came to be, how far it may be off counts; whether it was given or taken from a table does not. */
function boundOf(origin: unknown): string {
  const isBound = typeof origin === 'object' && origin !== null && 'within' in origin;
  return canonical(isBound ? (origin.within ?? null) : null);
}
