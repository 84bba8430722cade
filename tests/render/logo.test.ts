import { readFileSync } from 'node:fs';
import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { renderHtml } from '../../src/render/html/render-html.js';
import { readLogo } from '../../src/render/logo/logo.js';
import type { Logo } from '../../src/render/logo/logo-shape.js';
import { readSvgLogo } from '../../src/render/logo/read-svg.js';
import { arcSteps } from '../../src/render/logo/svg-arc.js';
import { readPathData } from '../../src/render/logo/svg-path.js';
import { readTransform } from '../../src/render/logo/svg-transform.js';
import { renderPdf } from '../../src/render/render-pdf.js';
import { fonts } from './specimen.js';

const about = { file: 'logo', alt: 'a logo' };
const bytesOf = (text: string) => new TextEncoder().encode(text);
const svg = (inside: string, head = 'viewBox="0 0 10 10"') =>
  bytesOf(`<svg xmlns="http://www.w3.org/2000/svg" ${head}>${inside}</svg>`);

async function faultOf(bytes: Uint8Array): Promise<{ code: string; data: EngineError['data'] }> {
  const fault = await readLogo(bytes, about).then(
    () => undefined,
    (error: unknown) => error,
  );
  if (!(fault instanceof EngineError)) throw new Error(`no fault of ours: ${String(fault)}`);
  return { code: fault.code.replace('render.logo.', ''), data: fault.data };
}

async function shapesOf(inside: string, head?: string) {
  const logo = await readLogo(svg(inside, head), about);
  if (logo.kind !== 'vector') throw new Error('not a vector logo');
  return logo.shapes;
}

describe('of SVG', () => {
  test('size and place come from the viewBox, shapes from the bottom up in their colours', async () => {
    const logo = await readLogo(
      svg(
        '<rect x="5" y="5" width="2" height="1" fill="#f00"/><line x1="5" y1="5" x2="6" y2="6" stroke="blue"/>',
        'viewBox="5 5 20 10"',
      ),
      about,
    );
    expect(logo).toMatchObject({ kind: 'vector', width: 20, height: 10, alt: 'a logo' });
    expect(logo.kind === 'vector' && logo.shapes[0]).toMatchObject({
      fill: [1, 0, 0],
      steps: [['M', 0, 0], ['L', 2, 0], ['L', 2, 1], ['L', 0, 1], ['Z']],
    });
    expect(logo.kind === 'vector' && logo.shapes[1]?.stroke).toMatchObject({ colour: [0, 0, 1], width: 1 });
  });

  test('groups hand on their transform and look; what a shape says itself counts', async () => {
    const [shape, other] = await shapesOf(
      '<g transform="translate(1 2) scale(3)" fill="none" style="stroke: rgb(0, 255, 0); stroke-width: 2">' +
        '<path d="M0 0L1 1"/><path d="M0 0L1 1" stroke-width="1" stroke-dasharray="1 2 3"/></g>',
    );
    expect(shape?.steps).toEqual([
      ['M', 1, 2],
      ['L', 4, 5],
    ]);
    expect(shape?.stroke).toMatchObject({ colour: [0, 1, 0], width: 6 });
    expect(shape?.fill).toBeUndefined();
    expect(other?.stroke).toMatchObject({ width: 3, dash: [3, 6, 9, 3, 6, 9] });
  });

  test('what is hidden is left out, and what a drawing program notes for itself', async () => {
    const shapes = await shapesOf(
      '<metadata><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:li/></rdf:RDF></metadata>' +
        '<note:view xmlns:note="urn:notes" note:zoom="1"><note:grid/></note:view><defs id="d"/>' +
        '<g display="none"><rect width="1" height="1"/></g><rect width="1" height="1" visibility="hidden"/>' +
        '<g visibility="hidden"><rect width="3" height="1" visibility="visible"/></g>',
    );
    expect(shapes).toHaveLength(1);
  });

  test('path data of every letter, absolute and relative, come out as lines and curves', () => {
    expect(readPathData('m1,2 3-4h6v2zl1 1', 99)).toEqual([
      ['M', 1, 2],
      ['L', 4, -2],
      ['L', 10, -2],
      ['L', 10, 0],
      ['Z'],
      ['L', 2, 3],
    ]);
    // A quadratic curve raised to a cubic one, and mirrored handles (SVG 1.1, 8.3.6 and 8.3.7).
    expect(readPathData('M0 0Q3 3 6 0t6 0', 99)).toEqual([
      ['M', 0, 0],
      ['C', 2, 2, 4, 2, 6, 0],
      ['C', 8, -2, 10, -2, 12, 0],
    ]);
    expect(readPathData('M0 0C0 1 1 2 2 2S4 3 4 4', 99)?.[2]).toEqual(['C', 3, 2, 4, 3, 4, 4]);
  });

  test('an arc runs on its ellipse, the long way and the short way round', () => {
    for (const [large, sweep] of [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ] as const) {
      // Radii 5 and 3, turned by 30 degrees, from the origin to a point on it.
      const steps = arcSteps(0, 0, [5, 3, 30, large, sweep], 4, 1);
      const turn = Math.PI / 6;
      const flat = (x: number, y: number) => [
        (x * Math.cos(turn) + y * Math.sin(turn)) / 5,
        (-x * Math.sin(turn) + y * Math.cos(turn)) / 3,
      ];
      // The centre follows from both ends being one radius away; all middles of the curves must be so too.
      const points: (readonly [number, number])[] = [[0, 0]];
      let [x, y] = [0, 0];
      for (const step of steps) {
        if (step[0] !== 'C') throw new Error('not a curve');
        const [, ax, ay, bx, by, ex, ey] = step;
        points.push([(x + 3 * ax + 3 * bx + ex) / 8, (y + 3 * ay + 3 * by + ey) / 8], [ex, ey]);
        [x, y] = [ex, ey];
      }
      expect([x, y]).toEqual([4, 1]);
      const [p, q, r] = [points[0], points[1], points[2]].map((point) =>
        flat(point?.[0] ?? 0, point?.[1] ?? 0),
      );
      const centre = circumcentre(p as number[], q as number[], r as number[]);
      for (const point of points) {
        const [u = 0, v = 0] = flat(point[0], point[1]);
        expect(Math.hypot(u - (centre[0] ?? 0), v - (centre[1] ?? 0))).toBeCloseTo(1, 2);
      }
      const length = steps.length;
      expect(length >= (large === 1 ? 3 : 1) && length <= (large === 1 ? 4 : 2)).toBe(true);
    }
  });

  test('transforms are read from left to right', () => {
    expect(readTransform('translate(10,0) rotate(90)')?.map((n) => Math.round(n * 1e6) / 1e6 + 0)).toEqual([
      0, 1, -1, 0, 10, 0,
    ]);
    expect(readTransform('rotate(90, 1, 1)')?.map((n) => Math.round(n * 1e6) / 1e6 + 0)).toEqual([
      0, 1, -1, 0, 2, 0,
    ]);
    for (const bad of ['spin(3)', 'scale()', 'translate(1 2 3)', 'matrix(1 2)', 'scale(1', 'scale(x)'])
      expect(readTransform(bad)).toBeUndefined();
  });

  test.each([
    ['a script', '<script>alert(1)</script>', 'not-allowed'],
    ['a script in a foreign element', '<x:script xmlns:x="urn:x"/>', 'not-allowed'],
    ['a script of an event', '<rect width="1" height="1" onload="x()"/>', 'not-allowed'],
    ['a link', '<a href="https://example.com"><rect width="1" height="1"/></a>', 'not-allowed'],
    [
      'a picture from elsewhere',
      '<image xlink:href="file:///etc/passwd" xmlns:xlink="http://www.w3.org/1999/xlink"/>',
      'not-allowed',
    ],
    ['a reference in a colour', '<rect width="1" height="1" fill="url(#a)"/>', 'not-allowed'],
    ['a reference in a style', '<rect width="1" height="1" style="fill:URL( http://x )"/>', 'not-allowed'],
    ['a style sheet', '<style>rect{fill:red}</style>', 'not-drawn'],
    ['letters', '<text x="1" y="1">T</text>', 'not-drawn'],
    ['a gradient', '<defs><linearGradient id="a"/></defs>', 'not-drawn'],
    ['something see-through', '<rect width="1" height="1" opacity=".5"/>', 'not-drawn'],
    ['a filter', '<rect width="1" height="1" filter="blur(2px)"/>', 'not-drawn'],
    ['foreign content', '<foreignObject/>', 'not-drawn'],
    ['a colour nobody knows', '<rect width="1" height="1" fill="heather"/>', 'not-drawn'],
    ['an uneven stroke', '<g transform="scale(1 5)"><path d="M0 0L1 1" stroke="red"/></g>', 'not-drawn'],
    ['nothing', '', 'damaged'],
    ['broken path data', '<path d="M0 0 L 1"/>', 'damaged'],
    ['path data that start nowhere', '<path d="L 1 1"/>', 'damaged'],
    ['infinite numbers', '<path d="M0 0L1e999 0"/>', 'damaged'],
    ['an entity', '<rect width="&huge;" height="1"/>', 'damaged'],
    ['an end that is missing', '<g>', 'damaged'],
    ['too many elements', '<g/>'.repeat(3000), 'not-drawn'],
    ['too deep nesting', '<g>'.repeat(99) + '</g>'.repeat(99), 'not-drawn'],
    ['too long outlines', `<path d="M0 0${'L1 1'.repeat(60_000)}"/>`, 'damaged'],
  ])('%s is refused', async (_, inside, code) => {
    const fault = await faultOf(svg(inside));
    expect(fault.code).toBe(code);
    expect(fault.data.line).toBeGreaterThan(0);
  });

  test.each([
    [
      'entities of its own',
      '<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;">]><svg xmlns="http://www.w3.org/2000/svg"/>',
      'not-allowed',
    ],
    [
      'an external subset of entities',
      '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg>&x;</svg>',
      'not-allowed',
    ],
    [
      'a style sheet by instruction',
      '<?xml-stylesheet href="x.css"?><svg xmlns="http://www.w3.org/2000/svg"/>',
      'not-allowed',
    ],
    ['no size', '<svg xmlns="http://www.w3.org/2000/svg"><rect width="1" height="1"/></svg>', 'damaged'],
    [
      'another root',
      '<html xmlns="http://www.w3.org/1999/xhtml"><svg xmlns="http://www.w3.org/2000/svg"/></html>',
      'not-drawn',
    ],
    ['words that are no picture', 'just words', 'unknown-kind'],
    [
      'a thread',
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 1"><rect width="1" height="1"/></svg>',
      'too-thin',
    ],
  ])('a file with %s is refused', async (_, text, code) => {
    expect((await faultOf(bytesOf(text))).code).toBe(code);
  });
});

/** Centre of the circle through three points. */
function circumcentre([ax = 0, ay = 0]: number[], [bx = 0, by = 0]: number[], [cx = 0, cy = 0]: number[]) {
  const d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
  const [a, b, c] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  return [
    (a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d,
    (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d,
  ];
}

/** A PNG with the size its head says and the pixels given, sound in every checksum. */
function png(width: number, height: number, pixels: Uint8Array, head: readonly number[] = [8, 2, 0, 0, 0]) {
  const size = new DataView(new ArrayBuffer(8));
  size.setUint32(0, width);
  size.setUint32(4, height);
  const sizeBytes = [...new Uint8Array(size.buffer)];
  return Uint8Array.from([
    0x89,
    0x50,
    0x4e,
    0x47,
    0x0d,
    0x0a,
    0x1a,
    0x0a,
    ...chunk('IHDR', [...sizeBytes, ...head]),
    ...chunk('IDAT', deflateSync(pixels)),
    ...chunk('IEND', []),
  ]);
}

function chunk(name: string, data: Iterable<number>): readonly number[] {
  const body = [...bytesOf(name), ...data];
  let sum = 0xffffffff;
  for (const byte of body) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  const numbers = new DataView(new ArrayBuffer(8));
  numbers.setUint32(0, body.length - 4);
  numbers.setUint32(4, (sum ^ 0xffffffff) >>> 0);
  const bytes = new Uint8Array(numbers.buffer);
  return [...bytes.subarray(0, 4), ...body, ...bytes.subarray(4)];
}

const rows = (width: number, height: number) =>
  new Uint8Array(height * (1 + 3 * width))
    .fill(0x40)
    .map((byte, i) => (i % (1 + 3 * width) === 0 ? 0 : byte));

describe('of pixels', () => {
  test('a sound PNG is taken with its size', async () => {
    expect(await readLogo(png(4, 3, rows(4, 3)), about)).toMatchObject({ kind: 'png', width: 4, height: 3 });
  });

  test.each([
    ['cut off', png(4, 3, rows(4, 3)).slice(0, 60), 'damaged'],
    ['with a wrong checksum', png(4, 3, rows(4, 3)).map((byte, i) => (i === 20 ? 9 : byte)), 'damaged'],
    ['with rows missing', png(4, 30, rows(4, 3)), 'damaged'],
    ['that unpacks to far more than its size', png(4, 3, new Uint8Array(50_000_000)), 'damaged'],
    ['of absurd size', png(60_000, 60_000, rows(4, 3)), 'too-many-pixels'],
    ['without pixels', png(0, 3, rows(4, 3)), 'damaged'],
    ['of an impossible depth', png(4, 3, rows(4, 3), [3, 2, 0, 0, 0]), 'damaged'],
    ['that is interlaced', png(4, 3, rows(4, 3), [8, 2, 0, 0, 1]), 'not-drawn'],
    ['without its palette', png(4, 3, rows(4, 3), [8, 3, 0, 0, 0]), 'damaged'],
    ['larger than a logo', new Uint8Array(600_000).map((_, i) => png(4, 3, rows(4, 3))[i] ?? 0), 'too-large'],
  ])('a PNG %s is refused', async (_, bytes, code) => {
    expect((await faultOf(bytes)).code).toBe(code);
  });

  const jpeg = (frame: readonly number[], end: readonly number[] = [0xff, 0xd9]) =>
    Uint8Array.from([0xff, 0xd8, ...frame, 0xff, 0xda, 0, 2, 1, 2, 3, ...end]);
  const frame = (marker: number, height: number, width: number, components: number, precision = 8) => [
    0xff,
    marker,
    0,
    8 + 3 * components,
    precision,
    height >> 8,
    height & 255,
    width >> 8,
    width & 255,
    components,
    ...new Array<number>(3 * components).fill(1),
  ];

  test('a sound JPEG is taken with its size', async () => {
    const bytes = jpeg([...frame(0xc2, 300, 500, 3)]);
    expect(await readLogo(bytes, about)).toMatchObject({ kind: 'jpeg', width: 500, height: 300 });
  });

  test.each([
    ['without its end', jpeg(frame(0xc0, 3, 4, 3), []), 'damaged'],
    ['without a size', jpeg([]), 'damaged'],
    ['with two sizes', jpeg([...frame(0xc0, 3, 4, 3), ...frame(0xc0, 3, 4, 3)]), 'damaged'],
    ['that ends in a part', jpeg(frame(0xc0, 3, 4, 3)).slice(0, 9), 'damaged'],
    ['of absurd size', jpeg(frame(0xc0, 65_000, 65_000, 3)), 'too-many-pixels'],
    ['in printing colours', jpeg(frame(0xc0, 3, 4, 4)), 'not-drawn'],
    ['without loss', jpeg(frame(0xc3, 3, 4, 3)), 'not-drawn'],
    ['of twelve bits', jpeg(frame(0xc1, 3, 4, 3, 12)), 'not-drawn'],
  ])('a JPEG %s is refused', async (_, bytes, code) => {
    expect((await faultOf(bytes)).code).toBe(code);
  });
});

const markup =
  '<review title="Title" language="en"><letterhead name="Tarn &amp; Weir"><p>12 Quarry Lane</p></letterhead><section id="a" title="1 A"><p>words</p></section></review>';

function pdfWith(logo: Logo) {
  return renderPdf(markup, {
    fonts,
    drawings: {},
    page: 'a4',
    head: { left: '', right: '' },
    foot: { left: '', right: '' },
    title: 'Title',
    subject: 'x',
    date: '2026-01-01',
    language: 'en',
    fingerprint: 'ab'.repeat(32),
    attachments: [],
    logo,
  });
}

test('logos of both kinds stand in the PDF and in the page, the page needing nothing from outside', async () => {
  const drawn = readFileSync(new URL('../../samples/letterhead/logo.svg', import.meta.url));
  for (const bytes of [new Uint8Array(drawn), png(40, 30, rows(40, 30))]) {
    const logo = await readLogo(bytes, { file: 'logo', alt: 'a "hill" & a weir' });
    const [pdf, again] = [await pdfWith(logo), await pdfWith(logo)];
    expect(pdf).toEqual(again);
    const page = renderHtml(markup, { drawings: {}, title: 'Title', language: 'en', logo });
    expect(page).toContain('a &quot;hill&quot; &amp; a weir');
    expect(page).not.toMatch(/(href|src)="(?!data:|#)/);
    expect(page.indexOf('class="letterhead"')).toBeLessThan(page.indexOf('<h1>'));
  }
});

test('a letterhead without a logo, and one that asks for none', async () => {
  const logo = await readLogo(svg('<rect width="9" height="9"/>'), about);
  const none = markup.replace('<letterhead ', '<letterhead logo="none" ');
  expect(renderHtml(none, { drawings: {}, title: 'T', language: 'en', logo })).not.toContain('<svg');
  expect(renderHtml(markup, { drawings: {}, title: 'T', language: 'en' })).toContain('Tarn &amp; Weir');
});

test('a shape that lies beyond every number, or every picture, is refused', () => {
  const nested = (times: number) =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${'<g transform="scale(1e9)">'.repeat(times)}<rect width="5" height="5"/>${'</g>'.repeat(times)}</svg>`;
  for (const times of [1, 5, 30])
    expect(() => readSvgLogo(nested(times), 'logo.svg')).toThrow(
      expect.objectContaining({ code: 'render.logo.damaged' }),
    );
  expect(readSvgLogo(nested(0), 'logo.svg').shapes).toHaveLength(1);
});
