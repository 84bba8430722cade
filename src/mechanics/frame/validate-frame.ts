import { EngineError } from '../../issues/issue.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameCondition, Restraint } from '../../model/frame/frame.js';
import { norm, subtract } from '../../model/vector.js';

/**
 * Refuses a frame that cannot be solved as written, before anything is computed.
 *
 * @param frame - points [m], members, bodies, joints, supports and conditions
 * @returns nothing [-]
 * @throws EngineError `mechanics.unknown-name`, `mechanics.repeated-name`, `mechanics.not-a-number`,
 *   `mechanics.no-length`, `mechanics.not-a-tube`, `mechanics.out-of-range`
 * @source statics
 */
export function validateFrame(frame: Frame): void {
  for (const [name, at] of Object.entries(frame.points)) finiteVector(`point ${name}`, at);
  const groups = [frame.members, frame.bodies, frame.joints, frame.supports, frame.conditions];
  for (const group of groups) unique(group.map((item) => item.name));
  for (const [name, material] of Object.entries(frame.materials)) {
    inRange(`modulus of ${name}`, material.modulus, material.modulus > 0);
    inRange(`Poisson's ratio of ${name}`, material.poisson, material.poisson > -1 && material.poisson <= 0.5);
  }
  validateMembers(frame);
  validateBodiesAndJoints(frame);
  for (const support of frame.supports) {
    known(frame, support.name, support.point);
    for (const restraint of support.restraints) validateRestraint(support.name, restraint);
  }
  for (const condition of frame.conditions) validateCondition(frame, condition);
}

function validateMembers(frame: Frame): void {
  for (const member of frame.members) {
    known(frame, member.name, member.from, member.to);
    if (frame.materials[member.material] === undefined) {
      throw new EngineError('mechanics.unknown-name', { at: member.name, name: member.material });
    }
    const { outsideDiameter, wall } = member.tube;
    if (!(wall > 0 && outsideDiameter >= 2 * wall && Number.isFinite(outsideDiameter))) {
      throw new EngineError('mechanics.not-a-tube', { member: member.name, outsideDiameter, wall });
    }
    inRange(`metal mass of ${member.name}`, member.mass.metal, member.mass.metal >= 0);
    inRange(`covering mass of ${member.name}`, member.mass.covering, member.mass.covering >= 0);
    const length = norm(subtract(frame.points[member.to]!, frame.points[member.from]!));
    if (!(length > 0)) throw new EngineError('mechanics.no-length', { member: member.name });
    if (member.kind === 'bend') {
      inRange(`flexibility of ${member.name}`, member.flexibility, member.flexibility >= 1);
      finiteVector(`centre of ${member.name}`, member.centre);
    }
  }
}

function validateBodiesAndJoints(frame: Frame): void {
  for (const body of frame.bodies) {
    known(frame, body.name, ...body.points);
    if (body.points.length === 0) throw new EngineError('mechanics.body-without-point', { body: body.name });
    if (body.material !== undefined && frame.materials[body.material] === undefined) {
      throw new EngineError('mechanics.unknown-name', { at: body.name, name: body.material });
    }
    for (const mass of body.masses) {
      finiteVector(mass.name, mass.at);
      inRange(`mass of ${mass.name}`, mass.mass, mass.mass >= 0);
      inRange(`contents of ${mass.name}`, mass.contents, mass.contents >= 0);
    }
  }
  for (const joint of frame.joints) {
    known(frame, joint.name, joint.from, joint.to);
    inRange(
      `axis of ${joint.name}`,
      norm(joint.axis),
      norm(joint.axis) > 0 && Number.isFinite(norm(joint.axis)),
    );
    if (joint.from === joint.to) throw new EngineError('mechanics.no-length', { member: joint.name });
    for (const key of ['axial', 'lateral', 'torsion', 'bending'] as const) {
      inRange(`${key} stiffness of ${joint.name}`, joint[key], joint[key] >= 0, true);
    }
    inRange(`thrust area of ${joint.name}`, joint.thrustArea, joint.thrustArea >= 0);
    inRange(`mass of ${joint.name}`, joint.mass, joint.mass >= 0);
    const { rodGap = 0, freeRotation = 1 } = joint;
    inRange(`rod gap of ${joint.name}`, rodGap, rodGap >= 0);
    inRange(`free rotation of ${joint.name}`, freeRotation, freeRotation > 0);
  }
}

function validateRestraint(name: string, restraint: Restraint): void {
  const length = norm(restraint.direction);
  inRange(`direction of ${name}`, length, Math.abs(length - 1) <= 1e-6);
  inRange(`stiffness of ${name}`, restraint.stiffness, restraint.stiffness >= 0, true);
  inRange(`preload of ${name}`, restraint.preload, true);
  inRange(`imposed movement of ${name}`, restraint.imposed, true);
  // What a spring set to a load would do inside free play is not defined, so the pair is refused.
  inRange(
    `gap of ${name}`,
    restraint.gap,
    restraint.gap >= 0 && (restraint.gap === 0 || restraint.preload === 0),
  );
  const { swingLength = 1, travel } = restraint;
  inRange(`rod length of ${name}`, swingLength, swingLength > 0);
  if (travel !== undefined) {
    const isSpring =
      restraint.acts === 'translation' &&
      restraint.stiffness > 0 &&
      Number.isFinite(restraint.stiffness) &&
      restraint.gap === 0;
    inRange(`travel of ${name}, least load`, travel.least, isSpring && travel.least >= 0);
    inRange(`travel of ${name}, most load`, travel.most, travel.most > travel.least);
  }
  inRange(`friction of ${name}`, restraint.friction, restraint.friction >= 0 && restraint.friction < 10);
}

function validateCondition(frame: Frame, condition: FrameCondition): void {
  finiteVector(`gravity of ${condition.name}`, condition.gravity);
  const dense = condition.contentsDensity;
  inRange(`density in ${condition.name}`, dense, dense >= 0);
  inRange(`temperature in ${condition.name}`, condition.temperature, condition.temperature > 0);
  inRange(`pressure in ${condition.name}`, condition.pressure, true);
  const supports = new Set(frame.supports.map((support) => support.name));
  const bodies = new Set(frame.bodies.map((body) => body.name));
  const among = (names: readonly string[], all: ReadonlySet<string>) => {
    for (const name of names) {
      if (!all.has(name)) throw new EngineError('mechanics.unknown-name', { at: condition.name, name });
    }
  };
  among([...condition.absent, ...condition.stopped, ...Object.keys(condition.imposed ?? {})], supports);
  among(condition.removed, bodies);
  among(Object.keys(condition.misfit ?? {}), new Set(frame.joints.map((joint) => joint.name)));
  for (const load of condition.loads) {
    known(frame, condition.name, load.point);
    finiteVector(`load at ${load.point}`, load.wrench.force);
    finiteVector(`load at ${load.point}`, load.wrench.moment);
  }
}

function known(frame: Frame, at: string, ...points: readonly string[]): void {
  for (const point of points) {
    if (!Object.hasOwn(frame.points, point))
      throw new EngineError('mechanics.unknown-name', { at, name: point });
  }
}

function unique(names: readonly string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (seen.has(name)) throw new EngineError('mechanics.repeated-name', { name });
    seen.add(name);
  }
}

function finiteVector(what: string, vector: Vec3): void {
  if (!vector.every(Number.isFinite)) throw new EngineError('mechanics.not-a-number', { what });
}

function inRange(what: string, value: number, allowed: boolean, mayBeInfinite = false): void {
  if (Number.isNaN(value) || !(mayBeInfinite || Number.isFinite(value))) {
    throw new EngineError('mechanics.not-a-number', { what });
  }
  if (!allowed) throw new EngineError('mechanics.out-of-range', { what, value });
}
