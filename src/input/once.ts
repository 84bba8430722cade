/**
 * Something made when it is first asked for, and kept: schemas are large, and most of who loads this room asks for none.
 *
 * @param make - makes it, the same each time [-]
 * @returns a function that gives it [-]
 */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
