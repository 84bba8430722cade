import { numberIn } from '../../readings/read-box.js';
import { noSiteLimit, siteLimit } from '../../readings/site-limit.js';
import type { Judge } from '../judge.js';

/** The seal leaks no more than its maker allows. */
export const sealLeakage: Judge = {
  id: 'seal-leakage',
  title: 'Leakage of the seal, drops in a minute',
  part: 'seal',
  trade: 'millwright',
  compare: ({ readings }) => [
    {
      kind: 'measured',
      at: 'seal',
      boxes: ['seal.leakage'],
      demand: numberIn(readings, 'seal.leakage'),
      measured: 'count',
      limit: siteLimit(readings, 'seal.leakage-limit', 'count'),
      noLimit: noSiteLimit(readings, 'seal.leakage-limit'),
    },
  ],
};
