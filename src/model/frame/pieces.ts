import type { Covering, PipeSection } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { BendFactors } from '../layout/layout.js';
import type { FrameBody, FrameJoint, FrameMember, FrameSupport } from './frame.js';

/** What the parts of an installation become in the frame, collected. */
export interface Pieces {
  readonly points: Record<string, Vec3>;
  readonly members: FrameMember[];
  readonly bodies: FrameBody[];
  readonly joints: FrameJoint[];
  readonly supports: FrameSupport[];
  readonly memberInfo: Record<
    string,
    { line: string; part: string; section: PipeSection; covering?: Covering }
  >;
  readonly bendFactors: Record<string, BendFactors>;
}
