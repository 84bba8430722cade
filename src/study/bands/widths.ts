/** How far a value may be off, by what it is and how it was obtained. Nothing here is a limit: it says how sure a number is. */
import type { Citation } from '../../sources/index.js';
import type { Obtained } from './uncertainty.js';

/** Half width with its source. */
export interface Width {
  /** [-], or [m] for places. */
  readonly half: number;
  readonly citation: Citation;
}

const practice = (clause: string): Citation => ({
  source: 'common-practice',
  clause,
  confidence: 'common practice',
});

/** Weights of equipment and of parts described in the file [-]. */
const weights: Readonly<Record<Obtained, Width>> = {
  weighed: { half: 0.02, citation: practice('weighed on site with a load cell or crane scale, within 2 %') },
  maker: { half: 0.1, citation: practice("weight of the manufacturer's outline drawing, within 10 %") },
  given: { half: 0.15, citation: practice('weight given without saying how it is known, within 15 %') },
  catalogue: {
    half: 0.25,
    citation: practice('weight of a handbook table for parts of many makes, within 25 %'),
  },
  computed: { half: 0.1, citation: practice('weight worked out from dimensions, within 10 %') },
  handbook: {
    half: 0.25,
    citation: practice('weight of a handbook table for parts of many makes, within 25 %'),
  },
  estimated: { half: 0.25, citation: practice('estimated weight, within 25 %') },
  assumed: { half: 0.25, citation: practice('assumed weight, within 25 %') },
};

/** A motor of one power weighs very differently by enclosure, speed and make [-]. */
const motorGuess: Width = {
  half: 0.4,
  citation: practice('weight of a motor estimated from its power, within 40 %; read the nameplate'),
};

/** Fittings and flanges are made to standard dimensions; their weights differ less than those of valves [-]. */
const standardParts: Width = {
  half: 0.1,
  citation: practice('weight of flanges and fittings of standard dimensions, within 10 %'),
};

/** Plain-end pipe against its nominal weight [-]. */
const pipe: Width = {
  half: 0.1,
  citation: { source: 'astm-a53', clause: 'permissible variation in weight, 10 %', confidence: 'memory' },
};

const insulation: Width = {
  half: 0.2,
  citation: practice('weight of insulation and jacket as applied, within 20 %'),
};

const volume: Readonly<Record<'given' | 'other', Width>> = {
  given: { half: 0.1, citation: practice('volume given for a casing, within 10 %') },
  other: { half: 0.3, citation: practice('volume of a casing from its size, within 30 %') },
};

/** Spring hangers: rate, and load at the set position [-]. */
const springRate: Width = {
  half: 0.05,
  citation: { source: 'mss-sp-58', clause: 'tolerance of the spring rate, 5 %', confidence: 'memory' },
};
const springLoad: Width = {
  half: 0.05,
  citation: practice('load at which a spring hanger is set on site, within 5 %'),
};

/** Stiffness of rubber, bellows and couplings [-]: between 1/1.3 and 1.3 of what is given. */
const jointStiffness: Width = {
  half: 0.3,
  citation: practice('stiffness of a connector or coupling, within 30 %'),
};

/** An effective stiffness stands for pipe that is not described: half to twice [-]. */
const pipeBeyond: Width = {
  half: 1,
  citation: practice('effective stiffness of the pipe beyond, half to twice'),
};

/** Centre of gravity off the shaft axis: terminal box, fan cowl, volute [m]. */
const centre: Width = {
  half: 0.0254,
  citation: practice('centre of gravity off the shaft axis by up to 1 in (25 mm)'),
};

const endTurns: Width = {
  half: 1,
  citation: practice('an anchor in light structure holds in place and turns'),
};

export const widths = {
  weights,
  motorGuess,
  standardParts,
  pipe,
  insulation,
  volume,
  springRate,
  springLoad,
  jointStiffness,
  pipeBeyond,
  centre,
  endTurns,
} as const;
