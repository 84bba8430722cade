import type { PipeSection } from '../../input/installation.js';
import type { Subject } from '../subject.js';
import { partsOfLines } from './parts-of-lines.js';

/** A pipe of one size, wall and material in one line. */
export interface PipeInLine {
  readonly line: string;
  readonly section: PipeSection;
}

/**
 * The different pipes of every line, each once, in the order of the frame. The tapered steps of a reducer are left out:
 * its two ends are pipes of the line.
 *
 * @param subject - installation and layout
 * @returns pipes by line
 */
export function pipesInLines({ installation, layout }: Subject): readonly PipeInLine[] {
  const reducers = new Set(
    partsOfLines(installation).flatMap(({ kind, name }) => (kind === 'reducer' ? [name] : [])),
  );
  const found = new Map<string, PipeInLine>();
  for (const member of layout.frame.members) {
    const info = layout.memberInfo[member.name];
    if (info === undefined || reducers.has(info.part)) continue;
    const { name, material } = info.section;
    const key = [info.line, name, material].join(' | ');
    if (!found.has(key)) found.set(key, { line: info.line, section: info.section });
  }
  return [...found.values()];
}
