/** The licences of everything that a bundle holds, as one text. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param {string} root folder of the project
 * @param {readonly string[]} inputs files that went into the bundle, relative to the root
 * @returns {string} one section a package, in order of name
 */
export function thirdPartyNotices(root, inputs) {
  const folders = new Set(inputs.map(packageFolder).filter((folder) => folder !== undefined));
  const sections = [...folders].sort().map((folder) => section(join(root, folder)));
  const head =
    'The command line and the library of pipeborne contain the following packages, each under its own licence.\n';
  return [head, ...sections].join(`\n${'-'.repeat(80)}\n\n`);
}

/** `node_modules/a/node_modules/@b/c/lib/d.js` belongs to `node_modules/a/node_modules/@b/c`. */
function packageFolder(input) {
  return /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1];
}

function section(folder) {
  const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  const notice = ['NOTICE', 'NOTICE.txt', 'NOTICE.md'].find((entry) => existsSync(join(folder, entry)));
  const text = file === undefined ? ownerLine(author) : readFileSync(join(folder, file), 'utf8').trim();
  const more = notice === undefined ? '' : `\n\n${readFileSync(join(folder, notice), 'utf8').trim()}`;
  if (typeof license !== 'string') throw new Error(`${name} does not say its licence`);
  return `${name} ${version}\nLicence: ${license}\n\n${text}${more}\n`;
}

function ownerLine(author) {
  const name = typeof author === 'string' ? author : author?.name;
  return `Copyright ${name ?? 'its authors'}. The package holds no licence text of its own.`;
}
