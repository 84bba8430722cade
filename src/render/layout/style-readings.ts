/** Style step for lines to fill in. */
import type { FieldKind, FormField } from '../form/field.js';
import { elementsOf } from '../judge-markup.js';
import type { MarkupElement } from '../markup.js';
import { plain, styleInline } from './style-inline.js';
import { STYLES, type TextStyle } from './style-sheet.js';
import type { AsideRole, StyledBox, StyledReading, StyledReadings } from './styled.js';

/** More choices than this are a list that opens, not buttons side by side. */
const MOST_BUTTONS = 4;

const ASIDES: Readonly<Record<AsideRole, TextStyle>> = {
  expected: STYLES.expected,
  limit: STYLES.limit,
  source: STYLES.boxSource,
};

/**
 * Gives lines to fill in their styles.
 *
 * @param element - the element `readings`
 * @returns heads and rows
 */
export function styleReadings(element: MarkupElement): StyledReadings {
  const { what = '', filled = '', 'left-out': leftOut = '', abreast = '1' } = element.attributes;
  return {
    kind: 'readings',
    heads: [what, filled, leftOut].map((words) => plain(words, STYLES.columnHead)),
    rows: elementsOf(element).map(styleReading),
    abreast: Number(abreast),
  };
}

function styleReading(row: MarkupElement): StyledReading {
  const children = elementsOf(row);
  const boxes = children.filter(({ name }) => name === 'box');
  const own = boxes.filter(({ attributes }) => attributes.place !== 'left-out');
  return {
    alone: row.attributes.width === 'full',
    label: plain(row.attributes.label ?? '', STYLES.reading),
    asides: children
      .filter(({ name }) => name === 'aside')
      .map((aside) => {
        const role = aside.attributes.role as AsideRole;
        return { role, spans: styleInline(aside.children, ASIDES[role]) };
      }),
    boxes: own.map((box) =>
      styleBox(own.length === 1 && isSaid(box, row) ? { ...box, attributes: unlabelled(box) } : box),
    ),
    leftOut: boxes.filter(({ attributes }) => attributes.place === 'left-out').map(styleBox),
  };
}

/** Whether the words of a box that stands alone are those of its row. */
function isSaid(box: MarkupElement, row: MarkupElement): boolean {
  const wordsIn = (text = ''): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  const said = new Set(wordsIn(row.attributes.label));
  return box.attributes.kind !== 'tick' && wordsIn(box.attributes.label).every((word) => said.has(word));
}

function unlabelled(box: MarkupElement): MarkupElement['attributes'] {
  const { label: _label, ...rest } = box.attributes;
  return rest;
}

function styleBox(box: MarkupElement): StyledBox {
  const { label = '', unit = '', expected = '' } = box.attributes;
  const field = fieldOf(box);
  return {
    field,
    label: plain(label, field.kind === 'tick' ? STYLES.choice : STYLES.boxLabel),
    unit: plain(unit, STYLES.boxUnit),
    expected: plain(expected, STYLES.boxSource),
    choices: field.choices.map((choice) => plain(choice, STYLES.choice)),
  };
}

/**
 * The field a box stands for.
 *
 * @param box - the element `box`
 * @returns name, kind, tip, choices
 */
export function fieldOf(box: MarkupElement): FormField {
  const { id = '', kind = 'text', tip = '', lines = '1' } = box.attributes;
  const choices = elementsOf(box).map(wordsOf);
  return {
    name: id,
    kind: kind as FieldKind,
    tip,
    choices,
    isList: kind === 'choice' && choices.length > MOST_BUTTONS,
    lines: Number(lines),
  };
}

/** The words of an element, blanks brought together. */
function wordsOf(element: MarkupElement): string {
  return element.children
    .map((child) => (child.kind === 'text' ? child.text : wordsOf(child)))
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}
