import { adviseSentences } from './advise.js';
import { argumentSentences } from './argument.js';
import { checksSentences } from './checks/checks.js';
import { cliSentences } from './cli.js';
import { drawingSentences } from './drawing.js';
import { fieldworkDecisionSentences } from './fieldwork/decisions.js';
import { fieldworkFormSentences } from './fieldwork/form.js';
import { fieldworkJudgesSentences } from './fieldwork/judges.js';
import { fieldworkReadingsSentences } from './fieldwork/readings.js';
import { fieldworkRunningSentences } from './fieldwork/running.js';
import { geometrySentences } from './geometry.js';
import { inputSentences } from './input/input.js';
import { mechanicsSentences } from './mechanics.js';
import { mechanicsStartSentences } from './mechanics-start.js';
import { modelSentences } from './model.js';
import { renderSentences } from './render.js';
import { reportSentences } from './report.js';
import type { Sentences } from './sentence.js';
import { starterSentences } from './starter.js';
import { unitsSentences } from './units.js';

/** Every sentence shown to a person, by code. Each folder has a file of its own. */
export const sentences = {
  ...unitsSentences,
  ...inputSentences,
  ...modelSentences,
  ...geometrySentences,
  ...mechanicsSentences,
  ...mechanicsStartSentences,
  ...checksSentences,
  ...drawingSentences,
  ...renderSentences,
  ...reportSentences,
  ...fieldworkFormSentences,
  ...starterSentences,
  ...fieldworkReadingsSentences,
  ...fieldworkJudgesSentences,
  ...fieldworkRunningSentences,
  ...fieldworkDecisionSentences,
  ...cliSentences,
  ...adviseSentences,
  ...argumentSentences,
} as const satisfies Sentences;
