/** Style of the HTML page: the measures and inks of the PDF, in units of text so that they grow with it. */
import { GAP, type InkName, LETTERHEAD, STYLES, type TextStyle } from '../layout/style-sheet.js';
import { cssInk, rem } from '../svg.js';
import { mediaStyle } from './media-style.js';

/** Inks of the page by name; the dark screen has its own. */
export const ink = (name: InkName): string => `var(--${name})`;

const size = ({ size: points, leading, face }: TextStyle): string =>
  `font:${face === 'italic' ? 'italic ' : ''}${face === 'bold' ? 600 : 400} ${rem(points)}/${Math.round((leading / points) * 100) / 100} var(--face)`;
const font = (style: TextStyle): string => `${size(style)};color:${ink(style.ink)}`;

const INK_NAMES: readonly InkName[] = ['black', 'grey', 'accent', 'white', 'hairline', 'tint', 'accent-tint'];

/**
 * The style sheet, as text.
 *
 * @param title - words at the head of printed pages
 * @param foot - words at their foot
 */
export function pageStyle(title: string, foot: string): string {
  const line = `1px solid ${ink('hairline')}`;
  const heavy = `1.5px solid ${ink('black')}`;
  return `
:root{--face:"Source Sans 3","Source Sans Pro","Segoe UI","Helvetica Neue",Arial,sans-serif;${INK_NAMES.map((name) => `--${name}:${cssInk(name)}`).join(';')}}
*{box-sizing:border-box}
html{background:${ink('white')};-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{max-width:${rem(592)};margin:0 auto;padding:${rem(24)} ${rem(16)} ${rem(48)};${font(STYLES.body)};font-variant-numeric:lining-nums tabular-nums;overflow-wrap:break-word}
main:focus{outline:none}
:focus-visible{outline:2px solid ${ink('accent')};outline-offset:2px}
.skip{position:absolute;left:-99rem;top:0;padding:${rem(6)} ${rem(10)};background:${ink('white')};z-index:2}
.skip:focus{left:0}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
:target{scroll-margin-top:${rem(12)}}
section:target>h2,section:target>h3,section:target>.heading,.calculation:target>.title,tr:target{background:${ink('tint')}}
small{font-size:92%;color:${ink('grey')};font-weight:400}
.letterhead{display:flex;flex-wrap:wrap;align-items:center;gap:${rem(LETTERHEAD.gap)};border-bottom:1px solid ${ink('black')};padding-bottom:${rem(LETTERHEAD.below)};margin-bottom:${rem(GAP.block)}}
.letterhead>img,.letterhead>svg{flex:none;max-width:100%;image-orientation:none;background:#fff}
.letterhead>.firm{${font(STYLES.letterheadName)};margin:0;flex:1}
.letterhead>address{${font(STYLES.letterheadLine)};text-align:right}
h1{${font(STYLES.title)};margin:0 0 ${rem(10)}}
h2{${font(STYLES.heading1)};margin:${rem(GAP.section1)} 0 ${rem(GAP.afterHeading)}}
h3{${font(STYLES.heading2)};margin:${rem(GAP.section2)} 0 ${rem(GAP.afterHeading)}}
.heading{display:flex;justify-content:space-between;align-items:baseline;gap:${rem(GAP.block)}}
.back{${font(STYLES.back)};text-decoration:none;white-space:nowrap}
p{margin:0 0 ${rem(GAP.paragraph)};max-width:${rem(430)}}
p.lead{${font(STYLES.lead)};margin:${rem(GAP.block)} 0}
p.small{${font(STYLES.small)}}
p.verdict{${font(STYLES.verdict)};margin:${rem(GAP.block)} 0}
p.caution{border-left:4px solid ${ink('accent')};padding-left:${rem(GAP.noteSide)};margin:${rem(GAP.block)} 0}
p.caution>.word,.note.caution>.title{color:${ink('accent')};font-weight:600}
a{color:inherit;text-decoration:underline;text-decoration-thickness:1px;text-underline-offset:0.18em}
b{font-weight:600}
sub,sup{font-size:68%;line-height:0}
ul,ol{margin:0 0 ${rem(GAP.paragraph)};padding-left:1.6em;max-width:${rem(430)}}
ul>li::marker{content:"–  "}
li{margin:${rem(GAP.item)} 0}
.note{border-left:1.5px solid ${ink('grey')};padding:${rem(GAP.noteTop)} ${rem(GAP.noteSide)};margin:${rem(GAP.block)} 0}
.note>.title{font-weight:600;margin-bottom:${rem(1.5)}}
.note>:last-child{margin-bottom:0}
.note.information{background:${ink('tint')}}
.note.assumption{border:1px solid ${ink('hairline')};border-left:1.5px solid ${ink('grey')}}
.note.caution{border:1px solid ${ink('accent')};border-left-width:4px}
.scroll{overflow-x:auto}
.scroll:has(>table){margin:${rem(GAP.block)} 0}
table{border-collapse:collapse;width:100%;${font(STYLES.cell)};border-bottom:${heavy}}
caption{${font({ ...STYLES.caption, face: 'bold', ink: 'black' })};text-align:left;padding-bottom:${rem(3)}}
th,td{padding:${rem(GAP.cellTop)} ${rem(GAP.cellSide)};vertical-align:top;text-align:left;font-weight:inherit;overflow-wrap:break-word}
thead th{font-weight:600;vertical-align:bottom}
thead{border-top:${heavy};border-bottom:1px solid ${ink('black')}}
tbody tr+tr{border-top:${line}}
.right,.decimal{text-align:right}
.centre{text-align:center}
td.decimal{white-space:nowrap}
tr.total{font-weight:600;border-top:1px solid ${ink('black')}!important}
tr.group{background:${ink('tint')};font-weight:600}
tr.remark{border-top:0!important}
tr.exceeds{background:${ink('accent-tint')};box-shadow:inset 3px 0 0 ${ink('accent')}}
.mark{vertical-align:-0.05em;margin-right:0.3em}
.mark .line{fill:none}
${(['black', 'accent', 'white'] as const).map((name) => `.mark .${name}.fill{fill:${ink(name)}}.mark .${name}.line{stroke:${ink(name)}}`).join('\n')}
.verdict-word{white-space:nowrap}
.exceeds-word{font-weight:600}
figure{margin:${rem(GAP.block)} 0}
figure svg{max-width:100%;height:auto;display:block;font-family:var(--face)}
figcaption{${font(STYLES.caption)};margin-top:${rem(5)}}
.pair{display:grid;grid-template-columns:1fr 1fr;gap:${rem(GAP.halfFigures)}}
.half{max-width:${rem(245)}}
.beside{display:grid;gap:${rem(GAP.columns)}}
.calculation{border-left:1px solid ${ink('grey')};padding-left:${rem(10)};margin:${rem(GAP.block)} 0}
.calculation>*{margin:0;max-width:none}
.calculation>.title{${font(STYLES.calculationTitle)}}
.formula{${font(STYLES.formula)};padding-left:${rem(14)};margin-top:${rem(3)}!important}
.numbers{${font(STYLES.numbers)};padding-left:${rem(14)}}
.result{${font(STYLES.result)};padding-left:${rem(14)}}
.where{${font(STYLES.where)};margin-top:${rem(3)}!important}
.source{${font(STYLES.source)};margin-top:${rem(2)}!important}
dl{display:grid;grid-template-columns:max-content minmax(0,1fr);column-gap:${rem(14)};row-gap:${rem(2)};margin:${rem(GAP.block)} 0}
dl.n2{grid-template-columns:repeat(2,max-content minmax(0,1fr))}
dl.n3{grid-template-columns:repeat(3,max-content minmax(0,1fr))}
dt{${font(STYLES.factLabel)}}
dd{${font(STYLES.fact)};margin:0}
.signatures{display:grid;grid-template-columns:1fr 1fr;column-gap:${rem(24)};margin-top:${rem(GAP.block)}}
.signatures>p{${font(STYLES.signature)};margin:${rem(34)} 0 0;padding-top:${rem(2)};border-top:1px solid ${ink('black')}}
table.readings th[scope=row]{vertical-align:top;width:32%}
.aside{font-weight:400}
.box{display:inline-block;vertical-align:top;margin:0 ${rem(6)} ${rem(4)} 0}
.box>.label{display:block;${font(STYLES.boxLabel)}}
.box>.source{display:block;margin:0!important;padding:0}
.frame{display:block;min-width:${rem(62)};height:${rem(21)};border:1px solid ${ink('grey')};text-align:right;padding:${rem(5)} ${rem(3)}}
.text>.frame,.signature>.frame{min-width:${rem(150)}}
.tick>.frame{display:inline-block;min-width:0;width:${rem(12)};height:${rem(12)}}
.frame>.unit{${font(STYLES.boxUnit)}}
nav{margin:${rem(GAP.section1)} 0}
nav p{font-weight:600;margin-bottom:${rem(4)}}
nav ol{list-style:none;padding:0;margin:0}
nav>ol{columns:${rem(180)};column-gap:${rem(GAP.columns)};max-width:none}
nav li{break-inside:avoid}
nav a{text-decoration:none}
nav a:hover{text-decoration:underline}
nav details>ol{padding-left:${rem(10)}}
nav summary{${font(STYLES.small)};cursor:pointer}
footer{margin-top:${rem(GAP.section1)};border-top:${line};padding-top:${rem(6)}}
${mediaStyle(title, foot)}`.trim();
}
