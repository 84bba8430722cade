import { EngineError } from '../../issues/issue.js';
import { LARGEST_SIDE, MOST_PIXELS } from './limits.js';

/**
 * Refuses a picture without pixels or with too many.
 *
 * @param width - [pixels]
 * @param height - [pixels]
 * @param file - name for messages
 * @throws EngineError `render.logo.damaged` | `render.logo.too-many-pixels`
 */
export function refusePixels(width: number, height: number, file: string): void {
  if (width === 0 || height === 0)
    throw new EngineError('render.logo.damaged', { file, reason: 'it has no pixels' });
  if (width > LARGEST_SIDE || height > LARGEST_SIDE || width * height > MOST_PIXELS)
    throw new EngineError('render.logo.too-many-pixels', { file, width, height, most: MOST_PIXELS });
}
