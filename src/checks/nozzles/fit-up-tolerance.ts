import { type MisfitLoads, misfitLoads } from '../../analysis/nozzles/misfit-loads.js';
import { type NozzleComponent, nozzleComponents } from '../../analysis/nozzles/nozzle-components.js';
import { faceDiameters } from '../../analysis/nozzles/nozzle-faces.js';
import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import type { NozzleAxisLoads } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import type { MisfitWay } from '../../mechanics/what-ifs/fit-up.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const BASIS: Citation = {
  source: 'asme-pcc-1',
  clause: 'appendix E, alignment of flanges before assembly',
  confidence: 'read',
};

/** What the faces may be off before the bolts go in. */
interface Tolerance {
  /** [m] */
  readonly gap: number;
  /** [m] */
  readonly offset: number;
  /** Angle between the faces [rad]. */
  readonly tilt: number;
  /** True where the file does not give them and published ones stand in. */
  readonly isPublished: boolean;
}

/**
 * The nozzles stay within their basis when a joint that is off by what is permitted is pulled shut.
 *
 * Why: what a fitter may leave between two flanges is a published number, and what a pump may bear is another, and
 * nobody compares them. The loads of the filled line and of closing gap, offset and tilt are added at their worst: the
 * faces may miss to any side. Where each alone would be borne and only all together not, it cannot be told before the
 * faces are measured.
 */
export const fitUpTolerance = defineCheck({
  id: 'fit-up-tolerance',
  title: 'Nozzle loads from flange misalignment',
  trade: 'Pipe fitter',
  section: 'fit-up',
  dependsOn: ['supports', 'weights'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: 'N',
  basis: [BASIS],
  exceeds: 'checks.fit-up-tolerance.exceeds',
  noPlace: 'checks.fit-up-tolerance.no-place',
  places: misfitLoads,
  at: ({ nozzle }) => `${nozzle.which} nozzle`,
  demands: (loads, subject): readonly Demand[] => {
    const { basis } = subject.installation.limits.nozzle;
    if (basis === 'nozzle principal stress') {
      return [{ kind: 'does-not-apply', code: 'checks.fit-up-tolerance.judged-by-stress' }];
    }
    const tolerance = toleranceAt(loads, subject);
    if (tolerance === undefined) {
      return [{ kind: 'cannot-tell', code: 'checks.fit-up-tolerance.no-tolerance' }];
    }
    const limits = basis === undefined ? undefined : nozzleLimits(basis, loads.nozzle, subject.installation);
    const { which } = loads.nozzle;
    if (limits === undefined) {
      const component = nozzleComponents.find(({ key }) => key === 'resultantForce');
      return component === undefined
        ? []
        : [
            {
              ...readingOf(component, loads, pulledAt(loads, tolerance), tolerance),
              limit: undefined,
              missing: 'checks.fit-up-tolerance.no-basis',
              data: { nozzle: which },
            },
          ];
    }
    const pulled = pulledAt(loads, tolerance);
    return nozzleComponents.flatMap((component): readonly Demand[] => {
      const limit = limits.allowance[component.key];
      if (limit === undefined) return [];
      const data = { nozzle: which, component: component.label };
      return [{ ...readingOf(component, loads, pulled, tolerance), limit, basis: limits.basis, data }];
    });
  },
});

function toleranceAt({ nozzle }: MisfitLoads, subject: Subject): Tolerance | undefined {
  const { gap, offset, parallelism } = subject.installation.limits.fitUp ?? {};
  const { face } = faceDiameters(subject, nozzle.point);
  if (gap === undefined || offset === undefined || parallelism === undefined || face === undefined) {
    return undefined;
  }
  return {
    gap: gap.value,
    offset: offset.value,
    tilt: parallelism.value / face,
    isPublished: [gap, offset, parallelism].some(({ origin }) => origin.kind === 'assumed'),
  };
}

/** What each way adds when it is off by its tolerance, to the one side and to the other. */
interface Pulled {
  readonly gap: readonly NozzleAxisLoads[];
  readonly rise: readonly NozzleAxisLoads[];
  readonly offset: readonly NozzleAxisLoads[];
  readonly upright: readonly NozzleAxisLoads[];
  readonly sideways: readonly NozzleAxisLoads[];
}

function pulledAt({ added }: MisfitLoads, { gap, offset, tilt }: Tolerance): Pulled {
  const both = (way: MisfitWay, misfit: number) => [added(way, misfit), added(way, -misfit)];
  return {
    gap: both('gap', gap),
    rise: both('rise', offset),
    offset: both('offset', offset),
    upright: both('tilt-upright', tilt),
    sideways: both('tilt-sideways', tilt),
  };
}

/** One component: filled, and the most that gap, offset and tilt can add to it. */
function readingOf(component: NozzleComponent, loads: MisfitLoads, pulled: Pulled, tolerance: Tolerance) {
  const { key, label, unit } = component;
  const start = Math.abs(loads.filled[key]);
  const worse = (sides: readonly NozzleAxisLoads[]) =>
    sides.reduce((most, next) => (Math.abs(next[key]) > Math.abs(most[key]) ? next : most));
  const shares = [
    Math.abs(worse(pulled.gap)[key]),
    mostOfTwo(worse(pulled.rise), worse(pulled.offset), component),
    mostOfTwo(worse(pulled.upright), worse(pulled.sideways), component),
  ];
  const [gap, offset, tilt] = [
    (shares[0] ?? 0) / tolerance.gap,
    (shares[1] ?? 0) / tolerance.offset,
    (shares[2] ?? 0) / tolerance.tilt,
  ];
  const perMetre = unit === 'N' ? ('N/m' as const) : ('N' as const);
  return {
    kind: 'compared' as const,
    condition: conditionId('filled'),
    // A published tolerance that nobody has asked for here is compared with, and decides nothing.
    comparison: tolerance.isPublished,
    label,
    unit,
    demand: start + shares.reduce((sum, share) => sum + share, 0),
    least: { demand: start + Math.max(...shares), code: 'checks.fit-up-tolerance.together' as const },
    calculation: {
      symbol: 'L',
      formula: 'L0 + kg * g + ko * o + kt * t',
      unit,
      values: [
        { symbol: 'L0', value: start, unit, meaning: `${label}, line filled` },
        { symbol: 'kg', value: gap, unit: perMetre, meaning: 'for each length of gap closed' },
        { symbol: 'g', value: tolerance.gap, unit: 'm' as const, meaning: 'gap beyond the gasket permitted' },
        {
          symbol: 'ko',
          value: offset,
          unit: perMetre,
          meaning: 'for each length of offset, at its worst side',
        },
        { symbol: 'o', value: tolerance.offset, unit: 'm' as const, meaning: 'offset permitted' },
        {
          symbol: 'kt',
          value: tilt,
          unit: unit,
          meaning: 'for each radian of tilt, at its worst side',
        },
        { symbol: 't', value: tolerance.tilt, unit: '-' as const, meaning: 'tilt permitted, over the face' },
      ],
    },
  };
}

/**
 * The most that a misfit of one unit can add when it may lie to any side between two square ways: for a component
 * √(a² + b²); for a resultant the larger singular value of the two vectors side by side.
 */
function mostOfTwo(first: NozzleAxisLoads, second: NozzleAxisLoads, { key }: NozzleComponent): number {
  if (key !== 'resultantForce' && key !== 'resultantMoment') return Math.hypot(first[key], second[key]);
  const vector = (own: NozzleAxisLoads) =>
    key === 'resultantForce'
      ? [own.axialForce, own.verticalForce, own.crossForce]
      : [own.axialMoment, own.verticalMoment, own.crossMoment];
  const [a, b] = [vector(first), vector(second)];
  const product = (p: readonly number[], q: readonly number[]) =>
    p.reduce((sum, value, index) => sum + value * (q[index] ?? 0), 0);
  const [aa, bb, ab] = [product(a, a), product(b, b), product(a, b)];
  return Math.sqrt((aa + bb) / 2 + Math.hypot((aa - bb) / 2, ab));
}
