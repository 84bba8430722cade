/** PDFs that nobody fills in: each is made to cost time or memory, or to lead a reader astray. */
import { deflateSync } from 'node:zlib';

const latin = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'));

export function joined(...parts: readonly (string | Uint8Array)[]): Uint8Array {
  const all = parts.map((part) => (typeof part === 'string' ? latin(part) : part));
  const whole = new Uint8Array(all.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of all) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const END = '\ntrailer<</Root 1 0 R/Size 9>>\nstartxref\n0\n%%EOF\n';

/** A small PDF of the given objects, catalogue first. */
export const pdfOf = (...objects: readonly (string | Uint8Array)[]): Uint8Array =>
  joined('%PDF-1.7\n', ...objects.flatMap((object, i) => [`${i + 1} 0 obj\n`, object, '\nendobj\n']), END);

const CATALOG = '<</Type/Catalog/Pages 2 0 R/AcroForm 3 0 R>>';
const PAGES = '<</Type/Pages/Count 1/Kids[4 0 R]>>';
const formOf = (fields: string) => `<</Fields[${fields}]>>`;
const PAGE = '<</Type/Page/Parent 2 0 R/Annots[]>>';

const packed = (inside: Uint8Array, head: string): Uint8Array =>
  joined(`<<${head}/Filter/FlateDecode/Length ${inside.length}>>\nstream\n`, inside, '\nendstream');

/** Zeros, as many megabytes, in a thousandth of the room. */
const bomb = (megabytes: number): Uint8Array => {
  const part = new Uint8Array(megabytes * 1_000_000).fill(32);
  return new Uint8Array(deflateSync(part, { level: 9 }));
};

const many = (count: number, one: (i: number) => string): string => {
  const parts: string[] = [];
  for (let i = 0; i < count; i++) parts.push(one(i));
  return parts.join('');
};

/** Files by what they are, with the code of the error they must meet; `other` where any clear one will do. */
export const hostileFiles: Readonly<
  Record<string, { readonly make: () => Uint8Array; readonly code: string }>
> = {
  'nothing at all': { make: () => new Uint8Array(0), code: 'not-pdf' },
  'a text': { make: () => latin('gap-top: 3.2 mm\n'.repeat(1000)), code: 'not-pdf' },
  'only the mark': { make: () => latin('%PDF-1.7\n'), code: 'cut-off' },
  'larger than is read': {
    make: () => joined('%PDF-1.7\n', new Uint8Array(17 * 1024 * 1024)),
    code: 'too-large',
  },
  'as large as is read, of blanks': {
    make: () => joined('%PDF-1.7\n', new Uint8Array(15 * 1024 * 1024).fill(32), END),
    code: 'no-catalog',
  },
  'as large as is read, of digits and blanks': {
    make: () => joined('%PDF-1.7\n', latin('1 0 '.repeat(3_900_000)), END),
    code: 'no-catalog',
  },
  'as large as is read, of opening brackets': {
    make: () => joined('%PDF-1.7\n1 0 obj\n', new Uint8Array(15 * 1024 * 1024).fill(91), END),
    code: 'too-deep',
  },
  'as large as is read, of zeros in a list': {
    make: () => joined('%PDF-1.7\n1 0 obj\n[', latin('0 '.repeat(7_500_000)), ']\nendobj', END),
    code: 'too-much',
  },
  'as large as is read, of texts that do not end': {
    make: () => joined('%PDF-1.7\n', latin('1 0 obj('.repeat(1_900_000)), END),
    code: 'cut-off',
  },
  'as large as is read, of streams that do not end': {
    make: () => joined('%PDF-1.7\n', latin('1 0 obj<<>>stream\ne'.repeat(850_000)), END),
    code: 'cut-off',
  },
  'as large as is read, of the letter that ends streams': {
    make: () =>
      joined('%PDF-1.7\n1 0 obj<</Length 7>>stream\n', new Uint8Array(15 * 1024 * 1024).fill(101), END),
    code: 'cut-off',
  },
  'as large as is read, of comments': {
    make: () => joined('%PDF-1.7\n', latin('1 0 obj<<>>%%%%%%%%\n'.repeat(750_000)), END),
    code: 'too-much',
  },
  'a thousand groups in each other': {
    make: () => pdfOf(`${'<</A'.repeat(1000)} 0 ${'>>'.repeat(1000)}`),
    code: 'too-deep',
  },
  'half a million objects': {
    make: () => joined('%PDF-1.7\n', latin(many(500_000, (i) => `${i + 1} 0 obj<</T(a)>>endobj\n`)), END),
    code: 'too-much',
  },
  'nine hundred thousand fields in one list': {
    make: () => pdfOf(CATALOG, PAGES, `<</Fields[${many(900_000, () => '<</T(a)/FT/Tx>>')}]>>`),
    code: 'too-much',
  },
  'thirty thousand fields': {
    make: () =>
      joined(
        '%PDF-1.7\n',
        `1 0 obj<</Type/Catalog/AcroForm<</Fields[${many(30_000, (i) => `${i + 10} 0 R `)}]>>>>endobj\n`,
        many(30_000, (i) => `${i + 10} 0 obj<</T(f${i})/FT/Tx/V(${i})>>endobj\n`),
        END,
      ),
    code: 'too-much',
  },
  'one field named forty thousand times': {
    make: () => pdfOf(CATALOG, PAGES, formOf('5 0 R '.repeat(40_000)), PAGE, '<</T(a)/FT/Tx/V(b)>>'),
    code: 'other-form',
  },
  'objects packed into a bomb': {
    make: () => pdfOf(CATALOG, PAGES, packed(bomb(300), '/Type/ObjStm/N 1/First 10')),
    code: 'too-much',
  },
  'ten bombs below the bound each': {
    make: () =>
      pdfOf(
        CATALOG,
        PAGES,
        ...Array.from({ length: 10 }, () => packed(bomb(9), '/Type/ObjStm/N 1/First 10')),
      ),
    code: 'too-much',
  },
  'a bomb in a bomb': {
    make: () => {
      const inner = new Uint8Array(deflateSync(bomb(200), { level: 9 }));
      const head = `<</Type/ObjStm/N 1/First 10/Filter[/FlateDecode/FlateDecode]/Length ${inner.length}>>\nstream\n`;
      return pdfOf(CATALOG, PAGES, joined(head, inner, '\nendstream'));
    },
    code: 'too-much',
  },
  'the value of a field a bomb': {
    make: () =>
      pdfOf(CATALOG, PAGES, formOf('5 0 R'), PAGE, '<</T(unit.place)/FT/Tx/V 6 0 R>>', packed(bomb(100), '')),
    code: 'too-much',
  },
  'a packed stream of entries that all lead to one long text': {
    make: () => {
      const count = 50_000;
      const contents = many(count, (i) => `${i + 100} 0 `);
      const inside = latin(`${contents}(${' '.repeat(1_000_000)})`);
      const head = `/Type/ObjStm/N ${count}/First ${contents.length}`;
      return pdfOf(CATALOG, PAGES, packed(new Uint8Array(deflateSync(inside)), head));
    },
    code: 'too-much',
  },
  'a packed stream of entries that all lead to one long blank': {
    make: () => {
      const count = 50_000;
      const contents = many(count, (i) => `${i + 100} 0 `);
      const inside = latin(`${contents}${' '.repeat(1_000_000)}0`);
      const head = `/Type/ObjStm/N ${count}/First ${contents.length}`;
      return pdfOf(CATALOG, PAGES, packed(new Uint8Array(deflateSync(inside)), head));
    },
    code: 'too-much',
  },
  'a packed stream of as many entries as there are numbers': {
    make: () =>
      pdfOf(
        CATALOG,
        PAGES,
        packed(new Uint8Array(deflateSync(latin('1 0 '))), '/Type/ObjStm/N 1e300/First 4'),
      ),
    code: 'no-fields',
  },
  'pages that lead back to themselves': {
    make: () =>
      pdfOf(
        CATALOG,
        '<</Type/Pages/Kids[2 0 R 2 0 R 4 0 R]>>',
        formOf('5 0 R'),
        PAGE,
        '<</T(unit.place)/FT/Tx/V(x)>>',
      ),
    code: 'none',
  },
  'groups of fields that lead back to themselves': {
    make: () =>
      pdfOf(
        CATALOG,
        PAGES,
        formOf('5 0 R'),
        PAGE,
        '<</T(unit)/Kids[5 0 R 6 0 R]/Parent 6 0 R>>',
        '<</T(place)/FT/Tx/Kids[5 0 R]/Parent 5 0 R>>',
      ),
    code: 'no-fields',
  },
  'references that lead to each other': {
    make: () => pdfOf(CATALOG, PAGES, formOf('5 0 R'), PAGE, '6 0 R', '5 0 R'),
    code: 'no-fields',
  },
  'a field whose value is itself': {
    make: () => pdfOf(CATALOG, PAGES, formOf('5 0 R'), PAGE, '<</T(unit.place)/FT/Tx/V 5 0 R>>'),
    code: 'none',
  },
  'groups of fields a thousand deep': {
    make: () =>
      pdfOf(
        CATALOG,
        PAGES,
        formOf('5 0 R'),
        PAGE,
        ...Array.from({ length: 1000 }, (_, i) => `<</T(a)/Kids[${i + 6} 0 R]>>`),
        '<</T(z)/FT/Tx>>',
      ),
    code: 'no-fields',
  },
  'no form': { make: () => pdfOf('<</Type/Catalog/Pages 2 0 R>>', PAGES, '0', PAGE), code: 'no-fields' },
  'a form of the XFA kind alone': {
    make: () => pdfOf(CATALOG, PAGES, '<</Fields[]/XFA 5 0 R>>', PAGE, '<</Length 3>>stream\n<a>\nendstream'),
    code: 'only-xfa',
  },
  'another form': {
    make: () => pdfOf(CATALOG, PAGES, formOf('5 0 R'), PAGE, '<</T(surname)/FT/Tx/V(x)>>'),
    code: 'other-form',
  },
  encrypted: {
    make: () =>
      joined(
        '%PDF-1.7\n1 0 obj<</Type/Catalog>>endobj\n2 0 obj<</Filter/Standard>>endobj\ntrailer<</Root 1 0 R/Encrypt 2 0 R>>\n%%EOF',
      ),
    code: 'encrypted',
  },
  'a catalogue that is a number': { make: () => pdfOf('7'), code: 'no-catalog' },
};
