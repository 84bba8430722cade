import ts from 'typescript';
import { expect, test } from 'vitest';
import { type SourceFile, sourceFiles } from './source-tree.js';

interface Row {
  /** Folders it may import. A folder may always import itself. */
  readonly folders: readonly string[];
  /** Folders it may import types of, and nothing else. */
  readonly types?: readonly string[];
  /** Packages it may use; `node` stands for the modules of Node. */
  readonly packages?: readonly string[];
}

/** What stands left of the checks. */
const BELOW_CHECKS = [
  'units',
  'sources',
  'issues',
  'catalog',
  'input',
  'geometry',
  'model',
  'algebra',
  'mechanics',
  'analysis',
  'judging',
];

/** The house: who may know whom. `door` are the files directly in src, the public door. */
const mayImport: Readonly<Record<string, Row>> = {
  units: { folders: [], packages: ['mathjs'] },
  sources: { folders: [] },
  issues: { folders: [] },
  catalog: { folders: ['units', 'sources'] },
  input: {
    folders: ['units', 'issues', 'catalog', 'sources'],
    packages: ['zod', 'yaml', '@noble/hashes', 'fastest-levenshtein'],
  },
  geometry: { folders: ['issues'] },
  model: { folders: ['catalog', 'geometry', 'issues', 'sources'], types: ['input'] },
  algebra: { folders: ['issues'] },
  mechanics: { folders: ['model', 'algebra', 'issues', 'sources'] },
  judging: { folders: ['sources', 'issues'] },
  analysis: {
    folders: ['geometry', 'model', 'mechanics', 'catalog', 'sources', 'issues'],
    types: ['input'],
  },
  checks: {
    folders: ['geometry', 'model', 'mechanics', 'analysis', 'judging', 'catalog', 'sources', 'issues'],
    types: ['input'],
  },
  study: {
    folders: [...BELOW_CHECKS, 'checks'],
    packages: ['pure-rand', 'yaml'],
  },
  drawing: {
    folders: ['geometry', 'model', 'mechanics', 'analysis', 'judging', 'checks', 'units'],
    types: ['input'],
  },
  compare: { folders: ['input', 'judging', 'model'] },
  report: {
    folders: [...BELOW_CHECKS, 'checks', 'study', 'compare', 'drawing'],
    // Shape, types and published schema of the results file are one definition.
    packages: ['zod'],
  },
  render: {
    folders: ['issues'],
    types: ['report', 'drawing', 'input', 'sources', 'judging'],
    packages: ['handlebars', 'saxes', 'pdf-lib', 'fastest-levenshtein'],
  },
  starter: { folders: ['units', 'issues', 'catalog', 'input', 'model', 'mechanics', 'analysis'] },
  sheet: { folders: [...BELOW_CHECKS, 'checks', 'drawing', 'report'] },
  readings: {
    folders: [...BELOW_CHECKS, 'checks', 'drawing', 'report', 'sheet'],
    // Shapes, types and published schemas of readings are one definition each.
    packages: ['yaml', 'csv-parse', 'zod'],
  },
  forms: { folders: ['units', 'issues', 'report', 'render', 'sheet', 'readings'], packages: ['fflate'] },
  'as-found': { folders: [...BELOW_CHECKS, 'checks', 'report', 'sheet', 'readings'] },
  'as-installed': {
    folders: [...BELOW_CHECKS, 'checks', 'drawing', 'report', 'sheet', 'readings', 'as-found'],
    packages: ['yaml', 'zod'],
  },
  app: {
    folders: [
      ...BELOW_CHECKS,
      'checks',
      'study',
      'compare',
      'drawing',
      'report',
      'starter',
      'render',
      'sheet',
      'readings',
      'forms',
      'as-found',
      'as-installed',
    ],
  },
  door: {
    folders: [
      ...BELOW_CHECKS,
      'checks',
      'study',
      'compare',
      'drawing',
      'report',
      'starter',
      'render',
      'sheet',
      'readings',
      'forms',
      'as-found',
      'as-installed',
      'app',
    ],
  },
  cli: {
    // The parser of arguments offers the questions of a new file as options, and may not load the door for them.
    folders: ['door', 'app', 'issues', 'starter'],
    packages: [
      'node',
      'commander',
      'picocolors',
      '@clack/prompts',
      'chokidar',
      'csv-stringify',
      'diff',
      'tinyglobby',
      'write-excel-file',
    ],
  },
};

test('every file imports only what its folder may', () => {
  expect(sourceFiles.flatMap(importsNotAllowed)).toEqual([]);
});

test('an import that its folder may not make would be seen', () => {
  const imports = [
    { specifier: '../units/format.js', file: 'units/format.ts', typeOnly: false },
    { specifier: '../input/installation.js', file: 'input/installation.ts', typeOnly: false },
    { specifier: '../input/installation.js', file: 'input/installation.ts', typeOnly: true },
    { specifier: 'zod', package: 'zod', typeOnly: false },
  ];
  expect(importsNotAllowed({ name: 'checks/x.ts', folder: 'checks', imports })).toEqual([
    'checks/x.ts imports ../units/format.js',
    'checks/x.ts imports ../input/installation.js',
    'checks/x.ts uses zod',
  ]);
  expect(importsNotAllowed({ name: 'attic/x.ts', folder: 'attic', imports: [] })).toEqual([
    'the folder of attic/x.ts has no row in the table',
  ]);
});

/** What a file imports though its folder has no right to it. */
function importsNotAllowed({
  name,
  folder,
  imports,
}: Pick<SourceFile, 'name' | 'folder' | 'imports'>): readonly string[] {
  const row = mayImport[folder];
  if (row === undefined) return [`the folder of ${name} has no row in the table`];
  return imports.flatMap(({ specifier, file, package: used, typeOnly }) => {
    if (file === undefined) return row.packages?.includes(used ?? '') ? [] : [`${name} uses ${specifier}`];
    const other = file.includes('/') ? (file.split('/')[0] ?? '') : 'door';
    if (other === folder || row.folders.includes(other)) return [];
    if (typeOnly && row.types?.includes(other)) return [];
    return [`${name} imports ${typeOnly ? 'types of ' : ''}${specifier}`];
  });
}

test('every import leads to a file', () => {
  const names = new Set(sourceFiles.map(({ name }) => name));
  const astray = sourceFiles.flatMap(({ name, imports }) =>
    imports
      .filter(({ file }) => file !== undefined && !names.has(file))
      .map(({ specifier }) => `${name}: ${specifier}`),
  );
  expect(astray).toEqual([]);
});

test('the table has no loop', () => {
  const graph = Object.entries(mayImport).map(
    ([folder, row]) => [folder, [...row.folders, ...(row.types ?? [])]] as const,
  );
  expect(firstLoop(new Map(graph))).toBeUndefined();
});

test('no files import each other in a circle, not even for types', () => {
  const graph = sourceFiles.map(
    ({ name, imports }) => [name, imports.flatMap(({ file }) => (file === undefined ? [] : [file]))] as const,
  );
  expect(firstLoop(new Map(graph))?.join(' → ')).toBeUndefined();
});

test('a circle would be seen', () => {
  const graph = new Map([
    ['a', ['b']],
    ['b', ['c']],
    ['c', ['b']],
  ]);
  expect(firstLoop(graph)).toEqual(['b', 'c', 'b']);
});

/** Rooms with a door: what stands outside comes in by `index.ts`. The other rooms are imported by file. */
const ROOMS_WITH_DOOR = ['units', 'sources', 'catalog', 'geometry'];

/** A side door: it brings a large package, which only those who ask for it should load. */
const SIDE_DOOR = 'units/mathjs.ts';

/** No door, but the list of all sentences. */
const SENTENCES = 'issues/sentences/index.ts';

test('a room has one door that is used, or none', () => {
  const doors = sourceFiles
    .filter(({ name }) => /\/index\.ts$/.test(name) && name !== SENTENCES)
    .map(({ name }) => name);
  expect(doors).toEqual(ROOMS_WITH_DOOR.map((room) => `${room}/index.ts`).sort());
  const around = sourceFiles.flatMap(({ name, folder, imports }) =>
    imports
      .filter(({ file }) => file !== undefined && goesAround(folder, file))
      .map(({ specifier }) => `${name}: ${specifier}`),
  );
  expect(around).toEqual([]);
});

/** A file of a room with a door, asked for from outside by its own name. */
function goesAround(from: string, file: string): boolean {
  const room = file.split('/')[0] ?? '';
  return room !== from && ROOMS_WITH_DOOR.includes(room) && ![`${room}/index.ts`, SIDE_DOOR].includes(file);
}

test('a way around a door would be seen', () => {
  expect(goesAround('checks', 'units/format.ts')).toBe(true);
  expect(goesAround('checks', 'units/index.ts')).toBe(false);
  expect(goesAround('units', 'units/format.ts')).toBe(false);
  expect(goesAround('checks', 'model/frame/frame.ts')).toBe(false);
});

/** A room of more files than this has inner rooms. */
const MOST_FILES = 36;

test('no folder holds more files than can be looked over', () => {
  const counts = new Map<string, number>();
  for (const { name } of sourceFiles) {
    const folder = name.includes('/') ? name.slice(0, name.lastIndexOf('/')) : '';
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  expect([...counts].filter(([, count]) => count > MOST_FILES)).toEqual([]);
});

const LONGEST_FILE = 250;

/** Tables of data may be as long as the publication they come from. */
const isTable = ({ folder }: SourceFile) => folder === 'catalog' || folder === 'sources';

/** A file that declares nothing but types is a glossary: it is looked up, not read through. */
const isGlossary = ({ tree }: SourceFile) =>
  tree.statements.every(
    (node) =>
      ts.isInterfaceDeclaration(node) ||
      ts.isTypeAliasDeclaration(node) ||
      (ts.isImportDeclaration(node) && node.importClause?.isTypeOnly),
  );

test('every file is short enough to read at one sitting', () => {
  const long = sourceFiles
    .filter((file) => !isTable(file) && !isGlossary(file))
    .map(({ name, text }) => ({ name, lines: text.split('\n').length - 1 }))
    .filter(({ lines }) => lines > LONGEST_FILE);
  expect(long).toEqual([]);
});

/** Names that say nothing of what is inside. */
const EMPTY_NAMES = /(^|\/)(utils?|helpers?|common|types|misc|manager|data)\.ts$/;

test('every file has a name that says what it holds', () => {
  const names = sourceFiles.map(({ name }) => name);
  expect(names.filter((name) => EMPTY_NAMES.test(name))).toEqual([]);
  expect(names.filter((name) => !/^([a-z0-9-]+\/)*[a-z0-9-]+\.ts$/.test(name))).toEqual([]);
});

function firstLoop(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const finished = new Set<string>();
  const visit = (node: string, path: readonly string[]): readonly string[] | undefined => {
    if (path.includes(node)) return [...path.slice(path.indexOf(node)), node];
    if (finished.has(node)) return undefined;
    for (const next of graph.get(node) ?? []) {
      const loop = visit(next, [...path, node]);
      if (loop !== undefined) return loop;
    }
    finished.add(node);
    return undefined;
  };
  for (const node of graph.keys()) {
    const loop = visit(node, []);
    if (loop !== undefined) return loop;
  }
  return undefined;
}

test.each(sourceFiles.filter(({ imports }) => imports.some(({ package: used }) => used === 'zod')))(
  '$name takes the schema library as a namespace, of which a bundle keeps what is used',
  ({ text }) => {
    expect(text).toMatch(/^import (?:type )?\* as z from 'zod';$/m);
  },
);
