import * as z from 'zod';
import { once } from '../once.js';
import { field, map, text } from './field.js';
import { letterhead } from './letterhead.js';

/** Most sections of an outline, and most cautions a firm adds. */
const MOST_SECTIONS = 100;
const MOST_CAUTIONS = 30;

const sectionList = (reader: string) =>
  field(
    z.array(text()).min(1).max(MOST_SECTIONS),
    `Sections of the review for the ${reader}, in printing order`,
    ['summary', 'support-loads', 'assumptions', 'cautions'],
  ).optional();

/** The file `firm.yaml` of a folder of templates: what a firm changes without writing a template. */
export const firmSchema = once(() =>
  map({
    format: field(z.literal('pipeborne-firm/1'), 'Name and number of the format', 'pipeborne-firm/1'),
    letterhead: field(letterhead(), 'Who writes the reviews, unless the input says it', {
      name: 'Tarn & Weir, piping engineers',
      logo: 'logo.svg',
    }).optional(),
    headings: field(z.record(z.string(), text()), 'Headings of sections in words of your own, by section', {
      'support-loads': 'What hangs on each hanger',
    }).optional(),
    cautions: field(z.array(text()).max(MOST_CAUTIONS), 'Cautions printed behind those of every review', [
      'Report to the site office before work.',
    ]).optional(),
    outline: field(
      map({
        contractor: sectionList('contractor'),
        engineer: sectionList('engineer'),
        commissioning: sectionList('commissioning agent'),
      }),
      'Which sections a reader gets, and in which order',
      { engineer: ['summary', 'support-loads', 'assumptions', 'cautions'] },
    ).optional(),
  }).meta({ title: "A firm's own style, format 1" }),
);
