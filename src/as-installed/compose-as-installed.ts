/** Composes the as-installed review: views of finished text for its template. */

import { textIn } from '../readings/read-box.js';
import { LOCKOUT_ORDER } from '../report/citations/card-citations.js';
import { disconnectText } from '../report/words/unit-words.js';
import { TRADES } from '../sheet/parts/open-items.js';
import { reportContextOf } from '../sheet/report-context.js';
import { citationText } from '../sources/index.js';
import type { AsInstalled } from './as-installed.js';
import type { Decision } from './decisions/decide.js';
import type { OpenItem } from './open-item.js';
import { baselineView } from './views/baseline-view.js';
import { flangesView } from './views/flanges-view.js';
import { loadsView } from './views/loads-view.js';
import { judgedView, missingView, unreadView, writtenView } from './views/readings-view.js';

/**
 * The view of the whole document.
 *
 * @param visit - what came of the visit
 * @param version - of the program
 * @returns strings, truth values and lists
 */
export function asInstalledView(visit: AsInstalled, version: string) {
  const { review, readings, decision, verdict } = visit;
  const { pump, review: data, fingerprint, service } = review.installation;
  const { items, decisions } = visit;
  const blocking = items.filter(({ blocksStart }) => blocksStart);
  const missing = missingView(visit);
  const unread = unreadView(visit);
  const recovery = items.filter(({ kind }) => kind === 'recovery');
  const counted = visit.judgements.filter(({ comparison }) => !comparison);
  const count = (word: string) => String(counted.filter((each) => each.verdict === word).length);
  return {
    title: titleOf(visit),
    mark: pump.mark,
    project: data.project,
    location: data.location ?? '',
    service: service.name,
    date: visit.date ?? 'undated',
    by: textIn(readings, 'identity.by') ?? '',
    witness: textIn(readings, 'identity.witness') ?? '',
    files: visit.files.join(', '),
    revision: data.revisions.at(-1)?.mark ?? '',
    fingerprint,
    version,
    isGo: decision === 'go',
    isHold: decision === 'hold',
    start: decisionView(decisions.start, 'start'),
    run: decisionView(decisions.run, 'run'),
    hasOtherRevisions: visit.otherRevisions.length > 0,
    otherRevisions: visit.otherRevisions.join(', '),
    verdict,
    reviewVerdict: review.verdict,
    meetsCount: count('meets'),
    exceedsCount: count('exceeds'),
    cannotTellCount: count('cannot-tell'),
    itemCount: String(items.length),
    blockingCount: String(blocking.length),
    hasItems: items.length > 0,
    trades: byTrade(items),
    loads: loadsView(visit),
    flanges: flangesView(visit),
    judged: judgedView(visit),
    written: writtenView(visit),
    hasUnread: unread.length > 0,
    unread,
    baseline: baselineView(visit),
    missing,
    hasMissing: missing.length > 0,
    hasRecovery: recovery.length > 0,
    recovery: recovery.map(({ at }) => at).join(' and the '),
    lockout: citationText(LOCKOUT_ORDER),
    disconnect: disconnectText(reportContextOf(visit)),
    isHung: pump.mount === 'hung',
  };
}

/** Reasons told on page one, for each decision. */
const MOST_REASONS = 8;

/** What an item keeps from happening, as printed. */
const BARS = { running: 'running', start: 'start', acceptance: 'acceptance', nothing: 'nothing' } as const;

/** Why a name does not count. */
const NAMELESS = {
  'no-name': 'nobody is named who decides',
  'no-day': 'no day is written beside the name of who decides',
  older: 'the name of who decides is older than the last reading',
} as const;

/** One decision as printed; what stands against a start is not told again with the second. */
function decisionView({ word, against, by = '', on = '', nameless }: Decision, which: 'start' | 'run') {
  const own = against.filter(
    ({ blocksStart, bars }) => which === 'start' || !blocksStart || bars === 'running',
  );
  return {
    isGo: word === 'go',
    isStop: word === 'stop',
    isHold: word === 'hold',
    isNameless: nameless !== undefined,
    nameless: nameless === undefined ? '' : NAMELESS[nameless],
    by,
    on,
    count: String(against.length),
    hasReasons: own.length > 0,
    reasons: own.slice(0, MOST_REASONS).map(({ at, finding }) => ({ at, finding: capital(finding) })),
    hasFurther: own.length > MOST_REASONS,
    further: String(Math.max(0, own.length - MOST_REASONS)),
  };
}

/** Title of the document. */
export function titleOf({ review }: Pick<AsInstalled, 'review'>): string {
  const { pump, review: data } = review.installation;
  return `As installed: pump ${pump.mark}, ${data.project}`;
}

function byTrade(items: readonly OpenItem[]) {
  const trades = [...new Set<string>([...TRADES, ...items.map(({ trade }) => trade)])];
  return trades.flatMap((trade) => {
    const own = items.filter((item) => item.trade === trade);
    return own.length === 0
      ? []
      : [
          {
            trade: capital(trade),
            items: own.map((item) => ({
              at: item.at,
              title: item.title,
              finding: capital(item.finding),
              evidence: item.evidence,
              consequence: capital(item.consequence),
              fix: capital(item.fix),
              blocks: BARS[item.bars],
              isBlocking: item.blocksStart,
            })),
          },
        ];
  });
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
