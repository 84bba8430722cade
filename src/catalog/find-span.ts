import type { Citation } from '../sources/index.js';
import type { Catalogued } from './catalogued.js';
import { copperSpans, type PrintedSpan, steelSpans } from './hanger-spans.js';
import { nominalSize } from './nominal-size.js';
import { FOOT } from './printed-units.js';

/** Longest span and smallest rod of a size. */
export interface HangerSpan extends Catalogued {
  /** Longest span between supports, water-filled straight pipe without concentrated loads [m]. */
  readonly value: number;
  readonly nps: string;
  /** Smallest single rod by the most cautious of the published columns. */
  readonly rod: { readonly size: string; readonly citation: Citation };
}

/**
 * Longest span between supports by the table, and smallest rod.
 *
 * @param query - nominal size and material: `carbon steel`, `stainless steel` or `copper` [-]
 * @returns span [m] and rod label, or undefined where size or material is unknown
 * @source mss-sp-69, asme-b31.1, nayyar-piping-handbook (table B5.1)
 */
export function findSpan(query: { readonly nps: string; readonly material: string }): HangerSpan | undefined {
  const nps = nominalSize(query.nps);
  const row = spanTable(query.material).find(([size]) => size === nps);
  if (row === undefined) return undefined;
  const copper = query.material === 'copper';
  const [size, feet, rod, confidence] = row;
  const words = copper ? 'copper tube, water' : 'steel pipe, water; ten sizes equal B31.1 table 121.5';
  return {
    nps: size,
    value: feet * FOOT,
    table: copper ? 'hanger spans, copper tube' : 'hanger spans, steel pipe',
    row: `NPS ${size}`,
    citation: {
      source: 'mss-sp-69',
      clause: words,
      confidence: confidence ?? (copper ? 'read' : 'two sources'),
    },
    rod: {
      size: rod,
      citation: {
        source: 'mss-sp-69',
        clause: 'smallest rod, the larger of the published columns',
        confidence: copper ? 'memory' : 'two sources',
      },
    },
  };
}

function spanTable(material: string): readonly PrintedSpan[] {
  if (material === 'carbon steel' || material === 'stainless steel') return steelSpans;
  return material === 'copper' ? copperSpans : [];
}

/**
 * Nominal sizes of the span table.
 *
 * @param material - `carbon steel`, `stainless steel` or `copper` [-]
 * @returns size labels from the smallest up; empty where the material is unknown [-]
 * @source mss-sp-69
 */
export function spanSizes(material: string): readonly string[] {
  return spanTable(material).map(([nps]) => nps);
}
