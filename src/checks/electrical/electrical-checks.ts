/** The checks of panels and of the disconnect. All of them defer to the authority having jurisdiction. */
import type { Check } from '../define-check.js';
import { disconnectInSight } from './disconnect-in-sight.js';
import { electricalSpace } from './electrical-space.js';
import { pipingAbovePanel } from './piping-above-panel.js';

export const electricalChecks: readonly Check[] = [electricalSpace, pipingAbovePanel, disconnectInSight];
