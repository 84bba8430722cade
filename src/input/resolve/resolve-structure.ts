/** Stiffness of structure, friction and brackets: as given, or as one person takes them for everything alike. */

import type { AnchorStructure, MotorBracket, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { given, givenBy, type InputContext } from './input-context.js';

type Assumed = NonNullable<FileContent['assumed']>;
/** What the file says that a person takes for everything alike. */
export type AssumedAlike = Assumed | undefined;

interface Named {
  readonly 'assumed-by'?: string | undefined;
  readonly document?: string | undefined;
}

/** One value with who takes it, or the document it stands in. */
function named(value: number, path: Path, { document, ...own }: Named): Sourced {
  const by = own['assumed-by'];
  const words = [...(document === undefined ? [] : [document]), ...(by === undefined ? [] : [takenBy(by)])];
  return words.length === 0 ? given(value, path) : givenBy(value, path, words.join(', '));
}

const takenBy = (by: string): string => `assumed by ${by}`;

type FileStructure = number | ({ readonly stiffness: number } & Named) | undefined;
type FileAnchors = ({ readonly translation: number; readonly rotation: number } & Named) | undefined;

/**
 * Stiffness of what a support is fastened to.
 *
 * @param reading - where assumptions go [-]
 * @param file - content of `structure` [-]
 * @param at - path of the support and its mark, and what is taken alike where it says nothing [-]
 * @returns stiffness [N/m], Infinity for rigid; nothing where nobody says it
 */
export function resolveStructure(
  reading: InputContext,
  file: FileStructure,
  at: { readonly path: Path; readonly mark: string; readonly alike: AssumedAlike },
): { readonly structure?: Sourced } {
  const path: Path = [...at.path, 'structure'];
  if (typeof file === 'number') return { structure: given(file, path) };
  if (file !== undefined) return { structure: named(file.stiffness, path, file) };
  const { alike } = at;
  if (alike?.structure === undefined) return {};
  return {
    structure: takenAlike(reading, alike, 'structure', alike.structure, {
      mark: at.mark,
      what: 'stiffness of the structure',
      value: stiffnessText(reading, alike.structure, 'stiffness'),
    }),
  };
}

/**
 * Stiffness of what an anchor is fastened to.
 *
 * @param reading - where assumptions go [-]
 * @param file - content of the map [-]
 * @param at - path of the map, the anchor's mark, and what is taken alike [-]
 * @returns stiffness [N/m, N·m/rad]; nothing where nobody says it
 */
export function resolveAnchorStructure(
  reading: InputContext,
  file: FileAnchors,
  at: { readonly path: Path; readonly mark: string; readonly alike: AssumedAlike },
): AnchorStructure | undefined {
  if (file !== undefined) {
    return {
      translation: named(file.translation, [...at.path, 'translation'], file),
      rotation: named(file.rotation, [...at.path, 'rotation'], file),
    };
  }
  const { alike } = at;
  if (alike?.anchors === undefined) return undefined;
  const { translation, rotation } = alike.anchors;
  const value = [
    stiffnessText(reading, translation, 'stiffness'),
    stiffnessText(reading, rotation, 'rotational stiffness'),
  ].join(' and ');
  const taken = { mark: at.mark, what: 'stiffness at the anchor', value };
  return {
    translation: takenAlike(reading, alike, 'anchors', translation, taken),
    rotation: givenBy(rotation, ['assumed', 'anchors'], takenBy(alike.by)),
  };
}

/**
 * Friction of something that rests.
 *
 * @param reading - where assumptions go [-]
 * @param own - coefficient the file gives for it [-]
 * @param at - its mark, and what is taken alike [-]
 * @returns coefficient [-]; nothing where nobody says it
 */
export function resolveFriction(
  reading: InputContext,
  own: number | undefined,
  at: { readonly mark: string; readonly alike: AssumedAlike },
): { readonly friction?: number } {
  if (own !== undefined) return { friction: own };
  const { alike, mark } = at;
  if (alike?.friction === undefined) return {};
  const taken = { mark, what: 'friction', value: String(alike.friction) };
  takenAlike(reading, alike, 'friction', alike.friction, taken);
  return { friction: alike.friction };
}

/**
 * Grip of a grooved joint of the rigid type of which the file gives none.
 *
 * @param reading - where assumptions go [-]
 * @param at - its name, and what is taken alike [-]
 * @returns stiffness against bending and twist [N·m/rad]; nothing where nobody says it
 */
export function resolveGrip(
  reading: InputContext,
  at: { readonly name: string; readonly alike: AssumedAlike },
): number | undefined {
  const bending = at.alike?.['rigid-grooved-joints']?.bending;
  if (at.alike === undefined || bending === undefined) return undefined;
  const value = stiffnessText(reading, bending, 'rotational stiffness');
  const taken = { mark: at.name, what: 'grip against bending and twist', value };
  takenAlike(reading, at.alike, 'rigid-grooved-joints', bending, taken);
  return bending;
}

/**
 * Bracket of the motor: by one of frequency and stiffness.
 *
 * @param reading - where issues go [-]
 * @param file - content of `pump.motor.bracket` [-]
 * @returns frequency [Hz] or stiffness [N·m/rad]; nothing where the file says nothing
 */
export function resolveBracket(
  reading: InputContext,
  file: FileContent['pump']['motor']['bracket'],
): { readonly bracket?: MotorBracket } {
  if (file === undefined) return {};
  const path: Path = ['pump', 'motor', 'bracket'];
  const { frequency, rotation } = file;
  if (frequency !== undefined && rotation !== undefined)
    reading.report('input.bracket-twice', [...path, 'rotation'], {}, 'key');
  if (frequency !== undefined)
    return { bracket: { kind: 'frequency', frequency: named(frequency, [...path, 'frequency'], file) } };
  if (rotation !== undefined)
    return { bracket: { kind: 'stiffness', rotation: named(rotation, [...path, 'rotation'], file) } };
  reading.report('input.missing', [...path, 'frequency'], { key: 'frequency' }, 'holder');
  return {};
}

function takenAlike(
  reading: InputContext,
  alike: Assumed,
  key: keyof Assumed,
  value: number,
  { mark, ...taken }: { readonly mark: string; readonly what: string; readonly value: string },
): Sourced {
  const path: Path = ['assumed', key];
  reading.assumeAlike(`assumed ${key}`, mark, path, {
    ...taken,
    citation: { source: 'input', clause: takenBy(alike.by), confidence: 'read' },
    effect: 'Loads, stresses and natural frequencies; to be confirmed by who takes it',
  });
  return givenBy(value, path, takenBy(alike.by));
}

function stiffnessText(
  reading: InputContext,
  value: number,
  dimension: 'stiffness' | 'rotational stiffness',
): string {
  return Number.isFinite(value) ? reading.print(value, dimension) : 'rigid';
}
