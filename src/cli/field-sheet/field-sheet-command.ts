/** `pipeborne field-sheet`: writes the sheet to fill in for each file. */
import { fieldSheet, renderFieldSheetPdf, type UnitSystem } from '../../index.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { eachFile } from '../files/each-file.js';
import { writeFiles } from '../files/write-files.js';
import { nameOutputs, type OutputNames } from '../review/output-names.js';
import { reviewFile } from '../review/review-file.js';
import { type FirmStyle, readFirmStyle, readPaperHead } from '../templates/firm-style.js';
import { showFailure } from '../terminal/show-failure.js';

/** Options of the command as the parser of arguments gives them. */
export interface FieldSheetOptions {
  readonly output?: string;
  readonly units?: UnitSystem;
  readonly templates?: string;
  readonly page?: 'letter' | 'a4';
}

/**
 * Runs `field-sheet`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param environment - where to read and write
 * @returns the worst status of all files; 0 where every sheet is written, whatever the verdict
 */
export async function fieldSheetCommand(
  files: readonly string[],
  options: FieldSheetOptions,
  environment: Environment,
): Promise<ExitStatus> {
  let names: readonly OutputNames[];
  let style: FirmStyle;
  try {
    const asked = options.output === undefined ? {} : { pdf: options.output };
    names = nameOutputs(files, asked, environment.folder, 'field-sheet');
    style = await readFirmStyle(options.templates, environment);
  } catch (error) {
    return showFailure(error, 'the arguments', environment);
  }
  return eachFile(files, environment, async (file, index) => {
    const { pdf } = names[index] as OutputNames;
    const { input, review } = await reviewFile(file, environment);
    const units = options.units ?? review.installation.review.units;
    const page = options.page ?? (units === 'us' ? 'letter' : 'a4');
    const sheet = fieldSheet(review, units);
    const boxes = sheet.parts.flatMap(({ rows }) => rows.flatMap((row) => row.boxes)).length;
    const { templates, fonts } = style;
    const head = await readPaperHead(
      { file, letterhead: review.installation.review.letterhead },
      { style, folder: options.templates },
      environment,
    );
    const content = await renderFieldSheetPdf(sheet, { templates, fonts, ...head, page });
    await writeFiles([{ ...pdf, content }]);
    environment.output.write(`${input.name}: ${boxes} boxes to fill in, written to ${pdf.shown}\n`);
    return exitStatus.meets;
  });
}
