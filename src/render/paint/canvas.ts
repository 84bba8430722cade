/** Writes the content of one page: text, fills and paths, each inside its marked content. Places are from the top left. */
import { PDFHexString } from 'pdf-lib';
import type { Face } from '../font/typeface.js';
import type { Tag } from '../layout/piece.js';
import type { Colour, PathStep } from '../shapes.js';

/** Turns text into glyph numbers, written in hexadecimal, and remembers them. */
export type Encode = (text: string, face: Face) => string;

/** What is painted beside the matter: rules and tints, running head and foot, the head of a table painted again. */
export type Decoration = 'layout' | 'head' | 'foot' | 'repeated';

const DECORATIONS: Readonly<Record<Decoration, string>> = {
  layout: '/Type /Layout',
  head: '/Type /Pagination /Subtype /Header /Attached [/Top]',
  foot: '/Type /Pagination /Subtype /Footer /Attached [/Bottom]',
  repeated: '/Type /Pagination',
};

export interface Canvas {
  /** Starts marked content that belongs to a structure element, or decoration of a kind. */
  readonly mark: (owner: Tag | Decoration) => void;
  readonly text: (words: string, x: number, y: number, face: Face, size: number, colour: Colour) => void;
  /** Says what the text that follows stands for, until called without words. */
  readonly speak: (words: string | undefined) => void;
  readonly fill: (x: number, y: number, width: number, height: number, colour: Colour) => void;
  readonly path: (steps: readonly PathStep[], look: PathLook) => void;
  /** An image of the page's resources. */
  readonly image: (name: string, x: number, y: number, width: number, height: number) => void;
  /** Draws inside a path only. */
  readonly clipped: (steps: readonly PathStep[], draw: () => void) => void;
  /** Ends the page: its content, and the element of each marked content by number. */
  readonly finish: () => { readonly content: string; readonly tags: readonly Tag[] };
}

export interface PathLook {
  readonly fill?: Colour;
  readonly stroke?: Colour;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly round?: boolean;
  /** Fills by the even-odd rule. */
  readonly evenOdd?: boolean;
  /** Ends and corners of the stroke; those of drawings where not said. */
  readonly cap?: 'butt' | 'round' | 'square';
  readonly join?: 'miter' | 'round' | 'bevel';
  readonly miter?: number;
}

export const FONT_NAMES: Readonly<Record<Face, string>> = { regular: 'F1', bold: 'F2', italic: 'F3' };

const CAPS = { butt: 0, round: 1, square: 2 } as const;
const JOINS = { miter: 0, round: 1, bevel: 2 } as const;

/** A number as PDF writes it: two decimals are a hundredth of a point. */
export const num = (value: number): string => String(Math.round(value * 100) / 100 || 0);

/** Three decimals suffice for a colour. */
const tone = (value: number): string => String(Math.round(value * 1000) / 1000);
const colourText = (colour: Colour): string => {
  const [r, g, b] = colour;
  return r === g && g === b ? tone(r) : `${tone(r)} ${tone(g)} ${tone(b)}`;
};

/**
 * Opens a canvas.
 *
 * @param pageHeight - height of the page [points], to turn y upside down
 * @param encode - text to glyph numbers
 * @param opened - told of each marked content and its number as it starts
 * @returns the canvas
 */
export function openCanvas(
  pageHeight: number,
  encode: Encode,
  opened: (tag: Tag, number: number) => void,
): Canvas {
  const out: string[] = [];
  const tags: Tag[] = [];
  let current: Tag | Decoration | undefined;
  let fillColour = '';
  let strokeColour = '';
  let font = '';

  const setFill = (colour: Colour): void => {
    const text = colourText(colour);
    const operator = `${text} ${text.includes(' ') ? 'rg' : 'g'}`;
    if (operator !== fillColour) out.push(operator);
    fillColour = operator;
  };
  const setStroke = (colour: Colour): void => {
    const text = colourText(colour);
    const operator = `${text} ${text.includes(' ') ? 'RG' : 'G'}`;
    if (operator !== strokeColour) out.push(operator);
    strokeColour = operator;
  };
  const point = (x: number, y: number): string => `${num(x)} ${num(pageHeight - y)}`;
  const trace = (steps: readonly PathStep[]): void => {
    for (const step of steps) {
      if (step[0] === 'Z') out.push('h');
      else if (step[0] === 'C')
        out.push(`${point(step[1], step[2])} ${point(step[3], step[4])} ${point(step[5], step[6])} c`);
      else out.push(`${point(step[1], step[2])} ${step[0] === 'M' ? 'm' : 'l'}`);
    }
  };

  return {
    mark: (owner) => {
      if (owner === current) return;
      if (current !== undefined) out.push('EMC');
      current = owner;
      if (typeof owner === 'string') out.push(`/Artifact <<${DECORATIONS[owner]}>> BDC`);
      else {
        out.push(`/${owner.role} <</MCID ${tags.length}>> BDC`);
        opened(owner, tags.length);
        tags.push(owner);
      }
    },
    text: (words, x, y, face, size, colour) => {
      if (words === '') return;
      setFill(colour);
      // Face and size hold from one text to the next.
      const wanted = `/${FONT_NAMES[face]} ${num(size)} Tf`;
      const change = wanted === font ? '' : `${wanted} `;
      font = wanted;
      out.push(`BT ${change}${point(x, y)} Td <${encode(words, face)}> Tj ET`);
    },
    speak: (words) => {
      out.push(words === undefined ? 'EMC' : `/Span <</ActualText ${PDFHexString.fromText(words)}>> BDC`);
    },
    fill: (x, y, width, height, colour) => {
      setFill(colour);
      out.push(`${point(x, y + height)} ${num(width)} ${num(height)} re f`);
    },
    path: (steps, look) => {
      if (look.fill) setFill(look.fill);
      if (look.stroke) {
        setStroke(look.stroke);
        const cap = CAPS[look.cap ?? (look.round ? 'round' : 'butt')];
        const end = `${cap} J ${JOINS[look.join ?? 'round']} j${look.miter === undefined ? '' : ` ${num(Math.max(1, look.miter))} M`}`;
        out.push(`${num(look.width ?? 1)} w ${end} [${(look.dash ?? []).map(num).join(' ')}] 0 d`);
      }
      trace(steps);
      const star = look.evenOdd ? '*' : '';
      out.push(look.fill && look.stroke ? `B${star}` : look.fill ? `f${star}` : look.stroke ? 'S' : 'n');
    },
    image: (name, x, y, width, height) => {
      out.push(`q ${num(width)} 0 0 ${num(height)} ${point(x, y + height)} cm /${name} Do Q`);
    },
    clipped: (steps, draw) => {
      const before = [fillColour, strokeColour, font] as const;
      out.push('q');
      trace(steps);
      out.push('W n');
      draw();
      out.push('Q');
      [fillColour, strokeColour, font] = before;
    },
    finish: () => {
      if (current !== undefined) out.push('EMC');
      current = undefined;
      return { content: `${out.join('\n')}\n`, tags };
    },
  };
}
