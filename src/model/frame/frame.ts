/**
 * The frame: what the mechanics solves. Plain data in SI units that can also be written by hand, without an
 * installation file:
 *
 * - points have names and places;
 * - pipes and bends are elastic members between two points, with distributed mass;
 * - bodies are rigid: all their points move as one, by exact constraint;
 * - joints are six springs between two points;
 * - supports hold a point in chosen directions;
 * - conditions say what acts: gravity, contents, temperature, pressure, absent or stopped supports, point loads.
 *
 * Two members that name the same point are joined there rigidly.
 */
import type { ConditionRole } from '../conditions/condition-roles.js';
import type { Movement, Vec3, Wrench } from '../conventions.js';

/** Elastic and thermal behaviour of a material. */
export interface FrameMaterial {
  /** Young's modulus [Pa]. */
  readonly modulus: number;
  /** Poisson's ratio [-]. */
  readonly poisson: number;
  /** Thermal strain by temperature: pairs of [K] and [-], rising in temperature, read by straight lines between. */
  readonly expansion: readonly (readonly [number, number])[];
}

/** Circular tube. */
export interface Tube {
  readonly outsideDiameter: number; // [m]
  readonly wall: number; // [m]
}

/** Mass along a member, all [kg/m]; contents follow from the bore and the condition's density. */
export interface LineMass {
  readonly metal: number;
  readonly covering: number;
}

interface FrameMemberBase {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly tube: Tube;
  /** Key into `Frame.materials`. */
  readonly material: string;
  readonly mass: LineMass;
  /** Group of contents; a condition may drain a group (`pump`, `suction line` …). */
  readonly contentsGroup: string;
}

/** Straight pipe from one point to another. */
export interface FramePipe extends FrameMemberBase {
  readonly kind: 'pipe';
}

/** Circular arc of pipe; the tangents at its ends follow from the corner (intersection of the tangents). */
export interface FrameBend extends FrameMemberBase {
  readonly kind: 'bend';
  /** Centre of the arc. With the two ends it gives radius, plane and angle (less than 180 degrees). */
  readonly centre: Vec3;
  /** Flexibility factor on bending in and out of plane, at least 1 [-]. */
  readonly flexibility: number;
}

/** One lump of mass on a body. */
export interface FrameMass {
  readonly name: string;
  readonly at: Vec3;
  /** Mass that is always there [kg]. */
  readonly mass: number;
  /** Volume of liquid held [m³]; its mass follows the condition's density. */
  readonly contents: number;
  readonly contentsGroup: string;
  /** Rotary inertia about its own centre, plan axes [kg·m²]; zero when not given. */
  readonly inertia?: Vec3;
  /** True for insulation, which a condition may leave off. */
  readonly covering?: boolean;
}

/** Rigid body joining any number of points. */
export interface FrameBody {
  readonly name: string;
  readonly points: readonly string[];
  readonly masses: readonly FrameMass[];
  /** Material it expands with, evenly in all directions; without it the body keeps its size. */
  readonly material?: string;
}

/** Six springs between two points, in the axes of `axis`: along it, across it, about it, bending. Infinity is rigid, 0 is free. */
export interface FrameJoint {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly axis: Vec3;
  readonly axial: number; // [N/m]
  readonly lateral: number; // [N/m]
  readonly torsion: number; // [N·m/rad]
  readonly bending: number; // [N·m/rad]
  /** Area on which pressure pushes the two sides apart [m²]; 0 where rods or the pipe wall hold it. */
  readonly thrustArea: number;
  /** Mass, half to each side [kg]. */
  readonly mass: number;
  /**
   * Lengthening at which control rods hold rigidly [m]. Until then, and in shortening, the axial rate acts; an axial
   * direction given as rigid holds against shortening only.
   */
  readonly rodGap?: number;
  /** Bending angle, resultant of both axes, that is free before the joint holds with `bending` [rad]. */
  readonly freeRotation?: number;
}

/** One direction held by a support. */
export interface Restraint {
  /** Unit vector; for a hanger or rest: up. */
  readonly direction: Vec3;
  readonly acts: 'translation' | 'rotation';
  /** [N/m] or [N·m/rad]; Infinity is rigid. */
  readonly stiffness: number;
  /** `push` can only push the point along +direction (rest, hanger: up); `both` holds either way. */
  readonly sense: 'both' | 'push';
  /** Force on the point along +direction when it has not moved: spring setting [N]. */
  readonly preload: number;
  /** Free movement before it acts, either side for `both`, against +direction for `push` [m] or [rad]. */
  readonly gap: number;
  /** Movement of the support itself along +direction: settlement, set-height error, growth [m] or [rad]. */
  readonly imposed: number;
  /** Coulomb friction on the plane across the direction [-]. */
  readonly friction: number;
  /** Length of a rod that swings: holds sideways by load over length once loaded [m]. */
  readonly swingLength?: number;
  /**
   * Loads at which a spring has used up its travel and becomes rigid: top-out and bottom-out [N]. One of sense `push`
   * goes slack above its top once its load is down to nothing.
   */
  readonly travel?: {
    /** [N] */
    readonly least: number;
    /** [N] */
    readonly most: number;
  };
}

/** Something that holds one point. */
export interface FrameSupport {
  /** Mark, for example `H3`. */
  readonly name: string;
  /** Trade word for messages: hanger, rest, anchor … */
  readonly word: string;
  readonly point: string;
  readonly restraints: readonly Restraint[];
}

/** What acts on the frame at one time. */
export interface FrameCondition {
  /** Id, by which results and findings refer to it; any text that no other condition of the frame has. */
  readonly name: string;
  /** What is printed for it; the name where there is none. */
  readonly title?: string;
  /**
   * What it stands for. A frame written by hand is solved without; such a condition counts as one that comes to pass, and is
   * taken for neither service, test, start nor any other role, whatever its name.
   */
  readonly role?: ConditionRole;
  /** True for a question whose answer may be that the frame falls down; it is then listed as unsolved. */
  readonly whatIf?: boolean;
  /** Acceleration of gravity and of any lateral coefficient [m/s²]; [0, 0, -9.80665] for weight. */
  readonly gravity: Vec3;
  /** Density of the contents [kg/m³]; 0 is empty. */
  readonly contentsDensity: number;
  /** Contents groups that are drained. */
  readonly drained: readonly string[];
  /** True when insulation is on. */
  readonly covering: boolean;
  /** Uniform temperature of pipe and bodies [K]. */
  readonly temperature: number;
  /** Gauge pressure, for thrust in joints [Pa]. */
  readonly pressure: number;
  /** Supports that do not act. */
  readonly absent: readonly string[];
  /** Spring supports held by their travel stops: they act rigidly. */
  readonly stopped: readonly string[];
  /** Bodies taken out, with the joints between them and their neighbours. */
  readonly removed: readonly string[];
  /** Further loads on points. */
  readonly loads: readonly { readonly point: string; readonly wrench: Wrench }[];
  /** Movement of supports beyond their own `imposed`, by support name, as a vector [m]. */
  readonly imposed?: Readonly<Record<string, Vec3>>;
  /**
   * Misfit of joints, by name: how far the `to` side is kept from where it would meet the `from` side, in the directions
   * that the joint holds rigidly, in plan axes [m], [rad].
   */
  readonly misfit?: Readonly<Record<string, Movement>>;
}

/** Everything the mechanics needs. */
export interface Frame {
  readonly points: Readonly<Record<string, Vec3>>;
  readonly materials: Readonly<Record<string, FrameMaterial>>;
  readonly members: readonly (FramePipe | FrameBend)[];
  readonly bodies: readonly FrameBody[];
  readonly joints: readonly FrameJoint[];
  readonly supports: readonly FrameSupport[];
  readonly conditions: readonly FrameCondition[];
  /** Temperature at which nothing is strained [K]. */
  readonly installationTemperature: number;
  /** Switches, all off unless asked for. */
  readonly options?: {
    /** Leave shear deformation out, for comparison with slender-beam solutions. */
    readonly withoutShear?: boolean;
    /** Add the axial lengthening by pressure. */
    readonly pressureElongation?: boolean;
  };
}

/** Any elastic member. */
export type FrameMember = FramePipe | FrameBend;
