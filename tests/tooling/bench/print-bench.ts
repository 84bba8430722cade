/**
 * Printing: pages by second, growth with the rows of a table, size and memory; and the same documents printed by a
 * browser, where there is one, as the comparison. Processor time, which a busy machine falsifies less than a clock,
 * and ratios within one run. `npm run bench`.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import { type Browser, launch } from 'puppeteer-core';
import { renderHtml } from '../../../src/render/html/render-html.js';
import { type PdfOptions, renderPdf } from '../../../src/render/render-pdf.js';
import { findBrowser } from '../../browser/find-browser.js';
import { filledReview, READERS, reviewedSamples } from '../../pages/sample-reviews.js';
import { fonts } from '../../render/specimen.js';
import { builtCommand, ensureBuilt, root } from '../ensure-built.mjs';

const ROUNDS = 7;
const ROWS = [100, 300, 1000, 3000, 10_000];

interface Document {
  readonly what: string;
  readonly markup: string;
  readonly drawings: PdfOptions['drawings'];
}

interface Printed {
  /** Processor time [ms]. */
  readonly time: number;
  readonly pages: number;
  readonly bytes: number;
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(0);

function optionsOf({ drawings }: Document): PdfOptions {
  return {
    fonts,
    drawings,
    page: 'letter',
    head: { left: 'bench', right: '' },
    foot: { left: 'bench', right: '' },
    title: 'bench',
    subject: 'bench',
    date: '2026-01-01',
    language: 'en',
    fingerprint: '00',
    attachments: [],
  };
}

/** Prints a document several times; the first, which warms the compiler up, is left out. */
async function printed(document: Document, rounds = ROUNDS): Promise<Printed> {
  const times: number[] = [];
  let bytes = new Uint8Array();
  for (let i = 0; i <= rounds; i++) {
    const start = processorTime();
    bytes = new Uint8Array(await renderPdf(document.markup, optionsOf(document)));
    if (i > 0) times.push(processorTime() - start);
  }
  const pages = (await PDFDocument.load(bytes)).getPageCount();
  return { time: median(times), pages, bytes: bytes.length };
}

/** Processor time [ms] and largest memory [bytes] of a process and all it started, from the files of Linux. */
function ofFamily(root: number): { readonly time: number; readonly memory: number } {
  const parents = new Map<number, number>();
  const times = new Map<number, number>();
  const memories = new Map<number, number>();
  for (const name of readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))) {
    try {
      const fields = readFileSync(`/proc/${name}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
      const pid = Number(name);
      parents.set(pid, Number(fields[1]));
      // A hundredth of a second each, for itself and for what it waited for.
      times.set(pid, 10 * [11, 12, 13, 14].reduce((sum, i) => sum + Number(fields[i]), 0));
      const peak = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${name}/status`, 'utf8'))?.[1];
      memories.set(pid, 1024 * Number(peak ?? 0));
    } catch {
      // It ended while it was looked at.
    }
  }
  const belongs = (pid: number): boolean => pid === root || (pid > 1 && belongs(parents.get(pid) ?? 0));
  const family = [...parents.keys()].filter(belongs);
  const sum = (of: ReadonlyMap<number, number>): number =>
    family.reduce((all, pid) => all + (of.get(pid) ?? 0), 0);
  return { time: sum(times), memory: sum(memories) };
}

async function browserPrints(browser: Browser, document: Document, folder: string): Promise<Printed> {
  const file = join(folder, 'page.html');
  writeFileSync(
    file,
    renderHtml(document.markup, { drawings: document.drawings, title: 'bench', language: 'en' }),
  );
  const pid = browser.process()?.pid ?? 0;
  const times: number[] = [];
  let bytes = new Uint8Array();
  for (let i = 0; i < 4; i++) {
    const start = ofFamily(pid).time;
    const page = await browser.newPage();
    await page.goto(pathToFileURL(file).href);
    bytes = new Uint8Array(await page.pdf({ format: 'letter', tagged: true, timeout: 120_000 }));
    if (i > 0) times.push(ofFamily(pid).time - start);
    await page.close();
  }
  const pages = (await PDFDocument.load(bytes)).getPageCount();
  return { time: median(times), pages, bytes: bytes.length };
}

function tableOf(rows: number): Document {
  const row = (i: number): string =>
    `<row><cell>straight ${i}</cell><cell>${(i * 7.31) % 900}</cell><cell>${(i % 97) / 8}</cell><cell>catalogue</cell></row>`;
  const body = Array.from({ length: rows }, (_, i) => row(i)).join('');
  const head =
    '<head><row><cell>Part</cell><cell>Load</cell><cell>Length</cell><cell>Origin</cell></row></head>';
  return {
    what: `table of ${rows} rows`,
    markup: `<review title="Rows" language="en"><table columns="left decimal decimal left">${head}${body}</table></review>`,
    drawings: {},
  };
}

const reviews = reviewedSamples().flatMap(({ name, review }) =>
  READERS.map((reader): Document => {
    const { composed, markup } = filledReview(review, reader, review.installation.review.units);
    return { what: `${name}, ${reader}`, markup, drawings: composed.drawings };
  }),
);

const ours = new Map<Document, Printed>();
console.log(`\nprinting, processor time, medians of ${ROUNDS}`);
console.log(
  `${'document'.padEnd(40)} ${'pages'.padStart(6)} ${'ms'.padStart(7)} ${'pages/s'.padStart(8)} ${'kB'.padStart(6)}`,
);
for (const document of reviews) {
  const one = await printed(document);
  ours.set(document, one);
  console.log(
    `${document.what.padEnd(40)} ${String(one.pages).padStart(6)} ${one.time.toFixed(0).padStart(7)} ${((1000 * one.pages) / one.time).toFixed(0).padStart(8)} ${(one.bytes / 1000).toFixed(0).padStart(6)}`,
  );
}
console.log(`largest memory of this process so far ${megabytes(process.resourceUsage().maxRSS * 1024)} MB\n`);

console.log(
  `${'rows'.padStart(8)} ${'pages'.padStart(6)} ${'ms'.padStart(8)} ${'µs/row'.padStart(8)}  growth: time ~ rows^n`,
);
let before: { readonly rows: number; readonly time: number } | undefined;
for (const rows of ROWS) {
  const { time, pages } = await printed(tableOf(rows), 3);
  const growth = before ? Math.log(time / before.time) / Math.log(rows / before.rows) : Number.NaN;
  console.log(
    `${String(rows).padStart(8)} ${String(pages).padStart(6)} ${time.toFixed(0).padStart(8)} ${((1000 * time) / rows).toFixed(0).padStart(8)}  ${before ? `n = ${growth.toFixed(2)}` : ''}`,
  );
  before = { rows, time };
}
console.log(`largest memory of this process ${megabytes(process.resourceUsage().maxRSS * 1024)} MB\n`);

/** Largest memory of a whole review as a user runs it, told by the process itself as it ends. */
function memoryOfReview(sample: string): number {
  const tell =
    'data:text/javascript,process.on("exit",()=>console.error("rss",process.resourceUsage().maxRSS))';
  const out = mkdtempSync(join(tmpdir(), 'pipeborne-memory-'));
  const args = [
    '--import',
    tell,
    builtCommand,
    'review',
    join('samples', `${sample}.yaml`),
    '-o',
    join(out, 'r.pdf'),
  ];
  const { stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  rmSync(out, { recursive: true, force: true });
  return 1024 * Number(/rss (\d+)/.exec(stderr)?.[1]);
}
ensureBuilt();
for (const { name } of reviewedSamples())
  console.log(`largest memory of \`review ${name}\` ${megabytes(memoryOfReview(name))} MB`);
console.log('');

const executablePath = findBrowser();
if (executablePath === undefined) console.log('no browser on the PATH: nothing to compare with');
else {
  const folder = mkdtempSync(join(tmpdir(), 'pipeborne-print-'));
  const browser = await launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    console.log(`the same documents printed by ${await browser.version()}, without its start`);
    console.log(
      `${'document'.padEnd(40)} ${'pages'.padStart(6)} ${'ms'.padStart(7)} ${'kB'.padStart(6)}  time and size over ours`,
    );
    for (const [document, own] of ours) {
      const one = await browserPrints(browser, document, folder);
      console.log(
        `${document.what.padEnd(40)} ${String(one.pages).padStart(6)} ${one.time.toFixed(0).padStart(7)} ${(one.bytes / 1000).toFixed(0).padStart(6)}  ${(one.time / own.time).toFixed(1)} and ${(one.bytes / own.bytes).toFixed(1)}`,
      );
    }
    const { memory } = ofFamily(browser.process()?.pid ?? 0);
    console.log(
      `largest memory of the browser and what it started ${megabytes(memory)} MB, each part at its own largest`,
    );
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
