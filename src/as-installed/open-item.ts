/** What is still open after a visit, as finished text: finding, evidence, consequence, fix, trade, what it keeps from happening. */

import { ONLY_IF_FORCED } from '../as-found/found-findings.js';
import type { Trade } from '../checks/rule-facts.js';
import type { Coded } from '../issues/issue.js';
import { sentenceOf } from '../issues/print.js';
import type { Sentence } from '../issues/sentences/sentence.js';
import type { Finding } from '../judging/finding.js';
import type { SiteItem } from '../readings/site-items.js';
import { findingRow, findingSentence } from '../report/words/finding-row.js';
import { tradeOf } from '../report/words/trades.js';
import type { TRADES } from '../sheet/parts/open-items.js';
import { reportContextOf } from '../sheet/report-context.js';
import { type Bars, GRAVEST_FIRST, keepsFromStart } from './decisions/requirement.js';
import type { FieldSubject } from './judge.js';
import type { Judgement } from './judgement.js';
import { judgementRow } from './judgement-row.js';
import { unreadFlanges } from './judges/before-start/recovery.js';

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
  readonly bars: Bars;
  /** Whether it keeps the pump from being started. */
  readonly blocksStart: boolean;
  /** A reading that exceeds, one past guidance alone, one that is missing, a check of the line as found, or what somebody noted. */
  readonly kind: 'exceeds' | 'guidance' | 'missing' | 'as found' | 'noted' | 'recovery' | 'conflict';
  /** Key of what somebody noted, by which it is classed and closed. */
  readonly key?: string;
}

/** What items are made of. */
export interface Open extends FieldSubject {
  readonly judgements: readonly Judgement[];
  readonly findings: readonly Finding[];
  readonly siteItems: readonly SiteItem[];
  readonly isCut: boolean;
}

/**
 * Everything still open, what keeps most from happening first, then as the sheet goes.
 *
 * @param open - judgements, findings of the line as found, notes
 * @returns items of all trades
 */
export function openItems(open: Open): readonly OpenItem[] {
  const { judgements } = open;
  const passed = new Set(unreadFlanges(open).map((which) => `${which} flange`));
  // What is read before bolt-up is asked for once, by the test that takes its place.
  const replaced = ({ part, at, judge, how }: Judgement) =>
    how === 'unknown' && part === 'before-bolt-up' && judge !== 'recovery' && isOf(at, passed);
  const items: readonly OpenItem[] = [
    ...judgements
      .filter(({ how }) => how === 'beyond' || how === 'against')
      .map((each) => itemOf(each, 'exceeds', open)),
    ...foundItems(open),
    ...judgements
      .filter(({ how, bars }) => how === 'guidance' && bars !== 'nothing')
      .map((each) => itemOf(each, 'guidance', open)),
    ...judgements
      .filter((each) => each.how === 'unknown' && each.bars !== 'nothing' && !replaced(each))
      .map((each) => itemOf(each, each.judge === 'recovery' ? 'recovery' : 'missing', open)),
    ...(open.isCut ? [CUT] : []),
    ...open.siteItems.filter(({ closed }) => closed === undefined).map(notedItem),
  ];
  return [...items].sort((a, b) => GRAVEST_FIRST.indexOf(a.bars) - GRAVEST_FIRST.indexOf(b.bars));
}

const CUT: OpenItem = {
  trade: 'commissioning agent',
  at: 'sheets',
  title: 'Sheets disagree on many boxes',
  finding: 'the sheets disagree on more boxes than can be judged together',
  evidence: 'see what could not be read',
  consequence: 'a combination of readings that stands against the pump may not have been tried',
  fix: 'read those boxes again on one sheet that says which it corrects',
  bars: 'start',
  blocksStart: true,
  kind: 'conflict',
};

function isOf(at: string, flanges: ReadonlySet<string>): boolean {
  return [...flanges].some((flange) => at === flange || at.startsWith(flange.replace('flange', 'nozzle')));
}

function itemOf(judgement: Judgement, kind: OpenItem['kind'], open: Open): OpenItem {
  const { reason, trade, at, title, bars, blocksStart, undisputed } = judgement;
  const isRecovery = kind === 'recovery';
  const told: Coded | undefined = isRecovery ? { code: 'fieldwork.recovery', data: { at } } : reason;
  const sentence: Sentence = told === undefined ? { message: title } : sentenceOf(told);
  const row = judgementRow(judgement, open);
  const against = row.limit === '' ? '' : `, ${kind === 'guidance' ? 'guidance' : 'limit'} ${row.limit}`;
  const beyond = undisputed === undefined ? '' : `; ${undisputed}`;
  const isAbsent = kind === 'missing' || isRecovery;
  return {
    trade,
    at,
    title,
    finding:
      kind === 'guidance'
        ? `${sentence.message}: guidance is passed, and nobody has given a limit`
        : sentence.message,
    evidence: isRecovery ? 'no gaps on the sheet' : isAbsent ? row.read : `${row.read}${against}${beyond}`,
    consequence: sentence.hint ?? '',
    fix: sentence.wanted ?? '',
    bars,
    blocksStart,
    kind,
  };
}

function notedItem(item: SiteItem): OpenItem {
  const { words, trade, bars, by, day, classedBy, halfClosed, key, part } = item;
  const unclassed =
    classedBy === undefined
      ? '; nobody by name has said what it keeps from happening'
      : `; classed by ${classedBy}`;
  const half = halfClosed ? '; called closed without what was done, a name and a day' : '';
  return {
    trade,
    at: item.kind === 'remark' ? part : 'on site',
    title: item.kind === 'remark' ? 'Remark on the sheet' : 'Noted on site',
    finding: words,
    evidence: `${by ?? 'no name'}, ${day ?? 'no day'}${unclassed}${half}`,
    consequence: '',
    fix:
      halfClosed || classedBy === undefined
        ? 'class it, or close it with what was done, a name and a day'
        : '',
    bars,
    blocksStart: keepsFromStart(bars),
    kind: 'noted',
    key,
  };
}

/** What exceeds as found, or does so if the heights are forced on the pipe. */
export function isOpenAsFound({ verdict, comparison, reason }: Finding): boolean {
  return !comparison && (verdict === 'exceeds' || reason?.code === ONLY_IF_FORCED);
}

function foundItems(open: Open): readonly OpenItem[] {
  const { findings, asFound } = open;
  const start = { bars: 'start', blocksStart: true, kind: 'as found' } as const;
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
        ...start,
      },
    ];
  }
  const context = reportContextOf(open);
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
      ...start,
    };
  });
}
