import { expect, test } from 'vitest';
import { ownTexts, spelled, spelledData } from '../../src/issues/spelling.js';
import { spelledDrawings, spelledMarkup } from '../../src/render/spelled-document.js';

test('American spelling keeps case and endings', () => {
  expect(spelled('Centre of gravity, 3 millimetres, neighbours, GREY, per cent', 'american')).toBe(
    'Center of gravity, 3 millimeters, neighbors, GRAY, percent',
  );
  expect(spelled('Centre', 'british')).toBe('Centre');
  expect(spelled('a diameter, a parameter, a manometer and centrifugal', 'american')).toBe(
    'a diameter, a parameter, a manometer and centrifugal',
  );
});

test('what people wrote themselves stays, wherever it stands', () => {
  const own = ownTexts({ review: { project: 'Leisure Centre (north)' }, walk: [{ mark: 'Grey valve' }] });
  expect(own).toEqual(['Leisure Centre (north)', 'Grey valve']);
  expect(spelled('Review of Leisure Centre (north): centre of Grey valve', 'american', own)).toBe(
    'Review of Leisure Centre (north): center of Grey valve',
  );
});

test('a document is respelled in its words and in what a reader sees of its attributes', () => {
  const text = (words: string) => ({ kind: 'text' as const, text: words });
  const element = {
    kind: 'element' as const,
    name: 'table',
    attributes: { caption: 'Centre', columns: 'centre:2' },
    children: [text('the colour')],
    line: 1,
  };
  const [table] = [spelledMarkup(element, 'american', [])];
  expect(table?.attributes).toEqual({ caption: 'Center', columns: 'centre:2' });
  expect(table?.children).toEqual([text('the color')]);
  expect(spelledMarkup(element, 'british', [])).toBe(element);
});

test('drawings are respelled', () => {
  const drawing = {
    name: 'plan',
    width: 1,
    height: 1,
    title: 'Centre line',
    alt: 'colour',
    shapes: [
      {
        kind: 'text' as const,
        at: [0, 0] as const,
        text: 'centre',
        size: 8,
        anchor: 'start' as const,
        weight: 'regular' as const,
        ink: 'black' as const,
      },
    ],
  };
  const found = spelledDrawings({ plan: drawing }, 'american', []).plan;
  expect([found?.title, found?.alt]).toEqual(['Center line', 'color']);
  expect(found?.shapes[0]).toMatchObject({ text: 'center' });
});

test('plain data is respelled however deep, and left alone in British', () => {
  const data = { rows: [{ title: 'colour', count: 3 }] };
  expect(spelledData(data, 'american', [])).toEqual({ rows: [{ title: 'color', count: 3 }] });
  expect(spelledData(data, 'british', [])).toBe(data);
});
