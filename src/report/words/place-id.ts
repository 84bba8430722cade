/**
 * Turns a name into an id that links can point at: lower case letters, digits and hyphens.
 *
 * @param name - for example `Suction nozzle, H3`
 * @returns for example `suction-nozzle-h3`
 */
export function placeId(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
