import type { Source } from './source.js';

/** Customs of the trade without a published source, and results derived from first principles. */
export const practice = {
  'common-practice': {
    title: 'Common practice of the trade',
    edition: 'no published source',
    kind: 'practice',
  },
  'beam-theory': {
    title: 'Beam theory, derived from first principles',
    edition: 'closed form',
    kind: 'derived',
  },
  dynamics: {
    title: 'Dynamics of rotors and oscillators, derived from first principles',
    edition: 'closed form',
    kind: 'derived',
  },
  statics: { title: 'Statics', edition: 'closed form', kind: 'derived' },
  input: { title: 'Given in the input file', edition: 'as given', kind: 'derived' },
  'field-sheet': { title: 'Written down on site', edition: 'as given', kind: 'derived' },
} as const satisfies Record<string, Source>;
