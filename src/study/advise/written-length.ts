/** Lengths as a file holds them, in the notation of a length beside them. */
import { parseQuantity } from '../../units/index.js';

const INCH = 0.0254;
/** Lengths closer than this are the same [m]. */
const SAME = 1e-9;

/**
 * A length in the notation of another: `2 ft 6 in`, `2'-6"`, `30 in`, `0.75 m`, `750 mm`.
 *
 * @param metres - the length [m]
 * @param like - a length as the file writes it
 * @returns text that reads back as the length, to a millionth of a millimetre where the notation can say it
 */
export function lengthText(metres: number, like: string): string {
  const text = inNotation(metres, like);
  const read = parseQuantity(text, 'length');
  if (read.ok && Math.abs(read.value - metres) < SAME) return text;
  // A length that the notation cannot say is said in small units and decimals.
  return isInches(like) ? `${tidy(metres / INCH, 6)} in` : `${tidy(metres * 1000, 6)} mm`;
}

/** Whether a length is written in feet or inches. */
function isInches(like: string): boolean {
  return /["'′″]|\b(ft|foot|feet|in|inch|inches)\b/.test(like);
}

function inNotation(metres: number, like: string): string {
  if (!isInches(like)) {
    if (/mm\s*$/.test(like)) return metres >= 10 ? `${tidy(metres, 4)} m` : `${tidy(metres * 1000, 1)} mm`;
    if (/cm\s*$/.test(like)) return `${tidy(metres * 100, 2)} cm`;
    return metres < 1 ? `${tidy(metres * 1000, 1)} mm` : `${tidy(metres, 4)} m`;
  }
  const sixteenths = Math.round((metres / INCH) * 16);
  const feet = Math.floor(sixteenths / 192);
  const inches = inchText(sixteenths - feet * 192);
  const short = /["'′″]/.test(like);
  const [foot, inch, join] = short ? ["'", '"', '-'] : [' ft', ' in', ' '];
  const isWholeInches = /\b(in|inch|inches)\s*$|"\s*$/.test(like) && !/ft|foot|feet|'/.test(like);
  if (isWholeInches && sixteenths < 36 * 16) return `${inchText(sixteenths)}${inch}`;
  if (feet === 0) return `${inches}${inch}`;
  return inches === '0' && !short ? `${feet}${foot}` : `${feet}${foot}${join}${inches}${inch}`;
}

function inchText(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let [top, bottom] = [sixteenths - whole * 16, 16];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** A number without noise in its last digits. */
function tidy(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return String(Math.round(value * scale) / scale);
}
