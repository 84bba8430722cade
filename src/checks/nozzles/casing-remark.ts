import type { IssueCode } from '../../issues/issue.js';

/**
 * What is to be said beside limits that were made for another class of machine, by what the casing is made of.
 *
 * @param material - of the casing, as the file says it
 * @returns code of the remark
 */
export function casingRemark(material: string): IssueCode {
  const name = material.toLowerCase();
  if (/ductile|nodular|spheroidal/.test(name)) return 'checks.nozzle-loads.ductile-casing';
  if (/iron/.test(name)) return 'checks.nozzle-loads.iron-casing';
  if (/bronze|brass/.test(name)) return 'checks.nozzle-loads.bronze-casing';
  if (/steel/.test(name)) return 'checks.nozzle-loads.steel-casing';
  return 'checks.nozzle-loads.other-casing';
}

/**
 * Whether a casing is of something weaker than the steel that the published values are made for.
 *
 * @param material - of the casing, as the file says it
 * @returns true for everything but steel
 */
export function isWeakerThanSteel(material: string): boolean {
  return casingRemark(material) !== 'checks.nozzle-loads.steel-casing';
}
