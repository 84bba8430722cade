/** Paints one page: its pieces, and the running head and foot around them. */
import type { Measure } from '../font/typeface.js';
import type { Item, Tag } from '../layout/piece.js';
import type { Page } from '../layout/placed-piece.js';
import { type Frame, INKS, RUNNING, STYLES, type TextStyle } from '../layout/style-sheet.js';
import { MARK_SIDE, type PathStep, VERDICT_SHAPES } from '../shapes.js';
import { pageWords } from '../words.js';
import type { Canvas, Decoration } from './canvas.js';
import type { Links } from './links.js';
import { type BoxArea, fillableArea, paintFrame } from './paint-box.js';
import { paintDrawing } from './paint-drawing.js';
import { paintLogo } from './paint-logo.js';

/** Words at the left and the right of a running head or foot. */
export interface Running {
  readonly left: string;
  readonly right: string;
}

/** What painting finds out that the document needs: elements, links, and the boxes of figures. */
export interface PageNotes {
  /** An element that is there even if nothing is painted for it. */
  readonly element: (tag: Tag) => void;
  readonly links: Pick<Links, 'elementOf' | 'end' | 'add'>;
  readonly figure: (tag: Tag, x: number, y: number, width: number, height: number) => void;
  /** A field at its place on the page. */
  readonly box: (area: BoxArea) => void;
  /** Number printed for the page an id stands on. */
  readonly pageNumber: (id: string) => string;
}

export interface PagePlace {
  readonly frame: Frame;
  readonly number: number;
  readonly count: number;
  readonly head: Running;
  readonly foot: Running;
}

/** Paints pieces at their places, then head and foot as decoration. */
export function paintPage(
  canvas: Canvas,
  page: Page,
  place: PagePlace,
  measure: Measure,
  notes: PageNotes,
): void {
  const { frame } = place;
  for (const { piece, y, isRepeat } of page) {
    const around: Around = { canvas, measure, notes, decoration: isRepeat ? 'repeated' : 'layout' };
    for (const item of piece.items) paintItem(item, frame.left, frame.top + y, around);
  }
  paintRunning(canvas, place, measure);
}

interface Around {
  readonly canvas: Canvas;
  readonly measure: Measure;
  readonly notes: PageNotes;
  /** What an item without an element is. */
  readonly decoration: Decoration;
}

function paintItem(item: Item, left: number, top: number, around: Around): void {
  const { canvas, notes, decoration } = around;
  const x = left + item.x;
  const y = top + item.y;
  switch (item.kind) {
    case 'text':
      paintText(item, item.text, x, y, around);
      return;
    case 'fill':
      canvas.mark(decoration);
      canvas.fill(x, y, item.width, item.height, INKS[item.ink]);
      return;
    case 'mark':
      canvas.mark(decoration);
      paintMark(canvas, item, x, y);
      return;
    case 'drawing':
      canvas.mark(item.tag);
      paintDrawing(canvas, item.drawing, { x, y, scale: item.scale }, around.measure);
      notes.figure(item.tag, x, y, item.width, item.height);
      return;
    case 'box':
      canvas.mark(decoration);
      paintFrame(canvas, item, x, y);
      notes.box({ ...fillableArea(item, x, y), tag: item.tag });
      return;
    case 'logo':
      canvas.mark(item.tag);
      paintLogo(canvas, item.logo, { x, y, width: item.width, height: item.height });
      notes.figure(item.tag, x, y, item.width, item.height);
      return;
    case 'page-number': {
      const words = notes.pageNumber(item.target);
      const width = around.measure(words, item.style.face, item.style.size);
      paintText({ ...item, width, link: item.target, quiet: true }, words, x - width, y, around);
    }
  }
}

/** What painting needs to know of words. */
type Words = Pick<Extract<Item, { kind: 'text' }>, 'style' | 'width' | 'link' | 'spoken' | 'quiet' | 'tag'>;

function paintText(item: Words, words: string, x: number, y: number, around: Around): void {
  const { canvas, notes, decoration } = around;
  const { style, link, tag, width } = item;
  if (words === '') {
    if (tag) notes.element(tag);
    return;
  }
  const owner = link !== undefined && tag ? notes.links.elementOf(link, tag) : tag;
  canvas.mark(owner ?? decoration);
  if (item.spoken !== undefined) canvas.speak(item.spoken);
  canvas.text(words, x, y, style.face, style.size, INKS[style.ink]);
  if (item.spoken !== undefined) canvas.speak(undefined);
  if (link === undefined || !owner) {
    if (owner) notes.links.end();
    return;
  }
  if (!item.quiet) {
    // A hair line below says that the words lead somewhere, on paper too.
    canvas.mark('layout');
    canvas.fill(x, y + 0.16 * style.size, width, 0.35, INKS.grey);
  }
  notes.links.add({ tag: owner, to: link, x, y: y - 0.8 * style.size, width, height: style.size * 1.1 });
}

function paintMark(canvas: Canvas, item: Extract<Item, { kind: 'mark' }>, x: number, baseline: number): void {
  const side = MARK_SIDE * item.style.size;
  const top = baseline - 0.33 * item.style.size - side / 2;
  const at = (px: number, py: number): readonly [number, number] => [x + px * side, top + py * side];
  for (const stroke of VERDICT_SHAPES[item.verdict]) {
    const steps = stroke.steps.map((step): PathStep => {
      if (step[0] === 'Z') return step;
      if (step[0] === 'C')
        return ['C', ...at(step[1], step[2]), ...at(step[3], step[4]), ...at(step[5], step[6])];
      return [step[0], ...at(step[1], step[2])];
    });
    const colour = INKS[stroke.ink];
    canvas.path(
      steps,
      stroke.width === undefined ? { fill: colour } : { stroke: colour, width: stroke.width * side },
    );
  }
}

function paintRunning(canvas: Canvas, place: PagePlace, measure: Measure): void {
  const { frame, head, foot } = place;
  const style: TextStyle = STYLES.running;
  const right = frame.left + frame.width;
  const colour = INKS[style.ink];
  const words = (text: string, x: number, y: number, align: 'left' | 'right', room: number): number => {
    const shown = shortened(text.normalize('NFC'), room, style, measure);
    const width = measure(shown, style.face, style.size);
    canvas.text(shown, align === 'left' ? x : x - width, y, style.face, style.size, colour);
    return width;
  };
  canvas.mark('head');
  const headY = RUNNING.head;
  words(head.left, frame.left, headY, 'left', frame.width * 0.62);
  words(head.right, right, headY, 'right', frame.width * 0.35);
  canvas.fill(frame.left, headY + 6, frame.width, 0.4, INKS.grey);
  canvas.mark('foot');
  const footY = frame.pageHeight - RUNNING.foot;
  canvas.fill(frame.left, footY - 11, frame.width, 0.4, INKS.hairline);
  const pageWidth = words(pageWords(place.number, place.count), right, footY, 'right', frame.width * 0.3);
  words(foot.left, frame.left, footY, 'left', frame.width * 0.4);
  words(foot.right, right - pageWidth - 16, footY, 'right', frame.width * 0.35);
}

/** Ends a running line that is too long with an ellipsis; page one has the whole. */
function shortened(text: string, room: number, style: TextStyle, measure: Measure): string {
  if (measure(text, style.face, style.size) <= room) return text;
  const signs = [...text];
  while (signs.length > 0 && measure(`${signs.join('').trimEnd()}…`, style.face, style.size) > room)
    signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
