import { describe, expect, test } from 'vitest';
import type { Subject } from '../../src/analysis/subject.js';
import { type ComposedReview, composeReview } from '../../src/report/compose-review.js';
import type { Reader } from '../../src/report/context.js';
import type { SectionId } from '../../src/report/outline.js';
import { fitterResults } from '../../src/report/results/installation-results.js';
import { fitUpShape, pumpOutShape, settingShape } from '../../src/report/results/installation-schema.js';
import { bothText, bothUnits, faceSide, planWord, wayWord } from '../../src/report/words/flange-words.js';
import { createWriter } from '../../src/report/writer.js';
import { reviewed } from './fixture.js';

const whole = reviewed();
const composed = (reader: Reader, units: 'us' | 'si', review = whole) =>
  composeReview(review, { reader, units, version: '0.0.0' });
const viewOf = <View>(review: ComposedReview, id: SectionId): View => {
  const slots = review.view.sections as readonly Record<string, unknown>[];
  const found = slots.map((slot) => slot[id]).find((view) => view !== false);
  if (found === undefined) throw new Error(`no section ${id}`);
  return found as View;
};

interface Measure {
  readonly what: string;
  readonly mm: string;
  readonly inches: string;
}
interface PumpOutView {
  readonly flanges: readonly { readonly title: string; readonly rows: readonly Measure[] }[];
  readonly props: readonly { readonly place: string; readonly load: string; readonly falls: boolean }[];
  readonly first: string;
  readonly springs: readonly { readonly mark: string }[];
  readonly supports: readonly { readonly mark: string }[];
}

describe('the page of the pump taken out', () => {
  test('is the same in millimetres and inches whatever the units of the review', () => {
    const [us, si] = (['us', 'si'] as const).map((units) =>
      viewOf<PumpOutView>(composed('contractor', units), 'pump-out').flanges.map(({ rows }) =>
        rows.map(({ mm, inches }) => [mm, inches]),
      ),
    );
    expect(us).toEqual(si);
    expect(us).toHaveLength(2);
  });

  test('tells the same length twice', () => {
    for (const { rows } of viewOf<PumpOutView>(composed('contractor', 'us'), 'pump-out').flanges) {
      for (const { mm, inches } of rows) {
        expect(Math.abs(Number(mm) - 25.4 * Number(inches))).toBeLessThan(0.05 + 0.0005 * 25.4 + 1e-9);
      }
    }
  });

  test('says first what is to be blocked up first', () => {
    const view = viewOf<PumpOutView>(composed('engineer', 'us'), 'pump-out');
    expect(view.props).toHaveLength(2);
    expect(view.first).toBe(view.props[0]?.place);
    expect(view.springs.map(({ mark }) => mark)).toEqual(['V1']);
  });
});

describe('the fit-up card', () => {
  interface FitUpView {
    readonly step: string;
    readonly joints: readonly {
      readonly hasLimits: boolean;
      readonly rows: readonly { readonly used: string }[];
    }[];
  }

  test('is in the steps of the reader', () => {
    expect(viewOf<FitUpView>(composed('contractor', 'us'), 'fit-up').step).toBe('1/16 in');
    expect(viewOf<FitUpView>(composed('contractor', 'si'), 'fit-up').step).toBe('1 mm');
  });

  test('has a table for each nozzle with what uses up the allowance, in both units', () => {
    const { joints } = viewOf<FitUpView>(composed('contractor', 'us'), 'fit-up');
    expect(joints).toHaveLength(2);
    for (const { hasLimits, rows } of joints) {
      expect(hasLimits).toBe(true);
      expect(rows.length).toBeGreaterThanOrEqual(3);
    }
    expect(joints[0]?.rows[0]?.used).toMatch(/mm \(.* in\)$/);
  });
});

describe('the setting card', () => {
  interface SettingView {
    readonly springs: readonly { readonly mark: string; readonly dry: string; readonly filled: string }[];
    readonly rigid: readonly { readonly mark: string }[];
    readonly effects: readonly { readonly mark: string; readonly turn: string }[];
  }
  const view = viewOf<SettingView>(composed('contractor', 'si'), 'setting');

  test('has every spring with what it shows dry and filled', () => {
    expect(view.springs.map(({ mark }) => mark)).toEqual(['V1']);
    expect(view.springs[0]?.dry).not.toBe('–');
    expect(view.springs[0]?.filled).not.toBe('–');
  });

  test('has every support that is not a spring, and what raising each does', () => {
    expect(view.rigid.map(({ mark }) => mark)).toEqual(['H1', 'H2', 'H3', 'H4', 'S1', 'H5']);
    expect(view.effects.map(({ mark }) => mark)).toEqual(['H1', 'H2', 'H3', 'H4', 'V1', 'S1', 'H5']);
  });
});

describe('the table of slack hangers', () => {
  interface SlackView {
    readonly rows: readonly { readonly mark: string; readonly isWorst: boolean; readonly falls: boolean }[];
    readonly worst: string;
    readonly worstFalls: boolean;
  }

  test('names the worst, that of the largest ratio', () => {
    const view = viewOf<SlackView>(composed('engineer', 'us'), 'slack');
    const ratios = whole.findings.filter(({ check }) => check === 'slack-hanger');
    const [worst] = [...ratios].sort((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0));
    expect(`${view.worst} slack`).toBe(worst?.at);
    expect(view.rows.filter(({ isWorst }) => isWorst)).toHaveLength(1);
  });

  test('a line that falls is worse than any ratio', () => {
    const { 'slack-H2': _, ...conditions } = whole.response.conditions;
    const falls = {
      code: 'mechanics.mechanism',
      data: { condition: 'slack-H2', movement: 'moves up or down', held: 'some' },
    } as const;
    const response = { ...whole.response, conditions, unsolved: { 'slack-H2': falls } };
    const view = viewOf<SlackView>(composed('commissioning', 'us', { ...whole, response }), 'slack');
    expect(view).toMatchObject({ worst: 'H2', worstFalls: true });
  });
});

test('the envelope holds no load less than any condition but those of slack hangers has', () => {
  interface LoadsView {
    readonly largest: readonly { readonly mark: string; readonly downIn: string; readonly upIn: string }[];
  }
  const { largest } = viewOf<LoadsView>(composed('engineer', 'si'), 'support-loads');
  expect(largest.map(({ mark }) => mark)).toEqual(whole.layout.supports.map(({ mark }) => mark));
  for (const { mark, downIn, upIn } of largest) {
    const up = (name: string) => whole.response.conditions[name]?.supports[mark]?.load.force[2] ?? 0;
    const down = (name: string) => -up(name);
    const others = Object.keys(whole.response.conditions).filter((name) => !name.startsWith('slack-'));
    expect(down(downIn)).toBeCloseTo(Math.max(0, ...others.map(down)), 6);
    expect(up(upIn)).toBeCloseTo(Math.max(0, ...others.map(up)), 6);
  }
});

describe('words for what a fitter sees', () => {
  const write = createWriter('us');

  test('lengths without sign in both units', () => {
    expect(bothUnits(-0.0254)).toEqual({ mm: '25.4', inches: '1.000' });
    expect(bothText(0.0254 / 16)).toBe('1.6 mm (0.063 in)');
    expect(bothUnits(undefined)).toEqual({ mm: '–', inches: '–' });
  });

  test('what is too small to be measured stays', () => {
    expect(wayWord(1e-5, ['rises', 'drops'])).toBe('stays');
    expect(wayWord(-1e-3, ['rises', 'drops'])).toBe('drops');
    expect(planWord([1e-5, 0, 0], write)).toBe('stays');
    expect(planWord([-1e-4, 0, 0], write)).toBe('west');
  });

  test('sides of a face', () => {
    expect(faceSide([0, 0, -1], write)).toBe('bottom');
    expect(faceSide([0.6, 0, 0.8], write)).toBe('top, east');
    expect(faceSide([0, 0, 0], write)).toBe('nowhere');
  });
});

describe('the results for a fitter', () => {
  const results = fitterResults(whole);

  test('are of their published shapes', () => {
    expect(pumpOutShape().parse(results.pumpOut)).toEqual(results.pumpOut);
    expect(fitUpShape().parse(results.fitUp)).toEqual(results.fitUp);
    expect(settingShape().parse(results.setting)).toEqual(results.setting);
    expect(results.fitUp?.joints.map(({ nozzle }) => nozzle)).toEqual(['suction', 'discharge']);
  });

  test('are left out where nothing could be worked out', () => {
    const { frame } = whole.layout;
    const subject: Subject = {
      ...whole,
      layout: { ...whole.layout, frame: { ...frame, materials: {} } },
      response: { ...whole.response },
    };
    expect(fitterResults(subject)).toEqual({});
  });
});
