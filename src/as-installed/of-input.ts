/** Whether a sheet was made from the input at hand, and what differs where it was not. */

/** What an input and a sheet say of the input. */
interface MadeFrom {
  readonly fingerprint?: string;
  /** Digests of what it describes: of the whole, then `name=digest` of each part. */
  readonly content?: string;
}

/**
 * Whether a sheet belongs to an input: made from the same text, or from one that describes the same installation. Sheets of
 * the first version carry the digest of the text alone.
 *
 * @param sheet - what the sheet says of its input
 * @param input - the input at hand
 * @returns true where it does
 */
export function isOfInput(sheet: MadeFrom, input: MadeFrom): boolean {
  if (sheet.fingerprint !== undefined && sheet.fingerprint === input.fingerprint) return true;
  const own = wholeOf(sheet.content);
  return own !== undefined && own === wholeOf(input.content);
}

/**
 * Names of the parts in which two inputs differ: changed, gone or new.
 *
 * @param sheet - what the sheet says of its input
 * @param input - the input at hand
 * @returns names, those of the sheet in its order and then what only the input has; none where one of them tells no parts
 */
export function partsApart(sheet: MadeFrom, input: MadeFrom): readonly string[] {
  if (wholeOf(sheet.content) === undefined || wholeOf(input.content) === undefined) return [];
  const before = partsOf(sheet.content);
  const after = partsOf(input.content);
  return [...new Set([...before.keys(), ...after.keys()])].filter(
    (name) => before.get(name) !== after.get(name),
  );
}

/** Digest of the whole; nothing for what is no line of digests. */
const wholeOf = (content = ''): string | undefined => /^([0-9a-f]{64})(?: |$)/u.exec(content)?.[1];

function partsOf(content = ''): ReadonlyMap<string, string> {
  const parts = new Map<string, string>();
  for (const each of content.split(' ').slice(1)) {
    const [, name = '', digest = ''] = /^([^=]+)=([0-9a-f]+)$/u.exec(each) ?? [];
    if (digest !== '') parts.set(plainName(name), digest);
  }
  return parts;
}

function plainName(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
