/** Who mends what: the trade that acts on the finding of each check. */

/** Trades in the order a list of fixes is worked off. */
export const TRADES = [
  'Design engineer',
  'Pipe fitter',
  'Rigger, and coordination of trades',
  'Electrician',
  'Structural engineer',
] as const;

export type Trade = (typeof TRADES)[number];

const FITTER: readonly string[] = [
  'first-support-pump',
  'first-support-bend',
  'support-span',
  'support-uplift',
  'rod-load',
  'support-load',
  'slack-hanger',
  'pump-out-supports',
  'fit-up-tolerance',
  'flange-drilling',
  'raised-face-on-flat-iron',
  'flange-equivalent-pressure',
  'drain-and-vent',
  'gauge-taps',
  'handle-sweep',
  'fitting-reach',
  'isolation-valves',
  'isolation-bridged',
  'valve-order',
  'check-valve',
  'check-valve-distance',
  'strainer',
  'straight-run',
  'reducer-flat-side',
  'flexible-connector',
  'connector-needed',
  'test-pressure',
];
const RIGGER: readonly string[] = [
  'motor-withdrawal',
  'casing-lift-out',
  'coupling-space',
  'seal-through-spacer',
  'wrench-room',
  'working-space',
  'aisle-width',
  'way-out',
  'lift-anchor',
  'sling-legs',
  'hand-lift',
];
const ELECTRICIAN: readonly string[] = ['electrical-space', 'piping-above-panel', 'disconnect-in-sight'];

/**
 * The trade that acts on a finding; what is neither hung, lifted nor wired is for the design engineer.
 *
 * @param check - id of the check
 * @returns trade as printed
 */
export function tradeOf(check: string): Trade {
  if (check === 'attachment-load') return 'Structural engineer';
  if (FITTER.includes(check)) return 'Pipe fitter';
  if (RIGGER.includes(check)) return 'Rigger, and coordination of trades';
  return ELECTRICIAN.includes(check) ? 'Electrician' : 'Design engineer';
}

/** Every check that a list above names. */
export const namedChecks: readonly string[] = [...FITTER, ...RIGGER, ...ELECTRICIAN, 'attachment-load'];
