/**
 * The lanes of the tests, by the folder a test stands in. `npm test` runs the quick ones, `npm run test:whole` the
 * others, `.ci/run` all of them. A test of its own folder needs a line here; a test holds that every file has one lane.
 */

export const lanes = {
  published: {
    holds: 'values printed in publications, one file each',
    quick: true,
    proves: 'evidence',
    folders: ['published'],
  },
  'closed-form': {
    holds: 'frames whose answer theory gives: beams, bends, expansion, setting, vibration',
    quick: true,
    proves: 'evidence',
    folders: ['closed-form'],
  },
  properties: {
    holds: 'what must hold for every frame: balance, virtual work, energy, a second solver',
    quick: true,
    proves: 'evidence',
    folders: ['properties'],
  },
  mechanics: {
    holds: 'layout, frame, solver, contact, modes, start',
    quick: true,
    proves: 'behaviour',
    folders: ['units', 'geometry', 'catalog', 'algebra', 'model', 'mechanics', 'analysis'],
  },
  checks: {
    holds: 'every check: a case that meets, one that exceeds, one that cannot tell',
    quick: true,
    proves: 'behaviour',
    folders: ['judging', 'checks'],
  },
  input: {
    holds: 'what may be written, what is refused and how it is said, new files',
    quick: true,
    proves: 'behaviour',
    folders: ['input', 'issues', 'starter'],
  },
  report: {
    holds: 'pictures, sections, results, comparison, markup, layout, PDF and page',
    quick: true,
    proves: 'behaviour',
    folders: ['drawing', 'report', 'compare', 'render', 'app'],
  },
  'field-work': {
    holds: 'the field sheet, its form, readings, the line as found and as installed',
    quick: true,
    proves: 'behaviour',
    folders: ['sheet', 'forms', 'readings', 'as-found', 'as-installed'],
  },
  study: {
    holds: 'how sure verdicts are, and advice',
    quick: true,
    proves: 'behaviour',
    folders: ['study'],
  },
  architecture: {
    holds: 'who may know whom, comments with units, habits, sentences, words, lanes',
    quick: true,
    proves: 'house',
    folders: ['architecture'],
  },
  outside: {
    holds: 'whole lines solved by a general finite-element program; forms filled in by other programs',
    quick: false,
    proves: 'evidence',
    folders: ['outside'],
  },
  'command-line': {
    holds: 'arguments, files, terminal, exit status; the built command, and the examples of the read-me',
    quick: false,
    proves: 'behaviour',
    folders: ['cli'],
  },
  library: {
    holds: 'the package as others use it: entry points, a frame written by hand, sizes',
    quick: false,
    proves: 'behaviour',
    folders: ['library'],
  },
  browser: {
    holds: 'the page in a real browser: keyboard, width, contrast, paper',
    quick: false,
    proves: 'behaviour',
    folders: ['browser'],
  },
  hostile: {
    holds: 'files made to harm: sizes, depths, cut off, changed at random',
    quick: false,
    proves: 'behaviour',
    folders: ['hostile'],
  },
  pages: {
    holds: 'page proofs: every sample and reader laid out, read back, and within its most pages',
    quick: false,
    proves: 'behaviour',
    folders: ['pages', 'samples'],
  },
};

/** Lanes a word stands for: `quick`, `whole`, `all`, or the name of one. */
export function lanesOf(word) {
  const names = Object.keys(lanes);
  if (word === 'all') return names;
  if (word === 'quick' || word === 'whole') {
    return names.filter((name) => lanes[name]?.quick === (word === 'quick'));
  }
  if (names.includes(word)) return [word];
  throw new Error(`there is no lane "${word}"; there are quick, whole, all, ${names.join(', ')}`);
}

/** Lanes of a test file by the first folder below tests: one, if all is well. */
export function lanesOfFile(file) {
  const folder = file.split('/')[1] ?? '';
  return Object.keys(lanes).filter((name) => lanes[name]?.folders.includes(folder));
}
