/**
 * From answers to a new file: lay out, solve once with plain hangers, choose rods and springs for what hangs on them,
 * and write. The file is read back before it is handed out.
 */

import { supportLoadIn } from '../analysis/supports/support-loads.js';
import { rodRating, rodSizes } from '../catalog/index.js';
import type { Installation } from '../input/installation.js';
import { type ReadInstallation, readInstallation } from '../input/read-installation.js';
import { type Issue, issueOf } from '../issues/issue.js';
import { solveFrame } from '../mechanics/frame/solve-frame.js';
import { inCondition } from '../model/conditions/condition-roles.js';
import { buildLayout } from '../model/layout/build-layout.js';
import type { UnitSystem } from '../units/index.js';
import { layLines } from './lines.js';
import { type NewAssumption, newFile } from './new-file.js';
import { kitOf, type NewSupport } from './parts.js';
import type { Sizing } from './piping-text.js';
import type { RawAnswers } from './questions.js';
import { readAnswers } from './read-answers.js';

/** What starting a file gave. */
export type StartedFile =
  | {
      readonly ok: true;
      readonly text: string;
      readonly assumptions: readonly NewAssumption[];
      readonly installation: Installation;
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Starts a file.
 *
 * @param raw - answers as typed [-]
 * @param today - day printed on the review where none is given, `2026-09-14` [-]
 * @returns text and what was assumed, or everything that is missing or does not fit [-]
 */
export function startFile(raw: RawAnswers, today: string): StartedFile {
  const read = readAnswers(raw, today);
  if (!read.ok) return read;
  const kit = kitOf(read.answers);
  const { lines, supports, issues } = layLines(kit);
  if (issues.length > 0) return { ok: false, issues };
  const first = readInstallation(newFile(kit, lines, new Map()).text);
  if (!first.ok) return withoutPlaces(first);
  const { units } = read.answers;
  const loads = loadsOf(first.installation);
  const sizing = new Map(supports.map((support) => [support.mark, sizingOf(support, loads, units)] as const));
  const { text, assumptions } = newFile(kit, lines, sizing);
  const second = readInstallation(text);
  if (!second.ok) return withoutPlaces(second);
  return { ok: true, text, assumptions, installation: second.installation };
}

/** Lines and columns of a file that nobody has seen would only confuse. */
function withoutPlaces({ issues }: Extract<ReadInstallation, { ok: false }>): StartedFile {
  return { ok: false, issues: issues.map((issue) => issueOf(issue.severity, issue)) };
}

/** Load with the line filled, and the largest of all conditions, by mark [N]. */
type Loads = ReadonlyMap<string, { readonly filled: number; readonly largest: number }>;

function loadsOf(installation: Installation): Loads {
  const layout = buildLayout(installation);
  const { conditions } = solveFrame(layout.frame);
  return new Map(
    layout.supports.map(({ mark }) => {
      const all = Object.values(conditions).map(
        (condition) => supportLoadIn(condition, mark)?.resultant ?? 0,
      );
      const filled = supportLoadIn(inCondition(conditions, 'filled'), mark)?.downward ?? 0;
      return [mark, { filled, largest: Math.max(0, ...all) }];
    }),
  );
}

const POUND = 4.4482216152605;
const INCH = 0.0254;
/** Loads are written to this step [N]. */
const STEP = { us: 10 * POUND, si: 50 } as const;
/** A rod is chosen for so much more than hangs on it: the file will still change [-]. */
const MARGIN = 1.15;
/** How far a spring gives under its load [m]. */
const GIVES = INCH / 2;
/** Working range of a spring over its load [-]. */
const RANGE = [0.5, 1.5] as const;

function sizingOf({ mark, kind, rods }: NewSupport, loads: Loads, units: UnitSystem): Sizing {
  const { filled = 0, largest = 0 } = loads.get(mark) ?? {};
  const steps = Math.max(1, Math.round(filled / STEP[units]));
  const carried = steps * STEP[units];
  // A spring may come to the end of its working range.
  const most = kind === 'spring-hanger' ? Math.max(largest, carried * RANGE[1]) : largest;
  const force = (newtons: number): string =>
    units === 'us' ? `${Math.round(newtons / POUND)} lb` : `${Math.round(newtons / 10) / 100} kN`;
  const rate =
    units === 'us'
      ? `${Math.round(carried / POUND / (GIVES / INCH))} lb/in`
      : `${Math.round(carried / GIVES / 1000)} N/mm`;
  return {
    rod: rodFor((MARGIN * most) / rods),
    load: force(carried),
    rate,
    minimum: force(carried * RANGE[0]),
    maximum: force(carried * RANGE[1]),
  };
}

/** Smallest rod that is usual on pipe of these sizes and carries the load by the older, lower ratings. */
function rodFor(load: number): string {
  const sizes = rodSizes('older');
  const enough = sizes
    .slice(sizes.indexOf(SMALLEST_ROD))
    .find((size) => (rodRating({ size, edition: 'older' })?.value ?? 0) >= load);
  return enough ?? sizes[sizes.length - 1] ?? SMALLEST_ROD;
}

const SMALLEST_ROD = '3/8';
