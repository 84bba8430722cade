import { expect, test } from 'vitest';
import { installationJsonSchema } from '../../src/index.js';
import { runFake } from './fake-environment.js';

test('help input says every key of the schema, within 80 columns, and ends with 0', async () => {
  const { status, output, messages } = await runFake(['help', 'input']);
  expect({ status, messages }).toEqual({ status: 0, messages: '' });
  for (const line of output.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  const keys = new Set<string>();
  const gather = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    for (const key of Object.keys((node as { properties?: object }).properties ?? {})) keys.add(key);
    for (const inner of Object.values(node)) gather(inner);
  };
  gather(installationJsonSchema());
  expect(keys.size).toBeGreaterThan(150);
  const said = new Set(
    [...output.matchAll(/^ *([a-z0-9][\w -]*?)(?: \(needed\))?$/gm)].map(([, key]) => key),
  );
  expect([...keys].filter((key) => !said.has(key))).toEqual([]);
});

test.each([
  ['supports', ['hanger', 'spring-hanger', 'stand', 'anchor'], 'centre-of-gravity'],
  ['pump.motor', ['motor', 'power (needed)', 'soft starter'], 'piping.lines'],
  ['limits', ['nozzle-loads', 'first-support'], 'walk'],
])('help input %s is that part alone', async (part, wanted, absent) => {
  const { status, output } = await runFake(['help', 'input', part]);
  expect(status).toBe(0);
  for (const words of wanted) expect(output).toContain(words);
  expect(output).not.toContain(absent);
});

test('what is no part and no command is refused', async () => {
  expect((await runFake(['help', 'input', 'hangar'])).status).toBe(2);
  const { status, messages } = await runFake(['help', 'chek']);
  expect(status).toBe(2);
  expect(messages).toContain('check');
});

test('help without a topic is that of the program', async () => {
  const { output } = await runFake(['help']);
  expect(output).toBe((await runFake(['--help'])).output);
});
