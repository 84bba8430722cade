/** What an input may hold, as text for a terminal: the published schema, read out. */
import { installationJsonSchema } from '../../index.js';
import { LINE_WIDTH } from '../environment.js';
import { wrapped } from '../terminal/text-columns.js';

interface Schema {
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly additionalProperties?: Schema | boolean;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

/** One entry of the reference. */
interface Entry {
  readonly key: string;
  /** Keys that lead to it, itself last. */
  readonly path: readonly string[];
  readonly needed: boolean;
  readonly schema: Schema;
}

/** Words that stand for several keys of a walk. */
const GROUPS: Readonly<Record<string, readonly string[]>> = {
  supports: ['hanger', 'spring-hanger', 'rest', 'guide', 'stop', 'stand', 'anchor'],
  parts: [
    'flange',
    'straight',
    'elbow',
    'valve',
    'reducer',
    'tee',
    'suction-diffuser',
    'flexible-connector',
    'grooved-joint',
    'weight',
  ],
  fittings: ['drain', 'vent', 'gauge-tap', 'start-up-screen'],
};

/**
 * The whole reference, or a part of it.
 *
 * @param part - a key such as `motor`, a path such as `pump.motor`, or one of `supports`, `parts`, `fittings`
 * @returns text that ends with a line feed; undefined where there is no such part
 */
export function inputReference(part?: string): string | undefined {
  const root = installationJsonSchema() as Schema;
  const top = entriesOf(root, [], root);
  if (part === undefined) {
    const intro = wrapped(INTRO, LINE_WIDTH);
    return textOf([...intro, '', ...top.flatMap((entry) => linesOf(entry, 0, root))]);
  }
  const every = top.flatMap((entry) => withInner(entry, root, 0));
  const wanted = GROUPS[part] ?? [part];
  const found = wanted.flatMap((name) => firstWithEach(every.filter((entry) => matches(entry, name))));
  return found.length === 0
    ? undefined
    : textOf(
        found
          .flatMap((entry) => [
            `in ${entry.path.slice(0, -1).join('.') || 'the file'}:`,
            ...linesOf(entry, 0, root),
            '',
          ])
          .slice(0, -1),
      );
}

/**
 * Names of parts, for a near miss.
 *
 * @returns keys and groups, each once
 */
export function referenceParts(): readonly string[] {
  const root = installationJsonSchema() as Schema;
  const every = entriesOf(root, [], root).flatMap((entry) => withInner(entry, root, 0));
  return [...new Set([...Object.keys(GROUPS), ...every.map(({ key }) => key)])];
}

const INTRO =
  'An input is YAML or JSON, one pump a file. Quantities are text with a unit: 12 ft 6 in, 3.8 m, 610 lb, 125 psi, ' +
  '44 degF, 850 gpm. Directions are words of the building plan: north, south, east, west, up, down. What is needed is ' +
  'marked so; everything else may be left out, and what is then taken is listed in the review. ' +
  '`pipeborne help input PART` prints one part: pump, motor, walk, supports, parts, fittings, room, limits.';

function textOf(lines: readonly string[]): string {
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

function matches({ path }: Entry, name: string): boolean {
  const wanted = name.split('.');
  return wanted.every((step, index) => path[path.length - wanted.length + index] === step);
}

/** Of entries that say the same, such as a hanger in a walk and under an elbow, the one that is nearest to the file. */
function firstWithEach(entries: readonly Entry[]): readonly Entry[] {
  const seen = new Set<string>();
  const nearest = [...entries].sort((a, b) => a.path.length - b.path.length);
  return nearest.filter(({ schema }) => {
    const text = schema.description ?? '';
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}

function withInner(entry: Entry, root: Schema, depth: number): readonly Entry[] {
  if (depth > DEEPEST) return [];
  return [
    entry,
    ...entriesOf(entry.schema, entry.path, root).flatMap((inner) => withInner(inner, root, depth + 1)),
  ];
}

/** A tee holds a walk, which may hold a tee. */
const DEEPEST = 8;

/** Layers of a schema: what it refers to, what it lists, and each of its options. */
function layers(schema: Schema, root: Schema): readonly Schema[] {
  if (schema.$ref !== undefined) {
    const target = root.$defs?.[schema.$ref.split('/').at(-1) ?? ''];
    return target === undefined ? [schema] : [schema, ...layers(target, root)];
  }
  const { anyOf = [], items, additionalProperties: byName } = schema;
  const below = [
    ...anyOf,
    ...(items === undefined ? [] : [items]),
    // A map whose keys the user chooses: what stands under each.
    ...(typeof byName === 'object' ? [byName] : []),
  ];
  return [schema, ...below.flatMap((each) => layers(each, root))];
}

function entriesOf(schema: Schema, path: readonly string[], root: Schema): readonly Entry[] {
  const once = path.filter((step) => step === 'walk').length < 2;
  if (!once) return [];
  return layers(schema, root).flatMap(({ properties = {}, required = [] }) =>
    Object.entries(properties).map(([key, inner]) => ({
      key,
      path: [...path, key],
      needed: required.includes(key),
      schema: inner,
    })),
  );
}

function linesOf(entry: Entry, depth: number, root: Schema): readonly string[] {
  const indent = '  '.repeat(depth);
  const inner = entriesOf(entry.schema, entry.path, root);
  const head = `${indent}${entry.key}${entry.needed ? ' (needed)' : ''}`;
  const said = saidOf(entry.schema, root, inner.length > 0);
  const text =
    said === '' ? [] : wrapped(said, LINE_WIDTH - indent.length - 6).map((line) => `${indent}      ${line}`);
  return [head, ...text, ...inner.flatMap((each) => linesOf(each, depth + 1, root))];
}

function saidOf(schema: Schema, root: Schema, isMap: boolean): string {
  const all = layers(schema, root);
  const about = all.find(({ description }) => description !== undefined)?.description ?? '';
  const own = isMap ? layersBeside(schema, root) : all;
  const words = own.flatMap((each) => [
    ...(each.enum ?? []),
    ...(each.const === undefined || each.const === 0 ? [] : [each.const]),
  ]);
  const [example] = all.find(({ examples }) => examples !== undefined)?.examples ?? [];
  return [
    about,
    ...(words.length === 0 ? [] : [`one of ${[...new Set(words.map(String))].join(', ')}`]),
    ...(isMap || example === undefined ? [] : [`for example ${flowText(example)}`]),
  ]
    .filter((part) => part !== '')
    .join('; ');
}

/** Words that may stand in place of a map, such as `none`. */
function layersBeside(schema: Schema, root: Schema): readonly Schema[] {
  return layers(schema, root).filter(
    ({ properties, items }) => properties === undefined && items === undefined,
  );
}

function flowText(example: unknown): string {
  if (Array.isArray(example)) return `[${example.map(flowText).join(', ')}]`;
  if (typeof example !== 'object' || example === null) return String(example);
  return `{${Object.entries(example)
    .map(([key, value]) => `${key}: ${flowText(value)}`)
    .join(', ')}}`;
}
