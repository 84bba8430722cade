import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { type Review, review } from '../../../src/app/review.js';
import type { Installation } from '../../../src/input/installation.js';
import { readInstallation } from '../../../src/input/read-installation.js';
import { latinHypercube } from '../../../src/study/bands/latin-hypercube.js';
import { atBounds } from '../../../src/study/bounds/at-bounds.js';
import { sweptLockOut } from '../../../src/study/bounds/frequency-outcomes.js';
import { loadTrials } from '../../../src/study/bounds/load-trials.js';
import { ranges } from '../../../src/study/bounds/ranges.js';
import { unstatedOf } from '../../../src/study/bounds/unstated.js';

const sample = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../../samples/${name}.yaml`, import.meta.url)), 'utf8');
const read = (text: string): Installation => {
  const found = readInstallation(text);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.installation;
};
/** A sample as it was before anybody stated what its supports stand on. */
const unsaid = (text: string): string =>
  text.replace(/assumed:\n( {2}.*\n)+/, '').replace(/ {4}bracket: \{[^}]*\}\n/, '');
const pool = sample('pool-hot-water');
const dairy = sample('dairy-condenser-water');
const findingOf = ({ findings }: Review, check: string, at?: string) =>
  findings.find((one) => one.check === check && (at === undefined || one.at === at));

describe('what nobody stated', () => {
  test('is listed once each, with where to say it', () => {
    const things = unstatedOf(read(unsaid(pool)));
    expect(things.map(({ id }) => id)).toEqual([
      'motor bracket',
      'structure at H1',
      'structure at H2',
      'structure at H3',
      'structure at H4',
      'anchor at end 1',
      'anchor at end 2',
    ]);
    expect(things.find(({ id }) => id === 'structure at H3')?.path).toMatch(
      /walk\[\d+\]\.hanger\.structure$/,
    );
    for (const { citation, say } of things) {
      expect(citation.clause).not.toBe('');
      expect(say).not.toBe('');
    }
  });

  test('is nothing where everything is stated, also as an assumption of somebody', () => {
    expect(unstatedOf(read(pool))).toEqual([]);
    const alike = `assumed: {by: R. Okafor, structure: rigid, anchors: {translation: rigid, rotation: rigid}}\nroom:`;
    const things = unstatedOf(read(unsaid(pool).replace('room:', alike)));
    expect(things.map(({ id }) => id)).toEqual(['motor bracket']);
  });

  test('is varied where it stands and nowhere else', () => {
    const installation = read(unsaid(dairy));
    const things = unstatedOf(installation);
    expect(atBounds(installation, things, new Map())).toBe(installation);
    for (const { id } of things) {
      const varied = atBounds(installation, things, new Map([[id, 1]]));
      expect(JSON.stringify(varied), id).not.toBe(JSON.stringify(installation));
      const left = unstatedOf(varied).map((one) => one.id);
      // A grip is still of its type; everything else counts as stated then.
      if (!id.startsWith('grip')) expect(left, id).not.toContain(id);
    }
    const half = atBounds(installation, things, new Map([['friction at pump base', 0.5]]));
    expect(half.pump.base?.friction).toBeCloseTo(ranges.friction.end / 2, 12);
  });
});

describe('a verdict', () => {
  const bare = review(read(unsaid(pool)));
  const whole = review(read(pool));

  test('that turns within what nobody stated cannot be told, and names the datum', () => {
    expect(bare.verdict).toBe('cannot-tell');
    const open = review(read(unsaid(dairy)));
    const joint = findingOf(open, 'flange-equivalent-pressure', 'pump suction to flange 1');
    expect(joint?.verdict).toBe('cannot-tell');
    expect(joint?.turnedBy?.[0]).toBe('stiffness of the structure at pump base');
    expect(joint?.reason?.code).toBe('checks.bounds-disagree');
    expect(joint?.reason?.data).toMatchObject({ path: 'pump.base.structure' });
    expect((joint?.high ?? 0) / (joint?.limit ?? 1)).toBeGreaterThan(1);
    expect((joint?.low ?? 0) / (joint?.limit ?? 1)).toBeLessThan(1);
  });

  test('on frequencies that only a test can settle is a kind of its own', () => {
    const shaken = findingOf(bare, 'frequency-margin', 'running speed');
    expect(shaken?.verdict).toBe('cannot-tell');
    expect(shaken?.siteTest).toBe('knock test');
    expect(shaken?.turnedBy).toContain('stiffness of the bracket between casing and motor');
    expect(findingOf(whole, 'frequency-margin', 'running speed')).toMatchObject({ verdict: 'meets' });
    expect(findingOf(whole, 'frequency-margin', 'running speed')?.siteTest).toBeUndefined();
  });

  test('is given where everything is stated: the pool meets', () => {
    expect(whole.verdict).toBe('meets');
    expect(whole.bounds.trials).toBe(0);
    expect(whole.findings.filter(({ turnedBy }) => turnedBy !== undefined)).toEqual([]);
  });

  test('that holds at every bound keeps its stated numbers and adds the least and the largest', () => {
    const loads = findingOf(bare, 'nozzle-loads', 'suction nozzle');
    expect(loads?.verdict).toBe('meets');
    expect(loads?.ratio).toBeCloseTo((loads?.demand ?? 0) / (loads?.limit ?? 1), 12);
    expect(loads?.low).toBeLessThanOrEqual(loads?.demand ?? 0);
    expect(loads?.high).toBeGreaterThanOrEqual(loads?.demand ?? 0);
  });

  test('is confirmed by samples of everything at once: none exceeds that was said to meet', () => {
    const installation = read(unsaid(pool));
    const things = unstatedOf(installation).filter(({ movesLoads }) => movesLoads);
    const told = new Map(bare.findings.map((one) => [`${one.check} ${one.at}`, one]));
    for (const row of latinHypercube(things.length, 12, 7)) {
      const amounts = new Map(things.map(({ id }, i) => [id, ((row[i] ?? 0) + 1) / 2]));
      const varied = atBounds(installation, things, amounts);
      const found = review({ ...varied, limits: { ...varied.limits } });
      for (const one of found.findings) {
        const said = told.get(`${one.check} ${one.at}`);
        if (said?.verdict !== 'meets' || one.check === 'frequency-margin') continue;
        expect(one.ratio ?? 0, `${one.check} ${one.at}`).toBeLessThanOrEqual(1 + 1e-9);
      }
    }
  });
});

describe('friction of the dairy', () => {
  const withFriction = (mu: number): Review =>
    review(read(dairy.replace('assumed:\n', `assumed:\n  friction: ${mu}\n`)));
  const joint = 'pump discharge to flange 2';
  const check = 'flange-equivalent-pressure';

  test('left unsaid turns the flange joints at the pump, and is asked for', () => {
    const found = findingOf(review(read(dairy)), check, joint);
    expect(found?.verdict).toBe('cannot-tell');
    expect(found?.turnedBy).toContain('friction under the pump base');
    expect(found?.reason?.data).toMatchObject({ path: 'pump.base.friction' });
  });

  test('said, is no longer what turns them; the demand lies between those of the unsaid to a thousandth', () => {
    const open = findingOf(review(read(dairy)), check, joint);
    for (const mu of [0.2, 0.4]) {
      const found = findingOf(withFriction(mu), check, joint);
      expect(found?.turnedBy ?? []).not.toContain('friction under the pump base');
      expect(found?.demand ?? 0).toBeGreaterThanOrEqual((open?.low ?? 0) * (1 - 1e-3));
      expect(found?.demand ?? 0).toBeLessThanOrEqual((open?.high ?? 0) * (1 + 1e-3));
    }
  });
});

describe('trials', () => {
  test('of nothing are none', () => {
    const { bounds: _, findings, verdict: __, ...subject } = review(read(pool));
    expect(loadTrials(subject, findings, [])).toEqual({
      places: new Map(),
      supports: [],
      trials: 0,
      failed: 0,
    });
  });
});

describe('speeds to keep away from', () => {
  const mode = (frequency: number) => ({ frequency, share: 0.5, counts: true, motion: [1] });
  const sweep = {
    samples: [
      { bracket: 0, structure: 0, friction: 0, modes: [mode(20)] },
      { bracket: 1, structure: 0, friction: 0, modes: [mode(10)] },
    ],
    spans: [{ low: 10, high: 20, varied: ['bracket' as const] }],
    completeTo: 100,
    failed: 0,
    things: { structure: [], friction: [] },
  };

  test('are all that are passed between two samples: from f/(1+m) of the lowest to f/(1−m) of the highest', () => {
    const turn = 2 * Math.PI;
    const bands = sweptLockOut(sweep, {
      timesPerTurn: 1,
      margin: 0.1,
      speeds: { lowest: 0, highest: 100 * turn },
    });
    expect(bands).toHaveLength(1);
    expect((bands[0]?.from ?? 0) / turn).toBeCloseTo(10 / 1.1, 9);
    expect((bands[0]?.to ?? 0) / turn).toBeCloseTo(20 / 0.9, 9);
    const apart = sweptLockOut(
      { ...sweep, spans: [] },
      { timesPerTurn: 1, margin: 0.1, speeds: { lowest: 0, highest: 100 * turn } },
    );
    expect(apart).toHaveLength(2);
  });
});
