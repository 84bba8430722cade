/** Which template and line every part of a filled text comes from, so that a fault of the markup is told where it was written. */

/** A place in a template. Lines and columns count from 1. */
export interface TemplatePlace {
  readonly template: string;
  readonly line: number;
  readonly column: number;
}

/** One stretch of filled text: where it starts, and where that was written. */
interface Stretch extends TemplatePlace {
  readonly start: number;
  readonly text: string;
  /** False for a value: all of it comes from one place. */
  readonly isWritten: boolean;
}

export interface Origins {
  /** Notes a stretch written by a template, or put in as a value. */
  readonly note: (text: string, place: TemplatePlace, isWritten: boolean) => void;
  /** Where a place of the filled text was written; undefined before anything was. */
  readonly placeOf: (line: number, column: number) => TemplatePlace | undefined;
}

/** Starts noting. */
export function openOrigins(): Origins {
  const stretches: Stretch[] = [];
  let length = 0;
  let lineStarts: readonly number[] | undefined;
  const startOfLine = (line: number): number => {
    lineStarts ??= startsOf(stretches);
    return lineStarts[Math.min(line, lineStarts.length) - 1] ?? 0;
  };
  return {
    note: (text, place, isWritten) => {
      if (text === '') return;
      stretches.push({ ...place, start: length, text, isWritten });
      length += text.length;
    },
    placeOf: (line, column) => {
      const offset = startOfLine(line) + column - 1;
      const at = lastAtOrBefore(stretches, offset);
      if (!at?.isWritten) return at;
      const before = at.text.slice(0, offset - at.start).split('\n');
      const last = before.at(-1)?.length ?? 0;
      return {
        template: at.template,
        line: at.line + before.length - 1,
        column: before.length === 1 ? at.column + last : last + 1,
      };
    },
  };
}

function startsOf(stretches: readonly Stretch[]): readonly number[] {
  const starts = [0];
  for (const { text, start } of stretches)
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(start + at + 1);
  return starts;
}

function lastAtOrBefore(stretches: readonly Stretch[], offset: number): Stretch | undefined {
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stretches[middle]?.start ?? 0) <= offset) low = middle + 1;
    else high = middle;
  }
  return stretches[Math.max(0, low - 1)];
}
