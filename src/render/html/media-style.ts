/** What the page looks like elsewhere than on an ordinary screen: wide, narrow, dark, and on paper. */
import { ROOT_SIZE, rem } from '../svg.js';

/** Words inside a style sheet: every sign that could end them is written by its number. */
const quoted = (text: string): string =>
  `"${[...text].map((sign) => (/[A-Za-z0-9 ,.-]/.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)).join('')}"`;

/** Inks of a dark screen. Drawings stay on white: their hatches and weights are made for it. */
const DARK =
  '--black:#e9e9e6;--grey:#abafb5;--accent:#ff9d84;--white:#15171a;--hairline:#474b51;--tint:#212429;--accent-tint:#36221d';

/**
 * Rules for media.
 *
 * @param title - words at the head of printed pages
 * @param foot - words at their foot
 */
export function mediaStyle(title: string, foot: string): string {
  const margin = 'font:7.2pt/1.3 "Source Sans 3","Segoe UI",Arial,sans-serif;color:#5c6169';
  return `
@media screen and (min-width:80rem){
body{padding-left:${rem(16 + 180)};max-width:${rem(592 + 180)}}
nav{position:fixed;left:0;top:0;bottom:0;width:${rem(176)};margin:0;padding:${rem(24)} ${rem(14)};overflow-y:auto;border-right:1px solid var(--hairline)}
nav>ol{columns:auto}
}
@media screen and (max-width:44rem){
.pair,.signatures,.beside{grid-template-columns:minmax(0,1fr)!important}
.half{max-width:none}
dl,dl.n2,dl.n3{grid-template-columns:fit-content(38%) minmax(0,1fr)}
nav a{display:inline-block;padding:${rem(2)} 0}
.scroll{background:linear-gradient(to left,var(--white) 40%,transparent) right/${rem(24)} 100% no-repeat local,linear-gradient(to left,var(--hairline),transparent) right/${rem(10)} 100% no-repeat scroll}
figure:not(.half) svg{max-width:none;min-width:34rem}
.scroll>table:has(th:nth-child(6)){min-width:50rem}
}
@media screen and (prefers-color-scheme:dark){
:root{${DARK}}
figure svg{background:#fff}
}
@media print{
@page{margin:18mm 19mm;@top-left{content:${quoted(title)};${margin}}@bottom-left{content:${quoted(foot)};${margin}}@bottom-right{content:"page " counter(page) " of " counter(pages);${margin}}}
html{font-size:${ROOT_SIZE}pt}
body{max-width:none;margin:0;padding:0}
nav,.skip,.back,footer{display:none}
h2,h3,caption,.heading{break-after:avoid}
tr,figure,.calculation,.keep,.signatures,.beside{break-inside:avoid}
thead{display:table-header-group;break-inside:avoid;break-after:avoid}
tbody tr:first-child,tr.remark{break-before:avoid}
.note{box-decoration-break:clone;-webkit-box-decoration-break:clone}
p{orphans:2;widows:2}
.columns{column-gap:16pt}
.columns.n2{column-count:2}
.columns.n3{column-count:3}
.columns tr,.columns .calculation{break-inside:avoid}
.columns table{font-size:6.8pt}
.columns th,.columns td{padding-left:1.5pt;padding-right:2pt}
.columns td,.columns tbody th{overflow-wrap:anywhere}
.new-page{break-before:page}
.scroll{overflow:visible}
.note.caution,.note.information,tr.group,tr.exceeds{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}`;
}
