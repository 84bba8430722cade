import type { IssueData, Sentences } from './sentence.js';

const list = (data: IssueData, key: string): string => {
  const value = data[key];
  if (!Array.isArray(value)) return String(value ?? '');
  return value.map((name) => `"${name}"`).join(', ');
};

/** Sentences of the mechanics and of the algebra under it. */
export const mechanicsSentences = {
  'mechanics.mechanism': (data: { condition: string; movement: string; held: string }) => ({
    message: `condition "${data.condition}": the line ${data.movement} and ${
      data.held === 'loose' ? 'has no support at all' : 'no support stops it'
    }; ${list(data, 'points')} move most`,
    wanted: 'every piece of the line held against movement in three directions and turning about three',
    hint: 'add a guide, a stop or an anchor near these points, or check that an end meant to be anchored is',
  }),
  'mechanics.supports-conflict': (data: { condition: string; by: number }) => ({
    message: `condition "${data.condition}": ${list(data, 'supports')} hold one rigid part against itself; their positions differ by ${data.by} m and nothing between them can give`,
    wanted: 'supports of one rigid part that fit each other, or one of them with a stiffness',
    hint: 'give the stiffness of the steel or concrete under one of them, or take away an imposed movement',
  }),
  'mechanics.contact-alternates': (data: { condition: string; rounds: number }) => ({
    message: `condition "${data.condition}": no steady state was found in ${data.rounds} rounds; ${list(data, 'supports')} keep changing between acting and not acting`,
    wanted: 'supports that either act or do not',
    hint: 'leave out the friction or the gap of one of them, or give it a stiffness, and solve again',
  }),
  'mechanics.joint-alternates': (data: { condition: string; rounds: number }) => ({
    message: `condition "${data.condition}": no steady state was found in ${data.rounds} rounds; joints ${list(data, 'joints')} keep changing between free play and holding`,
    wanted: 'joints whose rods are either slack or engaged and whose bending is either free or at its limit',
    hint: 'give the joint its bending stiffness, or take it as rigid and solve again',
  }),
  'mechanics.swing-unsettled': (data: { condition: string; rounds: number }) => ({
    message: `condition "${data.condition}": in ${data.rounds} rounds no loads were found with which the rods of ${list(data, 'supports')} both carry and hold sideways`,
    wanted: 'rods much longer than the sideways movement of what they carry',
    hint: 'check the length of these rods, or hold the line sideways by a guide',
  }),
  'mechanics.energy': (data: { condition: string; error: number; limit: number }) => ({
    message: `condition "${data.condition}": the work of what acts and the work taken up differ by ${data.error} of their sum, more than ${data.limit}`,
    wanted: 'a frame whose stiffest and softest parts differ less',
    hint: 'look for very short members, very soft joints or supports with a stiffness near zero',
  }),
  'mechanics.unbalanced': (data: { condition: string; residual: number; limit: number }) => ({
    message: `condition "${data.condition}": what acts and what holds differ by ${data.residual} of the load, more than ${data.limit}`,
    wanted: 'a frame whose stiffest and softest parts differ less',
    hint: 'look for very short members, very soft joints or supports with a stiffness near zero',
  }),
  'mechanics.unknown-name': (data: { at: string; name: string }) => ({
    message: `"${data.at}" names "${data.name}", which the frame does not hold`,
    wanted: 'the name of a point, material, support or body of the same frame',
  }),
  'mechanics.repeated-name': (data: { name: string }) => ({
    message: `the name "${data.name}" is given twice`,
    wanted: 'one name for each member, body, joint, support and condition',
  }),
  'mechanics.not-a-number': (data: { what: string }) => ({
    message: `${data.what}: not a finite number`,
    wanted: 'finite numbers in SI units',
  }),
  'mechanics.out-of-range': (data: { what: string; value: number }) => ({
    message: `${data.what}: ${data.value} cannot be`,
    wanted: 'a value that a real part can have, and directions of length one',
  }),
  'mechanics.no-length': (data: { member: string }) => ({
    message: `"${data.member}" begins and ends at the same place`,
    wanted: 'two different points',
  }),
  'mechanics.not-a-tube': (data: { member: string; wall: number; outsideDiameter: number }) => ({
    message: `"${data.member}": a wall of ${data.wall} m does not fit in an outside diameter of ${data.outsideDiameter} m`,
    wanted: 'a wall above zero and at most half the outside diameter',
  }),
  'mechanics.bend-impossible': (data: { member: string }) => ({
    message: `bend "${data.member}": no arc under half a circle about its centre joins its two ends`,
    wanted: 'two ends at the same distance from the centre, less than 180 degrees apart',
  }),
  'mechanics.body-without-point': (data: { body: string }) => ({
    message: `body "${data.body}" has no point`,
    wanted: 'at least one point where it is joined to the line',
  }),
  'mechanics.expansion-unknown': (data: { material: string; temperature: number }) => ({
    message: `the expansion of material "${data.material}" is not known at ${data.temperature} K`,
    wanted: 'a table of expansion with two rows or more that reaches to within 60 K of the temperature',
  }),
  'mechanics.load-on-nothing': (data: { condition: string; point: string }) => ({
    message: `condition "${data.condition}": a load acts on point "${data.point}", to which nothing is joined`,
    wanted: 'a load on a point of a member, body or joint that stands',
  }),
  'mechanics.rigid-group-too-large': (data: { nodes: number; limit: number }) => ({
    message: `${data.nodes} parts hang together by rigid directions of joints, more than ${data.limit}`,
    wanted: 'pipe between joints, or joints with a stiffness',
  }),
  'mechanics.rigid-loop': (data: { body: string; point: string }) => ({
    message: `the load of body "${data.body}" at point "${data.point}" cannot be told apart: rigid bodies close a loop there`,
    wanted: 'bodies that meet at one point only',
  }),
  'mechanics.not-of-body': (data: { point: string; body: string; condition: string }) => ({
    message: `point "${data.point}" is not a point of body "${data.body}", or the body is not there in condition "${data.condition}"`,
    wanted: 'a body that stands, and one of its points',
  }),
  'mechanics.not-a-chain': (data: IssueData) => ({
    message: `members ${list(data, 'members')} do not follow one another from end to end`,
    wanted: 'members in the order in which they are joined',
  }),
  'algebra.too-large': (data: { unknowns: number; limit: number }) => ({
    message: `the frame has ${data.unknowns} unknowns so far apart that more than ${data.limit} numbers would be kept`,
    wanted: 'a smaller frame, or fewer loops',
  }),
  'algebra.not-positive': (data: { row: number }) => ({
    message: `a small matrix that must be positive is not (row ${data.row})`,
    wanted: 'a member with a stiffness above zero in every direction',
  }),
  'algebra.not-converged': (data: { what: string; rounds: number }) => ({
    message: `${data.what} did not settle in ${data.rounds} rounds`,
    wanted: 'fewer frequencies, or a frame whose stiffest and softest parts differ less',
  }),
} as const satisfies Sentences;
