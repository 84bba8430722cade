/**
 * Reporter of the published checks: prints every comparison, and keeps the table of the README, which has one row a
 * publication: how many values were compared, and the one that differs most. ACCEPT_VALIDATION_TABLE=yes writes it.
 * What a test compared without success, to show that it can fail, is left out.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Reporter, TestCase, TestModule } from 'vitest/node';
import type { Comparison } from './record-comparison.js';

const README = fileURLToPath(new URL('../../README.md', import.meta.url));
const BEGIN = '<!-- validation table: begin -->';
const END = '<!-- validation table: end -->';

interface Row {
  readonly publication: string;
  readonly quantity: string;
  readonly printed: string;
  readonly ours: string;
  /** Ours over the printed one, less 1 [-]; undefined where 0 is printed. */
  readonly difference: number | undefined;
}

export default class ValidationTable implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const rows = [...modules].sort((a, b) => (a.moduleId < b.moduleId ? -1 : 1)).flatMap(rowsOf);
    process.stdout.write(`\n${tableOf(rows)}\n${rows.length} printed values compared\n`);
    const readme = readFileSync(README, 'utf8');
    const accepted = withTable(readme, summaryOf(rows));
    if (accepted === readme) return;
    if (process.env.ACCEPT_VALIDATION_TABLE === 'yes') writeFileSync(README, accepted);
    else
      process.stdout.write(
        'The table in README.md differs; `npm run validation:accept` writes this one into it.\n',
      );
  }
}

function rowsOf(module: TestModule): readonly Row[] {
  const publication = publicationOf(readFileSync(module.moduleId, 'utf8'));
  return [...module.children.allTests('passed')].flatMap((test) => rowsOfTest(test, publication));
}

function rowsOfTest(test: TestCase, publication: string): readonly Row[] {
  const comparisons: readonly Comparison[] = test.meta().comparisons ?? [];
  return comparisons
    .filter(({ within }) => within)
    .map(({ printed, ours, lastDigit }) => ({
      publication,
      quantity: test.name,
      printed,
      ours: readable(ours, printed, lastDigit),
      difference: share(ours, Number(printed.replace(/[, ]/g, ''))),
    }));
}

/** The comment `// Source   …` at the head of a published check, with the lines that continue it. */
function publicationOf(text: string): string {
  const lines = text.split('\n');
  const start = lines.findIndex((line) => /^\/\/ Source\s/.test(line));
  if (start < 0) return '?';
  const first = lines[start]?.replace(/^\/\/ Source\s+/, '') ?? '';
  const rest = lines.slice(start + 1);
  const end = rest.findIndex((line) => !/^\/\/ {3,}\S/.test(line));
  return [first, ...rest.slice(0, Math.max(0, end)).map((line) => line.replace(/^\/\/\s+/, ''))].join(' ');
}

/** Two digits more than the publication prints. */
function readable(value: number, printed: string, lastDigit: number): string {
  const printedDecimals = printed.split('.')[1]?.length ?? 0;
  const decimals = Math.max(0, Math.min(printedDecimals, -Math.round(Math.log10(lastDigit))) + 2);
  const [whole = '', part] = value.toFixed(lastDigit >= 100 ? 0 : decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === undefined ? grouped : `${grouped}.${part}`;
}

function share(ours: number, printed: number): number | undefined {
  return printed === 0 ? undefined : ours / printed - 1;
}

function percent(difference: number | undefined): string {
  if (difference === undefined) return '–';
  const text = (difference * 100).toFixed(2);
  return `${text === '-0.00' ? '0.00' : text} %`;
}

const cell = (text: string) => text.replaceAll('|', '\\|').replace(/\.$/, '');
const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;

/** Every comparison, one a row. */
function tableOf(rows: readonly Row[]): string {
  const body = rows.map(({ publication, quantity, printed, ours, difference }, index) => {
    const again = rows[index - 1]?.publication === publication;
    return line([again ? '' : cell(publication), cell(quantity), printed, ours, percent(difference)]);
  });
  return [
    line(['publication', 'quantity', 'printed', 'ours', 'difference']),
    '|---|---|--:|--:|--:|\n',
    ...body,
  ].join('');
}

/** One row a publication, with the value that differs most. */
function summaryOf(rows: readonly Row[]): string {
  const publications = [...new Set(rows.map(({ publication }) => publication))];
  const size = ({ difference }: Row) => Math.abs(difference ?? 0);
  const body = publications.map((publication) => {
    const own = rows.filter((row) => row.publication === publication);
    const most = own.reduce((a, b) => (size(b) > size(a) ? b : a));
    const { quantity, printed, ours, difference } = most;
    return line([cell(publication), String(own.length), cell(quantity), printed, ours, percent(difference)]);
  });
  return [
    line(['publication', 'values', 'the one that differs most', 'printed', 'ours', 'difference']),
    '|---|--:|---|--:|--:|--:|\n',
    ...body,
  ].join('');
}

function withTable(readme: string, table: string): string {
  const [begin, end] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error('README.md has lost the marks of the validation table');
  return `${readme.slice(0, begin + BEGIN.length)}\n${table}${readme.slice(end)}`;
}
