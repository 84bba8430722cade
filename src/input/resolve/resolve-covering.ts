import { coveringMass, findInsulation, insulationKinds } from '../../catalog/index.js';
import type { Covering, PipeSection } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { computed, type InputContext, nearest } from './input-context.js';

/** Names of insulation used in the trade beside those of the table. */
const otherNames: Readonly<Record<string, string>> = {
  fibreglass: 'glass fibre',
  fiberglass: 'glass fibre',
  'glass wool': 'glass fibre',
  'rock wool': 'mineral wool',
  'stone wool': 'mineral wool',
  elastomeric: 'elastomeric foam',
  'foam glass': 'cellular glass',
};

function tableName(kind: string): string {
  const plain = kind.trim().toLowerCase();
  return (Object.hasOwn(otherNames, plain) ? otherNames[plain] : undefined) ?? plain;
}

/**
 * Mass of insulation and jacket round a pipe.
 *
 * @param reading - where issues go [-]
 * @param insulation - what the file says [-]
 * @param section - the pipe [-]
 * @param path - where the insulation stands in the file [-]
 * @returns the covering, or undefined for bare pipe [-]
 */
export function resolveCovering(
  reading: InputContext,
  insulation: FileContent['piping']['insulation'],
  section: PipeSection,
  path: Path,
): Covering | undefined {
  if (insulation === undefined || insulation === 'none') return undefined;
  const listed = findInsulation(tableName(insulation.kind));
  const density = insulation.density ?? listed?.density.value;
  if (density === undefined) {
    reading.report(
      'input.unknown-insulation',
      [...path, 'kind'],
      nearest(insulation.kind, [...insulationKinds(), ...Object.keys(otherNames)]),
    );
    return undefined;
  }
  const { thickness, jacket = 0 } = insulation;
  const mass = coveringMass({
    outsideDiameter: section.outsideDiameter,
    thickness,
    density,
    jacketMassPerArea: jacket,
  });
  const citation =
    insulation.density === undefined && listed
      ? listed.density.citation
      : ({ source: 'input', clause: 'own density', confidence: 'computed' } as const);
  return {
    name: `${reading.print(thickness, 'length')} ${insulation.kind}${jacket > 0 ? ' with jacket' : ''}`,
    thickness,
    massPerLength: computed(mass, `ring of ${reading.print(density, 'density')}, and jacket`, citation),
  };
}
