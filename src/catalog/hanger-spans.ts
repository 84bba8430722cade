import type { Confidence } from '../sources/index.js';

/** Nominal size, longest span filled with water [ft], smallest rod, confidence where it is not the table's. */
export type PrintedSpan = readonly [nps: string, feet: number, rod: string, confidence?: Confidence];

/**
 * Standard-weight steel pipe. The table rests on 1500 psi and 0.1 in sag, no concentrated loads; from NPS 14 up its
 * spans stress water-filled pipe to about 2,300 psi. NPS 24: general tables print a 1-1/4 in rod, which 32 ft of
 * filled pipe (8,915 lb) overloads by the older rating; 1-1/2 in stands here.
 */
export const steelSpans: readonly PrintedSpan[] = [
  ['1/2', 7, '3/8'],
  ['3/4', 7, '3/8'],
  ['1', 7, '3/8'],
  ['1-1/4', 7, '3/8', 'memory'],
  ['1-1/2', 9, '3/8'],
  ['2', 10, '3/8'],
  ['2-1/2', 11, '1/2'],
  ['3', 12, '1/2'],
  ['3-1/2', 13, '1/2', 'memory'],
  ['4', 14, '5/8'],
  ['5', 16, '5/8'],
  ['6', 17, '3/4'],
  ['8', 19, '7/8'],
  ['10', 22, '7/8'],
  ['12', 23, '7/8'],
  ['14', 25, '1'],
  ['16', 27, '1'],
  ['18', 28, '1'],
  ['20', 30, '1-1/4'],
  ['24', 32, '1-1/2'],
];

/** Copper tube; rods from memory. */
export const copperSpans: readonly PrintedSpan[] = [
  ['1/2', 5, '3/8'],
  ['3/4', 5, '3/8'],
  ['1', 6, '3/8'],
  ['1-1/4', 7, '3/8'],
  ['1-1/2', 8, '3/8'],
  ['2', 8, '3/8'],
  ['2-1/2', 9, '1/2'],
  ['3', 10, '1/2'],
  ['3-1/2', 11, '1/2'],
  ['4', 12, '1/2'],
  ['5', 13, '1/2'],
  ['6', 14, '5/8'],
  ['8', 16, '3/4'],
  ['10', 18, '3/4'],
  ['12', 19, '3/4'],
];
