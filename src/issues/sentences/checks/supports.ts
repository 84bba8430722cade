import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on supports and spans. */
export const supportCheckSentences = {
  'checks.support-not-solved': (data: { at: string }) => ({
    message: `the load on ${data.at} was not worked out`,
    wanted: 'solve the installation with all its conditions',
  }),

  'checks.rod-load.exceeds': (data: { at: string; condition: string }) => ({
    message: `the rod load at ${data.at} is above the rating, worst in the condition ${data.condition}`,
    wanted: 'take the next rod size up with clamp and attachment to match, or add a hanger beside it',
    hint: 'the contractor chooses the rod; the structural engineer accepts the load above it',
  }),
  'checks.rod-load.no-rating': (data: { at: string }) => ({
    message: `the rod at ${data.at} has no size of the table and no rating of its own`,
    wanted: 'give the rod size, or the rating of one rod',
  }),
  'checks.rod-load.no-place': () => ({ message: 'nothing hangs on rods' }),

  'checks.attachment-load.exceeds': (data: { at: string }) => ({
    message: `the load at ${data.at} is above the rating of its clamp or attachment`,
    wanted: 'take a stronger attachment or share the load between two supports',
    hint: 'the structural engineer decides what the building takes',
  }),
  'checks.attachment-load.no-place': () => ({
    message: 'no rating of a clamp or attachment is given, so none is judged',
    wanted: 'have the structural engineer accept the load of every support',
  }),

  'checks.support-load.exceeds': (data: { at: string; condition: string }) => ({
    message: `the load on ${data.at} is above its rating, worst in the condition ${data.condition}`,
    wanted: 'take a stronger support or share the load between two',
    hint: 'the manufacturer of the support and the structural engineer decide',
  }),
  'checks.support-load.above-range': (data: { at: string; condition: string }) => ({
    message: `the spring ${data.at} is loaded past its working range when ${data.condition}`,
    wanted: 'choose a stronger spring, or share the load with a support beside it',
    hint: 'a spring on its stop is a rigid support; the manufacturer of the spring confirms the choice',
  }),
  'checks.support-load.below-range': (data: { at: string; condition: string }) => ({
    message: `the spring ${data.at} is loaded below its working range when ${data.condition}`,
    wanted: 'choose a weaker spring or set it higher, so that it carries its share',
    hint: 'what it does not carry hangs on its neighbours and on the pump nozzle',
  }),
  'checks.support-load.no-place': () => ({ message: 'no support has a rating or a working range' }),

  'checks.support-uplift.exceeds': (data: { at: string; condition: string }) => ({
    message: `${data.at} carries nothing: the pipe lifts off or the rod goes slack when ${data.condition}`,
    wanted: 'use a spring there, move it to where the pipe does not rise, or leave it out and review again',
    hint: 'its share hangs on the neighbours and on the pump nozzle until then',
  }),
  'checks.support-uplift.pulled': (data: { at: string; condition: string }) => ({
    message: `${data.at} would have to act the wrong way when ${data.condition}`,
    wanted: 'use a support that holds both ways, or a spring',
    hint: 'a rod cannot push and a stand cannot pull',
  }),
  'checks.support-uplift.no-place': () => ({ message: 'every support acts both ways' }),

  'checks.support-span.exceeds': (data: { at: string }) => ({
    message: `the span from ${data.at} is longer than allowed`,
    wanted: 'add a support between them',
  }),
  'checks.support-span.lumps': (data: { at: string }) => ({
    message: `valves, flanges or other lumps stand in the span from ${data.at}: the table is for plain pipe`,
    wanted: 'a comparison only; the stress in the pipe decides',
  }),
  'checks.support-span.rises': (data: { at: string }) => ({
    message: `part of the span from ${data.at} is upright: the table is for level pipe`,
    wanted: 'a comparison only; the stress in the pipe decides',
  }),
  'checks.support-span.bent': (data: { at: string }) => ({
    message: `the span from ${data.at} changes direction: it is compared with three quarters of the table`,
    wanted: 'a comparison only; the stress in the pipe decides',
  }),
  'checks.support-span.no-table': (data: { size: string }) => ({
    message: `the span table has no row for ${data.size}`,
    wanted: 'give the longest span that the specification allows',
  }),
  'checks.support-span.no-place': () => ({ message: 'there is no level span between two supports' }),

  'checks.first-support-pump.exceeds': (data: { at: string }) => ({
    message: `the first support from the ${data.at} is too far away`,
    wanted: 'bring it nearer, or add one between it and the pump',
    hint: 'what stands between them hangs on the nozzle',
  }),
  'checks.first-support-pump.none': (data: { at: string }) => ({
    message: `no support on the line from the ${data.at} carries weight`,
    wanted: 'add a hanger or a stand as near to the pump as practical',
  }),
  'checks.first-support-pump.no-limit': () => ({
    message: 'no distance to the first support is given, and published advice names none',
    wanted: "give the distance the specification or the pump's manual asks for",
  }),
  'checks.first-support-pump.no-place': () => ({ message: 'the pump has no nozzles' }),

  'checks.first-support-bend.exceeds': (data: { at: string; support: string }) => ({
    message: `the support nearest to ${data.at}, ${data.support}, is too far away`,
    wanted: 'move it nearer to the bend or add one',
    hint: 'the specification of the job decides on the distance',
  }),
  'checks.first-support-bend.beside-hung-pump': (data: { at: string; support: string }) => ({
    message: `${data.at} stands between a pump that hangs in its pipe and the first support, ${data.support}`,
    wanted: 'a comparison only; nozzle loads and stress in the pipe decide',
  }),
  'checks.first-support-bend.none': (data: { at: string }) => ({
    message: `no support near ${data.at} carries weight`,
    wanted: 'add a hanger or a stand beside the bend',
  }),
  'checks.first-support-bend.no-limit': () => ({
    message: 'no distance between bends and supports is given',
    wanted: 'give the distance the specification asks for',
  }),
  'checks.first-support-bend.no-place': () => ({ message: 'the lines have no bends' }),
} as const satisfies Sentences;
