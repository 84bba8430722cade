import { findMaterial, materialNames } from '../../catalog/index.js';
import type { Material } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { catalogued, given, type InputContext, nearest } from './input-context.js';

/** Finds materials by name, and remembers which were asked for. */
export interface MaterialFinder {
  /** The material, or undefined after an issue was reported at the path. */
  readonly find: (name: string, path: Path) => Material | undefined;
  /** Every material found so far, by name. */
  readonly used: Readonly<Record<string, Material>>;
}

/** Own coefficients hold for all temperatures; two far ends make the table [K]. */
const OWN_EXPANSION_ENDS = [150, 800] as const;
/** 70 °F, from which thermal strain counts [K]. */
const STRAIN_DATUM = (70 + 459.67) / 1.8;

/**
 * A finder over the user's own materials and the catalogue, in this order.
 *
 * @param reading - where issues go [-]
 * @param file - content of `materials` [-]
 * @returns the finder [-]
 */
export function materialFinder(reading: InputContext, file: FileContent['materials']): MaterialFinder {
  const used: Record<string, Material> = {};
  const own = file ?? {};
  return {
    used,
    find: (name, path) => {
      const material = Object.hasOwn(own, name) ? ownMaterial(name, own[name]) : catalogueMaterial(name);
      if (material) used[name] = material;
      else
        reading.report(
          'input.unknown-material',
          path,
          nearest(name, [...materialNames(), ...Object.keys(own)]),
        );
      return material;
    },
  };
}

function ownMaterial(
  name: string,
  own: NonNullable<FileContent['materials']>[string] | undefined,
): Material | undefined {
  if (!own) return undefined;
  const path: Path = ['materials', name];
  return {
    id: name,
    name,
    modulus: given(own.modulus, [...path, 'modulus']),
    poisson: own.poisson,
    density: own.density,
    expansion: OWN_EXPANSION_ENDS.map((kelvin) => [kelvin, own.expansion * (kelvin - STRAIN_DATUM)] as const),
    expansionCitation: { source: 'input', clause: pathText([...path, 'expansion']), confidence: 'read' },
    ...(own.yield !== undefined && { yieldStrength: given(own.yield, [...path, 'yield']) }),
  };
}

function catalogueMaterial(name: string): Material | undefined {
  const found = findMaterial(name);
  if (!found) return undefined;
  const { id, poisson, density, expansion, expansionCitation, yieldStrength } = found;
  return {
    id,
    name: found.name,
    modulus: catalogued(found.modulus),
    poisson,
    density,
    expansion,
    expansionCitation,
    ...(yieldStrength && { yieldStrength: catalogued(yieldStrength) }),
  };
}
