/** What moves in a natural vibration, in words a fitter finds on the line. */
import { type PumpMode, pumpModes } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import { movedMovement } from '../../mechanics/frame/elements/rigid-arm.js';
import type { Vec3 } from '../../model/conventions.js';
import { motorPoint } from '../../model/frame/pump-body.js';
import { norm, subtract } from '../../model/vector.js';

/** Share of the largest movement from which the motor's top is what one sees moving [-]. */
const MOTOR_LEADS = 0.6;
/** Share of the larger component from which a movement counts as oblique [-]. */
const OBLIQUE = 0.5;

/**
 * What moves most in a vibration.
 *
 * @param found - the vibration
 * @param subject - layout, for names and lines
 * @returns for example `the motor top sways east and west`
 */
export function modeWords(found: PumpMode, subject: Subject): string {
  const { layout, installation } = subject;
  const { shape } = found.mode;
  const foot = motorPoint(layout.frame.points);
  const seat = shape[foot];
  const places = Object.entries(shape).map(([name, { translation }]) => ({
    name,
    translation,
    size: norm(translation),
  }));
  const [first] = [...places].sort((a, b) => b.size - a.size || (a.name < b.name ? -1 : 1));
  if (first === undefined) return 'nothing moves';
  const place = layout.frame.points[foot];
  if (seat !== undefined && place !== undefined && found.counts) {
    const { position, outline } = installation.pump;
    const top: Vec3 = [position[0], position[1], position[2] + outline.motorTop.value];
    const moved = movedMovement(seat, subtract(top, place)).translation;
    const reach = norm(subtract(layout.nozzles.suction.at, layout.nozzles.discharge.at)) / 2;
    const turned = Math.abs(seat.rotation[2]) * reach;
    if (turned > norm(moved) && turned >= MOTOR_LEADS * first.size) return 'the pump twists about its shaft';
    if (norm(moved) >= MOTOR_LEADS * first.size) {
      return Math.abs(moved[2]) > Math.hypot(moved[0], moved[1])
        ? 'the pump moves up and down'
        : `the motor top sways ${directionWords(moved)}`;
    }
  }
  if (found.counts && first.name.startsWith('pump '))
    return `the pump moves ${directionWords(first.translation)}`;
  const pumpToo = found.counts ? ', and the pump with it' : '';
  return `the pipe moves ${directionWords(first.translation)} at ${placeName(first.name)}${pumpToo}`;
}

/** Words for a swing to and fro, by its largest components. */
function directionWords([east, north, up]: Vec3): string {
  const sizes = [Math.abs(east), Math.abs(north), Math.abs(up)] as const;
  const level = Math.max(sizes[0], sizes[1]);
  if (sizes[2] > level) return level > OBLIQUE * sizes[2] ? 'up and down, aslant' : 'up and down';
  const slant = Math.min(sizes[0], sizes[1]) > OBLIQUE * level;
  const words = slant
    ? east * north > 0
      ? 'north-east and south-west'
      : 'north-west and south-east'
    : sizes[0] > sizes[1]
      ? 'east and west'
      : 'north and south';
  return sizes[2] > OBLIQUE * level ? `${words}, aslant` : words;
}

/** `elbow 2 far end` is elbow 2, `straight 5, 2 of 4` lies along straight 5. */
const placeName = (point: string): string =>
  point.replace(/ (near|far) end$/u, '').replace(/, \d+ of \d+$/u, '');

/**
 * The vibrations worth a picture: of those that move the pump the nearest to running speed, or within a drive's range
 * the one that moves it most, and the lowest besides.
 *
 * @param subject - frequencies and speeds
 * @returns at most two
 */
export function shownModes(subject: Subject): readonly PumpMode[] {
  const modes = pumpModes(subject);
  const { speed, speeds } = subject.installation.pump.motor;
  const turns = (at: number): number => at / (2 * Math.PI);
  const counting = modes.filter(({ counts }) => counts);
  const inRange = counting.filter(
    ({ mode }) =>
      speeds !== undefined &&
      mode.frequency >= turns(speeds.lowest) &&
      mode.frequency <= turns(speeds.highest),
  );
  const nearest = [...(inRange.length > 0 ? inRange : counting)].sort((a, b) =>
    inRange.length > 0
      ? b.share - a.share
      : Math.abs(a.mode.frequency - turns(speed)) - Math.abs(b.mode.frequency - turns(speed)),
  )[0];
  const lowest = modes.find((mode) => mode !== nearest);
  return [...(nearest === undefined ? [] : [nearest]), ...(lowest === undefined ? [] : [lowest])];
}
