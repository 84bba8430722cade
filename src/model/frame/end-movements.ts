import type { EndPart, Installation, Part } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { scale } from '../vector.js';

/**
 * How far the anchored ends move at a temperature, from the movement given for the hot and the cold extreme, by the
 * share of the way from the installation temperature to that extreme.
 *
 * @param installation - temperatures [K], movements of ends [m]
 * @param temperature - of the condition [K]
 * @returns movement by support name [m]; only ends for which a movement is given
 * @source beam-theory (growth of the pipe beyond goes with the temperature change)
 */
export function endMovements(
  installation: Installation,
  temperature: number,
): Readonly<Record<string, Vec3>> {
  const { installationTemperature, hotTemperature, coldTemperature } = installation.service;
  const change = temperature - installationTemperature.value;
  const extreme = (change > 0 ? hotTemperature : coldTemperature).value - installationTemperature.value;
  const share = extreme === 0 ? 0 : change / extreme;
  const moved: Record<string, Vec3> = {};
  const collect = (line: string, walk: readonly Part[]): void => {
    for (const part of walk) {
      if (part.kind === 'tee') collect(`${line}, leg at ${part.name}`, part.side.walk);
      if (part.kind === 'end' && part.movement !== undefined)
        moved[`end of ${line}`] = moveOf(part, change, share);
    }
  };
  for (const line of installation.lines) collect(line.name, line.walk);
  return moved;
}

function moveOf(part: EndPart, change: number, share: number): Vec3 {
  const extreme = change > 0 ? part.movement?.hot : part.movement?.cold;
  return extreme === undefined ? [0, 0, 0] : scale(extreme, share);
}
