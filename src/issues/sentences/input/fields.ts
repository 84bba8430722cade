import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

const NOTHING = 'nothing stands behind this key';
const STARTS =
  'across the line, wye-delta, or one of {autotransformer: {tap: 65 %}}, {soft starter: {current-limit: 300 %, ramp: 12 s}}, {variable-speed drive: {torque-limit: 110 %, ramp: 20 s}}';
const isNothing = (data: { readonly found: string }): boolean => say(data, 'found') === 'nothing';

/** Single fields: keys, words, numbers, labels of tables. */
export const inputFieldsSentences = {
  'input.unknown-key': (data: { key: string; known: readonly string[] }) =>
    tell(data, `"${say(data, 'key')}" is not known here`, {
      wanted: `one of ${say(data, 'known')}`,
      example: '',
    }),
  'input.missing': (data: { key: string }) => tell(data, `"${say(data, 'key')}" is missing`),
  'input.one-key': (data: IssueData) =>
    tell(data, 'a step has exactly one key, its kind', { example: '- straight: 2 ft' }),
  'input.one-start': (data: IssueData) => tell(data, 'the motor is started in one way', { wanted: STARTS }),
  'input.unknown-start': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" does not say how the motor is started`, { wanted: STARTS }),
  'input.one-end': (data: IssueData) =>
    tell(data, 'an end is of one kind', { wanted: 'anchored, free, or a map of one key' }),
  'input.wrong-type': (data: { found: string }) =>
    tell(data, isNothing(data) ? NOTHING : `${say(data, 'found')} cannot stand here`),
  'input.not-one-of': (data: { found: string; words: readonly string[] }) =>
    tell(data, isNothing(data) ? NOTHING : `${say(data, 'found')} is not known here`, {
      wanted: `one of ${say(data, 'words')}`,
    }),
  'input.empty': (data: { found: string }) => tell(data, `${say(data, 'found')} is empty`),
  'input.text-too-long': (data: { most: number }) =>
    tell(data, 'the text is too long', { wanted: `at most ${say(data, 'most')} characters` }),
  'input.list-too-long': (data: { most: number }) =>
    tell(data, 'the list is too long', { wanted: `at most ${say(data, 'most')} entries` }),
  'input.too-small': (data: { found: string; least: number | string }) =>
    tell(data, `${say(data, 'found')} is too small`, { wanted: `at least ${say(data, 'least')}` }),
  'input.too-large': (data: { found: string; most: number | string }) =>
    tell(data, `${say(data, 'found')} is too large`, { wanted: `at most ${say(data, 'most')}` }),
  'input.not-positive': (data: { found: string }) => tell(data, `"${say(data, 'found')}" is not above zero`),
  'input.negative': (data: { found: string }) => tell(data, `"${say(data, 'found')}" is below zero`),
  'input.share-over-one': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" is more than the whole`, { wanted: 'at most 100 %' }),
  'input.not-a-day': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" is no day of the calendar`, { wanted: 'year-month-day' }),
  'input.unknown-direction': (data: { found: string; words: readonly string[] }) =>
    tell(data, `"${say(data, 'found')}" is no direction`, {
      wanted: `${say(data, 'words')}; level ones also "rising 45 deg" or "falling 10 deg"`,
    }),
  'input.not-level': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" is not level`, { wanted: 'a level direction' }),
  'input.unknown-size': (data: { found: string; sizes: readonly string[] }) =>
    tell(data, `"${say(data, 'found')}" is no nominal size`, {
      wanted: `a size with its unit, one of ${say(data, 'sizes')} in, or DN 150, or own outside-diameter and wall`,
    }),
  'input.unknown-rod': (data: { found: string; sizes: readonly string[] }) =>
    tell(data, `"${say(data, 'found')}" is no size of hanger rod`, {
      wanted: `one of ${say(data, 'sizes')} in`,
    }),
  'input.unknown-material': (data: { found: string; words: readonly string[] }) =>
    tell(data, `the material "${say(data, 'found')}" is not known`, {
      wanted: `one of ${say(data, 'words')}, or one of your own under materials`,
    }),
  'input.unknown-insulation': (data: { found: string; words: readonly string[] }) =>
    tell(data, `the insulation "${say(data, 'found')}" is not known`, {
      wanted: `one of ${say(data, 'words')}, or any kind with its own density`,
    }),
  'input.unknown-schedule': (data: {
    found: string;
    size: string;
    material: string;
    words: readonly string[];
  }) =>
    tell(
      data,
      `"${say(data, 'found')}" is no schedule of NPS ${say(data, 'size')} ${say(data, 'material')}`,
      {
        wanted: `one of ${say(data, 'words')}, or an own wall`,
      },
    ),
  'input.size-not-in-material': (data: { found: string; material: string; sizes: readonly string[] }) =>
    tell(data, `NPS ${say(data, 'found')} is not made in ${say(data, 'material')}`, {
      wanted: `one of ${say(data, 'sizes')} in`,
    }),
  'input.no-pipe-table': (data: { material: string }) =>
    tell(data, `there is no table of ${say(data, 'material')} pipe`, {
      wanted: 'own outside-diameter and wall',
      example: 'outside-diameter: 6.9 in',
    }),
  'input.unknown-class': (data: { found: string; standard: string; words: readonly string[] }) =>
    tell(data, `class "${say(data, 'found')}" is not known of ${say(data, 'standard')}`, {
      wanted: `one of ${say(data, 'words')}`,
    }),
  'input.unknown-valve': (data: { found: string; words: readonly string[] }) =>
    tell(data, `"${say(data, 'found')}" is not in the catalogue of valves`, {
      wanted: `one of ${say(data, 'words')} with its class, or own weight and length`,
      example: 'valve: {kind: strainer, weight: 95 lb, length: 18 in, contents: 3 gal}',
    }),
  'input.valve-class': (data: { kind: string; found: string }) =>
    tell(data, `the catalogue holds no ${say(data, 'kind')} valve of class ${say(data, 'found')}`, {
      wanted: 'another class, or own weight and length',
    }),
  'input.valve-not-listed': (data: { kind: string; found: string; size: string; words: readonly string[] }) =>
    tell(
      data,
      `the catalogue holds no ${say(data, 'kind')} valve of class ${say(data, 'found')} for ${say(data, 'size')}`,
      {
        wanted: `one of the sizes ${say(data, 'words')} in, or own weight and length`,
      },
    ),
  'input.flange-not-listed': (data: { found: string; size: string }) =>
    tell(data, `${say(data, 'found')} has no flange of NPS ${say(data, 'size')}`, {
      wanted: 'another class, or an own flange with weight and length',
      example: 'flange: {class: own, weight: 30 lb, length: 2 in}',
    }),
  'input.own-value-needed': (data: { key: string; part: string }) =>
    tell(data, `the catalogue holds no ${say(data, 'key')} for this part (${say(data, 'part')})`, {
      wanted: `its own ${say(data, 'key')}`,
    }),
} satisfies Sentences;
