/**
 * Whether a number is worse than another, where larger is worse and "not a number" is worst of all: it must come
 * through to the verdict and not hide behind its neighbours.
 *
 * @param next - number that may take the place [-]
 * @param before - number that holds the place, if any [-]
 * @returns true when the next takes the place
 */
export function isWorse(next: number, before: number | undefined): boolean {
  if (before === undefined) return true;
  return Number.isNaN(next) || next > before;
}
