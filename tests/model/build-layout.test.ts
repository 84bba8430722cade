import { describe, expect, test } from 'vitest';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import {
  elbow,
  end,
  flange,
  installation,
  NPS4,
  reducer,
  spring,
  straight,
  support,
  tee,
  valve,
} from './fixture.js';

const plain = [straight('straight 9', 2), end('end 2')];

describe('walking a line', () => {
  const layout = buildLayout(
    installation(
      [
        flange('flange 1'),
        straight('straight 1', 1),
        elbow('elbow 1', [0, 0, 1]),
        straight('straight 2', 2),
        support('hanger', 'H1'),
        straight('straight 3', 0.5),
        end('end 1'),
      ],
      plain,
    ),
  );

  test('starts at the port face and follows its facing', () => {
    expect(layout.frame.points['pump suction']).toEqual([0, -0.4, 1.5]);
    expect(layout.frame.points['elbow 1 near end']?.[1]).toBeCloseTo(-0.4 - 0.0889 - 1, 12);
  });

  test('turns through an elbow by its tangents: the far end lies one radius on in both directions', () => {
    const near = layout.frame.points['elbow 1 near end'] as readonly number[];
    const far = layout.frame.points['elbow 1 far end'] as readonly number[];
    expect(far[1]).toBeCloseTo((near[1] ?? 0) - 0.2286, 12);
    expect(far[2]).toBeCloseTo((near[2] ?? 0) + 0.2286, 12);
  });

  test('names points by what stands there and counts stations along the arc', () => {
    const hanger = layout.supports.find((one) => one.mark === 'H1');
    expect(hanger?.station).toBeCloseTo(0.0889 + 1 + (Math.PI / 2) * 0.2286 + 2, 12);
    expect(layout.frame.points.H1).toBeDefined();
    expect(layout.frame.points['end of suction line']).toBeDefined();
  });

  test('gives the pump one body from face to face, and no support where it hangs', () => {
    expect(layout.frame.bodies[0]).toMatchObject({
      name: 'pump',
      points: ['pump suction', 'pump discharge', 'motor seat'],
    });
    expect(layout.supports.some((one) => one.kind === 'pump base')).toBe(false);
  });

  test('spreads the mass of an elbow over its arc', () => {
    const bend = layout.frame.members.find((member) => member.name === 'elbow 1');
    expect((bend?.mass.metal ?? 0) * (Math.PI / 2) * 0.2286).toBeCloseTo(10.7, 10);
  });
});

describe('parts', () => {
  test('an eccentric reducer with its flat side up lifts the centre-line by half the difference of the diameters', () => {
    const layout = buildLayout(
      installation([reducer('reducer 1', 'top'), straight('straight 1', 1, NPS4), end('end 1')], plain),
    );
    expect(layout.frame.points['reducer 1 far end']?.[2]).toBeCloseTo(1.5 + (0.168275 - 0.1143) / 2, 12);
    const down = buildLayout(
      installation([reducer('reducer 1', 'bottom'), straight('straight 1', 1, NPS4), end('end 1')], plain),
    );
    expect(down.frame.points['reducer 1 far end']?.[2]).toBeCloseTo(1.5 - (0.168275 - 0.1143) / 2, 12);
  });

  test('a support under an elbow splits the arc at its middle', () => {
    const layout = buildLayout(
      installation(
        [elbow('elbow 1', [0, 0, 1], { mark: 'S1' }), straight('straight 1', 1), end('end 1')],
        plain,
      ),
    );
    const middle = layout.frame.points.S1 as readonly number[];
    expect(middle[1]).toBeCloseTo(-0.4 - 0.2286 * Math.sin(Math.PI / 4), 12);
    expect(middle[2]).toBeCloseTo(1.5 + 0.2286 * (1 - Math.cos(Math.PI / 4)), 12);
    expect(layout.bends[0]?.members).toEqual(['elbow 1, near half', 'elbow 1, far half']);
  });

  test('a tee starts a leg of its own with its own spans and supports', () => {
    const leg = [
      straight('straight 5', 3, NPS4),
      support('hanger', 'H9'),
      straight('straight 6', 1, NPS4),
      end('end 3', 'free'),
    ];
    const layout = buildLayout(
      installation(
        [straight('straight 1', 1), tee('tee 1', [1, 0, 0], leg), straight('straight 2', 1), end('end 1')],
        plain,
      ),
    );
    const hanger = layout.supports.find((one) => one.mark === 'H9');
    expect(hanger?.line).toBe('suction line, leg at tee 1');
    expect(hanger?.at[0]).toBeCloseTo(0.13 + 3, 12);
    expect(layout.tees[0]?.members).toHaveLength(3);
    expect(layout.spans.find((span) => span.to === 'H9')?.lumps).toBe(true);
  });

  test('a spring hanger gives rate and setting to the frame, and the test condition locks it', () => {
    const layout = buildLayout(
      installation(
        [straight('straight 1', 1), spring('V1', 50000, 4000), straight('straight 2', 1), end('end 1')],
        plain,
      ),
    );
    const frameSupport = layout.frame.supports.find((one) => one.name === 'V1');
    expect(frameSupport?.restraints[0]).toMatchObject({ stiffness: 50000, preload: 4000, sense: 'both' });
    expect(layout.frame.conditions.find((one) => one.name === 'test')?.stopped).toEqual(['V1']);
    expect(layout.frame.conditions.find((one) => one.name === 'hot')?.stopped).toEqual([]);
  });
});

describe('elbows with stiff ends', () => {
  const factors = (walk: Parameters<typeof installation>[0]) =>
    buildLayout(installation(walk, plain)).bends[0]?.factors;
  test('a flange welded to the elbow stiffens that end; one diameter away is the limit', () => {
    expect(
      factors([flange('flange 1'), elbow('elbow 1', [0, 0, 1]), straight('straight 2', 2), end('end 1')])
        ?.stiffEnds,
    ).toBe(1);
    expect(
      factors([
        flange('flange 1'),
        straight('straight 1', 0.15),
        elbow('elbow 1', [0, 0, 1]),
        flange('flange 2'),
        end('end 1'),
      ])?.stiffEnds,
    ).toBe(2);
    expect(
      factors([
        flange('flange 1'),
        straight('straight 1', 0.2),
        elbow('elbow 1', [0, 0, 1]),
        straight('straight 2', 2),
        end('end 1'),
      ])?.stiffEnds,
    ).toBe(0);
  });
  test('the pump itself stiffens an elbow screwed straight onto its port', () => {
    expect(factors([elbow('elbow 1', [0, 0, 1]), straight('straight 2', 2), end('end 1')])?.stiffEnds).toBe(
      1,
    );
  });
});

describe('spans', () => {
  test('run from support to support; the stretch at the pump is marked', () => {
    const layout = buildLayout(
      installation(
        [
          straight('straight 1', 1),
          support('hanger', 'H1'),
          straight('straight 2', 4),
          support('hanger', 'H2'),
          elbow('elbow 1', [0, 0, 1]),
          straight('straight 3', 3),
          end('end 1'),
        ],
        plain,
      ),
    );
    const spans = layout.spans.filter((span) => span.line === 'suction line');
    expect(spans.map((span) => [span.from, span.to, span.pump, span.bent])).toEqual([
      ['pump suction', 'H1', true, false],
      ['H1', 'H2', false, false],
      ['H2', 'end of suction line', false, true],
    ]);
    expect(spans[1]).toMatchObject({ length: 4, level: 4, lumps: false });
    expect(spans[2]?.level).toBeLessThan(0.4);
  });
});

describe('flange joints', () => {
  const names = (walk: Parameters<typeof installation>[0]) =>
    buildLayout(installation(walk, plain)).flangeJoints.map((joint) => `${joint.name} | ${joint.body}`);

  test('pump to first flange, flange to flanged valve, valve to flange, and nothing at a weld', () => {
    const walk = [
      flange('flange 1'),
      straight('straight 1', 1),
      flange('flange 2'),
      valve('gate valve 1'),
      flange('flange 3'),
      straight('straight 2', 1),
      end('end 1'),
    ];
    expect(names(walk)).toEqual([
      'pump suction to flange 1 | pump',
      'flange 2 to gate valve 1 | flange 2',
      'gate valve 1 to flange 3 | gate valve 1',
    ]);
  });

  test('a valve between flanges is one joint of the two flanges', () => {
    const walk = [
      flange('flange 1'),
      straight('straight 1', 1),
      flange('flange 2'),
      valve('butterfly valve 1', 'between flanges', 0.056),
      flange('flange 3'),
      straight('straight 2', 1),
      end('end 1'),
    ];
    expect(names(walk)).toEqual(['pump suction to flange 1 | pump', 'flange 2 to flange 3 | flange 2']);
  });

  test('supports standing on the pipe do not part two faces', () => {
    const walk = [
      flange('flange 1'),
      straight('straight 1', 1),
      flange('flange 2'),
      support('hanger', 'H1'),
      flange('flange 3'),
      straight('straight 2', 1),
      end('end 1'),
    ];
    expect(names(walk)).toContain('flange 2 to flange 3 | flange 2');
  });
});

describe('weights', () => {
  test('the table holds every kilogram the frame holds', () => {
    const source = installation(
      [
        flange('flange 1'),
        straight('straight 1', 1),
        elbow('elbow 1', [0, 0, 1]),
        reducer('reducer 1'),
        straight('straight 2', 2, NPS4),
        end('end 1'),
      ],
      [
        flange('flange 2'),
        valve('gate valve 1'),
        flange('flange 3'),
        tee('tee 1', [1, 0, 0], [straight('straight 4', 1, NPS4), end('end 3', 'free')]),
        straight('straight 3', 1),
        end('end 2'),
      ],
    );
    // The tee fixture walks south; the discharge line runs north, so its run doubles back: geometry is not the point here.
    const layout = buildLayout(source);
    const density = source.service.density.filled.value;
    const fromFrame = frameMass(layout.frame, density);
    const table = layout.weights.reduce((sum, row) => sum + row.dry + row.contents + row.covering, 0);
    expect(Math.abs(table - fromFrame) / fromFrame).toBeLessThan(1e-12);
  });
});

function frameMass(frame: ReturnType<typeof buildLayout>['frame'], density: number): number {
  const members = frame.members.reduce((sum, member) => {
    const from = frame.points[member.from] as readonly number[];
    const to = frame.points[member.to] as readonly number[];
    const chord = Math.hypot(...[0, 1, 2].map((axis) => (to[axis] ?? 0) - (from[axis] ?? 0)));
    let length = chord;
    if (member.kind === 'bend') {
      const radius = Math.hypot(...[0, 1, 2].map((axis) => (from[axis] ?? 0) - (member.centre[axis] ?? 0)));
      length = 2 * radius * Math.asin(chord / (2 * radius));
    }
    const bore = (Math.PI / 4) * (member.tube.outsideDiameter - 2 * member.tube.wall) ** 2;
    return sum + length * (member.mass.metal + member.mass.covering + bore * density);
  }, 0);
  const lumps = frame.bodies.flatMap((body) => body.masses);
  return members + lumps.reduce((sum, mass) => sum + mass.mass + mass.contents * density, 0);
}

describe('the pump base', () => {
  const base = { position: [0, 0, -0.4] as const };
  const supportOf = (mount: 'resting' | 'sprung' | 'bolted') =>
    buildLayout(
      installation(
        plain.map((part) => ({ ...part, name: `${part.name}s` })),
        plain,
        {
          mount,
          base:
            mount === 'sprung'
              ? {
                  ...base,
                  springs: {
                    rate: 1000,
                    load: { value: 100, origin: { kind: 'given', path: 'x' } },
                    count: 4,
                  },
                }
              : base,
        },
      ),
    ).frame.supports.find((one) => one.name === 'pump base');
  test('resting pushes up only, bolted holds all six, springs add up', () => {
    expect(supportOf('resting')?.restraints).toEqual([
      expect.objectContaining({ sense: 'push', stiffness: Number.POSITIVE_INFINITY }),
    ]);
    expect(supportOf('bolted')?.restraints).toHaveLength(6);
    expect(supportOf('sprung')?.restraints).toEqual([
      expect.objectContaining({ stiffness: 4000, preload: 400 }),
    ]);
  });
});
