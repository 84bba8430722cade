import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { version } from '../../src/app/version.js';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const sampleNames = readdirSync('samples').filter((name) => name.endsWith('.yaml'));
const sample = (name = sampleNames[0] ?? '') => readFileSync(join('samples', name), 'utf8');

/** A folder with one sample in it as pump.yaml. */
function folderWithPump(): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'pump.yaml'), sample());
  return folder;
}

const verdictStatuses = [0, 1, 4];

test('--version prints the version alone', async () => {
  expect(await runFake(['--version'])).toEqual({ status: 0, output: `${version}\n`, messages: '' });
});

test.each([['--help'], ['review', '--help'], ['check', '--help'], ['schema', '--help'], ['help', 'review']])(
  'the help of "%s %s" fits 80 columns, goes to the output and ends with 0',
  async (...args) => {
    const { status, output, messages } = await runFake(args.filter((arg) => arg !== undefined));
    expect(status).toBe(0);
    expect(messages).toBe('');
    expect(output).toMatch(/^Usage: pipeborne/);
    expect(output).toContain('Examples:');
    for (const line of output.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  },
);

test('help of the program and of what judges says the exit statuses and the caution', async () => {
  for (const args of [['--help'], ['review', '--help'], ['check', '--help']]) {
    const { output } = await runFake(args);
    expect(output).toContain('Exit status:');
    expect(output).toContain('engineer of record');
  }
});

test('without a command the help goes to the messages and the status is 2', async () => {
  const { status, output, messages } = await runFake([]);
  expect({ status, output }).toEqual({ status: 2, output: '' });
  expect(messages).toContain('Usage: pipeborne');
});

test('a near miss of a command or an option is suggested', async () => {
  const command = await runFake(['reviw', 'pump.yaml']);
  expect(command.status).toBe(2);
  expect(command.messages).toContain('did you mean review?');
  const option = await runFake(['review', 'pump.yaml', '--result', 'x.json']);
  expect(option.status).toBe(2);
  expect(option.messages).toContain('did you mean --results?');
});

test('a file without a command is answered with the command', async () => {
  const { status, messages } = await runFake(['pump.yaml']);
  expect(status).toBe(2);
  expect(messages).toContain('pipeborne review pump.yaml');
});

test('a value that is no choice is answered with the choices', async () => {
  const { status, messages } = await runFake(['check', 'pump.yaml', '--units', 'metric']);
  expect(status).toBe(2);
  expect(messages).toContain('us, si');
});

test('no file is an error in the arguments', async () => {
  const { status, messages } = await runFake(['check']);
  expect(status).toBe(2);
  expect(messages).toContain('FILE');
});

test('a missing file ends with 3 and prints nothing on the output', async () => {
  const { status, output, messages } = await runFake(['check', 'none.yaml'], { folder: temporaryFolder() });
  expect({ status, output }).toEqual({ status: 3, output: '' });
  expect(messages).toContain('none.yaml cannot be read: there is no such file or folder');
});

test('an input that cannot be used ends with 2 and says all that is wrong, with places', async () => {
  const folder = temporaryFolder();
  writeFileSync(
    join(folder, 'pump.yaml'),
    sample()
      .replace('from: suction', 'from: suktion')
      .replace(/mount: \w+/, 'mount: floating'),
  );
  const { status, output, messages } = await runFake(['check', 'pump.yaml'], { folder });
  expect({ status, output }).toEqual({ status: 2, output: '' });
  expect(messages).toMatch(/pump\.yaml:\d+:\d+/);
  expect(messages).toContain('suktion');
  expect(messages).toContain('floating');
});

test('check prints verdict, findings, loads and the next step within 80 columns, and writes nothing', async () => {
  const folder = folderWithPump();
  const { status, output } = await runFake(['check', 'pump.yaml'], { folder });
  expect(verdictStatuses).toContain(status);
  expect(output).toContain('pump.yaml');
  expect(output).toMatch(/places judged/);
  expect(output).toContain('pipeborne review pump.yaml');
  for (const line of output.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(readdirSync(folder)).toEqual(['pump.yaml']);
});

test('check reads standard input', async () => {
  const { status, output } = await runFake(['check', '-'], { standardInput: sample() });
  expect(verdictStatuses).toContain(status);
  expect(output).toContain('standard input');
});

const ESCAPE = '\u001B[';

test('colour is for a terminal that has not been asked for none', async () => {
  const folder = folderWithPump();
  const coloured = async (args: readonly string[], environment: Record<string, string> = {}) =>
    (await runFake(['check', 'pump.yaml', ...args], { folder, terminal: true, environment })).output.includes(
      ESCAPE,
    );
  expect(await coloured([])).toBe(true);
  expect(await coloured(['--no-color'])).toBe(false);
  expect(await coloured([], { NO_COLOR: '1' })).toBe(false);
  expect(await coloured([], { TERM: 'dumb' })).toBe(false);
  expect((await runFake(['check', 'pump.yaml'], { folder })).output).not.toContain(ESCAPE);
});

test('check --json prints one results object a file, one a line', async () => {
  const folder = folderWithPump();
  const { output } = await runFake(['check', 'pump.yaml', 'pump.yaml', '--json'], { folder });
  const lines = output.trimEnd().split('\n');
  expect(lines).toHaveLength(2);
  for (const line of lines)
    expect(JSON.parse(line)).toMatchObject({ format: 'pipeborne-results/1', tool: { version } });
});

test('--units changes what is printed and not the verdict', async () => {
  const folder = folderWithPump();
  const us = await runFake(['check', 'pump.yaml', '--units', 'us'], { folder });
  const si = await runFake(['check', 'pump.yaml', '--units', 'si'], { folder });
  expect(us.status).toBe(si.status);
  expect(us.output).toMatch(/\d lb down/);
  expect(si.output).toMatch(/\d k?N down/);
});

test('a file that fails does not keep the others from being done, and the worst status wins', async () => {
  const folder = folderWithPump();
  const { status, output, messages } = await runFake(['check', 'none.yaml', 'pump.yaml'], { folder });
  expect(output).toMatch(/^unreadable +1 none\.yaml$/m);
  expect(status).toBe(3);
  expect(messages).toContain('none.yaml');
  expect(output).toMatch(/ pump\.yaml/);
});

test('review writes what was asked for, says where, and leaves nothing else', async () => {
  const folder = folderWithPump();
  const args = ['review', 'pump.yaml', '-o', 'out/', '--results', 'r.json', '--html', 'page.html'];
  const { status, output, messages } = await runFake(args, { folder });
  expect(messages).not.toContain('error');
  expect(verdictStatuses).toContain(status);
  for (const name of ['out/pump-review.pdf', 'r.json', 'page.html']) expect(output).toContain(name);
  expect(readdirSync(folder).sort()).toEqual(['out', 'page.html', 'pump.yaml', 'r.json']);
  expect(readFileSync(join(folder, 'out/pump-review.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
});

test('the same input gives the same bytes', async () => {
  const folder = folderWithPump();
  await runFake(['review', 'pump.yaml', '-o', 'a.pdf', '--results', 'a.json'], { folder });
  await runFake(['review', 'pump.yaml', '-o', 'b.pdf', '--results', 'b.json'], { folder });
  expect(readFileSync(join(folder, 'a.pdf')).equals(readFileSync(join(folder, 'b.pdf')))).toBe(true);
  expect(readFileSync(join(folder, 'a.json'), 'utf8')).toBe(readFileSync(join(folder, 'b.json'), 'utf8'));
});

test('a review says how sure its verdicts are, unless told not to', async () => {
  const folder = folderWithPump();
  await runFake(['review', 'pump.yaml', '-o', 'a.pdf', '--results', 'a.json', '--html', 'a.html'], {
    folder,
  });
  await runFake(
    ['review', 'pump.yaml', '-o', 'b.pdf', '--results', 'b.json', '--html', 'b.html', '--no-bands'],
    {
      folder,
    },
  );
  const text = (name: string) => readFileSync(join(folder, name), 'utf8');
  expect(text('a.html')).toContain('Sensitivity of results');
  expect(text('b.html')).not.toContain('Sensitivity');
  expect(JSON.parse(text('a.json')).bands.ratios.length).toBeGreaterThan(0);
  expect(JSON.parse(text('b.json')).bands).toBeUndefined();
});

test('a refused input leaves the earlier review as it was', async () => {
  const folder = folderWithPump();
  writeFileSync(join(folder, 'pump-review.pdf'), 'earlier');
  writeFileSync(join(folder, 'pump.yaml'), 'format: something-else');
  const { status } = await runFake(['review', 'pump.yaml'], { folder });
  expect(status).toBe(2);
  expect(readFileSync(join(folder, 'pump-review.pdf'), 'utf8')).toBe('earlier');
});

test('names that cannot be used are refused before anything is read', async () => {
  const folder = folderWithPump();
  const { status, messages } = await runFake(['review', 'none.yaml', '-o', 'pump.yaml'], { folder });
  expect(status).toBe(2);
  expect(messages).toContain('does not end in .pdf');
  expect(messages).not.toContain('none.yaml');
});

test('a firm’s template changes the page, and a broken one is refused with its name', async () => {
  const folder = folderWithPump();
  const own = join(folder, 'own');
  mkdirSync(own);
  const master = readFileSync('templates/review.hbs', 'utf8');
  writeFileSync(
    join(own, 'review.hbs'),
    master.replace('{{#each sections}}', '<p>Harbour Street Engineers</p>{{#each sections}}'),
  );
  const args = ['review', 'pump.yaml', '--templates', 'own', '--html', 'page.html'];
  await runFake(args, { folder });
  expect(readFileSync(join(folder, 'page.html'), 'utf8')).toContain('Harbour Street Engineers');
  writeFileSync(join(own, 'review.hbs'), '<review title="x" language="en"><marquee/></review>');
  const { status, messages } = await runFake(args, { folder });
  expect(status).toBe(2);
  expect(messages).toContain('marquee');
});

test('schema prints JSON Schema, of the input or of the results', async () => {
  const input = await runFake(['schema']);
  const results = await runFake(['schema', '--results']);
  expect(input.status).toBe(0);
  expect(JSON.parse(input.output)).toHaveProperty('$schema');
  expect(JSON.parse(results.output)).toHaveProperty('$schema');
  expect(input.output).not.toBe(results.output);
});
