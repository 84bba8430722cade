import * as z from 'zod';
import { once } from '../once.js';
import { field, map, text } from './field.js';

/** Most lines of an address. */
const MOST_LINES = 8;

/** Who writes the review, as printed at the head of page one. */
export const letterhead = once(() =>
  map({
    name: field(text(), 'Name of the firm', 'Tarn & Weir, piping engineers'),
    address: field(z.array(text()).max(MOST_LINES), 'Lines below the name, eight at most', [
      '12 Quarry Lane',
      'Larkfield',
    ]).optional(),
    logo: field(
      text(),
      'Picture beside the name: a PNG, JPEG or SVG file in the folder of this file or below it',
      'logo.svg',
    ).optional(),
    'logo-text': field(
      text(),
      'What the picture shows, for those who cannot see it',
      'Logo of Tarn & Weir: a weir between two banks',
    ).optional(),
  }),
);
