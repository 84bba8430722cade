import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import * as frameDoor from '../../src/frame.js';
import * as whole from '../../src/index.js';
import * as printDoor from '../../src/print.js';
import * as reviewDoor from '../../src/review.js';
import { sourceFiles, walk } from './source-tree.js';

const { exports: exportsOfPackage } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
) as { readonly exports: Readonly<Record<string, unknown>> };

/** What each door gives. Adding a name is a promise, taking one away breaks it. */
const names = {
  frame: ['EngineError', 'naturalFrequencies', 'solveFrame', 'wrenchOnBody'],
  review: [
    'EngineError',
    'IssuesError',
    'advise',
    'asInstalled',
    'asInstalledJsonSchema',
    'asInstalledResults',
    'asInstalledSummary',
    'buildFrame',
    'buildLayout',
    'compareRevisions',
    'earlierVisit',
    'fieldSheet',
    'installationJsonSchema',
    'overallVerdict',
    'printIssue',
    'readFieldSheet',
    'readInstallation',
    'readReadings',
    'readResults',
    'readingsJsonSchema',
    'resultsJsonSchema',
    'review',
    'reviewResults',
    'reviewSummary',
    'runChecks',
    'runTrial',
    'scheduleUnits',
    'startFile',
    'storedReadings',
    'studyBands',
    'supportSchedule',
    'version',
  ],
  print: [
    'EngineError',
    'IssuesError',
    'checkTemplates',
    'fixedTemplates',
    'readFirm',
    'readLogo',
    'renderAsInstalledPdf',
    'renderComparisonPdf',
    'renderFieldSheetPdf',
    'renderNextSheetPdf',
    'renderReviewHtml',
    'renderReviewPdf',
  ],
} as const;

test.each([
  ['frame', frameDoor],
  ['review', reviewDoor],
  ['print', printDoor],
] as const)('the door %s gives its values and no others', (name, door) => {
  expect(Object.keys(door).sort()).toEqual([...names[name]].sort());
});

test('the whole gives what the three doors give, once each, and no more', () => {
  expect(Object.keys(whole).sort()).toEqual([...new Set(Object.values(names).flat())].sort());
  for (const door of [frameDoor, reviewDoor, printDoor]) expect(whole).toMatchObject(door);
});

test('each door, templates and fonts can be asked for by name, with declarations', () => {
  const asked = Object.keys(exportsOfPackage).filter((name) => !name.endsWith('json') && !name.endsWith('*'));
  expect(asked.sort()).toEqual(['.', './fonts', './frame', './print', './review', './templates']);
  for (const name of asked) {
    const file = `./dist/${name === '.' ? 'index' : name.slice(2)}`;
    expect(exportsOfPackage[name]).toEqual({ types: `${file}.d.ts`, default: `${file}.js` });
  }
});

test.each(['index.ts', 'frame.ts', 'review.ts', 'print.ts'])(
  'every value in %s is written out; only types may come with a star',
  (file) => {
    const door = sourceFiles.find(({ name }) => name === file);
    const stars: string[] = [];
    expect(door).toBeDefined();
    if (door) {
      walk(door.tree, (node) => {
        if (ts.isExportDeclaration(node) && node.exportClause === undefined && !node.isTypeOnly)
          stars.push(node.getText());
      });
    }
    expect(stars).toEqual([]);
  },
);
