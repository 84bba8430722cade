import { describe, expect, test } from 'vitest';
import { pumpModes } from '../../src/analysis/motion/pump-modes.js';
import { composeReview, type ReviewSubject } from '../../src/report/compose-review.js';
import type { SectionId, sections } from '../../src/report/outline.js';
import { resultsFile } from '../../src/report/results/results-file.js';
import { resultsShape } from '../../src/report/results/results-schema.js';
import { modeWords, shownModes } from '../../src/report/words/mode-words.js';
import { reviewed, reviewedOnDrive, reviewedStalled } from './fixture.js';

const plain = reviewed();
const onDrive = reviewedOnDrive();
const stalled = reviewedStalled();

function sectionOf<Id extends SectionId>(
  whole: ReviewSubject,
  id: Id,
  reader: 'engineer' | 'commissioning' = 'engineer',
) {
  const { view } = composeReview(whole, { reader, units: 'si', version: '0.0.0' });
  const slots = (view.sections as readonly Readonly<Record<string, unknown>>[]).find(
    (one) => one[id] !== false,
  );
  return slots?.[id] as ReturnType<(typeof sections)[Id]>;
}

describe('the section on frequencies', () => {
  test('lists at least ten, rising, and says what moves in each', () => {
    const rows = sectionOf(plain, 'frequencies').rows;
    expect(rows.length).toBeGreaterThanOrEqual(10);
    const values = rows.map(({ frequency }) => Number(frequency));
    expect(values).toEqual([...values].sort((a, b) => a - b));
    for (const { what } of rows) expect(what).toMatch(/moves|sways|twists/);
  });

  test('counts how far each lies from running speed', () => {
    const [first] = sectionOf(plain, 'frequencies').rows;
    const turns = plain.installation.pump.motor.speed / (2 * Math.PI);
    const lowest = plain.frequencies?.modes[0]?.frequency ?? Number.NaN;
    const printed = Number(first?.away[0]?.replace('\u2212', '-'));
    expect(printed).toBe(Math.round(100 * (lowest / turns - 1)));
  });

  test('gives the bands of a drive in whole turns a minute, apart from each other', () => {
    const bands = sectionOf(onDrive, 'frequencies').bands;
    expect(bands.length).toBeGreaterThan(0);
    const speed = (text: string) => Number(text.replace(/[^\d.]/g, ''));
    for (const { from, to } of bands) {
      expect(Number.isInteger(speed(from))).toBe(true);
      expect(speed(from)).toBeLessThan(speed(to));
    }
    bands.slice(1).forEach(({ from }, i) => {
      expect(speed(from)).toBeGreaterThan(speed(bands[i]?.to ?? ''));
    });
  });

  test('pictures one vibration of the pump and the lowest of the others', () => {
    for (const whole of [plain, onDrive]) {
      const shown = shownModes(whole);
      expect(shown).toHaveLength(2);
      expect(shown[0]?.counts).toBe(true);
      expect(new Set(shown.map(({ number }) => number)).size).toBe(2);
    }
  });

  test('what moves is told by direction', () => {
    const found = pumpModes(plain).find(({ counts }) => counts);
    if (found === undefined) throw new Error('no vibration of the pump');
    const swung = (east: number, north: number, up: number) => {
      const moved = { translation: [east, north, up] as const, rotation: [0, 0, 0] as const };
      const shape = Object.fromEntries(Object.keys(found.mode.shape).map((name) => [name, moved]));
      return modeWords({ ...found, mode: { ...found.mode, shape } }, plain);
    };
    expect(swung(1, 0, 0)).toContain('east and west');
    expect(swung(0.1, 1, 0)).toContain('north and south');
    expect(swung(0.8, 1, 0)).toContain('north-east and south-west');
    expect(swung(0.8, -1, 0)).toContain('north-west and south-east');
    expect(swung(0, 0, 1)).toContain('up and down');
  });
});

describe('the section on the start', () => {
  test('answers with the twist, the movement of the top and the change of the loads', () => {
    const view = sectionOf(plain, 'start-up');
    expect(view.hasStart).toBe(true);
    expect(view.method).toContain('across the line');
    for (const key of ['twist', 'dynamicTwist', 'stopTwist', 'top', 'force', 'moment'] as const) {
      expect(view[key], key).toMatch(/\d/);
    }
    expect(view.nozzles.length).toBe(4);
  });

  test('of a gentle start says that switching off does more', () => {
    const view = sectionOf(onDrive, 'start-up');
    expect(view.stopGoverns).toBe(true);
    expect(view.method).toContain('variable-speed drive');
    expect(view.isRange).toBe(false);
    expect(view.limit).toMatch(/2 mm/);
  });

  test('of a motor that never comes to speed says so and works nothing out', () => {
    const view = sectionOf(stalled, 'start-up');
    expect(view).toMatchObject({ hasStart: false, fails: true, hasRuns: false });
    expect(view.failure).toMatch(/^The motor does not bring the pump to its running speed/);
    expect(stalled.layout.frame.conditions.map(({ name }) => name)).not.toContain('starting');
  });

  test('is short for who commissions', () => {
    expect(sectionOf(plain, 'start-up', 'commissioning').full).toBe(false);
  });
});

test('the conditions of the start carry the twist about the shaft in both senses', () => {
  const start = plain.startUp;
  if (start?.kind !== 'worked out') throw new Error('no start');
  const moments = plain.layout.frame.conditions
    .filter(({ name }) => name.startsWith('starting'))
    .map(({ loads }) => loads[0]?.wrench.moment);
  expect(moments).toEqual([
    [0, 0, start.twist],
    [0, 0, -start.twist],
  ]);
});

test('both nozzles together hold the whole twist of the start, about the shaft', () => {
  const start = plain.startUp;
  if (start?.kind !== 'worked out') throw new Error('no start');
  const results = resultsFile(plain, plain.findings, { version: '1.2.3' });
  const { suction, discharge } = plain.layout.nozzles;
  const shaft = plain.installation.pump.position;
  const about = (condition: string): number => {
    const nozzles = results.conditions[condition]?.nozzles;
    if (nozzles === undefined) throw new Error(`no nozzles when ${condition}`);
    return [
      { load: nozzles.suction, at: suction.at },
      { load: nozzles.discharge, at: discharge.at },
    ].reduce((sum, { load, at }) => {
      const [east, north] = [at[0] - shaft[0], at[1] - shaft[1]];
      return sum + load.moment[2] + east * load.force[1] - north * load.force[0];
    }, 0);
  };
  expect((about('starting') - about('running')) / -start.twist).toBeCloseTo(1, 6);
});

test('the results file holds frequencies, the start, and why there is none', () => {
  for (const whole of [plain, onDrive, stalled]) {
    const results = resultsFile(whole, whole.findings, { version: '1.2.3' });
    expect(resultsShape().parse(JSON.parse(JSON.stringify(results)))).toEqual(results);
    expect(results.frequencies.length).toBeGreaterThanOrEqual(10);
    expect(results.startUp).toBeDefined();
  }
  expect(resultsFile(stalled, [], { version: '1.2.3' }).startUp).toEqual({
    reason: 'mechanics.never-reaches-speed',
  });
});
