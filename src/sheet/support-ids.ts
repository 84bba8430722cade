/** Words by which the boxes of each support are named: its mark, made fit for an id and never twice the same. */
import type { PlacedSupport } from '../model/layout/layout.js';
import { placeId } from '../report/words/place-id.js';

/**
 * Words of all supports that have boxes: everything but the ends of lines.
 *
 * @param supports - placed supports
 * @returns support with its word, in walking order
 */
export function namedSupports(
  supports: readonly PlacedSupport[],
): readonly { readonly support: PlacedSupport; readonly word: string }[] {
  const taken = new Set<string>();
  return supports
    .filter(({ kind }) => kind !== 'end')
    .map((support) => {
      const plain = placeId(support.mark) || 'support';
      let word = plain;
      for (let count = 2; taken.has(word); count++) word = `${plain}-${count}`;
      taken.add(word);
      return { support, word };
    });
}

/** Ids of the boxes of one support; which of them are there follows its kind. */
export function supportBoxes(word: string) {
  const id = `supports.${word}`;
  return {
    position: `${id}.position`,
    height: `${id}.height`,
    rodLength: `${id}.rod-length`,
    lean: `${id}.lean`,
    nuts: `${id}.nuts`,
    loaded: `${id}.loaded`,
    dry: `${id}.load-dry`,
    filled: `${id}.load-filled`,
    hot: `${id}.load-hot`,
    stops: `${id}.stops-out`,
    gap: `${id}.gap`,
    free: `${id}.free`,
    bolts: `${id}.bolts`,
  };
}
