/** Advice in this thread, for tests. */
import { type AdvisedFile, type AdviseOptions, type AdviseTools, advise } from '../../src/app/advise.js';
import { fileText } from '../input/sample-text.js';

export const pool = fileText('../../samples/pool-hot-water.yaml');
export const library = fileText('../../samples/library-chilled-water.yaml');
export const dairy = fileText('../../samples/dairy-condenser-water.yaml');

/** Advice on a text. */
export function adviceOn(
  text: string,
  options: AdviseOptions & { readonly tools?: Partial<AdviseTools> } = {},
): Promise<AdvisedFile> {
  return advise(text, options);
}

/** Kind and mark of each change of the first alternative. */
export function firstAdvice({ advice }: AdvisedFile): readonly string[] {
  return (advice.alternatives[0]?.changes ?? []).map(({ kind, data }) => `${kind} ${String(data.mark)}`);
}
