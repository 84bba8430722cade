import type { FrameBend, FrameCondition, FrameMass, FramePipe } from '../../model/frame/frame.js';
import { tubeSection } from './elements/tube-section.js';

/**
 * Mass of one length of member in a condition: metal, contents unless drained, covering where it is on.
 *
 * @param member - pipe or bend
 * @param condition - density [kg/m³], drained groups, covering
 * @returns mass per length [kg/m]
 * @source statics
 */
export function massPerLength(member: FramePipe | FrameBend, condition: FrameCondition): number {
  const { metal, covering } = member.mass;
  const isFull = condition.contentsDensity > 0 && !condition.drained.includes(member.contentsGroup);
  const contents = isFull ? tubeSection(member.tube).bore * condition.contentsDensity : 0;
  return metal + (condition.covering ? covering : 0) + contents;
}

/**
 * Mass of a lump on a body in a condition.
 *
 * @param lump - mass [kg] and volume of contents [m³]
 * @param condition - density [kg/m³], drained groups, covering
 * @returns mass [kg]
 * @source statics
 */
export function lumpMass(lump: FrameMass, condition: FrameCondition): number {
  if (lump.covering === true && !condition.covering) return 0;
  const isFull = condition.contentsDensity > 0 && !condition.drained.includes(lump.contentsGroup);
  return lump.mass + (isFull ? lump.contents * condition.contentsDensity : 0);
}
