import type { IssueCode } from '../../issues/issue.js';
import type { Finding } from '../../judging/finding.js';
import { isOpen } from '../../judging/verdict.js';

const NOZZLE_LOADS = 'loads allowed on the nozzles, with the document they stand in';
const COUPLING = 'window of the coupling and the room beside it';

/** What only the manufacturer can supply, by the reason why something cannot be told. */
const asked: Partial<Record<IssueCode, string>> = {
  'checks.nozzle-loads.no-basis': NOZZLE_LOADS,
  'checks.nozzle-loads.not-named': NOZZLE_LOADS,
  'checks.nozzle-loads.no-maker-limits': NOZZLE_LOADS,
  'checks.nozzle-loads.not-in-table': NOZZLE_LOADS,
  'checks.slack-hanger.no-basis': NOZZLE_LOADS,
  'checks.fit-up-tolerance.no-basis': NOZZLE_LOADS,
  'checks.coupling-space.unknown': COUPLING,
  'checks.seal-through-spacer.unknown': COUPLING,
  'checks.wrench-room.unknown': 'room for tools at the bolts of the motor',
  'checks.casing-lift-out.unknown': 'height needed to lift the casing out',
  'checks.motor-orientation.unknown': 'whether the motor may stand with its shaft down',
  'checks.motor-power.no-efficiency': 'efficiency of the pump at its duty',
};

/** One thing to be asked for, and what waits for it. */
export interface AskedOfManufacturer {
  readonly what: string;
  /** Titles of the checks that wait, each once. */
  readonly settles: readonly string[];
  /** How many judged places wait for it. */
  readonly judged: number;
}

/**
 * What the manufacturer has to supply, each once, by cause, most awaited first.
 *
 * @param findings - of a review, in any order
 * @returns what to ask for; empty where nothing waits
 */
export function askedOfManufacturer(findings: readonly Finding[]): readonly AskedOfManufacturer[] {
  const waiting = new Map<string, Finding[]>();
  for (const finding of findings) {
    const what = finding.reason && isOpen(finding) ? asked[finding.reason.code] : undefined;
    if (what !== undefined) waiting.set(what, [...(waiting.get(what) ?? []), finding]);
  }
  return [...waiting]
    .map(([what, found]) => ({
      what,
      settles: [...new Set(found.map(({ title }) => title))],
      judged: found.filter(({ comparison }) => !comparison).length,
    }))
    .sort((a, b) => b.judged - a.judged);
}
