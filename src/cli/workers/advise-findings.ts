/** Job: the findings of a changed file, for `advise`. */
export { findingsOfText as adviseFindings } from '../../advise.js';
