import type { Part } from '../../input/installation.js';
import { effectiveBranchModulus } from '../../mechanics/stress/branch-section-modulus.js';
import type { FrameMember } from '../../model/frame/frame.js';
import type { Subject } from '../subject.js';
import { partsOfLines } from './parts-of-lines.js';

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
  /** Effective section modulus where the member is the reduced branch of a tee, at that end [m³]. */
  readonly branch?: { readonly end: 'from' | 'to'; readonly modulus: number };
}

/**
 * Stress intensification of every member: bends all along, tees at their crossing, reducers all along, slip-on flanges
 * and threaded valves where the pipe enters them; plain pipe and butt welds 1.
 *
 * A branch smaller than its run is judged at the crossing with the effective section modulus of the code.
 *
 * @param subject - installation and layout
 * @returns factors by member name [-]
 */
export function memberIntensifications(subject: Subject): Readonly<Record<string, MemberIntensification>> {
  const { layout } = subject;
  const parts = new Map(partsOfLines(subject.installation).map((part) => [part.name, part]));
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
      const branch = reducedBranch(subject, member);
      const factors = { from: end(member.from), to: end(member.to), between: along };
      return [member.name, { ...factors, ...(branch && { branch }) }];
    }),
  );
}

function teeAt({ layout }: Subject, member: FrameMember, point: string): number {
  const tee = layout.tees.find(
    (candidate) => candidate.point === point && candidate.members.includes(member.name),
  );
  return tee?.intensification ?? 1;
}

/** The branch leg of a tee where it is smaller than the run. */
function reducedBranch({ layout }: Subject, member: FrameMember): MemberIntensification['branch'] {
  const tee = layout.tees.find(({ members }) => members.includes(member.name));
  if (tee === undefined) return undefined;
  const { branchSection, runSection } = tee.part;
  const isBranch = member.tube.outsideDiameter === branchSection.outsideDiameter;
  if (!isBranch || branchSection.outsideDiameter >= runSection.outsideDiameter) return undefined;
  const modulus = effectiveBranchModulus({
    branch: branchSection,
    runWall: runSection.wall,
    intensification: tee.intensification,
  });
  return { end: member.from === tee.point ? 'from' : 'to', modulus };
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
