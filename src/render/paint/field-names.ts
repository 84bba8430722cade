/** The tree of field names: `a.b.c` is the field `c` under `b` under `a`, as ISO 32000-1, 12.7.3.2 has it. */
import { type PDFContext, type PDFDict, PDFName, type PDFRef, PDFString } from 'pdf-lib';

/** A field and the object it is. */
export interface NamedField {
  readonly name: string;
  readonly ref: PDFRef;
  readonly dict: PDFDict;
}

interface Branch {
  readonly ref: PDFRef;
  readonly children: Map<string, Branch | NamedField>;
}

/**
 * Writes the names of fields and the groups they stand in.
 *
 * @param context - the PDF's objects
 * @param fields - fields with their whole names; none is the beginning of another
 * @returns the topmost fields, in the order in which they first occur
 */
export function namedFields(context: PDFContext, fields: readonly NamedField[]): readonly PDFRef[] {
  const root = new Map<string, Branch | NamedField>();
  for (const field of fields) {
    const words = field.name.split('.');
    let children = root;
    for (const word of words.slice(0, -1)) {
      let branch = children.get(word);
      if (!branch || 'dict' in branch) {
        branch = { ref: context.nextRef(), children: new Map() };
        children.set(word, branch);
      }
      children = branch.children;
    }
    children.set(words.at(-1) ?? '', field);
  }
  return writeLevel(context, root, undefined);
}

function writeLevel(
  context: PDFContext,
  level: ReadonlyMap<string, Branch | NamedField>,
  parent: PDFRef | undefined,
): readonly PDFRef[] {
  return [...level].map(([word, node]) => {
    const dict = 'dict' in node ? node.dict : context.obj({});
    dict.set(PDFName.of('T'), PDFString.of(word));
    if (parent) dict.set(PDFName.of('Parent'), parent);
    if (!('dict' in node)) {
      dict.set(PDFName.of('Kids'), context.obj([...writeLevel(context, node.children, node.ref)]));
      context.assign(node.ref, dict);
    }
    return node.ref;
  });
}
