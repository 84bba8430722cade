import type { Installation } from '../input/installation.js';
import { solveFrame } from '../mechanics/frame/solve-frame.js';
import { findVibrations } from '../mechanics/modes/find-vibrations.js';
import { startUp } from '../mechanics/start/start-up.js';
import { ofRole } from '../model/conditions/condition-roles.js';
import { startCase } from '../model/conditions/start-case.js';
import { startingConditions } from '../model/conditions/upset-conditions.js';
import type { FrameCondition } from '../model/frame/frame.js';
import { buildLayout } from '../model/layout/build-layout.js';
import type { Layout } from '../model/layout/layout.js';
import { analysed, type Subject } from './subject.js';

/**
 * Everything that is worked out before the checks.
 *
 * @param installation - as `readInstallation` gives it
 * @param isWanted - which conditions are solved, all where it is not said; the start is always among them
 * @returns layout with the conditions of the start, response, frequencies and start
 * @throws EngineError when the installation cannot be worked out, for example when nothing holds the line
 */
export function solveInstallation(
  installation: Installation,
  isWanted: (condition: FrameCondition) => boolean = () => true,
): Subject {
  const whole = buildLayout(installation);
  const running = ofRole(whole.frame.conditions, 'running');
  const plain = withConditions(whole, whole.frame.conditions.filter(isWanted));
  if (running === undefined)
    return analysed({ installation, layout: plain, response: solveFrame(plain.frame) });
  const { speed, speeds } = installation.pump.motor;
  const turnsPerSecond = Math.max(speed, speeds?.highest ?? 0) / (2 * Math.PI);
  // Twice running speed is the highest frequency for which pipes are cut fine enough.
  const found = findVibrations(whole.frame, running, 2 * turnsPerSecond);
  const start = startUp(startCase(installation), found);
  const layout =
    start.kind === 'fails'
      ? plain
      : withConditions(plain, [...plain.frame.conditions, ...startingConditions(running, start.twist)]);
  const response = solveFrame(layout.frame);
  return analysed({ installation, layout, response, frequencies: found.frequencies, startUp: start });
}

function withConditions(layout: Layout, conditions: readonly FrameCondition[]): Layout {
  return { ...layout, frame: { ...layout.frame, conditions } };
}
