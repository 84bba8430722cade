import type { ReportContext, View } from '../context.js';

/**
 * Height over the motor: what is free, what the maker asks for, and what stands above.
 *
 * @param context - installation and writer
 * @returns strings; a dash where the file does not say
 */
export function access(context: ReportContext) {
  const { pump, room } = context.subject.installation;
  const { write } = context;
  const long = { feetInches: true } as const;
  const motorTop = pump.position[2] + pump.outline.motorTop.value;
  const above = room.objects.filter((object) => isAbove(object, pump, motorTop));
  const lowest = [
    ...(room.ceiling === undefined ? [] : [{ name: 'ceiling', height: room.ceiling }]),
    ...above.map((object) => ({ name: object.name, height: object.low[2] })),
  ].sort((a, b) => a.height - b.height)[0];
  const clear = lowest === undefined ? undefined : lowest.height - motorTop;
  const needed = pump.outline.withdrawal?.value;
  const left = clear === undefined || needed === undefined ? undefined : clear - needed;
  const lift = pump.motor.mass.value;
  return {
    motorTop: write.quantity(motorTop, 'length', long),
    motorTopAboveFloor:
      room.floor === undefined ? '–' : write.quantity(motorTop - room.floor, 'length', long),
    hasFloor: room.floor !== undefined,
    ceiling: room.ceiling === undefined ? '–' : write.quantity(room.ceiling, 'length', long),
    hasCeiling: room.ceiling !== undefined,
    clear: clear === undefined ? '–' : write.quantity(clear, 'length', long),
    hasClear: clear !== undefined,
    lowest: lowest?.name ?? '',
    needed: needed === undefined ? '–' : write.quantity(needed, 'length', long),
    hasNeeded: needed !== undefined,
    left: left === undefined ? '–' : write.quantity(Math.abs(left), 'length', long),
    hasLeft: left !== undefined,
    isShort: left !== undefined && left < 0,
    motorWeight: write.quantity(lift, 'mass'),
    obstacles: above.map((object) => ({
      name: object.name,
      kind: object.kind,
      underside: write.quantity(object.low[2], 'length', long),
      clear: write.quantity(object.low[2] - motorTop, 'length', long),
    })),
    hasObstacles: above.length > 0,
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
