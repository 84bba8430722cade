import type { Port, Pump, Sourced, Vec3 } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, given, type InputContext, offsetVector, practice } from './input-context.js';
import { resolveBaseSprings } from './resolve-base-springs.js';
import { resolveBodyFlange } from './resolve-body-flange.js';
import { resolveDimensions } from './resolve-dimensions.js';
import { resolveDisconnect } from './resolve-electrical.js';
import type { MaterialFinder } from './resolve-materials.js';
import { resolveMotor } from './resolve-motor.js';
import { pumpPractice } from './resolve-practice.js';
import { resolveAnchorStructure, resolveFriction, resolveStructure } from './resolve-structure.js';

type FilePump = FileContent['pump'];
type FilePort = FilePump['suction'];

/** Proportions of an outline where none is given [-]. */
const MOTOR_TOP_OVER_CENTRE = 1.4;
const MOTOR_DIAMETER_OVER_CENTRE = 0.4;
const CASING_DIAMETER_OVER_FACES = 0.75;

/**
 * The pump with its ports, weights, base and outline.
 *
 * @param reading - where issues and assumptions go [-]
 * @param materials - finder of materials [-]
 * @param file - content of the file [-]
 * @returns the pump, SI [-]
 */
export function resolvePump(reading: InputContext, materials: MaterialFinder, file: FileContent): Pump {
  const { pump } = file;
  const material = resolveCasingMaterial(reading, materials, pump);
  const suction = resolvePort(reading, 'suction', pump.suction);
  const discharge = resolvePort(reading, 'discharge', pump.discharge);
  const rotorInertia = pump['rotor-inertia'];
  return {
    mark: pump.mark,
    build: pump.build,
    mount: pump.mount,
    position: resolvePosition(reading, file),
    casing: {
      mass: given(pump.casing.weight, ['pump', 'casing', 'weight'], pump.casing),
      centre: resolveCasingCentre(reading, pump),
      material,
    },
    motor: resolveMotor(reading, pump.motor),
    ...(rotorInertia !== undefined && { rotorInertia: given(rotorInertia, ['pump', 'rotor-inertia']) }),
    ...(pump.blades !== undefined && { blades: pump.blades }),
    contents: given(pump.casing.contents, ['pump', 'casing', 'contents']),
    ports: { suction, discharge },
    ...resolveBase(reading, file),
    ...pumpPractice(pump),
    ...resolveDisconnect(reading, file),
    duty: {
      flow: pump.duty.flow,
      head: pump.duty.head,
      ...(pump.duty.efficiency !== undefined && { efficiency: pump.duty.efficiency }),
    },
    ...resolveShape(reading, file, suction, discharge),
  };
}

function resolvePosition(reading: InputContext, file: FileContent): Vec3 {
  const { at } = file.pump;
  if (at) return [at.east, at.north, at.elevation];
  if (file.room) {
    reading.assume(['pump', 'at'], {
      what: 'place of the pump in the room',
      value: 'origin of the plan, ports at elevation 0',
      citation: practice('origin of the plan'),
      effect: 'Headroom and distances to floor, ceiling and objects count from it',
    });
  }
  return [0, 0, 0];
}

function resolveCasingMaterial(reading: InputContext, materials: MaterialFinder, pump: FilePump): string {
  const path: Path = ['pump', 'casing', 'material'];
  const material = pump.casing.material ?? 'cast iron';
  if (pump.casing.material === undefined) {
    reading.assume(path, {
      what: 'material of the casing',
      value: material,
      citation: practice('usual material of in-line casings'),
      effect: 'Growth of the casing between its ports',
    });
  }
  materials.find(material, path);
  return material;
}

function resolveCasingCentre(reading: InputContext, pump: FilePump): Vec3 {
  const centre = pump.casing['centre-of-gravity'];
  if (centre) return offsetVector(centre);
  reading.assume(['pump', 'casing', 'centre-of-gravity'], {
    what: 'centre of gravity of the casing',
    value: 'on the shaft axis at the height of the ports',
    citation: practice('in-line casings are nearly even about their ports'),
    effect: 'Moments at the nozzles',
  });
  return [0, 0, 0];
}

function resolvePort(reading: InputContext, which: 'suction' | 'discharge', port: FilePort): Port {
  const path: Path = ['pump', which];
  const distance = port['from-shaft'];
  if (port.at !== undefined && (distance !== undefined || port.up !== undefined))
    reading.report('input.port-twice', [...path, 'at']);
  if (port.at === undefined && distance === undefined)
    reading.report('input.missing', [...path, 'from-shaft'], { key: 'from-shaft' }, 'holder');
  const reach = distance ?? 0;
  const position: Vec3 = port.at
    ? offsetVector(port.at)
    : [port.facing[0] * reach, port.facing[1] * reach, port.up ?? 0];
  return {
    which,
    nps: port.size,
    position,
    facing: port.facing,
    flange: resolveBodyFlange(reading, port.flange, port.size, [...path, 'flange']),
  };
}

function resolveBase(reading: InputContext, file: FileContent): Pick<Pump, 'base'> {
  const { base, mount } = file.pump;
  if (mount === 'hung') {
    if (base) reading.report('input.base-of-hung', ['pump', 'base'], {}, 'key');
    return {};
  }
  if (!base) {
    reading.report('input.missing', ['pump', 'base'], { key: 'base' }, 'holder');
    return {};
  }
  const { friction } = base;
  if (base.structure !== undefined && mount !== 'resting')
    reading.report('input.structure-not-resting', ['pump', 'base', 'structure'], { mount }, 'key');
  if (base.anchors !== undefined && mount !== 'bolted')
    reading.report('input.anchors-not-bolted', ['pump', 'base', 'anchors'], { mount }, 'key');
  const at = { path: ['pump', 'base'], mark: 'pump base', alike: file.assumed };
  const anchors =
    mount === 'bolted'
      ? resolveAnchorStructure(reading, base.anchors, { ...at, path: [...at.path, 'anchors'] })
      : undefined;
  if (friction !== undefined && mount !== 'resting')
    reading.report('input.friction-not-resting', ['pump', 'base', 'friction'], { mount }, 'key');
  const { east = 0, north = 0, up = 0 } = base.at ?? {};
  if (up !== 0) reading.report('input.base-up', ['pump', 'base', 'at', 'up'], {}, 'key');
  return {
    base: {
      ...resolveBaseSprings(reading, base, [east, north, -base['below-ports']], mount),
      ...(mount === 'resting' && resolveFriction(reading, friction, at)),
      ...(mount === 'resting' && resolveStructure(reading, base.structure, at)),
      ...(anchors && { anchors }),
    },
  };
}

/** Outline and dimensions, last of all so that their assumptions stand behind those of loads. */
function resolveShape(
  reading: InputContext,
  file: FileContent,
  suction: Port,
  discharge: Port,
): Pick<Pump, 'outline' | 'dimensions'> {
  const outline = resolveOutline(reading, file.pump, suction, discharge);
  return { outline, ...resolveDimensions(reading, file, outline) };
}

function resolveOutline(
  reading: InputContext,
  pump: FilePump,
  suction: Port,
  discharge: Port,
): Pump['outline'] {
  const height = Math.abs(pump.motor['centre-of-gravity'].up ?? 0);
  const faces = Math.hypot(
    ...suction.position.map((component, axis) => component - (discharge.position[axis] ?? 0)),
  );
  const entry = (
    key: 'motor-top' | 'motor-diameter' | 'casing-diameter',
    what: string,
    taken: number,
    clause: string,
  ): Sourced => {
    const path: Path = ['pump', 'outline', key];
    const value = pump.outline?.[key];
    if (value !== undefined) return given(value, path);
    reading.assume(path, {
      what,
      value: reading.print(taken, 'length'),
      citation: practice(clause),
      effect: 'Drawings, headroom, and rotary inertia in the natural frequencies',
    });
    return assumed(taken, path);
  };
  const withdrawal = pump.outline?.withdrawal;
  return {
    motorTop: entry(
      'motor-top',
      'height of the motor top',
      height * MOTOR_TOP_OVER_CENTRE,
      `${MOTOR_TOP_OVER_CENTRE} times the height of its centre of gravity`,
    ),
    motorDiameter: entry(
      'motor-diameter',
      'diameter of the motor',
      height * MOTOR_DIAMETER_OVER_CENTRE,
      `${MOTOR_DIAMETER_OVER_CENTRE} times the height of its centre of gravity`,
    ),
    casingDiameter: entry(
      'casing-diameter',
      'diameter of the casing',
      faces * CASING_DIAMETER_OVER_FACES,
      `${CASING_DIAMETER_OVER_FACES} times the distance between the port faces`,
    ),
    ...(withdrawal !== undefined && { withdrawal: given(withdrawal, ['pump', 'outline', 'withdrawal']) }),
  };
}
