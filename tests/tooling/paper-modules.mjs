/** The shipped templates and fonts as modules of data, for programs that have no folder to read. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const FACES = {
  regular: 'SourceSans3-Regular.ttf',
  bold: 'SourceSans3-SemiBold.ttf',
  italic: 'SourceSans3-Italic.ttf',
};

/**
 * @param {string} folder the folder of templates, with the fonts in it
 * @returns {Record<string, string>} texts of the modules and their declarations, by file name
 */
export function paperModules(folder) {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.hbs'),
  );
  const templates = Object.fromEntries(
    names
      .map((name) => name.split('\\').join('/'))
      .sort()
      .map((name) => [name.slice(0, -'.hbs'.length), readFileSync(join(folder, name), 'utf8')]),
  );
  const faces = Object.entries(FACES).map(([face, file]) => {
    const text = readFileSync(join(folder, 'fonts', file)).toString('base64');
    return `${face}:/* @__PURE__ */bytes("${text}")`;
  });
  return {
    'templates.js': `export const templates=${JSON.stringify(templates)};\n`,
    'templates.d.ts': [
      '/** The templates of the package, by path below the folder of templates, without ending. */',
      'export declare const templates: Readonly<Record<string, string>>;\n',
    ].join('\n'),
    'fonts.js': [
      '// Source Sans 3, under the SIL Open Font License 1.1: templates/fonts/OFL.txt of the package.',
      'const bytes=(text)=>Uint8Array.from(atob(text),(sign)=>sign.charCodeAt(0));',
      `export const fonts={${faces.join(',')}};\n`,
    ].join('\n'),
    'fonts.d.ts': [
      '/** The font files of the package as bytes, by face. */',
      "export declare const fonts: Readonly<Record<'regular' | 'bold' | 'italic', Uint8Array>>;\n",
    ].join('\n'),
  };
}
