import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** What one field says against another. */
export const inputSenseSentences = {
  'input.share-of-water': (data: IssueData) =>
    tell(data, 'water has no share of glycol', {
      wanted: 'ethylene glycol or propylene glycol as the kind, or no share',
      example: '',
    }),
  'input.glycol-share': (data: { found: string; least: string; most: string }) =>
    tell(data, `a share of ${say(data, 'found')} is outside the table of densities`, {
      wanted: `from ${say(data, 'least')} to ${say(data, 'most')}, or an own density of the service`,
    }),
  'input.no-density': (data: { liquid: string; temperature: string }) =>
    tell(
      data,
      `there is no density of ${say(data, 'liquid')} at ${say(data, 'temperature')} and this pressure: it would freeze or boil, or the table ends`,
      {
        wanted: 'another temperature or pressure, or an own density of the service',
        example: 'density: 1000 kg/m3',
      },
    ),
  'input.hot-below-running': (data: { hot: string; running: string }) =>
    tell(
      data,
      `the highest temperature, ${say(data, 'hot')}, is below the running one, ${say(data, 'running')}`,
      { wanted: 'hot at or above running' },
    ),
  'input.cold-above-running': (data: { cold: string; running: string }) =>
    tell(
      data,
      `the lowest temperature, ${say(data, 'cold')}, is above the running one, ${say(data, 'running')}`,
      { wanted: 'cold at or below running' },
    ),
  'input.working-over-design': (data: { working: string; design: string }) =>
    tell(
      data,
      `the working pressure, ${say(data, 'working')}, is above the design pressure, ${say(data, 'design')}`,
      { wanted: 'working at or below design' },
    ),
  'input.test-below-design': (data: { test: string; design: string }) =>
    tell(
      data,
      `the test pressure, ${say(data, 'test')}, is below the design pressure, ${say(data, 'design')}`,
    ),
  'input.material-known': (data: { name: string }) =>
    tell(data, `the catalogue has a material "${say(data, 'name')}" already`, {
      wanted: 'another name',
      example: '',
    }),
  'input.wall-too-thick': (data: { found: string }) =>
    tell(data, `a wall of ${say(data, 'found')} leaves no bore`),
  'input.port-twice': (data: IssueData) =>
    tell(data, 'the place of the port is said twice', {
      wanted: 'either at, or from-shaft with up',
      example: 'from-shaft: 16 in',
    }),
  'input.base-of-hung': (data: IssueData) =>
    tell(data, 'a hung pump has no base', {
      wanted: 'mount resting, sprung or bolted, or no base',
      example: '',
    }),
  'input.springs-not-sprung': (data: { mount: string }) =>
    tell(data, `a pump that is ${say(data, 'mount')} has no springs`, {
      wanted: 'mount sprung, or no springs',
      example: 'mount: sprung',
    }),
  'input.springs-places': (data: { places: number; count: number }) =>
    tell(data, `${say(data, 'places')} places are given for ${say(data, 'count')} springs`, {
      wanted: 'one place for each spring',
      example: 'at: [{east: 14 in, north: 9 in}, {east: -14 in, north: 9 in}]',
    }),
  'input.base-up': (data: IssueData) =>
    tell(data, 'the height of the base is said by below-ports', {
      wanted: 'east and north only',
      example: 'at: {east: 2 in}',
    }),
  'input.ceiling-below-floor': (data: { ceiling: string; floor: string }) =>
    tell(data, `the ceiling, ${say(data, 'ceiling')}, is not above the floor, ${say(data, 'floor')}`),
  'input.maker-empty': (data: IssueData) =>
    tell(data, "the manufacturer's loads name neither nozzle", { wanted: 'suction, discharge or both' }),
  'input.line-missing': (data: { port: string }) =>
    tell(data, `no line starts at the ${say(data, 'port')} port`, {
      wanted: 'one line from each port',
      example: `- {from: ${say(data, 'port')}, walk: [{straight: 2 ft}, {end: anchored}]}`,
    }),
  'input.port-taken': (data: { port: string }) =>
    tell(data, `another line starts at the ${say(data, 'port')} port`, {
      wanted: 'one line from each port',
      example: '',
    }),
  'input.size-jump': (data: { line: string; from: string; port: string }) =>
    tell(
      data,
      `the line starts as NPS ${say(data, 'line')} at a ${say(data, 'from')} port of NPS ${say(data, 'port')}`,
      {
        wanted: 'the size of the port, and a reducer behind it',
        example: `size: ${say(data, 'port')} in`,
      },
    ),
  'input.mark-twice': (data: { mark: string }) =>
    tell(data, `the mark "${say(data, 'mark')}" is used before`, { wanted: 'every mark once', example: '' }),
  'input.no-end': (data: IssueData) =>
    tell(data, 'the walk does not end', { wanted: 'an end as the last step', example: '- end: anchored' }),
  'input.end-not-last': (data: IssueData) =>
    tell(data, 'the walk goes on behind its end', { wanted: 'one end, as the last step', example: '' }),
  'input.too-many-parts': (data: { found: number; most: number }) =>
    tell(data, `the walks have ${say(data, 'found')} parts`, {
      wanted: `at most ${say(data, 'most')}`,
      example: '',
    }),
  'input.walk-too-deep': (data: { most: number }) =>
    tell(data, 'tees stand in side legs of tees too deep', {
      wanted: `at most ${say(data, 'most')} walks in each other`,
      example: '',
    }),
  'input.no-turn': (data: IssueData) =>
    tell(data, 'the pipe already runs this way, or straight back', {
      wanted: 'a direction that turns from the one before',
    }),
  'input.odd-turn': (data: { angle: string }) =>
    tell(data, `a turn of ${say(data, 'angle')} is no listed elbow`, {
      wanted: 'a turn of 90 or 45 deg, or the own radius of the elbow',
      example: 'elbow: {turn: bearing 30 deg, radius: 9 in}',
    }),
  'input.elbow-not-listed': (data: { pipe: string }) =>
    tell(data, `the catalogue holds no elbow of ${say(data, 'pipe')}`, {
      wanted: 'the own radius of the elbow',
      example: 'elbow: {turn: up, radius: 9 in}',
    }),
  'input.no-reduction': (data: { size: string }) =>
    tell(data, `the pipe is already NPS ${say(data, 'size')}`, { wanted: 'another size' }),
  'input.flat-of-concentric': (data: IssueData) =>
    tell(data, 'a concentric reducer has no flat side', {
      wanted: 'kind eccentric, or no flat',
      example: 'kind: eccentric',
    }),
  'input.reducer-not-listed': (data: { from: string; to: string; large: string; words: readonly string[] }) =>
    tell(data, `the catalogue holds no reducer from ${say(data, 'from')} to NPS ${say(data, 'to')}`, {
      wanted: `own length and weight, or a step the catalogue holds: NPS ${say(data, 'large')} reduces to ${say(data, 'words')}`,
      example: 'reducer: {to: 8 in, kind: concentric, length: 6 in, weight: 15 lb}',
    }),
  'input.tee-turn-by-run': (data: IssueData) =>
    tell(data, 'a walk that enters a tee by its run goes straight on', {
      wanted: 'no turn, or enter-by branch',
      example: 'enter-by: branch',
    }),
  'input.tee-side-by-branch': (data: IssueData) =>
    tell(data, 'entered by the branch, the side leg lies opposite to the turn', {
      wanted: 'no direction',
      example: '',
    }),
  'input.tee-not-across': (data: IssueData) =>
    tell(data, 'the legs of a tee stand square to each other', { wanted: 'a direction across the pipe' }),
  'input.branch-over-run': (data: { branch: string; run: string }) =>
    tell(data, `the branch, ${say(data, 'branch')}, is larger than the run, ${say(data, 'run')}`, {
      wanted: 'a branch no larger than its run',
      example: '',
    }),
  'input.tee-not-listed': (data: { run: string; branch: string; words: readonly string[] }) =>
    tell(data, `the catalogue holds no tee of ${say(data, 'run')} with a branch of ${say(data, 'branch')}`, {
      wanted: `a branch of ${say(data, 'words')} in, or own weight, centre-to-run-end and centre-to-branch-end`,
      example: '',
    }),
  'input.spring-range': (data: { mark: string }) =>
    tell(data, `the working range of ${say(data, 'mark')} ends below its start`, {
      wanted: 'maximum above minimum',
    }),
  'input.spring-out-of-range': (data: { mark: string; load: string }) =>
    tell(data, `${say(data, 'mark')} is set to ${say(data, 'load')}, outside its own working range`),
} satisfies Sentences;
