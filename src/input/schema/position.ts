import { once } from '../once.js';
import { field, map } from './field.js';
import { quantity } from './quantity.js';

const length = (what: string, example: string) => field(quantity('length'), what, example);

/** A place in the building: distances from the plan's origin, and an elevation. */
export const place = once(() =>
  map({
    east: length('East of the origin of the plan; west is negative', '2 ft'),
    north: length('North of the origin of the plan; south is negative', '1 ft'),
    elevation: length('Elevation above the datum of the building', '4 ft 6 in'),
  }),
);

/** A place relative to something: distances along the plan and up. */
export const offset = once(() =>
  map({
    east: length('To the east; west is negative', '1 in').optional(),
    north: length('To the north; south is negative', '1 in').optional(),
    up: length('Upward; downward is negative', '2 in').optional(),
  }),
);
