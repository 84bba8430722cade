import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import ts from 'typescript';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { type CheckId, allChecks as checks, isOf, ruleOf } from '../../src/checks/all-checks.js';
import { type CheckDefinition, defineCheck } from '../../src/checks/define-check.js';
import type { RuleFacts } from '../../src/checks/rule-facts.js';
import { PRACTICE_RULES } from '../../src/input/schema/owner-rules.js';
import { sources } from '../../src/sources/index.js';
import { projectRoot, sourceFiles, walk } from './source-tree.js';

/** Files that make a check; the others in the folder are what checks are made with. */
const checkFiles = sourceFiles.filter(
  ({ folder, text }) => folder === 'checks' && /= defineCheck[<(]/.test(text),
);

test('there are checks', () => {
  expect(checkFiles.length).toBeGreaterThan(5);
});

test('every file of a check is in the registry under its name', () => {
  const ids = new Set<string>(checks.map((check) => check.id));
  expect(checkFiles.map(({ name }) => basename(name, '.ts')).filter((id) => !ids.has(id))).toEqual([]);
});

test('no two checks have one id, and none has no file', () => {
  const ids = checks.map((check) => check.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(checkFiles).toHaveLength(ids.length);
});

test('every check has a test file', () => {
  const without = checks.filter(({ id }) => !existsSync(join(projectRoot, `tests/checks/${id}.test.ts`)));
  expect(without.map(({ id }) => id)).toEqual([]);
});

test('every check has a title and rests on known publications, with a clause or as a whole', () => {
  const unfounded = checks.filter(
    ({ basis, title }) =>
      basis.length === 0 || basis.some(({ source }) => !(source in sources)) || !/^[A-Z]/.test(title),
  );
  expect(unfounded.map(({ id }) => id)).toEqual([]);
});

describe('facts stand at the check', () => {
  test('the compiler asks for every one of them', () => {
    expectTypeOf<CheckDefinition<'trial', string>>().toExtend<RuleFacts>();
    const whole: RuleFacts = {
      trade: 'Pipe fitter',
      section: 'practice',
      dependsOn: ['parts'],
      cost: 'quick',
      standing: 'decides',
      blocks: 'acceptance',
      consequence: 'practice',
    };
    const { trade: _trade, ...withoutTrade } = whole;
    const rest = {
      id: 'trial',
      title: 'Trial',
      unit: 'm',
      basis: [{ source: 'statics', clause: '', confidence: 'computed' }],
      exceeds: 'checks.rod-load.exceeds',
      noPlace: 'checks.rod-load.no-place',
      places: () => ['here'],
      at: (place: string) => place,
      demands: () => [],
    } as const;
    const made = defineCheck({ ...rest, ...whole });
    expectTypeOf(made.id).toEqualTypeOf<'trial'>();
    // @ts-expect-error a check that does not say who acts on it is no check
    defineCheck({ ...rest, ...withoutTrade });
    // @ts-expect-error a section that is not in the review
    defineCheck({ ...rest, ...whole, section: 'nowhere' });
    // @ts-expect-error something that depends on nothing cannot be turned by anything
    defineCheck({ ...rest, ...whole, dependsOn: [] });
    expect(made).toMatchObject(whole);
  });

  test('an id that is not in the registry does not compile, and finds nothing', () => {
    expectTypeOf<CheckId>().not.toEqualTypeOf<string>();
    // @ts-expect-error no check has this id
    const none: CheckId = 'no-such-check';
    // @ts-expect-error no check has this id
    expect(isOf({ check: 'rod-load' }, 'rod-loads')).toBe(false);
    expect(ruleOf({ check: none })).toBeUndefined();
    expect(isOf({ check: 'rod-load' }, 'hand-lift', 'rod-load')).toBe(true);
    expect(ruleOf({ check: 'rod-load' })?.id).toBe('rod-load');
  });

  test('what only compares keeps nothing waiting, and what decides does', () => {
    expect(
      checks.filter(({ standing, blocks }) => (blocks === 'nothing') !== (standing === 'compares')),
    ).toEqual([]);
  });

  test('every rule of practice, and no other, may be made a limit by a document of the owner', () => {
    const practice = checks.filter(({ standing }) => standing === 'practice').map(({ id }) => id);
    expect([...PRACTICE_RULES].sort()).toEqual([...practice].sort());
  });

  test('what a check depends on is named once', () => {
    expect(checks.filter(({ dependsOn }) => new Set(dependsOn).size < dependsOn.length)).toEqual([]);
  });

  const ids: ReadonlySet<string> = new Set(checks.map(({ id }) => id));

  test('nothing outside a check compares its id as a bare string, or keeps a list of ids', () => {
    const places: string[] = [];
    for (const { folder, name, tree } of sourceFiles) {
      if (!['study', 'report', 'as-found', 'as-installed', 'sheet', 'app', 'drawing'].includes(folder))
        continue;
      walk(tree, (node) => {
        if (!ts.isStringLiteral(node) || !ids.has(node.text)) return;
        const { parent } = node;
        const isList = ts.isArrayLiteralExpression(parent) && parent.elements.every(isIdOfCheck);
        const isCompared = ts.isBinaryExpression(parent) && /\bcheck\b/.test(parent.left.getText());
        if (isList || isCompared) places.push(`${name}: ${parent.getText()}`);
      });
    }
    expect(places).toEqual([]);
  });

  function isIdOfCheck(node: ts.Node): boolean {
    return ts.isStringLiteral(node) && ids.has(node.text);
  }
});
