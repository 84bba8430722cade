import { heldEdition } from '../../../catalog/index.js';
import { isOf, ruleOf } from '../../../checks/all-checks.js';
import type { Finding } from '../../../judging/finding.js';
import { workedMark } from '../../calculations/worked-mark.js';
import type { ReportContext, View } from '../../context.js';
import { occasionalRows, pipeRows } from '../../rows/pipe-stress-rows.js';
import { findingRow } from '../../words/finding-row.js';

/**
 * Stress in the pipe: the worst places of each check, occasional loads by condition, every pipe under pressure, the
 * pressure of the test, and the factors of bends and tees.
 *
 * @param context - layout, findings and writer
 * @returns table rows
 */
export function stress(context: ReportContext) {
  const { layout, installation } = context.subject;
  const { write } = context;
  const found = context.findings.filter(
    (finding) =>
      ruleOf(finding)?.section === 'stress' && !isOf(finding, 'test-pressure') && !finding.comparison,
  );
  const tests = context.findings.filter((finding) => isOf(finding, 'test-pressure'));
  const isHeld = heldEdition(installation.limits.stress) !== undefined;
  const occasional = isHeld ? occasionalRows(context) : [];
  const checks = [...new Set(found.map((finding) => finding.check))];
  return {
    code: installation.limits.stress.code,
    edition: installation.limits.stress.edition ?? '',
    isHeld,
    stressUnit: write.unit('stress'),
    occasional,
    hasOccasional: occasional.length > 0,
    factor: write.plain(installation.limits.stress.occasionalFactor?.value),
    pipes: pipeRows(context),
    jointFactor: write.plain(installation.limits.stress.jointFactor?.value),
    tests: tests.map((finding) => ({
      ...findingRow(finding, context),
      isLeast: finding.at === 'whole installation',
    })),
    hasTests: tests.length > 0,
    groups: checks.map((check) =>
      worstPlaces(
        found.filter((finding) => finding.check === check),
        context,
      ),
    ),
    hasGroups: checks.length > 0,
    lengthUnit: write.unit('length'),
    bends: layout.bends.map((bend) => ({
      name: bend.name,
      line: bend.line,
      pipe: bend.part.section.name,
      radius: write.number(bend.part.radius.value, 'length'),
      characteristic: write.plain(bend.factors.characteristic),
      stiffEnds: String(bend.factors.stiffEnds),
      stiffening: write.plain(bend.factors.stiffening),
      flexibility: write.plain(bend.factors.flexibility),
      intensification: write.plain(bend.factors.intensification),
    })),
    hasBends: layout.bends.length > 0,
    tees: layout.tees.map((tee) => ({
      name: tee.name,
      line: tee.line,
      make: tee.part.make,
      intensification: write.plain(tee.intensification),
    })),
    hasTees: layout.tees.length > 0,
  } satisfies View;
}

/** How many places of one check are printed; all of them stand under the findings. */
const PLACES = 4;

function worstPlaces(found: readonly Finding[], context: ReportContext) {
  const sorted = [...found].sort((a, b) => (b.ratio ?? b.demand ?? 0) - (a.ratio ?? a.demand ?? 0));
  return {
    title: found[0]?.title ?? '',
    rows: sorted
      .slice(0, PLACES)
      .map((finding) => ({ ...findingRow(finding, context), ...workedMark(finding, context) })),
    more: String(Math.max(0, found.length - PLACES)),
    hasMore: found.length > PLACES,
  };
}
