import type * as z from 'zod';
import type { Path } from '../pending-issue.js';

type Schema = z.core.$ZodType;

/** What the schema says of one place of the file. */
export interface SchemaAt {
  /** Keys a map at this place may hold. */
  readonly keys: readonly string[];
  readonly description?: string;
  readonly example?: unknown;
}

/**
 * Looks up a place in a schema: what it is, an example, and the keys it may hold.
 *
 * @param root - schema of the whole file [-]
 * @param path - keys and indexes [-]
 * @returns what the schema says there; empty where it knows no such place [-]
 */
export function schemaAt(root: Schema, path: Path): SchemaAt {
  let places: readonly Schema[] = [root];
  for (const step of path) places = places.flatMap((place) => inside(place, step));
  const layers = places.flatMap(unwrapped);
  const keys = layers.flatMap((layer) => (isKind(layer, 'object') ? Object.keys(layer._zod.def.shape) : []));
  const said = layers.map(metadata).find((meta) => meta?.description !== undefined);
  return {
    keys: [...new Set(keys)],
    ...(said?.description !== undefined && { description: said.description }),
    ...(said?.examples?.[0] !== undefined && { example: said.examples[0] }),
  };
}

interface Metadata {
  readonly description?: string;
  readonly examples?: readonly unknown[];
}

function metadata(schema: Schema): Metadata | undefined {
  return 'meta' in schema && typeof schema.meta === 'function'
    ? (schema.meta() as Metadata | undefined)
    : undefined;
}

type Kinds = {
  object: z.core.$ZodObject;
  array: z.core.$ZodArray;
  record: z.core.$ZodRecord;
  optional: z.core.$ZodOptional;
  lazy: z.core.$ZodLazy;
  union: z.core.$ZodUnion;
  pipe: z.core.$ZodPipe;
};

function isKind<Kind extends keyof Kinds>(schema: Schema, kind: Kind): schema is Kinds[Kind] {
  return schema._zod.def.type === kind;
}

/** A schema with every layer round and beside it: options of a union, the inside of an optional, the start of a pipe. */
function unwrapped(schema: Schema): readonly Schema[] {
  if (isKind(schema, 'optional')) return [schema, ...unwrapped(schema._zod.def.innerType)];
  if (isKind(schema, 'lazy')) return [schema, ...unwrapped(schema._zod.def.getter())];
  if (isKind(schema, 'pipe')) return [schema, ...unwrapped(schema._zod.def.in)];
  if (isKind(schema, 'union')) return [schema, ...schema._zod.def.options.flatMap(unwrapped)];
  return [schema];
}

function inside(schema: Schema, step: string | number): readonly Schema[] {
  return unwrapped(schema).flatMap((layer): readonly Schema[] => {
    if (isKind(layer, 'object')) {
      const shape: Readonly<Record<string, Schema>> = layer._zod.def.shape;
      const entry = Object.hasOwn(shape, step) ? shape[step] : undefined;
      return entry ? [entry] : [];
    }
    if (isKind(layer, 'array')) return typeof step === 'number' ? [layer._zod.def.element] : [];
    return isKind(layer, 'record') ? [layer._zod.def.valueType] : [];
  });
}
