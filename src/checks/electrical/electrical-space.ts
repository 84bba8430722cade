import type { Subject } from '../../analysis/subject.js';
import { WORKING_HEIGHT, WORKING_WIDTH, type WorkingDepth, workingDepth } from '../../catalog/index.js';
import type { IssueCode } from '../../issues/issue.js';
import { acrossFront, type FrontedPanel, frontBox } from '../../model/room/panel-space.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, FAR, near, wayBefore } from '../room/access-subject.js';
import { inTheWay } from '../room/in-the-way.js';
import { panelsOf, surroundings } from './panel-surroundings.js';

const TABLE: Citation = {
  source: 'osha-1910-303',
  clause: '(g), table S-1, width 30 in and height 6.5 ft, as NFPA 70, 110.26(A)',
  confidence: 'two sources',
};

/** Thickness of the sheet that feels how far the front is free [m]. */
const SHEET = 0.001;

/**
 * The space in front of a panel is as deep as its voltage and what faces it ask for, over a width of 30 in or that of the
 * panel and a height of 6.5 ft or that of the panel.
 *
 * Why: controllers and drives are measured live. Who steps back from an arc must not step into a pump or a pipe. The
 * width may lie to either side as long as all of the panel is in it: the best place is taken. Whether the equipment
 * counts at all, and which row holds, is for the authority having jurisdiction.
 */
export const electricalSpace = defineCheck({
  id: 'electrical-space',
  title: 'Electrical working space',
  trade: 'Electrician',
  section: 'electrical',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [TABLE],
  exceeds: 'checks.electrical-space.exceeds',
  noPlace: 'checks.electrical-space.no-place',
  places: panelsOf,
  at: ({ name }) => name,
  demands: (panel, subject): readonly Demand[] => {
    const { electrical } = panel;
    const unknown = (code: IssueCode): readonly Demand[] => [{ kind: 'cannot-tell', code }];
    if (electrical === undefined) return unknown('checks.electrical-space.not-described');
    const { toGround, opposite } = electrical;
    const { floor } = subject.installation.room;
    if (toGround === undefined) return unknown('checks.electrical-space.no-voltage');
    if (floor === undefined) return unknown('checks.electrical-space.no-floor');
    const depthFor = (faces: 'nothing' | 'grounded' | 'live'): WorkingDepth | undefined =>
      workingDepth({ toGround: toGround.value, opposite: faces });
    const most = depthFor(opposite ?? 'live');
    const least = depthFor(opposite ?? 'nothing');
    if (most === undefined || least === undefined) return unknown('checks.electrical-space.beyond-table');
    return [depthDemand({ ...panel, electrical }, floor, { most, least }, subject)];
  },
});

interface Needed {
  /** Depth that is enough whatever faces the panel, and the least that may be asked for. */
  readonly most: WorkingDepth;
  readonly least: WorkingDepth;
}

function depthDemand(panel: FrontedPanel, floor: number, { most, least }: Needed, subject: Subject): Demand {
  const obstacles = surroundings(panel, subject);
  const free = freestFront(panel, floor, subject);
  const short = Math.max(0, most.depth - free.depth);
  const box = frontBox(panel, { ...sizes(panel, floor), depth: most.depth, shift: free.shift });
  const named =
    free.stoppedBy === undefined
      ? {}
      : inTheWay(free.stoppedBy, short, short > 0 ? box : undefined, accessOf(subject), obstacles);
  const data = { ...named, row: most.row };
  const comparison = most.citation.confidence === 'memory';
  const shared = { label: 'working space', basis: most.citation, comparison, data };
  if (!(free.depth > SHEET))
    return { ...shared, kind: 'forbidden', happens: true, advice: 'checks.electrical-space.blocked' };
  const { opposite } = panel.electrical;
  const stated = free.stoppedBy !== undefined || opposite === 'nothing';
  return {
    ...shared,
    kind: 'compared',
    sense: 'at least',
    demand: stated ? free.depth : undefined,
    limit: most.depth,
    missing: 'checks.electrical-space.nothing-opposite',
    least: { limit: least.depth, code: 'checks.electrical-space.no-opposite' },
    remark: free.stoppedBy === undefined ? 'checks.electrical-space.open' : 'checks.electrical-space.free',
  };
}

function sizes(panel: FrontedPanel, floor: number) {
  return {
    floor,
    width: Math.max(WORKING_WIDTH, acrossFront(panel).width),
    height: Math.max(WORKING_HEIGHT, panel.high[2] - floor),
  };
}

interface FreeFront {
  /** [m] */
  readonly depth: number;
  readonly shift: number;
  readonly stoppedBy?: string;
}

/** How far the front is free where the space lies best: flush with either edge of the panel, or beside what stands there. */
function freestFront(panel: FrontedPanel, floor: number, subject: Subject): FreeFront {
  const { width, height } = sizes(panel, floor);
  const { axis, middle, width: own } = acrossFront(panel);
  const slack = (width - own) / 2;
  const feeler = (shift: number, wide = width) =>
    frontBox(panel, { floor, height, width: wide, depth: SHEET, shift });
  const obstacles = near(feeler(0, width + 2 * slack), surroundings(panel, subject), FAR);
  const beside = obstacles.flatMap(({ box }) => [box.high[axis] + width / 2, box.low[axis] - width / 2]);
  const shifts = [
    0,
    -slack,
    slack,
    ...beside.map((at) => at - middle).filter((shift) => Math.abs(shift) < slack),
  ];
  return shifts
    .map((shift): FreeFront => {
      const { distance, stoppedBy } = wayBefore(feeler(shift), panel.electrical.front, obstacles, FAR);
      return { depth: distance + SHEET, shift, ...(stoppedBy !== undefined && { stoppedBy }) };
    })
    .reduce((best, next) => (next.depth > best.depth + 1e-9 ? next : best));
}
