import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { installationJsonSchema } from '../../src/input/json-schema.js';
import { changed, everyPart, fileText, shortest } from './sample-text.js';

const schema = installationJsonSchema();
const ajv = new Ajv2020({ allErrors: true, strict: false, formats: { date: /^\d{4}-\d\d-\d\d$/ } });
const validate = ajv.compile(schema);
const faults = (text: string): readonly string[] => {
  validate(parse(text));
  return (validate.errors ?? []).map(({ instancePath, keyword }) => `${instancePath} ${keyword}`);
};

const samples = readdirSync(fileURLToPath(new URL('../../samples', import.meta.url))).filter((name) =>
  name.endsWith('.yaml'),
);

test.each(samples)('the schema accepts the sample %s', (name) => {
  expect(faults(fileText(`../../samples/${name}`))).toEqual([]);
});

test('the schema accepts every part and the shortest file', () => {
  expect(faults(everyPart)).toEqual([]);
  expect(faults(shortest)).toEqual([]);
});

test('the schema says what it is, for which draft', () => {
  expect(schema).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Pipeborne installation, format 1',
    additionalProperties: false,
  });
});

test.each([
  ['an unknown key', ['contents: 6 gal', 'contants: 6 gal'], '/pump/casing additionalProperties'],
  ['a word that is not known', ['mount: hung', 'mount: hanging'], '/pump/mount enum'],
  ['a bare number where a unit matters', ['weight: 500 lb', 'weight: 500'], '/pump/casing/weight anyOf'],
  ['a quantity that starts with no number', ['weight: 500 lb', 'weight: heavy'], '/pump/casing/weight anyOf'],
  ['a direction that is none', ['facing: south', 'facing: left'], '/pump/suction/facing pattern'],
  [
    'two kinds in one step',
    ['- straight: 2 ft', '- {straight: 2 ft, elbow: up}'],
    '/piping/lines/0/walk/1 maxProperties',
  ],
  ['a size without its unit', ['size: 6 in', 'size: "6"'], '/pump/suction/size pattern'],
  [
    'a way of starting that is none',
    ['speed: 1770 rpm', 'speed: 1770 rpm, start: star-delta'],
    '/pump/motor/start enum',
  ],
  [
    'a ramp without its unit',
    ['speed: 1770 rpm', 'speed: 1770 rpm, start: {variable-speed drive: {torque-limit: 110 %, ramp: 20}}'],
    '/pump/motor/start/variable-speed drive/ramp anyOf',
  ],
  [
    'a drive without its limit of torque',
    ['speed: 1770 rpm', 'speed: 1770 rpm, start: {variable-speed drive: {ramp: 20 s}}'],
    '/pump/motor/start/variable-speed drive required',
  ],
  [
    'rods that are neither rigid nor not',
    ['mark: H1,', 'mark: H1, rigid-rods: maybe,'],
    '/piping/lines/0/walk/4/hanger/rigid-rods enum',
  ],
  [
    'a movement in a direction without a name',
    ['mark: H1,', 'mark: H1, out-of-place: {south: 1 in},'],
    '/piping/lines/0/walk/4/hanger/out-of-place additionalProperties',
  ],
  [
    'an anchor that moves in time',
    ['end: anchored', 'end: {anchored: {hot-movement: {up: 1 in}, day-movement: {up: 1 in}}}'],
    '/piping/lines/0/walk/5/end/anchored additionalProperties',
  ],
  [
    'an edition whose formula is another',
    [
      'piping:',
      'limits: {lateral: {asce-7: {edition: 22, sds: 0.5, importance: 1, height-ratio: 0.4, ap: 2.5, rp: 6}}}\npiping:',
    ],
    '/limits/lateral/asce-7/edition enum',
  ],
  [
    'a margin without its source',
    ['piping:', 'limits: {frequency-margin: {share: 25 %}}\npiping:'],
    '/limits/frequency-margin required',
  ],
] as const)('the schema refuses %s', (_what, change, fault) => {
  expect(faults(changed(shortest, change))).toContain(fault);
});

test('every field is described and has an example that the schema itself accepts', () => {
  const fields = fieldsOf(schema);
  expect(fields.length).toBeGreaterThan(200);
  for (const { path, field } of fields) {
    expect(field, path).toHaveProperty('description');
    expect(field, path).toHaveProperty('examples');
  }
});

interface Field {
  readonly path: string;
  readonly field: Readonly<Record<string, unknown>>;
}

/** Everything that stands behind a key, wherever in the schema. */
function fieldsOf(node: unknown, path = ''): readonly Field[] {
  if (typeof node !== 'object' || node === null) return [];
  const properties =
    'properties' in node && typeof node.properties === 'object' ? Object.entries(node.properties ?? {}) : [];
  const own = properties.flatMap(([key, field]): readonly Field[] =>
    '$ref' in field ? [] : [{ path: `${path}.${key}`, field }],
  );
  return [...own, ...Object.entries(node).flatMap(([key, value]) => fieldsOf(value, `${path}/${key}`))];
}

test('simple examples are what they exemplify', () => {
  for (const { path, field } of fieldsOf(schema)) {
    const [example] = field.examples as readonly unknown[];
    if (typeof example === 'object' || example === undefined) continue;
    expect(
      new Ajv2020({ strict: false, formats: { date: true } }).validate(
        { ...field, $defs: schema.$defs },
        example,
      ),
      `${path}: ${example}`,
    ).toBe(true);
  }
});
