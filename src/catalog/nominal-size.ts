/** Nominal sizes of the catalogue: label, millimetre label (DN), inches. */
const nominalSizes: readonly (readonly [nps: string, dn: number, inches: number])[] = [
  ['1/4', 8, 0.25],
  ['3/8', 10, 0.375],
  ['1/2', 15, 0.5],
  ['3/4', 20, 0.75],
  ['1', 25, 1],
  ['1-1/4', 32, 1.25],
  ['1-1/2', 40, 1.5],
  ['2', 50, 2],
  ['2-1/2', 65, 2.5],
  ['3', 80, 3],
  ['3-1/2', 90, 3.5],
  ['4', 100, 4],
  ['5', 125, 5],
  ['6', 150, 6],
  ['8', 200, 8],
  ['10', 250, 10],
  ['12', 300, 12],
  ['14', 350, 14],
  ['16', 400, 16],
  ['18', 450, 18],
  ['20', 500, 20],
  ['22', 550, 22],
  ['24', 600, 24],
];

const signs: Readonly<Record<string, string>> = { '½': ' 1/2', '¼': ' 1/4', '¾': ' 3/4' };

/**
 * Inches of a size label: `5/8`, `2-1/2`, `2 1/2`, `2½`, `2.5`, `6 in`, `NPS 6`, `6"`.
 *
 * @param label - label of a pipe, bolt or rod size [-]
 * @returns inches, or undefined where the label is no size [-]
 * @source common-practice
 */
export function labelInches(label: string): number | undefined {
  const bare = label
    .replace(/[½¼¾]/g, (sign) => signs[sign] ?? sign)
    .replace(/^\s*nps(?![a-z])/i, '')
    .replace(/\s*(inch(es)?|in\.?|"|″)\s*$/i, '')
    .trim();
  const parts = /^(?:(\d+(?:\.\d+)?)|(?:(\d+)[\s-]+)?(\d+)\/(\d+))$/.exec(bare);
  if (parts === null) return undefined;
  const [, plain, whole, over, under] = parts;
  const inches = plain === undefined ? Number(whole ?? 0) + Number(over) / Number(under) : Number(plain);
  return Number.isFinite(inches) && inches > 0 ? inches : undefined;
}

/**
 * The one label by which a nominal pipe size stands in every table: `6`, `2-1/2`.
 *
 * @param label - `6`, `6 in`, `NPS 6`, `2 1/2`, `2.5`, `DN 150` [-]
 * @returns label of the catalogue, or undefined where the size is unknown [-]
 * @source common-practice
 */
export function nominalSize(label: string): string | undefined {
  const metric = /^\s*dn\s*(\d+)\s*$/i.exec(label);
  if (metric !== null) return nominalSizes.find(([, dn]) => dn === Number(metric[1]))?.[0];
  const inches = labelInches(label);
  return nominalSizes.find(([, , size]) => size === inches)?.[0];
}

/**
 * Inches of a nominal size as a number, which is not its outside diameter below NPS 14.
 *
 * @param nps - label as `nominalSize` accepts it [-]
 * @returns inches, or undefined where the size is unknown [-]
 * @source asme-b36.10m
 */
export function nominalInches(nps: string): number | undefined {
  const label = nominalSize(nps);
  return nominalSizes.find(([known]) => known === label)?.[2];
}
