/**
 * Table of contents: which sections each reader gets, and in which order. One line here, one function in
 * `sections/`, one template in `templates/sections/`.
 */
import type { Reader, ReportContext, View } from './context.js';
import { access } from './sections/access.js';
import { assumptions } from './sections/assumptions.js';
import { bands } from './sections/bands.js';
import { calculations } from './sections/calculations.js';
import { cautions } from './sections/cautions.js';
import { conditions } from './sections/conditions.js';
import { connectors } from './sections/connectors.js';
import { deviations } from './sections/deviations.js';
import { duty } from './sections/duty.js';
import { findings } from './sections/findings.js';
import { firstStart } from './sections/first-start.js';
import { fitUp } from './sections/fit-up.js';
import { flanges } from './sections/flanges.js';
import { frequencies } from './sections/frequencies.js';
import { geometry } from './sections/geometry.js';
import { handCheck } from './sections/hand-check.js';
import { hangers } from './sections/hangers.js';
import { inputs } from './sections/inputs.js';
import { lockout } from './sections/lockout.js';
import { matrix } from './sections/matrix.js';
import { movements } from './sections/movements.js';
import { nozzleLoads } from './sections/nozzle-loads.js';
import { picture } from './sections/picture.js';
import { practice } from './sections/practice.js';
import { pumpOut } from './sections/pump-out.js';
import { readings } from './sections/readings.js';
import { scopeAndCodes } from './sections/scope-and-codes.js';
import { sealChange } from './sections/seal-change.js';
import { setting } from './sections/setting.js';
import { signature } from './sections/signature.js';
import { slack } from './sections/slack.js';
import { sources } from './sections/sources.js';
import { startUp } from './sections/start-up.js';
import { stress } from './sections/stress.js';
import { summary } from './sections/summary.js';
import { supportLoads } from './sections/support-loads.js';
import { upsets } from './sections/upsets.js';
import { weights } from './sections/weights.js';

/** Every section, by the id its template and its bookmark carry. */
export const sections = {
  summary,
  'scope-and-codes': scopeAndCodes,
  matrix,
  picture,
  hangers,
  'support-loads': supportLoads,
  weights,
  'nozzle-loads': nozzleLoads,
  stress,
  upsets,
  flanges,
  connectors,
  findings,
  movements,
  setting,
  slack,
  'fit-up': fitUp,
  'pump-out': pumpOut,
  access,
  duty,
  'start-up': startUp,
  frequencies,
  practice,
  lockout,
  'seal-change': sealChange,
  'first-start': firstStart,
  readings,
  inputs,
  geometry,
  conditions,
  assumptions,
  bands,
  'hand-check': handCheck,
  calculations,
  deviations,
  cautions,
  sources,
  signature,
} as const satisfies Readonly<Record<string, (context: ReportContext) => View>>;

export type SectionId = keyof typeof sections;

/** Sections of each reader, in printing order. */
export const outline: Readonly<Record<Reader, readonly SectionId[]>> = {
  contractor: [
    'summary',
    'findings',
    'hangers',
    'setting',
    'fit-up',
    'connectors',
    'pump-out',
    'cautions',
    'access',
    'lockout',
    'assumptions',
  ],
  engineer: [
    'summary',
    'matrix',
    'scope-and-codes',
    'conditions',
    'picture',
    'inputs',
    'geometry',
    'assumptions',
    'weights',
    'support-loads',
    'nozzle-loads',
    'movements',
    'stress',
    'flanges',
    'connectors',
    'upsets',
    'setting',
    'slack',
    'fit-up',
    'pump-out',
    'start-up',
    'frequencies',
    'duty',
    'practice',
    'access',
    'findings',
    'bands',
    'deviations',
    'hand-check',
    'calculations',
    'cautions',
    'signature',
    'sources',
  ],
  commissioning: [
    'summary',
    'readings',
    'findings',
    'setting',
    'slack',
    'movements',
    'start-up',
    'frequencies',
    'access',
    'cautions',
    'first-start',
    'lockout',
    'assumptions',
    'seal-change',
    'signature',
  ],
};
