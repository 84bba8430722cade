/** Worked calculations of a start. */
import type { Subject } from '../../analysis/subject.js';
import { startTorqueShare } from '../../mechanics/start/start-method.js';
import type { WorkedStart } from '../../mechanics/start/start-up.js';
import { citationText } from '../../sources/index.js';
import { PLAIN, type WorkedQuestion, type WorkedUnit } from './worked-calculation.js';

interface StartUnits {
  readonly moment: WorkedUnit;
  readonly inertia: WorkedUnit;
  /** Formula of the twist of a drive's ramp, in these units. */
  readonly ramp: string;
}

const UNITS: Readonly<Record<'us' | 'si', StartUnits>> = {
  us: {
    moment: { dimension: 'moment', unit: 'ft.lb', label: 'ft·lb' },
    inertia: { dimension: 'inertia', unit: 'lb.ft2', label: 'lb·ft²' },
    // 32.174 lb in a slug; 60 s in a minute.
    ramp: 'J / 32.17405 * (2 * pi * n / 60) / t',
  },
  si: {
    moment: { dimension: 'moment', unit: 'N.m', label: 'N·m' },
    inertia: { dimension: 'inertia', unit: 'kg.m2', label: 'kg·m²' },
    ramp: 'J * (2 * pi * n / 60) / t',
  },
};

const DYNAMICS = citationText({ source: 'dynamics', clause: '', confidence: 'computed' });

/**
 * The start worked out: torque at standstill by the way of starting, dynamic factor of a step, twist with dynamics.
 *
 * @param subject - damping
 * @param start - the start
 * @param system - units to print in
 * @returns questions in the order of the reckoning
 */
export function startQuestions(
  subject: Subject,
  start: WorkedStart,
  system: 'us' | 'si',
): readonly WorkedQuestion[] {
  const units = UNITS[system];
  const moment = (symbol: string, value: number, meaning: string) => ({
    symbol,
    value,
    unit: units.moment,
    meaning,
  });
  const total: WorkedQuestion = {
    id: 'start-twist',
    title: 'Twist of the start, dynamics included',
    symbol: 'Td',
    formula: 'D * T',
    values: [
      { symbol: 'D', value: start.dynamicFactor, unit: PLAIN, meaning: 'dynamic factor' },
      moment('T', start.staticTwist, 'largest twist put on slowly'),
    ],
    unit: units.moment,
    source: DYNAMICS,
  };
  return [...twistQuestions(start, units), ...factorQuestions(subject, start), total];
}

function twistQuestions(start: WorkedStart, units: StartUnits): readonly WorkedQuestion[] {
  const { motor, load, method } = start.set;
  const { share, citation } = startTorqueShare(method);
  if (method.kind === 'variable-speed drive') {
    if (start.worst === undefined) return [];
    return [
      {
        id: 'start-ramp',
        title: 'Twist on the ramp of the drive, as inertia times acceleration',
        symbol: 'T',
        formula: units.ramp,
        values: [
          {
            symbol: 'J',
            value: start.worst.inertia,
            unit: units.inertia,
            meaning: 'inertia of all that turns',
          },
          {
            symbol: 'n',
            value: load.runningSpeed,
            unit: { dimension: 'speed', unit: 'rpm', label: 'rpm' },
            meaning: 'running speed',
          },
          {
            symbol: 't',
            value: method.ramp,
            unit: { dimension: 'time', unit: 's', label: 's' },
            meaning: 'time of the ramp',
          },
        ],
        unit: units.moment,
        source: DYNAMICS,
      },
    ];
  }
  const standstill = share * motor.lockedRotor;
  // A voltage that rises with time, or a peak underway, leaves nothing simple to print.
  if (Math.abs(standstill - start.staticTwist) > 1e-6 * standstill) return [];
  return [
    {
      id: 'start-standstill',
      title: 'Torque at standstill, all of which twists the set',
      symbol: 'Ts',
      formula: 'k * Tl',
      values: [
        { symbol: 'k', value: share, unit: PLAIN, meaning: 'share by the way of starting' },
        { symbol: 'Tl', value: motor.lockedRotor, unit: units.moment, meaning: 'locked-rotor torque' },
      ],
      unit: units.moment,
      source: citationText(citation),
    },
  ];
}

/** The factor of a step where that was taken; that of a run comes from its history. */
function factorQuestions(subject: Subject, start: WorkedStart): readonly WorkedQuestion[] {
  if (start.by !== 'bound') return [];
  const damping = subject.installation.limits.damping?.value ?? 0;
  return [
    {
      id: 'start-factor',
      title: 'Dynamic factor of a load that is there at once',
      symbol: 'D',
      formula: '1 + 2.718282^(-pi * z / sqrt(1 - z^2))',
      values: [{ symbol: 'z', value: damping, unit: PLAIN, meaning: 'damping over critical damping' }],
      unit: PLAIN,
      source: citationText({
        source: 'dynamic-loading',
        clause: 'sec. 2.2.1, fig. 2.5 (without damping)',
        confidence: 'read',
      }),
    },
  ];
}
