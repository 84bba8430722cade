/** Style of the HTML page: the same measures and inks as the PDF, and rules for printing. */
import { GAP, LETTERHEAD, STYLES, type TextStyle } from '../layout/style-sheet.js';
import { cssInk } from '../svg.js';

const font = (style: TextStyle): string =>
  `font:${style.face === 'italic' ? 'italic ' : ''}${style.face === 'bold' ? 600 : 400} ${style.size}pt/${style.leading}pt var(--face);color:${cssInk(style.ink)}`;

/** The style sheet, as text. */
export function pageStyle(): string {
  const line = `0.4pt solid ${cssInk('hairline')}`;
  const heavy = `0.9pt solid ${cssInk('black')}`;
  return `
:root{--face:"Source Sans 3","Source Sans Pro","Segoe UI","Helvetica Neue",Arial,sans-serif}
*{box-sizing:border-box}
html{background:#fff}
small{font-size:92%;color:${cssInk('grey')};font-weight:400}
body{max-width:560pt;margin:32pt auto 48pt;padding:0 16pt;${font(STYLES.body)};font-variant-numeric:lining-nums tabular-nums;overflow-wrap:break-word}
.letterhead{display:flex;align-items:center;gap:${LETTERHEAD.gap}pt;border-bottom:0.8pt solid ${cssInk('black')};padding-bottom:${LETTERHEAD.below}pt;margin-bottom:${GAP.block}pt}
.letterhead>img,.letterhead>svg{flex:none;image-orientation:none}
.letterhead>.firm{${font(STYLES.letterheadName)};margin:0;flex:1}
.letterhead>address{${font(STYLES.letterheadLine)};text-align:right}
h1{${font(STYLES.title)};margin:0 0 10pt}
h2{${font(STYLES.heading1)};margin:${GAP.section1}pt 0 ${GAP.afterHeading}pt}
h3{${font(STYLES.heading2)};margin:${GAP.section2}pt 0 ${GAP.afterHeading}pt}
p{margin:0 0 ${GAP.paragraph}pt;max-width:430pt}
p.lead{${font(STYLES.lead)};margin:${GAP.block}pt 0}
p.small{${font(STYLES.small)}}
p.verdict{${font(STYLES.verdict)};margin:${GAP.block}pt 0}
p.verdict::first-letter{text-transform:uppercase}
p.caution{border-left:4pt solid ${cssInk('accent')};padding-left:${GAP.noteSide}pt;margin:${GAP.block}pt 0}
p.caution>.word,.note.caution>.title{color:${cssInk('accent')};font-weight:600}
a{color:inherit;text-decoration:underline;text-decoration-thickness:0.4pt;text-underline-offset:2pt}
b{font-weight:600}
sub,sup{font-size:68%;line-height:0}
ul,ol{margin:0 0 ${GAP.paragraph}pt;padding-left:16pt;max-width:430pt}
ul>li::marker{content:"–  "}
li{margin:${GAP.item}pt 0}
.note{border-left:1.2pt solid ${cssInk('grey')};padding:${GAP.noteTop}pt ${GAP.noteSide}pt;margin:${GAP.block}pt 0}
.note>.title{font-weight:600;margin-bottom:1.5pt}
.note>:last-child{margin-bottom:0}
.note.information{background:${cssInk('tint')}}
.note.assumption{outline:0.6pt solid ${cssInk('hairline')};outline-offset:-0.6pt}
.note.caution{border:0.6pt solid ${cssInk('accent')};border-left-width:4pt}
.scroll{overflow-x:auto;margin:${GAP.block}pt 0}
table{border-collapse:collapse;width:100%;${font(STYLES.cell)};border-bottom:${heavy}}
caption{${font({ ...STYLES.caption, face: 'bold', ink: 'black' })};text-align:left;padding-bottom:3pt}
th,td{padding:${GAP.cellTop}pt ${GAP.cellSide}pt;vertical-align:top;text-align:left}
th{font-weight:600;vertical-align:bottom}
thead{border-top:${heavy};border-bottom:0.5pt solid ${cssInk('black')}}
tbody tr+tr{border-top:${line}}
.right,.decimal{text-align:right}
.centre{text-align:center}
td.decimal{white-space:nowrap}
tr.total{font-weight:600;border-top:0.5pt solid ${cssInk('black')}!important}
tr.group{background:${cssInk('tint')};font-weight:600}
tr.exceeds{background:${cssInk('accent-tint')};box-shadow:inset 2.2pt 0 0 ${cssInk('accent')}}
.mark{vertical-align:-0.05em;margin-right:0.3em}
.exceeds-word{font-weight:600}
figure{margin:${GAP.block}pt 0}
figure svg{max-width:100%;height:auto;display:block;font-family:var(--face)}
figcaption{${font(STYLES.caption)};margin-top:5pt}
.pair{display:grid;grid-template-columns:1fr 1fr;gap:${GAP.halfFigures}pt}
.columns{column-gap:${GAP.columns}pt}
.columns.n2{column-count:2}
.columns.n3{column-count:3}
.columns tr,.columns .calculation{break-inside:avoid}
.beside{display:grid;gap:${GAP.columns}pt}
tr.remark{border-top:0!important}
.half{max-width:241pt}
.calculation{border-left:0.8pt solid ${cssInk('grey')};padding-left:10pt;margin:${GAP.block}pt 0}
.calculation>*{margin:0;max-width:none}
.calculation>.title{${font(STYLES.calculationTitle)}}
.formula{${font(STYLES.formula)};padding-left:14pt;margin-top:3pt!important}
.numbers{${font(STYLES.numbers)};padding-left:14pt}
.result{${font(STYLES.result)};padding-left:14pt}
.where{${font(STYLES.where)};margin-top:3pt!important}
.source{${font(STYLES.source)};margin-top:2pt!important}
dl{display:grid;grid-template-columns:max-content 1fr;column-gap:14pt;row-gap:2pt;margin:${GAP.block}pt 0}
dl.n2{grid-template-columns:max-content 1fr max-content 1fr}
dl.n3{grid-template-columns:max-content 1fr max-content 1fr max-content 1fr}
dt{${font(STYLES.factLabel)}}
dd{${font(STYLES.fact)};margin:0}
.signatures{display:grid;grid-template-columns:1fr 1fr;column-gap:24pt;margin-top:${GAP.block}pt}
.signatures>p{${font(STYLES.signature)};margin:34pt 0 0;padding-top:2pt;border-top:0.5pt solid ${cssInk('black')}}
table.readings th[scope=row]{vertical-align:top;width:32%}
.aside{font-weight:400}
.box{display:inline-block;vertical-align:top;margin:0 6pt 4pt 0}
.box>.label{display:block;${font(STYLES.boxLabel)}}
.box>.source{display:block;margin:0!important;padding:0}
.frame{display:block;min-width:62pt;height:21pt;border:0.6pt solid ${cssInk('grey')};text-align:right;padding:5pt 3pt}
.text>.frame,.signature>.frame{min-width:150pt}
.tick>.frame{display:inline-block;min-width:0;width:12pt;height:12pt}
.frame>.unit{${font(STYLES.boxUnit)}}
nav ol{list-style:none;padding:0}
nav .level2{padding-left:13pt}
nav .level1{font-weight:600}
@media (max-width:520pt){.pair,.signatures{grid-template-columns:1fr}.beside{grid-template-columns:1fr!important}.columns{column-count:1!important}dl{grid-template-columns:1fr}dd{margin-bottom:4pt}}
@media print{
@page{margin:18mm 19mm}
body{max-width:none;margin:0;padding:0}
h2,h3,caption{break-after:avoid}
tr,figure,.calculation,.keep,.signatures{break-inside:avoid}
thead{display:table-header-group}
p{orphans:2;widows:2}
.new-page{break-before:page}
.scroll{overflow:visible}
.note.caution,.note.information,tr.group,tr.exceeds{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}`.trim();
}
