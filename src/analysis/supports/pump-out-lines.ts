import { type PumpOut, pumpOut } from '../../mechanics/what-ifs/pump-out.js';
import { conditionOf } from '../conditions.js';
import type { Facts } from '../facts.js';
import { memoized } from '../memoized.js';
import { nozzleFaces, pumpBody } from '../nozzles/nozzle-faces.js';

const NOTHING: PumpOut = { flanges: [], springs: [] };

/** What both lines do when the pump is lifted out. Worked out once for each review. */
export const pumpOutLines = memoized((subject: Facts): PumpOut => {
  const { frame } = subject.layout;
  const bolted = conditionOf(subject, 'filled');
  const out = conditionOf(subject, 'pump-out');
  const pump = pumpBody(subject);
  if (bolted === undefined || out === undefined || pump === undefined) return NOTHING;
  return pumpOut(frame, { bolted, out }, pump.name, nozzleFaces(subject));
});
