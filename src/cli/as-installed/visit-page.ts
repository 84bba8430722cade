/** Decisions and open items as a page for a telephone: one column, large letters, no scripts, nothing fetched. */
import type { AsInstalledSummary } from '../../index.js';
import type { BoardUnit } from './board-one.js';
import { boardRow } from './board-table.js';

const MARKS: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as text, whatever stands in it. */
function plain(text: string): string {
  return text.replace(/[&<>"']/gu, (sign) => MARKS[sign] ?? sign);
}

const STYLE = `body{font:17px/1.45 sans-serif;margin:0 auto;max-width:44rem;padding:1rem;color:#111;background:#fff}
h1{font-size:1.4rem}h2{font-size:1.2rem;margin-top:2rem}h3{font-size:1.05rem}
.word{font-weight:bold;border:2px solid;padding:.1rem .5rem}.go{color:#075a2b}.hold{color:#7a4b00}.stop{color:#9b1c1c}
ul{padding-left:1.2rem}li{margin:.8rem 0}a{display:block;padding:.8rem 0;min-height:44px;color:#0b4a8f}
.keeps{font-weight:bold}p{margin:.6rem 0}@media(prefers-color-scheme:dark){body{background:#111;color:#eee}
.go{color:#7ddc9f}.hold{color:#f2c066}.stop{color:#ff9a9a}a{color:#9cc9ff}}`;

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${plain(title)}</title>
<style>
${STYLE}
</style>
</head>
<body>
<h1>${plain(title)}</h1>
${body}
<p>Readings against an estimate for review. The manufacturer's manual and the local code govern. A name typed is no
signature. Lock out before anything is touched that turns or is live.</p>
</body>
</html>
`;
}

const word = (decided: string) => `<span class="word ${decided}">${decided.toUpperCase()}</span>`;

const KEEPS = {
  running: 'Stop it. ',
  start: 'Blocks the start. ',
  acceptance: 'Keeps it from acceptance. ',
  nothing: '',
} as const;

function decisions({ decisions: { start, run }, date }: AsInstalledSummary): string {
  const by = (name: string) => (name === '' ? '' : `, decided by ${plain(name)}`);
  return `<p>May it be started? ${word(start.word)}${by(start.by)}</p>
<p>May it run, and be accepted? ${word(run.word)}${by(run.by)}</p>
<p>Last visit: ${plain(date ?? 'day not told')}</p>`;
}

function items(seen: AsInstalledSummary): string {
  if (seen.items.length === 0) return '<p>Nothing is open.</p>';
  const trades = [...new Set(seen.items.map(({ trade }) => trade))];
  return trades
    .map((trade) => {
      const own = seen.items.filter((item) => item.trade === trade);
      const rows = own.map(
        ({ at, finding, evidence, fix, bars }) =>
          `<li><span class="keeps">${KEEPS[bars]}</span><b>${plain(at)}</b>: ${plain(finding)}. ${plain(evidence)}${fix === '' ? '' : `<br>To do: ${plain(fix)}`}</li>`,
      );
      return `<h3>${plain(trade)}, ${own.length}</h3>\n<ul>\n${rows.join('\n')}\n</ul>`;
    })
    .join('\n');
}

/**
 * One unit as a page.
 *
 * @param seen - decisions and items
 * @returns HTML
 */
export function visitPage(seen: AsInstalledSummary): string {
  return page(
    `${seen.mark} as installed`,
    `<p>${plain(seen.project)}</p>\n${decisions(seen)}\n${items(seen)}`,
  );
}

/**
 * A board as a page: every unit in a line, and below it what is open.
 *
 * @param units - of all files
 * @returns HTML
 */
export function boardPage(units: readonly BoardUnit[]): string {
  const lines = units.map((unit, index) => {
    const { mark, start, run, blocking, open, lastVisit, file } = boardRow(unit);
    return `<a href="#unit-${index + 1}">${plain(mark === '?' ? file : mark)}: start ${word(start)} run ${word(run)}<br>${blocking} blocking, ${open} open; ${plain(lastVisit)}</a>`;
  });
  const whole = units.map((unit, index) => {
    const { seen, sheets, file } = unit;
    const head = `<h2 id="unit-${index + 1}">${plain(seen?.mark ?? file)}</h2>\n<p>${plain(file)}</p>`;
    if (seen === undefined) return `${head}\n<p>The file or its readings cannot be used: ${word('hold')}</p>`;
    if (sheets === 0) return `${head}\n<p>No readings have been brought back: ${word('hold')}</p>`;
    return `${head}\n${decisions(seen)}\n${items(seen)}`;
  });
  return page('Pumps as installed', `${lines.join('\n')}\n${whole.join('\n')}`);
}
