import type { Sentences } from '../sentence.js';
import { accessCheckSentences } from './access.js';
import { connectorCheckSentences } from './connectors.js';
import { electricalCheckSentences } from './electrical.js';
import { fitterCheckSentences } from './fitter.js';
import { flangeCheckSentences } from './flanges.js';
import { motionCheckSentences } from './motion.js';
import { nozzleCheckSentences } from './nozzles.js';
import { pipeCheckSentences } from './pipes.js';
import { practiceCheckSentences } from './practice.js';
import { stressSentences } from './stress.js';
import { supportCheckSentences } from './supports.js';

/** Reasons and advice that stand beside findings. */
export const checksSentences = {
  'checks.nothing-read': (data: { at: string }) => ({
    message: `nothing could be read at ${data.at}`,
    wanted: 'solve the installation with all its conditions',
  }),
  'checks.limit-missing': (data: { title: string; at: string }) => ({
    message: `${data.title}: there is no limit for ${data.at}`,
    wanted: 'give the limit with its source; none is assumed',
  }),
  'checks.demand-missing': (data: { title: string; at: string }) => ({
    message: `${data.title}: the value at ${data.at} is not known`,
    wanted: 'complete the description of this place',
  }),
  'checks.bounds-disagree': (data: {
    title: string;
    at: string;
    turnedBy: string;
    datum: string;
    path: string;
    say: string;
  }) => ({
    message: `${data.title}, ${data.at}: the verdict turns within what nobody stated: ${data.turnedBy}`,
    wanted: `state the ${data.datum}, at ${data.path}: ${data.say}`,
    hint: 'where nobody knows it, whoever answers for it may assume a value; it is then printed as theirs',
  }),
  'checks.limit-unusable': (data: { title: string; at: string }) => ({
    message: `${data.title}: the limit for ${data.at} is not a number above zero`,
    wanted: 'correct the limit; a limit of zero or without end cannot be compared with',
  }),
  'checks.demand-unusable': (data: { title: string; at: string }) => ({
    message: `${data.title}: the value at ${data.at} is not a usable number`,
    wanted: 'look for an impossible weight, length or stiffness near this place',
  }),

  'checks.stress.no-allowable': (data: { at: string }) => ({
    message: `the stress in ${data.at} is worked out, but no allowable stress is known`,
    wanted: 'give the allowable stress, hot and cold, of the pipe with the edition of the code',
    hint: 'the engineer of record decides which code and edition hold',
  }),
  'checks.stress.edition-not-held': (data: { code: string; edition: string; held: string }) => ({
    message: `the file names edition ${data.edition} of ASME ${data.code}, whose values are not held here`,
    wanted: `have the stresses judged by that edition, or name one that is held: ${data.held}`,
    hint: 'the authority having jurisdiction and the engineer of record name the edition that holds',
  }),
  'checks.sustained-stress.exceeds': (data: { at: string }) => ({
    message: `the pipe is bent too much by weight at ${data.at}`,
    wanted:
      'bring a support nearer to this part, carry heavy valves on a support of their own, or use heavier pipe',
    hint: 'the engineer of record decides',
  }),
  'checks.sustained-stress.no-place': () => ({ message: 'no pipe stands in the lines' }),
  'checks.displacement-stress.exceeds': (data: { at: string }) => ({
    message: `expansion bends the pipe too much at ${data.at}`,
    wanted:
      'give the line a longer leg square to the growth, move the anchor, or free a guide near this part',
    hint: 'the engineer of record decides; a flexible connector is no cure unless its thrust is held',
  }),
  'checks.displacement-stress.left-over': (data: { at: string }) => ({
    message: `the unused part of the sustained allowance is used at ${data.at}, as the code permits`,
  }),
  'checks.displacement-stress.no-place': () => ({ message: 'no pipe stands in the lines' }),
  ...pipeCheckSentences,

  ...accessCheckSentences,
  ...electricalCheckSentences,
  ...nozzleCheckSentences,
  ...supportCheckSentences,
  ...flangeCheckSentences,
  ...connectorCheckSentences,
  ...stressSentences,
  ...motionCheckSentences,
  ...fitterCheckSentences,
  ...practiceCheckSentences,
} as const satisfies Sentences;
