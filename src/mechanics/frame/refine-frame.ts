import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameCondition, FrameMember, FramePipe } from '../../model/frame/frame.js';
import { between, norm, subtract } from '../../model/vector.js';
import { tubeSection } from './elements/tube-section.js';
import { massPerLength } from './present-mass.js';

/** Pieces a half wave is cut into: its frequency is then within half a percent [-]. */
const PIECES_PER_HALF_WAVE = 2;
/** Pieces of one pipe at most [-]. */
const MOST_PIECES = 64;

/**
 * The same frame with long straight pipes cut into pieces, short enough for their own waves up to a frequency. Static
 * answers are the same to rounding; vibrations between two points need points between them.
 *
 *     half wave l of frequency f:  f = (π / 2 l²) √(E I / m)     pieces of l / 2
 *
 * @param frame - the frame
 * @param condition - contents and covering, for the mass
 * @param highest - frequency up to which waves are followed [Hz]
 * @returns a frame with further points and members; those of the frame keep their names, but for pipes that were cut
 * @source beam-theory
 */
export function refineFrame(frame: Frame, condition: FrameCondition, highest: number): Frame {
  const points: Record<string, Vec3> = { ...frame.points };
  const members = frame.members.flatMap((member): readonly FrameMember[] => {
    if (member.kind !== 'pipe') return [member];
    const count = pieceCount(frame, member, condition, highest);
    if (count < 2) return [member];
    const [from, to] = [frame.points[member.from]!, frame.points[member.to]!];
    const name = (piece: number) =>
      piece === 0 ? member.from : piece === count ? member.to : pieceEnd(member.name, piece, count);
    for (let piece = 1; piece < count; piece++) points[name(piece)] = between(from, to, piece / count);
    return Array.from({ length: count }, (_, piece) => ({
      ...member,
      name: `${member.name}, piece ${piece + 1} of ${count}`,
      from: name(piece),
      to: name(piece + 1),
    }));
  });
  return { ...frame, points, members };
}

/**
 * Name of the point where a piece of a cut pipe ends.
 *
 * @param member - name of the pipe
 * @param piece - number of the piece, from 1 [-]
 * @param count - pieces of the pipe [-]
 * @returns for example `straight 3, 1 of 4`
 * @source common-practice
 */
export function pieceEnd(member: string, piece: number, count: number): string {
  return `${member}, ${piece} of ${count}`;
}

/**
 * In how many pieces a pipe was cut, told by the points that movements are known of.
 *
 * @param member - name of the pipe
 * @param names - movements by point
 * @returns 1 where it was not cut [-]
 * @source common-practice
 */
export function piecesOf(member: string, names: Readonly<Record<string, unknown>>): number {
  for (let count = 2; count <= MOST_PIECES; count++) if (pieceEnd(member, 1, count) in names) return count;
  return 1;
}

function pieceCount(frame: Frame, member: FramePipe, condition: FrameCondition, highest: number): number {
  const bending = frame.materials[member.material]!.modulus * tubeSection(member.tube).inertia;
  const mass = massPerLength(member, condition);
  const length = norm(subtract(frame.points[member.to]!, frame.points[member.from]!));
  if (!(mass > 0 && highest > 0)) return 1;
  const halfWave = Math.sqrt((Math.PI / (2 * highest)) * Math.sqrt(bending / mass));
  return Math.min(MOST_PIECES, Math.ceil((PIECES_PER_HALF_WAVE * length) / halfWave - 1e-9));
}
