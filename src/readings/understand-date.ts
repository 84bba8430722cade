/** Days as people write them; an order of day and month that could be either is not guessed. */

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Reads a day: `2026-10-02`, `2 October 2026`, `Oct 2, 2026`.
 *
 * @param text - as written
 * @returns as `2026-10-02`, or undefined
 */
export function understandDate(text: string): string | undefined {
  const plain = text.trim().toLowerCase();
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/u.exec(plain);
  if (iso) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dayFirst = /^(\d{1,2})\.? ([a-z]{3,9})\.?,? (\d{4})$/u.exec(plain);
  if (dayFirst) return dayOf(Number(dayFirst[3]), monthOf(dayFirst[2] ?? ''), Number(dayFirst[1]));
  const monthFirst = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})$/u.exec(plain);
  if (monthFirst) return dayOf(Number(monthFirst[3]), monthOf(monthFirst[1] ?? ''), Number(monthFirst[2]));
  return undefined;
}

function monthOf(word: string): number {
  return MONTHS.indexOf(word.slice(0, 3)) + 1;
}

function dayOf(year: number, month: number, day: number): string | undefined {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const length = (LENGTHS[month - 1] ?? 0) + (month === 2 && leap ? 1 : 0);
  if (year < 1900 || day < 1 || day > length) return undefined;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}`;
}
