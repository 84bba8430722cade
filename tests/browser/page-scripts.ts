/** Questions put to a page, as scripts that run in the browser. */

/** Words of the element that has the focus, and whether it shows it: inside the window, with an outline. */
export const FOCUSED = `(() => {
  const at = document.activeElement;
  const box = at.getBoundingClientRect();
  const style = getComputedStyle(at);
  return {
    words: at.textContent.trim(),
    index: [...document.querySelectorAll('*')].indexOf(at),
    name: at.tagName,
    seen: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth && box.height > 0,
    outlined: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1,
  };
})()`;

/** Every link that can be reached without opening anything. */
export const REACHABLE_LINKS = `[...document.querySelectorAll('a[href]')]
  .filter((link) => !link.closest('details:not([open]) > ol'))
  .map((link) => [...document.querySelectorAll('*')].indexOf(link))`;

/** Elements that stick out of the window at the right and cannot be moved sideways into it. */
export const STICKING_OUT = `[...document.querySelectorAll('body *')]
  .filter((element) => !element.closest('.scroll, .skip, .unseen, svg *') || element.matches('.scroll'))
  .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
  .map((element) => element.tagName + '.' + element.className + ': ' + element.textContent.trim().slice(0, 60))`;

export const WIDTHS = `({ page: document.documentElement.scrollWidth, window: document.documentElement.clientWidth })`;

/** Levels of headings as they stand. */
export const HEADING_LEVELS = `[...document.querySelectorAll('h1,h2,h3,h4,h5,h6')].map((heading) => Number(heading.tagName[1]))`;

/** Ids that stand on the page more than once. */
export const IDS_TWICE = `(() => {
  const ids = [...document.querySelectorAll('[id]')].map((one) => one.id);
  return ids.filter((id, i) => ids.indexOf(id) !== i);
})()`;

/** Contrast of words against what lies behind them, the lowest, by the formula of WCAG 2.1. */
export const LEAST_CONTRAST = `(() => {
  const channels = (text) => (text.match(/[\\d.]+/g) || []).map(Number);
  const light = ([r, g, b]) => {
    const part = (value) => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const behind = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const colour = channels(getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || colour[3] === 1) return colour;
    }
    return [255, 255, 255];
  };
  let least = { ratio: 21, words: '' };
  for (const element of document.querySelectorAll('body *:not(svg *)')) {
    const words = [...element.childNodes].filter((node) => node.nodeType === 3).map((node) => node.data.trim()).join('');
    if (words === '') continue;
    const [a, b] = [light(channels(getComputedStyle(element).color)), light(behind(element))];
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    if (ratio < least.ratio) least = { ratio, words };
  }
  return least;
})()`;

/** Looks at a picture of a page: how many colours it has, and which share of it is the most frequent one. */
export const colours = (png: string): string => `(async () => {
  const picture = new Image();
  picture.src = 'data:image/png;base64,${png}';
  await picture.decode();
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const context = canvas.getContext('2d');
  context.drawImage(picture, 0, 0);
  const { data } = context.getImageData(0, 0, picture.width, picture.height);
  const counts = new Map();
  for (let i = 0; i < data.length; i += 4) {
    const key = (data[i] << 16) | (data[i + 1] << 8) | data[i + 2];
    counts.set(key, (counts.get(key) || 0) + 1);
  }
  return { colours: counts.size, ground: Math.max(...counts.values()) / (data.length / 4) };
})()`;
