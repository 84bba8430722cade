/**
 * How wide printed text is, so that labels can be boxed before anything is painted. Widths are the advance widths
 * of Source Sans 3 in thousandths of the size; an unknown sign counts as the widest letter.
 */

/** ASCII from blank to tilde. */
const REGULAR_ASCII = [
  200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497, 497, 497,
  497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 543, 588, 571, 615, 527, 494, 617, 652, 263,
  479, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497,
  500, 542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495, 255, 829, 547, 542, 555, 555, 347, 419,
  338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
] as const;

const BOLD_ASCII = [
  200, 340, 537, 528, 528, 857, 667, 300, 344, 344, 457, 528, 300, 332, 300, 339, 528, 528, 528, 528, 528,
  528, 528, 528, 528, 528, 300, 300, 528, 528, 528, 463, 902, 573, 605, 582, 635, 548, 524, 638, 674, 301,
  509, 614, 518, 762, 665, 684, 596, 684, 613, 556, 556, 665, 556, 813, 567, 525, 541, 344, 339, 344, 528,
  500, 555, 527, 573, 468, 573, 518, 341, 534, 571, 276, 278, 548, 286, 857, 572, 555, 573, 573, 398, 443,
  383, 568, 523, 776, 514, 521, 460, 344, 268, 344, 528,
] as const;

/** Signs beyond ASCII that printed quantities and names use: the wider of regular and bold. */
const FURTHER: Readonly<Record<string, number>> = {
  '\u00a0': 200,
  '\u2009': 200,
  '\u202f': 120,
  '°': 345,
  '·': 300,
  '×': 528,
  '±': 528,
  '²': 376,
  '³': 376,
  '–': 480,
  '—': 800,
  '−': 528,
  '≤': 528,
  '≥': 528,
  '≈': 528,
  '√': 588,
  '⁄': 96,
  '½': 846,
  '¼': 809,
  '¾': 818,
  '⅛': 837,
  '⅜': 849,
  '⅝': 849,
  '⅞': 829,
  '′': 300,
  '″': 537,
  '‘': 300,
  '’': 300,
  '“': 537,
  '”': 537,
  '…': 978,
};

/** Latin letters with marks are no wider than this; so are all unknown signs. */
const WIDEST = 920;

/** Room for another face of the family or a browser's own sans-serif. */
const MARGIN = 1.05;

/** Height of a capital over the base line, and of the tail under it, as shares of the size. */
export const CAPITAL_HEIGHT = 0.68;
export const TAIL_DEPTH = 0.22;

/**
 * Printed width of a line of text, a little on the wide side.
 *
 * @param text - one line
 * @param size - size of the letters, 1/72 in [-]
 * @param weight - regular or bold
 * @returns width, 1/72 in [-]
 */
export function textWidth(text: string, size: number, weight: 'regular' | 'bold' = 'regular'): number {
  const table: readonly number[] = weight === 'bold' ? BOLD_ASCII : REGULAR_ASCII;
  let thousandths = 0;
  for (const sign of text) thousandths += table[(sign.codePointAt(0) ?? 0) - 32] ?? FURTHER[sign] ?? WIDEST;
  return (thousandths / 1000) * size * MARGIN;
}

/**
 * Shortens a line with an ellipsis until it fits.
 *
 * @param text - one line
 * @param room - width there is, 1/72 in [-]
 * @param size - size of the letters, 1/72 in [-]
 * @param weight - regular or bold
 * @returns the text, or as much of it as fits with an ellipsis behind
 */
export function fitText(
  text: string,
  room: number,
  size: number,
  weight: 'regular' | 'bold' = 'regular',
): string {
  if (textWidth(text, size, weight) <= room) return text;
  const signs = [...text];
  while (signs.length > 1 && textWidth(`${signs.join('').trimEnd()}…`, size, weight) > room) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
