import { LOAD_DIRECTIONS, supportLoadIn } from '../../../analysis/supports/support-loads.js';
import type { Finding } from '../../../judging/finding.js';
import { inCondition } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';
import { largestLoadRows } from '../../rows/largest-load-rows.js';
import { askedOfManufacturer } from '../../words/asked-of-manufacturer.js';
import { uncertaintyWidth } from '../../words/band-words.js';
import { evenGroups } from '../../words/condition-order.js';
import { findingRow, worstFirst } from '../../words/finding-row.js';
import { carriesWeight } from '../../words/support-word.js';
import { NO_NUMBER } from '../../writer.js';

/** How many findings page one names. */
const NAMED = 3;

/**
 * Page one: what was reviewed, the verdict, the worst findings and what to do, what it rests on.
 *
 * @param context - results and writer
 * @returns strings of page one
 */
export function summary(context: ReportContext) {
  const { subject, findings, verdict, version } = context;
  const { installation } = subject;
  const { write } = context;
  const { review, service, pump } = installation;
  const judged = findings.filter((finding) => !finding.comparison);
  const count = (word: string): string => String(judged.filter((finding) => finding.verdict === word).length);
  const compared = findings.filter((finding) => finding.comparison && finding.verdict !== 'does-not-apply');
  const named = namedFindings(findings);
  const faults = named.filter(({ finding }) => finding.verdict !== 'meets');
  const nearest = named.filter(({ finding }) => finding.verdict === 'meets');
  const last = review.revisions.at(-1);
  return {
    location: review.location ?? '',
    client: review.client ?? '',
    preparedBy: review.preparedBy ?? '',
    engineerOfRecord: review.engineerOfRecord ?? '',
    status: review.status,
    date: review.date,
    revision: last?.mark ?? '',
    pump: pump.mark,
    build: pump.build,
    mount: pump.mount,
    service: service.name,
    flow: write.quantity(pump.duty.flow, 'flow'),
    head: write.quantity(pump.duty.head, 'head'),
    power: write.quantity(pump.motor.power, 'power'),
    speed: write.quantity(pump.motor.speed, 'speed', { significant: 4 }),
    version,
    fingerprint: installation.fingerprint.slice(0, 16),
    verdict,
    isMeets: verdict === 'meets',
    isExceeds: verdict === 'exceeds',
    isCannotTell: verdict === 'cannot-tell',
    judgedCount: String(judged.filter((finding) => finding.verdict !== 'does-not-apply').length),
    meetsCount: count('meets'),
    exceedsCount: count('exceeds'),
    cannotTellCount: count('cannot-tell'),
    doesNotApplyCount: count('does-not-apply'),
    comparisonCount: String(compared.length),
    hasCompared: compared.length > 0,
    beyondCount: String(compared.filter((finding) => finding.verdict === 'exceeds').length),
    openComparedCount: String(compared.filter((finding) => finding.verdict === 'cannot-tell').length),
    asked: askedOfManufacturer(findings).map(({ what }) => ({ what })),
    hasAsked: askedOfManufacturer(findings).length > 0,
    faults: faults.map((one, index) => namedRow(one, index, context)),
    hasFaults: faults.length > 0,
    nearest: nearest.map((one, index) => namedRow(one, index, context)),
    hasNearest: nearest.length > 0,
    bandsLine: bandsLine(context),
    hasBands: context.bands !== undefined,
    bandsShown: context.printed.has('bands'),
    full: context.reader === 'engineer',
    assumptionCount: String(context.assumptions.length),
    bearingCount: String(context.assumptions.filter((one) => one.bearsOn.length > 0).length),
    hasAssumptions: context.assumptions.length > 0,
    loads: loadsInBrief(context),
    loadsPlace:
      ['hangers', 'support-loads', 'readings', 'findings'].find((id) => context.printed.has(id)) ?? 'summary',
    forceUnit: write.unit('force'),
  } satisfies View;
}

/** Supports that fit beside each other on page one. */
const MOST_ABREAST = 10;

/** What every support carries, in brief: filled, and the largest of all conditions, the direction that governs marked. */
function loadsInBrief(context: ReportContext) {
  const { layout, response } = context.subject;
  const filled = inCondition(response.conditions, 'filled');
  const carrying = new Set(layout.supports.filter(carriesWeight).map(({ mark }) => mark));
  const columns = largestLoadRows(context.subject, context.write).map((row) => ({
    mark: row.mark,
    filled: context.write.loadNumber(
      carrying.has(row.mark) ? supportLoadIn(filled, row.mark)?.downward : undefined,
    ),
    cells: Object.fromEntries(
      LOAD_DIRECTIONS.map((direction) => [
        direction,
        { load: row[direction], governs: row.governs === direction },
      ]),
    ),
    when: row.governingIn,
  }));
  return evenGroups(columns, MOST_ABREAST).map((group) => ({
    columns: group.map(({ mark, filled: load, when }) => ({ mark, filled: load, when })),
    // A direction in which nothing is carried takes no line of page one.
    directions: LOAD_DIRECTIONS.filter((direction) =>
      group.some(({ cells }) => cells[direction]?.load !== NO_NUMBER),
    ).map((direction) => ({
      direction,
      loads: group.map(({ cells }) => ({
        load: cells[direction]?.load ?? NO_NUMBER,
        governs: cells[direction]?.governs ?? false,
      })),
    })),
  }));
}

/** A finding page one names, and the other places where the same check says the same. */
interface NamedFinding {
  readonly finding: Finding;
  readonly others: readonly Finding[];
}

/** The worst finding of each of the worst checks, so that page one does not say one thing three times. */
function namedFindings(findings: readonly Finding[]): readonly NamedFinding[] {
  const sorted = worstFirst(findings).filter(({ chosen, verdict }) => !chosen || verdict !== 'meets');
  const sameTrouble = (a: Finding, b: Finding): boolean => a.check === b.check && a.verdict === b.verdict;
  return sorted
    .filter((finding, index) => sorted.findIndex((one) => sameTrouble(one, finding)) === index)
    .slice(0, NAMED)
    .map((finding) => ({
      finding,
      others:
        finding.verdict === 'meets'
          ? []
          : sorted.filter((one) => one !== finding && sameTrouble(one, finding)),
    }));
}

function namedRow({ finding, others }: NamedFinding, index: number, context: ReportContext) {
  return {
    ...findingRow(finding, context),
    rank: String(index + 1),
    others: others.map((other) => other.at).join(', '),
    hasOthers: others.length > 0,
  };
}

/** How many of the verdicts that follow from weights and stiffness could be otherwise, and what to find out first. */
function bandsLine({ bands, write }: ReportContext): string {
  if (bands === undefined) return '';
  const judged = bands.findings.filter(({ comparison }) => !comparison);
  const open = judged.filter(
    ({ statement }) => statement === 'meets only if' || statement === 'exceeds unless',
  );
  const rough = bands.missingData.find(
    (missingDatum) => missingDatum.kind === 'rough' && missingDatum.turns.length > 0,
  );
  const first =
    rough?.kind === 'rough'
      ? ` Find out first: ${rough.uncertainty.what} (${uncertaintyWidth(rough.uncertainty, write)}).`
      : '';
  if (open.length === 0) {
    return `All ${judged.length} verdicts that follow from weights, springs and ends hold over their whole band.`;
  }
  return `${open.length} of ${judged.length} verdicts that follow from weights, springs and ends could be otherwise within what is known of them.${first}`;
}
