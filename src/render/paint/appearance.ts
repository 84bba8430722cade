/** What widgets look like before anybody has typed: nothing, a tick, or a dot. Each has an object of its own, since viewers replace it. */
import type { PDFContext, PDFRef } from 'pdf-lib';
import { num } from './canvas.js';
import { BUTTON_RADIUS } from './paint-box.js';

const INK = '0.05 0.1 0.45';
/** Size of the dot in its circle. */
const DOT = 0.56;
const ROUND = 0.5523;

function appearance(context: PDFContext, width: number, height: number, content: string): PDFRef {
  return context.register(
    context.stream(content, {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, Number(num(width)), Number(num(height))],
      Resources: {},
    }),
  );
}

/** Nothing: an empty text, a button that is not pressed. */
export const emptyAppearance = (context: PDFContext, width: number, height: number): PDFRef =>
  appearance(context, width, height, '/Tx BMC\nEMC\n');

/** A tick in the square of a tick box. */
export function tickAppearance(context: PDFContext, width: number, height: number): PDFRef {
  const r = BUTTON_RADIUS;
  const at = (x: number, y: number): string => `${num(width / 2 + x * r)} ${num(height / 2 + y * r)}`;
  const content = `q ${INK} RG 1.7 w 1 j ${at(-0.66, 0)} m ${at(-0.16, -0.6)} l ${at(0.72, 0.7)} l S Q\n`;
  return appearance(context, width, height, content);
}

/** A dot in the circle of a choice. */
export function dotAppearance(context: PDFContext, width: number, height: number): PDFRef {
  const r = DOT * BUTTON_RADIUS;
  const k = ROUND * r;
  const at = (x: number, y: number): string => `${num(width / 2 + x)} ${num(height / 2 + y)}`;
  const content = [
    `q ${INK} rg ${at(r, 0)} m`,
    `${at(r, k)} ${at(k, r)} ${at(0, r)} c`,
    `${at(-k, r)} ${at(-r, k)} ${at(-r, 0)} c`,
    `${at(-r, -k)} ${at(-k, -r)} ${at(0, -r)} c`,
    `${at(k, -r)} ${at(r, -k)} ${at(r, 0)} c f Q\n`,
  ].join(' ');
  return appearance(context, width, height, content);
}
