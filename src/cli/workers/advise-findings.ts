/** Job: the findings of a changed file, for `advise`. */
export { findingsOfText as adviseFindings } from '../../app/advise.js';
