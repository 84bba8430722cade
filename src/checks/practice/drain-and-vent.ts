import {
  beforeShutOff,
  courseOf,
  isCheckValve,
  partsInside,
  SIDES,
} from '../../analysis/pipes/line-course.js';
import type { Subject } from '../../analysis/subject.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'a drain at the low point and a vent at the high point between the valves that shut',
  confidence: 'common practice',
};

/** What is asked for, and at which end of the heights. */
const WANTED = {
  drain: { word: 'drain', point: 'low point', sign: -1 },
  vent: { word: 'vent', point: 'high point', sign: 1 },
} as const;
type Wanted = (typeof WANTED)[keyof typeof WANTED] | 'behind';

/**
 * Between the valves that shut the pump off, a drain stands at the low point and a vent at the high point.
 *
 * Why: before a flange or the seal is opened, that stretch is relieved, drained and seen to stay empty. A drain above
 * the low point leaves hot water in it, a vent below the high point leaves a column hanging under a shut valve until
 * the flange is opened. Heights are those of centre lines, to within one outside diameter of the pipe; the casing
 * counts at the height of its ports. Liquid behind a check valve does not come back to the drain: whether that stretch
 * has one of its own is shown for comparison.
 */
export const drainAndVent = defineCheck({
  id: 'drain-and-vent',
  title: 'Low-point drain, high-point vent',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: 'm',
  basis: [PRACTICE],
  exceeds: 'checks.drain-and-vent.none',
  noPlace: 'checks.drain-and-vent.no-place',
  places: (subject): readonly Wanted[] => [
    WANTED.drain,
    WANTED.vent,
    ...(behindCheck(subject).length > 0 ? ['behind' as const] : []),
  ],
  at: (wanted) => (wanted === 'behind' ? 'behind the check valve' : wanted.point),
  demands: (wanted, subject): readonly Demand[] =>
    wanted === 'behind' ? behindDemand(subject) : [demandAt(wanted, subject)],
});

function demandAt(wanted: Exclude<Wanted, 'behind'>, subject: Subject): Demand {
  const { pump } = subject.installation;
  const courses = SIDES.map((side) => courseOf(subject, side));
  if (courses.some((course) => beforeShutOff(course).valve === undefined))
    return { kind: 'does-not-apply', code: 'checks.drain-and-vent.not-shut-off' };
  const inside = courses.flatMap(partsInside);
  const extreme = (heights: readonly number[]): number =>
    wanted.sign * Math.max(...heights.map((height) => wanted.sign * height));
  const ports = SIDES.map((side) => pump.position[2] + pump.ports[side].position[2]);
  const atPump = extreme(ports);
  const end = extreme([
    ...ports,
    ...inside.flatMap(({ from, to, centre, part }) => [
      from.at[2],
      to.at[2],
      ...(part.kind === 'suction-diffuser' && centre !== undefined ? [centre.at[2]] : []),
    ]),
  ]);
  const fittings = inside
    .filter(({ part }) => part.kind === 'fitting' && part.fitting === wanted.word)
    .map(({ from, part }) => ({ name: part.name, height: from.at[2] }));
  const own = pump[wanted.word];
  const found = [
    ...fittings,
    ...(own === true ? [{ name: `the casing's own ${wanted.word}`, height: atPump }] : []),
  ];
  const reach = subject.layout.nozzles.suction.section.outsideDiameter;
  const off = (height: number): number => Math.abs(height - end);
  const nearest = [...found].sort((a, b) => off(a.height) - off(b.height))[0];
  const data = { word: wanted.word, point: wanted.point, by: nearest?.name ?? 'none' };
  const missing = 'checks.drain-and-vent.unknown';
  if (nearest !== undefined && off(nearest.height) <= reach)
    return { kind: 'forbidden', happens: false, remark: 'checks.drain-and-vent.by', data };
  // Nobody has said that the casing has none, and it stands where one is wanted.
  if (own === undefined && off(atPump) <= reach)
    return { kind: 'forbidden', happens: undefined, missing, data };
  if (nearest === undefined)
    return { kind: 'forbidden', happens: own === undefined ? undefined : true, missing, data };
  const advice = 'checks.drain-and-vent.off';
  return { kind: 'forbidden', happens: true, demand: off(nearest.height), advice, data };
}

/** What stands between a check valve on the discharge and the valve that shuts. */
function behindCheck(subject: Subject) {
  const { parts, valve } = beforeShutOff(courseOf(subject, 'discharge'));
  const at = parts.findIndex(({ part }) => isCheckValve(part));
  return at < 0 || valve === undefined ? [] : parts.slice(at);
}

function behindDemand(subject: Subject): readonly Demand[] {
  const parts = behindCheck(subject);
  const drain = parts.find(({ part }) => part.kind === 'fitting' && part.fitting === 'drain');
  return [
    {
      kind: 'forbidden',
      happens: drain === undefined,
      comparison: true,
      advice: 'checks.drain-and-vent.behind',
      data: { check: parts[0]?.part.name ?? 'check valve' },
    },
  ];
}
