import { type PumpOut, pumpOut } from '../mechanics/index.js';
import type { Subject } from './finding.js';
import { conditionNamed, nozzleFaces, pumpBody } from './nozzle-faces.js';
import { workedOnce } from './worked-once.js';

const NOTHING: PumpOut = { flanges: [], springs: [] };

/** What both lines do when the pump is lifted out. Worked out once for each review. */
export const pumpOutLines = workedOnce((subject: Subject): PumpOut => {
  const { frame } = subject.layout;
  const bolted = conditionNamed(subject, 'filled');
  const out = conditionNamed(subject, 'pump-out');
  const pump = pumpBody(subject);
  if (bolted === undefined || out === undefined || pump === undefined) return NOTHING;
  return pumpOut(frame, { bolted, out }, pump.name, nozzleFaces(subject));
});
