import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runFake } from '../cli/fake-environment.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const samples = readdirSync(new URL('../../samples', import.meta.url)).filter((name) =>
  name.endsWith('.yaml'),
);
const cases = samples.flatMap((sample) => [
  { sample, units: 'us' },
  { sample, units: 'si' },
]);

/** Our own earlier output: it shows every change of a printed number, and proves none of them. */
test.each(cases)(
  '$sample is checked in $units units with the text beside this test',
  async ({ sample, units }) => {
    const args = ['check', `samples/${sample}`, '--units', units];
    const { status, output, messages } = await runFake(args, { folder: root });
    const text = `$ pipeborne ${args.join(' ')}\n${output}${messages}exit status ${status}\n`;
    await expect(text).toMatchFileSnapshot(`expected/${sample.replace('.yaml', '')}.${units}.txt`);
  },
);

test('one sample exceeds something, and one has something that cannot be told', async () => {
  const outputs = await Promise.all(
    samples.map(async (sample) => (await runFake(['check', `samples/${sample}`], { folder: root })).output),
  );
  expect(outputs.some((output) => output.includes(' exceed'))).toBe(true);
  expect(outputs.some((output) => output.includes('cannot tell'))).toBe(true);
});
