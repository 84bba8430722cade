/**
 * One load has one value: for every sample the largest load on each support, end of a line and pump base is worked out
 * here from the plain response, and is then looked for in everything that prints it.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analysis.js';
import { reviewHtml } from '../../src/app/render-review.js';
import { type Review, review, reviewResults } from '../../src/app/review.js';
import { checkPicture } from '../../src/cli/check/check-view.js';
import { supportTable } from '../../src/cli/schedule/schedule-table.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { conditionTitle } from '../../src/model/conditions/condition-roles.js';
import type { MarkupElement, MarkupNode } from '../../src/render/markup.js';
import { scheduleUnits, supportSchedule } from '../../src/report/rows/support-schedule.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { formatLoad, formatLoadNumber, formatQuantity, loadNumber } from '../../src/units/index.js';
import { filledReview, layOut, templates } from '../pages/sample-reviews.js';
import { fonts } from '../render/specimen.js';

const MEASURES = ['down', 'up', 'sideways', 'resultant'] as const;
const DIRECTIONS = ['down', 'up', 'sideways'] as const;
type Measure = (typeof MEASURES)[number];
type Wanted = Readonly<Record<Measure, number>>;

const SAMPLES = [
  'samples/library-chilled-water.yaml',
  'samples/pool-hot-water.yaml',
  'samples/dairy-condenser-water.yaml',
  'tests/samples/riser-between-anchors.yaml',
];

function reviewOf(file: string): Review {
  const read = readInstallation(
    readFileSync(fileURLToPath(new URL(`../../${file}`, import.meta.url)), 'utf8'),
  );
  if (!read.ok) throw new Error(`${file} is refused`);
  return review(read.installation);
}

/** The largest loads by mark, from the response itself: every condition but the questions of a slack hanger. */
function wantedLoads({ response, layout }: Review): ReadonlyMap<string, Wanted> {
  const conditions = Object.values(response.conditions).filter(({ name }) => !name.startsWith('slack-'));
  return new Map(
    layout.supports.map(({ mark }) => {
      const most = { down: 0, up: 0, sideways: 0, resultant: 0 };
      for (const { supports } of conditions) {
        const [east, north, up] = supports[mark]?.load.force ?? [0, 0, 0];
        most.down = Math.max(most.down, -up);
        most.up = Math.max(most.up, up);
        most.sideways = Math.max(most.sideways, Math.sqrt(east ** 2 + north ** 2));
        most.resultant = Math.max(most.resultant, Math.sqrt(east ** 2 + north ** 2 + up ** 2));
      }
      return [mark, most];
    }),
  );
}

/** A printed figure, and what it should be. */
interface Told {
  readonly output: string;
  readonly mark: string;
  readonly printed: string;
  readonly wanted: string;
}

const textOf = (node: MarkupNode): string =>
  node.kind === 'text' ? node.text : node.children.map(textOf).join('');

const elements = (root: MarkupElement, name: string): readonly MarkupElement[] =>
  root.children.flatMap((child) =>
    child.kind === 'text' ? [] : [...(child.name === name ? [child] : []), ...elements(child, name)],
  );

/** Rows of a table as texts, its head first. */
const rowsOf = (table: MarkupElement): readonly (readonly string[])[] =>
  elements(table, 'row').map((row) => elements(row, 'cell').map((cell) => textOf(cell).trim()));

const section = (root: MarkupElement, id: string): MarkupElement | undefined =>
  elements(root, 'section').find(({ attributes }) => attributes.id === id);

/** Every place that prints a largest load, with what it prints and what it should. */
function toldBy(of: Review): readonly Told[] {
  const { units } = of.installation.review;
  const wanted = wantedLoads(of);
  const number = (mark: string, measure: Measure): string => {
    const load = wanted.get(mark)?.[measure] ?? 0;
    return load < 1e-5 ? '–' : formatLoadNumber(load, units);
  };
  const governing = (mark: string): { readonly direction: string; readonly text: string } => {
    const loads = wanted.get(mark);
    if (loads === undefined) throw new Error(`${mark} is no support`);
    const largest = Math.max(...DIRECTIONS.map((each) => loads[each]));
    const direction = DIRECTIONS.find((each) => loads[each] > largest * (1 - 1e-9)) ?? 'nowhere';
    return { direction, text: formatLoad(largest, units) };
  };
  const marks = of.layout.supports.map(({ mark }) => mark);
  const all = (
    output: string,
    read: (mark: string, index: number) => readonly string[],
    measures = MEASURES as readonly Measure[],
  ) =>
    marks.flatMap((mark, index) => {
      const printed = read(mark, index);
      return measures.map(
        (measure, i): Told => ({
          output: `${output}, ${measure}`,
          mark,
          printed: printed[i] ?? 'missing',
          wanted: number(mark, measure),
        }),
      );
    });

  const picture = checkPicture(of, { file: 'f', name: 'f', colour: false, units }).split('\n');
  const head = picture.findIndex((line) => line.startsWith('support '));
  const terminal = all(
    'terminal',
    (mark) => {
      const line = picture.slice(head).find((each) => each.startsWith(mark.slice(0, 21))) ?? '';
      return [line.slice(37, 44), line.slice(45, 52), line.slice(53, 61)].map((cell) => cell.trim());
    },
    DIRECTIONS,
  );

  const engineer = filledReview(of, 'engineer', units);
  const envelope = elements(engineer.root, 'table').find(
    ({ attributes }) => attributes.id === 'support-envelope',
  );
  const engineerRows = envelope === undefined ? [] : rowsOf(envelope);
  const columnsOf = (rows: typeof engineerRows, index: number, from: number, step: number, count: number) =>
    Array.from({ length: count }, (_, i) => rows[index + 1]?.[from + i * step] ?? 'missing');
  const table = all('support table', (_, index) => columnsOf(engineerRows, index, 2, 2, 4));

  const contractor = filledReview(of, 'contractor', units);
  const hangers = section(contractor.root, 'hangers');
  const hangerTable = hangers && elements(hangers, 'table')[0];
  const hangerRows = hangerTable === undefined ? [] : rowsOf(hangerTable);
  const order = all(
    'order table',
    (mark) => {
      const row = hangerRows.find(([first = '']) => first === mark || first.startsWith(`${mark} `));
      // What only guides stands below the table, with the direction that governs.
      const said = new RegExp(`${mark} \\([^)]*\\) ([\\d.,]+) lb sideways`, 'u').exec(
        hangers ? textOf(hangers) : '',
      )?.[1];
      return row === undefined ? ['–', '–', said ?? 'missing'] : row.slice(7, 10);
    },
    DIRECTIONS,
  );

  const pageOne = section(contractor.root, 'summary');
  const groups = (pageOne === undefined ? [] : elements(pageOne, 'table')).filter(({ attributes }) =>
    attributes.caption?.startsWith('Support loads ['),
  );
  const brief = new Map<string, ReadonlyMap<string, string>>();
  for (const group of groups) {
    const [names = [], ...rows] = rowsOf(group);
    names.forEach((mark, column) => {
      if (column > 0) brief.set(mark, new Map(rows.map((row) => [row[0] ?? '', row[column] ?? ''])));
    });
  }
  const first = all(
    'page one',
    (mark) => DIRECTIONS.map((direction) => brief.get(mark)?.get(`largest ${direction}`) ?? '–'),
    DIRECTIONS,
  );

  const schedule = supportTable(
    supportSchedule(of, units).map((row) => ({ ...row, file: 'f' })),
    scheduleUnits(units),
  );
  const columnNamed = (words: string) =>
    schedule.head.findIndex((each) => each.startsWith(`Load on structure, largest ${words}`));
  const csv = marks.flatMap((mark, index) =>
    MEASURES.map((measure): Told => {
      const load = wanted.get(mark)?.[measure] ?? 0;
      return {
        output: `schedule, ${measure}`,
        mark,
        printed: String(schedule.rows[index]?.[columnNamed(measure)] ?? ''),
        wanted: load < 1e-5 ? '' : String(loadNumber(load, units)),
      };
    }),
  );

  const results = reviewResults(of).supportLoads ?? [];
  const file = all('results', (mark) =>
    MEASURES.map((measure) => {
      const load = results.find(({ at }) => at === mark)?.[measure]?.load;
      return load === undefined ? '–' : formatLoadNumber(load, units);
    }),
  );

  const sheet = buildSheet(of).parts.flatMap(({ rows }) => rows);
  const drawn = engineer.composed.drawings.isometric?.alt ?? '';
  const governs = marks.flatMap((mark): readonly Told[] => {
    const { direction, text } = governing(mark);
    const words = `largest load ${text} ${direction},`;
    const row = sheet.find(
      ({ label, expected = '' }) =>
        label.toLowerCase().startsWith(mark.toLowerCase()) && expected.startsWith('largest load'),
    );
    const said = row?.expected ?? 'missing';
    const own = new RegExp(`(?:^|[; .])${mark} \\([^)]*\\): ([^;]*)`, 'u').exec(drawn)?.[1] ?? 'missing';
    const way = DIRECTIONS.find((each) => own.includes(` ${each}`)) ?? 'nowhere';
    return [
      { output: 'field sheet', mark, printed: said.slice(0, words.length), wanted: words },
      {
        output: 'picture',
        mark,
        printed: `${own.slice(0, text.length)} ${way}`,
        wanted: `${text} ${direction}`,
      },
    ];
  });
  return [...terminal, ...table, ...order, ...first, ...csv, ...file, ...governs];
}

/** The review as a page of HTML. */
const pageOf = (of: Review): string =>
  reviewHtml(of, { templates, fonts, reader: 'engineer', units: of.installation.review.units });

const NAMED_SPACES = /&#160;|&nbsp;/gu;

/** Words of a piece of HTML, spaces alike. */
const flatText = (html: string): string =>
  html
    .replace(/<[^>]*>/gu, '')
    .replace(NAMED_SPACES, ' ')
    .replace(/\s+/gu, ' ')
    .trim();

/** The largest loads on supports as the page of HTML prints them. */
function toldByPage(of: Review): readonly Told[] {
  const { units } = of.installation.review;
  const table = /id="support-envelope"[\s\S]*?<\/table>/u.exec(pageOf(of))?.[0] ?? '';
  const rows = table.split('</tr>').map((row) => row.split(/<\/t[dh]>/u).map(flatText));
  return [...wantedLoads(of)].flatMap(([mark, loads]) => {
    const row = rows.find(([first = '']) => first === mark || first.startsWith(`${mark} `)) ?? [];
    return MEASURES.map((measure, index): Told => {
      const load = loads[measure];
      return {
        output: `page of HTML, ${measure}`,
        mark,
        printed: row[2 + 2 * index] ?? 'missing',
        wanted: load < 1e-5 ? '–' : formatLoadNumber(load, units),
      };
    });
  });
}

/** Largest resultants on a nozzle [N], [N·m], each with the first condition that reaches it. */
interface OnNozzle {
  readonly force: LoadIn;
  readonly moment: LoadIn;
}

interface LoadIn {
  readonly load: number;
  readonly condition: string;
}

/**
 * The largest resultants on both nozzles from the force and moment of each condition, as the results give them; the
 * questions of a slack hanger left away.
 */
function wantedOnNozzles(of: Review): ReadonlyMap<string, OnNozzle> {
  const conditions = Object.entries(reviewResults(of).conditions).filter(
    ([name]) => !name.startsWith('slack-'),
  );
  const most = (which: 'suction' | 'discharge', kind: 'force' | 'moment'): LoadIn => {
    const loads = conditions.flatMap(([condition, { nozzles }]) =>
      nozzles === undefined ? [] : [{ condition, load: Math.hypot(...nozzles[which][kind]) }],
    );
    const largest = Math.max(...loads.map(({ load }) => load));
    const condition = loads.find(({ load }) => load > largest * (1 - 1e-9))?.condition ?? 'none';
    return { load: largest, condition };
  };
  return new Map(
    (['suction', 'discharge'] as const).map((which) => [
      which,
      { force: most(which, 'force'), moment: most(which, 'moment') },
    ]),
  );
}

/** Every place that prints the largest loads on a nozzle. */
function toldOfNozzles(of: Review): readonly Told[] {
  const { units } = of.installation.review;
  const plain = (text: string): string => text.replace(/\s+/gu, ' ').trim();
  const picture = checkPicture(of, { file: 'f', name: 'f', colour: false, units }).split('\n');
  const head = picture.findIndex((line) => line.startsWith('nozzle '));
  const { root, composed } = filledReview(of, 'engineer', units);
  const inSection = (id: string): string => {
    const found = section(root, id);
    return found === undefined ? '' : plain(textOf(found));
  };
  const page = flatText(pageOf(of));
  const drawn = plain(composed.drawings.isometric?.alt ?? '');
  const sheet = buildSheet(of).parts.flatMap(({ rows }) => rows);
  const results = reviewResults(of).nozzleLoads ?? [];
  return [...wantedOnNozzles(of)].flatMap(([which, { force, moment }]) => {
    const text = {
      force: plain(formatLoad(force.load, units)),
      moment: plain(formatQuantity(moment.load, 'moment', units)),
      forceIn: conditionTitle(force.condition),
      momentIn: conditionTitle(moment.condition),
    };
    const told = (output: string, printed: string, wanted: string): Told => ({
      output,
      mark: which,
      printed: plain(printed),
      wanted,
    });
    /** What stands behind some words that are there whatever the value. */
    const behind = (output: string, from: string, words: string, wanted: string): Told => {
      const begin = from.indexOf(words);
      const start = begin + words.length;
      return told(output, begin < 0 ? 'missing' : from.slice(start, start + wanted.length), wanted);
    };
    const row = picture.slice(head).find((line) => line.startsWith(`${which} `)) ?? '';
    const found = results.find(({ at }) => at === `${which} nozzle`);
    const own = sheet.find(
      ({ label, expected = '' }) =>
        label.toLowerCase().startsWith(which) && expected.startsWith('largest force'),
    );
    const whole = [text.force, text.forceIn, text.moment, text.momentIn].join('; ');
    const full = new RegExp(
      `${which} nozzle (\\S+ \\S+), of it [^(]*\\(([^)]*)\\), and ([^(]*) \\(([^)]*)\\)`,
      'u',
    );
    return [
      told('terminal', row.slice(10, 21), text.force),
      told('terminal', row.slice(44, 58), text.moment),
      told('matrix', full.exec(inSection('matrix'))?.slice(1).join('; ') ?? 'missing', whole),
      told('page of HTML', full.exec(page)?.slice(1).join('; ') ?? 'missing', whole),
      behind('picture', drawn, `${which} nozzle: force `, `${text.force} ${text.forceIn}, (axial`),
      told(
        'picture',
        new RegExp(`${which} nozzle: [^;]*, moment ([^;]*)`, 'u').exec(drawn)?.[1] ?? 'missing',
        `${text.moment} ${text.momentIn}`,
      ),
      told(
        'field sheet',
        own?.expected ?? 'missing',
        `largest force ${text.force}, ${text.forceIn}; moment ${text.moment}, ${text.momentIn}`,
      ),
      told('results', formatLoad(found?.force?.load ?? Number.NaN, units), text.force),
      told('results', found?.force?.condition ?? 'missing', force.condition),
      told('results', formatQuantity(found?.moment?.load ?? Number.NaN, 'moment', units), text.moment),
      told('results', found?.moment?.condition ?? 'missing', moment.condition),
    ];
  });
}

const wrong = (told: readonly Told[]): readonly Told[] =>
  told.filter(({ printed, wanted }) => printed !== wanted);

describe.each(SAMPLES)('%s', (file) => {
  const whole = reviewOf(file);

  test('every output prints the largest load on every support with the same value', () => {
    const told = toldBy(whole);
    expect(wrong(told)).toEqual([]);
    expect(told.length).toBeGreaterThan(20 * whole.layout.supports.length);
  });

  test('every output prints the largest force and moment on both nozzles with the same value and condition', () => {
    const told = toldOfNozzles(whole);
    expect(wrong(told)).toEqual([]);
    expect(new Set(told.map(({ output }) => output)).size).toBe(6);
  });

  test('the page of HTML prints the largest loads on every support', () => {
    const told = toldByPage(whole);
    expect(wrong(told)).toEqual([]);
    expect(told.length).toBe(4 * whole.layout.supports.length);
  });

  test('the page prints what the tables hold', () => {
    const { root, composed } = filledReview(whole, 'engineer', whole.installation.review.units);
    const { pages } = layOut(root, composed.drawings);
    const words = pages
      .flatMap((page) =>
        page.flatMap(({ piece }) => piece.items.map((item) => ('text' in item ? item.text : ''))),
      )
      .join(' ')
      .replace(/\s+/gu, '');
    for (const [, loads] of wantedLoads(whole)) {
      const largest = formatLoadNumber(
        Math.max(...DIRECTIONS.map((each) => loads[each])),
        whole.installation.review.units,
      );
      expect(words).toContain(largest.replace(/\s/gu, ''));
    }
  });
});

test('an envelope that leaves the pump out away is seen in every output', () => {
  const whole = reviewOf('samples/pool-hot-water.yaml');
  const planted = { ...whole, analysis: analyse(whole, { leftAway: ['pump-out'] }) };
  const found = wrong(toldBy(planted));
  expect(found.some(({ mark }) => mark === 'H2')).toBe(true);
  const outputs = new Set(found.map(({ output }) => output.split(',')[0]));
  expect([...outputs].sort()).toEqual(
    [
      'field sheet',
      'order table',
      'page one',
      'picture',
      'results',
      'schedule',
      'support table',
      'terminal',
    ].sort(),
  );
});

test('largest nozzle loads that leave the starts away are seen in every output', () => {
  const whole = reviewOf('samples/pool-hot-water.yaml');
  const planted = { ...whole, analysis: analyse(whole, { leftAway: ['start'] }) };
  const found = wrong(toldOfNozzles(planted));
  expect([...new Set(found.map(({ output }) => output))].sort()).toEqual(
    ['field sheet', 'matrix', 'page of HTML', 'picture', 'results', 'terminal'].sort(),
  );
});

test('a riser heated between two anchors lifts the upper one, and every output says so', () => {
  const whole = reviewOf('tests/samples/riser-between-anchors.yaml');
  const wanted = wantedLoads(whole).get('A2');
  // Steel held at both ends: E A α ΔT of 6 in standard pipe is some 140,000 lb; the bends beyond the anchors change little.
  expect((wanted?.up ?? 0) / 4.448).toBeGreaterThan(130_000);
  expect((wanted?.up ?? 0) / 4.448).toBeLessThan(160_000);
  const up = toldBy(whole).filter(({ mark, output }) => mark === 'A2' && output.endsWith('up'));
  expect(up.map(({ output }) => output)).toHaveLength(6);
  for (const { printed } of up) expect(Number(printed.replace(/,/gu, ''))).toBeGreaterThan(130_000);
});
