/** The letterhead as HTML: the logo inside the page, nothing fetched. */
import { elementsOf } from '../judge-markup.js';
import { LETTERHEAD } from '../layout/style-sheet.js';
import type { Logo, LogoShape } from '../logo/logo-shape.js';
import type { MarkupElement } from '../markup.js';
import { cssColour, escapeText, rem } from '../svg.js';
import { inlineToHtml } from './inline-html.js';

/**
 * The letterhead.
 *
 * @param element - the element `letterhead`
 * @param logo - the logo, where there is one
 * @returns one element
 */
export function letterheadToHtml(element: MarkupElement, logo: Logo | undefined): string {
  const lines = elementsOf(element).map((line) => `<div>${inlineToHtml(line.children)}</div>`);
  return [
    '<div class="letterhead">',
    ...(logo && element.attributes.logo !== 'none' ? [logoToHtml(logo)] : []),
    `<p class="firm">${escapeText(element.attributes.name ?? '')}</p>`,
    ...(lines.length > 0 ? [`<address>${lines.join('')}</address>`] : []),
    '</div>',
  ].join('\n');
}

function logoToHtml(logo: Logo): string {
  const scale = Math.min(LETTERHEAD.logoHeight / logo.height, LETTERHEAD.logoWidth / logo.width);
  const size = `style="width:${rem(logo.width * scale)};height:${rem(logo.height * scale)}"`;
  const alt = escapeText(logo.alt);
  if (logo.kind !== 'vector')
    return `<img src="data:image/${logo.kind};base64,${base64(logo.bytes)}" alt="${alt}" ${size}>`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(logo.width)} ${num(logo.height)}" role="img" aria-label="${alt}" ${size}>`,
    ...logo.shapes.map(shapeToSvg),
    '</svg>',
  ].join('');
}

function shapeToSvg({ steps, fill, evenOdd, stroke }: LogoShape): string {
  const data = steps
    .map(
      (step) =>
        `${step[0]}${step
          .slice(1)
          .map((value) => num(Number(value)))
          .join(' ')}`,
    )
    .join('');
  const look = [
    `fill="${fill ? cssColour(fill) : 'none'}"`,
    ...(evenOdd ? ['fill-rule="evenodd"'] : []),
    ...(stroke
      ? [
          `stroke="${cssColour(stroke.colour)}" stroke-width="${num(stroke.width)}" stroke-linecap="${stroke.cap}"`,
          `stroke-linejoin="${stroke.join}" stroke-miterlimit="${num(stroke.miter)}"`,
        ]
      : []),
    ...(stroke && stroke.dash.length > 0 ? [`stroke-dasharray="${stroke.dash.map(num).join(' ')}"`] : []),
  ];
  return `<path d="${data}" ${look.join(' ')}/>`;
}

/** Four decimals: a logo may be one unit wide. */
const num = (value: number): string => String(Math.round(value * 1e4) / 1e4 || 0);

function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  // A call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + 8192)));
  return btoa(parts.join(''));
}
