import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { asInstalled } from '../../src/as-installed/as-installed.js';
import { keptSheet, sheetToKeep } from '../../src/as-installed/kept-sheet.js';
import { isOfInput, partsApart } from '../../src/as-installed/of-input.js';
import { earlierVisit, storedReadings } from '../../src/as-installed/stored-readings.js';
import { type Review, readInstallation, review } from '../../src/index.js';
import { IssuesError } from '../../src/issues/issue.js';
import type { Answers } from '../../src/readings/answers.js';
import { projectRoot } from '../architecture/source-tree.js';
import { answersFor } from './visit.js';

const text = readFileSync(join(projectRoot, 'samples/pool-hot-water.yaml'), 'utf8');

/** The sample with a piece of its text replaced; every piece must be there. */
function written(...pairs: readonly (readonly [string, string])[]): Review {
  let changed = text;
  for (const [from, to] of pairs) {
    if (!changed.includes(from)) throw new Error(`the sample has no "${from}"`);
    changed = changed.replace(from, to);
  }
  const reading = readInstallation(changed);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return review(reading.installation);
}

const now = written();

/** A sheet of a review, as a program writes it. */
function sheetOf(made: Review): Answers {
  const { content } = made.installation;
  if (content === undefined) throw new Error('read from a file, and without content');
  const readings = {
    'identity.date': '2026-11-05',
    'identity.by': 'A. Reader',
    'electrical.volts-ab': '460',
  };
  return { ...answersFor(made, readings), content };
}

function refusal(sheet: Answers): { readonly codes: readonly string[]; readonly parts: unknown } {
  try {
    asInstalled(now, [sheet]);
  } catch (error) {
    if (!(error instanceof IssuesError)) throw error;
    return { codes: error.issues.map(({ code }) => code), parts: error.issues[0]?.data.parts };
  }
  return { codes: [], parts: undefined };
}

describe('what says something of the installation and changes nothing of it', () => {
  test.each([
    ['a comment', '# A heating pump', '# Another word on it.\n# A heating pump'],
    ['a date', 'date: 2026-09-14\n  units', 'date: 2026-10-01\n  units'],
    ['the units of print', 'units: us', 'units: si'],
    [
      'a letterhead',
      '  units: us',
      '  units: us\n  letterhead: {name: Harrow Mechanical, address: [1 Mill Lane]}',
    ],
    ['a note', '  units: us', '  units: us\n  notes: [Seen on site in August.]'],
    ['a revision', 'note: First issue for comment', 'note: First issue'],
    ['the order of keys', '    power: 20 hp\n    speed: 1770 rpm', '    speed: 1770 rpm\n    power: 20 hp'],
    ['a number in other words', 'from-shaft: 15 in', 'from-shaft: 1 ft 3 in'],
  ])('%s does not refuse a sheet', (_what, from, to) => {
    const before = written([from, to]);
    expect(before.installation.fingerprint).not.toBe(now.installation.fingerprint);
    expect(refusal(sheetOf(before))).toEqual({ codes: [], parts: undefined });
  });
});

describe('what changes it', () => {
  test.each([
    ['a weight', 'weight: 290 lb', 'weight: 295 lb', ['motor']],
    ['a hanger', 'mark: H2, rod: 3/4 in', 'mark: H2, rod: 5/8 in', ['H2']],
    ['another hanger', 'mark: H2,', 'mark: H7,', ['H7', 'suction line', 'H2']],
    ['a pressure', 'working: 55 psi', 'working: 60 psi', ['service']],
    ['the pump', 'blades: 6', 'blades: 7', ['pump']],
    ['a beam', 'ceiling: 14 ft', 'ceiling: 15 ft', ['room']],
  ])('%s refuses a sheet, and says by name what differs', (_what, from, to, parts) => {
    const { codes, parts: named } = refusal(sheetOf(written([from, to])));
    expect(codes).toEqual(['fieldwork.sheet.other-revision']);
    expect([...(named as readonly string[])].sort()).toEqual([...parts].sort());
  });

  test('two parts are both named, and --other-revision takes the sheet all the same', () => {
    const sheet = sheetOf(
      written(['weight: 290 lb', 'weight: 295 lb'], ['mark: H2, rod: 3/4', 'mark: H2, rod: 5/8']),
    );
    expect(refusal(sheet).parts).toEqual(['motor', 'H2']);
    const { issues } = asInstalled(now, [sheet], { otherRevision: true });
    expect(issues.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
      'warning fieldwork.sheet.other-revision',
    ]);
  });
});

test('a sheet of the first version, with the fingerprint of the text alone, is read by that', () => {
  const { content: _none, ...first } = sheetOf(now);
  expect(refusal(first).codes).toEqual([]);
  const { content: _other, ...older } = sheetOf(written(['# A heating pump', '# The heating pump']));
  expect(refusal(older)).toEqual({ codes: ['fieldwork.sheet.other-revision'], parts: [] });
});

test('a sheet in a store keeps what it was made from, and so does a file of a visit', () => {
  const before = written(['# A heating pump', '# The heating pump']);
  const entry = sheetToKeep(sheetOf(before), before, []);
  expect(keptSheet(entry.text, 'kept.yaml', now)?.answers.content).toEqual(now.installation.content);
  expect(earlierVisit(entry.text, 'kept.yaml', now)).toMatchObject({ otherRevision: false });
  const visit = storedReadings(asInstalled(before, [sheetOf(before)]));
  expect(earlierVisit(visit.text, 'visit.yaml', now)).toMatchObject({ otherRevision: false });
  const heavier = written(['weight: 290 lb', 'weight: 295 lb']);
  expect(earlierVisit(visit.text, 'visit.yaml', heavier)).toMatchObject({ otherRevision: true });
});

test.each(['', 'ab', 'H2=01234567', 'x'.repeat(300_000)])(
  'a line that is no line of digests belongs to nothing, not even to another such line: %.20s',
  (content) => {
    expect(isOfInput({ content }, { content })).toBe(false);
    expect(partsApart({ content }, { content: `${'ab'.repeat(32)} H2=01234567` })).toEqual([]);
  },
);

test('names with blanks and signs are told as they are', () => {
  const whole = 'ab'.repeat(32);
  const content = `${whole} ${encodeURIComponent('H=2 é%')}=01234567 %E0=01234567`;
  expect(partsApart({ content }, { content: whole })).toEqual(['H=2 é%', '%E0']);
});
