import { dateBox, sheetRow, textBox } from '../boxes.js';
import type { Box } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

const SIGNERS: readonly (readonly [string, string])[] = [
  ['pipe-fitter', 'Pipe fitter'],
  ['millwright', 'Millwright'],
  ['electrician', 'Electrician'],
  ['balancer', 'Balancing contractor'],
  ['agent', 'Commissioning agent'],
];

/** The two decisions, and who takes them. A name typed here is no signature. */
const DECIDED: readonly (readonly [string, string])[] = [
  ['start', 'May be started'],
  ['run', 'May run, and is accepted'],
];

/** Who signs for which readings. */
export const signOff: PartDefinition = {
  id: 'sign-off',
  title: 'Sign-off',
  trade: 'commissioning agent',
  how: 'Each signs for the readings of his trade. This sheet takes the place neither of the manufacturer’s start-up report nor of the engineer of record.',
  rows: () => [
    ...DECIDED.map(([key, words]) =>
      sheetRow(words, [
        textBox({ id: `sign-off.${key}`, label: 'decided by', tip: `${words}: name of who decides` }),
        dateBox({ id: `sign-off.${key}-date`, label: 'on', tip: `${words}: day of the decision` }),
      ]),
    ),
    ...SIGNERS.map(([key, word]) => {
      const signature: Box = {
        id: `sign-off.${key}-signature`,
        kind: 'signature',
        label: 'signature',
        tip: `Signature of the ${word.toLowerCase()}`,
      };
      return sheetRow(word, [
        textBox({ id: `sign-off.${key}`, label: 'name', tip: `Name of the ${word.toLowerCase()}` }),
        dateBox({ id: `sign-off.${key}-date`, label: 'date', tip: `Day the ${word.toLowerCase()} signed` }),
        signature,
      ]);
    }),
  ],
};
