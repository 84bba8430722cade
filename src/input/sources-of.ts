import { type SourceId, sources } from '../sources/index.js';

/**
 * Every source cited anywhere in plain data, in the order met.
 *
 * @param data - plain data with citations in it [-]
 * @returns ids, each once [-]
 */
export function sourcesOf(data: unknown): readonly SourceId[] {
  const found = new Set<SourceId>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('source' in value && 'confidence' in value && isSource(value.source)) found.add(value.source);
    for (const inner of Object.values(value)) visit(inner);
  };
  visit(data);
  return [...found];
}

function isSource(id: unknown): id is SourceId {
  return typeof id === 'string' && Object.hasOwn(sources, id);
}
