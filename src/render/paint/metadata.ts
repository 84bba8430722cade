/** What a PDF says about itself: title, dates, identity and attached files. Dates come from the options, never a clock. */
import { AFRelationship, type PDFDocument, PDFHexString, PDFName, PDFRawStream } from 'pdf-lib';
import { EngineError } from '../../issues/issue.js';

export interface Attachment {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
  readonly description: string;
  /** `source` of the document, which is the usual case, or `data` it goes with. */
  readonly relation?: 'source' | 'data';
}

export interface About {
  readonly title: string;
  readonly author?: string;
  readonly subject: string;
  /** ISO 8601 day or moment; taken as UTC when it names no zone. */
  readonly date: string;
  readonly language: string;
  /** Hexadecimal digest of the input. */
  readonly fingerprint: string;
  /** Words a program may look for. */
  readonly keywords?: readonly string[];
  /** Name and version of the tool. */
  readonly producer: string;
}

/** Reads the date of the document. @throws EngineError `render.date-unreadable` */
export function readDate(text: string): Date {
  const wanted = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})?)?$/;
  const isZoned = /(Z|[+-]\d{2}:\d{2})$/.test(text) || !text.includes('T');
  const date = new Date(isZoned ? text : `${text}Z`);
  if (!wanted.test(text) || Number.isNaN(date.getTime()))
    throw new EngineError('render.date-unreadable', { found: text });
  return date;
}

/** Writes title, dates and XMP. */
export function writeMetadata(pdf: PDFDocument, about: About): void {
  const { context, catalog } = pdf;
  const date = readDate(about.date);
  pdf.setTitle(about.title, { showInWindowTitleBar: true });
  if (about.author !== undefined) pdf.setAuthor(about.author);
  pdf.setSubject(about.subject);
  if (about.keywords !== undefined) pdf.setKeywords([...about.keywords]);
  pdf.setCreator(about.producer);
  pdf.setProducer(about.producer);
  pdf.setCreationDate(date);
  pdf.setModificationDate(date);
  pdf.setLanguage(about.language);
  const xmp = new TextEncoder().encode(xmpPacket(about, date));
  const dict = context.obj({ Type: 'Metadata', Subtype: 'XML', Length: xmp.length });
  // Not compressed: programs that do not read PDF search for it.
  catalog.set(PDFName.of('Metadata'), context.register(PDFRawStream.of(dict, xmp)));
  const id = PDFHexString.of(identity(about.fingerprint));
  context.trailerInfo.ID = context.obj([id, id]);
}

/** Thirty-two hexadecimal digits of the fingerprint. */
function identity(fingerprint: string): string {
  const digits = fingerprint.toLowerCase().replace(/[^0-9a-f]/g, '');
  return digits.slice(0, 32).padEnd(32, '0').toUpperCase();
}

/** Attaches files in the order of their names, which the name tree must have. */
export async function writeAttachments(
  pdf: PDFDocument,
  attachments: readonly Attachment[],
  date: string,
): Promise<void> {
  const when = readDate(date);
  const sorted = [...attachments].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  for (const file of sorted) {
    await pdf.attach(new Uint8Array(file.bytes), file.name, {
      mimeType: file.mime,
      description: file.description,
      creationDate: when,
      modificationDate: when,
      afRelationship: file.relation === 'data' ? AFRelationship.Data : AFRelationship.Source,
    });
  }
}

const escaped = (text: string): string =>
  text
    .replace(/\p{Cc}/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

function xmpPacket(about: About, date: Date): string {
  const when = date.toISOString().replace(/\.\d+Z$/, 'Z');
  const alt = (text: string): string =>
    `<rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt>`;
  return [
    '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">',
    '<dc:format>application/pdf</dc:format>',
    `<dc:title>${alt(about.title)}</dc:title>`,
    `<dc:description>${alt(about.subject)}</dc:description>`,
    ...(about.author === undefined
      ? []
      : [`<dc:creator><rdf:Seq><rdf:li>${escaped(about.author)}</rdf:li></rdf:Seq></dc:creator>`]),
    `<dc:language><rdf:Bag><rdf:li>${escaped(about.language)}</rdf:li></rdf:Bag></dc:language>`,
    `<xmp:CreateDate>${when}</xmp:CreateDate>`,
    `<xmp:ModifyDate>${when}</xmp:ModifyDate>`,
    `<xmp:CreatorTool>${escaped(about.producer)}</xmp:CreatorTool>`,
    ...(about.keywords === undefined
      ? []
      : [`<pdf:Keywords>${escaped(about.keywords.join(' '))}</pdf:Keywords>`]),
    `<pdf:Producer>${escaped(about.producer)}</pdf:Producer>`,
    '</rdf:Description>',
    '</rdf:RDF>',
    '</x:xmpmeta>',
    '<?xpacket end="r"?>',
  ].join('\n');
}
