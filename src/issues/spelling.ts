/**
 * American spelling of what the program itself says. Everything is written in British spelling; a document in US units
 * is printed in American. What people wrote themselves — names, marks, notes — stays as they wrote it.
 */

/** Which spelling a document is printed in. */
export type English = 'american' | 'british';

/** Words that differ, by their British beginning; an ending that is alike follows by itself. */
const AMERICAN: Readonly<Record<string, string>> = {
  aluminium: 'aluminum',
  analyse: 'analyze',
  behaviour: 'behavior',
  cancelled: 'canceled',
  catalogue: 'catalog',
  centre: 'center',
  centred: 'centered',
  colour: 'color',
  fibre: 'fiber',
  grey: 'gray',
  judgement: 'judgment',
  labelled: 'labeled',
  levelled: 'leveled',
  litre: 'liter',
  metre: 'meter',
  kilometre: 'kilometer',
  millimetre: 'millimeter',
  modelled: 'modeled',
  neighbour: 'neighbor',
  neighbouring: 'neighboring',
  'per cent': 'percent',
  pressurised: 'pressurized',
  recognised: 'recognized',
  sulphur: 'sulfur',
  towards: 'toward',
  travelled: 'traveled',
  vapour: 'vapor',
};

const BRITISH = new RegExp(`\\b(${Object.keys(AMERICAN).join('|')})(s?)\\b`, 'giu');

/**
 * Whether a text holds a word that is spelled otherwise in America.
 *
 * @param text - any text
 * @returns true where spelling would change it
 */
export function isBritish(text: string): boolean {
  BRITISH.lastIndex = 0;
  return BRITISH.test(text);
}

/**
 * One text in the spelling of a document.
 *
 * @param text - written in British spelling
 * @param english - wanted spelling
 * @param own - texts people wrote themselves; they are kept wherever they stand
 * @returns the text
 */
export function spelled(text: string, english: English, own: readonly string[] = []): string {
  if (english === 'british' || !isBritish(text)) return text;
  const kept = own.filter((each) => isBritish(each) && text.includes(each));
  if (kept.length === 0) return american(text);
  // Longest first, so that a name inside a longer note is not cut out of it.
  const parts = [...kept].sort((a, b) => b.length - a.length).map(escaped);
  return text
    .split(new RegExp(`(${parts.join('|')})`, 'u'))
    .map((part, index) => (index % 2 === 1 ? part : american(part)))
    .join('');
}

function american(text: string): string {
  return text.replace(BRITISH, (_all, word: string, plural: string) => {
    const found = AMERICAN[word.toLowerCase()] ?? word;
    const first = word.charAt(0);
    const cased = first === first.toUpperCase() ? `${first}${found.slice(1)}` : found;
    return `${word === word.toUpperCase() ? found.toUpperCase() : cased}${plural}`;
  });
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&');
}

/**
 * Every text in plain data, however deep: what people wrote themselves.
 *
 * @param data - an input as read
 * @returns its texts that spelling could touch, each once
 */
export function ownTexts(data: unknown): readonly string[] {
  const found = new Set<string>();
  const visit = (value: unknown): void => {
    if (typeof value === 'string') {
      if (isBritish(value)) found.add(value);
    } else if (typeof value === 'object' && value !== null) Object.values(value).forEach(visit);
  };
  visit(data);
  return [...found];
}

/**
 * Plain data with every text in it in the wanted spelling.
 *
 * @param data - texts, lists and records of them
 * @param english - wanted spelling
 * @param own - texts people wrote themselves
 * @returns data of the same shape
 */
export function spelledData<Data>(data: Data, english: English, own: readonly string[]): Data {
  if (english === 'british') return data;
  const visit = (value: unknown): unknown => {
    if (typeof value === 'string') return spelled(value, english, own);
    if (Array.isArray(value)) return value.map(visit);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, visit(inner)]));
  };
  return visit(data) as Data;
}

/**
 * The spelling of what is printed.
 *
 * @param units - units it is printed in
 * @param asked - as the file asks for
 * @returns the one asked for, or that which goes with the units
 */
export function englishFor(units: 'us' | 'si', asked: English | undefined): English {
  return asked ?? (units === 'us' ? 'american' : 'british');
}
