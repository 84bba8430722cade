import type { Part, Vec3 } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { WalkStep } from '../schema/piping.js';
import { resolveDiffuser, resolveValve, resolveWeight } from './resolve-bodies.js';
import { resolveEnd } from './resolve-end.js';
import { resolveElbow, resolveReducer } from './resolve-fittings.js';
import { resolveFlange } from './resolve-flange.js';
import { resolveConnector, resolveCoupling } from './resolve-joints.js';
import type { Pipe } from './resolve-pipe.js';
import { fittingOf, resolveFitting } from './resolve-practice.js';
import { resolveSupport } from './resolve-support.js';
import { resolveTee } from './resolve-tee.js';
import { partBase, type Stepped, type Walking } from './walking.js';

/** Where a walk starts. */
interface Start {
  readonly path: Path;
  readonly travel: Vec3;
  readonly pipe: Pipe;
}

/**
 * Walks outward part by part, keeping direction and pipe.
 *
 * @param walking - what the whole installation shares [-]
 * @param walk - steps of the file [-]
 * @param start - path of the walk, direction and pipe it starts with [-]
 * @returns the parts in order [-]
 */
export function resolveWalk(walking: Walking, walk: readonly WalkStep[], start: Start): readonly Part[] {
  let { travel, pipe } = start;
  walking.materials.add(pipe.section.material);
  return walk.flatMap((step, index) => {
    const solid = (other: WalkStep): boolean => fittingOf(other) === undefined;
    const neighbours = {
      before: walk.slice(0, index).findLast(solid),
      after: walk.slice(index + 1).find(solid),
    };
    const stepped = takeStep(walking, step, { path: [...start.path, index], travel, pipe }, neighbours);
    travel = stepped?.travel ?? travel;
    pipe = stepped?.pipe ?? pipe;
    return stepped ? [stepped.part] : [];
  });
}

interface Neighbours {
  readonly before: WalkStep | undefined;
  readonly after: WalkStep | undefined;
}

function takeStep(walking: Walking, step: WalkStep, at: Start, neighbours: Neighbours): Stepped | undefined {
  const spot = <Kind extends keyof WalkStep>(kind: Kind) => ({
    ...at,
    walking,
    ...neighbours,
    path: [...at.path, kind],
  });
  if (step.straight !== undefined)
    return { part: { kind: 'straight', ...named(walking, 'straight', at), length: step.straight } };
  if (step.flange) return resolveFlange({ ...spot('flange'), file: step.flange });
  if (step.elbow) return resolveElbow({ ...spot('elbow'), file: step.elbow });
  if (step.valve) return resolveValve({ ...spot('valve'), file: step.valve });
  if (step.reducer) return resolveReducer({ ...spot('reducer'), file: step.reducer });
  if (step.tee) return resolveTee({ ...spot('tee'), file: step.tee }, resolveWalk);
  if (step['suction-diffuser'])
    return resolveDiffuser({ ...spot('suction-diffuser'), file: step['suction-diffuser'] });
  if (step['flexible-connector'])
    return resolveConnector({ ...spot('flexible-connector'), file: step['flexible-connector'] });
  if (step['grooved-joint'])
    return resolveCoupling({ ...spot('grooved-joint'), file: step['grooved-joint'] });
  if (step.weight) return resolveWeight({ ...spot('weight'), file: step.weight });
  const fitting = fittingOf(step);
  const fitted = fitting && step[fitting];
  if (fitting && fitted) return resolveFitting({ ...spot(fitting), file: fitted }, fitting);
  if (step.end !== undefined) return { part: resolveEnd(walking, step.end, at) };
  const support = resolveSupport(step, { walking, ...at });
  return support && { part: support };
}

function named(walking: Walking, kind: 'straight', at: Start) {
  return partBase(walking.name(kind), pathText([...at.path, kind]), at.pipe);
}
