/** Values of a PDF, as ISO 32000-1, 7.3 has them. */
export interface PdfName {
  readonly kind: 'name';
  readonly name: string;
}

export interface PdfText {
  readonly kind: 'text';
  readonly bytes: Uint8Array;
}

export interface PdfRef {
  readonly kind: 'ref';
  readonly number: number;
}

export interface PdfList {
  readonly kind: 'list';
  readonly items: readonly PdfValue[];
}

export interface PdfGroup {
  readonly kind: 'group';
  readonly entries: ReadonlyMap<string, PdfValue>;
  /** Where its stream lies, for a group that heads one. */
  readonly stream?: Uint8Array;
}

export type PdfValue = null | boolean | number | PdfName | PdfText | PdfRef | PdfList | PdfGroup;

/** An object as it is found: what stands later in the file takes the place of what stands before. */
export interface PdfObject {
  readonly at: number;
  readonly value: PdfValue;
}

type Kinds = { name: PdfName; text: PdfText; ref: PdfRef; list: PdfList; group: PdfGroup };

/** Whether a value is of one of the composed kinds. */
export const isKind = <K extends keyof Kinds>(value: PdfValue | undefined, kind: K): value is Kinds[K] =>
  typeof value === 'object' && value !== null && value.kind === kind;
