import { describe, expect, test } from 'vitest';
import { everyPart, installationOf, issuesOf, shortest } from './sample-text.js';
import { warningsOf } from './warnings-of.js';

const INCH = 0.0254;
const found = (text: string) => issuesOf(text).map(({ code, place }) => `${code} ${place?.path}`);
const withLimits = (limits: string) => `${shortest}limits: ${limits}\n`;
const limitsOf = (limits: string) => installationOf(withLimits(limits)).limits;
const FORMULA = 'edition: 16, sds: 0.5, importance: 1.0, height-ratio: 0.4, ap: 2.5, rp: 6';

describe('what makes a rule a limit', () => {
  test('a published table decides where a clause names it, and is compared where none does', () => {
    const named = '{by: owner, document: specification 23 21 23, clause: para 2.4}';
    const base = 'basis: process-pump table doubled';
    expect(limitsOf(`{nozzle-loads: {${base}, named-in: ${named}}}`).nozzle).toMatchObject({
      basis: 'process-pump table doubled',
      namedIn: { by: 'owner', clause: 'para 2.4' },
      comparisons: [],
    });
    expect(limitsOf(`{nozzle-loads: {${base}}}`).nozzle).toEqual({
      unnamed: 'process-pump table doubled',
      comparisons: ['process-pump table doubled'],
    });
    expect(found(withLimits(`{nozzle-loads: {${base}, named-in: {by: owner, document: S}}}`))).toEqual([
      'input.missing limits.nozzle-loads.named-in.clause',
    ]);
  });

  test('rules of practice by the document of the owner; an unknown one is refused', () => {
    const rule = (id: string) => `{owner-rules: [{rule: ${id}, document: estate standard 7, clause: '4.2'}]}`;
    expect(limitsOf(rule('slack-hanger')).ownerRules).toEqual([
      { rule: 'slack-hanger', document: 'estate standard 7', clause: '4.2' },
    ]);
    expect(found(withLimits(rule('rod-load')))).toEqual(['input.not-one-of limits.owner-rules[0].rule']);
  });
});

describe('the sideways load', () => {
  test('a coefficient is given with the document it stands in', () => {
    expect(
      limitsOf('{lateral: {coefficient: 30 %, source: structural drawing S-2}}').lateral?.coefficient,
    ).toEqual({
      value: 0.3,
      origin: { kind: 'given', path: 'limits.lateral.coefficient', document: 'structural drawing S-2' },
    });
  });

  test('the formula is worked out from its inputs and says how', () => {
    const { lateral } = limitsOf(`{lateral: {asce-7: {${FORMULA}}}}`);
    // 0.4 × 2.5 × 0.5 × 1.8 / 6 = 0.15, which is also the least, 0.3 × 0.5.
    expect(lateral?.coefficient.value).toBeCloseTo(0.15, 12);
    expect(lateral?.coefficient.origin).toEqual({
      kind: 'computed',
      how: '0.4 × 2.5 × 0.5 × (1 + 2 × 0.4) / (6 / 1) = 15%, at least 15%, at most 80% of the weight; strength level',
      citation: {
        source: 'asce-7',
        clause: 'equations 13.3-1 to 13.3-3, 7-16',
        confidence: 'two sources',
      },
    });
  });

  test('without a word there is none', () => {
    expect(installationOf(shortest).limits).not.toHaveProperty('lateral');
  });

  test.each([
    ['B31.9', 1.33, 'para 902.3.3'],
    ['B31.1', 1.15, 'para 102.2.4: 1.15 for 8 h at a time and 800 h a year, 1.20 for 1 h and 80 h'],
  ])('the factor for occasional loads of %s is %f', (code, factor, clause) => {
    const lateral = 'lateral: {coefficient: 0.3, source: S-2}';
    const { limits, assumptions } = installationOf(withLimits(`{pipe-stress: {code: ${code}}, ${lateral}}`));
    expect(limits.lateral?.occasionalFactor?.value).toBe(factor);
    expect(
      assumptions.find(({ path }) => path === 'limits.pipe-stress.occasional-factor')?.citation.clause,
    ).toBe(clause);
  });

  test('an own factor is taken, and told where the code allows less', () => {
    expect(installationOf(everyPart).limits.lateral?.occasionalFactor).toEqual({
      value: 1.25,
      origin: { kind: 'given', path: 'limits.pipe-stress.occasional-factor' },
    });
    const over =
      '{pipe-stress: {code: B31.1, occasional-factor: 1.33}, lateral: {coefficient: 0.3, source: S-2}}';
    expect(warningsOf(withLimits(over))).toEqual([
      'input.occasional-over-code limits.pipe-stress.occasional-factor',
    ]);
  });

  test('the factor holds for starts as well, so it is taken where no sideways load is given', () => {
    const alone = withLimits('{pipe-stress: {occasional-factor: 1.2}}');
    expect(warningsOf(alone)).toEqual([]);
    expect(installationOf(alone).limits.stress.occasionalFactor?.value).toBe(1.2);
    expect(installationOf(shortest).limits.stress.occasionalFactor?.value).toBe(1.33);
  });

  test('the factor of the weld is that of the file, or that of resistance welded pipe as an assumption', () => {
    const PATH = 'limits.pipe-stress.joint-factor';
    const { limits, assumptions } = installationOf(shortest);
    expect(limits.stress.jointFactor).toMatchObject({ value: 0.85, origin: { kind: 'assumed' } });
    expect(assumptions.map(({ path }) => path)).toContain(PATH);
    const own = installationOf(withLimits('{pipe-stress: {joint-factor: 1}}'));
    expect(own.limits.stress.jointFactor).toEqual({ value: 1, origin: { kind: 'given', path: PATH } });
    expect(own.assumptions.map(({ path }) => path)).not.toContain(PATH);
  });

  test.each([
    ['{coefficient: 0.3}', 'input.missing limits.lateral.source'],
    ['{source: S-2}', 'input.missing limits.lateral.coefficient'],
    [`{coefficient: 0.3, asce-7: {${FORMULA}}}`, 'input.lateral-twice limits.lateral.coefficient'],
    [`{source: S-2, asce-7: {${FORMULA}}}`, 'input.source-of-formula limits.lateral.source'],
    [`{asce-7: {${FORMULA.replace('16', '22')}}}`, 'input.not-one-of limits.lateral.asce-7.edition'],
    [
      `{asce-7: {${FORMULA.replace('0.4', '1.2')}}}`,
      'input.share-over-one limits.lateral.asce-7.height-ratio',
    ],
    [`{asce-7: {${FORMULA.replace('1.0', '0.5')}}}`, 'input.too-small limits.lateral.asce-7.importance'],
    [`{asce-7: {${FORMULA.replace(', rp: 6', '')}}}`, 'input.missing limits.lateral.asce-7.rp'],
    ['{coefficient: 30, source: S-2}', 'input.too-large limits.lateral.coefficient'],
  ])('%s is refused', (lateral, fault) => {
    expect(found(withLimits(`{lateral: ${lateral}}`))).toEqual([fault]);
  });
});

describe('what bounds a start', () => {
  test('the margin of a frequency comes with its document; without one there is none', () => {
    expect(installationOf(everyPart).limits.frequencyMargin).toEqual({
      value: 0.25,
      origin: { kind: 'given', path: 'limits.frequency-margin.share', document: "owner's specification" },
    });
    expect(installationOf(shortest).limits).not.toHaveProperty('frequencyMargin');
    expect(found(withLimits('{frequency-margin: {share: 25 %}}'))).toEqual([
      'input.missing limits.frequency-margin.source',
    ]);
  });

  test('damping is given, zero too, or none, the safe side', () => {
    expect(installationOf(everyPart).limits.damping?.value).toBe(0.02);
    expect(limitsOf('{damping: 0}').damping).toEqual({
      value: 0,
      origin: { kind: 'given', path: 'limits.damping' },
    });
    const { limits, assumptions } = installationOf(shortest);
    expect(limits.damping?.value).toBe(0);
    expect(assumptions.find(({ path }) => path === 'limits.damping')?.citation.clause).toBe(
      'none, the safe side',
    );
    expect(found(withLimits('{damping: 2}'))).toEqual(['input.too-large limits.damping']);
  });

  test('the movement at start is held to nothing unless said', () => {
    expect(installationOf(everyPart).limits.startMovement?.value).toBeCloseTo(0.002, 12);
    expect(installationOf(shortest).limits).not.toHaveProperty('startMovement');
  });
});

test('what flanges may be off is given, or that of a published rule', () => {
  const { gap, offset, parallelism } = limitsOf('{fit-up: {offset: 2 mm}}').fitUp ?? {};
  expect(offset).toEqual({ value: 0.002, origin: { kind: 'given', path: 'limits.fit-up.offset' } });
  expect(gap).toEqual({ value: INCH / 16, origin: { kind: 'assumed', path: 'limits.fit-up.gap' } });
  expect(parallelism?.value).toBe(INCH / 32);
  const { assumptions, sourcesUsed } = installationOf(shortest);
  const cited = assumptions.filter(({ path }) => path.startsWith('limits.fit-up'));
  expect(cited.map(({ citation }) => [citation.source, citation.confidence])).toEqual([
    ['api-686', 'read'],
    ['asme-pcc-1', 'read'],
    ['asme-pcc-1', 'read'],
  ]);
  expect(sourcesUsed).toContain('asme-pcc-1');
});
