import { expect, test } from 'vitest';
import type { Origin } from '../../src/input/installation.js';
import { sources } from '../../src/sources/index.js';
import { reviewed, reviewedInstallation } from './fixture.js';
import { sectionView } from './section-view.js';

interface Scope {
  readonly codes: readonly { readonly title: string; readonly decides: string; readonly clauses: string }[];
  readonly hasSideways: boolean;
  readonly coefficient: string;
}

const scopeOf = (whole: ReturnType<typeof reviewed>): Scope =>
  sectionView(whole, 'scope-and-codes') as unknown as Scope;

test('every standard that decides a verdict is named with what it decides, and no other', () => {
  const whole = reviewed();
  const deciding = whole.findings.filter(
    ({ comparison, verdict, basis }) =>
      !comparison && verdict !== 'does-not-apply' && sources[basis.source].kind === 'standard',
  );
  const { codes } = scopeOf(whole);
  expect(codes.length).toBeGreaterThan(2);
  expect(codes.map(({ title }) => title).sort()).toEqual(
    [...new Set(deciding.map(({ basis }) => sources[basis.source].title))].sort(),
  );
  for (const { title, basis } of deciding) {
    const row = codes.find((one) => one.title === sources[basis.source].title);
    expect(row?.decides).toContain(title);
    expect(row?.clauses).toContain(basis.confidence);
  }
});

test('an earthquake is told of as worked out only where a coefficient is given', () => {
  expect(scopeOf(reviewed()).hasSideways).toBe(false);
  const origin: Origin = { kind: 'given', path: 'limits.lateral.coefficient', document: 'drawing S-2' };
  const { limits } = reviewedInstallation();
  const given = reviewed({ limits: { ...limits, lateral: { coefficient: { value: 0.3, origin } } } });
  expect(scopeOf(given)).toMatchObject({ hasSideways: true, coefficient: '0.3' });
});
