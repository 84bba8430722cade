/** Algebra of symmetric matrices kept by profile, and of small dense ones. */
export * from './condition-estimate.js';
export * from './gauss-legendre.js';
export * from './graph-ordering.js';
export * from './largest-on-unit.js';
export * from './lowest-modes.js';
export * from './profile-factor.js';
export * from './profile-matrix.js';
export * from './singular-values.js';
export * from './small-inverse.js';
export * from './small-solve.js';
export * from './symmetric-eigen.js';
export * from './tridiagonal-eigen.js';
