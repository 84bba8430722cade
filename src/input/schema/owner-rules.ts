import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';

/**
 * Checks of what the trade advises and no code demands, by id. They compare; a document of the owner may make any of
 * them a limit. A test holds that these are the checks of that standing.
 */
export const PRACTICE_RULES = [
  'slack-hanger',
  'first-support-pump',
  'first-support-bend',
  'isolation-valves',
  'valve-order',
  'drain-and-vent',
  'gauge-taps',
  'strainer',
  'straight-run',
  'reducer-flat-side',
  'suction-velocity',
  'discharge-velocity',
] as const;

const document = once(() => field(text(), 'Document that says so', 'estate piping standard, revision 3'));
const clause = once(() => field(text(), 'Clause of the document', 'para 4.2'));

/** Rules of the trade that a document of the owner makes limits. */
export const ownerRules = once(() =>
  field(
    z.array(
      map({
        rule: field(oneOf(PRACTICE_RULES), 'Check that is to decide', 'slack-hanger'),
        document: document(),
        clause: clause(),
      }),
    ),
    "Practice that the owner's document makes a limit; everything else of it is only compared",
    [{ rule: 'slack-hanger', document: 'estate piping standard, revision 3', clause: 'para 4.2' }],
  ).optional(),
);

/** Who allows a published table of another class of machine for this pump, and where. */
export const namedIn = once(() =>
  field(
    map({
      by: field(oneOf(['maker', 'owner']), 'Whose document it is', 'owner'),
      document: document(),
      clause: clause(),
    }),
    'Document and clause that name a published basis for this pump; without them it is only compared',
    { by: 'owner', document: 'pump specification 23 21 23', clause: 'para 2.4' },
  ).optional(),
);
