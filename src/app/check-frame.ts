/**
 * The shape of a frame written by hand, looked at before anything reads it: whether lists are lists and places have three
 * numbers. What the numbers must be is judged by the mechanics.
 */
import { isRecord, requireArgument, requireMembers } from '../issues/argument.js';

type Part = Readonly<Record<string, unknown>>;

const isPlace = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 3 && value.every((part) => typeof part === 'number');
const areTexts = (value: unknown): boolean =>
  Array.isArray(value) && value.every((part) => typeof part === 'string');

/**
 * Refuses what has not the shape of a frame.
 *
 * @param frame - the argument [-]
 * @throws EngineError `argument.wrong` with the path of the first part that is wrong
 */
export function requireFrame(frame: unknown): void {
  const lists = ['members', 'bodies', 'joints', 'supports', 'conditions'];
  const wanted = `a frame: points, materials, ${lists.join(', ')}, installationTemperature`;
  requireMembers(frame, 'frame', ['points', 'materials', ...lists], wanted);
  eachMember(frame, 'points', (point, path) => place(point, path));
  eachMember(frame, 'materials', (material, path) => {
    requireMembers(material, path, ['modulus', 'poisson'], 'a material: modulus [Pa], poisson, expansion');
    const { expansion } = material;
    const arePairs = Array.isArray(expansion) && expansion.every((row) => Array.isArray(row));
    requireArgument(arePairs, `${path}.expansion`, 'a list of pairs: temperature [K], strain', expansion);
  });
  eachNamed(frame, 'members', memberShape);
  eachNamed(frame, 'bodies', bodyShape);
  eachNamed(frame, 'joints', (joint, path) => {
    ends(joint, path);
    place(joint.axis, `${path}.axis`);
  });
  eachNamed(frame, 'supports', supportShape);
  eachNamed(frame, 'conditions', conditionShape);
  const { installationTemperature: cold } = frame;
  const isTemperature = typeof cold === 'number' && cold > 0 && Number.isFinite(cold);
  requireArgument(isTemperature, 'frame.installationTemperature', 'a temperature above zero [K]', cold);
}

function memberShape(member: Part, path: string): void {
  ends(member, path);
  const isKind = member.kind === 'pipe' || member.kind === 'bend';
  requireArgument(isKind, `${path}.kind`, '"pipe" or "bend"', member.kind);
  requireMembers(
    member.tube,
    `${path}.tube`,
    ['outsideDiameter', 'wall'],
    'a tube: outsideDiameter, wall [m]',
  );
  requireMembers(member.mass, `${path}.mass`, ['metal', 'covering'], 'masses: metal, covering [kg/m]');
  text(member.material, `${path}.material`);
  text(member.contentsGroup, `${path}.contentsGroup`);
  if (member.kind === 'bend') place(member.centre, `${path}.centre`);
}

function bodyShape(body: Part, path: string): void {
  requireArgument(areTexts(body.points), `${path}.points`, 'a list of names of points', body.points);
  eachNamed(body, 'masses', (mass, at) => place(mass.at, `${at}.at`), path);
}

function supportShape(support: Part, path: string): void {
  text(support.point, `${path}.point`);
  eachOf(support, 'restraints', path, (restraint, at) => {
    place(restraint.direction, `${at}.direction`);
    const acts = restraint.acts === 'translation' || restraint.acts === 'rotation';
    requireArgument(acts, `${at}.acts`, '"translation" or "rotation"', restraint.acts);
    const isSense = restraint.sense === 'both' || restraint.sense === 'push';
    requireArgument(isSense, `${at}.sense`, '"both" or "push"', restraint.sense);
  });
}

function conditionShape(condition: Part, path: string): void {
  place(condition.gravity, `${path}.gravity`);
  for (const list of ['drained', 'absent', 'stopped', 'removed'])
    requireArgument(areTexts(condition[list]), `${path}.${list}`, 'a list of names', condition[list]);
  eachOf(condition, 'loads', path, (load, at) => {
    text(load.point, `${at}.point`);
    requireMembers(load.wrench, `${at}.wrench`, ['force', 'moment'], 'force [N] and moment [N·m]');
    const { force, moment } = load.wrench;
    place(force, `${at}.wrench.force`);
    place(moment, `${at}.wrench.moment`);
  });
}

function ends(item: Part, path: string): void {
  text(item.from, `${path}.from`);
  text(item.to, `${path}.to`);
}

function place(value: unknown, path: string): void {
  requireArgument(isPlace(value), path, 'three numbers: east, north, up', value);
}

function text(value: unknown, path: string): void {
  requireArgument(typeof value === 'string', path, 'a text', value);
}

function eachMember(whole: Part, key: string, look: (value: unknown, path: string) => void): void {
  const members = whole[key];
  requireArgument(isRecord(members), `frame.${key}`, 'an object, by name', members);
  for (const [name, value] of Object.entries(members)) look(value, `frame.${key}.${name}`);
}

function eachOf(whole: Part, key: string, path: string, look: (item: Part, path: string) => void): void {
  const list: unknown = whole[key];
  requireArgument(Array.isArray(list), `${path}.${key}`, 'a list', list);
  list.forEach((item: unknown, index) => {
    requireArgument(isRecord(item), `${path}.${key}[${index}]`, 'an object', item);
    look(item, `${path}.${key}[${index}]`);
  });
}

function eachNamed(whole: Part, key: string, look: (item: Part, path: string) => void, path = 'frame'): void {
  eachOf(whole, key, path, (item, at) => {
    text(item.name, `${at}.name`);
    look(item, at);
  });
}
