/** What tests of whole documents share: the samples reviewed once, and their documents for every reader. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Review, review } from '../../src/app/review.js';
import type { UnitSystem } from '../../src/input/installation.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { openTypeface } from '../../src/render/font/typeface.js';
import { measureDocument } from '../../src/render/layout/measure-document.js';
import { paginate } from '../../src/render/layout/paginate.js';
import type { Page } from '../../src/render/layout/placed-piece.js';
import { styleDocument } from '../../src/render/layout/style-document.js';
import { type Frame, frameOf, type PageName } from '../../src/render/layout/style-sheet.js';
import type { MarkupElement } from '../../src/render/markup.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { fillTemplate } from '../../src/render/template/fill-template.js';
import type { TemplateRecord } from '../../src/render/template/template-view.js';
import { type ComposedReview, composeReview } from '../../src/report/compose-review.js';
import type { Reader } from '../../src/report/context.js';
import { fonts } from '../render/specimen.js';

const folder = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

export const READERS: readonly Reader[] = ['contractor', 'engineer', 'commissioning'];

/** Templates by their names, as the command line reads them. */
export const templates: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder('templates'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.hbs'))
    .map((name) => [
      name.replace(/\\/g, '/').replace(/\.hbs$/, ''),
      readFileSync(join(folder('templates'), name), 'utf8'),
    ]),
);

export interface ReviewedSample {
  readonly name: string;
  readonly text: string;
  readonly review: Review;
}

let reviewed: readonly ReviewedSample[] | undefined;

/** Every sample, reviewed. */
export function reviewedSamples(): readonly ReviewedSample[] {
  reviewed ??= readdirSync(folder('samples'))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((file) => {
      const text = readFileSync(join(folder('samples'), file), 'utf8');
      const reading = readInstallation(text, { file });
      if (!reading.ok) throw new Error(`${file} cannot be read`);
      return { name: basename(file, '.yaml'), text, review: review(reading.installation) };
    });
  return reviewed;
}

export interface FilledReview {
  readonly composed: ComposedReview;
  readonly markup: string;
  readonly root: MarkupElement;
}

/** The document of a review for one reader. */
export function filledReview(of: Review, reader: Reader, units: UnitSystem): FilledReview {
  const composed = composeReview(of, { reader, units, version: 'test' });
  const { review: master = '', ...partials } = templates;
  const markup = fillTemplate(master, composed.view as TemplateRecord, { name: 'review', partials });
  return { composed, markup, root: parseMarkup(markup) };
}

const { measure } = openTypeface(fonts);

export interface LaidOut {
  readonly pages: readonly Page[];
  readonly frame: Frame;
}

/** A document on its pages. */
export function layOut(
  root: MarkupElement,
  drawings: ComposedReview['drawings'],
  page: PageName = 'letter',
): LaidOut {
  const frame = frameOf(page);
  const pieces = measureDocument(styleDocument(root), frame, measure, drawings);
  return { pages: paginate(pieces, frame.height), frame };
}
