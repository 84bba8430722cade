/**
 * An example as a line of the file, in flow notation: `hanger: {mark: H1, rod: 5/8 in}`.
 *
 * @param key - key it stands behind; left out for items of a list [-]
 * @param example - plain data [-]
 * @returns one line of YAML [-]
 */
export function exampleText(key: string | undefined, example: unknown): string {
  return key === undefined ? flow(example) : `${key}: ${flow(example)}`;
}

function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    return `{${Object.entries(value)
      .map(([key, entry]) => `${key}: ${flow(entry)}`)
      .join(', ')}}`;
  }
  // Words with a comma, a colon or a quotation mark would not be read back as they are.
  return typeof value === 'string' && /[,:"'#{}[\]]/u.test(value) ? JSON.stringify(value) : String(value);
}
