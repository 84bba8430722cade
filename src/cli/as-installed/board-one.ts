/** One unit of a board: its record decided from, in whichever thread. */
import { type AsInstalledSummary, asInstalled, asInstalledSummary } from '../../index.js';
import { type ExitStatus, exitStatus, statusOfVerdict } from '../exit-status.js';
import { reviewFile } from '../review/review-file.js';
import { captured, type ThreadPlace } from '../terminal/captured.js';
import { showFailure, showIssues } from '../terminal/show-failure.js';
import { readStore } from './store-folder.js';

/** One unit for a thread: plain data. */
export interface BoardOrder {
  readonly file: string;
  /** Folder that keeps its sheets, as named. */
  readonly store: string;
  readonly place: ThreadPlace;
}

/** What a board says of one unit. */
export interface BoardUnit {
  readonly file: string;
  readonly status: ExitStatus;
  readonly messages: string;
  /** Absent where the file or its record cannot be used. */
  readonly seen?: AsInstalledSummary;
  /** Sheets that its record holds; with none, nothing has been read and nothing is decided. */
  readonly sheets: number;
}

/**
 * Decides one unit from its record. It never throws: what goes wrong is told in the messages.
 *
 * @param order - file and folder of its sheets
 * @returns decisions and open items, or the status of what is wrong
 */
export async function boardOne({ file, store, place }: BoardOrder): Promise<BoardUnit> {
  const { environment, said } = captured(place);
  try {
    const { review } = await reviewFile(file, environment);
    const { kept } = await readStore(store, review, environment);
    const visit = asInstalled(review, [], { kept: kept.map(({ answers }) => answers) });
    showIssues(visit.issues, environment);
    return {
      file,
      status: kept.length === 0 ? exitStatus.cannotTell : statusOfVerdict(visit.verdict),
      messages: said().messages,
      seen: asInstalledSummary(visit),
      sheets: kept.length,
    };
  } catch (error) {
    const status = showFailure(error, file, environment);
    return { file, status, messages: said().messages, sheets: 0 };
  }
}
