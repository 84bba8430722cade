/**
 * What bundles leave out of the packages they hold, for the build with esbuild. Each part says what it leaves out and
 * why nothing of it can be missed.
 */
import { build } from 'esbuild';

/** Handlebars reads templates here and never runs one: its reader alone, without compiler, runtime and source maps. */
const onlyTheReader = {
  name: 'handlebars-reader',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^handlebars$/ }, ({ resolveDir }) => ({
      path: 'handlebars',
      namespace: 'handlebars-reader',
      pluginData: resolveDir,
    }));
    onLoad({ filter: /.*/, namespace: 'handlebars-reader' }, ({ pluginData }) => ({
      contents:
        "import { parse } from 'handlebars/dist/cjs/handlebars/compiler/base.js'; export default { parse };",
      resolveDir: pluginData,
    }));
  },
};

/** The table of units as the mathematics library works it out, turned into plain numbers when the bundle is made. */
const unitsWorkedOut = {
  name: 'units-worked-out',
  setup({ onLoad, initialOptions }) {
    onLoad({ filter: /[\\/]src[\\/]units[\\/]unit-library\.ts$/ }, async ({ path }) => {
      const factors = await workedOutFactors(path, initialOptions.absWorkingDir);
      return {
        contents: `const factors = /* @__PURE__ */ JSON.parse(${JSON.stringify(JSON.stringify(factors))});
          export function conversionFactor(expression, si) {
            const factor = factors[expression + '|' + si];
            if (factor === undefined) throw new TypeError('no unit ' + expression + ' in ' + si);
            return factor;
          }`,
        loader: 'js',
      };
    });
  },
};

/** Every factor that the table of units asks for. Numbers survive JSON to the last bit. */
async function workedOutFactors(library, folder) {
  const table = library.replace(/unit-library\.ts$/, 'unit-table.ts');
  const dimensions = library.replace(/unit-library\.ts$/, 'dimension.ts');
  const { outputFiles } = await build({
    absWorkingDir: folder,
    stdin: {
      contents: `import { dimensions } from ${JSON.stringify(dimensions)};
        import { unitNames, unitFactor } from ${JSON.stringify(table)};
        import { asked } from 'asked-of-the-library';
        for (const dimension of dimensions) for (const unit of unitNames(dimension)) unitFactor(unit, dimension);
        export { asked };`,
      resolveDir: folder,
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
    plugins: [askingTheLibrary(library)],
  });
  const { asked } = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`
  );
  return Object.fromEntries(asked);
}

/** Puts a note of every question before the library. */
function askingTheLibrary(library) {
  return {
    name: 'asking-the-library',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^asked-of-the-library$|[\\/]unit-library\.js$/ }, () => ({
        path: 'asked',
        namespace: 'asked',
      }));
      onLoad({ filter: /.*/, namespace: 'asked' }, () => ({
        contents: `import { conversionFactor as answer } from ${JSON.stringify(library)};
          export const asked = new Map();
          export function conversionFactor(expression: string, si: string) {
            const factor = answer(expression, si);
            asked.set(expression + '|' + si, factor);
            return factor;
          }`,
        resolveDir: library.replace(/[\\/][^\\/]+$/, ''),
        loader: 'ts',
      }));
    },
  };
}

/**
 * Parts of the PDF library that are never used here and hang on its document all the same: the measures of the fonts that
 * every viewer has (fonts are embedded), its forms (ours are written by hand), reading a PDF, and outlines of SVG.
 */
const unusedOfPdf = {
  '@pdf-lib/standard-fonts':
    'export const FontNames = {}; export const Encodings = {}; export const Font = {};',
  'form/PDFForm.js': `export default {}; ${unusedPart('a form')}`,
  'parser/PDFParser.js': `export default {}; ${unusedPart('reading a PDF')}`,
  'api/svgPath.js': `export const svgPathToOperators = unused; ${unusedPart('an outline of SVG')}`,
};

function unusedPart(what) {
  return `function unused() { throw new TypeError(${JSON.stringify(`${what} is left out of the bundle`)}); }`;
}

const withoutUnusedOfPdf = {
  name: 'without-unused-of-pdf',
  setup({ onLoad }) {
    for (const [part, contents] of Object.entries(unusedOfPdf)) {
      const within = part.startsWith('@') ? `node_modules/${part}/.*` : `node_modules/pdf-lib/es/.*${part}$`;
      onLoad({ filter: new RegExp(within.replaceAll('/', '[\\\\/]')) }, () => ({ contents, loader: 'js' }));
    }
  },
};

/** Packages whose files do nothing when they are loaded but define things, and do not say so. */
const DEFINES_ONLY =
  /^(pdf-lib|@pdf-lib\/|pako|csv-parse|yaml|saxes|fflate|fastest-levenshtein|@noble\/)|[\\/]node_modules\/yaml\//;

/** Lets what nobody uses of such packages fall out, file by file. */
const definitionsOnly = {
  name: 'definitions-only',
  setup(plugin) {
    plugin.onResolve({ filter: /.*/ }, async ({ path, pluginData, ...from }) => {
      const inPackage = /node_modules[\\/](pdf-lib|@pdf-lib[\\/][^\\/]+|pako)[\\/]/.test(from.importer);
      if (pluginData === RESOLVED || !(DEFINES_ONLY.test(path) || inPackage)) return undefined;
      const found = await plugin.resolve(path, { ...from, pluginData: RESOLVED });
      return found.errors.length > 0 ? undefined : { path: found.path, sideEffects: false };
    });
  },
};
const RESOLVED = 'resolved';

export const trimPackages = [onlyTheReader, unitsWorkedOut, withoutUnusedOfPdf, definitionsOnly];
