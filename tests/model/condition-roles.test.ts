import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readInstallation } from '../../src/input/read-installation.js';
import {
  type ConditionRole,
  conditionId,
  conditionTitle,
  type HasRole,
  identityOf,
  inPrintedOrder,
  isHypothetical,
  isOccasional,
  isPressurised,
  isReadable,
  isService,
  kindOf,
  ofRole,
  ofRoles,
  roleOfId,
} from '../../src/model/conditions/condition-roles.js';
import { buildFrame } from '../../src/model/frame/build-frame.js';

const named: readonly (readonly [Exclude<ConditionRole, { kind: 'other' }>, string, string])[] = [
  [{ kind: 'empty' }, 'empty', 'empty'],
  [{ kind: 'filled' }, 'filled', 'filled'],
  [{ kind: 'test' }, 'test', 'test'],
  [{ kind: 'running' }, 'running', 'running'],
  [{ kind: 'hot' }, 'hot', 'hot'],
  [{ kind: 'cold' }, 'cold', 'cold'],
  [{ kind: 'pump-out' }, 'pump-out', 'pump removed'],
  [{ kind: 'motor-off' }, 'motor-off', 'motor removed'],
  [{ kind: 'slack', support: 'H3' }, 'slack-H3', 'H3 unloaded'],
  [{ kind: 'slack', support: 'slack-1' }, 'slack-slack-1', 'slack-1 unloaded'],
  [{ kind: 'lateral', towards: 'west' }, 'lateral-west', 'sideways, west'],
  [{ kind: 'start', sense: 'forward' }, 'starting', 'start'],
  [{ kind: 'start', sense: 'reverse' }, 'starting-opposite', 'start, reverse torque'],
];

describe('ids, titles and roles are one fact', () => {
  test.each(named)('%o is %s and prints as %s', (role, id, title) => {
    expect(identityOf(role)).toEqual({ name: id, title, role });
    expect(conditionId(role)).toBe(id);
    expect(roleOfId(id)).toEqual(role);
    expect(conditionTitle(id)).toBe(title);
  });

  test.each(['other', 'slack', 'start', 'lateral', 'lateral-up', 'Filled', 'toString', ''])(
    'no role has the id %j',
    (id) => {
      expect(roleOfId(id)).toEqual({ kind: 'other' });
      expect(conditionTitle(id)).toBe(id);
    },
  );
});

describe('selectors', () => {
  const all = named.map(([role]) => identityOf(role));
  const ids = (wanted: readonly { readonly name: string }[]) => wanted.map(({ name }) => name);

  test('service, pressure, reading of springs, occasions and questions', () => {
    expect(ids(all.filter(isService))).toEqual(['filled', 'running', 'hot', 'cold']);
    expect(ids(all.filter(isPressurised))).toEqual(['filled', 'test', 'running', 'hot', 'cold']);
    expect(ids(all.filter(isReadable))).toEqual(['empty', 'filled', 'running', 'hot', 'cold']);
    expect(ids(all.filter(isOccasional))).toEqual(['lateral-west', 'starting', 'starting-opposite']);
    expect(ids(all.filter(isHypothetical))).toEqual(['slack-H3', 'slack-slack-1']);
  });

  test('pick by kind, in the order asked for', () => {
    expect(ofRole(all, 'start')?.name).toBe('starting');
    expect(ofRole(all, 'other')).toBeUndefined();
    expect(ids(ofRoles(all, ['cold', 'slack', 'hot']))).toEqual(['cold', 'slack-H3', 'slack-slack-1', 'hot']);
  });

  test('printed from the empty line to the extremes, the rest as they come', () => {
    expect(ids(inPrintedOrder([...all].reverse()))).toEqual([
      ...[
        'empty',
        'filled',
        'test',
        'running',
        'hot',
        'cold',
        'starting-opposite',
        'starting',
        'lateral-west',
      ],
      ...['slack-slack-1', 'slack-H3', 'motor-off', 'pump-out'],
    ]);
  });

  test('a condition written by hand stands for nothing, whatever its name, and comes to pass', () => {
    const own: HasRole & { readonly name: string } = { name: 'filled' };
    expect(kindOf(own)).toBe('other');
    expect(ofRole([own], 'filled')).toBeUndefined();
    expect([isService, isPressurised, isReadable, isOccasional, isHypothetical].some((is) => is(own))).toBe(
      false,
    );
    expect(inPrintedOrder([own])).toEqual([own]);
  });
});

test('every condition of an installation carries the role its id was made from, and its title', () => {
  const read = readInstallation(readFileSync('samples/pool-hot-water.yaml', 'utf8'));
  if (!read.ok) throw new Error('the sample cannot be read');
  const { conditions } = buildFrame(read.installation);
  expect(conditions.length).toBeGreaterThan(8);
  for (const { name, role, title } of conditions) {
    expect(role).toEqual(roleOfId(name));
    expect(role?.kind).not.toBe('other');
    expect(title).toBe(conditionTitle(name));
  }
});
