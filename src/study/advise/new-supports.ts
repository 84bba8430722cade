/** Supports that are not there yet: hangers, stands and guides; and guides that are taken away. */

import { findRod, findSpan } from '../../catalog/index.js';
import type { ElbowPart, Part } from '../../input/installation.js';
import { isSupportPart } from '../../model/support-parts.js';
import type { Change } from './change.js';
import type { Plain } from './edit.js';
import { putOn, valueIn } from './stretch-edits.js';
import { isUpright, pointOn, type Stretch, stepPath } from './stretches.js';
import { isFree, supportsOf, type Workshop } from './support-changes.js';

/** Shortest stretch that is worth a support [m]. */
const WORTH_A_SUPPORT = 0.5;
/** Distance between places that are tried, in steps of the file. */
const PLACES = 8;
/** Shares of a stretch at which a guide is tried. */
const GUIDE_PLACES = [0.25, 0.5, 0.75];
/** Share of a direction from which a pipe counts as upright or level [-]. */
const UPRIGHT = 0.9;
const LEVEL = 0.1;

/**
 * Hangers that could be added: on level pipe one rod, on a riser a clamp with two.
 *
 * @param workshop - situation, stretches and room
 * @returns changes in walking order
 */
export function hangerChanges(workshop: Workshop): readonly Change[] {
  const { situation, stretches, room, units } = workshop;
  const mark = nextMark(workshop, 'hanger', 'H');
  return stretches.flatMap((stretch, number) => {
    const upright = isUpright(stretch);
    const rod = rodFor(workshop, stretch);
    return placesOn(stretch, units.step).flatMap((x): readonly Change[] => {
      const over = room.hang({ at: pointOn(stretch, x), radius: stretch.radius, upright });
      if (over === undefined) return [];
      const step: Plain = {
        hanger: {
          mark,
          ...(upright && { rods: 2 }),
          ...(rod !== undefined && { rod: `${rod} in` }),
          ...(over.length !== undefined && { length: units.length(over.length) }),
        },
      };
      return [
        {
          kind: 'add-hanger',
          target: `hanger ${number} ${Math.round(x * 1e4)}`,
          key: `add-hanger ${number} ${Math.round(x * 1e4)}`,
          edits: putOn(stretch, x, step, situation.content),
          size: 0,
          code: upright ? 'advise.add-hanger.riser' : 'advise.add-hanger',
          data: {
            mark,
            rod: rod === undefined ? '' : `${rod} in`,
            place: placeWords(workshop, stretch, x),
            length: over.length === undefined ? '' : units.print(over.length, 'length'),
          },
          cautions: ['advise.caution.structure', 'advise.caution.new-load'],
        },
      ];
    });
  });
}

/** Places clear of fittings and supports, near both ends and between. */
function placesOn(stretch: Stretch, step: number): readonly number[] {
  if (stretch.length < WORTH_A_SUPPORT) return [];
  const first = 2 * step;
  const count = Math.floor((stretch.length - first) / (PLACES * step));
  const places = Array.from({ length: count + 1 }, (_, index) => first + index * PLACES * step);
  const last = Math.floor((stretch.length - first) / step) * step;
  return [...new Set([...places, last])].filter((x) => isFree(stretch, x));
}

/** The larger of what the table wants and what hangs on the line already. */
function rodFor({ situation }: Workshop, stretch: Stretch): string | undefined {
  const { nps, material } = stretch.section;
  const wanted = nps === undefined ? undefined : findSpan({ nps, material })?.rod.size;
  const used = situation.layout.supports.flatMap(({ line, part }) =>
    line === stretch.line && part?.rods?.size !== undefined ? [part.rods.size.replace(/\s*in$/, '')] : [],
  );
  const size = (label: string) => findRod(label)?.diameter ?? 0;
  return [...(wanted === undefined ? [] : [wanted]), ...used].sort((a, b) => size(b) - size(a))[0];
}

/**
 * Stands that could be set up on the floor: under an elbow that turns up, and under level pipe near the floor.
 *
 * @param workshop - situation, stretches and room
 * @returns changes in walking order
 */
export function standChanges(workshop: Workshop): readonly Change[] {
  const { situation, stretches, room, units } = workshop;
  const mark = nextMark(workshop, 'stand', 'S');
  const step: Plain = { stand: { mark } };
  const change = (key: string, place: string) => ({
    kind: 'add-stand' as const,
    target: key,
    key: `add-stand ${key}`,
    size: 0,
    code: 'advise.add-stand' as const,
    data: { mark, place },
    cautions: ['advise.caution.floor', 'advise.caution.new-load'] as const,
  });
  const underElbows = situation.installation.lines
    .flatMap(({ walk }) => elbowsOf(walk))
    .flatMap((elbow): readonly Change[] => {
      const bend = situation.layout.bends.find(({ name }) => name === elbow.name);
      const isFoot = elbow.turn[2] > UPRIGHT && elbow.support === undefined;
      if (
        !isFoot ||
        bend === undefined ||
        !room.stand(bend.at, elbow.section.outsideDiameter / 2 + (elbow.covering?.thickness ?? 0))
      )
        return [];
      const path = [...stepPath(elbow.path), 'elbow'];
      const written = valueIn(situation.content, path);
      const value = typeof written === 'object' && written !== null ? written : { turn: written };
      return [
        {
          ...change(elbow.name, `under ${elbow.name}`),
          edits: [{ does: 'set', path, value: { ...(value as Record<string, Plain>), support: step } }],
        },
      ];
    });
  const underPipes = stretches.flatMap((stretch, number) =>
    Math.abs(stretch.along[2]) > LEVEL
      ? []
      : placesOn(stretch, units.step)
          .filter((x) => room.stand(pointOn(stretch, x), stretch.radius))
          .map(
            (x): Change => ({
              ...change(`stand ${number} ${Math.round(x * 1e4)}`, placeWords(workshop, stretch, x)),
              edits: putOn(stretch, x, step, situation.content),
            }),
          ),
  );
  return [...underElbows, ...underPipes];
}

function elbowsOf(parts: readonly Part[]): readonly ElbowPart[] {
  return parts.flatMap((part) =>
    part.kind === 'elbow' ? [part] : part.kind === 'tee' ? elbowsOf(part.side.walk) : [],
  );
}

/**
 * Guides that could be added, and those that could be taken away.
 *
 * @param workshop - situation and stretches
 * @returns changes in walking order
 */
export function guideChanges(workshop: Workshop): readonly Change[] {
  const { situation, stretches, units } = workshop;
  const mark = nextMark(workshop, 'guide', 'G');
  const added = stretches.flatMap((stretch, number) =>
    stretch.length < 4 * WORTH_A_SUPPORT
      ? []
      : GUIDE_PLACES.map((share) => Math.round((share * stretch.length) / units.step) * units.step)
          .filter((x) => isFree(stretch, x))
          .map(
            (x): Change => ({
              kind: 'add-guide',
              target: `guide ${number} ${Math.round(x * 1e4)}`,
              key: `add-guide ${number} ${Math.round(x * 1e4)}`,
              edits: putOn(stretch, x, { guide: { mark } }, situation.content),
              size: 0,
              code: 'advise.add-guide',
              data: { mark, place: placeWords(workshop, stretch, x) },
              cautions: ['advise.caution.fixing'],
            }),
          ),
  );
  const removed = supportsOf(situation)
    .filter(({ kind }) => kind === 'guide')
    .map(
      (part): Change => ({
        kind: 'remove-guide',
        target: part.mark,
        key: `remove-guide ${part.mark}`,
        edits: [{ does: 'remove', path: stepPath(part.path) }],
        size: 0,
        code: 'advise.remove-guide',
        data: { mark: part.mark },
        cautions: ['advise.caution.guide-for-others'],
      }),
    );
  return [...removed, ...added];
}

/** The next mark of a kind: the letters of those that are there, and the first number above theirs. */
export function nextMark({ situation }: Pick<Workshop, 'situation'>, kind: string, letters: string): string {
  const supports = supportsOf(situation);
  const alike = supports.filter((part) => part.kind === kind).map(({ mark }) => /^(\D*)(\d+)$/.exec(mark));
  const prefix = alike.find((match) => match !== null)?.[1] ?? letters;
  const marks = new Set(supports.map(({ mark }) => mark));
  const numbers = supports.flatMap(({ mark }) => {
    const match = /^(\D*)(\d+)$/.exec(mark);
    return match?.[1] === prefix ? [Number(match[2])] : [];
  });
  let number = Math.max(0, ...numbers) + 1;
  while (marks.has(`${prefix}${number}`)) number += 1;
  return `${prefix}${number}`;
}

/** Where on the pipe a place is, from what a fitter can measure from: a support or the nearer end of the stretch. */
export function placeWords({ units }: Pick<Workshop, 'units'>, stretch: Stretch, x: number): string {
  const near = stretch.items
    .filter(({ part }) => isSupportPart(part))
    .map(({ part, start }) => ({ name: isSupportPart(part) ? part.mark : '', away: x - start }))
    .sort((a, b) => Math.abs(a.away) - Math.abs(b.away))[0];
  if (near !== undefined) {
    const side = near.away > 0 ? 'beyond' : 'short of';
    return `on the ${stretch.line}, ${units.print(Math.abs(near.away), 'length')} ${side} ${near.name}`;
  }
  const isRiser = isUpright(stretch);
  const half = x <= stretch.length / 2;
  const away = units.print(half ? x : stretch.length - x, 'length');
  const from = half
    ? `${away} beyond the ${nameOf(stretch.before)}`
    : `${away} short of the ${nameOf(stretch.after)}`;
  return `on the ${isRiser ? 'upright ' : ''}pipe of the ${stretch.line}, ${from}`;
}

function nameOf(kind: Stretch['before']): string {
  return kind === 'end' ? 'end of the line' : kind.replace(/-/g, ' ');
}
