/** Findings that hold whatever the things are that nobody stated, or that say what turns them. */

import { excitations } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import { bandText, frequencyMargin } from '../../checks/motion/frequency-margin.js';
import { startMovement } from '../../checks/motion/start-movement.js';
import { coded } from '../../issues/issue.js';
import type { Finding } from '../../judging/finding.js';
import { type AtBound, overBounds } from '../../judging/over-bounds.js';
import type { Bounded, ThingEffect } from './bounds.js';
import { frequencyBounds, SWEPT_TOGETHER, sweptLockOut } from './frequency-outcomes.js';
import { type FrequencySweep, sweepFrequencies } from './frequency-sweep.js';
import { type LoadTrials, loadTrials } from './load-trials.js';
import { startTrials } from './start-trials.js';
import { type Unstated, unstatedOf } from './unstated.js';

/**
 * Tries everything that nobody stated at its bounds and judges each finding over all of them: it meets only if it meets
 * at every bound, exceeds only if it exceeds at every bound, and otherwise cannot be told, naming what turns it and the
 * datum that would settle it.
 *
 * @param subject - the installation, solved as stated
 * @param findings - findings of it
 * @returns the findings in their order, and what the trials gave
 */
export function boundFindings(subject: Subject, findings: readonly Finding[]): Bounded {
  const things = unstatedOf(subject.installation);
  const loads = loadTrials(
    subject,
    findings,
    things.filter(({ movesLoads }) => movesLoads),
  );
  const sweep = sweepFrequencies(subject, things);
  const shaken = excitations(subject);
  const ofFrequency = findings.filter(({ check }) => check === frequencyMargin.id);
  const moved = findings.some(({ check, verdict }) => check === startMovement.id && isSettled(verdict))
    ? startTrials(subject, startMovement, things)
    : [];
  const boundsOf = (finding: Finding): readonly AtBound[] => {
    const stated: AtBound = { varied: [], outcome: finding };
    if (finding.check === startMovement.id) return [stated, ...moved];
    const excitation = shaken[ofFrequency.indexOf(finding)];
    if (finding.check === frequencyMargin.id)
      return sweep && excitation ? frequencyBounds(finding, excitation, sweep, subject) : [stated];
    return loads.places.get(finding)?.bounds ?? [stated];
  };
  const bounded = findings.map((finding) =>
    sweep !== undefined && finding === ofFrequency[0] && finding.verdict === 'cannot-tell'
      ? withSweptSpeeds(finding, sweep, subject)
      : boundFinding(finding, boundsOf(finding), things, loads),
  );
  return {
    findings: bounded,
    bounds: {
      things: rankedThings(things, findings, bounded, loads),
      trials: loads.trials + moved.length + (sweep === undefined ? 0 : sweep.samples.length - 1),
      failed: loads.failed + (sweep?.failed ?? 0),
      supports: loads.supports,
      ...(sweep && { frequencies: sweep }),
    },
  };
}

/** The speeds a drive is to skip, over everything that nobody stated, beside those as stated. */
function withSweptSpeeds(finding: Finding, sweep: FrequencySweep, { installation }: Subject): Finding {
  const { speeds } = installation.pump.motor;
  const margin = installation.limits.frequencyMargin?.value;
  const { reason } = finding;
  if (margin === undefined || speeds === undefined || reason?.code !== 'checks.frequency-margin.lock-out')
    return finding;
  const bands = sweptLockOut(sweep, { timesPerTurn: 1, margin, speeds }).map(bandText).join(', ');
  return {
    ...finding,
    siteTest: 'knock test',
    reason: coded('checks.frequency-margin.lock-out-range', {
      at: finding.at,
      bands: reason.data.bands,
      widest: bands,
    }),
  };
}

const isSettled = (verdict: Finding['verdict']) => verdict === 'meets' || verdict === 'exceeds';

function boundFinding(
  finding: Finding,
  bounds: readonly AtBound[],
  things: readonly Unstated[],
  loads: LoadTrials,
): Finding {
  if (bounds.length < 2 || !isSettled(finding.verdict)) return finding;
  const { low, high, verdict, turnedBy } = overBounds(bounds);
  const reach = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
  if (verdict === finding.verdict || turnedBy === undefined) return { ...finding, ...reach };
  const { ratio: _, reason: __, ...kept } = finding;
  const named = rankedNames(finding, turnedBy, things, loads);
  const isFrequency = finding.check === frequencyMargin.id;
  const settle = things.find(({ what }) => what === named[0]) ?? things[0];
  const data = {
    at: finding.at,
    title: finding.title,
    turnedBy: named.join('; '),
    datum: settle?.what ?? '',
    path: settle?.path ?? '',
    say: settle?.say ?? '',
  };
  return {
    ...kept,
    ...reach,
    verdict: 'cannot-tell',
    turnedBy: named,
    reason: isFrequency
      ? coded('checks.frequency-margin.settle-on-site', data)
      : coded('checks.bounds-disagree', data),
    ...(isFrequency && !finding.comparison && { siteTest: 'knock test' as const }),
  };
}

/** What turns a finding, that which moves it most first. */
function rankedNames(
  finding: Finding,
  names: readonly string[],
  things: readonly Unstated[],
  loads: LoadTrials,
): readonly string[] {
  const alone = loads.places.get(finding)?.alone ?? [];
  const moving = things.filter(({ movesLoads }) => movesLoads);
  const by = (name: string): number => {
    const ratio = alone[moving.findIndex(({ what }) => what === name)];
    return ratio === undefined ? 0 : Math.abs(ratio - (finding.ratio ?? 0));
  };
  return [...names].sort((a, b) => by(b) - by(a));
}

/** What each thing does, those that turn verdicts first. */
function rankedThings(
  things: readonly Unstated[],
  findings: readonly Finding[],
  bounded: readonly Finding[],
  loads: LoadTrials,
): readonly ThingEffect[] {
  const moving = things.filter(({ movesLoads }) => movesLoads);
  const effects = things.map((thing): ThingEffect => {
    const turns = bounded
      .filter(
        ({ turnedBy, comparison }) => !comparison && (turnedBy ?? []).some((name) => names(thing, name)),
      )
      .map(({ check, title, at }) => ({ check, title, at }));
    const most = mostMoved(findings, loads, moving.indexOf(thing));
    return { thing, turns, ...(most && { most }) };
  });
  return effects.sort(
    (a, b) => b.turns.length - a.turns.length || (b.most?.share ?? 0) - (a.most?.share ?? 0),
  );
}

/** Whether a word of what turns a verdict stands for a thing: its own, or that of the structure swept together. */
function names({ kind, what }: Unstated, name: string): boolean {
  return name === what || (name === SWEPT_TOGETHER && kind !== 'bracket' && kind !== 'friction');
}

function mostMoved(findings: readonly Finding[], loads: LoadTrials, place: number): ThingEffect['most'] {
  if (place < 0) return undefined;
  let best: ThingEffect['most'];
  for (const finding of findings) {
    const { check, title, at, ratio, comparison } = finding;
    const to = loads.places.get(finding)?.alone[place];
    if (comparison || ratio === undefined || to === undefined) continue;
    const left = Math.max(Math.abs(1 - ratio), LEAST_LEFT);
    const share = Math.max(0, (ratio <= 1 ? to - ratio : ratio - to) / left);
    if (share > (best?.share ?? LEAST_SHARE)) best = { check, title, at, from: ratio, to, share };
  }
  return best;
}

/** What is left to a limit is taken as no less than this, and shares below this are none [-]. */
const LEAST_LEFT = 1e-3;
const LEAST_SHARE = 1e-3;
