import type { Citation } from '../sources/index.js';

/** Codes of pipe stress of which values are held. */
export type StressCode = 'B31.9' | 'B31.1';

/** What is held of a code: the editions it holds for, and each thing taken from it with how it is known. */
export interface HeldCode {
  readonly code: StressCode;
  /** Editions whose values these are, the newest last. */
  readonly editions: readonly [string, ...string[]];
  readonly held: readonly { readonly what: string; readonly citation: Citation }[];
}

const building = (clause: string, confidence: Citation['confidence']): Citation => ({
  source: 'asme-b31.9',
  clause,
  confidence,
});
const power = (clause: string, confidence: Citation['confidence'] = 'memory'): Citation => ({
  source: 'asme-b31.1',
  clause,
  confidence,
});
/** B31.9 sends its reader to B31.1 for them. */
const FACTORS = {
  what: 'flexibility and stress factors of bends, tees and joints',
  citation: power('appendix D, editions to 2018'),
} as const;

/**
 * Codes and editions whose values are held. Of B31.9 one edition was read; B31.1 is written from memory of the editions
 * between the allowable stresses of 2007 and the sustained stress restated after 2018.
 */
const codes: readonly HeldCode[] = [
  {
    code: 'B31.9',
    editions: ['2004'],
    held: [
      { what: 'sustained stress', citation: building('para 902.3.2(d) and (e)', 'read') },
      { what: 'allowable displacement range', citation: building('para 902.3.2(d)', 'read') },
      { what: 'occasional stress', citation: building('para 902.3.3', 'read') },
      { what: 'test pressure and stress in the test', citation: building('para 937.3', 'memory') },
      FACTORS,
    ],
  },
  {
    code: 'B31.1',
    editions: ['2007', '2010', '2012', '2014', '2016', '2018'],
    held: [
      { what: 'sustained stress', citation: power('para 104.8.1') },
      { what: 'displacement stress and its allowable range', citation: power('para 104.8.3 and 102.3.2(C)') },
      { what: 'occasional stress', citation: power('para 104.8.2 and 102.2.4') },
      { what: 'wall and hoop stress', citation: power('para 104.1.2') },
      FACTORS,
    ],
  },
];

/**
 * What is held of every code.
 *
 * @returns codes with editions and clauses
 * @source asme-b31.9, asme-b31.1
 */
export function heldCodes(): readonly HeldCode[] {
  return codes;
}

/**
 * The edition by which stress is judged.
 *
 * @param named - code, and edition where one is named
 * @returns the edition, or the newest held where none is named; undefined where the values of the named one are not held
 * @source asme-b31.9, asme-b31.1
 */
export function heldEdition(named: {
  readonly code: StressCode;
  readonly edition?: string;
}): string | undefined {
  const editions = codes.find(({ code }) => code === named.code)?.editions ?? [];
  return named.edition === undefined
    ? editions.at(-1)
    : editions.find((edition) => edition === named.edition?.trim());
}

/**
 * The editions held, in words.
 *
 * @returns for example `B31.9: 2004; B31.1: 2007, 2010`
 * @source asme-b31.9, asme-b31.1
 */
export function heldEditionsText(): string {
  return codes.map(({ code, editions }) => `${code}: ${editions.join(', ')}`).join('; ');
}
