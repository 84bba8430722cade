import type { Sentences } from '../sentence.js';
import { inputAccessSentences } from './access.js';
import { inputBehaviourSentences } from './behaviour.js';
import { inputElectricalSentences } from './electrical.js';
import { inputFieldsSentences } from './fields.js';
import { inputFileSentences } from './file.js';
import { inputFirmSentences } from './firm.js';
import { inputScopeSentences } from './scope.js';
import { inputSenseSentences } from './sense.js';

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
