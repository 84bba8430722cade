/** What the tests of the renderer share: fonts, a small drawing, a document with every kind of block, options. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Drawing } from '../../src/drawing/drawing.js';
import type { PdfOptions } from '../../src/render/render-pdf.js';

const font = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(fileURLToPath(new URL(`../../templates/fonts/${name}.ttf`, import.meta.url))));

export const fonts = {
  regular: font('SourceSans3-Regular'),
  bold: font('SourceSans3-SemiBold'),
  italic: font('SourceSans3-Italic'),
};

export const drawing: Drawing = {
  name: 'line',
  width: 300,
  height: 120,
  title: 'The line',
  alt: 'A pump between two elbows, seen from the south-east',
  shapes: [
    {
      kind: 'path',
      points: [
        [10, 100],
        [150, 60],
        [290, 20],
      ],
      closed: false,
      stroke: 'heavy',
      fill: 'none',
      ink: 'black',
    },
    {
      kind: 'path',
      points: [
        [20, 10],
        [60, 10],
        [60, 40],
        [20, 40],
      ],
      closed: true,
      stroke: 'fine',
      fill: 'hatch',
      ink: 'grey',
    },
    { kind: 'circle', centre: [150, 60], radius: 12, stroke: 'dashed', fill: 'light', ink: 'accent' },
    {
      kind: 'text',
      at: [170, 64],
      text: 'P-3 · ≤ 610 lb',
      size: 8,
      anchor: 'start',
      weight: 'bold',
      ink: 'black',
      plate: true,
    },
  ],
};

/** Signs the trade needs. */
export const TRADE_SIGNS = 'αβγΔΣΩμπστφ≤≥√≈→×·°″′½⅜²³⁴−–—⌀';

export const specimen = `<review title="Review of pump P-3" language="en-US">
<facts><fact label="Project">North &amp; South plant</fact></facts>
<p role="verdict"><verdict is="exceeds"/> at one of 41 checks</p>
<p role="lead">What hangs on what.</p>
<p>See <ref to="c1">calculation 1</ref>; ${TRADE_SIGNS}; 6.5 × 10<sup>−6</sup> and S<sub>h</sub>, <b>bold</b>, <i>italic</i>.<br/>Next line.</p>
<p role="small">Small print.</p><p role="caution">Lock out first.</p>
<contents title="Contents"/>
<note kind="caution" title="lift"><p>Prop the riser.</p><list><item>Lock the springs.</item></list></note>
<note kind="information">Loose words.</note><note kind="assumption" title="motor"><p>12 lb per horsepower.</p></note>
<section id="loads" title="1 Loads" page="new"><p>Words.</p>
<figure drawing="line" caption="The line."/>
<figure drawing="line" width="half" caption="Left."/><figure drawing="line" width="half" caption="Right."/>
<table caption="Loads" id="t1" columns="left:2 decimal left"><head><row><cell>Support</cell><cell>Load</cell><cell>Verdict</cell></row></head>
<row role="group"><cell>Rods</cell></row>
<row><cell to="c1">H1</cell><cell>12.5</cell><cell><verdict is="meets"/></cell></row>
<row role="exceeds"><cell>H2</cell><cell>1,240</cell><cell><verdict is="exceeds"/></cell></row>
<row><cell>H3</cell><cell>–</cell><cell><verdict is="cannot-tell"/></cell></row>
<row><cell>H4</cell><cell>0.125</cell><cell><verdict is="does-not-apply"/></cell></row>
<row role="total"><cell>Sum</cell><cell>1,252.625</cell><cell></cell></row></table>
<section id="deeper" title="1.1 Deeper"><keep><p>Kept.</p></keep><list ordered="yes"><item>One</item><item>Two<list><item>inner</item></list></item></list></section></section>
<page-break/>
<section id="proof" title="2 Proof"><calculation id="c1" title="Rod load"><step role="formula">F = w · L</step><step role="numbers">F = (2 lb/ft) · (3 ft)</step><step role="result">F = 6 lb</step><step role="where">w weight by length</step><step role="source">statics</step></calculation>
<signatures><line label="Prepared by"/><line label="Engineer of record"/></signatures></section>
</review>`;

export const options: PdfOptions = {
  fonts,
  drawings: { line: drawing },
  page: 'letter',
  head: { left: 'Plant · P-3', right: 'Revision B' },
  foot: { left: 'pipeborne 0.1.0', right: '3f9a1c22' },
  title: 'Review of pump P-3',
  author: 'A. Engineer',
  subject: 'Installation and piping loads',
  date: '2026-03-14',
  language: 'en-US',
  fingerprint: '3f9a1c22d4e5f60718293a4b5c6d7e8f00112233445566778899aabbccddeeff',
  attachments: [
    {
      name: 'p-3.yaml',
      mime: 'application/yaml',
      bytes: new TextEncoder().encode('format: pipeborne/1\n'),
      description: 'Input',
    },
  ],
};
