import type { NozzleAllowance } from '../../input/installation.js';
import type { NozzleAxisLoads } from './nozzle-load-rows.js';

/** One component that a basis may limit. */
export interface NozzleComponent {
  readonly key: keyof NozzleAllowance & keyof NozzleAxisLoads;
  readonly label: string;
  readonly unit: 'N' | 'N·m';
}

/** Everything a basis may limit, in trade words. */
export const nozzleComponents: readonly NozzleComponent[] = [
  { key: 'axialForce', label: 'force along the nozzle', unit: 'N' },
  { key: 'verticalForce', label: 'vertical force', unit: 'N' },
  { key: 'crossForce', label: 'force across the nozzle', unit: 'N' },
  { key: 'resultantForce', label: 'resultant force', unit: 'N' },
  { key: 'axialMoment', label: 'torsion about the nozzle', unit: 'N·m' },
  { key: 'verticalMoment', label: 'moment about the vertical', unit: 'N·m' },
  { key: 'crossMoment', label: 'moment about the cross axis', unit: 'N·m' },
  { key: 'resultantMoment', label: 'resultant moment', unit: 'N·m' },
];
