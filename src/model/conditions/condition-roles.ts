/**
 * What a condition stands for, told once. Everything that picks conditions picks them by role, here or by the selectors
 * built on these; nothing else looks at a name. Names stay the ids that results files promise (`filled`, `slack-H3`,
 * `starting-opposite`); they are made from roles, and read back into roles, in this file alone.
 */

/** Roles that one review has at most one condition of. */
export type SingleRole =
  /** Erected, dry, no insulation, at installation temperature. */
  | 'empty'
  /** Full of liquid, insulated, at installation temperature and working pressure. */
  | 'filled'
  /** Full of cold water, no insulation, test pressure, springs held by their stops. */
  | 'test'
  /** Normal temperature, working pressure. */
  | 'running'
  /** Highest temperature, working pressure. */
  | 'hot'
  /** Lowest temperature, working pressure. */
  | 'cold'
  /** Pump and motor lifted out. */
  | 'pump-out'
  /** Motor lifted away. */
  | 'motor-off';

/** Ways in plan in which a sideways load acts. */
export type PlanDirection = 'north' | 'south' | 'east' | 'west';

/** What a condition stands for, with what that needs to be told apart from others of its kind. */
export type ConditionRole =
  | { readonly kind: SingleRole }
  /** A support taken to carry nothing, by its mark. */
  | { readonly kind: 'slack'; readonly support: string }
  /** The sideways coefficient of the limits, acting one way. */
  | { readonly kind: 'lateral'; readonly towards: PlanDirection }
  /** The torque of a start: `forward` with the moment about the upward axis positive, `reverse` with it negative. */
  | { readonly kind: 'start'; readonly sense: 'forward' | 'reverse' }
  /** Of a frame written by hand: solved and judged like any other, and taken for none of those above. */
  | { readonly kind: 'other' };

export type RoleKind = ConditionRole['kind'];

/** Anything that carries a role: a condition of a frame, or one that was solved. */
export interface HasRole {
  readonly role?: ConditionRole;
}

/** What follows from a kind of role. */
interface RoleFacts {
  /** Normal service: between these the pump runs, stands still, warms and cools, and their differences fatigue the pipe. */
  readonly service: boolean;
  /** Service or test: the closed line stands under the pressure that flanges are held against. */
  readonly pressurised: boolean;
  /** Whatever is written: one of the states that every line goes through, shown side by side. */
  readonly common: boolean;
  /** A fitter may read the scale of a spring in it: the stops are out, and the line stands undisturbed. */
  readonly readable: boolean;
  /** Loads that last seconds, on top of those that last. */
  readonly occasional: boolean;
  /** Only asks what would be: in good order it does not come to pass. */
  readonly hypothetical: boolean;
}

const NONE: RoleFacts = {
  service: false,
  pressurised: false,
  common: false,
  readable: false,
  occasional: false,
  hypothetical: false,
};
const SERVICE: RoleFacts = { ...NONE, service: true, pressurised: true, common: true, readable: true };

/** Every kind, those that are common in the order in which a reader expects them. */
const ROLES = {
  empty: { ...NONE, common: true, readable: true },
  filled: SERVICE,
  test: { ...NONE, pressurised: true, common: true },
  running: SERVICE,
  hot: SERVICE,
  cold: SERVICE,
  'pump-out': NONE,
  'motor-off': NONE,
  slack: { ...NONE, hypothetical: true },
  lateral: { ...NONE, occasional: true },
  start: { ...NONE, occasional: true },
  other: NONE,
} satisfies Record<RoleKind, RoleFacts>;

const KINDS = Object.keys(ROLES) as readonly RoleKind[];
const OTHER: ConditionRole = { kind: 'other' };
const SLACK = 'slack-';
const LATERAL = 'lateral-';
const TOWARDS: readonly PlanDirection[] = ['north', 'south', 'east', 'west'];
const STARTS = { forward: 'starting', reverse: 'starting-opposite' } as const;

/** Role of a condition; one without a role stands for nothing in particular. */
export const roleOf = ({ role }: HasRole): ConditionRole => role ?? OTHER;
/** Kind of the role of a condition. */
export const kindOf = (condition: HasRole): RoleKind => roleOf(condition).kind;
/** Normal service: filled, running, hot, cold. */
export const isService = (condition: HasRole): boolean => ROLES[kindOf(condition)].service;
/** Service and pressure test. */
export const isPressurised = (condition: HasRole): boolean => ROLES[kindOf(condition)].pressurised;
/** The states that every line goes through: empty, filled, test, running, hot, cold. */
export const isCommon = (condition: HasRole): boolean => ROLES[kindOf(condition)].common;
/** A fitter may read a spring in it. */
export const isReadable = (condition: HasRole): boolean => ROLES[kindOf(condition)].readable;
/** Sideways loads and starts. */
export const isOccasional = (condition: HasRole): boolean => ROLES[kindOf(condition)].occasional;
/** A question such as that of a slack hanger, which does not come to pass in good order. */
export const isHypothetical = (condition: HasRole): boolean => ROLES[kindOf(condition)].hypothetical;

/**
 * The first condition of a kind.
 *
 * @param conditions - of a frame, or solved
 * @param kind - for example `filled`
 * @returns the condition, where there is one
 */
export function ofRole<C extends HasRole>(conditions: readonly C[], kind: RoleKind): C | undefined {
  return conditions.find((condition) => kindOf(condition) === kind);
}

/**
 * All conditions of the kinds named, in the order of the kinds.
 *
 * @param conditions - of a frame, or solved
 * @param kinds - for example `hot`, `cold`
 * @returns those that are there
 */
export function ofRoles<C extends HasRole>(
  conditions: readonly C[],
  kinds: readonly RoleKind[],
): readonly C[] {
  return kinds.flatMap((kind) => conditions.filter((condition) => kindOf(condition) === kind));
}

/**
 * Conditions in the order a reader expects: those that are common from the empty line to the extremes of temperature,
 * then all others as they come.
 *
 * @param conditions - of a frame, or solved
 * @returns all of them
 */
export function inPrintedOrder<C extends HasRole>(conditions: readonly C[]): readonly C[] {
  const common = ofRoles(
    conditions.filter(isCommon),
    KINDS.filter((kind) => ROLES[kind].common),
  );
  return [...common, ...conditions.filter((condition) => !isCommon(condition))];
}

/** A condition's id, printed title and role, as they stand in a frame. */
export interface ConditionIdentity {
  readonly name: string;
  readonly title: string;
  readonly role: ConditionRole;
}

/**
 * What a condition of a role is called.
 *
 * @param role - a role, or the kind of a single one
 * @returns id, title and role
 */
export function identityOf(role: SingleRole | Exclude<ConditionRole, { kind: 'other' }>): ConditionIdentity {
  const whole = typeof role === 'string' ? { kind: role } : role;
  const name = idOf(whole);
  return { name, title: titleFor(whole, name), role: whole };
}

/**
 * Id of the condition of a role, as findings and results carry it.
 *
 * @param role - a role, or the kind of a single one
 * @returns for example `filled`, `slack-H3`, `lateral-north`, `starting-opposite`
 */
export function conditionId(role: SingleRole | Exclude<ConditionRole, { kind: 'other' }>): string {
  return identityOf(role).name;
}

/**
 * What a record by condition holds for a single role.
 *
 * @param byId - responses or loads by id of the condition
 * @param role - for example `filled`
 * @returns the entry, where there is one
 */
export function inCondition<Entry>(
  byId: Readonly<Record<string, Entry>>,
  role: SingleRole,
): Entry | undefined {
  return byId[conditionId(role)];
}

/**
 * The role an id was made from: the way back from findings and results files, which carry ids only.
 *
 * @param id - name of a condition
 * @returns its role; `other` where no role has that id
 */
export function roleOfId(id: string): ConditionRole {
  if (isSingle(id)) return { kind: id };
  if (id === STARTS.forward) return { kind: 'start', sense: 'forward' };
  if (id === STARTS.reverse) return { kind: 'start', sense: 'reverse' };
  if (id.startsWith(SLACK)) return { kind: 'slack', support: id.slice(SLACK.length) };
  const towards = TOWARDS.find((one) => id === `${LATERAL}${one}`);
  return towards === undefined ? OTHER : { kind: 'lateral', towards };
}

/**
 * What is printed for the condition of an id.
 *
 * @param id - name of a condition
 * @returns for example `filled`, `H3 unloaded`, `start, reverse torque`; the id itself where no role has it
 */
export function conditionTitle(id: string): string {
  return titleFor(roleOfId(id), id);
}

function isSingle(id: string): id is SingleRole {
  return Object.hasOwn(ROLES, id) && !['slack', 'lateral', 'start', 'other'].includes(id);
}

function idOf(role: Exclude<ConditionRole, { kind: 'other' }>): string {
  if (role.kind === 'slack') return `${SLACK}${role.support}`;
  if (role.kind === 'lateral') return `${LATERAL}${role.towards}`;
  if (role.kind === 'start') return STARTS[role.sense];
  return role.kind;
}

function titleFor(role: ConditionRole, id: string): string {
  switch (role.kind) {
    case 'pump-out':
      return 'pump removed';
    case 'motor-off':
      return 'motor removed';
    case 'slack':
      return `${role.support} unloaded`;
    case 'lateral':
      return `sideways, ${role.towards}`;
    case 'start':
      return role.sense === 'forward' ? 'start' : 'start, reverse torque';
    default:
      return id;
  }
}
