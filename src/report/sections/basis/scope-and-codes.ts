import { heldCodes, heldEdition, heldEditionsText } from '../../../catalog/index.js';
import type { Finding } from '../../../judging/finding.js';
import { type Citation, type SourceId, sources } from '../../../sources/index.js';
import { numberedSources, shortCitation, sourceAnchor } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow, isScope } from '../../words/finding-row.js';

/** What the sources at hand say of earthquakes: the force on a part of a building. */
const FORCE: Citation = { source: 'asce-7', clause: 'equations 13.3-1 to 13.3-3', confidence: 'two sources' };

/**
 * What is reviewed and by which codes, what is left out, and what is known of earthquakes.
 *
 * @param context - installation, findings and writer
 * @returns the pump and its service in words, one row per code that decides a verdict, and the seismic path
 */
export function scopeAndCodes(context: ReportContext) {
  const { installation } = context.subject;
  const { pump, service, limits } = installation;
  const { write } = context;
  const open = context.findings.filter((finding) => isScope(finding) && finding.verdict !== 'meets');
  const coefficient = limits.lateral?.coefficient;
  return {
    build: pump.build,
    mount: pump.mount,
    duty: service.duty ?? '',
    hasDuty: service.duty !== undefined,
    hottest: write.quantity(service.hotTemperature.value, 'temperature'),
    pressure: write.quantity(service.designPressure.value, 'pressure'),
    open: open.map((finding) => findingRow(finding, context)),
    hasOpen: open.length > 0,
    stressCode: limits.stress.code,
    edition: limits.stress.edition ?? '',
    hasEdition: limits.stress.edition !== undefined,
    isEditionHeld: heldEdition(limits.stress) !== undefined,
    heldEditions: heldEditionsText(),
    held: heldRows(limits.stress.code),
    rods: limits.rods.edition,
    nozzleBasis: limits.nozzle.basis ?? '',
    hasNozzleBasis: limits.nozzle.basis !== undefined,
    allowances: limits.nozzle.maker?.document ?? '',
    hasAllowances: limits.nozzle.maker !== undefined,
    codes: codeRows(context),
    hasSideways: coefficient !== undefined,
    coefficient: write.plain(coefficient?.value),
    force: shortCitation(FORCE, context),
    hasUpsets: context.printed.has('upsets'),
    hasCautions: context.printed.has('cautions'),
  } satisfies View;
}

/** What is held of the code the file names, and how it is known. */
function heldRows(named: string) {
  const held = heldCodes().find(({ code }) => code === named)?.held ?? [];
  return held.map(({ what, citation }) => ({
    what,
    clause: citation.clause,
    known: citation.confidence,
  }));
}

/** Standards that decide a verdict: what they decide, by which clauses, and how sure their reading is. */
function codeRows(context: ReportContext) {
  const deciding = context.findings.filter(
    ({ comparison, verdict, basis }) =>
      !comparison && verdict !== 'does-not-apply' && sources[basis.source].kind === 'standard',
  );
  const listed = numberedSources(context).map(({ id }) => id);
  const used = [...new Set(deciding.map(({ basis }) => basis.source))];
  return used
    .sort((a, b) => listed.indexOf(a) - listed.indexOf(b))
    .map((id) =>
      codeRow(
        id,
        deciding.filter(({ basis }) => basis.source === id),
        context,
      ),
    );
}

function codeRow(id: SourceId, found: readonly Finding[], context: ReportContext) {
  const index = numberedSources(context).findIndex((source) => source.id === id);
  const isNumbered = context.printed.has('sources') && index >= 0;
  return {
    isNumbered,
    mark: isNumbered ? String(index + 1) : '',
    to: isNumbered ? sourceAnchor(id) : '',
    title: sources[id].title,
    edition: sources[id].edition,
    decides: joined(found.map(({ title }) => title)),
    clauses: joined(
      found.map(({ basis }) => [basis.clause, basis.confidence].filter((word) => word !== '').join(': ')),
    ),
  };
}

const joined = (words: readonly string[]): string => [...new Set(words)].join('; ');
