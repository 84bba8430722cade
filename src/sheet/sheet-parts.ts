/** Registry of the parts of a field sheet, in the order of the work. One line here, one file in `parts`. */
import { access } from './parts/access.js';
import { beforeBoltUp } from './parts/before-bolt-up.js';
import { beforeStart } from './parts/before-start.js';
import { coupling } from './parts/coupling.js';
import { electrical } from './parts/electrical.js';
import { hydraulic } from './parts/hydraulic.js';
import { identity } from './parts/identity.js';
import { knockTest } from './parts/knock-test.js';
import { openItems } from './parts/open-items.js';
import { plumb } from './parts/plumb.js';
import { seal } from './parts/seal.js';
import { signOff } from './parts/sign-off.js';
import { startUpPart } from './parts/start-up.js';
import { supports } from './parts/supports.js';
import { vibration } from './parts/vibration.js';
import type { PartDefinition } from './sheet-part.js';

/** Every part. */
export const sheetParts: readonly PartDefinition[] = [
  identity,
  beforeBoltUp,
  supports,
  plumb,
  coupling,
  seal,
  beforeStart,
  hydraulic,
  electrical,
  vibration,
  knockTest,
  startUpPart,
  access,
  openItems,
  signOff,
];
