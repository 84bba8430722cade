import { glycolDensity, glycolShares, waterDensity } from '../../catalog/index.js';
import type { Service, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, catalogued, given, type InputContext, placeholder, practice } from './input-context.js';
import { servicePractice } from './resolve-practice.js';

/** 70 °F, the temperature from which expansion tables count [K]. */
const USUAL_INSTALLATION = (70 + 459.67) / 1.8;
/** Test pressure over design pressure where the file gives none [-]. */
const TEST_FACTOR = 1.5;
const ATMOSPHERE = 101325;

type Fluid = Service['fluid'];

/**
 * Liquid, temperatures and pressures, with densities of the liquid at each.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `service` [-]
 * @returns the service, SI [-]
 */
export function resolveService(reading: InputContext, file: FileContent['service']): Service {
  const fluid = resolveFluid(reading, file.fluid);
  const temperatures = resolveTemperatures(reading, file.temperatures);
  const pressures = resolvePressures(reading, file.pressures);
  const densityAt = (mixture: Fluid, temperature: Sourced, pressure: Sourced, path: Path): Sourced =>
    file.density !== undefined
      ? given(file.density, ['service', 'density'])
      : liquidDensity(reading, mixture, temperature, pressure, path);
  const { installation, running, hot, cold } = temperatures;
  const { working, test } = pressures;
  const at = (name: string): Path => ['service', 'temperatures', name];
  return {
    name: file.name,
    fluid,
    density: {
      filled: densityAt(fluid, installation, working, at('installation')),
      hot: densityAt(fluid, hot, working, at('hot')),
      cold: densityAt(fluid, cold, working, at('cold')),
      // A line is tested with water, whatever it carries later.
      test: densityAt({ kind: 'water', share: 0 }, installation, test, at('installation')),
      running: densityAt(fluid, running, working, at('running')),
    },
    installationTemperature: installation,
    runningTemperature: running,
    hotTemperature: hot,
    coldTemperature: cold,
    workingPressure: working,
    designPressure: pressures.design,
    testPressure: test,
    ...servicePractice(reading, file),
  };
}

function resolveFluid(reading: InputContext, fluid: FileContent['service']['fluid']): Fluid {
  if (fluid === 'water') return { kind: 'water', share: 0 };
  const path: Path = ['service', 'fluid', 'share'];
  if (fluid.kind === 'water') {
    if (fluid.share !== undefined && fluid.share !== 0) reading.report('input.share-of-water', path);
    return { kind: 'water', share: 0 };
  }
  if (fluid.share === undefined) {
    reading.report('input.missing', path, { key: 'share' }, 'holder');
    return { kind: fluid.kind, share: Number.NaN };
  }
  const [least, most] = glycolShares(fluid.kind);
  if (fluid.share < least || fluid.share > most) {
    reading.report('input.glycol-share', path, {
      found: reading.print(fluid.share, 'ratio'),
      least: reading.print(least, 'ratio'),
      most: reading.print(most, 'ratio'),
    });
  }
  return { kind: fluid.kind, share: fluid.share };
}

function liquidDensity(
  reading: InputContext,
  fluid: Fluid,
  temperature: Sourced,
  gauge: Sourced,
  path: Path,
): Sourced {
  // An unusable share has been reported where it stands.
  if (fluid.kind !== 'water') {
    const [least, most] = glycolShares(fluid.kind);
    if (!(fluid.share >= least && fluid.share <= most)) return placeholder;
  }
  const found =
    fluid.kind === 'water'
      ? waterDensity({ temperature: temperature.value, pressure: gauge.value + ATMOSPHERE })
      : glycolDensity({ fluid: fluid.kind, share: fluid.share, temperature: temperature.value });
  if (found) return catalogued(found);
  reading.report('input.no-density', path, {
    liquid: fluid.kind,
    temperature: reading.print(temperature.value, 'temperature'),
  });
  return placeholder;
}

function resolveTemperatures(reading: InputContext, file: FileContent['service']['temperatures']) {
  const path = (name: string): Path => ['service', 'temperatures', name];
  const installation = file.installation ?? USUAL_INSTALLATION;
  const hot = file.hot ?? Math.max(file.running, installation);
  const cold = file.cold ?? Math.min(file.running, installation);
  const taken = (value: number, what: string, clause: string, effect: string) => ({
    what,
    value: reading.print(value, 'temperature'),
    citation: practice(clause),
    effect,
  });
  if (file.installation === undefined) {
    reading.assume(
      path('installation'),
      taken(
        installation,
        'installation temperature',
        'usual temperature at erection',
        'Movement and displacement stress count from it',
      ),
    );
  }
  if (file.hot === undefined) {
    reading.assume(
      path('hot'),
      taken(
        hot,
        'highest temperature',
        'the higher of running and installation temperature',
        'A higher one adds movement, stress and nozzle load',
      ),
    );
  }
  if (file.cold === undefined) {
    reading.assume(
      path('cold'),
      taken(
        cold,
        'lowest temperature',
        'the lower of running and installation temperature',
        'A lower one adds movement, stress and nozzle load',
      ),
    );
  }
  const order = {
    hot: reading.print(hot, 'temperature'),
    running: reading.print(file.running, 'temperature'),
    cold: reading.print(cold, 'temperature'),
  };
  if (hot < file.running)
    reading.report('input.hot-below-running', path(file.hot === undefined ? 'running' : 'hot'), order);
  if (cold > file.running)
    reading.report('input.cold-above-running', path(file.cold === undefined ? 'running' : 'cold'), order);
  const sourced = (value: number, name: 'installation' | 'hot' | 'cold') =>
    file[name] === undefined ? assumed(value, path(name)) : given(value, path(name));
  return {
    installation: sourced(installation, 'installation'),
    running: given(file.running, path('running')),
    hot: sourced(hot, 'hot'),
    cold: sourced(cold, 'cold'),
  };
}

function resolvePressures(reading: InputContext, file: FileContent['service']['pressures']) {
  const path = (name: string): Path => ['service', 'pressures', name];
  const test = file.test ?? TEST_FACTOR * file.design;
  if (file.test === undefined) {
    reading.assume(path('test'), {
      what: 'test pressure',
      value: reading.print(test, 'pressure'),
      citation: {
        source: 'asme-b31.9',
        clause: '937.3, 1.5 times the design pressure',
        confidence: 'memory',
      },
      effect: 'Pressure stress and thrust in the test condition',
    });
  }
  if (file.working > file.design) {
    reading.report('input.working-over-design', path('working'), {
      working: reading.print(file.working, 'pressure'),
      design: reading.print(file.design, 'pressure'),
    });
  }
  if (test < file.design) {
    reading.warn('input.test-below-design', path('test'), {
      test: reading.print(test, 'pressure'),
      design: reading.print(file.design, 'pressure'),
    });
  }
  return {
    working: given(file.working, path('working')),
    design: given(file.design, path('design')),
    test: file.test === undefined ? assumed(test, path('test')) : given(test, path('test')),
  };
}
