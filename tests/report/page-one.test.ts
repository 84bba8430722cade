import { describe, expect, test } from 'vitest';
import type { CheckId } from '../../src/checks/all-checks.js';
import type { IssueCode } from '../../src/issues/issue.js';
import { type Finding, restsOnMemory } from '../../src/judging/finding.js';
import { askedOfManufacturer } from '../../src/report/words/asked-of-manufacturer.js';
import { worstFirst } from '../../src/report/words/finding-row.js';

const finding = (check: CheckId, change: Partial<Finding> = {}): Finding => ({
  check,
  title: check,
  at: 'here',
  unit: 'N',
  verdict: 'exceeds',
  ratio: 1.1,
  comparison: false,
  basis: { source: 'statics', clause: '', confidence: 'computed' },
  ...change,
});
const because = (code: IssueCode): Partial<Finding> => ({
  verdict: 'cannot-tell',
  reason: { code, data: {} } as unknown as NonNullable<Finding['reason']>,
});

describe('the order in which findings are read', () => {
  test('what may break, then what blocks its verdict, then room, then practice, then what meets', () => {
    const listed = worstFirst([
      finding('motor-withdrawal', { ratio: 9, unit: 'm' }),
      finding('drain-and-vent', { ratio: 5 }),
      finding('hoop-stress', { verdict: 'meets', ratio: 0.2 }),
      finding('nozzle-loads', because('checks.nozzle-loads.no-basis')),
      finding('rod-load', { ratio: 1.01 }),
      finding('slack-hanger', { ratio: 99, comparison: true }),
    ]);
    expect(listed.map(({ check }) => check)).toEqual([
      'rod-load',
      'nozzle-loads',
      'motor-withdrawal',
      'drain-and-vent',
      'hoop-stress',
    ]);
  });
});

describe('what the manufacturer has to supply', () => {
  test('one thing that blocks several findings is asked for once, with all that wait', () => {
    const asked = askedOfManufacturer([
      finding('nozzle-loads', because('checks.nozzle-loads.no-basis')),
      finding('slack-hanger', { ...because('checks.slack-hanger.no-basis'), comparison: true }),
      finding('casing-lift-out', because('checks.casing-lift-out.unknown')),
      finding('nozzle-loads', because('checks.nozzle-loads.not-named')),
    ]);
    expect(asked.map(({ judged }) => judged)).toEqual([2, 1]);
    expect(asked[0]?.settles).toEqual(['nozzle-loads', 'slack-hanger']);
  });

  test('nothing is asked for where it is judged, or for what the owner decides', () => {
    expect(
      askedOfManufacturer([
        finding('nozzle-loads'),
        finding('frequency-margin', because('checks.frequency-margin.no-margin')),
      ]),
    ).toEqual([]);
  });
});

describe('a verdict that rests on memory', () => {
  const memory = { source: 'asme-b31.1', clause: 'appendix D', confidence: 'memory' } as const;
  test('is marked by its basis or by a further ground', () => {
    expect(restsOnMemory(finding('rod-load', { basis: memory }))).toBe(true);
    expect(restsOnMemory(finding('sustained-stress', { rests: [memory] }))).toBe(true);
    expect(restsOnMemory(finding('rod-load'))).toBe(false);
  });
  test('is none where nothing was judged', () => {
    expect(restsOnMemory(finding('rod-load', { basis: memory, comparison: true }))).toBe(false);
    expect(restsOnMemory(finding('rod-load', { basis: memory, verdict: 'cannot-tell' }))).toBe(false);
  });
});
