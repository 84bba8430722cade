import { expect, test } from 'vitest';
import * as catalog from '../../src/catalog/index.js';
import { citationText } from '../../src/sources/index.js';

/** One answer of every lookup that cites a source. */
const answers: Readonly<Record<string, unknown>> = {
  pipe: catalog.findPipe({ nps: '6', schedule: 'STD', material: 'carbon steel' }),
  flange: catalog.findFlange({ standard: 'B16.5', class: '150', nps: '6', type: 'slip-on' }),
  bolts: catalog.boltSetMass({ standard: 'B16.1', class: '125', nps: '6' }),
  rating: catalog.flangeRating({ standard: 'B16.5', class: '150', materialGroup: '1.1' }),
  elbow: catalog.findElbow({ nps: '6', schedule: 'XS', material: 'carbon steel', radius: 'short', angle: 1 }),
  tee: catalog.findTee({ nps: '6', branchNps: '4', schedule: 'STD', material: 'carbon steel' }),
  reducer: catalog.findReducer({ large: '6', small: '4', schedule: 'STD', material: 'carbon steel' }),
  valve: catalog.findValve({ kind: 'gate', class: '125', nps: '6' }),
  material: catalog.findMaterial('carbon steel'),
  allowable: catalog.allowableStress({ code: 'B31.9', material: 'carbon steel', temperature: 300 }),
  water: catalog.waterDensity({ temperature: 300 }),
  glycol: catalog.glycolDensity({ fluid: 'ethylene glycol', share: 0.3, temperature: 300 }),
  insulation: catalog.findInsulation('glass fibre'),
  rod: catalog.rodRating({ size: '5/8', edition: 'later' }),
  span: catalog.findSpan({ nps: '6', material: 'carbon steel' }),
  nozzle: catalog.processPumpTable('6'),
};

interface Found {
  readonly source: Parameters<typeof citationText>[0];
  readonly computed: boolean;
  readonly how: unknown;
}

/** Every citation inside an answer, with the explanation that stands beside it. */
function citationsIn(value: unknown): readonly Found[] {
  if (typeof value !== 'object' || value === null) return [];
  const fields = Object.entries(value);
  const own = fields.flatMap(([key, field]) =>
    key.toLowerCase().endsWith('citation')
      ? [
          {
            source: field as Found['source'],
            computed: (field as Found['source']).confidence === 'computed',
            how: 'value' in value ? ('how' in value ? value.how : undefined) : 'not a value',
          },
        ]
      : [],
  );
  return [...own, ...fields.flatMap(([, field]) => citationsIn(field))];
}

test.each(Object.keys(answers))('every value of a %s prints a source with its clause', (name) => {
  const found = citationsIn(answers[name]);
  expect(found.length).toBeGreaterThan(0);
  for (const { source } of found) {
    expect(citationText(source)).toMatch(/\), .+, (read|two sources|memory|common practice|computed)$/);
    expect(source.clause).not.toBe('');
  }
});

test.each(Object.keys(answers))('every computed value of a %s says how', (name) => {
  for (const { computed, how } of citationsIn(answers[name])) {
    if (computed) expect(how).toBeTypeOf('string');
  }
});
