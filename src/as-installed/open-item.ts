/** What is still open after a visit, as finished text: finding, evidence, consequence, fix, trade, whether it blocks. */

import { ONLY_IF_FORCED } from '../as-found/found-findings.js';
import { FLANGES, gapsAt } from '../as-installed/read-flange.js';
import type { Trade } from '../checks/rule-facts.js';
import { sentenceOf } from '../issues/print.js';
import type { Finding } from '../judging/finding.js';
import { findingRow, findingSentence } from '../report/words/finding-row.js';
import { tradeOf } from '../report/words/trades.js';
import type { TRADES } from '../sheet/parts/open-items.js';
import { reportContextOf } from '../sheet/report-context.js';
import type { AsInstalled } from './as-installed.js';
import { blocks } from './as-installed.js';
import type { Judgement } from './judgement.js';
import { judgementRow } from './judgement-row.js';

/** Trades of the sheet, by which open items are sorted, for those that act on a check of the review. */
const FIELD_TRADE = {
  'Design engineer': 'engineer',
  'Structural engineer': 'engineer',
  'Pipe fitter': 'pipe fitter',
  'Rigger, and coordination of trades': 'millwright',
  Electrician: 'electrician',
} as const satisfies Record<Trade, (typeof TRADES)[number]>;

/** One open item. */
export interface OpenItem {
  readonly trade: string;
  readonly at: string;
  readonly title: string;
  readonly finding: string;
  readonly evidence: string;
  readonly consequence: string;
  readonly fix: string;
  readonly blocksStart: boolean;
  /** A reading that exceeds, one that is missing, a check of the line as found, or a note of the agent. */
  readonly kind: 'exceeds' | 'missing' | 'as found' | 'noted' | 'recovery';
}

/**
 * Everything still open, blocking items first, then as the sheet goes.
 *
 * @param visit - what came of the visit
 * @returns items of all trades
 */
export function openItems(visit: AsInstalled): readonly OpenItem[] {
  const recovery = FLANGES.filter((which) => gapsAt(which, visit) === undefined);
  const passed = new Set(recovery.map((which) => `${which} flange`));
  const exceeding = visit.judgements.filter(
    ({ verdict, comparison }) => verdict === 'exceeds' && !comparison,
  );
  const unknown = visit.judgements.filter(
    (judgement) => blocks(judgement) && judgement.verdict === 'cannot-tell',
  );
  // What is read before bolt-up is asked for once, by the test that takes its place.
  const missing = unknown.filter(({ part, at }) => part !== 'before-bolt-up' || !isOf(at, passed));
  const all: readonly OpenItem[] = [
    ...exceeding.map((judgement) => itemOf(judgement, 'exceeds', visit)),
    ...foundItems(visit),
    ...recovery.map((which): OpenItem => {
      const at = `${which} flange`;
      const { message, wanted = '', hint = '' } = sentenceOf({ code: 'fieldwork.recovery', data: { at } });
      return {
        trade: 'pipe fitter',
        at,
        title: 'Pipe strain at bolt-up not known',
        finding: message,
        evidence: 'no gaps on the sheet',
        consequence: hint,
        fix: wanted,
        blocksStart: true,
        kind: 'recovery',
      };
    }),
    ...missing.map((judgement) => itemOf(judgement, 'missing', visit)),
    ...visit.agentItems
      .filter(({ closed }) => !closed)
      .map(
        ({ finding, trade, blocksStart }): OpenItem => ({
          trade,
          at: 'on site',
          title: 'Noted by the agent',
          finding,
          evidence: 'seen on site',
          consequence: '',
          fix: '',
          blocksStart,
          kind: 'noted',
        }),
      ),
  ];
  return [...all].sort((a, b) => Number(b.blocksStart) - Number(a.blocksStart));
}

function isOf(at: string, flanges: ReadonlySet<string>): boolean {
  return [...flanges].some((flange) => at === flange || at.startsWith(flange.replace('flange', 'nozzle')));
}

function itemOf(judgement: Judgement, kind: OpenItem['kind'], visit: AsInstalled): OpenItem {
  const { reason, trade, at, title, blocksStart } = judgement;
  const sentence = reason === undefined ? { message: title } : sentenceOf(reason);
  const row = judgementRow(judgement, visit);
  const against = row.limit === '' ? '' : `, limit ${row.limit}`;
  return {
    trade,
    at,
    title,
    finding: sentence.message,
    evidence: kind === 'missing' ? row.read : `${row.read}${against}`,
    consequence: sentence.hint ?? '',
    fix: sentence.wanted ?? '',
    blocksStart,
    kind,
  };
}

/** What exceeds as found, or does so if the heights are forced on the pipe. */
function isOpenAsFound({ verdict, comparison, reason }: Finding): boolean {
  return !comparison && (verdict === 'exceeds' || reason?.code === ONLY_IF_FORCED);
}

function foundItems(visit: AsInstalled): readonly OpenItem[] {
  const { findings, asFound } = visit;
  if (asFound.kind === 'fails') {
    const { message } = sentenceOf(asFound.why);
    return [
      {
        trade: 'engineer',
        at: 'line as found',
        title: 'The line as found cannot be worked out',
        finding: message,
        evidence: 'readings of the supports',
        consequence: 'the loads on the nozzles are not known',
        fix: 'read the supports again',
        blocksStart: true,
        kind: 'as found',
      },
    ];
  }
  const context = reportContextOf(visit);
  return findings.filter(isOpenAsFound).map((finding): OpenItem => {
    const row = findingRow(finding, context);
    const sentence = findingSentence(finding);
    const numbers = row.hasNumbers ? `${row.demand} against ${row.limit}` : 'as found';
    return {
      trade: FIELD_TRADE[tradeOf(finding)],
      at: finding.at,
      title: `${finding.title}, as found`,
      finding: sentence?.message ?? finding.title,
      evidence: `${numbers}${row.hasCondition ? `, ${row.condition}` : ''}`,
      consequence: sentence?.hint ?? '',
      fix: sentence?.wanted ?? 'set the supports as designed, or review the installation as it is',
      blocksStart: true,
      kind: 'as found',
    };
  });
}
