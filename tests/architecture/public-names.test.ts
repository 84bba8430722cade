import ts from 'typescript';
import { expect, test } from 'vitest';
import * as door from '../../src/index.js';
import { sourceFiles, walk } from './source-tree.js';

test('the door gives these values and no others: adding one is a promise, taking one away breaks it', () => {
  expect(Object.keys(door).sort()).toEqual([
    'EngineError',
    'IssuesError',
    'advise',
    'asInstalled',
    'asInstalledJsonSchema',
    'asInstalledResults',
    'asInstalledSummary',
    'buildFrame',
    'buildLayout',
    'checkTemplates',
    'compareRevisions',
    'earlierVisit',
    'fieldSheet',
    'fixedTemplates',
    'installationJsonSchema',
    'overallVerdict',
    'printIssue',
    'readFieldSheet',
    'readFirm',
    'readInstallation',
    'readLogo',
    'readReadings',
    'readResults',
    'readingsJsonSchema',
    'renderAsInstalledPdf',
    'renderComparisonPdf',
    'renderFieldSheetPdf',
    'renderNextSheetPdf',
    'renderReviewHtml',
    'renderReviewPdf',
    'resultsJsonSchema',
    'review',
    'reviewResults',
    'reviewSummary',
    'runChecks',
    'runTrial',
    'scheduleUnits',
    'solveFrame',
    'startFile',
    'storedReadings',
    'studyBands',
    'supportSchedule',
    'version',
  ]);
});

test('every value in the door is written out; only types may come with a star', () => {
  const index = sourceFiles.find(({ name }) => name === 'index.ts');
  const stars: string[] = [];
  if (index) {
    walk(index.tree, (node) => {
      if (ts.isExportDeclaration(node) && node.exportClause === undefined && !node.isTypeOnly)
        stars.push(node.getText());
    });
  }
  expect(stars).toEqual([]);
});
