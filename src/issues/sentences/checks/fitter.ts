import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on what a fitter meets: slack hangers, the pump out, flanges pulled shut. */
export const fitterCheckSentences = {
  'checks.slack-hanger.exceeds': (data: { mark: string; nozzle: string }) => ({
    message: `with ${data.mark} slack the ${data.nozzle} nozzle bears more than its limit`,
    wanted: `see that ${data.mark} carries its load whenever the line is full, or add a support that takes over`,
    hint: 'a rod that can be turned by hand carries nothing; read springs and try rods after every filling',
  }),
  'checks.slack-hanger.falls': (data: { mark: string }) => ({
    message: `with ${data.mark} slack nothing else holds the line`,
    wanted: 'add a support that holds the line without it',
    hint: 'never undo it without a prop under the line',
  }),
  'checks.slack-hanger.no-basis': (data: { nozzle: string; mark: string }) => ({
    message: `the load on the ${data.nozzle} nozzle with ${data.mark} slack is given, but no limit is named to judge it by`,
    wanted: 'ask the manufacturer for the loads allowed on the nozzles and name them as the basis',
  }),
  'checks.slack-hanger.no-place': () => ({ message: 'no hanger or stand near the pump can go slack' }),

  'checks.pump-out-supports.exceeds': (data: { line: number; movement: string }) => ({
    message: `the ${data.line} does not stand without the pump: it ${data.movement}`,
    wanted: 'add a support between the pump and the first elbow, or prop the line before a bolt is loosened',
    hint: 'the prop list of this review says where and with what load; a competent person sets the props',
  }),
  'checks.pump-out-supports.no-answer': (data: { line: string }) => ({
    message: `whether the ${data.line} stands without the pump could not be worked out`,
    wanted: 'prop it before a bolt is loosened, and simplify the supports that keep changing',
  }),
  'checks.pump-out-supports.no-place': () => ({ message: 'no line stands at the pump' }),

  'checks.fit-up-tolerance.exceeds': (data: { component: string; nozzle: string }) => ({
    message: `pulling the permitted misfit shut takes the ${data.component} on the ${data.nozzle} nozzle above its limit`,
    wanted:
      'bring the flanges closer than the tolerance before bolting: the fit-up card says how close; give that as the tolerance',
    hint: 'cut and refit the closing spool rather than pull; the manufacturer of the pump decides',
  }),
  'checks.fit-up-tolerance.together': (data: { nozzle: string }) => ({
    message: `gap, offset and tilt at the ${data.nozzle} nozzle may each be as large as permitted, but not all of them at once`,
    wanted: 'measure the faces before bolting and compare with the fit-up card, or give smaller tolerances',
  }),
  'checks.fit-up-tolerance.no-basis': (data: { nozzle: string }) => ({
    message: `the load of the permitted misfit on the ${data.nozzle} nozzle is given, but no limit is named to judge it by`,
    wanted: 'ask the manufacturer for the loads allowed on the nozzles and name them as the basis',
  }),
  'checks.fit-up-tolerance.no-tolerance': () => ({
    message: 'gap, offset or parallelism permitted, or the size of the flange faces, is not known',
    wanted: 'give the tolerances of the specification and the diameters of the flange',
  }),
  'checks.fit-up-tolerance.judged-by-stress': () => ({
    message: 'the nozzles are judged by their principal stress, and what misfit adds to it is not worked out',
  }),
  'checks.fit-up-tolerance.no-place': () => ({ message: 'no line stands at the pump' }),
} as const satisfies Sentences;
