import type { FlangeSide } from '../../model/layout.js';
import type { ReportContext, View } from '../context.js';
import { findingRow } from '../finding-row.js';

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

function sideText(side: FlangeSide) {
  return {
    owner: side.owner,
    standard: side.standard === 'unknown' ? 'not given' : `${side.standard} class ${side.class}`,
    face: side.face === 'unknown' ? 'not given' : side.face,
    material: side.material === 'unknown' ? 'not given' : side.material,
    bolts:
      side.dimensions?.bolts === undefined
        ? '–'
        : `${side.dimensions.bolts} × ${side.dimensions.bolt ?? '?'} in`,
  };
}
