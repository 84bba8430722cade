import type { Installation } from '../../input/installation.js';
import { STANDARD_GRAVITY } from '../conventions.js';
import { endMovements } from '../frame/end-movements.js';
import type { FrameCondition, FrameSupport } from '../frame/frame.js';
import { identityOf } from './condition-roles.js';

/**
 * The conditions every review solves, by what they are:
 *
 * - `empty`: erected, dry, no insulation, at installation temperature;
 * - `filled`: full of liquid, insulated, at installation temperature and working pressure;
 * - `test`: full of cold water, no insulation, test pressure, spring hangers held by their travel stops;
 * - `hot`, `cold`: filled, at the highest and the lowest temperature, working pressure;
 * - `running`: filled, at the normal temperature, working pressure.
 *
 * @param installation - temperatures [K], pressures [Pa], densities [kg/m³]
 * @param supports - supports of the frame, to find the springs
 * @returns conditions in the order they are printed
 * @source common-practice
 */
export function operatingConditions(
  installation: Installation,
  supports: readonly FrameSupport[],
): readonly FrameCondition[] {
  const { service } = installation;
  const plain: FrameCondition = {
    ...identityOf('empty'),
    gravity: [0, 0, -STANDARD_GRAVITY],
    contentsDensity: 0,
    drained: [],
    covering: false,
    temperature: service.installationTemperature.value,
    pressure: 0,
    absent: [],
    stopped: [],
    removed: [],
    loads: [],
  };
  const filled: FrameCondition = {
    ...plain,
    ...identityOf('filled'),
    contentsDensity: service.density.filled.value,
    covering: true,
    pressure: service.workingPressure.value,
  };
  const springs = supports.filter((support) =>
    support.restraints.some((restraint) => restraint.preload !== 0 && Number.isFinite(restraint.stiffness)),
  );
  return [
    plain,
    filled,
    {
      ...plain,
      ...identityOf('test'),
      contentsDensity: service.density.test.value,
      pressure: service.testPressure.value,
      stopped: springs.map((support) => support.name),
    },
    {
      ...filled,
      ...identityOf('hot'),
      contentsDensity: service.density.hot.value,
      temperature: service.hotTemperature.value,
      imposed: endMovements(installation, service.hotTemperature.value),
    },
    {
      ...filled,
      ...identityOf('cold'),
      contentsDensity: service.density.cold.value,
      temperature: service.coldTemperature.value,
      imposed: endMovements(installation, service.coldTemperature.value),
    },
    {
      ...filled,
      ...identityOf('running'),
      contentsDensity: service.density.running.value,
      temperature: service.runningTemperature.value,
      imposed: endMovements(installation, service.runningTemperature.value),
    },
  ];
}
