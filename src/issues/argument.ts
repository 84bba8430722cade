/** Arguments of the public functions, which a caller without types may get wrong: told by name, not by a fault deep inside. */
import { EngineError } from './issue.js';

/**
 * Refuses an argument that is not what it should be.
 *
 * @param isRight - whether it is [-]
 * @param argument - its name, with the path of the part that is wrong: `frame.members[2].tube` [-]
 * @param wanted - what should stand there [-]
 * @param value - what stands there [-]
 * @throws EngineError `argument.wrong`; data: `argument`, `wanted`, `found`
 */
export function requireArgument(
  isRight: boolean,
  argument: string,
  wanted: string,
  value: unknown,
): asserts isRight {
  if (!isRight) throw new EngineError('argument.wrong', { argument, wanted, found: kindOf(value) });
}

/** Whether a value is an object with members, and no list. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Refuses what is not an object with these members.
 *
 * @param value - the argument [-]
 * @param argument - its name [-]
 * @param members - names of members that must be there [-]
 * @param wanted - what it should be, and where it comes from [-]
 * @throws EngineError `argument.wrong`
 */
export function requireMembers(
  value: unknown,
  argument: string,
  members: readonly string[],
  wanted: string,
): asserts value is Readonly<Record<string, unknown>> {
  requireArgument(isRecord(value), argument, wanted, value);
  for (const member of members) {
    const part = value[member];
    requireArgument(part !== undefined && part !== null, `${argument}.${member}`, wanted, part);
  }
}

const LONGEST_SHOWN = 40;

/** What a value is, in a word or two, without printing all of it. */
function kindOf(value: unknown): string {
  if (value === null) return 'null';
  if (typeof value === 'string') return value.length > LONGEST_SHOWN ? 'a long text' : `the text "${value}"`;
  if (typeof value === 'number') return `the number ${value}`;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value instanceof Promise) return 'a promise that was not awaited';
  return value === undefined ? 'nothing' : `a value of type ${typeof value}`;
}
