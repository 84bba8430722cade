import type { Pump } from '../input/installation.js';
import type { FrameBody } from './frame.js';
import { add } from './vector.js';

/**
 * The pump as one rigid body: casing, motor and the water in it, from flange face to flange face.
 *
 * @param pump - masses [kg], centres [m], contents [m³]
 * @returns the body, its points named `pump suction`, `pump discharge` and, where it stands, `pump base`
 * @source statics
 */
export function pumpBody(pump: Pump): FrameBody {
  const place = pump.position;
  return {
    name: 'pump',
    points: ['pump suction', 'pump discharge', ...(pump.base && pump.mount !== 'hung' ? ['pump base'] : [])],
    masses: [
      {
        name: 'pump casing',
        at: add(place, pump.casing.centre),
        mass: pump.casing.mass.value,
        contents: 0,
        contentsGroup: 'pump',
      },
      {
        name: 'motor',
        at: add(place, pump.motor.centre),
        mass: pump.motor.mass.value,
        contents: 0,
        contentsGroup: 'pump',
      },
      { name: 'pump contents', at: place, mass: 0, contents: pump.contents.value, contentsGroup: 'pump' },
    ],
    material: pump.casing.material,
  };
}
