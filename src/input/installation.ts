/**
 * The installation after reading: SI numbers, directions as unit vectors (x east, y north, z up), catalogue values
 * filled in, and every value that was not given recorded as an assumption. Plain data, no functions.
 */
import type { Citation, SourceId } from '../sources/index.js';

export type Vec3 = readonly [number, number, number];

/** How a value came to be, printed beside it in the review. */
export type Origin =
  | {
      readonly kind: 'given';
      readonly path: string;
      readonly known?: 'weighed' | 'maker' | 'handbook' | 'estimated';
      /** How far it may be off either way, where the file says so, as a share of the value [-]. */
      readonly within?: number;
      /** Document the user takes it from, where the file names one. */
      readonly document?: string;
    }
  | { readonly kind: 'catalogue'; readonly table: string; readonly row: string; readonly citation: Citation }
  | { readonly kind: 'assumed'; readonly path: string }
  | { readonly kind: 'computed'; readonly how: string; readonly citation: Citation };

/** A number with its origin. The unit is that of the field. */
export interface Sourced {
  readonly value: number;
  readonly origin: Origin;
}

/** A value that the file did not give and that was taken instead. */
export interface Assumption {
  /** Path of the missing value, for example `pump.weights.motor`. */
  readonly path: string;
  /** What it is, in words: `weight of the motor`. */
  readonly what: string;
  /** The value taken, as printed text in the file's unit system. */
  readonly value: string;
  readonly citation: Citation;
  /** What to do about it, or what it may change. */
  readonly effect: string;
}

export type UnitSystem = 'us' | 'si';

export interface Revision {
  readonly mark: string;
  readonly date: string;
  readonly by: string;
  readonly note: string;
}

/** Who writes the review, as printed at the head of page one. */
export interface Letterhead {
  readonly name: string;
  readonly address: readonly string[];
  /** File of the logo, from the folder of the file that names it. */
  readonly logo?: string;
  /** What the logo shows, for those who cannot see it. */
  readonly logoText?: string;
}

/** What stands in the title block. */
export interface ReviewData {
  readonly project: string;
  readonly location?: string;
  readonly client?: string;
  readonly preparedBy?: string;
  readonly engineerOfRecord?: string;
  readonly letterhead?: Letterhead;
  readonly status: 'preliminary' | 'for review' | 'for record';
  /** Date printed, as given (ISO 8601). The clock is never read. */
  readonly date: string;
  readonly revisions: readonly Revision[];
  readonly notes: readonly string[];
  readonly units: UnitSystem;
  /** Spelling; that of the units where not said. */
  readonly english?: 'american' | 'british';
}

export interface Service {
  readonly name: string;
  readonly fluid: {
    readonly kind: 'water' | 'ethylene glycol' | 'propylene glycol' /** volume share 0..1 */;
    readonly share: number;
  };
  /** Liquid density by condition temperature [kg/m³]. */
  readonly density: {
    readonly filled: Sourced;
    readonly hot: Sourced;
    readonly cold: Sourced;
    readonly test: Sourced;
    readonly running: Sourced;
  };
  /** Temperatures [K]. `hot` and `cold` are the extremes, `running` the normal one. */
  readonly installationTemperature: Sourced;
  readonly runningTemperature: Sourced;
  readonly hotTemperature: Sourced;
  readonly coldTemperature: Sourced;
  /** Gauge pressures [Pa]. */
  readonly workingPressure: Sourced;
  readonly designPressure: Sourced;
  readonly testPressure: Sourced;
  /** What the pump is for, where the file says so. */
  readonly duty?: 'building services' | 'process';
  /** Said where nothing makes the liquid dangerous; a dangerous one is refused. */
  readonly hazards?: 'none';
  /** Whether the liquid meets the air on its way round. */
  readonly system?: 'open' | 'closed';
}

/** Elastic and thermal data of one material. */
export interface Material {
  readonly id: string;
  readonly name: string;
  /** Young's modulus at ambient temperature [Pa]. */
  readonly modulus: Sourced;
  /** Poisson's ratio [-]. */
  readonly poisson: number;
  /** [kg/m³] */
  readonly density: number;
  /** Thermal strain from 70 °F (294.26 K): pairs of temperature [K] and strain [-], rising in temperature. */
  readonly expansion: readonly (readonly [number, number])[];
  readonly expansionCitation: Citation;
  /** Least yield strength at ambient temperature [Pa], where it is known. */
  readonly yieldStrength?: Sourced;
}

/** Round pipe. */
export interface PipeSection {
  /** For example `NPS 6 STD` or `6.625 in x 0.280 in`. */
  readonly name: string;
  /** Nominal size label where the pipe is of a standard size, for example `6` or `2-1/2`. */
  readonly nps?: string;
  readonly outsideDiameter: number;
  readonly wall: number;
  /** Key into `Installation.materials`. */
  readonly material: string;
  /** Metal mass per length [kg/m]. */
  readonly massPerLength: Sourced;
}

/** Insulation and jacket on a part. */
export interface Covering {
  readonly name: string;
  readonly thickness: number;
  /** Mass per length of pipe [kg/m]. */
  readonly massPerLength: Sourced;
}

interface PartBase {
  /** Name shown everywhere: `elbow 2`, `gate valve 1`. Unique in the installation. */
  readonly name: string;
  /** Where it stands in the input file. */
  readonly path: string;
  /** Pipe at its inlet side (the side nearer the pump). */
  readonly section: PipeSection;
  readonly covering?: Covering;
}

export interface StraightPart extends PartBase {
  readonly kind: 'straight';
  readonly length: number;
}

export interface ElbowPart extends PartBase {
  readonly kind: 'elbow';
  /** Centre-line radius [m]. */
  readonly radius: Sourced;
  /** Direction of travel after the elbow, unit vector. */
  readonly turn: Vec3;
  /** Mass of the fitting [kg]. */
  readonly mass: Sourced;
  /** Support at the middle of the arc. */
  readonly support?: SupportPart;
}

export interface ReducerPart extends PartBase {
  readonly kind: 'reducer';
  readonly to: PipeSection;
  readonly length: Sourced;
  readonly mass: Sourced;
  readonly shape: 'concentric' | 'eccentric';
  /** Which side is flat on an eccentric reducer. */
  readonly flat?: 'top' | 'bottom';
}

export interface TeePart extends PartBase {
  readonly kind: 'tee';
  readonly enterBy: 'run' | 'branch';
  /** Direction of travel after the tee. Equal to the direction before it when entered by the run. */
  readonly turn: Vec3;
  /** Centre to end along the run, and along the branch [m]. */
  readonly centreToRunEnd: Sourced;
  readonly centreToBranchEnd: Sourced;
  readonly mass: Sourced;
  /** Pipe of the branch leg (the run has `section` when entered by the run; `runSection` otherwise). */
  readonly branchSection: PipeSection;
  readonly runSection: PipeSection;
  /** What stands on the third leg. */
  readonly side: {
    readonly direction: Vec3;
    readonly section: PipeSection;
    readonly covering?: Covering;
    readonly walk: readonly Part[];
  };
  /** How the tee is made, for stress intensification. */
  readonly make: 'welding tee' | 'fabricated' | 'reinforced fabricated' | 'grooved fitting';
}

export interface FlangePart extends PartBase {
  readonly kind: 'flange';
  readonly standard: 'B16.5' | 'B16.1' | 'own';
  readonly class: string;
  readonly face: 'raised' | 'flat' | 'unknown';
  readonly type: 'weld-neck' | 'slip-on' | 'blind' | 'grooved adapter' | 'own';
  /** Length along the pipe from gasket face to weld [m]; may be 0 for slip-on. */
  readonly length: Sourced;
  readonly mass: Sourced;
  readonly joint: FlangeDimensions;
}

/** What the joint checks need of a flange. Missing entries make a check `cannot-tell`. */
export interface FlangeDimensions {
  readonly nps: string;
  readonly outsideDiameter?: number;
  readonly boltCircle?: number;
  readonly bolts?: number;
  /** Bolt size label such as `3/4`. */
  readonly bolt?: string;
  readonly raisedFaceDiameter?: number;
  /** Gasket load reaction diameter, where given [m]. */
  readonly gasketDiameter?: Sourced;
  /** Pressure rating by temperature: pairs of temperature [K], gauge pressure [Pa], rising in temperature. */
  readonly rating?: readonly (readonly [number, number])[];
  readonly ratingCitation?: Citation;
}

/** A flange that belongs to a body: a pump, a valve, a suction diffuser. */
export interface BodyFlange extends FlangeDimensions {
  readonly standard: 'B16.5' | 'B16.1' | 'own';
  readonly class: string;
  readonly face: 'raised' | 'flat' | 'unknown';
  readonly material: 'cast iron' | 'ductile iron' | 'steel' | 'unknown';
}

/** Something heavy and stiff in the line: valve, strainer, suction diffuser, instrument. */
export interface ValvePart extends PartBase {
  readonly kind: 'valve';
  readonly valve: string;
  readonly length: Sourced;
  readonly mass: Sourced;
  /** Centre of gravity from the middle of the valve [m]; operator up by default is an assumption. */
  readonly offset: Vec3;
  readonly ends: 'flanged' | 'between flanges' | 'welded' | 'grooved' | 'threaded';
  /** Its flanges, alike at both ends, where its ends are flanged and its class says what they are. */
  readonly flange?: BodyFlange;
  /** Liquid held [m³]. */
  readonly contents: Sourced;
  /** Whether it can be shut tight, where the file says so; otherwise its kind tells. */
  readonly shuts?: boolean;
}

export interface DiffuserPart extends PartBase {
  readonly kind: 'suction-diffuser';
  /** Direction of travel after it, walking away from the pump. */
  readonly turn: Vec3;
  readonly to: PipeSection;
  /** From the pump-side face to the corner, and from the corner to the pipe-side face [m]. */
  readonly pumpLeg: Sourced;
  /** Its flanges towards the pump and towards the pipe, where the file describes them. */
  readonly flanges?: { readonly pump: BodyFlange; readonly pipe: BodyFlange };
  readonly pipeLeg: Sourced;
  readonly mass: Sourced;
  readonly contents: Sourced;
  readonly support?: SupportPart;
  /** Whether it straightens the flow, and whether it holds a strainer, where the file says so. */
  readonly straightens?: boolean;
  readonly strainer?: boolean;
  /** Straight pipe its maker asks for ahead of it [m]. */
  readonly straightAsked?: Sourced;
}

/** Six stiffnesses in the part's own axes: along, two across, torsion, two bending. Infinity is rigid. */
export interface JointStiffness {
  /** [N/m] */
  readonly axial: number;
  readonly lateral: number;
  /** [N·m/rad] */
  readonly torsion: number;
  readonly bending: number;
}

export interface ConnectorPart extends PartBase {
  readonly kind: 'flexible-connector';
  readonly connector: 'rubber' | 'braided metal' | 'metal bellows';
  readonly length: number;
  readonly mass: Sourced;
  readonly stiffness: JointStiffness;
  /** Effective thrust area [m²]. */
  readonly thrustArea: Sourced;
  readonly rods: 'none' | 'taut' | 'gapped';
  /** Gap of the rods before they hold [m]. */
  readonly rodGap?: number;
}

export interface CouplingPart extends PartBase {
  readonly kind: 'grooved-joint';
  readonly type: 'rigid' | 'flexible';
  /** Angle a flexible joint turns freely before it stiffens [rad]. */
  readonly freeRotation?: number;
  readonly mass: Sourced;
  readonly stiffness: JointStiffness;
  /** True where neither its bending nor its torsion is given, so that its grip is taken by its type. */
  readonly gripUnstated?: boolean;
}

/** A weight hung on the line without length: gauge, actuator, small branch. */
export interface WeightPart extends PartBase {
  readonly kind: 'weight';
  readonly mass: Sourced;
}

/** A small thing on the pipe, without length or weight worth counting. */
export interface FittingPart extends PartBase {
  readonly kind: 'fitting';
  readonly fitting: 'drain' | 'vent' | 'gauge-tap' | 'start-up-screen';
  /** Nominal size label, where the file gives it. */
  readonly size?: string;
}

export type SupportKind = 'hanger' | 'spring-hanger' | 'rest' | 'guide' | 'stop' | 'anchor' | 'stand';

export interface RodAssembly {
  /** How many rods share the load: 1 for a clevis, 2 for a trapeze or riser clamp. */
  readonly count: number;
  /** Rod size label, for example `5/8`. */
  readonly size?: string;
  /** Rod length, structure to clamp [m]. */
  readonly length?: number;
  /** Axial stiffness of all rods together [N/m], from size and length; absent when the rods are declared rigid. */
  readonly stiffness?: Sourced;
  /** Threads per metre of rod, for turns of a nut [1/m]. */
  readonly threads?: number;
  /** Rating of one rod [N], from the catalogue or given. */
  readonly rating?: Sourced;
  /** Rating of clamp, attachment or anchor for the whole support [N], where given. */
  readonly attachmentRating?: Sourced;
}

export interface SupportPart extends PartBase {
  readonly kind: SupportKind;
  /** Mark given by the user; also the point's name. */
  readonly mark: string;
  readonly rods?: RodAssembly;
  readonly spring?: {
    readonly rate: number /** Load at the set position [N]. */;
    readonly load: Sourced;
    readonly minimum?: number;
    readonly maximum?: number;
  };
  /** Directions held: unit vectors; for guides the two across the pipe, for stops along the pipe. */
  readonly holds: readonly Vec3[];
  /** True for an anchor, which also holds the three rotations. */
  readonly holdsRotation: boolean;
  /** True where the support can only push one way (hangers pull up, rests push up). */
  readonly oneWay: boolean;
  /** Rated load of the support itself [N], where given. */
  readonly rating?: Sourced;
  /** Free movement of a guide or stop, to either side [m]. */
  readonly gap?: number;
  /** Coefficient of friction of a rest or stand, where given [-]. */
  readonly friction?: number;
  /** Stiffness of what it is fastened to, in the directions it holds, where given; Infinity is rigid [N/m]. */
  readonly structure?: Sourced;
  /** Against turning, of an anchor [N·m/rad]. */
  readonly structureTurning?: Sourced;
  /** How far the support itself stands from where it should: settlement or set-height error [m]. */
  readonly imposed?: Vec3;
}

export interface EndPart extends PartBase {
  readonly kind: 'end';
  readonly end: 'anchored' | 'free' | 'continues';
  /** Movement of an anchored end when hot and when cold, from the pipe beyond [m]. */
  readonly movement?: { readonly hot: Vec3; readonly cold: Vec3 };
  /** Stiffness of the pipe beyond, for `continues` [N/m, N·m/rad]. */
  readonly stiffness?: { readonly translation: Vec3; readonly rotation: Vec3 };
  /** Stiffness of what an anchored end is fastened to, where given; Infinity is rigid [N/m, N·m/rad]. */
  readonly structure?: AnchorStructure;
}

/** Stiffness of what holds every movement and turn; Infinity is rigid. */
export interface AnchorStructure {
  /** Alike in every direction [N/m]. */
  readonly translation: Sourced;
  /** About every axis [N·m/rad]. */
  readonly rotation: Sourced;
}

export type Part =
  | StraightPart
  | ElbowPart
  | ReducerPart
  | TeePart
  | FlangePart
  | ValvePart
  | DiffuserPart
  | ConnectorPart
  | CouplingPart
  | WeightPart
  | FittingPart
  | SupportPart
  | EndPart;

/** A run of parts walked outward from a pump port. */
export interface Line {
  readonly name: string;
  readonly from: 'suction' | 'discharge';
  readonly section: PipeSection;
  readonly walk: readonly Part[];
}

export interface Port {
  readonly which: 'suction' | 'discharge';
  readonly nps: string;
  /** Face centre relative to the pump reference (shaft axis at port height) [m]. */
  readonly position: Vec3;
  /** Outward unit vector. */
  readonly facing: Vec3;
  readonly flange: BodyFlange;
}

/** Loads allowed on one nozzle [N, N·m]; only given entries are judged. Axial is along the nozzle. */
export interface NozzleAllowance {
  readonly axialForce?: number;
  readonly verticalForce?: number;
  readonly crossForce?: number;
  readonly resultantForce?: number;
  readonly axialMoment?: number;
  readonly verticalMoment?: number;
  readonly crossMoment?: number;
  readonly resultantMoment?: number;
}

/** How the motor is started. */
export type StartMethod =
  | { readonly kind: 'across the line' }
  | { readonly kind: 'wye-delta' }
  /** `tap` is the share of line voltage 0..1. */
  | { readonly kind: 'autotransformer'; readonly tap: number }
  /** `currentLimit` in multiples of full-load current, `ramp` [s]. */
  | { readonly kind: 'soft starter'; readonly currentLimit: number; readonly ramp?: number }
  /** `torqueLimit` in multiples of full-load torque, `ramp` [s]. */
  | { readonly kind: 'variable-speed drive'; readonly torqueLimit: number; readonly ramp: number };

/** The motor with what is known of its start. */
export interface Motor {
  readonly mass: Sourced;
  readonly centre: Vec3;
  /** [W] */
  readonly power: number;
  /** Full-load speed [rad/s]. */
  readonly speed: number;
  readonly start?: StartMethod;
  /** Torques where the maker gives them [N·m]; otherwise bounded from published minimum values. */
  readonly lockedRotorTorque?: Sourced;
  readonly breakdownTorque?: Sourced;
  /** Locked-rotor current in multiples of full-load current, where given. */
  readonly lockedRotorCurrent?: Sourced;
  /** Inertia of the motor's rotor, where given [kg·m²]. */
  readonly inertia?: Sourced;
  /** Lowest and highest speed a drive may run it at [rad/s]. */
  readonly speeds?: { readonly lowest: number; readonly highest: number };
  /** Share of the rated power it may give for good [-]. */
  readonly serviceFactor?: Sourced;
  /** Whether its maker lets it stand with the shaft down. */
  readonly shaftDown?: boolean;
  /** Rated voltage between lines [V], and rated current at full load [A], where given. */
  readonly voltage?: Sourced;
  readonly fullLoadCurrent?: Sourced;
  /** How it stands on the casing, where given. */
  readonly bracket?: MotorBracket;
}

/** Bracket between casing and motor: by the natural frequency of the motor on it, or by its stiffness against rocking. */
export type MotorBracket =
  /** [Hz] */
  | { readonly kind: 'frequency'; readonly frequency: Sourced }
  /** Infinity is rigid [N·m/rad]. */
  | { readonly kind: 'stiffness'; readonly rotation: Sourced };

/** What the motor is disconnected with; what is absent is not known. */
export interface Disconnect {
  readonly name?: string;
  /** Name of the panel of the room that it is. */
  readonly panel?: string;
  /** From the motor, where no panel is named [m]. */
  readonly distance?: Sourced;
  /** Whether it is seen from the motor, and whether it can be locked open. */
  readonly inSight?: boolean;
  readonly lockable?: boolean;
}

/** What a panel needs in front of it. */
export interface PanelElectrical {
  /** Side its doors open to: unit vector along an axis of the plan. */
  readonly front: Vec3;
  /** Voltage to ground [V]. */
  readonly toGround?: Sourced;
  /** What faces it: nothing live or grounded, something grounded, live parts. */
  readonly opposite?: 'nothing' | 'grounded' | 'live';
}

export interface Pump {
  readonly mark: string;
  readonly build: 'split-coupled' | 'close-coupled';
  /** Said where the shaft stands upright; a level one is refused. */
  readonly shaft?: 'vertical';
  /** Whether the casing has a drain and a vent, and its ports taps for gauges, where the file says so. */
  readonly drain?: boolean;
  readonly vent?: boolean;
  readonly gaugeTaps?: { readonly suction?: boolean; readonly discharge?: boolean };
  /** Whether liquid could run back through the pump at rest. */
  readonly backflow?: 'possible' | 'none';
  readonly disconnect?: Disconnect;
  readonly mount: 'hung' | 'resting' | 'sprung' | 'bolted';
  /** Position of the pump reference (shaft axis at port height) in the plan [m]. */
  readonly position: Vec3;
  readonly casing: { readonly mass: Sourced; readonly centre: Vec3; readonly material: string };
  readonly motor: Motor;
  /** Inertia of impeller, shaft and coupling about the shaft, where given [kg·m²]. */
  readonly rotorInertia?: Sourced;
  /** Blades of the impeller, for the blade passing frequency. */
  readonly blades?: number;
  /** Liquid in the casing [m³]. */
  readonly contents: Sourced;
  readonly ports: { readonly suction: Port; readonly discharge: Port };
  /** Underside of the casing relative to the pump reference, where it rests, is sprung or bolted [m]. */
  readonly base?: {
    readonly position: Vec3;
    /** Coefficient of friction under a resting base [-]. */
    readonly friction?: number;
    /** Stiffness of the floor under a resting base, where given; Infinity is rigid [N/m]. */
    readonly structure?: Sourced;
    /** The same of a bolted one. */
    readonly anchors?: AnchorStructure;
    readonly springs?: BaseSprings;
    /** What moves with the pump between casing and springs, its centre below the underside of the casing [m]. */
    readonly inertiaBase?: { readonly mass: Sourced; readonly below: number };
  };
  readonly duty: { readonly flow: number; readonly head: number; readonly efficiency?: number };
  /** Outline for drawing and headroom [m]: height of the motor top over the port centre-line, motor diameter. */
  readonly outline: {
    readonly motorTop: Sourced;
    readonly motorDiameter: Sourced;
    readonly casingDiameter: Sourced /** Clear height over the motor needed to draw it, where the maker gives it. */;
    readonly withdrawal?: Sourced;
  };
  /** What service asks of its shape, where the file or an assumption says it. */
  readonly dimensions?: PumpDimensions;
}

/** Equal springs under the pump. */
export interface BaseSprings {
  /** Rate of one, upright [N/m]. */
  readonly rate: number;
  /** Load of one as set [N]. */
  readonly load: Sourced;
  readonly count: number;
  /** Where each stands from the position of the base, whose middle they are [m]; absent where nothing is said of it. */
  readonly places?: readonly Vec3[];
  /** Stiffness of one sideways, where given [N/m]. */
  readonly side?: number;
}

/** Heights over the port centre-line, and what comes out of the pump [m, kg]. */
export interface PumpDimensions {
  /** Top and underside of the casing, the latter as a depth. */
  readonly casingAbove?: Sourced;
  readonly casingBelow?: Sourced;
  /** Underside of the motor, and its lifting eyes. */
  readonly motorFoot?: Sourced;
  readonly eyes?: Sourced;
  /** Window between the shaft ends once the spacer of the coupling is out. */
  readonly spacer?: {
    readonly from: number;
    readonly length: Sourced;
    readonly sealLength?: Sourced;
    readonly couplingMass?: Sourced;
  };
  readonly guardDiameter?: Sourced;
  readonly terminalBox?: {
    /** Level unit vector. */
    readonly side: Vec3;
    readonly out: number;
    readonly width: number;
    readonly height: number;
    /** Its middle. */
    readonly up: number;
  };
  readonly guardMass?: Sourced;
  readonly sealMass?: Sourced;
  readonly rotorMass?: Sourced;
}

/** The lift over the motor [m, kg]. */
export interface Lift {
  readonly anchor: Vec3;
  readonly rating?: Sourced;
  /** From the anchor to the bearing of the hook, hoist pulled up. */
  readonly hoistHeight?: Sourced;
  readonly hookToSling: Sourced;
  readonly sling?: {
    readonly legs: number;
    /** Angle of the legs from the level [rad], and the height of the sling. */
    readonly angle: Sourced;
    readonly height: Sourced;
    readonly spread: number;
    /** Of one leg in a straight pull. */
    readonly rating?: Sourced;
  };
  /** Owner's factor on the weight lifted [-]. */
  readonly factor?: Sourced;
  /** How far the anchor may stand off the centre line of the motor. */
  readonly offCentre: Sourced;
}

export type SpacePurpose =
  | 'motor withdrawal'
  | 'coupling and seal'
  | 'wrench room'
  | 'working space'
  | 'handle'
  | 'drain'
  | 'vent'
  | 'gauge'
  | 'aisle'
  | 'casing lift-out';

/** A space to be kept free, with whose number it is. Sizes in [m], angles in [rad]; which are there follows the purpose. */
export interface ServiceSpace {
  readonly purpose: SpacePurpose;
  readonly owner: 'maker' | 'owner';
  readonly source: string;
  readonly path: string;
  readonly height?: number;
  readonly width?: number;
  readonly depth?: number;
  readonly reach?: number;
  /** Unit vector. */
  readonly side?: Vec3;
  /** Name of the part it belongs to. */
  readonly at?: string;
  readonly from?: number;
  readonly angle?: number;
  /** Unit vector. */
  readonly start?: Vec3;
  /** Points of a centre line in plan: east, north. */
  readonly through?: readonly (readonly [number, number])[];
}

export interface Room {
  /** Elevation of the floor [m]. */
  readonly floor?: number;
  /** Elevation of the underside of the structure [m]. */
  readonly ceiling?: number;
  /** Boxes by their lowest and highest corners [m]. */
  readonly objects: readonly {
    readonly name: string;
    readonly kind: 'beam' | 'wall' | 'panel' | 'pipe' | 'duct' | 'other';
    readonly low: Vec3;
    readonly high: Vec3;
    readonly path: string;
    /** Points and outside diameter where it is a run of pipe or duct; the box is the smallest round it [m]. */
    readonly run?: { readonly points: readonly Vec3[]; readonly diameter: number };
    /** What a panel needs in front of it, where the file says so. */
    readonly electrical?: PanelElectrical;
  }[];
  /** Middle of the opening in plan, and its clear width [m]. */
  readonly wayOut?: { readonly at: readonly [number, number]; readonly width: Sourced };
  readonly lift?: Lift;
  /** Height of the level working space beside the pump and of the way out [m]; there where the room has a floor. */
  readonly headHeight?: Sourced;
}

/** Bases a nozzle load can be judged or compared by. */
export type NozzleBasis =
  | 'maker'
  | 'process-pump table'
  | 'process-pump table doubled'
  | 'nozzle principal stress';

/** Where a rule is laid down. */
export interface RuleDocument {
  readonly document: string;
  readonly clause: string;
}

export interface Limits {
  readonly nozzle: {
    /** The basis of the verdict: the maker's, or a published one that a document names; without one it is `cannot-tell`. */
    readonly basis?: NozzleBasis;
    /** What names a published basis for this pump. */
    readonly namedIn?: RuleDocument & { readonly by: 'maker' | 'owner' };
    /** A published basis that the file asks for and no document names: compared, and decides nothing. */
    readonly unnamed?: NozzleBasis;
    readonly comparisons: readonly NozzleBasis[];
    readonly maker?: {
      readonly document: string;
      readonly suction: NozzleAllowance;
      readonly discharge: NozzleAllowance;
    };
  };
  readonly stress: {
    readonly code: 'B31.9' | 'B31.1';
    readonly edition?: string;
    /** Allowable stress at the hot and the cold temperature [Pa]. */
    readonly hot?: Sourced;
    readonly cold?: Sourced;
    readonly cycles: Sourced;
    /** How far an occasional load may take the stress over the hot allowable [-]. */
    readonly occasionalFactor?: Sourced;
    /** Factor of the longitudinal weld, for hoop stress [-]. */
    readonly jointFactor?: Sourced;
  };
  /** Practice of the trade that a document of the owner makes a limit, by id of the check. */
  readonly ownerRules?: readonly (RuleDocument & { readonly rule: string })[];
  readonly rods: { readonly edition: 'older' | 'later' };
  readonly span: {
    /** Longest span by the user's rule [m]; otherwise the table. */ readonly longest?: Sourced;
  };
  readonly firstSupport: { readonly pump?: Sourced; readonly bend: Sourced };
  /** Sideways coefficient of g, from the engineer or from the published formula [-]. */
  readonly lateral?: { readonly coefficient: Sourced; readonly occasionalFactor?: Sourced };
  /** Margin a natural frequency keeps from an exciting one, as a share of the latter [-]. */
  readonly frequencyMargin?: Sourced;
  /** Largest r.m.s. velocity of vibration at the bearings [m/s]. */
  readonly vibration?: Sourced;
  /** Damping ratio for the start-up history [-]. */
  readonly damping?: Sourced;
  /** Largest movement of the motor top at start [m]. */
  readonly startMovement?: Sourced;
  /** Largest velocity of the liquid [m/s]. */
  readonly velocity?: { readonly suction?: Sourced; readonly discharge?: Sourced };
  /** Straight pipe before the suction, in diameters [-]. */
  readonly straightRun?: Sourced;
  /** Flange fit-up: gap beyond the gasket, offset and parallelism [m]. */
  readonly fitUp?: { readonly gap?: Sourced; readonly offset?: Sourced; readonly parallelism?: Sourced };
}

export interface Installation {
  readonly format: 'pipeborne/1';
  /** SHA-256 of the file's bytes, hex. */
  readonly fingerprint: string;
  /** Digests of what it is, whatever is said about it; there where it was read from a file. */
  readonly content?: string;
  readonly review: ReviewData;
  readonly service: Service;
  readonly materials: Readonly<Record<string, Material>>;
  readonly pump: Pump;
  readonly lines: readonly Line[];
  readonly room: Room;
  /** Spaces with the maker's or the owner's numbers. */
  readonly serviceSpaces?: readonly ServiceSpace[];
  readonly limits: Limits;
  readonly assumptions: readonly Assumption[];
  /** Every source used while reading, for the reference list. */
  readonly sourcesUsed?: readonly SourceId[];
}
