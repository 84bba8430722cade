import { numberIn } from '../../../readings/read-box.js';
import { siteLimit } from '../../../readings/site-limit.js';
import type { Judge } from '../../judge.js';

/** Where the maker's figure is not on the sheet, the seal leaks no more than a published acceptance lets it. */
export const sealDrops: Judge = {
  id: 'seal-drops',
  title: 'Leakage against a published acceptance, drops in a minute',
  part: 'seal',
  trade: 'millwright',
  compare: ({ readings }) =>
    siteLimit(readings, 'seal.leakage-limit', 'count') === undefined
      ? [
          {
            kind: 'measured',
            at: 'seal',
            boxes: ['seal.leakage'],
            demand: numberIn(readings, 'seal.leakage'),
            measured: 'count',
            limit: {
              value: 5,
              measured: 'count',
              words: 'at most',
              citation: {
                source: 'mil-p-18526a',
                clause: 'five drops a minute after the run-in, acceptance',
                confidence: 'read',
              },
            },
          },
        ]
      : [],
};
