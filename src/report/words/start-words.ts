import type { StartMethod } from '../../input/installation.js';
import type { Writer } from '../writer.js';

/**
 * How a motor is started, in words.
 *
 * @param method - way of starting
 * @param write - writer of the review
 * @returns words that follow `the motor starts`
 */
export function startWords(method: StartMethod, write: Writer): string {
  switch (method.kind) {
    case 'across the line':
      return 'across the line, on full voltage at once';
    case 'wye-delta':
      return 'wye-delta, a third of the torque until the changeover';
    case 'autotransformer':
      return `through an autotransformer on its ${write.quantity(method.tap, 'ratio')} tap`;
    case 'soft starter':
      return `by a soft starter that limits the current to ${write.quantity(method.currentLimit, 'ratio')} of full load`;
    case 'variable-speed drive':
      return `by a variable-speed drive with a ramp of ${write.quantity(method.ramp, 'time')} and a torque of at most ${write.quantity(method.torqueLimit, 'ratio')} of full load`;
  }
}
