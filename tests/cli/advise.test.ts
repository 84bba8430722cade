import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { changeKinds, usualEffort } from '../../src/app/advise.js';
import { adviseCommand } from '../../src/cli/advise/advise-command.js';
import { lineDifference } from '../../src/cli/compare/line-difference.js';
import { changed, fileText } from '../input/sample-text.js';
import { fakeEnvironment, runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const pool = fileText('../../samples/pool-hot-water.yaml');
const thinRod = changed(pool, ['{mark: H3, rod: 3/4 in', '{mark: H3, rod: 1/2 in']);

function folderWith(text: string): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'pump.yaml'), text);
  return folder;
}

test('the changed file gives exactly the findings promised', async () => {
  const folder = folderWith(thinRod);
  const run = await runFake(['advise', 'pump.yaml', '--write', 'changed.yaml', '--json'], { folder });
  expect(run.status).toBe(0);
  const promised = JSON.parse(run.output);
  expect(promised.format).toBe('pipeborne-advice/1');
  const [first] = promised.alternatives;
  const checked = await runFake(['check', 'changed.yaml', '--json'], { folder });
  const found = JSON.parse(checked.output);
  expect(found.verdict).toBe(first.verdict);
  const told = (finding: Record<string, unknown>) =>
    [finding.check, finding.at, finding.condition, finding.verdict, finding.ratio].join(' | ');
  const after = first.findings.flatMap((pair: { after?: Record<string, unknown> }) => pair.after ?? []);
  expect(after.map(told).sort()).toEqual(found.findings.map(told).sort());
  expect(readFileSync(join(folder, 'changed.yaml'), 'utf8')).toBe(
    changed(thinRod, ['{mark: H3, rod: 1/2 in', '{mark: H3, rod: 5/8 in']),
  );
});

test('the picture fits eighty columns, says what to do, what to heed and what differs', async () => {
  const run = await runFake(['advise', 'pump.yaml'], { folder: folderWith(thinRod) });
  expect(run.status).toBe(0);
  expect(run.messages).toBe('');
  expect(run.output).toContain('swap the rod of H3, 1/2 in, for 5/8 in');
  expect(run.output).toContain('lock out the pump');
  expect(run.output).toContain('engineer of record');
  expect(run.output).toMatch(/^-.*mark: H3, rod: 1\/2 in/m);
  expect(run.output).toMatch(/^\+.*mark: H3, rod: 5\/8 in/m);
  const prose = run.output.split('\n').filter((line) => !/^[-+ ] {4}|^(---|\+\+\+|@@)/.test(line));
  for (const line of prose) expect(line.length, line).toBeLessThanOrEqual(80);
});

test('the page names the file without its folder, and is the same from wherever it is written', async () => {
  const folder = folderWith(thinRod);
  const advise = (file: string, output: string) => runFake(['advise', file, '-o', output], { folder });
  expect((await advise('pump.yaml', 'a.pdf')).messages).toBe('');
  expect((await advise(join(folder, 'pump.yaml'), 'b.pdf')).messages).toBe('');
  const [a, b] = ['a.pdf', 'b.pdf'].map((name) => readFileSync(join(folder, name)));
  expect(a?.equals(b as Uint8Array)).toBe(true);
});

test('progress is shown to a person at a terminal only, and is gone in the end', async () => {
  const run = await runFake(['advise', 'pump.yaml', '--no-color'], {
    folder: folderWith(thinRod),
    terminal: true,
  });
  expect(run.messages).toMatch(/\r\d+ trials, .*Ctrl-C/);
  expect(run.messages.endsWith(`\r${' '.repeat(79)}\r`)).toBe(true);
});

test('an interrupt ends the search with the best so far', async () => {
  const said = { output: '', messages: '' };
  const environment = {
    ...fakeEnvironment(said, { folder: folderWith(thinRod) }),
    onInterrupt: (handle: () => void) => {
      handle();
      return () => {};
    },
  };
  const options = { color: false, alternative: 1, most: 5, together: 4, trials: 3000 };
  const status = await adviseCommand('pump.yaml', options, environment);
  expect(said.messages).toContain('stopped after 64 trials: this is the best so far');
  expect(said.output).toContain('swap the rod of H3');
  expect(status).toBe(0);
});

test('a file that meets needs nothing, and nothing is written', async () => {
  const folder = folderWith(pool);
  const run = await runFake(['advise', 'pump.yaml', '--write', 'changed.yaml'], { folder });
  expect(run.status).toBe(0);
  expect(run.output).toContain('nothing needs to be changed');
  expect(run.messages).toContain('advise.nothing-to-write');
  expect(() => readFileSync(join(folder, 'changed.yaml'))).toThrow();
});

test('what no support reaches leaves the status of the verdict', async () => {
  const fast = changed(pool, ['suction: 8 ft/s', 'suction: 4 ft/s']);
  const run = await runFake(['advise', 'pump.yaml'], { folder: folderWith(fast) });
  expect(run.status).toBe(1);
  expect(run.output).toContain('a larger suction pipe, or less');
});

test.each([
  [['--write', 'pump.yaml'], 'cli.arguments.over-input'],
  [['--write', 'changed.txt'], 'cli.arguments.wrong-ending'],
  [['--write', 'changed.json'], 'cli.arguments.wrong-ending'],
  [['--keep', 'H77'], 'advise.unknown-mark'],
  [['--effort', 'add-hangar=2'], 'advise.effort-unusable'],
  [['--effort', 'add-hanger=0'], 'advise.effort-unusable'],
  [['--alternative', '9'], 'advise.no-such-alternative'],
  [['--trials', 'many'], 'cli.arguments.unusable'],
  [['--without', 'paint'], 'cli.arguments.unusable'],
])('%j is refused', async (args, code) => {
  const run = await runFake(['advise', 'pump.yaml', ...args], { folder: folderWith(pool) });
  expect(run.messages).toContain(code);
  expect(run.status).toBe(2);
  expect(run.output).toBe('');
});

test('a file that cannot be read is told with its name, line and column', async () => {
  const folder = folderWith(changed(pool, ['rod: 3/4 in', 'rodd: 3/4 in']));
  const run = await runFake(['advise', 'pump.yaml'], { folder });
  expect(run.status).toBe(2);
  expect(run.messages).toMatch(/at pump\.yaml:\d+:\d+ piping/);
});

test('help gives every kind of change with its usual effort', async () => {
  const { output } = await runFake(['advise', '--help']);
  for (const kind of changeKinds) {
    expect(output, kind).toMatch(new RegExp(`${kind} +${String(usualEffort[kind].base)}\\b`));
  }
});

test('a difference shows what goes and what comes, with the lines round it', () => {
  const before = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].join('\n');
  const after = ['a', 'b', 'c', 'D', 'e', 'f', 'g', 'new', 'h'].join('\n');
  expect(lineDifference(before, after, { before: 'x', after: 'y' })).toEqual([
    '--- x',
    '+++ y',
    '@@ -2,7 +2,8 @@',
    ' b',
    ' c',
    '-d',
    '+D',
    ' e',
    ' f',
    ' g',
    '+new',
    ' h',
  ]);
  expect(lineDifference(before, before, { before: 'x', after: 'y' })).toEqual([]);
});
