import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on occasional loads, hoop stress and the pressure test. */
export const pipeCheckSentences = {
  'checks.occasional-stress.exceeds': (data: { at: string; condition: string }) => ({
    message: `the pipe is stressed too much at ${data.at} in the condition ${data.condition}`,
    wanted: 'brace the line or the pump against this load, or carry heavy parts near this place',
    hint: 'bracing and its fixing to the building belong to a licensed designer; the engineer of record decides',
  }),
  'checks.occasional-stress.no-factor': (data: { at: string }) => ({
    message: `how far an occasional load may take the stress at ${data.at} is not known`,
    wanted: 'give the factor for occasional loads of the code',
  }),
  'checks.occasional-stress.no-place': () => ({
    message: 'no sideways coefficient is given and no start is worked out, so there is no occasional load',
    wanted: "give the coefficient of the engineer of record, or the site's values, where earthquakes count",
  }),

  'checks.hoop-stress.exceeds': (data: { at: string }) => ({
    message: `the design pressure stresses ${data.at} too much around the pipe`,
    wanted: 'use heavier or seamless pipe, or lower the design pressure',
    hint: 'the engineer of record decides; the wall must hold mill tolerance and corrosion besides',
  }),
  'checks.hoop-stress.thick-wall': (data: { at: string }) => ({
    message: `the wall of ${data.at} is more than a sixth of its diameter: the thin-wall form does not hold`,
    wanted: 'have this pipe designed for pressure as a thick wall',
  }),
  'checks.hoop-stress.no-joint-factor': (data: { at: string }) => ({
    message: `the factor of the weld along ${data.at} is not known`,
    wanted: 'give the joint factor of the pipe, 1 for seamless',
  }),
  'checks.hoop-stress.no-place': () => ({ message: 'no pipe stands in the lines' }),

  'checks.test-pressure.too-low': () => ({
    message: 'the test pressure is less than one and a half times the design pressure',
    wanted: 'raise the test pressure, or have the authority agree to another test',
    hint: 'the engineer of record and the local code decide which test holds',
  }),
  'checks.test-pressure.exceeds': (data: { at: string }) => ({
    message: `the test pressure is more than ${data.at} may see`,
    wanted: 'lower the test pressure, or isolate this part during the test',
    hint: 'a part burst in a test hurts people: never test above what the manufacturer of any part allows',
  }),
  'checks.test-pressure.no-rating': (data: { owner: string }) => ({
    message: `what ${data.owner} may be tested to is not known`,
    wanted: 'give standard and class, or the pressure rating by temperature, or isolate it during the test',
  }),
  'checks.test-pressure.no-place': () => ({ message: 'there is nothing to test' }),

  'checks.test-stress.exceeds': (data: { at: string }) => ({
    message: `the test pressure stresses ${data.at} beyond nine tenths of its yield strength`,
    wanted: 'lower the test pressure, or test the line in parts of less height',
    hint: 'the engineer of record decides',
  }),
  'checks.test-stress.no-yield': (data: { material: string }) => ({
    message: `the yield strength of ${data.material} is not known`,
    wanted: 'give the material with its least yield strength',
  }),
  'checks.test-stress.no-place': () => ({ message: 'no pipe stands in the lines' }),
} as const satisfies Sentences;
