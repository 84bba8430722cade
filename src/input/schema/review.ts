import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { day } from './labels.js';
import { letterhead } from './letterhead.js';

const revision = once(() =>
  map({
    mark: field(text(), 'Mark of the revision', 'A'),
    date: field(day(), 'Day of the revision', '2026-09-14'),
    by: field(text(), 'Who made it', 'R. Okafor'),
    note: field(text(), 'What it is for or what changed', 'First issue'),
  }),
);

/** What stands in the title block. */
export const review = once(() =>
  map({
    project: field(text(), 'Name of the project', 'Larkfield pool, boiler room'),
    location: field(text(), 'Where the pump stands', 'Basement plant room').optional(),
    client: field(text(), 'For whom the review is made', 'Larkfield Parks Trust').optional(),
    'prepared-by': field(text(), 'Who prepared the file', 'R. Okafor').optional(),
    letterhead: field(letterhead(), 'Who writes the review, printed at the head of page one', {
      name: 'Tarn & Weir, piping engineers',
      address: ['12 Quarry Lane', 'Larkfield'],
      logo: 'logo.svg',
    }).optional(),
    'engineer-of-record': field(text(), 'Who decides on it', 'to be named').optional(),
    status: field(
      oneOf(['preliminary', 'for review', 'for record']),
      'What the review is issued for',
      'for review',
    ),
    date: field(day(), 'Day printed on the review; the clock is never read', '2026-09-14'),
    units: field(oneOf(['us', 'si']), 'Units the review is printed in', 'us'),
    english: field(
      oneOf(['american', 'british']),
      'Spelling of the review; american with US units and british with SI where not said',
      'american',
    ).optional(),
    revisions: field(z.array(revision()), 'Revisions, oldest first', [
      { mark: 'A', date: '2026-09-14', by: 'R. Okafor', note: 'First issue' },
    ]).optional(),
    notes: field(z.array(text()), 'Notes printed with the review', [
      'Weights to be confirmed on site',
    ]).optional(),
  }),
);
