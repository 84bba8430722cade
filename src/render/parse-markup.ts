/** Reads the filled template into elements and judges every one against the vocabulary, all faults in one go. */
import { SaxesParser } from 'saxes';
import { coded, type Issue, IssuesError, issueOf } from '../issues/issue.js';
import { judgeDocument, type MarkupFault, type MarkupFaultData } from './judge-markup.js';
import type { MarkupElement, MarkupNode } from './markup.js';
import type { TemplatePlace } from './template/origins.js';
import { allowedInside, takesText, VOCABULARY } from './vocabulary.js';

/** Largest filled template that is read [bytes of UTF-16 / 2]. */
export const LARGEST_MARKUP = 5_000_000;
/** Deepest nesting of elements. */
const DEEPEST = 40;
/** More faults than this are not listed. */
const MOST_ISSUES = 20;

export interface MarkupOptions {
  readonly name?: string;
  /** Place in a template of a place in the text, where the text was filled from templates. */
  readonly placeOf?: (line: number, column: number) => TemplatePlace | undefined;
  /** True where links that lead nowhere are dealt with afterwards. */
  readonly looseLinks?: boolean;
}

interface OpenElement {
  readonly name: string;
  readonly attributes: Record<string, string>;
  readonly children: MarkupNode[];
  readonly line: number;
}

/**
 * Reads markup and checks it against the closed vocabulary.
 *
 * @param text - markup, for example a filled template
 * @param options - name of the template for messages, where its places were written, whether links may lead nowhere
 * @returns the root element `review`
 * @throws IssuesError with every fault: line, what was found, what is allowed
 */
export function parseMarkup(text: string, options: MarkupOptions = {}): MarkupElement {
  const name = options.name ?? 'review';
  const issues: Issue[] = [];
  const lines = text.split('\n', 100_000);
  const complain = <Fault extends MarkupFault>(
    fault: Fault,
    line: number,
    column: number,
    data: MarkupFaultData<Fault>,
  ): void => {
    const near = (lines[line - 1] ?? '').trim().slice(0, 80);
    const written = options.placeOf?.(line, Math.max(1, column));
    const place = written
      ? { file: `${written.template}.hbs`, line: written.line, column: written.column, path: 'markup' }
      : { file: name, line, column: Math.max(1, column), path: 'markup' };
    const where = { template: written?.template ?? name, line: place.line, near };
    issues.push(issueOf('error', coded(`render.markup.${fault}`, { ...data, ...where } as never), place));
  };
  if (text.length > LARGEST_MARKUP) {
    complain('too-large', 1, 1, { size: text.length, largest: LARGEST_MARKUP });
    throw new IssuesError(issues);
  }

  const parser = new SaxesParser({ position: true });
  // The five of XML stand on the prototype of the list, so the list is added to, not copied.
  Object.assign(parser.ENTITIES, { nbsp: '\u00a0', ensp: '\u2002', thinsp: '\u2009', shy: '' });
  const open: OpenElement[] = [];
  let root: MarkupElement | undefined;
  let broken = false;

  const stop = (reason: string): void => {
    if (broken) return;
    broken = true;
    complain('not-well-formed', parser.line, parser.column, { reason });
  };
  parser.on('error', (error) => stop(error.message.replace(/^(undefined:)?\d+:\d+: /, '')));
  parser.on('doctype', () => stop('a document type declaration is not allowed'));
  parser.on('processinginstruction', () => stop('a processing instruction is not allowed'));
  parser.on('opentag', (tag) => {
    if (broken) return;
    const attributes = tag.attributes as Record<string, string>;
    if (open.length >= DEEPEST) {
      stop(`elements stand more than ${DEEPEST} deep`);
      return;
    }
    const parent = open.at(-1);
    judgeElement(tag.name, attributes, parent?.name, (code, data) =>
      complain(code, parser.line, parser.column, data),
    );
    open.push({ name: tag.name, attributes: normalised(attributes), children: [], line: parser.line });
  });
  parser.on('closetag', () => {
    if (broken) return;
    const done = open.pop();
    if (!done) return;
    const element: MarkupElement = { kind: 'element', ...done };
    const parent = open.at(-1);
    if (parent) parent.children.push(element);
    else root = element;
  });
  const addText = (words: string): void => {
    const parent = open.at(-1);
    if (broken || !parent) return;
    if (takesText(parent.name) || !VOCABULARY[parent.name])
      parent.children.push({ kind: 'text', text: words.normalize('NFC') });
    else if (/\S/.test(words))
      // The reader stands behind the text; the fault is where its first word is.
      complain(
        'text-not-allowed',
        parser.line - (words.trimStart().match(/\n/g)?.length ?? 0),
        parser.column,
        {
          inside: parent.name,
          found: words.trim().slice(0, 40),
          allowed: allowedInside(parent.name),
        },
      );
  };
  parser.on('text', addText);
  parser.on('cdata', addText);

  try {
    parser.write(text).close();
  } catch (error) {
    stop((error as Error).message);
  }
  if (!broken && root) {
    judgeDocument(root, (code, line, data) => {
      if (code === 'link-leads-nowhere' && options.looseLinks === true) return;
      // The fault is of the element that begins or ends on this line: its first word tells where.
      complain(code, line, (lines[line - 1] ?? '').search(/\S/) + 1, data);
    });
  }
  if (issues.length > 0 || !root) throw new IssuesError(issues.slice(0, MOST_ISSUES));
  return root;
}

function normalised(attributes: Record<string, string>): Record<string, string> {
  return Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, value.normalize('NFC')]));
}

function judgeElement(
  name: string,
  attributes: Readonly<Record<string, string>>,
  parent: string | undefined,
  complain: <Fault extends MarkupFault>(fault: Fault, data: MarkupFaultData<Fault>) => void,
): void {
  const allowed = parent === undefined ? ['review'] : allowedInside(parent);
  const rule = Object.hasOwn(VOCABULARY, name) ? VOCABULARY[name] : undefined;
  if (!rule) {
    complain('unknown-element', { found: name, inside: parent ?? 'the document', allowed });
    return;
  }
  if (!allowed.includes(name) && (parent === undefined || Object.hasOwn(VOCABULARY, parent)))
    complain('misplaced-element', { found: name, inside: parent ?? 'the document', allowed });
  for (const attribute of rule.required)
    if (!Object.hasOwn(attributes, attribute)) complain('missing-attribute', { element: name, attribute });
  for (const [attribute, value] of Object.entries(attributes)) {
    const wanted = Object.hasOwn(rule.attributes, attribute) ? rule.attributes[attribute] : undefined;
    if (!wanted)
      complain('unknown-attribute', {
        element: name,
        found: attribute,
        allowed: Object.keys(rule.attributes),
      });
    else if ('oneOf' in wanted) {
      if (!wanted.oneOf.includes(value))
        complain('wrong-value', { element: name, attribute, found: value, allowed: wanted.oneOf });
    } else if (!wanted.pattern.test(value))
      complain('wrong-value', {
        element: name,
        attribute,
        found: value.slice(0, 60),
        allowed: [wanted.wanted],
      });
  }
}
