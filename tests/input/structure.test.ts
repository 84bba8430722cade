import { describe, expect, test } from 'vitest';
import type { EndPart, Installation, Part, SupportPart } from '../../src/input/installation.js';
import { changed, everyPart, fileText, installationOf, issuesOf, withoutStructure } from './sample-text.js';

const pool = withoutStructure(fileText('../../samples/pool-hot-water.yaml'));
const dairy = withoutStructure(fileText('../../samples/dairy-condenser-water.yaml'));
const KIP_PER_INCH = (1000 * 4.4482216152605) / 0.0254;

const everyOf = (walk: readonly Part[]): readonly Part[] =>
  walk.flatMap((part) => [
    part,
    ...(part.kind === 'tee' ? everyOf(part.side.walk) : []),
    ...('support' in part && part.support !== undefined ? [part.support] : []),
  ]);
const support = ({ lines }: Installation, mark: string): SupportPart => {
  const found = lines
    .flatMap(({ walk }) => everyOf(walk))
    .find((part) => 'mark' in part && part.mark === mark);
  if (found === undefined || !('mark' in found)) throw new Error(`no ${mark}`);
  return found;
};
const ends = ({ lines }: Installation): readonly EndPart[] =>
  lines.flatMap(({ walk }) => walk.filter((part): part is EndPart => part.kind === 'end'));

describe('what a support is fastened to', () => {
  test('is a stiffness, a word, or a map that says who takes it or where it stands', () => {
    const read = installationOf(everyPart);
    expect(support(read, 'H1').structure?.value).toBeCloseTo(80 * KIP_PER_INCH, 3);
    expect(support(read, 'H1').structure?.origin).toMatchObject({ document: 'structural drawing S-2' });
    expect(support(read, 'G1').structure?.value).toBe(Number.POSITIVE_INFINITY);
    expect(support(read, 'G1').structure?.origin).toMatchObject({ document: 'assumed by A. Person' });
    expect(support(read, 'H2').structure).toBeUndefined();
    const held = ends(read).find(({ structure }) => structure !== undefined);
    expect(held?.structure?.translation.value).toBeCloseTo(200 * KIP_PER_INCH, 3);
  });

  test('may be said of an anchored end that does not move', () => {
    const stated = changed(pool, [
      '- end: anchored',
      '- end: {anchored: {structure: {translation: rigid, rotation: 9 kN.m/deg}}}',
    ]);
    const [first, second] = ends(installationOf(stated));
    expect(first?.structure?.translation.value).toBe(Number.POSITIVE_INFINITY);
    expect(first?.structure?.rotation.value).toBeCloseTo((9000 * 180) / Math.PI, 6);
    expect(first?.movement).toBeUndefined();
    expect(second?.structure).toBeUndefined();
  });

  test('may be taken by one person for everything alike, and is then an assumption of theirs', () => {
    const assumed =
      'assumed: {by: R. Okafor, structure: 100 kip/in, friction: 0.3, anchors: {translation: rigid, rotation: rigid}, rigid-grooved-joints: {bending: 90 kN.m/deg}}\nroom:';
    const read = installationOf(changed(dairy, ['room:', assumed]));
    expect(support(read, 'B3').structure?.value).toBeCloseTo(100 * KIP_PER_INCH, 3);
    expect(support(read, 'B1').friction).toBe(0.3);
    expect(read.pump.base?.friction).toBe(0.3);
    expect(support(read, 'B2').structure).toBeUndefined();
    expect(
      ends(read)
        .filter(({ end }) => end === 'anchored')
        .every(({ structure }) => structure),
    ).toBe(true);
    const theirs = read.assumptions.filter(({ path }) => path.startsWith('assumed.'));
    expect(theirs.map(({ path }) => path).sort()).toEqual([
      'assumed.anchors',
      'assumed.friction',
      'assumed.rigid-grooved-joints',
      'assumed.structure',
    ]);
    for (const { citation } of theirs) expect(citation.clause).toBe('assumed by R. Okafor');
  });

  test('is not taken over by what one person takes where the file itself says it', () => {
    const both = changed(
      pool,
      ['mark: H1, ', 'mark: H1, structure: 30 kip/in, '],
      ['room:', 'assumed: {by: R. Okafor, structure: 100 kip/in}\nroom:'],
    );
    expect(support(installationOf(both), 'H1').structure?.value).toBeCloseTo(30 * KIP_PER_INCH, 3);
  });
});

describe('the bracket of the motor', () => {
  const withBracket = (text: string) =>
    changed(pool, ['    speed: 1770 rpm\n', `    speed: 1770 rpm\n    bracket: ${text}\n`]);

  test('is given by a frequency or a stiffness', () => {
    expect(
      installationOf(withBracket('{frequency: 75 Hz, document: data sheet 4}')).pump.motor.bracket,
    ).toMatchObject({
      kind: 'frequency',
      frequency: { value: 75, origin: { document: 'data sheet 4' } },
    });
    expect(
      installationOf(withBracket('{rotation: rigid, assumed-by: A. Person}')).pump.motor.bracket,
    ).toMatchObject({
      kind: 'stiffness',
      rotation: { value: Number.POSITIVE_INFINITY },
    });
  });

  test('is refused where it says both or nothing', () => {
    expect(issuesOf(withBracket('{frequency: 75 Hz, rotation: rigid}')).map(({ code }) => code)).toEqual([
      'input.bracket-twice',
    ]);
    expect(issuesOf(withBracket('{document: data sheet 4}')).map(({ code }) => code)).toEqual([
      'input.missing',
    ]);
  });
});

test('stiffness under a base that is not of its kind is refused', () => {
  const base = (text: string) =>
    changed(dairy, ['base: {below-ports: 430 mm}', `base: {below-ports: 430 mm, ${text}}`]);
  const anchors = base('anchors: {translation: rigid, rotation: rigid}');
  expect(issuesOf(anchors).map(({ code }) => code)).toEqual(['input.anchors-not-bolted']);
  const floor = changed(base('structure: rigid'), ['mount: resting', 'mount: bolted']);
  expect(issuesOf(floor).map(({ code }) => code)).toEqual(['input.structure-not-resting']);
  expect(installationOf(base('structure: 60 kN/mm')).pump.base?.structure?.value).toBeCloseTo(6e7, 3);
});
