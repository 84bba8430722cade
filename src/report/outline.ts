/**
 * Table of contents: which sections each reader gets, and in which order. One line here, one function in
 * `sections/`, one template in `templates/sections/`.
 */
import type { Reader, ReportContext, View } from './context.js';
import { assumptions } from './sections/basis/assumptions.js';
import { deviations } from './sections/basis/deviations.js';
import { duty } from './sections/basis/duty.js';
import { geometry } from './sections/basis/geometry.js';
import { inputs } from './sections/basis/inputs.js';
import { scopeAndCodes } from './sections/basis/scope-and-codes.js';
import { sources } from './sections/basis/sources.js';
import { calculations } from './sections/loads/calculations.js';
import { conditions } from './sections/loads/conditions.js';
import { connectors } from './sections/loads/connectors.js';
import { fitUp } from './sections/loads/fit-up.js';
import { flanges } from './sections/loads/flanges.js';
import { frequencies } from './sections/loads/frequencies.js';
import { handCheck } from './sections/loads/hand-check.js';
import { hangers } from './sections/loads/hangers.js';
import { movements } from './sections/loads/movements.js';
import { nozzleLoads } from './sections/loads/nozzle-loads.js';
import { pumpOut } from './sections/loads/pump-out.js';
import { setting } from './sections/loads/setting.js';
import { slack } from './sections/loads/slack.js';
import { stress } from './sections/loads/stress.js';
import { supportLoads } from './sections/loads/support-loads.js';
import { upsets } from './sections/loads/upsets.js';
import { weights } from './sections/loads/weights.js';
import { access } from './sections/site/access.js';
import { firstStart } from './sections/site/first-start.js';
import { lockout } from './sections/site/lockout.js';
import { practice } from './sections/site/practice.js';
import { readings } from './sections/site/readings.js';
import { sealChange } from './sections/site/seal-change.js';
import { startUp } from './sections/site/start-up.js';
import { bands } from './sections/verdicts/bands.js';
import { cautions } from './sections/verdicts/cautions.js';
import { findings } from './sections/verdicts/findings.js';
import { matrix } from './sections/verdicts/matrix.js';
import { picture } from './sections/verdicts/picture.js';
import { signature } from './sections/verdicts/signature.js';
import { summary } from './sections/verdicts/summary.js';
import { unstated } from './sections/verdicts/unstated.js';

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
  unstated,
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
    'unstated',
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
