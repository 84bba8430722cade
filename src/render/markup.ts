/**
 * The markup that templates write and the layout reads: small, well-formed, closed. Anything not listed here is an
 * error that names the template, the line and what is allowed.
 *
 * Blocks
 *   <review title language>                     root, written by templates/review.hbs
 *   <letterhead name [logo="none"]><p>…</p></letterhead>   who writes it, with the logo; stands above the title
 *   <section id title [level="1|2"] [page="new"]>   heading with bookmark; blocks inside
 *   <p [role="lead|small|verdict|caution"]>      paragraph of inline content
 *   <list [ordered="yes"]><item>…</item></list>
 *   <note kind="caution|information|assumption" [title]>  framed block; blocks inside
 *   <table [caption] [id] columns="…">           columns: one word a column, separated by blanks:
 *        <head><row><cell>…</cell></row></head>    `left`, `right`, `centre`, `decimal`, with an optional share,
 *        <row [role="total|group|exceeds|remark"] [id]>…</row> for example `left:3 decimal:1 decimal:1`
 *   <figure drawing="name" [caption] [width="full|half"]/>   a drawing of the review by name
 *   <calculation id title>                       a worked calculation; keeps together
 *        <step role="formula|numbers|result|where|source">…</step>
 *   <facts [columns="2|3"]><fact label="…">…</fact></facts>   label and value, for title blocks; side by side if wished
 *   <signatures><line label="…"/></signatures>
 *   <readings what="…" filled="…" left-out="…">   lines to fill in, under these three column heads; in a PDF a form
 *        [abreast="2|3"]                         short rows side by side, as many as this, without the heads
 *        <reading label="…" [width="full"]>
 *             <aside role="expected|limit|source">…</aside>
 *             <box id kind="number|text|choice|tick|date|signature" tip="…" [label] [unit] [expected] [lines="3"]
 *                  [place="left-out"]>           id: name of the field; the place is for why it was not read
 *                  <choice>…</choice></box>
 *        </reading></readings>
 *   <keep>blocks that stay on one page</keep>
 *   <columns [count="2|3"]>blocks</columns>       blocks that run down one narrow column and on in the next
 *   <beside [shares="3 2"]><side>…</side><side>…</side></beside>   blocks side by side, never parted
 *   <contents [title] [level="1"]/>              titles of sections with the pages they start on
 *   <page-break/>
 *
 * Inline: text, <b>, <i>, <sub>, <sup>, <small>, <br/>, <ref to="id">text</ref>, <verdict is="meets|exceeds|cannot-tell|does-not-apply"/>
 *
 * `item`, `note` and `side` take words beside blocks; a `group` or `remark` row of one cell runs over all columns, and a
 * remark belongs to the row above it. The root's title is
 * printed at the head of page one. Blanks are brought together; `&nbsp;` and `&ensp;` are kept.
 * `cell` takes [span="2"] and [to="id"] for a link to a section or calculation.
 */

export interface MarkupText {
  readonly kind: 'text';
  readonly text: string;
}

export interface MarkupElement {
  readonly kind: 'element';
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly MarkupNode[];
  /** Where it stands in the filled template, for messages. */
  readonly line: number;
}

export type MarkupNode = MarkupText | MarkupElement;
