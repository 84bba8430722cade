/**
 * Whether a text is a number without a unit behind it: `12.5`, `1/8`, `-0.02`.
 *
 * @param text - as written
 * @returns true where the unit of the box is meant
 */
export function isBareNumber(text: string): boolean {
  return /^[\d.,/ +\-−]+$/u.test(text);
}
