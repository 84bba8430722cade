import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compareInputs } from '../../src/compare/compare-inputs.js';
import { compareResults } from '../../src/compare/compare-results.js';
import { NOISE, type ValueChange } from '../../src/compare/comparison.js';
import { type ResultsFile, readInstallation, review, reviewResults } from '../../src/index.js';
import { readContent } from '../../src/input/written-value.js';
import { readResults } from '../../src/report/results/read-results.js';

const pool = readFileSync(new URL('../../samples/pool-hot-water.yaml', import.meta.url), 'utf8');
const made = new Map<string, ResultsFile>();

function resultsOf(text: string): ResultsFile {
  const known = made.get(text);
  if (known) return known;
  const reading = readInstallation(text);
  if (!reading.ok) throw new Error(reading.issues.map(({ code }) => code).join());
  const results = reviewResults(review(reading.installation));
  made.set(text, results);
  return results;
}

function edited(...edits: readonly (readonly [string, string])[]): string {
  return edits.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the sample has no ${from}`);
    return text.replace(from, to);
  }, pool);
}

const movedH2 = edited(
  [
    '        - straight: 14 ft\n        - hanger: {mark: H2',
    '        - straight: 11 ft\n        - hanger: {mark: H2',
  ],
  ['        - straight: 5 ft\n        - end', '        - straight: 8 ft\n        - end'],
);
const nothing = { values: [], findings: [], assumptions: [] };

test('results do not differ from themselves', () => {
  expect(compareResults(resultsOf(pool), resultsOf(pool))).toMatchObject({ ...nothing, sameInput: true });
});

test('another way of writing changes no result', () => {
  const other = edited(['weight: 465 lb', 'weight: 210.920452 kg']);
  expect(compareResults(resultsOf(pool), resultsOf(other))).toMatchObject({ ...nothing, sameInput: false });
});

describe('a hanger that was moved', () => {
  const [before, after] = [resultsOf(pool), resultsOf(movedH2)];
  const compared = compareResults(before, after);
  const find = (change: (typeof compared.values)[number], results: ResultsFile): number => {
    const condition = results.conditions[change.condition ?? ''];
    if (change.of === 'support') return -(condition?.supports[change.at]?.force[2] ?? Number.NaN);
    const wrench = condition?.nozzles?.[change.at as 'suction' | 'discharge'];
    return Math.hypot(...(wrench?.[change.what as 'force' | 'moment'] ?? [Number.NaN]));
  };

  test('changes values to what the results say, and by no less than noise', () => {
    const loads = compared.values.filter(({ of }) => of === 'support' || of === 'nozzle');
    expect(loads.length).toBeGreaterThan(5);
    for (const change of loads) {
      const [one, other] = [find(change, before), find(change, after)];
      expect(change).toMatchObject({ before: one, after: other });
      expect(Math.abs(other - one)).toBeGreaterThan(
        NOISE.ofItself * Math.max(Math.abs(one), Math.abs(other)),
      );
    }
  });

  test('leaves out no load that moved by a hundredth of the largest load or more', () => {
    const said = new Set(compared.values.map(({ at, what, condition }) => `${at} ${what} ${condition}`));
    const largest = Math.max(
      ...Object.values(after.conditions).flatMap(({ supports }) =>
        Object.values(supports).map(({ force }) => Math.abs(force[2])),
      ),
    );
    const missed: string[] = [];
    for (const [name, { supports }] of Object.entries(after.conditions))
      for (const [mark, { force }] of Object.entries(supports)) {
        const old = before.conditions[name]?.supports[mark]?.force[2] ?? 0;
        if (Math.abs(force[2] - old) < 0.01 * largest) continue;
        if (!said.has(`${mark} load down ${name}`)) missed.push(`${mark} ${name}`);
      }
    expect(missed).toEqual([]);
  });

  test('is compared the other way round with the same numbers on the other side', () => {
    const back = compareResults(after, before);
    const line = ({ at, what, condition = '' }: ValueChange, one?: number, other?: number) =>
      `${at} ${what} ${condition} ${one} ${other}`;
    expect(back.values.map((change) => line(change, change.after, change.before)).sort()).toEqual(
      compared.values.map((change) => line(change, change.before, change.after)).sort(),
    );
    expect(
      back.findings
        .map(({ kind }) => ({ new: 'gone', gone: 'new', flipped: 'flipped', moved: 'moved' })[kind])
        .sort(),
    ).toEqual(compared.findings.map(({ kind }) => kind).sort());
  });
});

test('a hanger that was only renamed moves no load and loses no finding', () => {
  const renamed = edited(['mark: H4', 'mark: H8']);
  const inputs = compareInputs(readContent(pool), readContent(renamed));
  expect(compareResults(resultsOf(pool), resultsOf(renamed), inputs.renamed)).toMatchObject(nothing);
  expect(compareResults(resultsOf(pool), resultsOf(renamed)).values.length).toBeGreaterThan(0);
});

test('verdicts that flip are told with both sides, and the verdict of the whole', () => {
  const tight = edited(['suction: {resultant-force: 1400 lb', 'suction: {resultant-force: 14 lb']);
  const { findings, verdict, values } = compareResults(resultsOf(pool), resultsOf(tight));
  expect(verdict).toEqual({ before: 'meets', after: 'exceeds' });
  expect(values).toEqual([]);
  const flipped = findings.filter(({ kind }) => kind === 'flipped');
  expect(flipped.map(({ check }) => check)).toContain('nozzle-loads');
  for (const { before, after } of flipped)
    expect([before?.verdict, after?.verdict]).toEqual(['meets', 'exceeds']);
});

test('an assumption that comes, goes or changes is told by its path', () => {
  const given = edited(['first-support: {pump: 8 ft}', 'first-support: {pump: 8 ft, bend: 14 in}']);
  const { assumptions } = compareResults(resultsOf(given), resultsOf(pool));
  expect(assumptions).toHaveLength(1);
  expect(assumptions[0]).toMatchObject({ kind: 'new', path: 'limits.first-support.bend' });
  expect(compareResults(resultsOf(pool), resultsOf(given)).assumptions[0]).toMatchObject({ kind: 'gone' });
});

describe('a results file', () => {
  const text = JSON.stringify(resultsOf(pool));
  const codes = (content: string) => {
    const reading = readResults(content, { file: 'pump.json' });
    return reading.ok
      ? []
      : reading.issues.map(({ code, place }) => `${code.replace('report.results-', '')} ${place?.path}`);
  };

  test('is read back as it was written', () => {
    expect(readResults(text, { file: 'pump.json' })).toEqual({ ok: true, results: JSON.parse(text) });
  });

  test.each([
    ['cut off', text.slice(0, 5000), ['not-json ']],
    ['of another version', text.replace('pipeborne-results/1', 'pipeborne-results/9'), ['format format']],
    ['of another kind', '{"format": "something/1"}', ['format format']],
    ['that is a list', '[]', ['format format']],
    ['that is null', 'null', ['format format']],
    ['with a number that is none', text.replace(/"verdict":"meets"/, '"verdict":7'), ['shape verdict']],
    ['with what no review writes', text.replace('{"format"', '{"surprise":1,"format"'), ['shape ']],
    ['nested without end', '['.repeat(200_000), ['not-json ']],
  ])('%s is refused', (_, content, wanted) => {
    expect(codes(content)).toEqual(wanted);
  });

  test('of hostile size is refused before it is parsed', () => {
    expect(codes(`{"a":"${'x'.repeat(16_000_001)}"}`)).toEqual(['too-large ']);
  });
});
