import { expect, test } from 'vitest';
import { suctionVelocity } from '../../src/checks/practice/suction-velocity.js';
import { runCheck } from '../../src/checks/run-check.js';
import { practiceFinding, practiceSubject, valve } from './practice-subject.js';

/** 150 m³/h through the 6.065 in bore of NPS 6 STD: 0.0416667 / 0.0186388 = 2.2355 m/s. */
const VELOCITY = 2.2355;
const limits = (suction: string) => ({ velocity: { suction, source: 'design guide' } });
const at = (suction: string) => practiceFinding(suctionVelocity, { limits: limits(suction) });

test('a limit of the file decides: meets and exceeds', () => {
  expect(at('2.3 m/s')).toMatchObject({
    verdict: 'meets',
    comparison: false,
    basis: { source: 'input', clause: 'design guide' },
  });
  expect(at('2.3 m/s').demand).toBeCloseTo(VELOCITY, 3);
  expect(at('2.2 m/s')).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    reason: { data: { pipe: 'NPS 6 STD' } },
  });
});

test('without one the quoted 8 ft/s is a comparison, whichever way it falls', () => {
  const quiet = practiceFinding(suctionVelocity);
  expect(quiet).toMatchObject({ verdict: 'meets', comparison: true, basis: { source: 'hi-9.6.6' } });
  expect(quiet.limit).toBeCloseTo(2.4384, 9);
  const duty = { flow: '200 m3/h', head: '20 m' };
  expect(practiceFinding(suctionVelocity, { pump: { duty } })).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
  });
});

test('the narrowest pipe ahead of a tee governs, and what lies behind the tee does not', () => {
  const pipe = { straight: '1 m' };
  const narrow = { reducer: { to: '4 in', kind: 'concentric' } };
  const tee = { tee: { side: { direction: 'up', size: '6 in', walk: [{ end: 'free' }] } } };
  const velocity = (suction: readonly Record<string, unknown>[]) =>
    practiceFinding(suctionVelocity, { suction }).demand;
  const end = [valve('gate'), { end: 'anchored' }];
  // 4.026 in against 6.065 in.
  expect(velocity([pipe, narrow, pipe, ...end])).toBeCloseTo(VELOCITY * (6.065 / 4.026) ** 2, 2);
  expect(velocity([pipe, tee, pipe, narrow, pipe, ...end])).toBeCloseTo(VELOCITY, 3);
});

test.each([Number.NaN, 0, -1, Number.POSITIVE_INFINITY])('a limit of %d cannot be told', (value) => {
  const subject = practiceSubject({ limits: limits('2 m/s') });
  const broken = { value, origin: { kind: 'given', path: 'test' } } as const;
  const installation = {
    ...subject.installation,
    limits: { ...subject.installation.limits, velocity: { suction: broken } },
  };
  expect(runCheck(suctionVelocity, { ...subject, installation })[0]?.verdict).toBe('cannot-tell');
});

test('it does not apply without a suction line', () => {
  const subject = practiceSubject();
  const lines = subject.installation.lines.filter(({ from }) => from !== 'suction');
  const installation = { ...subject.installation, lines };
  expect(runCheck(suctionVelocity, { ...subject, installation })[0]?.verdict).toBe('does-not-apply');
});
