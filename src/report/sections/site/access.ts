import { accessOf } from '../../../checks/room/access-subject.js';
import type { ReportContext, View } from '../../context.js';
import { handRows, spaceRows } from '../../rows/access-rows.js';
import { liftRows } from '../../rows/lift-rows.js';

/**
 * Room round the pump and over it: the spaces, the lift, what may be lifted by hand, and what hangs over the motor.
 *
 * @param context - installation, findings and writer
 * @returns strings; a dash where the file does not say
 */
export function access(context: ReportContext) {
  const { pump, room } = context.subject.installation;
  const { write } = context;
  const long = { feetInches: true } as const;
  const motorTop = pump.position[2] + pump.outline.motorTop.value;
  const above = room.objects.filter((object) => isAbove(object, pump, motorTop));
  const { withdrawal } = accessOf(context.subject);
  const lift = liftRows(context);
  const spaces = spaceRows(context);
  const hands = handRows(context);
  const open = spaces.filter(({ verdict }) => verdict === 'exceeds' || verdict === 'cannot-tell');
  return {
    // A fitter finds what is short in the list of fixes; who commissions measures it.
    full: context.reader === 'engineer',
    pictured: context.reader !== 'commissioning',
    measured: context.reader === 'commissioning',
    motorTop: write.quantity(motorTop, 'length', long),
    motorTopAboveFloor:
      room.floor === undefined ? '–' : write.quantity(motorTop - room.floor, 'length', long),
    hasFloor: room.floor !== undefined,
    ceiling: room.ceiling === undefined ? '–' : write.quantity(room.ceiling, 'length', long),
    hasCeiling: room.ceiling !== undefined,
    motorWeight: write.quantity(pump.motor.mass.value, 'mass'),
    obstacles: above.map((object) => ({
      name: object.name,
      kind: object.kind,
      underside: write.quantity(object.low[2], 'length', long),
      clear: write.quantity(object.low[2] - motorTop, 'length', long),
    })),
    hasObstacles: above.length > 0,
    hasPlan: room.objects.length > 0,
    hasLiftPicture: lift.hasLift || withdrawal !== undefined,
    spaces,
    hasSpaces: spaces.length > 0,
    open,
    hasOpen: open.length > 0,
    ...lift,
    hands,
    hasHands: hands.length > 0,
  } satisfies View;
}

type Pump = ReportContext['subject']['installation']['pump'];
type RoomObject = ReportContext['subject']['installation']['room']['objects'][number];

/** Whether a box stands over the motor's outline in plan. */
function isAbove(object: RoomObject, pump: Pump, motorTop: number): boolean {
  const reach = pump.outline.motorDiameter.value / 2;
  const [east, north] = pump.position;
  return (
    object.low[2] >= motorTop &&
    object.low[0] <= east + reach &&
    object.high[0] >= east - reach &&
    object.low[1] <= north + reach &&
    object.high[1] >= north - reach
  );
}
