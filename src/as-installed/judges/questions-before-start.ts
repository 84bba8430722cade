/** Questions of what is settled before power and the first start, and of the first hour. */
import { LOCKOUT_ORDER } from '../../report/citations/card-citations.js';
import { CONTROLS_TESTED } from '../../report/limits/insulation.js';
import type { Stated } from './stated-question.js';

/** Those questions. */
export const BEFORE_START: readonly Stated[] = [
  {
    id: 'rods-loaded',
    title: 'Rod carries',
    trade: 'pipe fitter',
    box: /^supports\..*\.loaded$/u,
    at: 'support',
    wanted: ['carries'],
  },
  {
    id: 'pressure-tested',
    title: 'Pressure test passed',
    trade: 'pipe fitter',
    box: /^before-start\.pressure-tested$/u,
    at: 'line',
  },
  {
    id: 'flushed',
    title: 'Line flushed',
    trade: 'pipe fitter',
    box: /^before-start\.flushed$/u,
    at: 'line',
  },
  {
    id: 'filled',
    title: 'Filled and vented',
    trade: 'pipe fitter',
    box: /^before-start\.filled$/u,
    at: 'line and casing',
  },
  {
    id: 'tight',
    title: 'Nothing leaks at rest',
    trade: 'pipe fitter',
    box: /^before-start\.tight$/u,
    at: 'line and casing',
  },
  {
    id: 'protections',
    title: 'Controls and protections tried',
    trade: 'electrician',
    box: /^before-start\.protections$/u,
    at: 'motor',
    citation: CONTROLS_TESTED,
  },
  {
    id: 'locks-off',
    title: 'Locks off, each by its owner',
    trade: 'commissioning agent',
    box: /^before-start\.locks-off$/u,
    at: 'disconnect and valves',
    citation: LOCKOUT_ORDER,
  },
  {
    id: 'people-clear',
    title: 'People clear and told',
    trade: 'commissioning agent',
    box: /^before-start\.people-clear$/u,
    at: 'pump',
    citation: LOCKOUT_ORDER,
  },
  {
    id: 'line-state',
    title: 'Line filled',
    trade: 'commissioning agent',
    box: /^identity\.state$/u,
    at: 'line',
    wanted: ['filled, cold', 'running', 'hot'],
  },
  {
    id: 'seal-looks',
    title: 'Seal while running',
    trade: 'millwright',
    box: /^seal\.looks$/u,
    at: 'seal',
    wanted: ['dry', 'drops'],
  },
  {
    id: 'bearing-steady',
    title: 'Bearings at a steady temperature',
    trade: 'millwright',
    box: /^start-up\.bearing-steady$/u,
    at: 'bearings',
  },
];
