import type { Assumption, Part } from '../../input/installation.js';
import type { ReportContext } from '../context.js';
import { originMark } from '../words/origin-mark.js';

/**
 * The walk of each line as the file gives it, part by part, side legs indented behind their tee.
 *
 * @param context - installation and writer
 * @returns one group per line
 */
export function walkRows(context: ReportContext) {
  return context.subject.installation.lines.map((line) => ({
    line: line.name,
    from: line.from,
    rows: onlyChanges(line.walk.flatMap((part) => partRows(part, context, 0))),
  }));
}

/** The pipe is named where it changes only. */
function onlyChanges(rows: readonly WalkRow[]): readonly WalkRow[] {
  return rows.map((row, index) => ({ ...row, startsPipe: row.pipe !== rows[index - 1]?.pipe }));
}

/**
 * The covering most of the parts have, so that it need be said only once.
 *
 * @param walks - groups of rows
 * @returns its name, or `none`
 */
export function usualCovering(walks: ReturnType<typeof walkRows>): string {
  const names = walks
    .flatMap(({ rows }) => rows.map(({ covering }) => covering))
    .filter((name) => name !== '–');
  const count = (name: string): number => names.filter((other) => other === name).length;
  return [...new Set(names)].reduce(
    (most, name) => (count(name) > count(most) ? name : most),
    names[0] ?? 'none',
  );
}

export interface WalkRow {
  readonly [key: string]: string | boolean;
  readonly name: string;
  readonly kind: string;
  readonly pipe: string;
  readonly size: string;
  readonly covering: string;
  readonly origin: string;
  readonly isSide: boolean;
  readonly startsPipe: boolean;
  readonly namesKind: boolean;
}

function partRows(part: Part, context: ReportContext, depth: number): readonly WalkRow[] {
  const kind = part.kind === 'fitting' ? part.fitting.replaceAll('-', ' ') : part.kind.replace('-', ' ');
  const row: WalkRow = {
    name: part.name,
    kind,
    namesKind: part.name.toLowerCase().includes(kind),
    startsPipe: false,
    pipe: part.section.name,
    size: sizeText(part, context),
    covering: isPoint(part) ? '–' : (part.covering?.name ?? 'none'),
    origin: partOrigin(part, context),
    isSide: depth > 0,
  };
  if (part.kind !== 'tee') return [row];
  return [row, ...part.side.walk.flatMap((side) => partRows(side, context, depth + 1))];
}

/** Supports, weights, fittings and ends take no length, and so no insulation. */
function isPoint(part: Part): boolean {
  return part.kind === 'end' || part.kind === 'weight' || part.kind === 'fitting' || 'mark' in part;
}

/** What tells this part from another of its kind: its length, radius, turn or class. */
function sizeText(part: Part, context: ReportContext): string {
  const { write } = context;
  const long = { feetInches: true } as const;
  switch (part.kind) {
    case 'straight':
      return write.quantity(part.length, 'length', long);
    case 'elbow':
      return `radius ${write.quantity(part.radius.value, 'length')}, to ${write.bearing(part.turn)}`;
    case 'reducer':
      return `to ${part.to.name}, ${part.shape}, ${write.quantity(part.length.value, 'length')}`;
    case 'tee':
      return `${part.make}, entered by the ${part.enterBy}, to ${write.bearing(part.turn)}, side to ${write.bearing(part.side.direction)}`;
    case 'flange':
      return `${part.standard} class ${part.class}, ${part.type}, ${part.face}`;
    case 'valve':
      return `${part.valve}, ${write.quantity(part.length.value, 'length')}, ${write.quantity(part.mass.value, 'mass')}`;
    case 'suction-diffuser':
      return `${write.quantity(part.pumpLeg.value, 'length')} and ${write.quantity(part.pipeLeg.value, 'length')}, to ${write.bearing(part.turn)}, ${write.quantity(part.mass.value, 'mass')}`;
    case 'flexible-connector':
      return `${part.connector}, ${write.quantity(part.length, 'length')}, control rods ${part.rods}`;
    case 'grooved-joint':
      return part.type;
    case 'weight':
      return write.quantity(part.mass.value, 'mass');
    case 'fitting':
      return part.size === undefined ? 'size not given' : `NPS ${part.size}`;
    case 'end':
      return part.end;
    case 'hanger':
    case 'spring-hanger':
    case 'rest':
    case 'guide':
    case 'stop':
    case 'anchor':
    case 'stand':
      return part.rods?.length === undefined
        ? '–'
        : `rod ${write.quantity(part.rods.length, 'length', long)}`;
  }
}

function partOrigin(part: Part, context: ReportContext): string {
  const origin = (() => {
    switch (part.kind) {
      case 'elbow':
        return part.radius.origin;
      case 'reducer':
      case 'tee':
      case 'flange':
      case 'valve':
      case 'suction-diffuser':
      case 'flexible-connector':
      case 'grooved-joint':
      case 'weight':
        return part.mass.origin;
      default:
        return undefined;
    }
  })();
  const mark = origin === undefined ? 'given' : originMark(origin, context.assumptions);
  const others = context.assumptions
    .filter(({ assumption }) => speaksOf(assumption, part))
    .map((ranked) => ranked.mark)
    .filter((other) => !mark.includes(other));
  return [mark, ...others].join(', ');
}

/** Whether an assumption is about a part: it stands inside it, or names it among several alike. */
function speaksOf(assumption: Assumption, part: Part): boolean {
  const named = assumption.what.split(': ')[1]?.split(', ') ?? [];
  return assumption.path.startsWith(`${part.path}.`) || named.includes(part.name);
}
