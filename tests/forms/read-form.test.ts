import fc from 'fast-check';
import { PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { readForm } from '../../src/forms/read-form.js';
import { choiceState } from '../../src/render/form/field.js';
import { type Box, boxesOf } from '../../src/sheet/sheet.js';
import { pdfOf } from './hostile-files.js';
import { look, sheet } from './sheet-fixture.js';

const blank = await fieldSheetPdf(sheet, look);
const boxes = boxesOf(sheet).map(({ box }) => box);
const isList = ({ choices = [] }: Box) => choices.length > 4;

/** The sheet with its fields filled in, by another library's writer. */
async function filled(
  values: Readonly<Record<string, string>>,
  options: { readonly objectStreams: boolean } = { objectStreams: true },
): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(blank, { updateMetadata: false });
  for (const box of boxes) {
    const value = values[box.id];
    if (value === undefined) continue;
    const { dict } = pdf.getForm().getField(box.id).acroField;
    if (box.kind === 'tick') dict.set(PDFName.of('V'), PDFName.of(value === '' ? 'Off' : 'Yes'));
    else if (box.kind === 'choice' && !isList(box)) {
      const state = value === '' ? 'Off' : choiceState(box.choices ?? [], (box.choices ?? []).indexOf(value));
      dict.set(PDFName.of('V'), PDFName.of(state));
    } else dict.set(PDFName.of('V'), PDFHexString.fromText(value));
  }
  return pdf.save({ useObjectStreams: options.objectStreams, updateFieldAppearances: false });
}

describe('a sheet comes back as it was filled in', () => {
  test('a blank one has every box, empty, on its page, with nothing to complain of', async () => {
    const reading = await readForm(blank, sheet);
    expect(reading.issues).toEqual([]);
    expect(Object.keys(reading.boxes).sort()).toEqual(boxes.map(({ id }) => id).sort());
    for (const { text, page, field, id } of Object.values(reading.boxes)) {
      expect(text).toBe('');
      expect(page).toBeGreaterThan(0);
      expect(field).toBe(id);
    }
    expect(reading).toMatchObject({ fingerprint: sheet.fingerprint, mark: 'HWP-1', revision: 'B' });
    expect(reading.boxes['unit.place']?.page).toBe(1);
    expect(reading.boxes['sign-off.agent']?.page).toBeGreaterThan(2);
  });

  /** What people type: numbers their way, words in their letters. Line ends come back as line feeds. */
  const typed = fc.oneof(
    fc.constantFrom(
      '3,1 mm',
      '12 ft 6-1/2 in',
      'N/A – kein Zugang',
      '½ ″ ± 0.25',
      '1e3',
      '(-5)',
      '\\n',
      '<<>>',
      '%PDF',
      'ü\u0308',
    ),
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.string({ unit: 'grapheme', maxLength: 40 }),
    fc.constantFrom('манометр 4', '压力表', 'مقياس', 'θερμό', '😀'),
  );
  const isCarried = (text: string) =>
    ![...text].some((sign) => /[\p{Cc}\p{Cs}\ufeff\ufffe]/u.test(sign) && sign !== '\n');

  test('whatever is typed into the texts, in whatever letters', async () => {
    const texts = boxes.filter(({ kind }) => !['tick', 'choice'].includes(kind));
    await fc.assert(
      fc.asyncProperty(
        fc.array(typed.filter(isCarried), { minLength: 12, maxLength: 12 }),
        fc.boolean(),
        async (words, objectStreams) => {
          const values = Object.fromEntries(texts.map(({ id }, i) => [id, words[i % words.length] ?? '']));
          const reading = await readForm(await filled(values, { objectStreams }), sheet);
          expect(reading.issues).toEqual([]);
          for (const { id } of texts) expect(reading.boxes[id]?.text).toBe(values[id]);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('whatever is ticked and chosen', async () => {
    const pressed = boxes.filter(({ kind }) => ['tick', 'choice'].includes(kind));
    const answers = fc.tuple(
      ...pressed.map((box) => fc.constantFrom('', ...(box.kind === 'tick' ? ['yes'] : (box.choices ?? [])))),
    );
    await fc.assert(
      fc.asyncProperty(answers, async (chosen) => {
        const values = Object.fromEntries(pressed.map(({ id }, i) => [id, chosen[i] ?? '']));
        const reading = await readForm(await filled(values), sheet);
        expect(reading.issues).toEqual([]);
        for (const { id } of pressed) expect(reading.boxes[id]?.text).toBe(values[id]);
      }),
      { numRuns: 25 },
    );
  });
});

/** A file with one page and the given fields; objects from 5 on are free. */
const formOf = (fields: string, ...objects: readonly string[]) =>
  pdfOf(
    '<</Type/Catalog/Pages 2 0 R/AcroForm 3 0 R>>',
    '<</Type/Pages/Count 1/Kids[4 0 R]>>',
    `<</Fields[${fields}]>>`,
    '<</Type/Page/Parent 2 0 R/Annots[5 0 R]>>',
    ...objects,
  );

const textOf = async (bytes: Uint8Array, id = 'unit.place') => {
  const { boxes: read, issues } = await readForm(bytes, sheet);
  const own = issues.filter(
    ({ code }) => code !== 'fieldwork.form.field-missing' && code !== 'fieldwork.form.more',
  );
  return {
    text: read[id]?.text,
    issues: own.map(({ code, data }) => [code.replace('fieldwork.form.', ''), data.page]),
  };
};

describe('what stands in a field is read however a viewer wrote it', () => {
  const place = (rest: string) => formOf('5 0 R', `<</T(unit.place)/FT/Tx/Subtype/Widget ${rest}>>`);

  test.each([
    ['bytes of PDF’s own encoding', '/V(\\215caf\\351\\216 \\240 \\204)', '“café” € —'],
    ['octal, brackets and a broken line', '/V(a\\(b\\) (c) \\\nd\\053)', 'a(b) (c) d+'],
    ['UTF-16', '/V<FEFF041604380438>', 'Жии'],
    ['UTF-16, low byte first', '/V<FFFE16043804>', 'Жи'],
    ['UTF-8', '/V<EFBBBFD0966F>', 'Жo'],
    ['marks of language left out', '/V<FEFF001B0065006E001B0061>', 'a'],
    ['a name', '/V/N#2FA', 'N/A'],
    ['a number', '/V 12.5', '12.5'],
    ['line ends of every kind', '/V(a\\rb\\r\\nc\\nd)', 'a\nb\nc\nd'],
    ['nulls behind', '/V(a\\000\\000)', 'a'],
    [
      'rich text and nothing else',
      '/RV(<?xml version="1.0"?><body><p>one &amp; two</p><p>3</p></body>)',
      'one & two\n3',
    ],
    ['plain text before rich', '/V(plain)/RV(<body><p>rich</p></body>)', 'plain'],
    ['nothing', '', ''],
    ['null', '/V null', ''],
  ])('%s', async (_, rest, expected) => {
    const { text, issues } = await textOf(place(rest));
    expect(text).toBe(expected);
    expect(issues).toEqual([]);
  });

  test('a stream of text', async () => {
    const bytes = formOf(
      '5 0 R',
      '<</T(unit.place)/FT/Tx/V 6 0 R>>',
      '<</Length 5>>stream\nhello\nendstream',
    );
    expect((await textOf(bytes)).text).toBe('hello');
  });

  test('type and value handed down from a group', async () => {
    const bytes = formOf(
      '6 0 R',
      '<</T(place)/Parent 6 0 R/Subtype/Widget>>',
      '<</T(unit)/FT/Tx/V(from above)/Kids[5 0 R]>>',
    );
    expect(await textOf(bytes)).toEqual({ text: 'from above', issues: [] });
  });

  test('what was appended last counts', async () => {
    const first = place('/V(old)');
    const appended =
      '5 0 obj<</T(unit.place)/FT/Tx/V(new)>>endobj\ntrailer<</Root 1 0 R/Prev 9>>\nstartxref\n0\n%%EOF\n';
    const bytes = new Uint8Array([...first, ...new TextEncoder().encode(appended)]);
    expect((await textOf(bytes)).text).toBe('new');
  });

  test('half of what was appended is refused, not passed over', async () => {
    const first = place('/V(old)');
    const appended = '5 0 obj<</T(unit.place)/FT/Tx/V(new)>>endobj\n';
    await expect(
      readForm(new Uint8Array([...first, ...new TextEncoder().encode(appended)]), sheet),
    ).rejects.toMatchObject({ code: 'fieldwork.form.cut-off' });
  });

  test.each([
    ['the name of its state', '/V/Yes', 'yes'],
    ['a text', '/V(Yes)', 'yes'],
    ['truth', '/V true', 'yes'],
    ['the state of the widget alone', '/AS/Yes', 'yes'],
    ['a state of its own', '/V/Checked/AP<</N<</Checked 9 0 R/Off 9 0 R>>>>', 'yes'],
    ['off', '/V/Off', ''],
    ['nothing', '', ''],
  ])('a tick as %s', async (_, rest, expected) => {
    const bytes = formOf('5 0 R', `<</T(unit.rotation)/FT/Btn/Subtype/Widget ${rest}>>`);
    expect(await textOf(bytes, 'unit.rotation')).toEqual({ text: expected, issues: [] });
  });

  const rod = (rest: string, states: readonly string[]) =>
    formOf(
      '6 0 R',
      '<</Type/Dummy>>',
      `<</T(supports.H1.rod)/FT/Btn/Ff 32768 ${rest}/Kids[${states.map((_, i) => `${i + 7} 0 R`).join(' ')}]>>`,
      ...states.map(
        (state) => `<</Subtype/Widget/Parent 6 0 R/P 4 0 R/AP<</N<</${state} 5 0 R/Off 5 0 R>>>>>>`,
      ),
    );

  test.each([
    ['the words of the choice', '/V/loose', ['tight', 'loose', 'leaning'], 'loose'],
    ['a text', '/V(loose)', ['tight', 'loose', 'leaning'], 'loose'],
    ['the number in a list', '/V/1/Opt[(tight)(loose)(leaning)]', ['0', '1', '2'], 'loose'],
    ['the number of a button', '/V/1', ['0', '1', '2'], 'loose'],
    ['off', '/V/Off', ['tight', 'loose', 'leaning'], ''],
  ])('a choice as %s', async (_, rest, states, expected) => {
    expect(await textOf(rod(rest, states), 'supports.H1.rod')).toEqual({ text: expected, issues: [] });
  });
});

describe('what cannot be read is told with field and page, and not guessed', () => {
  const one = (name: string, rest: string) => formOf('5 0 R', `<</T(${name})/Subtype/Widget ${rest}>>`);

  test.each([
    ['a list where words should be', one('unit.place', '/FT/Tx/V[(a)(b)]'), 'unit.place', 'unreadable'],
    ['a button where words should be', one('unit.place', '/FT/Btn/V/Yes'), 'unit.place', 'wrong-type'],
    ['words where a tick should be', one('unit.rotation', '/FT/Tx/V(yes)'), 'unit.rotation', 'wrong-type'],
    [
      'a tick in a state nobody knows',
      one('unit.rotation', '/FT/Btn/V/Perhaps'),
      'unit.rotation',
      'unreadable',
    ],
    [
      'an answer that is none of the choices',
      one('unit.state', '/FT/Ch/V(on fire)'),
      'unit.state',
      'wrong-choice',
    ],
    ['two answers at once', one('unit.state', '/FT/Ch/V[(running)(empty)]'), 'unit.state', 'unreadable'],
    ['a novel', one('unit.place', `/FT/Tx/V(${'x'.repeat(30_000)})`), 'unit.place', 'unreadable'],
  ])('%s', async (_, bytes, id, code) => {
    const { text, issues } = await textOf(bytes, id);
    expect(text).toBeUndefined();
    expect(issues).toEqual([[code, 1]]);
  });

  test('buttons that contradict their field', async () => {
    const bytes = formOf(
      '6 0 R',
      '<</Subtype/Widget/Parent 6 0 R/AS/tight/AP<</N<</tight 9 0 R>>>>>>',
      '<</T(supports.H1.rod)/FT/Btn/V/loose/Kids[5 0 R]>>',
    );
    expect(await textOf(bytes, 'supports.H1.rod')).toEqual({ text: undefined, issues: [['unreadable', 1]] });
  });

  test('a field of no box, and a script', async () => {
    const bytes = formOf(
      '5 0 R 6 0 R',
      '<</T(unit.place)/FT/Tx/V(x)/AA<</K<</S/JavaScript/JS(app.alert\\(1\\))>>>>>>',
      '<</T(surname)/FT/Tx/V(y)>>',
    );
    const { issues, text } = await textOf(bytes);
    expect(text).toBe('x');
    expect(issues.map(([code]) => code).sort()).toEqual(['field-unknown', 'script-ignored']);
  });

  test('every box that is missing is told, and those past twenty are counted', async () => {
    const { issues } = await readForm(formOf('5 0 R', '<</T(unit.place)/FT/Tx>>'), sheet);
    expect(issues).toHaveLength(21);
    expect(issues.at(-1)).toMatchObject({
      code: 'fieldwork.form.more',
      severity: 'error',
      // Boxes that came with a later version are not missed on a sheet that has none of them.
      data: { count: boxes.filter(({ since }) => since === undefined).length - 1 - 20 },
    });
  });
});

describe('fields that a program renamed are found again', () => {
  const two = (a: string, b: string) => formOf('5 0 R 6 0 R', `<</FT/Tx ${a}>>`, `<</FT/Tx ${b}>>`);

  test.each([
    ['a number behind a sign', '/T(unit.place#1)/V(x)', '/T(z)', 'x'],
    ['a number in brackets', '/T(unit[0].place[0])/V(x)', '/T(z)', 'x'],
    ['words before it', '/T(copy.unit.place)/V(x)', '/T(z)', 'x'],
    ['its groups lost, its given name kept', '/T(place)/TM(unit.place)/V(x)', '/T(z)', 'x'],
    ['twice, once empty', '/T(unit.place)/V(x)', '/T(unit.place#0)/V()', 'x'],
    ['twice, alike', '/T(unit.place)/V(x)', '/T(unit.place#0)/V( x)', 'x'],
  ])('%s', async (_, a, b, expected) => {
    const { text, issues } = await textOf(two(a, b));
    expect(text).toBe(expected);
    expect(issues.filter(([code]) => code !== 'field-unknown')).toEqual([]);
  });

  test('twice with different readings: neither is taken', async () => {
    const { text, issues } = await textOf(two('/T(unit.place)/V(x)', '/T(unit.place#0)/V(y)'));
    expect(text).toBeUndefined();
    expect(issues.map(([code]) => code)).toEqual(['field-twice']);
  });

  test('a widget that no list of fields leads to', async () => {
    const bytes = formOf('', '<</Subtype/Widget/T(place)/Parent 6 0 R/FT/Tx/V(x)>>', '<</T(unit)>>');
    expect(await textOf(bytes)).toEqual({ text: 'x', issues: [] });
  });
});

test('the fingerprint is found among the keywords when the hidden fields are gone', async () => {
  const pdf = await PDFDocument.load(blank, { updateMetadata: false });
  const form = pdf.getForm();
  for (const word of ['kind', 'fingerprint', 'mark', 'revision'])
    form.getTextField(`about-this-sheet.${word}`).acroField.dict.set(PDFName.of('V'), PDFString.of(''));
  const reading = await readForm(await pdf.save({ updateFieldAppearances: false }), sheet);
  expect(reading.fingerprint).toBe(sheet.fingerprint);
  expect(reading.mark).toBeUndefined();
});

test('a sheet of another revision says whose it is', async () => {
  const other = { ...sheet, fingerprint: 'ab'.repeat(32), revision: 'A' };
  const reading = await readForm(await fieldSheetPdf(other, look), sheet);
  expect(reading).toMatchObject({ fingerprint: other.fingerprint, revision: 'A', issues: [] });
});
