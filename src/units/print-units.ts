import type { Dimension } from './dimension.js';

/** System of units a review is printed in. */
export type UnitSystem = 'us' | 'si';

/** Unit a dimension is printed in, and what follows the number. */
export interface PrintUnit {
  /** Spelling in the unit table. */
  readonly unit: string;
  readonly label: string;
  /** Larger unit, from so many of the smaller one on. */
  readonly larger?: { readonly unit: string; readonly label: string; readonly from: number };
}

const print = (unit: string, label: string = unit): PrintUnit => ({ unit, label });

/** Printed units by system and dimension. */
export const printUnits: Readonly<Record<UnitSystem, Readonly<Record<Dimension, PrintUnit>>>> = {
  us: {
    length: print('in'),
    area: print('in2', 'in²'),
    volume: print('gal'),
    mass: print('lb'),
    force: print('lb'),
    moment: print('ft.lb', 'ft·lb'),
    pressure: print('psi'),
    stress: print('psi'),
    temperature: print('degF', '°F'),
    'temperature difference': print('degF', '°F'),
    flow: print('gpm'),
    head: print('ft'),
    power: print('hp'),
    speed: print('rpm'),
    frequency: print('Hz'),
    angle: print('deg', '°'),
    stiffness: print('lb/in'),
    'rotational stiffness': print('ft.lb/deg', 'ft·lb/°'),
    density: print('lb/ft3', 'lb/ft³'),
    'mass per length': print('lb/ft'),
    'mass per area': print('lb/ft2', 'lb/ft²'),
    expansion: print('1/degF', '1/°F'),
    ratio: print('%'),
    velocity: print('ft/s'),
    time: print('s'),
    inertia: print('lb.ft2', 'lb·ft²'),
    'second moment of area': print('in4', 'in⁴'),
    'section modulus': print('in3', 'in³'),
    voltage: print('V'),
    current: print('A'),
  },
  si: {
    length: { unit: 'mm', label: 'mm', larger: { unit: 'm', label: 'm', from: 3000 } },
    area: print('mm2', 'mm²'),
    volume: print('L'),
    mass: print('kg'),
    force: { unit: 'N', label: 'N', larger: { unit: 'kN', label: 'kN', from: 1000 } },
    moment: print('N.m', 'N·m'),
    pressure: print('kPa'),
    stress: print('MPa'),
    temperature: print('degC', '°C'),
    'temperature difference': print('K'),
    flow: print('m3/h', 'm³/h'),
    head: print('m'),
    power: print('kW'),
    speed: print('rpm'),
    frequency: print('Hz'),
    angle: print('deg', '°'),
    stiffness: print('N/mm'),
    'rotational stiffness': print('N.m/deg', 'N·m/°'),
    density: print('kg/m3', 'kg/m³'),
    'mass per length': print('kg/m'),
    'mass per area': print('kg/m2', 'kg/m²'),
    expansion: print('1/K'),
    ratio: print('%'),
    velocity: print('m/s'),
    time: print('s'),
    inertia: print('kg.m2', 'kg·m²'),
    'second moment of area': print('cm4', 'cm⁴'),
    'section modulus': print('cm3', 'cm³'),
    voltage: print('V'),
    current: print('A'),
  },
};
