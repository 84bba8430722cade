/**
 * The colour space that red, green and blue of a review are meant in, sRGB, as a colour profile of a few hundred bytes:
 * a matrix and one curve, version 4 of the profile format.
 */
import { type PDFDocument, PDFName, PDFString } from 'pdf-lib';

/** Colorants adapted to D50 by the Bradford method, as the sRGB profile of IEC 61966-2-1 has them: X, Y, Z. */
const RED = [0.43607, 0.22249, 0.01392] as const;
const GREEN = [0.38515, 0.71687, 0.09708] as const;
const BLUE = [0.14307, 0.06061, 0.7141] as const;
/** The white that profiles meet in, D50. */
const WHITE = [0.9642, 1, 0.8249] as const;
/** From the white of sRGB, D65, to D50 by the Bradford method, rows first. */
const ADAPTATION = [
  1.04788, 0.02292, -0.0502, 0.02959, 0.99048, -0.01706, -0.00923, 0.01508, 0.75168,
] as const;
/** Y = ((X + 0.055) / 1.055)^2.4 above 0.04045, X / 12.92 below. */
const CURVE = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045] as const;

const fixed = (value: number): readonly number[] => word(Math.round(value * 65536));
const word = (value: number): readonly number[] => [24, 16, 8, 0].map((shift) => (value >> shift) & 255);
const ascii = (text: string): readonly number[] => [...text].map((sign) => sign.charCodeAt(0));
const xyz = (values: readonly number[]): readonly number[] => [
  ...ascii('XYZ '),
  ...word(0),
  ...values.flatMap(fixed),
];

/** Words in one language: a list of one record that starts 28 bytes in. */
const words = (text: string): readonly number[] => [
  ...ascii('mluc'),
  ...[0, 1, 12].flatMap(word),
  ...ascii('enUS'),
  ...word(2 * text.length),
  ...word(28),
  ...[...text].flatMap((sign) => [0, sign.charCodeAt(0)]),
];

/** The profile. @returns its bytes, always the same */
export function srgbProfile(): Uint8Array {
  const curve = [...ascii('para'), ...word(0), 0, 3, 0, 0, ...CURVE.flatMap(fixed)];
  const tags: readonly (readonly [string, readonly number[]])[] = [
    ['desc', words('sRGB')],
    ['cprt', words('No rights reserved')],
    ['wtpt', xyz(WHITE)],
    ['chad', [...ascii('sf32'), ...word(0), ...ADAPTATION.flatMap(fixed)]],
    ['rXYZ', xyz(RED)],
    ['gXYZ', xyz(GREEN)],
    ['bXYZ', xyz(BLUE)],
    ['rTRC', curve],
    ['gTRC', curve],
    ['bTRC', curve],
  ];
  const table: number[] = [...word(tags.length)];
  const data: number[] = [];
  const start = 128 + 4 + 12 * tags.length;
  const known = new Map<readonly number[], number>();
  for (const [name, bytes] of tags) {
    let at = known.get(bytes);
    if (at === undefined) {
      while (data.length % 4 > 0) data.push(0);
      at = start + data.length;
      known.set(bytes, at);
      data.push(...bytes);
    }
    table.push(...ascii(name), ...word(at), ...word(bytes.length));
  }
  while (data.length % 4 > 0) data.push(0);
  return Uint8Array.from([...head(start + data.length), ...table, ...data]);
}

/** The 128 bytes at the start: size, version 4.2, a display, red green blue to X Y Z, a fixed day, D50. */
const head = (size: number): readonly number[] => [
  ...word(size),
  ...word(0),
  ...[4, 0x20, 0, 0],
  ...ascii('mntrRGB XYZ '),
  ...[0x07, 0xe8, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0],
  ...ascii('acsp'),
  ...Array<number>(28).fill(0),
  ...WHITE.flatMap(fixed),
  ...Array<number>(48).fill(0),
];

/** Says in the document which red, green and blue its colours are. */
export function writeOutputIntent(pdf: PDFDocument): void {
  const { context, catalog } = pdf;
  const profile = context.register(context.flateStream(srgbProfile(), { N: 3 }));
  const intent = context.obj({
    Type: 'OutputIntent',
    S: 'GTS_PDFA1',
    OutputConditionIdentifier: PDFString.of('sRGB'),
    Info: PDFString.of('sRGB, IEC 61966-2-1'),
    DestOutputProfile: profile,
  });
  catalog.set(PDFName.of('OutputIntents'), context.obj([context.register(intent)]));
}
