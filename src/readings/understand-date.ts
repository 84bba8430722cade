/** Days as people write them; an order of day and month that could be either is not guessed. */

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A time of day behind the day: `14:30`, `T14:30:00Z`, `2 pm`. */
const TIME = /(?:,? ?t?\d{1,2}:\d{2}(?::\d{2})?(?: ?(?:z|am|pm|h))?|,? \d{1,2} ?(?:am|pm|h))$/u;

/**
 * Reads a day: `2026-10-02`, `2026/10/02`, `2 October 2026`, `2-Oct-2026`, `Oct 2, 2026`, `31/12/2026`. A time of day behind
 * it is left to the time. Day and month in figures behind each other are read only where one of them can be no month.
 *
 * @param text - as written
 * @returns as `2026-10-02`, or undefined
 */
export function understandDate(text: string): string | undefined {
  const plain = text.trim().toLowerCase().replace(TIME, '').trim();
  const iso = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/u.exec(plain);
  if (iso) return dayOf(Number(iso[1]), Number(iso[3]), Number(iso[4]));
  const dayFirst = /^(\d{1,2})(?:\.|st|nd|rd|th)?[ -]([a-z]{3,9})\.?,?[ -](\d{4})$/u.exec(plain);
  if (dayFirst) return dayOf(Number(dayFirst[3]), monthOf(dayFirst[2] ?? ''), Number(dayFirst[1]));
  const monthFirst = /^([a-z]{3,9})\.?[ -](\d{1,2})(?:st|nd|rd|th)?,?[ -](\d{4})$/u.exec(plain);
  if (monthFirst) return dayOf(Number(monthFirst[3]), monthOf(monthFirst[1] ?? ''), Number(monthFirst[2]));
  const figures = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/u.exec(plain);
  if (figures) return dayInFigures(Number(figures[1]), Number(figures[3]), Number(figures[4]));
  return undefined;
}

/** `31/12/2026` and `12/31/2026` are one day; `11/04/2026` is two. */
function dayInFigures(first: number, second: number, year: number): string | undefined {
  const [european, american] = [dayOf(year, second, first), dayOf(year, first, second)];
  if (european !== undefined && american !== undefined) return first === second ? european : undefined;
  return european ?? american;
}

function monthOf(word: string): number {
  const at = MONTHS.indexOf(word.slice(0, 3)) + 1;
  return FULL[at - 1]?.startsWith(word) === true || word === 'sept' ? at : 0;
}

const FULL = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

function dayOf(year: number, month: number, day: number): string | undefined {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const length = (LENGTHS[month - 1] ?? 0) + (month === 2 && leap ? 1 : 0);
  if (year < 1900 || day < 1 || day > length) return undefined;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}`;
}
