import { inputAccessSentences } from './input-access.js';
import { inputBehaviourSentences } from './input-behaviour.js';
import { inputElectricalSentences } from './input-electrical.js';
import { inputFieldsSentences } from './input-fields.js';
import { inputFileSentences } from './input-file.js';
import { inputFirmSentences } from './input-firm.js';
import { inputScopeSentences } from './input-scope.js';
import { inputSenseSentences } from './input-sense.js';
import type { Sentences } from './sentence.js';

/** Everything said about an input file. */
export const inputSentences = {
  ...inputFileSentences,
  ...inputFieldsSentences,
  ...inputSenseSentences,
  ...inputBehaviourSentences,
  ...inputScopeSentences,
  ...inputAccessSentences,
  ...inputElectricalSentences,
  ...inputFirmSentences,
} satisfies Sentences;
