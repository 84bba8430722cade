import type { Installation } from '../input/installation.js';
import type { Response } from '../mechanics/frame/response.js';
import type { Frequencies } from '../mechanics/modes/frequencies.js';
import type { StartUp } from '../mechanics/start/start-up.js';
import type { Layout } from '../model/layout/layout.js';

/** What was read and what was solved: all that anything further follows from. */
export interface Facts {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly response: Response;
  /** Small vibrations about the condition `running`; absent where they were not worked out. */
  readonly frequencies?: Frequencies;
  /** The start of the set; absent where it was not worked out. */
  readonly startUp?: StartUp;
}
