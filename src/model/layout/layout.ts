/**
 * The layout: what stands where along each line. Built together with the frame, it lets checks, drawings and
 * tables speak of `H3`, `elbow 2` or the span between two hangers without knowing how the frame was made.
 */

import type {
  Covering,
  ElbowPart,
  FittingPart,
  FlangeDimensions,
  FlangePart,
  PipeSection,
  Sourced,
  SupportPart,
  TeePart,
} from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { Frame } from '../frame/frame.js';
import type { PlacedKind } from '../support-parts.js';

/** A nozzle of the pump. */
export interface PlacedNozzle {
  readonly which: 'suction' | 'discharge';
  /** Frame point at the flange face. */
  readonly point: string;
  readonly at: Vec3;
  /** Outward unit vector, the axial direction. */
  readonly axis: Vec3;
  readonly nps: string;
  /** Section of the pipe that starts there. */
  readonly section: PipeSection;
}

export interface PlacedSupport {
  readonly mark: string;
  readonly kind: PlacedKind;
  readonly point: string;
  readonly at: Vec3;
  /** Line name, or `pump`. */
  readonly line: string;
  /** Distance along the line from the pump's flange face [m]. */
  readonly station: number;
  /** The part of the input; absent for pump bases and ends. */
  readonly part?: SupportPart;
  readonly section?: PipeSection;
  /** Direction of the pipe there. */
  readonly along: Vec3;
}

/** Pipe between two neighbouring weight-carrying supports (or an end) along one line. */
export interface PlacedSpan {
  readonly line: string;
  readonly from: string;
  readonly to: string;
  /** Length along the pipe [m], and its share that runs level [m]. */
  readonly length: number;
  readonly level: number;
  /** Largest section in it. */
  readonly section: PipeSection;
  /** True where valves, flanges, the pump or other lumps stand in it. */
  readonly lumps: boolean;
  /** True where it changes direction. */
  readonly bent: boolean;
  /** True where the pump stands in it: not a pipe span. */
  readonly pump: boolean;
}

export interface PlacedBend {
  readonly name: string;
  readonly line: string;
  /** Frame members it is made of. */
  readonly members: readonly string[];
  readonly at: Vec3;
  readonly part: ElbowPart;
  /** Stations of its two ends [m]. */
  readonly start: number;
  readonly end: number;
  /** Stress factors and flexibility used. */
  readonly factors: BendFactors;
}

export interface BendFactors {
  /** Flexibility characteristic h [-]. */
  readonly characteristic: number;
  /** Flexibility factor k [-]. */
  readonly flexibility: number;
  /** Stress intensification factor i [-]. */
  readonly intensification: number;
  /** How many ends are stiffened by a flange or valve: 0, 1, 2. */
  readonly stiffEnds: 0 | 1 | 2;
  /** What k was multiplied by for stiff ends [-]. */
  readonly stiffening: number;
}

export interface PlacedTee {
  readonly name: string;
  readonly line: string;
  readonly point: string;
  readonly part: TeePart;
  readonly intensification: number;
  /** Members that meet at it. */
  readonly members: readonly string[];
}

/** Two flanges bolted face to face; one side may be the pump's or a valve's own flange. */
export interface PlacedFlangeJoint {
  readonly name: string;
  readonly line: string;
  /** Frame point at the gasket. */
  readonly point: string;
  readonly at: Vec3;
  readonly axis: Vec3;
  /** Body and point from which the wrench is read: the wrench across the joint on this body. */
  readonly body: string;
  readonly sides: readonly [FlangeSide, FlangeSide];
}

export interface FlangeSide {
  readonly owner: string;
  readonly standard: 'B16.5' | 'B16.1' | 'own' | 'unknown';
  readonly class: string;
  readonly face: 'raised' | 'flat' | 'unknown';
  readonly material: 'cast iron' | 'ductile iron' | 'steel' | 'unknown';
  readonly dimensions?: FlangeDimensions;
  readonly part?: FlangePart;
}

/** One line of the weight table. */
export interface WeightRow {
  readonly part: string;
  readonly line: string;
  /** [kg] */
  readonly dry: number;
  readonly contents: number;
  readonly covering: number;
  /** Where its weight acts. */
  readonly at: Vec3;
  readonly mass: Sourced;
}

/** A drain, a vent, a tap or a start-up screen. */
export interface PlacedFitting {
  readonly name: string;
  readonly fitting: FittingPart['fitting'];
  readonly line: string;
  readonly at: Vec3;
  /** Direction of the pipe there, away from the pump. */
  readonly along: Vec3;
  /** Distance along the line from the pump's flange face [m]. */
  readonly station: number;
  readonly section: PipeSection;
}

/** What to draw: each piece of the line in order. */
export type Stroke =
  | {
      readonly kind: 'straight';
      readonly name: string;
      readonly line: string;
      readonly from: Vec3;
      readonly to: Vec3;
      readonly diameter: number;
      readonly points: readonly [string, string];
      readonly role: 'pipe' | 'valve' | 'flange' | 'reducer' | 'diffuser' | 'connector' | 'pump';
    }
  | {
      readonly kind: 'arc';
      readonly name: string;
      readonly line: string;
      readonly from: Vec3;
      readonly to: Vec3;
      readonly centre: Vec3;
      readonly diameter: number;
      readonly points: readonly [string, string];
    };

/** Where a part of a line stands. */
export interface PartPlace {
  /** Its middle [m]. */
  readonly at: Vec3;
  /** Direction of travel there, unit vector. */
  readonly along: Vec3;
  /** Radius of its pipe with its covering [m]. */
  readonly radius: number;
}

/** Everything placed. */
export interface Layout {
  readonly frame: Frame;
  readonly nozzles: { readonly suction: PlacedNozzle; readonly discharge: PlacedNozzle };
  readonly supports: readonly PlacedSupport[];
  readonly spans: readonly PlacedSpan[];
  readonly bends: readonly PlacedBend[];
  readonly tees: readonly PlacedTee[];
  readonly flangeJoints: readonly PlacedFlangeJoint[];
  readonly weights: readonly WeightRow[];
  readonly strokes: readonly Stroke[];
  /** Place of every part of the lines by its name. */
  readonly partPlaces?: Readonly<Record<string, PartPlace>>;
  /** Small things on the pipe; absent in a layout made by hand without them. */
  readonly fittings?: readonly PlacedFitting[];
  /** Section and line of every member, for stresses. */
  readonly memberInfo: Readonly<
    Record<
      string,
      {
        readonly line: string;
        readonly part: string;
        readonly section: PipeSection;
        readonly covering?: Covering;
      }
    >
  >;
}
