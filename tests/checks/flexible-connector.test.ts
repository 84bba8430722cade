import { describe, expect, test } from 'vitest';
import { flexibleConnector } from '../../src/checks/pipes/flexible-connector.js';
import { runCheck } from '../../src/checks/run-check.js';
import type { ConnectorPart, Limits, Part } from '../../src/input/installation.js';
import { NPS6, sourced, support } from '../model/fixture.js';
import { discharge, solvedSubject } from './solved-subject.js';

const AREA = 0.0285;

const connector = (changes: Partial<ConnectorPart> = {}): Part => ({
  name: 'connector 1',
  path: 'connector 1',
  section: NPS6,
  kind: 'flexible-connector',
  connector: 'rubber',
  length: 0.15,
  mass: sourced(9),
  stiffness: { axial: 4e5, lateral: 3e5, torsion: 2e4, bending: 4e3 },
  thrustArea: sourced(AREA),
  rods: 'none',
  ...changes,
});

const maker = (axialForce?: number): Limits['nozzle'] => {
  const allowance = axialForce === undefined ? { resultantMoment: 500 } : { axialForce };
  return {
    basis: 'maker',
    comparisons: [],
    maker: { document: 'data sheet', suction: allowance, discharge: allowance },
  };
};

/** The discharge line with a connector behind its first flange, and something before it. */
function judged(part: Part | undefined, nozzle: Limits['nozzle'] = maker(), before: readonly Part[] = []) {
  const [first, ...others] = discharge;
  if (first === undefined) throw new Error('no flange');
  const parts = [first, ...before, ...(part === undefined ? [] : [part]), ...others];
  const whole = solvedSubject({ discharge: parts, limits: { nozzle } });
  const pressures = whole.layout.frame.conditions.map(({ pressure }) => pressure);
  const [finding] = runCheck(flexibleConnector, whole);
  if (finding === undefined) throw new Error('nothing found');
  return { finding, thrust: AREA * Math.max(...pressures) };
}

describe('the thrust of a connector without rods', () => {
  test('above what the manufacturer allows along the nozzle exceeds, worst in the pressure test', () => {
    const { finding, thrust } = judged(connector(), maker(3000));
    expect(finding).toMatchObject({
      verdict: 'exceeds',
      at: 'connector 1',
      condition: 'test',
      limit: 3000,
      reason: { code: 'checks.flexible-connector.exceeds', data: { side: 'discharge' } },
      calculation: { formula: 'p * A' },
    });
    expect(finding.demand).toBeCloseTo(thrust, 6);
  });

  test('within it meets', () => {
    expect(judged(connector(), maker(1e6)).finding.verdict).toBe('meets');
  });

  test('cannot be told without an axial allowance', () => {
    expect(judged(connector(), maker()).finding).toMatchObject({
      verdict: 'cannot-tell',
      reason: { code: 'checks.flexible-connector.no-limit' },
    });
    expect(judged(connector(), { comparisons: [] }).finding.verdict).toBe('cannot-tell');
  });
});

test('rods with a gap take what is left once they engage', () => {
  const { finding, thrust } = judged(connector({ rods: 'gapped', rodGap: 0.001 }), maker(3000));
  expect(finding.demand).toBeLessThan(thrust);
  expect(finding.demand).toBeGreaterThanOrEqual(0);
  expect(finding.calculation).toBeUndefined();
});

test('rods that hold from the start leave nothing to the nozzle', () => {
  expect(judged(connector({ rods: 'taut' }), maker(10)).finding).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.flexible-connector.tied' },
  });
});

test('an anchor between pump and connector takes its thrust', () => {
  expect(judged(connector(), maker(10), [support('anchor', 'N1')]).finding).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.flexible-connector.anchored', data: { anchor: 'N1' } },
  });
});

test('lines without a connector have nothing to judge', () => {
  expect(judged(undefined).finding).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.flexible-connector.no-place' },
  });
});
