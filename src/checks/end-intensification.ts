import type { Part } from '../input/installation.js';
import type { FrameMember } from '../model/frame.js';
import type { Subject } from './finding.js';

/**
 * Stress intensification of fillet-welded slip-on flanges, threaded joints and reducers: the upper values of the
 * older appendix D of ASME B31.1, from memory [-].
 */
const SLIP_ON = 2.1;
const THREADED = 2.3;
const REDUCER = 2;

/** Stress intensification at the two ends of a member and between them [-]. */
export interface MemberIntensification {
  readonly from: number;
  readonly to: number;
  readonly between: number;
}

/**
 * Stress intensification of every member: bends all along, tees at their crossing, reducers all along, slip-on flanges
 * and threaded valves where the pipe enters them; plain pipe and butt welds 1.
 *
 * A branch is judged with its own section modulus. Where the run is as thick as the branch or thicker, the code's
 * effective modulus is no smaller, so this is the safe side.
 *
 * @param subject - installation and layout
 * @returns factors by member name [-]
 */
export function memberIntensifications(subject: Subject): Readonly<Record<string, MemberIntensification>> {
  const { layout } = subject;
  const parts = new Map(
    subject.installation.lines.flatMap(({ walk }) => everyPart(walk)).map((part) => [part.name, part]),
  );
  const bends = new Map(
    layout.bends.flatMap((bend) => bend.members.map((name) => [name, bend.factors.intensification])),
  );
  const joints = jointPoints(subject, parts);
  return Object.fromEntries(
    layout.frame.members.map((member) => {
      const part = parts.get(layout.memberInfo[member.name]?.part ?? '');
      const along = bends.get(member.name) ?? (part?.kind === 'reducer' ? REDUCER : 1);
      const end = (point: string): number =>
        Math.max(along, joints.get(point) ?? 1, teeAt(subject, member, point));
      return [member.name, { from: end(member.from), to: end(member.to), between: along }];
    }),
  );
}

function teeAt({ layout }: Subject, member: FrameMember, point: string): number {
  const tee = layout.tees.find(
    (candidate) => candidate.point === point && candidate.members.includes(member.name),
  );
  return tee?.intensification ?? 1;
}

/** Points where pipe enters a slip-on flange or a threaded valve, with their factor. */
function jointPoints(subject: Subject, parts: ReadonlyMap<string, Part>): ReadonlyMap<string, number> {
  const points = new Map<string, number>();
  for (const body of subject.layout.frame.bodies) {
    const part = parts.get(body.name);
    const factor =
      part?.kind === 'flange' && part.type === 'slip-on'
        ? SLIP_ON
        : part?.kind === 'valve' && part.ends === 'threaded'
          ? THREADED
          : 1;
    if (factor > 1) for (const point of body.points) points.set(point, factor);
  }
  return points;
}

function everyPart(walk: readonly Part[]): readonly Part[] {
  return walk.flatMap((part) => (part.kind === 'tee' ? [part, ...everyPart(part.side.walk)] : [part]));
}
