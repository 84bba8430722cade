/** Names of elbows, valves and other parts, for finding in the picture what a table speaks of. */
import type { Finding } from '../../judging/finding.js';
import type { Layout } from '../../model/layout/layout.js';
import { between } from '../../model/vector.js';
import type { Label } from '../labels/label.js';
import { arcPoints } from '../space.js';
import type { LinePicture } from './line-picture.js';
import { exceedsAt, NOTE_SIZE } from './load-labels.js';
import { project } from './projection.js';
import type { DrawnStroke } from './shortened-line.js';

/** Roles worth a name; flanges and plain runs are named only where something exceeds there. */
const NAMED: readonly string[] = ['valve', 'diffuser', 'connector', 'reducer'];

/**
 * Labels with the names of parts. What exceeds is said in the label and placed before the others.
 *
 * @param subject - layout and findings
 * @param picture - the picture the names go into
 * @returns labels, each name once
 */
export function partNameLabels(
  subject: { readonly layout: Layout; readonly findings: readonly Finding[] },
  picture: LinePicture,
): readonly Label[] {
  const seen = new Set<string>();
  const tees = new Set(subject.layout.tees.map((tee) => tee.name));
  return picture.drawn.strokes.flatMap((drawn): readonly Label[] => {
    const { stroke } = drawn;
    const exceeds = exceedsAt(subject.findings, stroke.name);
    const named = stroke.kind === 'arc' || NAMED.includes(stroke.role) || tees.has(stroke.name);
    if (seen.has(stroke.name) || !(named || exceeds)) return [];
    seen.add(stroke.name);
    const radius = (stroke.diameter / 2) * picture.projection.scale;
    const text = exceeds ? `${stroke.name} exceeds` : stroke.name;
    return [
      {
        name: stroke.name,
        rows: [
          { text, size: NOTE_SIZE, weight: exceeds ? 'bold' : 'regular', ink: exceeds ? 'accent' : 'black' },
        ],
        anchor: project(picture.projection, middleOf(drawn, tees)),
        reach: radius + 2,
        priority: exceeds ? 9 : 3,
        framed: exceeds,
      },
    ];
  });
}

function middleOf(drawn: DrawnStroke, tees: ReadonlySet<string>): readonly [number, number, number] {
  if (drawn.centre !== undefined) return arcPoints({ ...drawn, centre: drawn.centre }, 2)[1] ?? drawn.from;
  return tees.has(drawn.stroke.name) ? drawn.to : between(drawn.from, drawn.to, 0.5);
}
