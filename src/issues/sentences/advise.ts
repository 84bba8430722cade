import type { Sentences } from './sentence.js';
import { say } from './tell.js';

/** What to change, as told to a fitter, and what to heed while changing it. */
export const adviseSentences = {
  'advise.set-height.raise': (data: { word: string; mark: string; height: string }) => ({
    message: `raise ${say(data, 'word')} ${say(data, 'mark')} by ${say(data, 'height')}`,
  }),
  'advise.set-height.lower': (data: { word: string; mark: string; height: string }) => ({
    message: `lower ${say(data, 'word')} ${say(data, 'mark')} by ${say(data, 'height')}`,
  }),
  'advise.spring-setting': (data: { mark: string; before: string; after: string }) => ({
    message: `set spring hanger ${say(data, 'mark')} from ${say(data, 'before')} to ${say(data, 'after')}`,
  }),
  'advise.spring-rate': (data: { mark: string; before: string; after: string }) => ({
    message: `swap the spring of ${say(data, 'mark')}, ${say(data, 'before')}, for one of ${say(data, 'after')}`,
  }),
  'advise.spring-for-rod': (data: { mark: string; rate: string; load: string }) => ({
    message:
      `hang ${say(data, 'mark')} on a spring of ${say(data, 'rate')}, set to ${say(data, 'load')}, ` +
      'in place of the bare rod',
  }),
  'advise.rod-size': (data: { mark: string; before: string; after: string }) => ({
    message: `swap the rod of ${say(data, 'mark')}, ${say(data, 'before')}, for ${say(data, 'after')}`,
  }),
  'advise.move-support': (data: {
    word: string;
    mark: string;
    distance: string;
    away: string;
    line: string;
  }) => ({
    message:
      `move ${say(data, 'word')} ${say(data, 'mark')} ${say(data, 'distance')} ${say(data, 'away')}, ` +
      `on the ${say(data, 'line')}`,
  }),
  'advise.move-support.rod': (data: {
    word: string;
    mark: string;
    distance: string;
    away: string;
    line: string;
    rod: string;
  }) => ({
    message:
      `move ${say(data, 'word')} ${say(data, 'mark')} ${say(data, 'distance')} ${say(data, 'away')}, ` +
      `on the ${say(data, 'line')}, its rod then ${say(data, 'rod')} long`,
  }),
  'advise.add-hanger': (data: { mark: string; place: string }) => ({
    message: `add hanger ${say(data, 'mark')}${rodWords(data, 'on a rod')}, ${say(data, 'place')}`,
  }),
  'advise.add-hanger.riser': (data: { mark: string; place: string }) => ({
    message: `add riser clamp ${say(data, 'mark')}${rodWords(data, 'on two rods')}, ${say(data, 'place')}`,
  }),
  'advise.add-stand': (data: { mark: string; place: string }) => ({
    message: `set up stand ${say(data, 'mark')} on the floor, ${say(data, 'place')}`,
  }),
  'advise.add-guide': (data: { mark: string; place: string }) => ({
    message: `add guide ${say(data, 'mark')}, ${say(data, 'place')}`,
  }),
  'advise.remove-guide': (data: { mark: string }) => ({ message: `take guide ${say(data, 'mark')} away` }),
  'advise.lengthen-leg': (data: { line: string; first: string; second: string; length: string }) => ({
    message:
      `on the ${say(data, 'line')}, make ${say(data, 'first')} and ${say(data, 'second')}, ` +
      `each by ${say(data, 'length')}; the end of the line stays where it is`,
  }),

  'advise.caution.lock-out': () => ({
    message:
      'lock out the pump, close off, let cool and relieve the pressure before any hanger, guide or joint ' +
      'is touched',
  }),
  'advise.caution.carry-pipe': () => ({
    message: 'carry the pipe, full of water as it is, on something rated for it before a support is loosened',
  }),
  'advise.caution.structure': () => ({
    message:
      'the structure above, and the anchor in it, belong to the structural engineer: the load may have moved',
  }),
  'advise.caution.new-load': () => ({
    message: 'give the new support its rating in the file once it is chosen; without one it is not judged',
  }),
  'advise.caution.fixing': () => ({
    message: 'see that there is steel or wall to fix it to; the file does not say',
  }),
  'advise.caution.floor': () => ({
    message: 'see that the floor carries the stand and that nobody needs the place to walk or to work',
  }),
  'advise.caution.set-height': () => ({
    message:
      'loads that hang on a fraction of an inch are lost as easily: measure the height before and after, and ' +
      'mark the nuts; the file holds the height as out-of-place',
  }),
  'advise.caution.rod-parts': () => ({
    message: 'clamp, nuts and the attachment above go with the size of the rod',
  }),
  'advise.caution.spring-setting': () => ({
    message: 'set the spring by its scale with the line filled, and keep its travel stops to hand',
  }),
  'advise.caution.spring-range': () => ({
    message:
      "choose the nearest spring from its manufacturer's table and give its rate and working range in the file; then " +
      'check again',
  }),
  'advise.caution.spring-stops': () => ({
    message: 'a spring lets the pipe move: pin it for the pressure test and before the pump comes out',
  }),
  'advise.caution.guide-for-others': () => ({
    message: 'ask what the guide was put there for, shaking or an earthquake, before it goes',
  }),
  'advise.caution.cut-and-test': () => ({
    message: 'pipe is cut and welded: the line is tested under pressure again',
  }),
  'advise.caution.room': () => ({
    message: 'walls and other pipes that the file does not hold are not seen: walk the new way first',
  }),

  'advise.caution.no-longer-asked': (data: { at: string }) => ({
    message:
      `the review no longer asks about "${say(data, 'at')}", as another support is nearer the pump now; the search ` +
      'asked, and the nozzles meet then too',
  }),

  'advise.beyond-supports': (data: { todo: string }) => ({
    message: 'no hanger, stand, guide or leg changes this',
    ...(say(data, 'todo') !== '' && { wanted: say(data, 'todo') }),
  }),
  'advise.data-missing': (data: { todo: string }) => ({
    message: 'it cannot be told, and no change can make it meet',
    ...(say(data, 'todo') !== '' && { wanted: say(data, 'todo') }),
  }),
  'advise.not-enough': (data: { best: string; todo: string }) => ({
    message: `the changes tried did not make it meet${say(data, 'best') === '' ? '' : `; the least they left is a ratio of ${say(data, 'best')}`}`,
    ...(say(data, 'todo') !== '' && { wanted: say(data, 'todo') }),
  }),
  'advise.no-such-alternative': (data: { found: number; most: number }) => ({
    message: `there is no alternative ${say(data, 'found')}; ways found: ${say(data, 'most')}`,
    wanted: 'the number of an alternative that was printed',
    example: '--alternative 1',
  }),
  'advise.nothing-to-write': (data: { file: string }) => ({
    message: `nothing is written to "${say(data, 'file')}", as no change was found`,
    wanted: 'a file in which hangers, guides or legs can mend what exceeds',
  }),
  'advise.unknown-mark': (data: { found: string; marks: readonly string[] }) => ({
    message: `no support of the file is marked "${say(data, 'found')}"`,
    wanted: `one of ${say(data, 'marks')}`,
    example: '--keep H1',
  }),
  'advise.effort-unusable': (data: { found: string; kinds: readonly string[] }) => ({
    message: `"${say(data, 'found')}" is no effort`,
    wanted: `a kind of change and a number above 0; the kinds are ${say(data, 'kinds')}`,
    example: '--effort add-hanger=10',
  }),
  'advise.stopped': (data: { trials: number }) => ({
    message: `stopped after ${say(data, 'trials')} trials: this is the best so far`,
  }),
  'advise.out-of-trials': (data: { trials: number }) => ({
    message: `all ${say(data, 'trials')} trials were used: there may be better`,
    hint: 'more trials: --trials 10000',
  }),
} as const satisfies Sentences;

function rodWords(data: Parameters<typeof say>[0], on: string): string {
  const [rod, length] = [say(data, 'rod'), say(data, 'length')];
  if (rod === '' && length === '') return '';
  return `, ${on}${rod === '' ? '' : ` of ${rod}`}${length === '' ? '' : `, ${length} long`}`;
}
