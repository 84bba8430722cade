/** Fills in a field sheet with programs of others, as a person at a screen or a script of a firm would. */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import puppeteer, { type CDPSession } from 'puppeteer-core';
import { choiceState } from '../../src/render/form/field.js';
import { type Box, boxesOf, type FieldSheet } from '../../src/sheet/sheet.js';

/** What is filled in, by box. */
export type Answers = Readonly<Record<string, string>>;

const isButtons = ({ kind, choices = [] }: Box) => kind === 'choice' && choices.length <= 4;
const stateOf = (box: Box, answer: string) =>
  box.kind === 'tick'
    ? answer === 'yes'
      ? 'Yes'
      : 'Off'
    : choiceState(box.choices ?? [], (box.choices ?? []).indexOf(answer));

/** An answer to every box of a sheet. */
export function answersTo(sheet: FieldSheet, words: (box: Box, index: number) => string): Answers {
  return Object.fromEntries(
    boxesOf(sheet).map(({ box }, i) => {
      const { choices = [] } = box;
      if (box.kind === 'tick') return [box.id, 'yes'];
      return [box.id, box.kind === 'choice' ? (choices[i % choices.length] ?? '') : words(box, i)];
    }),
  );
}

const run = (program: string, ...words: readonly string[]) =>
  execFileSync(program, words, { stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 26 });

const utf16 = (text: string) => {
  const units = Array.from({ length: text.length }, (_, i) => text.charCodeAt(i));
  return `<FEFF${units.map((unit) => unit.toString(16).padStart(4, '0')).join('')}>`;
};

/** pdftk fills from an FDF file. */
export function fillByPdftk(
  folder: string,
  blank: string,
  sheet: FieldSheet,
  answers: Answers,
  ...options: readonly string[]
): string {
  const fields = boxesOf(sheet).map(({ box }) => {
    const answer = answers[box.id] ?? '';
    const value = box.kind === 'tick' || isButtons(box) ? `/${stateOf(box, answer)}` : utf16(answer);
    return `<</T(${box.id})/V${value}>>`;
  });
  const data = join(folder, 'answers.fdf');
  const out = join(folder, `pdftk${options.join('-')}.pdf`);
  writeFileSync(
    data,
    `%FDF-1.2\n1 0 obj<</FDF<</Fields[${fields.join('\n')}]>>>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n`,
  );
  run('pdftk', blank, 'fill_form', data, 'output', out, ...options);
  return out;
}

/** qpdf changes the value of each field object as JSON. */
export function fillByQpdf(folder: string, blank: string, sheet: FieldSheet, answers: Answers): string {
  const told = JSON.parse(run('qpdf', '--json=2', blank).toString('utf8')) as {
    acroform: { fields: readonly { fullname: string; object: string; parent: string | null }[] };
    qpdf: readonly [unknown, Readonly<Record<string, { value: Record<string, unknown> }>>];
  };
  const objects: Record<string, { value: Record<string, unknown> }> = {};
  for (const { box } of boxesOf(sheet)) {
    const answer = answers[box.id] ?? '';
    const pressed = box.kind === 'tick' || isButtons(box);
    const field = told.acroform.fields.find(({ fullname }) => fullname === box.id);
    const object = isButtons(box) ? field?.parent : field?.object;
    if (!object) throw new Error(`qpdf does not list ${box.id}`);
    const known = told.qpdf[1][`obj:${object}`]?.value ?? {};
    objects[`obj:${object}`] = {
      value: { ...known, '/V': pressed ? `/${stateOf(box, answer)}` : `u:${answer}` },
    };
  }
  const data = join(folder, 'answers.json');
  const out = join(folder, 'qpdf.pdf');
  const head = {
    jsonversion: 2,
    pdfversion: '1.7',
    pushedinheritedpageresources: false,
    calledgetallpages: false,
    maxobjectid: 100_000,
  };
  writeFileSync(data, JSON.stringify({ qpdf: [head, objects] }));
  run('qpdf', blank, `--update-from-json=${data}`, out);
  return out;
}

/** mutool goes through the widgets of the pages in order. */
export function fillByMutool(
  folder: string,
  blank: string,
  sheet: FieldSheet,
  answers: Answers,
  save: string,
): string {
  const steps = boxesOf(sheet).flatMap(({ box }) =>
    isButtons(box)
      ? (box.choices ?? []).map((choice) => ({ press: choice === answers[box.id] }))
      : [
          box.kind === 'tick'
            ? { press: answers[box.id] === 'yes' }
            : { words: answers[box.id] ?? '', list: box.kind === 'choice' },
        ],
  );
  const script = join(folder, 'fill.js');
  const out = join(folder, `mutool-${save}.pdf`);
  writeFileSync(
    script,
    `var steps = ${JSON.stringify(steps)}, at = 0, doc = new PDFDocument(scriptArgs[0]);
    for (var i = 0; i < doc.countPages(); ++i) {
      var widgets = doc.loadPage(i).getWidgets();
      for (var k = 0; k < widgets.length; ++k) {
        var widget = widgets[k];
        if (widget.isReadOnly()) continue;
        var step = steps[at++];
        if (step.press !== undefined) { if (step.press) widget.toggle(); }
        else if (step.list) widget.setChoiceValue(step.words);
        else widget.setTextValue(step.words);
        widget.update();
      }
    }
    doc.save(scriptArgs[1], scriptArgs[2]);`,
  );
  run('mutool', 'run', script, blank, out, save);
  return out;
}

/** A browser's own viewer: the pointer goes to the middle of each field and types. */
export async function fillByBrowser(
  program: string,
  folder: string,
  blank: string,
  presses: readonly { readonly x: number; readonly y: number; readonly words?: string }[],
  pageWidth: number,
): Promise<string> {
  const browser = await puppeteer.launch({
    executablePath: program,
    args: ['--no-sandbox', '--disable-gpu'],
    headless: true,
    defaultViewport: { width: 1100, height: 1400 },
  });
  try {
    const tab = await browser.newPage();
    await tab.goto(`file://${blank}#toolbar=0&navpanes=0&view=FitH`);
    const viewer = await viewerOf(browser);
    const frame = await placeOfPage(viewer);
    const scale = frame.width / pageWidth;
    for (const { x, y, words } of presses) {
      await tab.mouse.click(frame.left + x * scale, frame.top + y * scale);
      await pause(200);
      if (words !== undefined) await tab.keyboard.type(words);
    }
    // The viewer is a process of its own: it needs a moment to take the last press in.
    await tab.keyboard.press('Tab');
    await pause(500);
    const saved = await evaluate(
      viewer,
      `const data = await viewer.currentController.save('EDITED');
       let text = ''; for (const byte of new Uint8Array(data.dataToSave)) text += String.fromCharCode(byte);
       return btoa(text);`,
    );
    const out = join(folder, 'browser.pdf');
    writeFileSync(out, Buffer.from(String(saved), 'base64'));
    return out;
  } finally {
    await browser.close();
  }
}

async function viewerOf(browser: Awaited<ReturnType<typeof puppeteer.launch>>): Promise<CDPSession> {
  const target = await browser.waitForTarget((one) => /^chrome-extension:.*index\.html$/.test(one.url()), {
    timeout: 30_000,
  });
  return target.createCDPSession();
}

async function evaluate(viewer: CDPSession, body: string): Promise<unknown> {
  const expression = `(async () => { const viewer = document.querySelector('pdf-viewer'); ${body} })()`;
  const { result, exceptionDetails } = await viewer.send('Runtime.evaluate', {
    expression,
    awaitPromise: true,
    returnByValue: true,
  });
  if (exceptionDetails) throw new Error(exceptionDetails.text);
  return result.value;
}

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Polls of the place of page one that must agree: while the sheet is still coming in, it moves. */
const CALM = 8;

/** Where page one stands in the window, once it is loaded. */
async function placeOfPage(viewer: CDPSession): Promise<{ left: number; top: number; width: number }> {
  let last = '';
  for (let tries = 0, calm = 0; tries < 300; tries++) {
    const place = await evaluate(
      viewer,
      `const rect = viewer.viewport.getPageScreenRect(0);
       return rect.width > 100 ? { left: rect.x, top: rect.y, width: rect.width } : null;`,
    ).catch(() => null);
    calm = place && JSON.stringify(place) === last ? calm + 1 : 0;
    last = JSON.stringify(place);
    if (calm >= CALM) return place as { left: number; top: number; width: number };
    await pause(200);
  }
  throw new Error('the viewer did not open the sheet');
}

export const readBytes = (name: string): Uint8Array => new Uint8Array(readFileSync(name));
