/**
 * Reads the part of SVG that draws a logo: groups with transforms, paths, rectangles, circles, ellipses, lines and
 * polygons, filled and stroked in plain colours. Whatever would need more is refused by name, since a logo that is
 * drawn half is worse than none; scripts, references and entities are refused whatever they are for.
 */
import { type SaxesAttributeNS, SaxesParser } from 'saxes';
import { EngineError } from '../../issues/issue.js';
import type { PathStep } from '../shapes.js';
import { DEEPEST_ELEMENTS, MOST_ELEMENTS, MOST_STEPS } from './limits.js';
import type { LogoShape } from './logo-shape.js';
import { type Look, PLAIN, readLook, type SvgFail, strokeOf } from './svg-look.js';
import { outlineOf, SHAPES } from './svg-shapes.js';
import { combined, evenScale, type Matrix, moveBy, readTransform } from './svg-transform.js';

const SVG = 'http://www.w3.org/2000/svg';
/** Elements that draw nothing: words about the picture. */
const SILENT: readonly string[] = ['title', 'desc', 'metadata'];
const HOLDERS: readonly string[] = ['svg', 'g', 'defs'];

/** What holds for what stands inside an element. */
interface Level {
  readonly matrix: Matrix;
  readonly look: Look;
  readonly name: string;
  readonly isHidden: boolean;
}

/**
 * Reads an SVG.
 *
 * @param text - the file
 * @param file - its name, for messages
 * @returns size of the picture and its shapes, from the bottom up
 * @throws EngineError `render.logo.not-allowed` | `render.logo.not-drawn` | `render.logo.damaged` with the line
 */
export function readSvgLogo(
  text: string,
  file: string,
): { readonly width: number; readonly height: number; readonly shapes: readonly LogoShape[] } {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const place = () => ({ file, line: parser.line, column: parser.column + 1 });
  const fail: SvgFail = (code, found) => {
    if (code === 'render.logo.damaged') throw new EngineError(code, { ...place(), reason: found });
    throw new EngineError(code, { ...place(), found });
  };
  const levels: Level[] = [];
  const shapes: LogoShape[] = [];
  let size: Size | undefined;
  let elements = 0;
  let steps = 0;

  parser.on('error', (error) => fail('render.logo.damaged', error.message.replace(/^.*?\d+:\d+: /, '')));
  parser.on('doctype', (words) => {
    if (/\[|ENTITY/.test(words)) fail('render.logo.not-allowed', 'entities of its own');
  });
  parser.on('processinginstruction', ({ target }) => fail('render.logo.not-allowed', `<?${target}?>`));
  parser.on('closetag', () => void levels.pop());
  parser.on('opentag', (tag) => {
    elements += 1;
    if (elements > MOST_ELEMENTS) fail('render.logo.not-drawn', `more than ${MOST_ELEMENTS} elements`);
    if (levels.length >= DEEPEST_ELEMENTS)
      fail('render.logo.not-drawn', `elements more than ${DEEPEST_ELEMENTS} deep`);
    const attributes = ownAttributes(tag.attributes, fail);
    if (tag.local === 'script') fail('render.logo.not-allowed', 'a script');
    const parent = levels.at(-1);
    const isForeign = tag.uri !== SVG && tag.uri !== '';
    // What a drawing program notes for itself, and words about the picture.
    if (parent && (isForeign || parent.name === '' || SILENT.includes(tag.local))) {
      levels.push({ ...parent, name: '', isHidden: true });
      return;
    }
    const isRoot = parent === undefined;
    if (isRoot !== (tag.local === 'svg') || isForeign || (parent && parent.name === 'defs'))
      fail('render.logo.not-drawn', `<${tag.local}>${parent ? '' : ' as the outermost element'}`);
    if (isRoot) size = sizeOf(attributes, fail);
    const look = readLook(attributes, parent?.look ?? PLAIN, fail);
    const own = readTransform(attributes.get('transform') ?? '');
    if (!own) return fail('render.logo.damaged', `the transform "${short(attributes.get('transform'))}"`);
    const matrix = combined(parent?.matrix ?? [1, 0, 0, 1, -(size?.x ?? 0), -(size?.y ?? 0)], own);
    const isHidden =
      parent?.isHidden === true || attributes.get('display') === 'none' || tag.local === 'defs';
    levels.push({ matrix, look, name: tag.local, isHidden });
    if (HOLDERS.includes(tag.local)) return;
    if (!SHAPES.includes(tag.local)) fail('render.logo.not-drawn', `<${tag.local}>`);
    if (parent && !HOLDERS.includes(parent.name))
      fail('render.logo.damaged', `<${tag.local}> in <${parent.name}>`);
    if (isHidden || !look.isVisible) return;
    const outline = outlineOf(tag.local, attributes, MOST_STEPS - steps);
    if (outline === 'too many')
      return fail('render.logo.not-drawn', `outlines of more than ${MOST_STEPS} steps`);
    if (!outline) return fail('render.logo.damaged', `the measures of <${tag.local}>`);
    steps += outline.length;
    const shape = shapeOf(outline, look, matrix, fail);
    if (shape) shapes.push(shape);
  });
  parser.write(text).close();
  if (!size) return fail('render.logo.damaged', 'there is no picture in it');
  if (shapes.length === 0) fail('render.logo.damaged', 'there is nothing in it to draw');
  return { width: size.width, height: size.height, shapes };
}

/** Farthest a shape may reach, in units of the picture; also what is no number at all lies beyond. */
const FARTHEST = 1e6;

function shapeOf(
  outline: readonly PathStep[],
  look: Look,
  matrix: Matrix,
  fail: SvgFail,
): LogoShape | undefined {
  const scale = evenScale(matrix);
  const stroke = look.stroke === 'none' || look.width === 0 ? undefined : strokeOf(look, scale ?? 1);
  if (stroke && scale === undefined)
    fail('render.logo.not-drawn', 'a stroke under a transform that stretches it unevenly');
  if (outline.length < 2 || (look.fill === 'none' && !stroke)) return undefined;
  const steps = outline.map((step) => moved(step, matrix));
  const isSound = steps.every((step) => step.every((n) => typeof n === 'string' || Math.abs(n) < FARTHEST));
  if (!isSound || (stroke && !(stroke.width < FARTHEST)))
    fail('render.logo.damaged', 'a shape farther out or wider than any picture');
  return {
    steps,
    evenOdd: look.evenOdd,
    ...(look.fill === 'none' ? {} : { fill: look.fill }),
    ...(stroke ? { stroke } : {}),
  };
}

function moved(step: PathStep, matrix: Matrix): PathStep {
  if (step[0] === 'Z') return step;
  if (step[0] === 'C') {
    return [
      'C',
      ...moveBy(matrix, step[1], step[2]),
      ...moveBy(matrix, step[3], step[4]),
      ...moveBy(matrix, step[5], step[6]),
    ];
  }
  return [step[0], ...moveBy(matrix, step[1], step[2])];
}

interface Size {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function sizeOf(attributes: ReadonlyMap<string, string>, fail: SvgFail): Size {
  const box = attributes.get('viewBox');
  const numbers =
    box === undefined
      ? [0, 0, parseFloat(attributes.get('width') ?? ''), parseFloat(attributes.get('height') ?? '')]
      : box
          .trim()
          .split(/[\s,]+/)
          .map(Number);
  const [x = 0, y = 0, width = 0, height = 0] = numbers;
  const isSound = numbers.length === 4 && numbers.every((n) => Number.isFinite(n) && Math.abs(n) < 1e6);
  if (!isSound || width <= 0 || height <= 0)
    return fail(
      'render.logo.damaged',
      box === undefined ? 'it has no viewBox, width and height' : 'its viewBox',
    );
  return { x, y, width, height };
}

/** Attributes of SVG by name, those of `style` among them; references and scripts are refused on the way. */
function ownAttributes(
  attributes: Readonly<Record<string, SaxesAttributeNS>>,
  fail: SvgFail,
): ReadonlyMap<string, string> {
  const own = new Map<string, string>();
  for (const { prefix, local, value } of Object.values(attributes)) {
    if (prefix === 'xmlns' || local === 'xmlns') continue;
    if (local === 'href' || local === 'src') fail('render.logo.not-allowed', `a reference (${local})`);
    if (/^on/i.test(local)) fail('render.logo.not-allowed', `a script (${local})`);
    if (prefix !== '') continue;
    if (/url\s*\(|javascript:|expression\s*\(/i.test(value))
      fail('render.logo.not-allowed', `a reference (${local}="${short(value)}")`);
    own.set(local, value);
  }
  for (const entry of (own.get('style') ?? '').split(';')) {
    const colon = entry.indexOf(':');
    if (colon > 0) own.set(entry.slice(0, colon).trim(), entry.slice(colon + 1).trim());
  }
  return own;
}

const short = (text = ''): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
