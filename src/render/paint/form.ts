/**
 * Writes the form of a PDF: fields under their names, each with a widget on its page, and the fonts a viewer sets
 * what is typed in. No field has a script: the wanted pattern stands in the tip, and what is typed is judged when it
 * is read.
 */
import {
  type PDFCatalog,
  type PDFContext,
  type PDFDict,
  PDFHexString,
  PDFName,
  type PDFRef,
  PDFString,
} from 'pdf-lib';
import { choiceState, type FormField, MOST_SIGNS, SIGNS_OF_LINE, TICKED } from '../form/field.js';
import { dotAppearance, emptyAppearance, tickAppearance } from './appearance.js';
import { num } from './canvas.js';
import { type NamedField, namedFields } from './field-names.js';
import type { BoxArea } from './paint-box.js';

// Flags of fields, by the numbers of the bits in ISO 32000-1, tables 221, 226, 228 and 230.
const READ_ONLY = 1 << 0;
const MULTILINE = 1 << 12;
const RADIO = 1 << 15;
const COMBO = 1 << 17;
const NO_SPELLING = 1 << 22;
// Flags of annotations, table 165.
const HIDDEN = 1 << 1;
const PRINT = 1 << 2;

/** Typed words are set in a dark blue, apart from printed ones; size 0 lets the viewer fit one line to its box. */
const TYPED_INK = '0.05 0.1 0.45 rg';
const FITTED = `/Helv 0 Tf ${TYPED_INK}`;
/** Size of several lines [points]. */
const WRITTEN = `/Helv 10 Tf ${TYPED_INK}`;

/** Where a widget goes. */
export interface WidgetPlace {
  /** Its object. */
  readonly ref: PDFRef;
  /** Its key in the tree of the structure. */
  readonly key: number;
  readonly page: PDFRef;
  readonly pageHeight: number;
}

export interface Form {
  readonly add: (area: BoxArea, place: WidgetPlace) => void;
  /**
   * Writes the form into the catalogue, if there is one.
   *
   * @returns widgets of the fields nobody sees, for the first page
   */
  readonly write: (
    catalog: PDFCatalog,
    stated: Readonly<Record<string, string>>,
    firstPage: PDFRef,
  ) => readonly PDFRef[];
}

/**
 * Starts a form.
 *
 * @param context - the PDF's objects
 * @returns the growing form
 */
export function openForm(context: PDFContext): Form {
  const fields: NamedField[] = [];
  const groups = new Map<string, { readonly ref: PDFRef; readonly buttons: PDFRef[] }>();

  const addButton = (area: BoxArea, place: WidgetPlace): PDFRef => {
    const { name } = area.field;
    let group = groups.get(name);
    if (!group) {
      group = { ref: context.nextRef(), buttons: [] };
      groups.set(name, group);
      const dict = context.obj({ FT: 'Btn', Ff: RADIO, V: 'Off', Kids: group.buttons });
      context.assign(group.ref, described(context, dict, area.field));
      fields.push({ name, ref: group.ref, dict });
    }
    group.buttons.push(place.ref);
    // The list was copied when the field was written.
    const dict = context.lookup(group.ref) as PDFDict;
    dict.set(PDFName.of('Kids'), context.obj(group.buttons));
    return group.ref;
  };

  const add = (area: BoxArea, place: WidgetPlace): void => {
    const { field, width, height } = area;
    const widget = context.obj({
      Type: 'Annot',
      Subtype: 'Widget',
      Rect: [area.x, place.pageHeight - area.y - height, area.x + width, place.pageHeight - area.y].map(
        hundredths,
      ),
      F: PRINT,
      P: place.page,
      StructParent: place.key,
    });
    context.assign(place.ref, widget);
    if (field.kind === 'choice' && !field.isList) {
      const state = choiceState(field.choices, area.choice ?? 0);
      writeStates(context, widget, state, dotAppearance, width, height, 'l');
      widget.set(PDFName.of('Parent'), addButton(area, place));
      return;
    }
    described(context, widget, field);
    fields.push({ name: field.name, ref: place.ref, dict: widget });
    if (field.kind === 'tick') {
      widget.set(PDFName.of('FT'), PDFName.of('Btn'));
      widget.set(PDFName.of('V'), PDFName.of('Off'));
      writeStates(context, widget, TICKED, tickAppearance, width, height, '4');
      return;
    }
    writeText(context, widget, field, width, height);
  };

  const write: Form['write'] = (catalog, stated, firstPage) => {
    const hidden = Object.entries(stated).map(([name, value]): NamedField => {
      const dict = context.obj({
        Type: 'Annot',
        Subtype: 'Widget',
        Rect: [0, 0, 0, 0],
        F: HIDDEN,
        P: firstPage,
        FT: 'Tx',
        Ff: READ_ONLY,
        DA: PDFString.of(FITTED),
        V: PDFHexString.fromText(value),
      });
      return { name, ref: context.register(dict), dict };
    });
    if (fields.length + hidden.length === 0) return [];
    const roots = namedFields(context, [...fields, ...hidden]);
    const form = context.obj({
      Fields: [...roots],
      DA: PDFString.of(FITTED),
      DR: { Font: { Helv: helvetica(context), ZaDb: dingbats(context) } },
    });
    catalog.set(PDFName.of('AcroForm'), context.register(form));
    return hidden.map(({ ref }) => ref);
  };
  return { add, write };
}

function described(context: PDFContext, dict: PDFDict, field: FormField): PDFDict {
  dict.set(PDFName.of('TU'), PDFHexString.fromText(field.tip));
  // The whole name once more: programs that put files together lose the groups above a field.
  dict.set(PDFName.of('TM'), PDFString.of(field.name));
  if (field.kind === 'number' || field.kind === 'date') dict.set(PDFName.of('Ff'), context.obj(NO_SPELLING));
  return dict;
}

function writeText(
  context: PDFContext,
  widget: PDFDict,
  field: FormField,
  width: number,
  height: number,
): void {
  const isLong = field.lines > 1;
  widget.set(PDFName.of('DA'), PDFString.of(isLong ? WRITTEN : FITTED));
  widget.set(PDFName.of('V'), PDFString.of(''));
  widget.set(PDFName.of('AP'), context.obj({ N: emptyAppearance(context, width, height) }));
  if (field.kind === 'choice') {
    widget.set(PDFName.of('FT'), PDFName.of('Ch'));
    widget.set(PDFName.of('Ff'), context.obj(COMBO));
    // The empty answer takes a wrong one back.
    widget.set(
      PDFName.of('Opt'),
      context.obj(['', ...field.choices].map((one) => PDFHexString.fromText(one))),
    );
    return;
  }
  const most = isLong ? SIGNS_OF_LINE * field.lines : MOST_SIGNS[field.kind];
  widget.set(PDFName.of('FT'), PDFName.of('Tx'));
  widget.set(PDFName.of('MaxLen'), context.obj(most));
  if (isLong) widget.set(PDFName.of('Ff'), context.obj(MULTILINE));
}

/** Appearances of a button: pressed and not, and the sign of the form's own font for programs that draw anew. */
function writeStates(
  context: PDFContext,
  widget: PDFDict,
  state: string,
  pressed: (context: PDFContext, width: number, height: number) => PDFRef,
  width: number,
  height: number,
  sign: string,
): void {
  widget.set(PDFName.of('AS'), PDFName.of('Off'));
  const states = context.obj({ Off: emptyAppearance(context, width, height) });
  states.set(PDFName.of(state), pressed(context, width, height));
  widget.set(PDFName.of('AP'), context.obj({ N: states }));
  widget.set(PDFName.of('MK'), context.obj({ CA: PDFString.of(sign) }));
  widget.set(PDFName.of('DA'), PDFString.of(`/ZaDb 0 Tf ${TYPED_INK}`));
}

const hundredths = (value: number): number => Number(num(value));

const helvetica = (context: PDFContext): PDFRef =>
  context.register(
    context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: 'Helvetica', Encoding: 'WinAnsiEncoding' }),
  );

const dingbats = (context: PDFContext): PDFRef =>
  context.register(context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: 'ZapfDingbats' }));
