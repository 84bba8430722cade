/** Job: quick looks at changes of a file, for `advise`. */
import { trialsInPlace } from '../../app/advise.js';

/** Looks at trials; each thread keeps the file of the last ones open. */
export const adviseTrials = trialsInPlace();
