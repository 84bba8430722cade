/**
 * Plane line built in at both ends, by the elastic-centre method, written apart from the product.
 *
 * Cut one end loose and bring it back: with x, y from the loose end, s along the line, k the flexibility factor,
 *
 *     ∫ M k ds/EI = 0,   ∫ M y k ds/EI + ∫ N t_x ds/EA = e X,   −∫ M x k ds/EI + ∫ N t_y ds/EA = e Y
 *
 * with M = M₀ + F_x y − F_y x, N = F_x t_x + F_y t_y, and X, Y the distance between the ends. Straight pieces are
 * integrated exactly and arcs by Simpson's rule in 2000 steps.
 */
export interface PlanePiece {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** An arc about this centre; straight without. */
  readonly centre?: readonly [number, number];
  readonly flexibility?: number;
}

export interface PlaneSection {
  readonly bending: number;
  /** Infinity leaves axial strain out. */
  readonly axial: number;
}

/** Forces at the first end that hold it when the line grows by a strain, and the moment about any place. */
export function restrainedGrowth(pieces: readonly PlanePiece[], section: PlaneSection, strain: number) {
  const first = pieces[0];
  const last = pieces[pieces.length - 1];
  if (first === undefined || last === undefined) throw new Error('no pieces');
  const [x0, y0] = first.from;
  let [s, sx, sy, sxx, syy, sxy, axx, ayy, axy] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const piece of pieces) {
    const steps = piece.centre === undefined ? 2 : 2000;
    const k = piece.flexibility ?? 1;
    for (let i = 0; i <= steps; i++) {
      const weight = (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) / (3 * steps);
      const { at, tangent, length } = placeOn(piece, i / steps);
      const [x, y] = [at[0] - x0, at[1] - y0];
      const ds = (weight * length * k) / section.bending;
      const da = (weight * length) / section.axial;
      s += ds;
      sx += x * ds;
      sy += y * ds;
      sxx += x * x * ds;
      syy += y * y * ds;
      sxy += x * y * ds;
      axx += tangent[0] * tangent[0] * da;
      ayy += tangent[1] * tangent[1] * da;
      axy += tangent[0] * tangent[1] * da;
    }
  }
  // About the elastic centre the moment drops out.
  const [xc, yc] = [sx / s, sy / s];
  const a = syy - s * yc * yc + axx;
  const b = -(sxy - s * xc * yc) + axy;
  const d = sxx - s * xc * xc + ayy;
  const [ex, ey] = [strain * (last.to[0] - x0), strain * (last.to[1] - y0)];
  const fx = (ex * d - ey * b) / (a * d - b * b);
  const fy = (ey * a - ex * b) / (a * d - b * b);
  const momentAt = ([x, y]: readonly [number, number]) => fx * (y - y0 - yc) - fy * (x - x0 - xc);
  return { fx, fy, momentAt };
}

function placeOn(piece: PlanePiece, share: number) {
  const { from, to, centre } = piece;
  if (centre === undefined) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const tangent = [(to[0] - from[0]) / length, (to[1] - from[1]) / length] as const;
    const at = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])] as const;
    return { at, tangent, length };
  }
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  let turn = Math.atan2(to[1] - centre[1], to[0] - centre[0]) - start;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  if (turn < -Math.PI) turn += 2 * Math.PI;
  const angle = start + share * turn;
  const at = [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const;
  const way = Math.sign(turn);
  const tangent = [-way * Math.sin(angle), way * Math.cos(angle)] as const;
  return { at, tangent, length: radius * Math.abs(turn) };
}
