import type { EndPart } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { WalkStep } from '../schema/piping.js';
import { type InputContext, offsetVector, practice } from './input-context.js';
import type { Pipe } from './resolve-pipe.js';
import { resolveAnchorStructure } from './resolve-structure.js';
import { partBase, type Walking } from './walking.js';

type FileEnd = Exclude<NonNullable<WalkStep['end']>, string>;

/**
 * What stands at the end of a walk.
 *
 * @param walking - what the whole installation shares [-]
 * @param end - content of `end` [-]
 * @param at - path of the step, and the pipe there [-]
 * @returns part [-]
 */
export function resolveEnd(
  walking: Walking,
  end: NonNullable<WalkStep['end']>,
  at: { readonly path: Path; readonly pipe: Pipe },
): EndPart {
  const path: Path = [...at.path, 'end'];
  const base = { kind: 'end' as const, ...partBase(walking.name('end'), pathText(path), at.pipe) };
  const anchors = (file: NonNullable<FileEnd['anchored']>['structure'] | undefined) => {
    const structure = resolveAnchorStructure(walking.reading, file, {
      path: [...path, 'anchored', 'structure'],
      mark: base.name,
      alike: walking.assumed,
    });
    return structure === undefined ? {} : { structure };
  };
  if (typeof end === 'string') return { ...base, end, ...(end === 'anchored' && anchors(undefined)) };
  const { continues, anchored } = end;
  if (continues) return { ...base, end: 'continues', stiffness: stiffnessBeyond(continues) };
  return {
    ...base,
    end: 'anchored',
    ...anchorMovement(walking.reading, anchored ?? {}, [...path, 'anchored']),
    ...anchors(anchored?.structure),
  };
}

function stiffnessBeyond({
  translation,
  rotation,
}: NonNullable<FileEnd['continues']>): NonNullable<EndPart['stiffness']> {
  return {
    translation:
      typeof translation === 'number'
        ? [translation, translation, translation]
        : [translation.east, translation.north, translation.up],
    rotation: [rotation, rotation, rotation],
  };
}

function anchorMovement(
  reading: InputContext,
  file: NonNullable<FileEnd['anchored']>,
  path: Path,
): Pick<EndPart, 'movement'> {
  const hot = file['hot-movement'];
  const cold = file['cold-movement'];
  if (!hot && !cold && file.structure) return {};
  if (!hot && !cold)
    reading.report('input.missing', [...path, 'hot-movement'], { key: 'hot-movement' }, 'holder');
  else if (!hot || !cold) {
    const key = hot ? 'cold' : 'hot';
    reading.assume([...path, `${key}-movement`], {
      what: `movement of the anchor when ${key}`,
      value: 'none',
      citation: practice('none where only one is said'),
      effect: 'Displacement stresses and nozzle loads of the line',
    });
  }
  return { movement: { hot: offsetVector(hot ?? {}), cold: offsetVector(cold ?? {}) } };
}
