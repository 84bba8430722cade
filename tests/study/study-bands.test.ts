import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Review, review, solveInstallation } from '../../src/app/review.js';
import type { Installation } from '../../src/input/installation.js';
import { standingFrame } from '../../src/mechanics/frame/standing-frame.js';
import { STANDARD_GRAVITY } from '../../src/model/conventions.js';
import type { Bands, FindingBand } from '../../src/study/bands/bands.js';
import { keyOf, runTrial, type TrialBase, trialBase } from '../../src/study/bands/evaluate.js';
import type { RunTrials } from '../../src/study/bands/run-trials.js';
import { studyBands } from '../../src/study/bands/study-bands.js';
import { uncertaintiesOf } from '../../src/study/bands/uncertainties.js';
import { STANDARD_OF_RECTANGLE } from '../../src/study/bands/uncertainty.js';
import { fileText, installationOf } from '../input/sample-text.js';
import { end, installation, straight } from '../model/fixture.js';

const sample = (name: string) => review(installationOf(fileText(`../../samples/${name}.yaml`)));

const tried = (base: TrialBase, amounts: readonly number[]): Float64Array => {
  const trial = runTrial(base, amounts);
  if (!trial.ok) throw new Error(trial.code);
  return trial.values;
};
const alone = (base: TrialBase, id: string, amount: number): readonly number[] =>
  base.uncertainties.map((uncertainty) => (uncertainty.id === id ? amount : 0));
const placeOf = (base: TrialBase, key: string): number =>
  base.figures.findIndex((figure) => keyOf(figure) === key);

describe('a pump half-way between two anchors, by hand', () => {
  const LENGTH = 4;
  const line = (name: string) => [straight(`straight ${name}`, LENGTH), end(`end ${name}`)];
  const plain: Installation = installation(line('1'), line('2'));
  const subject = solveInstallation(plain);
  const { base, values } = trialBase(subject, uncertaintiesOf(plain));
  const { pump } = plain;
  const metal = plain.lines[0]?.section.massPerLength.value ?? Number.NaN;

  test('each anchor carries half of what a doubt adds', () => {
    const anchors = base.figures.flatMap((figure, index) =>
      figure.of === 'support' && figure.condition === 'empty' ? [index] : [],
    );
    expect(anchors).toHaveLength(2);
    const added = {
      'mass of casing': pump.casing.mass.value,
      'mass of motor': pump.motor.mass.value,
      'mass of pipe': metal * 2 * LENGTH,
    };
    for (const [id, mass] of Object.entries(added)) {
      const half = base.uncertainties.find((uncertainty) => uncertainty.id === id)?.half ?? Number.NaN;
      for (const anchor of anchors) {
        const rise = (tried(base, alone(base, id, 1))[anchor] ?? 0) - (values[anchor] ?? 0);
        expect(rise, id).toBeCloseTo((mass * half * STANDARD_GRAVITY) / 2, 6);
      }
    }
  });

  test('the band adds the squares up', async () => {
    const { supports, uncertainties } = await studyBands({ ...subject, findings: [] }, { samples: 0 });
    const found = supports.find(({ condition }) => condition === 'empty');
    const index = base.figures.findIndex(({ of }, at) => of === 'support' && values[at] === found?.value);
    const squares = uncertainties
      .filter(({ moves }) => moves !== 'alternative')
      .map(({ id, varied, half, taken = 0 }) => {
        // Weights by hand; a centre of gravity off the axis by solving.
        const byHand = varied.kind === 'mass' ? (taken * half * STANDARD_GRAVITY) / 2 : undefined;
        const length = id === 'mass of pipe' ? 2 * LENGTH : 1;
        const solved =
          ((tried(base, alone(base, id, 1))[index] ?? 0) - (tried(base, alone(base, id, -1))[index] ?? 0)) /
          2;
        return ((byHand === undefined ? solved : byHand * length) * STANDARD_OF_RECTANGLE) ** 2;
      });
    expect(found?.standard).toBeCloseTo(Math.sqrt(squares.reduce((sum, square) => sum + square, 0)), 6);
  });
});

describe('the pool sample', () => {
  const whole = sample('pool-hot-water');
  const { base, values } = trialBase(whole, uncertaintiesOf(whole.installation));

  test('nothing changed is the review itself', () => {
    expect(tried(base, [])).toEqual(values);
  });

  test('a heavier motor does what a load on its seat does', () => {
    const filled = whole.layout.frame.conditions.find(({ name }) => name === 'filled');
    if (filled === undefined) throw new Error('no filled condition');
    const half = base.uncertainties.find(({ id }) => id === 'mass of motor')?.half ?? Number.NaN;
    const weight = whole.installation.pump.motor.mass.value * half * STANDARD_GRAVITY;
    const { response } = standingFrame(whole.layout.frame, filled).disturb({
      loads: [{ point: 'motor seat', wrench: { force: [0, 0, -weight], moment: [0, 0, 0] } }],
    });
    for (const [mark, { load }] of Object.entries(response.supports)) {
      const index = placeOf(base, `support|${mark}|filled`);
      const rise =
        ((tried(base, alone(base, 'mass of motor', 1))[index] ?? 0) -
          (tried(base, alone(base, 'mass of motor', -1))[index] ?? 0)) /
        2;
      // Rods hold sideways by the load they then have, which the unit load does not know.
      expect(Math.abs(rise + load.force[2]), mark).toBeLessThan(2e-3 * weight);
    }
  });

  test('differences over a hundredth of the width tell the same as those over all of it', () => {
    const step = 0.01;
    const checked = base.figures.flatMap((figure, index) => (figure.of === 'support' ? [index] : []));
    for (const { id } of base.uncertainties.filter(({ varied }) => varied.kind === 'mass')) {
      const [high, low] = [tried(base, alone(base, id, step)), tried(base, alone(base, id, -step))];
      const [far, near] = [tried(base, alone(base, id, 1)), tried(base, alone(base, id, -1))];
      const slope = (index: number) => ((high[index] ?? 0) - (low[index] ?? 0)) / (2 * step);
      const chord = (index: number) => ((far[index] ?? 0) - (near[index] ?? 0)) / 2;
      const largest = Math.max(...checked.map((index) => Math.abs(chord(index))));
      for (const index of checked)
        expect(Math.abs(slope(index) - chord(index)), id).toBeLessThan(0.01 * largest);
    }
  });

  test('the band is what sampling by brute force finds, by another generator', async () => {
    const { findings } = await studyBands(whole, { samples: 0 });
    const random = mersenne(20);
    const found = findings.slice(0, 8).map(({ check, at }) => placeOf(base, `ratio|${check}|${at}`));
    const samples = Array.from({ length: 250 }, () =>
      tried(
        base,
        base.uncertainties.map(({ moves }) => (moves === 'alternative' ? 0 : 2 * uniformFloat64(random) - 1)),
      ),
    );
    found.forEach((index, place) => {
      const all = samples.map((one) => one[index] ?? Number.NaN);
      const mean = all.reduce((sum, value) => sum + value, 0) / all.length;
      const standard = Math.sqrt(all.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (all.length - 1));
      const band = findings[place] as FindingBand;
      // A standard deviation of 250 samples is itself known to about 5 %; three of those.
      expect(standard / band.standard, `${band.check} ${band.at}`).toBeGreaterThan(0.82);
      expect(standard / band.standard, `${band.check} ${band.at}`).toBeLessThan(1.25);
    });
  });
});

describe('the library sample', () => {
  let whole: Review;
  let bands: Bands;
  beforeAll(async () => {
    whole = sample('library-chilled-water');
    bands = await studyBands(whole, { samples: 40 });
  });

  test('its suction nozzle exceeds unless the motor is lighter, and solving again bears the value out', () => {
    const nozzle = bands.findings.find(
      ({ check, at }) => check === 'nozzle-loads' && at === 'suction nozzle',
    );
    expect(nozzle?.statement).toBe('exceeds unless');
    const turn = nozzle?.turns.find(({ uncertainty }) => uncertainty.id === 'mass of motor');
    expect(turn?.meets).toBe('below');
    const { base } = trialBase(whole, bands.uncertainties);
    const at = (kilograms: number) => {
      const { half = 1, taken = 1 } = turn?.uncertainty ?? {};
      return tried(base, alone(base, 'mass of motor', (kilograms / taken - 1) / half))[
        placeOf(base, 'ratio|nozzle-loads|suction nozzle')
      ];
    };
    const limit = turn?.value ?? Number.NaN;
    expect(at(limit)).toBeCloseTo(1, 4);
    for (const share of [0.9, 0.95, 0.99]) expect(at(share * limit)).toBeLessThan(1);
    for (const share of [1.01, 1.05, 1.1]) expect(at(share * limit)).toBeGreaterThan(1);
  });

  test('what it says of all weights heavier is what solving with them gives', () => {
    const { base } = trialBase(whole, bands.uncertainties);
    const heavier = tried(
      base,
      bands.uncertainties.map(({ varied, half }) => (varied.kind === 'mass' ? bands.heavier / half : 0)),
    );
    for (const { check, at, heavier: said } of bands.findings) {
      expect(heavier[placeOf(base, `ratio|${check}|${at}`)], `${check} ${at}`).toBe(said);
    }
  });

  test('what to find out names the motor first, which turns a verdict, then what is missing', () => {
    const kinds = bands.missingData.map(({ kind }) => kind);
    expect(kinds.indexOf('missing')).toBeGreaterThan(0);
    expect(kinds.lastIndexOf('rough')).toBeGreaterThan(kinds.lastIndexOf('missing'));
    const [first] = bands.missingData;
    expect(first).toMatchObject({ uncertainty: { id: 'mass of motor' }, turns: [{ check: 'nozzle-loads' }] });
  });

  test('the same file gives the same bands, whoever runs the trials', async () => {
    const backwards: RunTrials = async (base, rows) =>
      [...rows]
        .reverse()
        .map((row) => runTrial(base, row))
        .reverse();
    expect(await studyBands(whole, { samples: 40, runTrials: backwards })).toEqual(bands);
    const other = { ...whole, installation: { ...whole.installation, fingerprint: 'ab'.repeat(32) } };
    expect((await studyBands(other, { samples: 2 })).sampled?.seed).not.toBe(bands.sampled?.seed);
  });

  test('samples and band agree on the first verdicts', () => {
    for (const { check, at, standard } of bands.sampled?.findings.slice(0, 4) ?? []) {
      const band = bands.findings.find((one) => one.check === check && one.at === at);
      expect(standard / (band?.standard ?? Number.NaN), `${check} ${at}`).toBeGreaterThan(0.7);
      expect(standard / (band?.standard ?? Number.NaN), `${check} ${at}`).toBeLessThan(1.3);
    }
  });
});

test('where nothing can be worked out at a limit the other limit stands for both, and the failure is counted', async () => {
  const whole = sample('pool-hot-water');
  const failing: RunTrials = async (base, rows) =>
    rows.map((row, index) =>
      row.includes(-1) || (rows.length === 3 && index === 0)
        ? { ok: false, code: 'mechanics.mechanism' }
        : runTrial(base, row),
    );
  const plain = await studyBands(whole, { samples: 0 });
  const bands = await studyBands(whole, { samples: 3, runTrials: failing });
  expect(bands.sampled?.failed).toBe(1);
  const rod = (of: Bands) => of.findings.find(({ check, at }) => check === 'rod-load' && at === 'H3');
  expect(rod(bands)?.sensitivities.every(({ low }) => low === undefined)).toBe(true);
  expect((rod(bands)?.standard ?? 0) / (rod(plain)?.standard ?? Number.NaN)).toBeCloseTo(1, 1);
});
