import { findTee, nominalInches, teeBranches } from '../../catalog/index.js';
import type { Part, TeePart, Vec3 } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { Tee, WalkStep } from '../schema/piping.js';
import { isAcross, isSame, opposite } from '../vectors.js';
import { catalogued, given, placeholder } from './input-context.js';
import type { Pipe } from './resolve-pipe.js';
import { partBase, type Step, type Stepped, type Walking } from './walking.js';

/** Walks the side leg; handed in, because a walk holds tees and a tee holds a walk. */
export type WalkSide = (
  walking: Walking,
  walk: readonly WalkStep[],
  start: { readonly path: Path; readonly travel: Vec3; readonly pipe: Pipe },
) => readonly Part[];

/**
 * A tee and its side leg. Entered by the run, the walk goes straight on and the side leg leaves across it; entered by
 * the branch, the walk turns into the run and the side leg goes the other way.
 *
 * @param step - the step [-]
 * @param walkSide - walks the side leg [-]
 * @returns part, and the direction and pipe behind it [-]
 */
export function resolveTee(step: Step<'tee'>, walkSide: WalkSide): Stepped {
  const { walking, path, pipe, file } = step;
  const name = walking.name('tee');
  const enterBy = file['enter-by'] ?? 'run';
  const sidePath: Path = [...path, 'side'];
  const { turn, side } = enterBy === 'run' ? directionsByRun(step) : directionsByBranch(step);
  const resize = (): Pipe =>
    file.side.size === undefined && file.side.schedule === undefined
      ? pipe
      : pipe.resized(file.side.size ?? pipe.section.nps ?? '', file.side.schedule, [...sidePath, 'size']);
  const sidePipe = resize();
  walking.materials.add(sidePipe.section.material);
  // Entered by the branch, both legs of the run have the size of the side leg.
  const run = enterBy === 'run' ? pipe : sidePipe;
  const branch = enterBy === 'run' ? sidePipe : pipe;
  const sizes = teeSizes(step, run, branch);
  const walk = walkSide(walking, file.side.walk, {
    path: [...sidePath, 'walk'],
    travel: side,
    pipe: sidePipe,
  });
  const part: TeePart = {
    kind: 'tee',
    ...partBase(name, pathText(path), pipe),
    enterBy,
    turn,
    ...sizes,
    branchSection: branch.section,
    runSection: run.section,
    side: {
      direction: side,
      section: sidePipe.section,
      ...(sidePipe.covering && { covering: sidePipe.covering }),
      walk,
    },
    make: makeOf(step, name),
  };
  return { part, travel: turn, pipe: enterBy === 'run' ? pipe : run };
}

interface TeeDirections {
  readonly turn: Vec3;
  readonly side: Vec3;
}

function directionsByRun({ walking, path, travel, file }: Step<'tee'>): TeeDirections {
  const { reading } = walking;
  if (file.turn !== undefined && !isSame(file.turn, travel))
    reading.report('input.tee-turn-by-run', [...path, 'turn']);
  const side = file.side.direction;
  if (side === undefined)
    reading.report('input.missing', [...path, 'side', 'direction'], { key: 'direction' }, 'holder');
  else if (!isAcross(side, travel)) reading.report('input.tee-not-across', [...path, 'side', 'direction']);
  return { turn: travel, side: side ?? travel };
}

function directionsByBranch({ walking, path, travel, file }: Step<'tee'>): TeeDirections {
  const { reading } = walking;
  const turn = file.turn;
  if (turn === undefined) reading.report('input.missing', [...path, 'turn'], { key: 'turn' }, 'holder');
  else if (!isAcross(turn, travel)) reading.report('input.tee-not-across', [...path, 'turn']);
  const side = opposite(turn ?? travel);
  if (turn !== undefined && file.side.direction !== undefined && !isSame(file.side.direction, side))
    reading.report('input.tee-side-by-branch', [...path, 'side', 'direction']);
  return { turn: turn ?? travel, side };
}

function teeSizes(
  step: Step<'tee'>,
  run: Pipe,
  branch: Pipe,
): Pick<TeePart, 'centreToRunEnd' | 'centreToBranchEnd' | 'mass'> {
  const { walking, path, file } = step;
  const nps = run.section.nps ?? '';
  const branchNps = branch.section.nps ?? '';
  const found = findTee({ nps, branchNps, schedule: run.schedule ?? '', material: run.tableMaterial });
  const toRun = file['centre-to-run-end'];
  const toBranch = file['centre-to-branch-end'];
  const complete = toRun !== undefined && toBranch !== undefined && file.weight !== undefined;
  if (!complete && !found && run.section.name !== '' && branch.section.name !== '') {
    const larger = (nominalInches(branchNps) ?? 0) > (nominalInches(nps) ?? 0);
    const code = larger ? 'input.branch-over-run' : 'input.tee-not-listed';
    walking.reading.report(code, path, {
      run: run.section.name,
      branch: branch.section.name,
      words: teeBranches(nps),
    });
  }
  return {
    centreToRunEnd:
      toRun === undefined
        ? found
          ? catalogued(found.centreToRunEnd)
          : placeholder
        : given(toRun, [...path, 'centre-to-run-end']),
    centreToBranchEnd:
      toBranch === undefined
        ? found
          ? catalogued(found.centreToBranchEnd)
          : placeholder
        : given(toBranch, [...path, 'centre-to-branch-end']),
    mass:
      file.weight === undefined
        ? found
          ? catalogued(found.mass)
          : placeholder
        : given(file.weight, [...path, 'weight'], file),
  };
}

function makeOf({ walking, path, file }: Step<'tee'>, name: string): NonNullable<Tee['make']> {
  if (file.make !== undefined) return file.make;
  walking.reading.assumeAlike('tee', name, [...path, 'make'], {
    what: 'make',
    value: 'welding tee',
    citation: { source: 'asme-b16.9', clause: 'factory-made tee', confidence: 'common practice' },
    effect: 'A branch cut into the pipe is stressed higher',
  });
  return 'welding tee';
}
