import { citationText } from '../../../sources/index.js';
import {
  PLAIN,
  type WorkedQuestion,
  type WorkedUnit,
  type WorkedValue,
  workedCalculation,
} from '../../calculations/worked-calculation.js';
import type { ReportContext, View } from '../../context.js';

/** Printed units and formulas of one system; each formula holds in exactly these units. */
interface DutyUnits {
  readonly flow: WorkedUnit;
  readonly length: WorkedUnit;
  readonly velocity: WorkedUnit;
  readonly head: WorkedUnit;
  readonly density: WorkedUnit;
  readonly power: WorkedUnit;
  readonly speed: WorkedUnit;
  readonly moment: WorkedUnit;
  readonly velocityFormula: string;
  readonly powerFormula: string;
  readonly torqueFormula: string;
}

const SPEED: WorkedUnit = { dimension: 'speed', unit: 'rpm', label: 'rpm' };

const DUTY: Readonly<Record<'us' | 'si', DutyUnits>> = {
  us: {
    flow: { dimension: 'flow', unit: 'gpm', label: 'gpm' },
    length: { dimension: 'length', unit: 'in', label: 'in' },
    velocity: { dimension: 'velocity', unit: 'ft/s', label: 'ft/s' },
    head: { dimension: 'head', unit: 'ft', label: 'ft' },
    density: { dimension: 'density', unit: 'lb/ft3', label: 'lb/ft³' },
    power: { dimension: 'power', unit: 'hp', label: 'hp' },
    speed: SPEED,
    moment: { dimension: 'moment', unit: 'ft.lb', label: 'ft·lb' },
    // 231 in³ in a gallon, 60 s in a minute, 12 in in a foot, 33 000 ft·lb a minute in a horsepower.
    velocityFormula: '231 * Q / (60 * 12 * pi * d^2 / 4)',
    powerFormula: '(231 / 1728) * Q * w * H / 33000',
    torqueFormula: '33000 * P / (2 * pi * n)',
  },
  si: {
    flow: { dimension: 'flow', unit: 'm3/h', label: 'm³/h' },
    length: { dimension: 'length', unit: 'mm', label: 'mm' },
    velocity: { dimension: 'velocity', unit: 'm/s', label: 'm/s' },
    head: { dimension: 'head', unit: 'm', label: 'm' },
    density: { dimension: 'density', unit: 'kg/m3', label: 'kg/m³' },
    power: { dimension: 'power', unit: 'kW', label: 'kW' },
    speed: SPEED,
    moment: { dimension: 'moment', unit: 'N.m', label: 'N·m' },
    velocityFormula: '(Q / 3600) / (pi * (d / 1000)^2 / 4)',
    powerFormula: '9.80665 * w * (Q / 3600) * H / 1000',
    torqueFormula: '60000 * P / (2 * pi * n)',
  },
};

const STATICS = citationText({ source: 'statics', clause: '', confidence: 'computed' });

/**
 * Velocity in both lines, hydraulic power, and the shaft torque of the rated motor, worked out.
 *
 * @param context - duty and writer
 * @returns worked calculations
 */
export function duty(context: ReportContext) {
  const { pump } = context.subject.installation;
  const units = DUTY[context.write.system];
  const flow: WorkedValue = { symbol: 'Q', value: pump.duty.flow, unit: units.flow, meaning: 'flow' };
  const questions = [
    ...velocities(context, units, flow),
    ...powers(context, units, flow),
    torque(context, units),
  ];
  return {
    flow: context.write.quantity(pump.duty.flow, 'flow'),
    head: context.write.quantity(pump.duty.head, 'head'),
    power: context.write.quantity(pump.motor.power, 'power'),
    speed: context.write.quantity(pump.motor.speed, 'speed', { significant: 4 }),
    efficiency: context.write.quantity(pump.duty.efficiency, 'ratio'),
    hasEfficiency: pump.duty.efficiency !== undefined,
    calculations: questions.map((question) => workedCalculation(question, context.write)),
  } satisfies View;
}

function velocities(context: ReportContext, units: DutyUnits, flow: WorkedValue): readonly WorkedQuestion[] {
  const { suction, discharge } = context.subject.layout.nozzles;
  const isAlike = suction.section.name === discharge.section.name;
  return (isAlike ? [suction] : [suction, discharge]).map((nozzle) => ({
    id: `velocity-${nozzle.which}`,
    title: `Velocity in the ${isAlike ? 'suction and discharge' : nozzle.which} pipe, ${nozzle.section.name}`,
    symbol: 'v',
    formula: units.velocityFormula,
    values: [
      flow,
      {
        symbol: 'd',
        value: nozzle.section.outsideDiameter - 2 * nozzle.section.wall,
        unit: units.length,
        meaning: 'inside diameter of the pipe',
      },
    ],
    unit: units.velocity,
    source: STATICS,
  }));
}

function powers(context: ReportContext, units: DutyUnits, flow: WorkedValue): readonly WorkedQuestion[] {
  const { pump, service } = context.subject.installation;
  const hydraulic: WorkedQuestion = {
    id: 'hydraulic-power',
    title: 'Hydraulic power',
    symbol: 'P',
    formula: units.powerFormula,
    values: [
      flow,
      { symbol: 'H', value: pump.duty.head, unit: units.head, meaning: 'head' },
      {
        symbol: 'w',
        value: service.density.running.value,
        unit: units.density,
        meaning: 'density of the liquid when running',
      },
    ],
    unit: units.power,
    source: STATICS,
  };
  const { efficiency } = pump.duty;
  if (efficiency === undefined) return [hydraulic];
  return [
    hydraulic,
    {
      ...hydraulic,
      id: 'shaft-power',
      title: 'Power taken at the shaft',
      symbol: 'Ps',
      formula: `${units.powerFormula} / y`,
      values: [
        ...hydraulic.values,
        { symbol: 'y', value: efficiency, unit: PLAIN, meaning: 'efficiency of the pump at this duty' },
      ],
    },
  ];
}

function torque(context: ReportContext, units: DutyUnits): WorkedQuestion {
  const { motor } = context.subject.installation.pump;
  return {
    id: 'shaft-torque',
    title: 'Rated shaft torque',
    symbol: 'T',
    formula: units.torqueFormula,
    values: [
      { symbol: 'P', value: motor.power, unit: units.power, meaning: 'rated power of the motor' },
      { symbol: 'n', value: motor.speed, unit: units.speed, meaning: 'rated speed' },
    ],
    unit: units.moment,
    source: STATICS,
  };
}
