import { cross, dot, minus, plus, times, type Vec3 } from './vector.js';

/** A point of the difference of two bodies, with the points it is the difference of. */
export interface DifferencePoint {
  /** a − b [m]. */
  readonly point: Vec3;
  readonly onA: Vec3;
  readonly onB: Vec3;
  /** Difference of the corners they belong to [m]. */
  readonly corner: Vec3;
}

/** The point of a simplex that is nearest to the origin. */
export interface NearestOfSimplex {
  /** [m] */
  readonly point: Vec3;
  /** Corners that carry it, and their shares, which sum to one. */
  readonly carriers: readonly DifferencePoint[];
  readonly shares: readonly number[];
  /** True when the origin lies inside a tetrahedron. */
  readonly inside: boolean;
}

/**
 * Point of a point, segment, triangle or tetrahedron that is nearest to the origin. Every corner, edge and face is tried
 * and the best kept: slower than walking from one to the next, and never lost on a thin simplex.
 *
 * @param corners - one to four points [m]
 * @returns nearest point, and the corners and shares it is made of [m]
 * After Ericson, Real-Time Collision Detection, 2005, chapter 5.
 */
export function nearestOfSimplex(corners: readonly DifferencePoint[]): NearestOfSimplex | undefined {
  let best: NearestOfSimplex | undefined;
  let least = Number.POSITIVE_INFINITY;
  const offer = (carriers: readonly DifferencePoint[], shares: readonly number[]): void => {
    const point = mixOf(
      carriers.map((carrier) => carrier.point),
      shares,
    );
    const size = dot(point, point);
    if (size < least) [best, least] = [{ point, carriers, shares, inside: false }, size];
  };
  corners.forEach((a, i) => {
    offer([a], [1]);
    corners.slice(i + 1).forEach((b, j) => {
      offerEdge(a, b, offer);
      for (const c of corners.slice(i + j + 2)) offerFace(a, b, c, offer);
    });
  });
  const [a, b, c, d] = corners;
  if (a && b && c && d) {
    const shares = sharesInTetrahedron(a.point, b.point, c.point, d.point);
    if (shares !== undefined) return { point: [0, 0, 0], carriers: corners, shares, inside: true };
  }
  return best;
}

/**
 * Points mixed by shares.
 *
 * @param points - points [m]
 * @param shares - as many shares as points [-]
 * @returns sum of points times shares [m]
 */
export function mixOf(points: readonly Vec3[], shares: readonly number[]): Vec3 {
  return points.reduce<Vec3>((sum, point, index) => plus(sum, times(point, shares[index] ?? 0)), [0, 0, 0]);
}

type Offer = (carriers: readonly DifferencePoint[], shares: readonly number[]) => void;

function offerEdge(a: DifferencePoint, b: DifferencePoint, offer: Offer): void {
  const along = minus(b.point, a.point);
  const share = -dot(a.point, along) / dot(along, along);
  if (share > 0 && share < 1) offer([a, b], [1 - share, share]);
}

function offerFace(a: DifferencePoint, b: DifferencePoint, c: DifferencePoint, offer: Offer): void {
  const normal = cross(minus(b.point, a.point), minus(c.point, a.point));
  const size = dot(normal, normal);
  if (!(size > 0)) return;
  const ofA = dot(cross(b.point, c.point), normal) / size;
  const ofB = dot(cross(c.point, a.point), normal) / size;
  const ofC = dot(cross(a.point, b.point), normal) / size;
  const sum = ofA + ofB + ofC;
  if (ofA > 0 && ofB > 0 && ofC > 0) offer([a, b, c], [ofA / sum, ofB / sum, ofC / sum]);
}

/** Shares of the corners in the origin, when it lies inside and the tetrahedron is not flat. */
function sharesInTetrahedron(a: Vec3, b: Vec3, c: Vec3, d: Vec3): readonly number[] | undefined {
  const whole = sixfold(minus(b, a), minus(c, a), minus(d, a));
  const size = Math.max(...[a, b, c, d].map((corner) => dot(corner, corner)));
  if (!(Math.abs(whole) > FLAT * size ** 1.5)) return undefined;
  const shares = [sixfold(b, c, d), -sixfold(a, c, d), sixfold(a, b, d), -sixfold(a, b, c)].map(
    (part) => part / whole,
  );
  return shares.every((share) => share >= 0) ? shares : undefined;
}

/** Six times the signed volume between three vectors. */
function sixfold(a: Vec3, b: Vec3, c: Vec3): number {
  return dot(a, cross(b, c));
}

/** Volume against the cube of the size below which a tetrahedron is taken as flat; its faces serve instead [-]. */
const FLAT = 1e-14;
