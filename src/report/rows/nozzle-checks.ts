/** Checks that compare the loads on the nozzles, condition by condition, with a basis. */
const BY_CONDITION: ReadonlySet<string> = new Set([
  'nozzle-loads',
  'nozzle-comparison',
  'nozzle-principal-stress',
  'nozzle-combined',
]);

/**
 * Whether a check compares nozzle loads with a basis in every condition.
 *
 * @param check - check by its id
 * @returns true for those with a column in the matrix
 */
export const isNozzleCheck = ({ id }: { readonly id: string }): boolean => BY_CONDITION.has(id);
