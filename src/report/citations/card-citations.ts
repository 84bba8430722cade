/** What the cards for the fitter rest on; the list of sources names them too. */
import { type Citation, sources } from '../../sources/index.js';

/** Order of the steps of a lockout. */
export const LOCKOUT_ORDER: Citation = {
  source: 'osha-1910-147',
  clause: '(d) to (f), in our own words',
  confidence: 'two sources',
};

/** Guard of coupling and shaft. */
export const GUARD: Citation = { source: 'osha-1910-219', clause: '(c) and (i)(2)', confidence: 'read' };

/** Weight that one person lifts in the ideal posture. */
export const BY_HAND: Citation = {
  source: 'niosh-lifting',
  clause: 'load constant of 51 lb (23 kg), ideal posture',
  confidence: 'two sources',
};

/** Runout and gaps, scalding and cooling. */
export const CUSTOM: Citation = {
  source: 'common-practice',
  clause: 'runout of the shaft at the seal, gaps even all round, scalding from 140 °F, cooling below 120 °F',
  confidence: 'common practice',
};

/** All of them. */
export const cardCitations: readonly Citation[] = [LOCKOUT_ORDER, GUARD, BY_HAND, CUSTOM];

/**
 * A citation in one short phrase, without the edition, which the list of sources has.
 *
 * @param citation - source, clause and confidence
 * @returns for example `29 CFR 1910.147 The Control of Hazardous Energy, (d), two sources`
 */
export function shortCitation({ source, clause, confidence }: Citation): string {
  return `${sources[source].title}, ${clause}, ${confidence}`;
}
