import { type DrySetting, drySetting } from '../../mechanics/what-ifs/spring-setting.js';
import { type RaisingEffect, raisingEffects } from '../../mechanics/what-ifs/support-setting.js';
import { memoized } from '../memoized.js';
import { conditionNamed, nozzleFaces, pumpBody } from '../nozzles/nozzle-faces.js';
import type { Subject } from '../subject.js';

/** How the supports are to be set, and what setting them otherwise does. */
export interface SupportSettings {
  /** What raising each support that hangs or stands does, per metre, with the line filled. */
  readonly raising: readonly RaisingEffect[];
  /** Springs set so that they come right in service; absent where there are none. */
  readonly springs?: DrySetting;
  /** Condition the springs come right in. */
  readonly target: string;
}

/** Kinds whose height a nut or a shim sets. */
const ADJUSTED: readonly string[] = ['hanger', 'spring-hanger', 'rest', 'stand'];

/** Conditions in which a fitter may read a spring. */
const READ: readonly string[] = ['empty', 'filled', 'running', 'hot', 'cold'];

/** Settings of the supports. Worked out once for each review. */
export const supportSettings = memoized((subject: Subject): SupportSettings => {
  const { frame, supports } = subject.layout;
  const filled = conditionNamed(subject, 'filled');
  const running = conditionNamed(subject, 'running') ?? filled;
  const pump = pumpBody(subject);
  if (filled === undefined || running === undefined || pump === undefined) {
    return { raising: [], target: 'filled' };
  }
  const marks = supports.filter(({ kind }) => ADJUSTED.includes(kind)).map(({ mark }) => mark);
  const read = READ.flatMap((name) => conditionNamed(subject, name) ?? []);
  const springs = drySetting(frame, { target: running, read });
  return {
    raising: raisingEffects(frame, filled, pump.name, { nozzles: nozzleFaces(subject), marks }),
    target: running.name,
    ...(springs && { springs }),
  };
});
