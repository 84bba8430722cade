/**
 * Reporter of the published checks: prints the validation table, and with ACCEPT_VALIDATION_TABLE=yes writes it into
 * the README. What a test compared without success, to show that it can fail, is left out.
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
  readonly difference: string;
}

export default class ValidationTable implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const rows = [...modules].sort((a, b) => (a.moduleId < b.moduleId ? -1 : 1)).flatMap(rowsOf);
    const table = tableOf(rows);
    process.stdout.write(`\n${table}\n${rows.length} printed values compared\n`);
    const readme = readFileSync(README, 'utf8');
    const accepted = withTable(readme, table);
    if (accepted === readme) return;
    if (process.env.ACCEPT_VALIDATION_TABLE === 'yes') writeFileSync(README, accepted);
    else process.stdout.write('The table in README.md differs; `npm run validation:accept` writes this one into it.\n');
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
      ours: readable(ours, lastDigit),
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
function readable(value: number, lastDigit: number): string {
  const decimals = Math.max(0, 2 - Math.round(Math.log10(lastDigit)));
  const [whole = '', part] = value.toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === undefined ? grouped : `${grouped}.${part}`;
}

function share(ours: number, printed: number): string {
  return printed === 0 ? '–' : `${((ours / printed - 1) * 100).toFixed(2)} %`;
}

function tableOf(rows: readonly Row[]): string {
  const cell = (text: string) => text.replaceAll('|', '\\|').replace(/\.$/, '');
  const head = ['publication', 'quantity', 'printed', 'ours', 'difference'];
  const body = rows.map(({ publication, quantity, printed, ours, difference }, index) => {
    const again = rows[index - 1]?.publication === publication;
    return [again ? '' : cell(publication), cell(quantity), printed, ours, difference];
  });
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;
  return [line(head), '|---|---|--:|--:|--:|\n', ...body.map(line)].join('');
}

function withTable(readme: string, table: string): string {
  const [begin, end] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error('README.md has lost the marks of the validation table');
  return `${readme.slice(0, begin + BEGIN.length)}\n${table}${readme.slice(end)}`;
}
