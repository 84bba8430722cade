import type { FlangeSide } from '../../../model/layout/layout.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';

/**
 * Every bolted joint: its two sides, faces and classes, and what the checks found there.
 *
 * @param context - layout, findings and writer
 * @returns one row per joint
 */
export function flanges(context: ReportContext) {
  const joints = context.subject.layout.flangeJoints.map((joint) => {
    const found = context.findings.filter(
      (finding) => finding.at === joint.name && !finding.comparison && finding.verdict !== 'does-not-apply',
    );
    return {
      name: joint.name,
      line: joint.line,
      sides: joint.sides.map(sideText),
      findings: found.map((finding) => findingRow(finding, context)),
      hasFindings: found.length > 0,
      faceMismatch:
        joint.sides.some((side) => side.face === 'raised') &&
        joint.sides.some((side) => side.face === 'flat'),
    };
  });
  const checks = [...new Set(joints.flatMap((joint) => joint.findings.map(({ title }) => title)))];
  return {
    joints: joints.map((joint) => ({
      ...joint,
      results: checks.map((check) => ({
        found: joint.findings
          .filter(({ title }) => title === check)
          .map(({ number, section, ratio, hasRatio, verdict }) => ({
            number,
            section,
            ratio,
            hasRatio,
            verdict,
          })),
      })),
    })),
    hasJoints: joints.length > 0,
    checks,
    hasChecks: checks.length > 0,
    hasMismatch: joints.some((joint) => joint.faceMismatch),
  } satisfies View;
}

/** One side in one line: standard and class, face, material, bolts; what is not given is said once. */
function sideText(side: FlangeSide) {
  const bolts = side.dimensions && `${side.dimensions.bolts} × ${side.dimensions.bolt ?? '?'} in`;
  const known = [
    ...(side.standard === 'unknown' ? [] : [`${side.standard} class ${side.class}`]),
    ...(side.face === 'unknown' ? [] : [side.face]),
    ...(side.material === 'unknown' ? [] : [side.material]),
    ...(bolts === undefined ? [] : [bolts]),
  ];
  const missing = [
    ...(side.standard === 'unknown' ? ['standard'] : []),
    ...(side.face === 'unknown' ? ['face'] : []),
    ...(side.material === 'unknown' ? ['material'] : []),
  ];
  const rest = missing.length === 0 ? [] : [`${missing.join(' and ')} not given`];
  return { owner: side.owner, words: [...known, ...rest].join(', ') };
}
