/** What becomes of a run whose output or messages cannot be written. */
import type { Writable } from 'node:stream';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { reasonOf } from '../system-reason.js';

/**
 * Watches both streams of a process.
 *
 * A reader that stops early (`| head`) is no fault: the run goes to its end and ends as it would have. A stream that takes
 * nothing because its disk is full is one: something could not be written. Of the output that is told on the messages; of
 * the messages nothing can be told but by the status, since the output is data.
 *
 * @param output - standard output
 * @param messages - standard error
 * @returns the status of the streams, asked for when all is written: 0, or 3 where something could not be
 */
export function watchStreams(
  output: Writable,
  messages: Writable,
): { readonly status: () => Promise<ExitStatus> } {
  let lost: ExitStatus = exitStatus.meets;
  let told: Promise<void> = Promise.resolve();
  const isLoss = (error: NodeJS.ErrnoException): boolean => {
    const isFirst = error.code !== 'EPIPE' && lost === exitStatus.meets;
    if (isFirst) lost = exitStatus.fileTrouble;
    return isFirst;
  };
  output.on('error', (error) => {
    if (isLoss(error)) told = tellLoss(error, messages);
  });
  messages.on('error', (error) => void isLoss(error));
  return {
    status: async () => {
      // What was written last has to have come through or failed before it can be judged.
      await Promise.all([output, messages].map(flushed));
      await told;
      await flushed(messages);
      return lost;
    },
  };
}

async function tellLoss(error: Error, messages: Writable): Promise<void> {
  const { printIssue } = await import('../../issues/print.js');
  const data = { reason: reasonOf(error) };
  const lines = printIssue({ code: 'cli.write.output', severity: 'error', data });
  messages.write(`${lines.join('\n')}\n`);
}

/** Waits until all that was handed to a stream is out or failed; its error comes by the event. */
function flushed(stream: Writable): Promise<void> {
  return new Promise((done) => {
    if (stream.destroyed || stream.writableLength === 0) setImmediate(() => setImmediate(done));
    else stream.write('', () => setImmediate(done));
  });
}
