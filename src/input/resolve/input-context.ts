/** What every step of resolving shares: where it is, how it reports, how it notes what it took. */
import type { Catalogued } from '../../catalog/index.js';
import { type Coded, coded, type DataArguments, type IssueCode, withMore } from '../../issues/issue.js';
import type { Citation } from '../../sources/index.js';
import { type Dimension, formatQuantity } from '../../units/index.js';
import type { Assumption, Sourced, UnitSystem, Vec3 } from '../installation.js';
import { nearMiss } from '../near-miss.js';
import { type Path, type PendingIssue, pathText, pendingIssueOf } from '../pending-issue.js';
import { fileSchema } from '../schema/file-schema.js';
import { stated } from '../schema-issues.js';

/** A value taken because the file gives none. */
interface Taken {
  readonly what: string;
  readonly value: string;
  readonly citation: Citation;
  readonly effect: string;
}

/** The data of a code where it needs some, and what of the path to point at. */
type ReportArguments<Code extends IssueCode> = [...data: DataArguments<Code>, at?: PendingIssue['at']];

export interface InputContext {
  readonly units: UnitSystem;
  /** Reports an issue of error grade; the value returned in its place is never used. */
  readonly report: <Code extends IssueCode>(code: Code, path: Path, ...stated: ReportArguments<Code>) => void;
  /** Reports something odd that does not stop the review. */
  readonly warn: <Code extends IssueCode>(code: Code, path: Path, ...data: DataArguments<Code>) => void;
  /** Notes a value taken. */
  readonly assume: (path: Path, taken: Taken) => void;
  /** Notes a value taken alike for several parts, as one assumption that names them. */
  readonly assumeAlike: (key: string, part: string, path: Path, taken: Taken) => void;
  /** A quantity as printed in the units of the review. */
  readonly print: (value: number, dimension: Dimension) => string;
}

/** A reading and what it gathered. */
export interface GatheredContext {
  readonly reading: InputContext;
  readonly pendingIssues: readonly PendingIssue[];
  readonly assumptions: () => readonly Assumption[];
}

/**
 * A new reading with nothing gathered.
 *
 * @param units - units of the review [-]
 * @returns the reading, and lists that fill as it is used [-]
 */
export function startContext(units: UnitSystem): GatheredContext {
  const pendingIssues: PendingIssue[] = [];
  const assumptions: Assumption[] = [];
  const alike = new Map<string, { readonly at: number; readonly parts: string[] }>();
  const add = (severity: 'error' | 'warning', issue: Coded, path: Path, at: PendingIssue['at']): void => {
    const { code } = issue;
    const pending = pendingIssueOf(withMore(issue, stated(fileSchema(), path)), path, at, severity);
    // Both lines may stumble over one fault of the piping they share.
    if (!pendingIssues.some((other) => other.code === code && pathText(other.path) === pathText(path)))
      pendingIssues.push(pending);
  };
  const reading: InputContext = {
    units,
    report: (code, path, ...stated) => {
      const [data = {}, at = 'value'] = stated as unknown as readonly [
        data?: object,
        at?: PendingIssue['at'],
      ];
      add('error', coded(code, data as never), path, at);
    },
    warn: (code, path, ...stated) => {
      const [data = {}] = stated as readonly [data?: object];
      add('warning', coded(code, data as never), path, 'value');
    },
    assume: (path, taken) => {
      if (!assumptions.some((other) => other.path === pathText(path)))
        assumptions.push({ path: pathText(path), ...taken });
    },
    assumeAlike: (key, part, path, taken) => {
      const known = alike.get(key);
      if (known) known.parts.push(part);
      else alike.set(key, { at: assumptions.push({ path: pathText(path), ...taken }) - 1, parts: [part] });
    },
    print: (value, dimension) =>
      formatQuantity(value, dimension, units, { significant: dimension === 'temperature' ? 3 : 4 }),
  };
  const named = (): readonly Assumption[] => {
    const partsAt = new Map([...alike.values()].map(({ at, parts }) => [at, parts]));
    return assumptions.map((assumption, index) => {
      const parts = partsAt.get(index);
      return parts ? { ...assumption, what: `${assumption.what}: ${parts.join(', ')}` } : assumption;
    });
  };
  return { reading, pendingIssues, assumptions: named };
}

/** A value the file gives, with how it is known and how far it may be off where the file says so. */
export function given(
  value: number,
  path: Path,
  how: {
    readonly known?: 'weighed' | 'maker' | 'handbook' | 'estimated' | undefined;
    readonly within?: number | undefined;
  } = {},
): Sourced {
  const { known, within } = how;
  return {
    value,
    origin: {
      kind: 'given',
      path: pathText(path),
      ...(known !== undefined && { known }),
      ...(within !== undefined && { within }),
    },
  };
}

/** A value the file gives from a document it names. */
export function givenBy(value: number, path: Path, document: string): Sourced {
  return { value, origin: { kind: 'given', path: pathText(path), document } };
}

/** A value of the catalogue. */
export function catalogued(found: Catalogued): Sourced {
  const { value, table, row, citation, how } = found;
  return {
    value,
    origin: { kind: 'catalogue', table, row: how === undefined ? row : `${row} (${how})`, citation },
  };
}

/** A value taken; the assumption itself is noted with `assume`. */
export function assumed(value: number, path: Path): Sourced {
  return { value, origin: { kind: 'assumed', path: pathText(path) } };
}

/** A value worked out from others. */
export function computed(value: number, how: string, citation: Citation): Sourced {
  return { value, origin: { kind: 'computed', how, citation } };
}

/** Stands where an issue was reported; an installation with issues is never handed out. */
export const placeholder: Sourced = { value: Number.NaN, origin: { kind: 'assumed', path: '' } };

/** The near miss among words, as data of an issue. */
export function nearest(found: string, words: readonly string[]) {
  const near = nearMiss(found, words);
  return { found, words, ...(near !== undefined && { nearest: near }) };
}

/** A custom of the trade. */
export function practice(clause: string): Citation {
  return { source: 'common-practice', clause, confidence: 'common practice' };
}

interface Offset {
  readonly east?: number | undefined;
  readonly north?: number | undefined;
  readonly up?: number | undefined;
}

/** An offset of the file as a vector; what is not given is nothing. */
export function offsetVector(offset: Offset): Vec3 {
  return [offset.east ?? 0, offset.north ?? 0, offset.up ?? 0];
}
