import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { readForm } from '../../src/forms/read-form.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { findBrowser } from '../browser/find-browser.js';
import { temporaryFolder } from '../cli/temporary-folder.js';
import { look, sheet } from '../forms/sheet-fixture.js';
import {
  type Answers,
  answersTo,
  fillByBrowser,
  fillByMutool,
  fillByPdftk,
  fillByQpdf,
  readBytes,
} from './form-programs.js';

/** With `required` a program that is not there fails the tests; otherwise they are skipped and say so. */
const isRequired = process.env.OUTSIDE_FORMS === 'required';

function isThere(program: string): boolean {
  try {
    execFileSync('sh', ['-c', `command -v ${program}`], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

const programs = ['pdftk', 'qpdf', 'mutool', 'pdftocairo', 'pdfunite'].map((name) => ({
  name,
  there: isThere(name),
}));
const missing = (...names: readonly string[]) =>
  programs.filter(({ name, there }) => names.includes(name) && !there).map(({ name }) => name);

test.runIf(isRequired)('every program that fills in forms is there', () => {
  expect(programs.filter(({ there }) => !there)).toEqual([]);
  expect(findBrowser()).toBeDefined();
});

const blank = await fieldSheetPdf(sheet, look);
const answers = answersTo(sheet, (_, i) => `${i},5 mm – β Ж 漢 ü`);

/** A folder with the blank sheet in it. */
function folderWithSheet(): { readonly folder: string; readonly name: string } {
  const folder = temporaryFolder();
  const name = join(folder, 'blank.pdf');
  writeFileSync(name, blank);
  return { folder, name };
}

async function expectRead(file: string, wanted: Answers): Promise<void> {
  const { boxes, issues, fingerprint } = await readForm(readBytes(file), sheet);
  expect(issues).toEqual([]);
  expect(fingerprint).toBe(sheet.fingerprint);
  expect(Object.fromEntries(Object.values(boxes).map(({ id, text }) => [id, text]))).toEqual(wanted);
}

describe('a sheet filled in by programs of others comes back whole', () => {
  describe.skipIf(!isRequired && missing('pdftk', 'qpdf').length > 0)('pdftk', () => {
    test.each([[], ['need_appearances']])('filled in %s', async (...options) => {
      const { folder, name } = folderWithSheet();
      await expectRead(
        fillByPdftk(folder, name, sheet, answers, ...options.filter((one) => one !== undefined)),
        answers,
      );
    });

    test.each([
      ['one object a line', ['--qdf']],
      ['objects packed into streams', ['--object-streams=generate', '--recompress-flate']],
      ['for the web', ['--linearize']],
      ['nothing packed', ['--object-streams=disable', '--stream-data=uncompress']],
    ])('and written anew: %s', async (_, options) => {
      const { folder, name } = folderWithSheet();
      const out = join(folder, 'anew.pdf');
      execFileSync('qpdf', [...options, fillByPdftk(folder, name, sheet, answers), out]);
      await expectRead(out, answers);
    });

    test('flattened: refused, since it holds no readings any more', async () => {
      const { folder, name } = folderWithSheet();
      const flat = fillByPdftk(folder, name, sheet, answers, 'flatten');
      await expect(readForm(readBytes(flat), sheet)).rejects.toMatchObject({
        code: 'fieldwork.form.no-fields',
        data: { isOurs: 'yes' },
      });
    });

    test('with a password: refused', async () => {
      const { folder, name } = folderWithSheet();
      const locked = join(folder, 'locked.pdf');
      execFileSync('qpdf', ['--encrypt', '', 'owner', '256', '--', name, locked]);
      await expect(readForm(readBytes(locked), sheet)).rejects.toMatchObject({
        code: 'fieldwork.form.encrypted',
      });
    });
  });

  test.skipIf(!isRequired && missing('qpdf').length > 0)(
    'qpdf, values put in as JSON, nothing drawn',
    async () => {
      const { folder, name } = folderWithSheet();
      await expectRead(fillByQpdf(folder, name, sheet, answers), answers);
    },
  );

  test.skipIf(!isRequired && missing('mutool').length > 0).each(['incremental', 'garbage,compress'])(
    'mutool, pressing and typing, saved %s',
    async (save) => {
      const { folder, name } = folderWithSheet();
      await expectRead(fillByMutool(folder, name, sheet, answers, save), answers);
    },
  );

  test.skipIf(!isRequired && missing('pdftk', 'pdftocairo').length > 0)(
    'printed to PDF: refused by what is missing',
    async () => {
      const { folder, name } = folderWithSheet();
      const printed = join(folder, 'printed.pdf');
      execFileSync('pdftocairo', ['-pdf', fillByPdftk(folder, name, sheet, answers), printed]);
      await expect(readForm(readBytes(printed), sheet)).rejects.toMatchObject({
        code: 'fieldwork.form.no-fields',
      });
    },
  );

  test.skipIf(!isRequired && missing('pdftk', 'pdfunite').length > 0)(
    'put together with a blank one by a program that loses the groups: texts are found, what is lost is told',
    async () => {
      const { folder, name } = folderWithSheet();
      const both = join(folder, 'both.pdf');
      execFileSync('pdfunite', [fillByPdftk(folder, name, sheet, answers), name, both]);
      const { boxes, issues } = await readForm(readBytes(both), sheet);
      expect(boxes['unit.place']?.text).toBe(answers['unit.place']);
      // Boxes that older sheets do not have are not missed where none of them is found; unread, they hold the start.
      const lost = boxesOf(sheet).filter(
        ({ box }) => box.kind === 'choice' && (box.choices?.length ?? 0) <= 4 && box.since === undefined,
      );
      expect(
        issues.filter(({ code }) => code === 'fieldwork.form.field-missing').map(({ data }) => data.field),
      ).toEqual(lost.map(({ box }) => box.id));
    },
  );

  const browser = findBrowser();
  test.skipIf(!isRequired && browser === undefined)(
    'a browser’s own viewer, by pointer and keys',
    { retry: 2 },
    async () => {
      const { folder, name } = folderWithSheet();
      const pdf = await PDFDocument.load(blank, { updateMetadata: false });
      const page = pdf.getPage(0);
      const middleOf = (id: string) => {
        const [widget] = pdf.getForm().getField(id).acroField.getWidgets();
        const { x = 0, y = 0, width = 0, height = 0 } = widget?.getRectangle() ?? {};
        return { x: x + width / 2, y: page.getHeight() - y - height / 2 };
      };
      const typed = {
        'unit.place': 'Büro β Ж 12',
        'unit.place-not-read': 'kein Zugang',
        'unit.power': '20,5 kW',
      };
      const presses = Object.entries(typed).map(([id, words]) => ({ ...middleOf(id), words }));
      const out = await fillByBrowser(
        browser ?? '',
        folder,
        name,
        [...presses, middleOf('unit.rotation')],
        page.getWidth(),
      );
      const empty = Object.fromEntries(boxesOf(sheet).map(({ box }) => [box.id, '']));
      await expectRead(out, { ...empty, ...typed, 'unit.rotation': 'yes' });
    },
  );
});
