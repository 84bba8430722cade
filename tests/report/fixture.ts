/** A whole review of a small installation with something of everything, solved and checked, for tests of the report. */

import { solveInstallation } from '../../src/app/review.js';
import { runChecks } from '../../src/checks/all-checks.js';
import type { Assumption, Installation, Part, Sourced, Vec3 } from '../../src/input/installation.js';
import { overallVerdict } from '../../src/judging/verdict.js';
import type { ReviewSubject } from '../../src/report/compose-review.js';
import { studyBands } from '../../src/study/bands/study-bands.js';
import { boundFindings } from '../../src/study/bounds/bound-findings.js';
import {
  elbow,
  end,
  flange,
  installation,
  NPS4,
  NPS6,
  spring,
  straight,
  support,
  tee,
  valve,
} from '../model/fixture.js';

const rods = (mark: string, count: number): Part => ({
  ...support('hanger', mark),
  rods: { count, size: '5/8', length: 2, rating: rating },
});
const rating: Sourced = {
  value: 8051,
  origin: {
    kind: 'catalogue',
    table: 'hanger rods',
    row: '5/8',
    citation: { source: 'mss-sp-58', clause: 'table 3', confidence: 'two sources' },
  },
};

const suction = [
  flange('flange 1', 'raised'),
  straight('straight 1', 0.5),
  rods('H1', 1),
  straight('straight 2', 0.3),
  elbow('elbow 1', [0, 0, 1]),
  straight('straight 3', 1.2),
  elbow('elbow 2', [0, -1, 0]),
  straight('straight 4', 0.4),
  rods('H2', 2),
  straight('straight 5', 3),
  rods('H3', 1),
  straight('straight 6', 1.2),
  tee('tee 1', [1, 0, 0], [straight('straight 7', 0.5, NPS4), end('end 1', 'free')]),
  straight('straight 8', 1.2),
  rods('H4', 1),
  straight('straight 9', 2.5),
  end('end 2'),
];
const discharge = [
  flange('flange 2', 'flat'),
  straight('straight 10', 0.4),
  flange('flange 3'),
  valve('gate valve 1'),
  flange('flange 4'),
  straight('straight 11', 0.3),
  spring('V1', 60_000, 2500),
  straight('straight 12', 0.3),
  elbow('elbow 3', [0, 0, 1], { mark: 'S1' }),
  straight('straight 13', 1.5),
  elbow('elbow 4', [1, 0, 0]),
  straight('straight 14', 2.5),
  rods('H5', 1),
  straight('straight 15', 3),
  end('end 3'),
];

const practice = { source: 'common-practice', clause: '', confidence: 'common practice' } as const;
const assumptions: readonly Assumption[] = [
  {
    path: 'pump.motor.weight',
    what: 'weight of the motor',
    value: '130 kg',
    citation: practice,
    effect: 'read the nameplate',
  },
  {
    path: 'limits.rods.edition',
    what: 'edition of the rod ratings',
    value: 'older',
    citation: { source: 'mss-sp-58', clause: 'table 3', confidence: 'two sources' },
    effect: 'the later edition allows other loads',
  },
];

/** The installation: hung between two lines, with limits, a ceiling, a beam and a maker's table. */
export function reviewedInstallation(change: Partial<Installation> = {}): Installation {
  const plain = installation(suction, discharge);
  return {
    ...plain,
    fingerprint: 'ab'.repeat(32),
    review: {
      project: 'Larkfield <pool> & hall',
      location: 'Basement',
      client: 'Parks Trust',
      preparedBy: 'R. Okafor',
      engineerOfRecord: 'to be named',
      status: 'preliminary',
      date: '2026-09-14',
      revisions: [{ mark: 'A', date: '2026-09-14', by: 'R. Okafor', note: 'First issue' }],
      notes: ['Levels are those of drawing 12.'],
      units: 'us',
    },
    pump: {
      ...plain.pump,
      motor: {
        ...plain.pump.motor,
        mass: { value: 130, origin: { kind: 'assumed', path: 'pump.motor.weight' } },
      },
      duty: { ...plain.pump.duty, efficiency: 0.79 },
      outline: { ...plain.pump.outline, withdrawal: { value: 0.6, origin: { kind: 'given', path: 'test' } } },
    },
    room: {
      floor: 0,
      ceiling: 4,
      objects: [
        { name: 'duct', kind: 'duct', low: [-1, -1, 3.5], high: [1, 1, 3.9], path: 'room.objects[0]' },
      ],
    },
    limits: {
      ...plain.limits,
      nozzle: {
        basis: 'maker',
        comparisons: ['process-pump table', 'nozzle principal stress'],
        maker: {
          document: 'data sheet 4471',
          suction: { axialForce: 3000, resultantMoment: 1500 },
          discharge: { verticalForce: 3000 },
        },
      },
      stress: {
        code: 'B31.9',
        edition: '2004',
        hot: { value: 103e6, origin: { kind: 'given', path: 'test' } },
        cold: { value: 103e6, origin: { kind: 'given', path: 'test' } },
        cycles: { value: 7000, origin: { kind: 'given', path: 'test' } },
      },
    },
    assumptions,
    ...change,
  };
}

/** The installation solved and checked. */
export function reviewed(change: Partial<Installation> = {}): ReviewSubject {
  const subject = reviewedInstallation(change);
  const solved = solveInstallation(subject);
  const plain = runChecks(solved);
  const { findings: bounded, bounds } = boundFindings(solved, plain);
  // Verdicts as stated, so that what a test says of them does not hang on ranges; reach and bounds beside them.
  const findings = plain.map((finding, index) => {
    const { low, high, turnedBy, siteTest } = bounded[index] ?? finding;
    return {
      ...finding,
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
      ...(turnedBy && { turnedBy }),
      ...(siteTest && { siteTest }),
    };
  });
  return { ...solved, findings, verdict: overallVerdict(findings), bounds };
}

/** The same under a sideways load, with all that its stress is compared with. */
export function reviewedSideways(): ReviewSubject {
  const { limits } = reviewedInstallation();
  const value = (number: number): Sourced => ({ value: number, origin: { kind: 'given', path: 'test' } });
  const stress = { ...limits.stress, occasionalFactor: value(1.33), jointFactor: value(1) };
  return reviewed({ limits: { ...limits, stress, lateral: { coefficient: value(0.3) } } });
}

/** The same, with a hanger that carries nothing when hot, nor is determined: what the review says then is tested without a second line. */
export function reviewedLifted(): ReviewSubject {
  const whole = reviewed();
  const { hot } = whole.response.conditions;
  const hanger = hot?.supports.H3;
  if (hot === undefined || hanger === undefined) throw new Error('the fixture has no H3 when hot');
  const lifted = {
    ...hot,
    supports: {
      ...hot.supports,
      H3: { ...hanger, states: ['lifted' as const], undetermined: ['vertical' as const] },
    },
  };
  return {
    ...whole,
    response: { ...whole.response, conditions: { ...whole.response.conditions, hot: lifted } },
  };
}

/** The same on four springs at their places, on an inertia base. */
export function reviewedSprung(): ReviewSubject {
  const { pump } = reviewedInstallation();
  const given = (value: number): Sourced => ({ value, origin: { kind: 'given', path: 'test' } });
  const places: readonly Vec3[] = [
    [0.4, 0.3, 0],
    [-0.4, 0.3, 0],
    [-0.4, -0.3, 0],
    [0.4, -0.3, 0],
  ];
  return reviewed({
    pump: {
      ...pump,
      mount: 'sprung',
      base: {
        position: [0, 0, -0.4],
        springs: { rate: 200_000, load: given(1500), count: 4, places, side: 150_000 },
        inertiaBase: { mass: given(150), below: 0.1 },
      },
    },
  });
}

/** The same on a drive with a range of speeds and a margin, and blades: speeds to lock out. */
export function reviewedOnDrive(): ReviewSubject {
  const whole = reviewedInstallation();
  const given = (value: number): Sourced => ({ value, origin: { kind: 'given', path: 'test' } });
  return reviewed({
    pump: {
      ...whole.pump,
      blades: 6,
      rotorInertia: given(0.05),
      motor: {
        ...whole.pump.motor,
        speed: 185,
        start: { kind: 'variable-speed drive', torqueLimit: 1.1, ramp: 15 },
        inertia: given(0.2),
        speeds: { lowest: 60, highest: 185 },
      },
    },
    limits: { ...whole.limits, frequencyMargin: given(0.05), startMovement: given(2e-3) },
  });
}

/** The same with a motor that never brings the pump to speed. */
export function reviewedStalled(): ReviewSubject {
  const whole = reviewedInstallation();
  const start = { kind: 'soft starter', currentLimit: 1.5 } as const;
  return reviewed({ pump: { ...whole.pump, motor: { ...whole.pump.motor, start } } });
}

/** A rubber connector of NPS 6. */
const connector = (name: string, rods: 'none' | 'taut' | 'gapped'): Part => ({
  name,
  path: name,
  section: NPS6,
  kind: 'flexible-connector',
  connector: 'rubber',
  length: 0.15,
  mass: { value: 9, origin: { kind: 'given', path: 'test' } },
  stiffness: { axial: 4e5, lateral: 3e5, torsion: 2e4, bending: 4e3 },
  thrustArea: { value: 0.0285, origin: { kind: 'given', path: 'test' } },
  rods,
  ...(rods === 'gapped' && { rodGap: 0.002 }),
});

/** The same with flexible connectors at both nozzles, as tied on the discharge side as asked. */
export function reviewedWithConnectors(onDischarge: 'none' | 'taut' | 'gapped'): ReviewSubject {
  const whole = reviewedInstallation();
  const lines = whole.lines.map((line) => {
    const [first, ...others] = line.walk;
    const part =
      line.from === 'suction' ? connector('connector 1', 'none') : connector('connector 2', onDischarge);
    return first === undefined ? line : { ...line, walk: [first, part, ...others] };
  });
  return reviewed({ lines });
}

/** The same in a cramped room with a lift: a low duct over the motor, a wall close by, spaces asked for. */
export function reviewedCramped(): ReviewSubject {
  const whole = reviewedInstallation();
  const given = (value: number): Sourced => ({ value, origin: { kind: 'given', path: 'test' } });
  const { pump, room } = whole;
  const top = pump.position[2] + pump.outline.motorTop.value;
  const wall = (name: string, low: Vec3, high: Vec3) => ({
    name,
    kind: 'wall' as const,
    low,
    high,
    path: name,
  });
  return reviewed({
    pump: {
      ...pump,
      dimensions: {
        casingAbove: given(0.15),
        casingBelow: given(0.15),
        motorFoot: given(0.55),
        eyes: pump.outline.motorTop,
        spacer: { from: 0.2, length: given(0.2), sealLength: given(0.15), couplingMass: given(9) },
        rotorMass: given(45),
      },
    },
    room: {
      ...room,
      headHeight: given(2.032),
      objects: [
        wall('west wall', [-1, -6, 0], [-0.8, 6, 4]),
        wall('east wall', [3, -6, 0], [3.2, 6, 4]),
        { name: 'duct', kind: 'duct', low: [-0.5, -1, top + 0.4], high: [1, 1, top + 0.7], path: 'duct' },
      ],
      wayOut: { at: [1, 6], width: given(1) },
      lift: {
        anchor: [0, 0, top + 1.5],
        rating: given(400),
        hoistHeight: given(0.4),
        hookToSling: given(0),
        sling: { legs: 2, angle: given(1), height: given(0.2), spread: 0.25, rating: given(300) },
        factor: { value: 2, origin: { kind: 'given', path: 'test', document: 'rule 4' } },
        offCentre: given(0.02),
      },
    },
    serviceSpaces: [
      { purpose: 'coupling and seal', owner: 'maker', source: 'manual', path: 's', depth: 0.4, width: 0.3 },
      { purpose: 'casing lift-out', owner: 'maker', source: 'manual', path: 's', height: 0.5 },
    ],
  });
}

/** The same, with nothing left but what meets its limit. */
export function reviewedSound(): ReviewSubject {
  const whole = reviewed();
  return {
    ...whole,
    findings: whole.findings.filter((finding) => finding.verdict === 'meets'),
    verdict: 'meets',
  };
}

/** The same with bands, and a motor so roughly known that it turns verdicts. */
export async function reviewedWithBands(): Promise<ReviewSubject> {
  const whole = reviewed();
  return { ...whole, bands: await studyBands(whole, { samples: 4 }) };
}
