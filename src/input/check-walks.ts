/**
 * What can be said of the walks as written, also where single values cannot be read: marks, ends, ports, how many
 * parts, how deep. So these faults are told together with all others.
 */
import type { Path, PendingIssue } from './pending-issue.js';
import { supportKinds } from './resolve/resolve-support.js';
import { valueAt } from './schema-issues.js';

/** More parts than any one pump has. */
const MOST_PARTS = 5000;
/** Tees in side legs of tees. */
const DEEPEST_WALK = 8;

type Content = Readonly<Record<string, unknown>>;

/**
 * Checks lines and walks as written.
 *
 * @param content - what the file holds [-]
 * @returns pending issues, in no order [-]
 */
export function checkWalks(content: unknown): readonly PendingIssue[] {
  const lines = valueAt(content, ['piping', 'lines']);
  if (!Array.isArray(lines)) return [];
  const steps = lines.flatMap((line, index) =>
    stepsOf(valueAt(line, ['walk']), ['piping', 'lines', index, 'walk'], 1),
  );
  if (steps.length > MOST_PARTS) {
    return [
      {
        code: 'input.too-many-parts',
        path: ['piping', 'lines'],
        at: 'key',
        data: { found: steps.length, most: MOST_PARTS },
      },
    ];
  }
  return [...checkPorts(lines), ...checkMarks(steps), ...checkEnds(steps)];
}

interface WrittenStep {
  readonly step: Content;
  readonly path: Path;
  readonly isLast: boolean;
  readonly depth: number;
}

function stepsOf(walk: unknown, path: Path, depth: number): readonly WrittenStep[] {
  if (!Array.isArray(walk) || depth > DEEPEST_WALK + 1) return [];
  return walk.flatMap((step: unknown, index): readonly WrittenStep[] => {
    if (!isMap(step)) return [];
    const here = { step, path: [...path, index], isLast: index === walk.length - 1, depth };
    return [
      here,
      ...stepsOf(valueAt(step, ['tee', 'side', 'walk']), [...path, index, 'tee', 'side', 'walk'], depth + 1),
    ];
  });
}

function isMap(value: unknown): value is Content {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function checkPorts(lines: readonly unknown[]): readonly PendingIssue[] {
  const ports = lines.map((line) => valueAt(line, ['from']));
  const twice = ports.flatMap((port, index): readonly PendingIssue[] =>
    (port === 'suction' || port === 'discharge') && ports.indexOf(port) < index
      ? [{ code: 'input.port-taken', path: ['piping', 'lines', index, 'from'], at: 'value', data: { port } }]
      : [],
  );
  if (
    twice.length > 0 ||
    lines.length > 1 ||
    ports.some((port) => port !== 'suction' && port !== 'discharge')
  )
    return twice;
  const port = ports[0] === 'suction' ? 'discharge' : 'suction';
  return [{ code: 'input.line-missing', path: ['piping', 'lines'], at: 'key', data: { port } }];
}

function checkMarks(steps: readonly WrittenStep[]): readonly PendingIssue[] {
  const seen = new Map<string, Path>();
  return steps
    .flatMap(({ step, path }) => marksOf(step, path))
    .flatMap(({ mark, path }): readonly PendingIssue[] => {
      if (!seen.has(mark)) {
        seen.set(mark, path);
        return [];
      }
      return [{ code: 'input.mark-twice', path, at: 'value', data: { mark } }];
    });
}

function marksOf(step: Content, path: Path): readonly { readonly mark: string; readonly path: Path }[] {
  const holders: readonly Path[] = [[], ['elbow', 'support'], ['suction-diffuser', 'support']];
  return holders.flatMap((holder) =>
    supportKinds.flatMap((kind) => {
      const inside = [...holder, kind, 'mark'];
      const mark = valueAt(step, inside);
      return typeof mark === 'string' || typeof mark === 'number'
        ? [{ mark: String(mark).trim(), path: [...path, ...inside] }]
        : [];
    }),
  );
}

function checkEnds(steps: readonly WrittenStep[]): readonly PendingIssue[] {
  return steps.flatMap(({ step, path, isLast, depth }): readonly PendingIssue[] => {
    if (depth > DEEPEST_WALK) {
      return path.at(-1) === 0
        ? [{ code: 'input.walk-too-deep', path, at: 'value', data: { most: DEEPEST_WALK } }]
        : [];
    }
    const isEnd = Object.hasOwn(step, 'end');
    if (isLast && !isEnd) return [{ code: 'input.no-end', path, at: 'value', data: {} }];
    return isEnd && !isLast
      ? [{ code: 'input.end-not-last', path: [...path, 'end'], at: 'key', data: {} }]
      : [];
  });
}
