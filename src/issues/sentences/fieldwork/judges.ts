import type { Sentences } from '../sentence.js';
import { say } from '../tell.js';
import { at, item } from './item.js';

/** What was to be read, and where. */
const what = (data: { readonly title: string; readonly at: string }) => `${say(data, 'title')}, ${at(data)}`;

/** Sentences on readings that exceed, and on what cannot be told. The hint says what comes of it. */
export const fieldworkJudgesSentences = {
  'fieldwork.no-limit': (data: { at: string }) => ({
    message: `no limit was given for ${at(data)}`,
    wanted: 'the limit of the manufacturer or the specification, with the page it stands on',
  }),
  'fieldwork.limit-without-source': (data: { at: string }) => ({
    message: `the limit written down for ${at(data)} has no document`,
    wanted: 'the document and page the limit stands on; a number without it is none',
  }),
  'fieldwork.limit-unusable': (data: { at: string }) => ({
    message: `the limit for ${at(data)} is not a number above zero`,
    wanted: 'correct the limit',
  }),
  'fieldwork.no-nozzle-basis': (data: { at: string }) => ({
    message: `no basis for the nozzle loads is named, so the load at ${at(data)} has no limit`,
    wanted: 'the loads that the manufacturer allows on the nozzles',
  }),
  'fieldwork.no-rated-voltage': () => ({
    message: 'the rated voltage is neither in the file nor on the sheet',
    wanted: 'the voltage of the rating plate',
  }),
  'fieldwork.no-rated-current': () => ({
    message: 'the full-load current is neither in the file nor on the sheet',
    wanted: 'the full-load current of the rating plate',
  }),
  'fieldwork.not-filled': (data: { title: string; at: string }) => ({
    message: `${what(data)}: not read`,
    wanted: 'take the reading, or say why it cannot be taken',
  }),
  'fieldwork.not-read': (data: { title: string; at: string; why: string }) => ({
    message: `${what(data)}: not read, because ${say(data, 'why')}`,
    wanted: 'take the reading once that is out of the way',
  }),
  'fieldwork.unreadable': (data: { title: string; at: string; found: string }) => ({
    message: `${what(data)}: what was written cannot be read, "${say(data, 'found')}"`,
    wanted: 'write it again, in the unit beside the box',
  }),
  'fieldwork.as-found.past-fitting': (data: { mark: string }) => ({
    message: `${say(data, 'mark')} cannot stand where it was read: a fitting or another support is in the way`,
    wanted: 'read its place again; until then it is taken as drawn',
  }),
  'fieldwork.as-found.only-if-forced': (data: { title: string; at: string }) => ({
    message: `${say(data, 'title')}, ${at(data)}: beyond its limit if the supports hold the pipe off the height it was cut for, within it if it was cut to the height that was read`,
    wanted: 'find out which: slacken the nut with the line propped and watch whether the pipe follows',
    hint: 'pipe that is held off its height loads the nozzles for good',
  }),
  'fieldwork.as-found.other-state': (data: { mark: string }) => ({
    message: `${say(data, 'mark')} was read in another state of the line than the other springs`,
    wanted: 'read all springs filled and cold; until then it is taken as set',
  }),

  'fieldwork.instrument-due.exceeds': item(
    (data: { at: string }) => `the calibration of the ${at(data)} was out of date`,
    'have them calibrated and read again',
    'what was read with them cannot be relied on',
  ),
  'fieldwork.plate.exceeds': item(
    (data: { what: string }) => `the plate says another ${say(data, 'what')} than the review`,
    'put what the plate says into the input and review again',
    'loads, speeds and currents of the review are those of another unit',
  ),
  'fieldwork.flange-parallelism.exceeds': item(
    (data: { at: string; side: string }) =>
      `the faces at the ${at(data)} are out of parallel, widest towards ${say(data, 'side')}`,
    'cut and refit the closing piece; do not pull it with the bolts',
    'the bolts bend the pump: seal and bearings run under strain',
  ),
  'fieldwork.flange-gap.exceeds': item(
    (data: { at: string; way: string }) =>
      `the gap at the ${at(data)} is ${say(data, 'way')} the gasket by more than is allowed`,
    'refit the closing piece to the gap of the gasket',
    'the bolts pull or press along the pipe, and the nozzle carries it',
  ),
  'fieldwork.flange-offset.exceeds': item(
    (data: { at: string; side: string }) =>
      `the line at the ${at(data)} is off the pump's centre line towards ${say(data, 'side')}`,
    'set the supports, or refit the closing piece, until the centre lines meet',
    'bolts driven through by force push the nozzle aside',
  ),
  'fieldwork.bolt-holes.exceeds': item(
    (data: { at: string }) => `the bolt holes at the ${at(data)} are turned`,
    'turn the loose flange or refit the closing piece',
    'bolts that are driven in twist the nozzle',
  ),
  'fieldwork.shaft-movement.exceeds': item(
    (data: { at: string }) => `the shaft moved while the bolts of the ${at(data)} were pulled`,
    'slacken the flange, find what pulls, refit, and watch the dial again',
    'the pipe strains the pump: coupling and seal run crooked',
  ),
  'fieldwork.misfit-load.exceeds': item(
    (data: { at: string }) => `the misfit that was read, pulled shut, loads the ${at(data)} beyond its limit`,
    'open the joint and refit the closing piece before the start',
    'the load is locked in for good, and heat adds to it',
  ),
  'fieldwork.spring-range.exceeds': item(
    (data: { at: string }) => `the spring ${at(data)} shows a load outside its working range`,
    'adjust it with the line filled; where no setting reaches, another spring is needed',
    'a spring at the end of its travel is a rigid support or none',
  ),
  'fieldwork.rod-lean.exceeds': item(
    (data: { at: string }) => `the rod of ${at(data)} leans`,
    'move the attachment or the clamp until it hangs plumb when the line is in service',
    'a rod that leans pulls the pipe sideways with its load',
  ),
  'fieldwork.support-contact.exceeds': item(
    (data: { at: string; load: string }) =>
      `nothing is carried at ${at(data)}, where the review has ${say(data, 'load')}`,
    'shim or screw it up with the line filled until paper is held, and read the neighbours again',
    'what it does not carry hangs on the pump and on its neighbours',
  ),
  'fieldwork.base-state.exceeds': item(
    (data: { told: string; wanted: string }) =>
      `the pump base is ${say(data, 'told')}; the review takes it as ${say(data, 'wanted')}`,
    'set the base as reviewed, or review the installation as it is',
    'every nozzle load turns on how the base is held',
  ),
} as const satisfies Sentences;
