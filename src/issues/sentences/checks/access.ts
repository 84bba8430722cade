import type { Sentences } from '../sentence.js';

/** What stands in the way, where something does, and which way it would have to go, where it can. */
type InTheWay = { readonly obstacle?: string; readonly way?: string };

/** What stands there, and which way it would have to go. */
const what = (data: InTheWay): string => nameOf(data, 'what stands nearest');
const nameOf = (data: InTheWay, otherwise: string): string => data.obstacle || otherwise;
const remedy = (data: InTheWay, otherwise: string): string =>
  data.way === undefined ? otherwise : `move ${what(data)} ${data.way}, or ${otherwise}`;

/** Reasons, advice and remarks of the checks of room, service spaces and lift. */
export const accessCheckSentences = {
  'checks.access.no-room': () => ({
    message: 'nothing of the room is described, so nothing can be said to be in the way or out of it',
    wanted: 'give walls, panels, ducts and pipes near the pump as objects of the room',
  }),
  'checks.access.no-walls': () => ({
    message: 'the room has no walls in the file',
    wanted: 'give the walls round the pump as objects of the room, of the kind wall',
  }),

  'checks.motor-withdrawal.exceeds': (data: InTheWay) => ({
    message: `${what(data)} leaves too little height over the motor to draw it`,
    wanted: remedy(
      data,
      'lower the pump, or agree with the manufacturer on another way of drawing the motor',
    ),
    hint: "the manufacturer's lifting instructions and whoever plans the lift decide",
  }),
  'checks.motor-withdrawal.clash': (data: InTheWay) => ({
    message: `${what(data)} reaches into the motor`,
    wanted: remedy(data, 'move the pump'),
    hint: 'check both levels against the drawings first',
  }),
  'checks.motor-withdrawal.no-height': () => ({
    message: 'the clear height needed to draw the motor is not given',
    wanted: "give the manufacturer's withdrawal height of the motor, from its top",
  }),
  'checks.motor-withdrawal.no-ceiling': () => ({
    message: 'neither a ceiling nor anything over the motor is given',
    wanted: 'give the level of the underside of the structure, and of ducts and pipes over the motor',
  }),
  'checks.motor-withdrawal.free': (data: InTheWay) => ({ message: `up to ${what(data)} it is free` }),
  'checks.motor-withdrawal.no-gear': () => ({
    message: 'the file does not say what sling and hoist take up under the anchor',
    wanted: 'give the sling and the hoist height of the lift, pulled up',
  }),
  'checks.motor-withdrawal.gear': () => ({
    message: 'sling, hook and hoist take up more height than there is under the anchor with the motor drawn',
    wanted: 'raise the anchor, or use a shorter sling, a spreader or a hoist of less headroom',
    hint: 'a shorter sling pulls harder: look at the angle of its legs',
  }),
  'checks.motor-withdrawal.gear-fits': () => ({
    message: 'motor drawn, sling, hook and hoist fit under the anchor',
  }),
  'checks.motor-withdrawal.anchor-low': () => ({
    message: 'the anchor lies below the lifting eyes of the motor',
    wanted: 'check the elevation of the anchor',
  }),
  'checks.motor-withdrawal.sling': (data: InTheWay) => ({
    message: `the sling strikes ${what(data)} before the motor is drawn`,
    wanted: remedy(data, 'use a spreader or a shorter sling'),
  }),
  'checks.motor-withdrawal.hoist': (data: InTheWay) => ({
    message: `${what(data)} stands between the anchor and the motor`,
    wanted: remedy(data, 'move the anchor'),
  }),
  'checks.motor-withdrawal.no-place': () => ({ message: 'there is no motor' }),

  'checks.seal-through-spacer.exceeds': () => ({
    message: 'the seal is longer than the spacer, so the motor must be lifted to change it',
    wanted: 'choose a longer spacer, or plan every seal change as a lift of the motor',
  }),
  'checks.seal-through-spacer.unknown': () => ({
    message: 'the file does not say how long spacer and seal are',
    wanted: "give both from the manufacturer's drawing: pump dimensions, spacer",
    hint: 'they decide whether a seal is changed without lifting the motor',
  }),
  'checks.seal-through-spacer.passes': () => ({
    message: 'the seal is changed without lifting the motor: lower and prop the rotor, take the spacer out',
  }),
  'checks.seal-through-spacer.no-place': () => ({
    message: 'a close-coupled pump has no spacer: the motor is drawn for every seal',
  }),

  'checks.coupling-space.exceeds': (data: InTheWay) => ({
    message: `${what(data)} leaves too little room beside the coupling`,
    wanted: remedy(data, 'turn the bracket so that its window faces another side'),
  }),
  'checks.coupling-space.unknown': () => ({
    message: 'the room needed to draw coupling and seal is not given',
    wanted: "give the window of the coupling, and the manufacturer's room beside it as a service space",
  }),
  'checks.coupling-space.free': (data: { side: string }) => ({
    message: `on the ${data.side} side it is free`,
  }),
  'checks.coupling-space.no-place': () => ({ message: 'a close-coupled pump has no coupling' }),

  'checks.wrench-room.exceeds': (data: InTheWay) => ({
    message: `${what(data)} stands too near to the coupling for tools`,
    wanted: remedy(data, 'agree with the manufacturer on tools that need less room'),
  }),
  'checks.wrench-room.unknown': () => ({
    message: 'the room needed for tools round the coupling is not given',
    wanted: 'give the window of the coupling, and a service space for wrench room',
  }),
  'checks.wrench-room.free': (data: InTheWay) => ({ message: `${what(data)} is nearest` }),
  'checks.wrench-room.no-place': () => ({ message: 'a close-coupled pump has no coupling' }),

  'checks.handle-sweep.exceeds': (data: InTheWay) => ({
    message: `the handle strikes ${what(data)}`,
    wanted: remedy(data, 'turn the stem to another side, or use a gear with a wheel'),
  }),
  'checks.handle-sweep.unknown': () => ({
    message: 'the valve or its handle is not where the file says',
    wanted: 'give side, distance, reach, depth and angle of the handle',
  }),
  'checks.handle-sweep.free': (data: InTheWay) => ({ message: `${what(data)} is nearest` }),
  'checks.handle-sweep.alone': () => ({ message: 'nothing stands near' }),
  'checks.handle-sweep.no-place': () => ({ message: 'no handle is described' }),

  'checks.fitting-reach.exceeds': (data: InTheWay) => ({
    message: `${what(data)} stands in front of it`,
    wanted: remedy(data, 'bring the fitting to where it can be reached'),
  }),
  'checks.fitting-reach.unknown': () => ({
    message: 'the fitting or the room in front of it is not where the file says',
    wanted: 'give side, width, depth and height of the room in front of it',
  }),
  'checks.fitting-reach.free': (data: InTheWay) => ({ message: `${what(data)} is nearest` }),
  'checks.fitting-reach.no-place': () => ({
    message: 'no room in front of a drain, vent or gauge is asked for',
  }),

  'checks.working-space.exceeds': (data: InTheWay) => ({
    message: `no side of the pump has the level space to work in; ${what(data)} is nearest to the best of them`,
    wanted: 'keep a level space beside the pump free from the floor up',
    hint: 'the local code and its authority decide',
  }),
  'checks.working-space.no-floor': () => ({
    message: 'the elevation of the floor is not given',
    wanted: 'give the floor of the room',
  }),
  'checks.working-space.free': (data: { side: string }) => ({ message: `it lies ${data.side} of the pump` }),
  'checks.working-space.no-place': () => ({ message: 'there is no pump to stand beside' }),

  'checks.lift-anchor.off-centre': () => ({
    message: 'the anchor stands off the centre line of the motor',
    wanted: 'hang the hoist on a trolley or beam over the centre line; never pull sideways on the eyes',
    hint: 'a competent person chooses and checks anchor and structure',
  }),
  'checks.lift-anchor.exceeds': () => ({
    message: "the motor times the owner's factor is heavier than the anchor is rated for",
    wanted: 'use an anchor and hoist of a higher rating',
    hint: 'a competent person chooses and checks anchor and structure',
  }),
  'checks.lift-anchor.unknown': () => ({
    message: 'the file does not say what the motor is lifted from',
    wanted: 'give the lift of the room: anchor, rating, hoist height, sling',
  }),
  'checks.lift-anchor.no-factor': () => ({
    message: "rating or owner's factor of the lift is not given",
    wanted: "give both; the factor is the owner's, none is assumed",
  }),
  'checks.lift-anchor.no-place': () => ({ message: 'there is no motor to lift' }),

  'checks.sling-legs.flat': () => ({
    message: 'the legs of the sling lie flatter than 30° from the level',
    wanted: 'use a longer sling, or a spreader beam',
  }),
  'checks.sling-legs.steep': () => ({
    message: 'the first number is the flattest angle allowed, the second the angle as rigged',
  }),
  'checks.sling-legs.exceeds': () => ({
    message: "a leg of the sling pulls harder, times the owner's factor, than it is rated for",
    wanted: 'use a stronger or steeper sling',
  }),
  'checks.sling-legs.no-rating': () => ({
    message: 'the rating of a leg of the sling is not given',
    wanted: 'read it from the tag of the sling',
  }),
  'checks.sling-legs.no-place': () => ({ message: 'no sling is described' }),

  'checks.hand-lift.exceeds': () => ({
    message: 'this is heavier than one person lifts by hand, even held close',
    wanted: 'lift it with gear, or with more than one person where the piece allows it',
    hint: 'who plans the work decides; reaching over a pipe lowers what may be lifted',
  }),
  'checks.hand-lift.ideal': () => ({
    message: 'held close, at knuckle height, without turning; less in any other posture',
  }),
  'checks.hand-lift.at-height': () => ({
    message:
      'held close, at the height of the coupling over the floor, without turning; less where one reaches',
  }),
  'checks.hand-lift.too-high': () => ({
    message: 'the coupling is higher over the floor than anything is lifted by hand',
    wanted: 'work from a platform, or lift it with gear',
  }),
  'checks.hand-lift.no-place': () => ({ message: 'no weight of a piece is given' }),

  'checks.casing-lift-out.exceeds': (data: InTheWay) => ({
    message: `${what(data)} stops the casing as it is lifted out`,
    wanted: remedy(data, 'make a piece of the line above it come off with flanges'),
  }),
  'checks.casing-lift-out.unknown': () => ({
    message: 'how far the casing must be lifted is not given',
    wanted: "give the manufacturer's or the owner's height as a service space for casing lift-out",
  }),
  'checks.casing-lift-out.no-ceiling': () => ({
    message: 'neither a ceiling nor anything over the casing is given',
    wanted: 'give the level of the underside of the structure',
  }),
  'checks.casing-lift-out.free': (data: InTheWay) => ({ message: `up to ${what(data)} it is free` }),
  'checks.casing-lift-out.no-place': () => ({ message: 'there is no casing' }),

  'checks.way-out.exceeds': (data: InTheWay) => ({
    message: `the way out is too narrow at ${nameOf(data, 'its narrowest place')}`,
    wanted: 'widen it there, or plan how the motor is taken over or round it',
  }),
  'checks.way-out.opening': () => ({
    message: 'the opening is too narrow for the motor or for a passage',
    wanted: 'give another opening, or plan how the motor is turned to pass it',
  }),
  'checks.way-out.unknown': () => ({
    message: 'the file does not say where the motor is taken out of the room',
    wanted: 'give the floor, and the way out: its place and width',
  }),
  'checks.way-out.tight': (data: InTheWay) => ({
    message: `the way is so nearly as narrow as asked at ${nameOf(data, 'its narrowest place')} that the search cannot tell`,
    wanted: 'measure it there',
  }),
  'checks.way-out.free': () => ({ message: 'there is a way of this width' }),
  'checks.way-out.no-place': () => ({ message: 'there is no motor' }),

  'checks.aisle-width.exceeds': (data: InTheWay) => ({
    message: `${what(data)} stands in the aisle`,
    wanted: remedy(data, 'move the aisle'),
  }),
  'checks.aisle-width.free': (data: InTheWay) => ({ message: `${what(data)} is nearest` }),
  'checks.aisle-width.no-place': () => ({ message: 'no aisle is asked for' }),
} as const satisfies Sentences;
