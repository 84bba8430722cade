/** The supports of one file as rows, worked out in whichever thread. */
import { type ScheduleRow, supportSchedule, type UnitSystem } from '../../index.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { reviewFile } from '../review/review-file.js';
import { captured, type ThreadPlace } from '../terminal/captured.js';
import { showFailure } from '../terminal/show-failure.js';

/** One file for a thread: plain data. */
export interface ScheduleOrder {
  readonly file: string;
  readonly place: ThreadPlace;
}

export interface ScheduledFile {
  readonly file: string;
  readonly status: ExitStatus;
  readonly messages: string;
  /** System the file is reviewed in, and its rows in either; absent where it cannot be used. */
  readonly supports?: {
    readonly units: UnitSystem;
    readonly rows: Readonly<Record<UnitSystem, readonly ScheduleRow[]>>;
  };
}

/**
 * Reviews one file for its supports. It never throws: what goes wrong is told in the messages.
 *
 * @param order - the file
 * @returns rows, or the status of what is wrong
 */
export async function scheduleOne({ file, place }: ScheduleOrder): Promise<ScheduledFile> {
  const { environment, said } = captured(place);
  try {
    const { review } = await reviewFile(file, environment);
    const rows = { us: supportSchedule(review, 'us'), si: supportSchedule(review, 'si') };
    const { units } = review.installation.review;
    return { file, status: exitStatus.meets, messages: said().messages, supports: { units, rows } };
  } catch (error) {
    const status = showFailure(error, file, environment);
    return { file, status, messages: said().messages };
  }
}
