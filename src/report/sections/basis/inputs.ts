import type { Sourced } from '../../../input/installation.js';
import type { Dimension } from '../../../units/index.js';
import type { ReportContext, View } from '../../context.js';
import { motionInputs } from '../../rows/motion-inputs.js';
import { practiceInputs } from '../../rows/practice-inputs.js';
import { originMark, sourcedMark, textMark } from '../../words/origin-mark.js';

/**
 * Register of every value used: value, unit and where it comes from.
 *
 * @param context - installation and writer
 * @returns entries by name, and table rows
 */
export function inputs(context: ReportContext) {
  const { installation } = context.subject;
  const { write } = context;
  const { service, pump, limits } = installation;
  const from = (sourced: Sourced | undefined, dimension: Dimension, options = {}) => ({
    value: sourced === undefined ? 'not given' : write.quantity(sourced.value, dimension, options),
    origin: sourcedMark(sourced, context.assumptions),
  });
  const given = (value: string, path = '') => ({ value, origin: textMark(path, context.assumptions) });
  return {
    fluid: given(
      service.fluid.kind === 'water'
        ? 'water'
        : `${service.fluid.kind}, ${write.quantity(service.fluid.share, 'ratio')}`,
    ),
    densityFilled: from(service.density.filled, 'density'),
    densityHot: from(service.density.hot, 'density'),
    densityCold: from(service.density.cold, 'density'),
    densityTest: from(service.density.test, 'density'),
    densityRunning: from(service.density.running, 'density'),
    installationTemperature: from(service.installationTemperature, 'temperature'),
    runningTemperature: from(service.runningTemperature, 'temperature'),
    hotTemperature: from(service.hotTemperature, 'temperature'),
    coldTemperature: from(service.coldTemperature, 'temperature'),
    workingPressure: from(service.workingPressure, 'pressure'),
    designPressure: from(service.designPressure, 'pressure'),
    testPressure: from(service.testPressure, 'pressure'),
    build: given(pump.build),
    mount: given(pump.mount),
    position: given(`${write.vector(pump.position, 'length')} ${write.unit('length')}`, 'pump.at'),
    casingWeight: from(pump.casing.mass, 'mass'),
    casingCentre: given(
      `${write.vector(pump.casing.centre, 'length')} ${write.unit('length')}`,
      'pump.casing.centre-of-gravity',
    ),
    casingMaterial: given(pump.casing.material, 'pump.casing.material'),
    casingContents: from(pump.contents, 'volume'),
    motorWeight: from(pump.motor.mass, 'mass'),
    motorCentre: given(`${write.vector(pump.motor.centre, 'length')} ${write.unit('length')}`),
    motorPower: given(write.quantity(pump.motor.power, 'power')),
    motorSpeed: given(write.quantity(pump.motor.speed, 'speed', { significant: 4 })),
    motion: motionInputs(context),
    flow: given(write.quantity(pump.duty.flow, 'flow')),
    head: given(write.quantity(pump.duty.head, 'head')),
    efficiency:
      pump.duty.efficiency === undefined
        ? { value: 'not given', origin: 'not given' }
        : given(write.quantity(pump.duty.efficiency, 'ratio')),
    motorTop: from(pump.outline.motorTop, 'length'),
    motorDiameter: from(pump.outline.motorDiameter, 'length'),
    casingDiameter: from(pump.outline.casingDiameter, 'length'),
    withdrawal: from(pump.outline.withdrawal, 'length'),
    ports: (['suction', 'discharge'] as const).map((which) => portRow(context, which)),
    nozzleBasis: given(limits.nozzle.basis ?? 'none'),
    stressCode: given(
      `${limits.stress.code}${limits.stress.edition === undefined ? '' : `, ${limits.stress.edition}`}`,
      'limits.pipe-stress.code',
    ),
    hotAllowable: from(limits.stress.hot, 'stress'),
    coldAllowable: from(limits.stress.cold, 'stress'),
    cycles: {
      value: write.plain(limits.stress.cycles.value, 6),
      origin: sourcedMark(limits.stress.cycles, context.assumptions),
    },
    rodEdition: given(limits.rods.edition, 'limits.rods.edition'),
    longestSpan: from(limits.span.longest, 'length', { feetInches: true }),
    firstSupportPump: from(limits.firstSupport.pump, 'length', { feetInches: true }),
    firstSupportBend: from(limits.firstSupport.bend, 'length', { feetInches: true }),
    allowances: allowanceRows(context),
    hasAllowances: limits.nozzle.maker !== undefined,
    allowanceDocument: limits.nozzle.maker?.document ?? '',
    forceUnit: write.unit('force'),
    momentUnit: write.unit('moment'),
    pipes: pipeRows(context),
    materials: materialRows(context),
    strainFrom: write.quantity(STRAIN_FROM, 'temperature'),
    practice: practiceInputs(context),
    lengthUnit: write.unit('length'),
  } satisfies View;
}

/** Temperature from which thermal strain is told: 70 °F [K]. */
const STRAIN_FROM = 294.261;

function portRow(context: ReportContext, which: 'suction' | 'discharge') {
  const port = context.subject.installation.pump.ports[which];
  return {
    which,
    size: `NPS ${port.nps}`,
    position: context.write.vector(port.position, 'length'),
    facing: context.write.bearing(port.facing),
    flange: `${port.flange.standard} class ${port.flange.class}`,
    face: port.flange.face,
    material: port.flange.material,
  };
}

function allowanceRows(context: ReportContext) {
  const maker = context.subject.installation.limits.nozzle.maker;
  if (maker === undefined) return [];
  const { write } = context;
  return (['suction', 'discharge'] as const).map((which) => {
    const allowance = maker[which];
    return {
      which,
      axialForce: write.number(allowance.axialForce, 'force'),
      verticalForce: write.number(allowance.verticalForce, 'force'),
      crossForce: write.number(allowance.crossForce, 'force'),
      resultantForce: write.number(allowance.resultantForce, 'force'),
      axialMoment: write.number(allowance.axialMoment, 'moment'),
      verticalMoment: write.number(allowance.verticalMoment, 'moment'),
      crossMoment: write.number(allowance.crossMoment, 'moment'),
      resultantMoment: write.number(allowance.resultantMoment, 'moment'),
    };
  });
}

function pipeRows(context: ReportContext) {
  const { layout, installation } = context.subject;
  const sections = new Map(Object.values(layout.memberInfo).map((info) => [info.section.name, info.section]));
  return [...sections.values()].map((section) => ({
    name: section.name,
    outside: context.write.number(section.outsideDiameter, 'length', { significant: 5 }),
    wall: context.write.number(section.wall, 'length', { significant: 3 }),
    material: installation.materials[section.material]?.name ?? section.material,
    weight: context.write.quantity(section.massPerLength.value, 'mass per length'),
    origin: originMark(section.massPerLength.origin, context.assumptions),
  }));
}

function materialRows(context: ReportContext) {
  const { installation } = context.subject;
  const { write } = context;
  const hot = installation.service.hotTemperature.value;
  return Object.values(installation.materials).map((material) => ({
    name: material.name,
    modulus: write.quantity(material.modulus.value, 'stress'),
    modulusOrigin: originMark(material.modulus.origin, context.assumptions),
    poisson: write.plain(material.poisson),
    density: write.quantity(material.density, 'density'),
    strain: write.plain(strainAt(material.expansion, hot), 3),
  }));
}

/** Thermal strain read by straight lines from the material's curve. */
function strainAt(curve: readonly (readonly [number, number])[], temperature: number): number | undefined {
  const above = curve.findIndex(([at]) => at >= temperature);
  const high = curve[above];
  const low = curve[Math.max(0, above - 1)];
  if (high === undefined || low === undefined) return undefined;
  if (high[0] === low[0]) return high[1];
  return low[1] + ((high[1] - low[1]) * (temperature - low[0])) / (high[0] - low[0]);
}
