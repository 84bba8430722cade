/** `pipeborne field-sheet`: writes the sheet to fill in for each file. */
import { join } from 'node:path';
import { fieldSheet, renderFieldSheetPdf, type SheetOptions, type UnitSystem } from '../index.js';
import { eachFile } from './each-file.js';
import { type ExitStatus, exitStatus } from './exit-status.js';
import { nameOutputs, type OutputNames } from './output-names.js';
import { reviewFile } from './review-file.js';
import { readFonts } from './shipped-fonts.js';
import { showFailure } from './show-failure.js';
import type { Surroundings } from './surroundings.js';
import { readTemplates } from './template-folder.js';
import { writeFiles } from './write-files.js';

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
 * @param surroundings - where to read and write
 * @returns the worst status of all files; 0 where every sheet is written, whatever the verdict
 */
export async function fieldSheetCommand(
  files: readonly string[],
  options: FieldSheetOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  let names: readonly OutputNames[];
  let look: Pick<SheetOptions, 'templates' | 'fonts'>;
  try {
    const asked = options.output === undefined ? {} : { pdf: options.output };
    names = nameOutputs(files, asked, surroundings.folder, 'field-sheet');
    const shipped = join(surroundings.packageFolder, 'templates');
    const { all } = await readTemplates(shipped, options.templates, surroundings.folder);
    look = { templates: all, fonts: await readFonts(join(shipped, 'fonts')) };
  } catch (error) {
    return showFailure(error, 'the arguments', surroundings);
  }
  return eachFile(files, surroundings, async (file, index) => {
    const { pdf } = names[index] as OutputNames;
    const { input, review } = await reviewFile(file, surroundings);
    const units = options.units ?? review.installation.review.units;
    const page = options.page ?? (units === 'us' ? 'letter' : 'a4');
    const sheet = fieldSheet(review, units);
    const boxes = sheet.parts.flatMap(({ rows }) => rows.flatMap((row) => row.boxes)).length;
    await writeFiles([{ ...pdf, content: await renderFieldSheetPdf(sheet, { ...look, page }) }]);
    surroundings.output.write(`${input.name}: ${boxes} boxes to fill in, written to ${pdf.shown}\n`);
    return exitStatus.meets;
  });
}
