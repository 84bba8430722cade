import { type DrySetting, possibleSetting } from '../../mechanics/what-ifs/spring-setting.js';
import { type RaisingEffect, raisingEffects } from '../../mechanics/what-ifs/support-setting.js';
import { conditionId, inPrintedOrder, isReadable } from '../../model/conditions/condition-roles.js';
import { supportFacts } from '../../model/support-parts.js';
import { conditionOf } from '../conditions.js';
import type { Facts } from '../facts.js';
import { memoized } from '../memoized.js';
import { nozzleFaces, pumpBody } from '../nozzles/nozzle-faces.js';

/** How the supports are to be set, and what setting them otherwise does. */
export interface SupportSettings {
  /** What raising each support that hangs or stands does, per metre, with the line filled. */
  readonly raising: readonly RaisingEffect[];
  /** Springs set so that they come right in service; absent where there are none. */
  readonly springs?: DrySetting;
  /** Condition the springs come right in. */
  readonly target: string;
}

/** Settings of the supports. Worked out once for each review. */
export const supportSettings = memoized((subject: Facts): SupportSettings => {
  const { frame, supports } = subject.layout;
  const filled = conditionOf(subject, 'filled');
  const running = conditionOf(subject, 'running') ?? filled;
  const pump = pumpBody(subject);
  if (filled === undefined || running === undefined || pump === undefined) {
    return { raising: [], target: conditionId('filled') };
  }
  const marks = supports.filter((support) => supportFacts(support).adjustable).map(({ mark }) => mark);
  const read = inPrintedOrder(frame.conditions).filter(isReadable);
  const springs = possibleSetting(frame, { target: running, read });
  return {
    raising: raisingEffects(frame, filled, pump.name, { nozzles: nozzleFaces(subject), marks }),
    target: running.name,
    ...(springs && { springs }),
  };
});
