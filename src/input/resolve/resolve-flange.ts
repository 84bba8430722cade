import { boltSetMass, findFlange, flangeClasses, flangeRating, flangeSizes } from '../../catalog/index.js';
import type { FlangeDimensions, FlangePart, Sourced } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import { catalogued, given, nearest, placeholder, practice } from './input-context.js';
import { givenRating } from './resolve-body-flange.js';
import { partBase, type Step, type Stepped } from './walking.js';

type Standard = FlangePart['standard'];

/**
 * A flange on the pipe. Its mass holds half of the bolts of the joint.
 *
 * @param step - the step [-]
 * @returns part [-]
 */
export function resolveFlange(step: Step<'flange'>): Stepped {
  const { walking, path, pipe, file } = step;
  const name = walking.name('flange');
  const standard = standardOf(step);
  const nps = pipe.section.nps ?? '';
  const type = typeOf(step, name, standard);
  const listed =
    standard === undefined || standard === 'own'
      ? undefined
      : findFlange({ standard, class: file.class, nps, type: type === 'own' ? 'integral' : type });
  const joint =
    standard === undefined || standard === 'own'
      ? undefined
      : findFlange({ standard, class: file.class, nps, type: 'integral' });
  const length =
    file.length === undefined
      ? listed?.length && catalogued(listed.length)
      : given(file.length, [...path, 'length']);
  const mass =
    file.weight === undefined
      ? listed?.mass && withBolts(catalogued(listed.mass), standard ?? 'own', file.class, nps)
      : given(file.weight, [...path, 'weight'], file);
  reportUnlisted(step, standard, {
    isSized: joint !== undefined,
    isComplete: length !== undefined && mass !== undefined,
  });
  const part: FlangePart = {
    kind: 'flange',
    ...partBase(name, pathText(path), pipe),
    standard: standard ?? 'own',
    class: file.class,
    face: file.face ?? 'unknown',
    type,
    length: length ?? placeholder,
    mass: mass ?? placeholder,
    joint: {
      ...jointOf(step, joint?.joint ?? { nps: nps === '' ? pipe.section.name : nps }),
      ...ratingOf(step, standard),
      ...givenRating(walking.reading, file.rating, [...path, 'rating']),
    },
  };
  return { part };
}

/** A class number belongs to one standard, so the standard need not be said. */
function standardOf({ walking, path, file }: Step<'flange'>): Standard | undefined {
  if (file.class === 'own') return 'own';
  if (file.standard === 'own') return 'own';
  const standards = ['B16.5', 'B16.1'] as const;
  const standard = file.standard ?? standards.find((name) => flangeClasses(name).includes(file.class));
  const classes =
    file.standard === undefined
      ? standards.flatMap((name) => flangeClasses(name))
      : flangeClasses(file.standard);
  if (standard !== undefined && classes.includes(file.class)) return standard;
  walking.reading.report('input.unknown-class', [...path, 'class'], {
    ...nearest(file.class, [...classes, 'own']),
    standard: file.standard ?? 'B16.5 or B16.1',
  });
  return undefined;
}

function typeOf(
  { walking, path, file }: Step<'flange'>,
  name: string,
  standard: Standard | undefined,
): FlangePart['type'] {
  if (file.type !== undefined) return file.type;
  if (standard !== 'B16.5' || (file.weight !== undefined && file.length !== undefined)) return 'own';
  walking.reading.assumeAlike('flange', name, [...path, 'type'], {
    what: 'type',
    value: 'weld-neck',
    citation: practice('weld-neck where nothing is said; the heavier of the usual types'),
    effect: 'Weight and length of the flange',
  });
  return 'weld-neck';
}

function withBolts(flange: Sourced, standard: Standard, pressureClass: string, nps: string): Sourced {
  const bolts = boltSetMass({ standard, class: pressureClass, nps });
  if (!bolts || flange.origin.kind !== 'catalogue') return flange;
  return {
    value: flange.value + bolts.mass.value / 2,
    origin: {
      ...flange.origin,
      row: `${flange.origin.row}, with half of ${bolts.studs} studs ${bolts.bolt} in`,
    },
  };
}

function reportUnlisted(
  { walking, path, pipe, file }: Step<'flange'>,
  standard: Standard | undefined,
  found: { readonly isSized: boolean; readonly isComplete: boolean },
): void {
  // Unknown classes and unknown pipes have been reported.
  if (standard === undefined || pipe.section.name === '' || found.isComplete) return;
  if (standard !== 'own' && !found.isSized && pipe.section.nps !== undefined) {
    const words = flangeSizes({ standard, class: file.class });
    walking.reading.report('input.flange-not-listed', [...path, 'class'], {
      found: `${standard} class ${file.class}`,
      size: pipe.section.nps,
      words,
    });
    return;
  }
  for (const key of ['weight', 'length'] as const) {
    if (file[key] === undefined)
      walking.reading.report(
        'input.own-value-needed',
        [...path, key],
        {
          key,
          part: `flange ${file.class === 'own' ? 'of no standard' : `${standard} class ${file.class}${file.type ? `, ${file.type}` : ''}`}`,
        },
        'holder',
      );
  }
}

function jointOf({ file, path }: Step<'flange'>, listed: FlangeDimensions): FlangeDimensions {
  const gasket = file['gasket-diameter'];
  return {
    ...listed,
    ...(file['outside-diameter'] !== undefined && { outsideDiameter: file['outside-diameter'] }),
    ...(file['bolt-circle'] !== undefined && { boltCircle: file['bolt-circle'] }),
    ...(file.bolts !== undefined && { bolts: file.bolts }),
    ...(file.bolt !== undefined && { bolt: file.bolt }),
    ...(file['raised-face'] !== undefined && { raisedFaceDiameter: file['raised-face'] }),
    ...(gasket !== undefined && {
      gasketDiameter: given(gasket, [...path, 'gasket-diameter'] satisfies Path),
    }),
  };
}

/** Ratings hang on the material of the flange; only those of carbon steel pipe and of grey iron are sure. */
function ratingOf(
  { pipe, file }: Step<'flange'>,
  standard: Standard | undefined,
): Pick<FlangeDimensions, 'rating' | 'ratingCitation'> {
  const group =
    standard === 'B16.1'
      ? 'A126-B'
      : standard === 'B16.5' && pipe.section.material === 'carbon steel'
        ? '1.1'
        : undefined;
  if (group === undefined || standard === undefined) return {};
  const nps = pipe.section.nps;
  const found = flangeRating({
    standard,
    class: file.class,
    materialGroup: group,
    ...(nps !== undefined && { nps }),
  });
  return found ? { rating: found.pairs, ratingCitation: found.citation } : {};
}
