import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { keepReadings } from '../../src/cli/as-installed/store-folder.js';
import { projectRoot } from '../architecture/source-tree.js';
import { fakeEnvironment, runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

/** A folder with the pool sample and its readings. */
function site(): string {
  const folder = temporaryFolder();
  copyFileSync(join(projectRoot, 'samples/pool-hot-water.yaml'), join(folder, 'pump.yaml'));
  copyFileSync(join(projectRoot, 'samples/readings/pool-hot-water.yaml'), join(folder, 'read.yaml'));
  return folder;
}

const change = (folder: string, from: string | RegExp, to: string) => {
  const file = join(folder, 'read.yaml');
  writeFileSync(file, readFileSync(file, 'utf8').replace(from, to));
};

describe('as-installed', () => {
  test('writes the review, its results and the next sheet, and says hold', async () => {
    const folder = site();
    const args = [
      'as-installed',
      'pump.yaml',
      'read.yaml',
      '-o',
      'out.pdf',
      '--results',
      'out.json',
      '--sheet',
      'next.pdf',
    ];
    const { status, output, messages } = await runFake(args, { folder });
    expect(status).toBe(1);
    expect(messages).toBe('');
    expect(output).toMatch(/HWP-1 as installed: HOLD: 4 open items block the start/);
    expect(output.split('\n').every((line) => line.length <= 80)).toBe(true);
    for (const name of ['out.pdf', 'next.pdf'])
      expect(readFileSync(join(folder, name)).subarray(0, 5).toString()).toBe('%PDF-');
    expect(JSON.parse(readFileSync(join(folder, 'out.json'), 'utf8'))).toMatchObject({
      format: 'pipeborne-as-installed/1',
      decision: 'hold',
    });
    const first = readFileSync(join(folder, 'out.pdf'));
    await runFake(args, { folder });
    expect(readFileSync(join(folder, 'out.pdf')).equals(first)).toBe(true);
  });

  test('what cannot be read is told and the rest judged; what is wrong with a file stops it, all at once', async () => {
    const folder = site();
    change(folder, 'electrical.volts-ab: 461', 'electrical.volts-ab: high');
    const { status, messages } = await runFake(['as-installed', 'pump.yaml', 'read.yaml'], { folder });
    expect(status).toBe(1);
    expect(messages).toMatch(
      /warning\[fieldwork\.reading\.not-a-number\].*"high" for "Voltage A to B"[\s\S]*read\.yaml:\d+:\d+/,
    );
    writeFileSync(join(folder, 'a.yaml'), 'format: other/1\n');
    writeFileSync(join(folder, 'b.csv'), 'id\n');
    const broken = await runFake(['as-installed', 'pump.yaml', 'a.yaml', 'b.csv'], { folder });
    expect(broken.status).toBe(2);
    expect(broken.messages).toMatch(/a\.yaml:1[\s\S]*b\.csv:1/);
  });

  test('another revision is refused with both fingerprints', async () => {
    const folder = site();
    change(folder, /^sheet: .*$/m, `sheet: ${'f'.repeat(64)}`);
    const refused = await runFake(['as-installed', 'pump.yaml', 'read.yaml'], { folder });
    expect(refused.status).toBe(2);
    expect(refused.messages).toMatch(/f{64}.*this input is [0-9a-f]{64}/);
    expect(existsSync(join(folder, 'pump-as-installed.pdf'))).toBe(false);
    const taken = await runFake(['as-installed', 'pump.yaml', 'read.yaml', '--other-revision'], { folder });
    expect(taken.status).toBe(1);
    expect(taken.messages).toMatch(/^warning\[fieldwork\.sheet\.other-revision\]/);
  });

  test('a PDF that is no sheet, a file that is not there, a sheet from standard input', async () => {
    const folder = site();
    writeFileSync(join(folder, 'junk.pdf'), '%PDF-1.7\njunk');
    const junk = await runFake(['as-installed', 'pump.yaml', 'junk.pdf'], { folder });
    expect(junk.status).toBe(2);
    expect(junk.messages).toMatch(/fieldwork\.form\./);
    expect((await runFake(['as-installed', 'pump.yaml', 'none.pdf'], { folder })).status).toBe(3);
    expect((await runFake(['as-installed', 'pump.yaml', '-'], { folder })).status).toBe(2);
    expect((await runFake(['as-installed', 'pump.yaml'], { folder })).status).toBe(2);
  });

  test('no input is ever an output', async () => {
    const folder = site();
    const names = async (...more: string[]) =>
      (await runFake(['as-installed', 'pump.yaml', 'read.yaml', ...more], { folder })).messages;
    expect(await names('-o', 'read.yaml')).toMatch(/wrong-ending|over-input/);
    copyFileSync(join(folder, 'read.yaml'), join(folder, 'sheet.pdf'));
    const over = await runFake(['as-installed', 'pump.yaml', 'sheet.pdf', '--sheet', 'sheet.pdf'], {
      folder,
    });
    expect(over.messages).toMatch(/over-input/);
    expect(await names('-o', 'x.pdf', '--sheet', 'x.pdf')).toMatch(/same-output/);
  });
});

describe('the store', () => {
  const keep = async (folder: string) => {
    const { output } = await runFake(
      ['as-installed', 'pump.yaml', 'read.yaml', '--store', 'kept', '--results', 'r.json'],
      { folder },
    );
    return output;
  };

  test('keeps each visit once, and gives a changed one of the same day the next number', async () => {
    const folder = site();
    expect(await keep(folder)).toMatch(/readings kept in kept\/hwp-1-2026-11-05-1\.yaml/);
    const first = readFileSync(join(folder, 'kept/hwp-1-2026-11-05-1.yaml'), 'utf8');
    expect(await keep(folder)).toMatch(/the same readings were kept already/);
    change(folder, 'electrical.volts-ab: 461', 'electrical.volts-ab: 462');
    expect(await keep(folder)).toMatch(/hwp-1-2026-11-05-2\.yaml/);
    expect(readdirSync(join(folder, 'kept')).sort()).toEqual([
      'hwp-1-2026-11-05-1.yaml',
      'hwp-1-2026-11-05-2.yaml',
    ]);
    expect(readFileSync(join(folder, 'kept/hwp-1-2026-11-05-1.yaml'), 'utf8')).toBe(first);
  });

  test('a stored file is a readings file, and stands beside a later visit as its past', async () => {
    const folder = site();
    await keep(folder);
    const again = await runFake(
      ['as-installed', 'pump.yaml', 'kept/hwp-1-2026-11-05-1.yaml', '-o', 'again.pdf'],
      { folder },
    );
    expect(again.status).toBe(1);
    change(folder, 'identity.date: 2026-11-05', 'identity.date: 2027-05-11');
    writeFileSync(join(folder, 'kept/notes.yaml'), 'not: readings\n');
    expect(await keep(folder)).toMatch(/hwp-1-2027-05-11-1\.yaml/);
    const first = readFileSync(join(folder, 'pump-as-installed.pdf'));
    await runFake(['as-installed', 'pump.yaml', 'read.yaml', '-o', 'alone.pdf'], { folder });
    expect(readFileSync(join(folder, 'alone.pdf')).equals(first)).toBe(false);
  });

  test('decides: what an earlier sheet found holds until it is corrected, and what it read is not asked again', async () => {
    const folder = site();
    await keep(folder);
    const text = readFileSync(join(folder, 'read.yaml'), 'utf8');
    const head = text.split('readings:')[0] ?? '';
    writeFileSync(
      join(folder, 'second.yaml'),
      `${head}readings:\n  identity.date: 2026-11-09\n  identity.by: B. Reader\n  supports.h2.nuts: yes\n`,
    );
    const args = ['as-installed', 'pump.yaml', 'second.yaml', '--store', 'kept', '--results', 'second.json'];
    expect((await runFake(args, { folder })).messages).toBe('');
    const results = JSON.parse(readFileSync(join(folder, 'second.json'), 'utf8'));
    const against: readonly string[] = results.decisions.start.against;
    expect(against.some((words) => words.startsWith('suction flange'))).toBe(true);
    expect(against.some((words) => words.includes('lock nuts'))).toBe(false);
    expect(against.some((words) => words.endsWith(': not read'))).toBe(false);
    // The second entry is the second sheet as it was filled in, and names the first.
    const kept = readFileSync(join(folder, 'kept/hwp-1-2026-11-09-1.yaml'), 'utf8');
    expect(kept).not.toContain('electrical.volts-ab');
    const first = readFileSync(join(folder, 'kept/hwp-1-2026-11-05-1.yaml'));
    expect(kept).toContain(createHash('sha256').update(first).digest('hex'));
    expect(kept).toContain('source: second.yaml');
  });

  test('an entry that was changed, or is gone, or is no entry is an error, and nothing is decided', async () => {
    const folder = site();
    await keep(folder);
    change(folder, 'identity.date: 2026-11-05', 'identity.date: 2026-11-09');
    await keep(folder);
    const first = join(folder, 'kept/hwp-1-2026-11-05-1.yaml');
    const whole = readFileSync(first, 'utf8');
    for (const broken of [whole.replace('coupling.guard: yes', 'coupling.guard: no'), 'format: x\n', '']) {
      expect(broken).not.toBe(whole);
      writeFileSync(first, broken);
      const { status, messages } = await runFake(
        ['as-installed', 'pump.yaml', 'read.yaml', '--store', 'kept', '-o', 'new.pdf'],
        { folder },
      );
      expect(messages).toMatch(/fieldwork\.store\.corrupt/);
      expect(status).toBe(2);
      expect(existsSync(join(folder, 'new.pdf'))).toBe(false);
    }
  });

  test('readings without a day are not kept, and nothing is written', async () => {
    const folder = site();
    change(folder, /^ *identity\.date: .*\n/m, '');
    const { status, messages } = await runFake(
      ['as-installed', 'pump.yaml', 'read.yaml', '--store', 'kept'],
      { folder },
    );
    expect(status).toBe(2);
    expect(messages).toMatch(/fieldwork\.store\.no-date/);
    expect(existsSync(join(folder, 'kept'))).toBe(false);
    expect(existsSync(join(folder, 'pump-as-installed.pdf'))).toBe(false);
  });

  test('two runs at once cannot take the same name, and leave no half file', async () => {
    const folder = temporaryFolder();
    const environment = fakeEnvironment({ output: '', messages: '' }, { folder });
    const texts = Array.from({ length: 12 }, (_, index) => `readings: ${index}\n`);
    const kept = await Promise.all(
      texts.map((text) =>
        keepReadings('kept', { name: 'p-2026-01-01', date: '2026-01-01', text }, environment),
      ),
    );
    expect(new Set(kept.map(({ shown }) => shown)).size).toBe(12);
    const files = readdirSync(join(folder, 'kept'));
    expect(files.every((name) => /^p-2026-01-01-\d+\.yaml$/.test(name))).toBe(true);
    expect(files.map((name) => readFileSync(join(folder, 'kept', name), 'utf8')).sort()).toEqual(
      [...texts].sort(),
    );
  });

  test('a folder that cannot be made is trouble with files', async () => {
    const folder = site();
    writeFileSync(join(folder, 'kept'), 'a file');
    const { status } = await runFake(['as-installed', 'pump.yaml', 'read.yaml', '--store', 'kept'], {
      folder,
    });
    expect(status).toBe(3);
  });
});

test('the schemas of readings and of results are printed, one at a time', async () => {
  expect(JSON.parse((await runFake(['schema', '--readings'])).output)).toMatchObject({
    properties: { readings: {} },
  });
  expect(JSON.parse((await runFake(['schema', '--as-installed'])).output)).toMatchObject({
    properties: { decision: {} },
  });
  expect((await runFake(['schema', '--readings', '--results'])).status).toBe(2);
});
