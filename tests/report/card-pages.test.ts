import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { review } from '../../src/app/review.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { renderPdf } from '../../src/render/render-pdf.js';
import { fillTemplate } from '../../src/render/template/fill-template.js';
import type { ReviewSubject } from '../../src/report/compose-review.js';
import { changed, fileText } from '../input/sample-text.js';
import { options } from '../render/specimen.js';
import { reviewed, reviewedInstallation, reviewedWithConnectors } from './fixture.js';
import { sectionView } from './section-view.js';

const cards = ['lockout', 'seal-change', 'first-start'] as const;

const templateOf = (id: string) =>
  readFileSync(fileURLToPath(new URL(`../../templates/sections/${id}.hbs`, import.meta.url)), 'utf8');

/** Pages that one card takes alone, on one size of paper. */
async function pagesOf(
  whole: ReviewSubject,
  id: (typeof cards)[number],
  units: 'us' | 'si',
): Promise<number> {
  const card = sectionView(whole, id, units) as Parameters<typeof fillTemplate>[1];
  const section = fillTemplate(templateOf(id), card, { name: id, partials: {} });
  const markup = `<review title="Card" language="en">${section}</review>`;
  const pdf = await renderPdf(markup, { ...options, drawings: {}, page: units === 'us' ? 'letter' : 'a4' });
  // The title of the review stands on a page of its own, since a card begins a new one.
  return (await PDFDocument.load(pdf)).getPageCount() - 1;
}

function readAs(text: string): ReviewSubject {
  const read = readInstallation(text);
  if (!read.ok) throw new Error('the file is refused');
  return review(read.installation);
}
const dairy = fileText('../../samples/dairy-condenser-water.yaml');
const subjects: Readonly<Record<string, ReviewSubject>> = {
  pool: readAs(fileText('../../samples/pool-hot-water.yaml')),
  library: readAs(fileText('../../samples/library-chilled-water.yaml')),
  dairy: readAs(dairy),
  'dairy, hot, with nothing said of taps, drains and the disconnect': readAs(
    changed(
      dairy,
      ['running: 28 degC, hot: 36 degC', 'running: 85 degC, hot: 95 degC'],
      ['  gauge-taps: {suction: yes}\n', ''],
      ['        - drain: {size: 1 in}\n', ''],
      ['    voltage: 400 V\n', ''],
    ).replace(/^ {2}disconnect: .*\n/mu, ''),
  ),
  'fixture, with connectors': reviewedWithConnectors('gapped'),
  'fixture, close-coupled, without valves': reviewed({
    pump: { ...reviewedInstallation().pump, build: 'close-coupled' },
    lines: reviewedInstallation().lines.map((line) => ({
      ...line,
      walk: line.walk.filter(({ kind }) => kind !== 'valve'),
    })),
  }),
};

const cases = Object.keys(subjects).flatMap((name) =>
  cards.flatMap((id) => (['us', 'si'] as const).map((units) => ({ name, id, units }))),
);

test.each(cases)('the card $id of $name fits one page in $units units', async ({ name, id, units }) => {
  const whole = subjects[name];
  expect(whole && (await pagesOf(whole, id, units))).toBe(1);
});
