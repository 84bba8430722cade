import { describe, expect, test } from 'vitest';
import { composeReview, type ReviewSubject } from '../../src/report/compose-review.js';
import { reviewed, reviewedWithConnectors } from './fixture.js';

interface Section {
  readonly connectors: readonly Readonly<Record<string, string | boolean>>[];
  readonly rows: readonly Readonly<Record<string, string | boolean>>[];
}

function sectionOf(whole: ReviewSubject): Section {
  const { view } = composeReview(whole, { reader: 'engineer', units: 'si', version: '0.0.0' });
  const slots = view.sections as readonly Readonly<Record<string, unknown>>[];
  return slots.find((one) => one.connectors !== false)?.connectors as Section;
}

test('without connectors there is nothing to say', () => {
  expect(sectionOf(reviewed())).toBeUndefined();
  expect(sectionOf(reviewedWithConnectors('gapped'))).toBeDefined();
});

describe('connectors at both nozzles of a hung pump', () => {
  const gapped = sectionOf(reviewedWithConnectors('gapped'));
  const taut = sectionOf(reviewedWithConnectors('taut'));

  test('each has its sentence, by what its rods do', () => {
    expect(gapped.connectors).toMatchObject([
      { name: 'connector 1', side: 'suction', isBare: true, isNotNeeded: true, isAnchored: false },
      { name: 'connector 2', side: 'discharge', isGapped: true, isTied: false },
    ]);
    expect(taut.connectors[1]).toMatchObject({ isTied: true, isGapped: false, exceeds: false });
  });

  test('the one without rods pushes with more than the manufacturer allows along the nozzle', () => {
    expect(gapped.connectors[0]).toMatchObject({ exceeds: true });
  });

  test('each has a row at working and at test pressure, with and without it', () => {
    expect(taut.rows.map(({ name, condition }) => [name, condition])).toEqual([
      ['connector 1', 'filled'],
      ['connector 1', 'test'],
      ['connector 2', 'filled'],
      ['connector 2', 'test'],
    ]);
    for (const row of taut.rows) expect(Object.values(row)).not.toContain('–');
  });
});
