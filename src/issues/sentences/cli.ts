import type { Sentences } from './sentence.js';
import { say } from './tell.js';

/** Sentences of the command line: arguments, files, and the fault that should not happen. */
export const cliSentences = {
  'cli.arguments.unusable': ({ found, help, hint }: { found: string; help: string; hint?: string }) => ({
    message: String(found),
    wanted: `what \`${help}\` lists`,
    example: String(help),
    ...(hint === undefined ? {} : { hint: String(hint) }),
  }),
  'cli.arguments.folder-wanted': ({ option, found }: { option: string; found: string }) => ({
    message: `${option} names one file, "${found}", for several reviews`,
    wanted: 'a folder, which may be new',
    example: `${option} reviews/`,
  }),
  'cli.arguments.wrong-ending': ({
    option,
    found,
    ending,
  }: {
    option: string;
    found: string;
    ending: string;
  }) => ({
    message: `${option} names "${found}", which does not end in ${ending}`,
    wanted:
      option === '-o' && String(ending).includes(' or ')
        ? `a file name that ends in ${ending}`
        : `a file name that ends in ${ending}, or a folder, which may be new`,
    example: `${option} review${String(ending).split(' ')[0]}`,
  }),
  'cli.arguments.over-input': ({ file }: { file: string }) => ({
    message: `"${file}" is an input and would be overwritten`,
    wanted: 'another name for what is written',
    example: '-o reviews/',
  }),
  'cli.arguments.same-output': ({ file }: { file: string }) => ({
    message: `"${file}" would be written twice`,
    wanted: 'inputs of different names, or one at a time with an output name each',
    example: 'pipeborne review north/pump.yaml -o north-pump.pdf',
  }),
  'cli.arguments.input-twice': () => ({
    message: 'standard input (-) is named more than once, and can be read only once',
    wanted: 'one - at most',
    example: 'pipeborne check - < pump.yaml',
  }),
  'cli.arguments.board-only': ({ option }: { option: string }) => ({
    message: `${option} is for a board, and sheets of one pump are named`,
    wanted: 'the record of the pumps and no sheet, or the sheets without it',
    example: `pipeborne as-installed plant/ --store readings/ ${option} board.xlsx`,
  }),
  'cli.arguments.no-record': () => ({
    message: 'neither a sheet nor the record of the pumps is named',
    wanted: 'a filled sheet; or --store with the folder that keeps the readings, for a board',
    example: 'pipeborne as-installed plant/ --store readings/',
  }),
  'cli.arguments.sheet-from-input': () => ({
    message: 'a sheet cannot come from standard input (-); the description of the pump can',
    wanted: 'the name of the sheet or of the file of readings',
    example: 'pipeborne as-installed pump.yaml sheet.pdf',
  }),
  'cli.arguments.templates-not-folder': ({ folder, reason }: { folder: string; reason: string }) => ({
    message: `the folder of templates "${folder}" cannot be used: ${reason}`,
    wanted: 'a folder with files that end in .hbs, each replacing the shipped one of the same name',
    example: '--templates our-letterhead/',
  }),
  'cli.arguments.template-fixed': ({ file }: { file: string }) => ({
    message: `"${file}" would replace words that stand in every review`,
    wanted: 'the shipped template, unchanged or not there at all',
    example: 'cautions: [Report to the site office before work.]',
    hint: 'add cautions in firm.yaml; a heading in your words goes there too, under headings',
  }),
  'cli.arguments.template-unused': (data: { file: string; available: readonly string[] }) => ({
    message: `"${data.file}" is put in by nothing: no template calls it, and no outline in firm.yaml names it`,
    wanted: `the name of a shipped template (${say(data, 'available')}), or of a section named in firm.yaml`,
  }),
  'cli.arguments.already-there': ({ file }: { file: string }) => ({
    message: `"${file}" is already there and is not written over`,
    wanted: 'a new or empty folder',
    example: 'pipeborne templates --copy our-templates/',
  }),
  'cli.arguments.outside-folder': ({ file }: { file: string }) => ({
    message: `"${file}" leads outside the folder of the file that names it`,
    wanted: 'a file in that folder or below it',
    example: 'logo: logo.svg',
  }),
  'cli.arguments.template-outside': ({ file, folder }: { file: string; folder: string }) => ({
    message: `"${file}" leads outside the folder of templates "${folder}"`,
    wanted: 'a file, or a link to a file, inside that folder',
  }),
  'cli.arguments.template-too-large': ({ file, limit }: { file: string; limit: string }) => ({
    message: `the template "${file}" is larger than ${limit}`,
    wanted: 'a template; text of this size is a mistake',
  }),
  'cli.arguments.too-many-templates': ({ folder, limit }: { folder: string; limit: number }) => ({
    message: `the folder of templates "${folder}" holds more than ${limit} files`,
    wanted: 'a folder that holds templates and little else',
  }),
  'cli.input.too-large': ({ file, limit }: { file: string; limit: string }) => ({
    message: `${file} is larger than ${limit}`,
    wanted: 'a description of one pump, which takes a few kilobytes',
    example: 'pipeborne check pump.yaml',
  }),
  'cli.input.not-text': ({ file }: { file: string }) => ({
    message: `${file} is not UTF-8 text`,
    wanted: 'YAML or JSON saved as UTF-8',
    hint: 'most editors offer it under "Save with encoding"',
  }),
  'cli.read.failed': ({ file, reason }: { file: string; reason: string }) => ({
    message: `${file} cannot be read: ${reason}`,
    wanted: 'a file that can be read, or - for standard input',
  }),
  'cli.read.shipped-missing': ({ file, reason }: { file: string; reason: string }) => ({
    message: `${file}, which belongs to the program, cannot be read: ${reason}`,
    wanted: 'a complete installation of the package',
    hint: 'install it again',
  }),
  'cli.arguments.nothing-found': ({ found }: { found: string }) => ({
    message: `"${found}" holds or matches no input`,
    wanted: 'a folder with files that say "format: pipeborne/1", or a pattern that matches some',
    example: "pipeborne check 'plant/**/*.yaml'",
  }),
  'cli.arguments.too-many-inputs': ({ found, limit }: { found: string; limit: number }) => ({
    message: `"${found}" holds or matches more than ${limit} files`,
    wanted: 'a folder of inputs, or a narrower pattern',
  }),
  'cli.arguments.watch-input': () => ({
    message: 'standard input (-) cannot be watched',
    wanted: 'the name of a file with --watch',
    example: 'pipeborne check pump.yaml --watch',
  }),
  'cli.arguments.no-part': ({ found }: { found: string }) => ({
    message: `the input has no part "${found}"`,
    wanted: 'a key of the input, a path of keys, or one of supports, parts, fittings',
    example: 'pipeborne help input pump.motor',
  }),
  'cli.arguments.no-topic': ({ found, words }: { found: string; words: readonly string[] }) => ({
    message: `there is no command "${found}"`,
    wanted: `one of ${Array.isArray(words) ? words.join(', ') : String(words)}`,
    example: 'pipeborne help check',
  }),
  'cli.arguments.new-name': ({ found }: { found: string }) => ({
    message: `"${found}" is no name for a new file`,
    wanted: 'a name that ends in .yaml, or - for standard output',
    example: 'pipeborne new hwp-1.yaml',
  }),
  'cli.write.exists': ({ file }: { file: string }) => ({
    message: `${file} is there already, and a new file never takes the place of another`,
    wanted: 'another name',
    example: 'pipeborne new another-name.yaml',
  }),
  'cli.write.failed': ({ file, reason }: { file: string; reason: string }) => ({
    message: `${file} cannot be written: ${reason}`,
    wanted: 'a folder that can be written to',
    hint: 'nothing was written; what stood there before is unharmed',
  }),
  'cli.write.output': (data: { reason: string }) => ({
    message: `standard output cannot be written: ${data.reason}`,
    wanted: 'a place with room for it',
    hint: 'what came through is not whole',
  }),
  'cli.worker.too-long': ({ seconds }: { seconds: number }) => ({
    message: `the work took longer than ${seconds} seconds and was stopped`,
    wanted: 'an ordinary file; this one may be damaged, or made to keep a reader busy',
  }),
  'cli.worker.out-of-memory': ({ memory }: { memory: number }) => ({
    message: `the work took more than ${memory} MiB of memory and was stopped`,
    wanted: 'an ordinary file; this one may be damaged, or made to fill the memory of its reader',
  }),
  'cli.worker.cancelled': () => ({
    message: 'the work was stopped before it was done',
    wanted: 'to be let run to its end',
  }),
  'cli.fault': ({ what, file }: { what: string; file: string }) => ({
    message: `pipeborne failed on ${file}, and that is its own fault, not yours: ${what}`,
    wanted: 'a report of this with the input file, so that it can be mended',
    hint: 'do not use earlier output in place of this review',
  }),
} as const satisfies Sentences;
