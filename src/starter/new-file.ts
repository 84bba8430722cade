/** The text of a new file: answers, what the tables give, and what was assumed, each with a comment. */
import { findPipe } from '../catalog/index.js';
import type { Answers, Plan } from './answers.js';
import type { Kit, NewLine } from './parts.js';
import { type Assume, pipingLines, type Sizing } from './piping-text.js';
import { USUAL_SCHEDULE } from './read-answers.js';
import { serviceOf } from './service-values.js';
import { commentText, yamlText } from './yaml-text.js';

/** Something that was taken because no answer gave it. */
export interface NewAssumption {
  readonly what: string;
  readonly value: string;
  readonly why: string;
}

export interface NewText {
  readonly text: string;
  readonly assumptions: readonly NewAssumption[];
}

const OPPOSITE: Readonly<Record<Plan, Plan>> = {
  north: 'south',
  south: 'north',
  east: 'west',
  west: 'east',
};
/** Centre of gravity of a motor, as a share of the height of its top over the ports. */
const CENTRE_SHARE = 0.7;
/** Liquid in a casing over that in as much pipe of the ports' size. */
const CASING_OVER_PIPE = 2;
const GALLON = 0.003785411784;
const LITRE = 0.001;

/**
 * Writes the file.
 *
 * @param kit - answers, and lengths of the tables [-]
 * @param lines - both lines [-]
 * @param sizing - rods and springs by mark [-]
 * @returns text of YAML, and what was assumed [-]
 */
export function newFile(kit: Kit, lines: readonly NewLine[], sizing: ReadonlyMap<string, Sizing>): NewText {
  const { answers } = kit;
  const assumptions: NewAssumption[] = [];
  /** A value and the comment behind it, noted for the closing words as well. */
  const assume = (what: string, value: string, why: string): string => {
    assumptions.push({ what, value, why });
    return `${value}  # assumed: ${why}`;
  };
  const text = [
    ...headLines(answers),
    ...serviceLines(answers, assume),
    ...pumpLines(kit, assume),
    ...pipingLines(kit, lines, sizing, assume),
    ...roomLines(answers),
    ...limitLines(answers),
  ].join('\n');
  return { text: `${text}\n`, assumptions };
}

function headLines({ mark, project, by, date, units }: Answers): readonly string[] {
  return [
    `# ${commentText(mark)}, begun with \`pipeborne new\`. What was not answered is marked "assumed": put in what drawings and data`,
    '# sheets say. `pipeborne check` on this file tells what it gives, `pipeborne help input` what else may be written.',
    'format: pipeborne/1',
    '',
    'review:',
    `  project: ${yamlText(project ?? 'to be named')}`,
    ...(by === undefined ? [] : [`  prepared-by: ${yamlText(by)}`]),
    '  status: preliminary',
    `  date: ${date}`,
    `  units: ${units}`,
    '',
  ];
}

function serviceLines(answers: Answers, assume: Assume): readonly string[] {
  const usual = serviceOf(answers);
  const temperature = (name: 'running' | 'hot' | 'cold', what: string): string => {
    const told = answers[name]?.text;
    return `    ${name}: ${told === undefined ? assume(what, yamlText(usual[name]), `usual for ${usual.name}`) : yamlText(told)}`;
  };
  return [
    'service:',
    `  name: ${usual.name}`,
    '  duty: building services',
    '  fluid: water',
    '  hazards: none',
    `  system: ${usual.system}`,
    '  temperatures:',
    temperature('running', 'running temperature'),
    temperature('hot', 'highest temperature'),
    temperature('cold', 'lowest temperature'),
    '  pressures:',
    `    working: ${assume('working pressure', yamlText(answers.pressure.text), 'as high as the design pressure')}`,
    `    design: ${yamlText(answers.pressure.text)}`,
    '',
  ];
}

function pumpLines(kit: Kit, assume: Assume): readonly string[] {
  const { answers, ruler } = kit;
  const { units, motorTop, faces, facing, pumpHeight } = answers;
  const isResting = answers.arrangement === 'base';
  const centre = ruler.text(ruler.round(CENTRE_SHARE * motorTop.value));
  const speed = units === 'us' ? '1770 rpm' : '1475 rpm';
  const hertz = units === 'us' ? 60 : 50;
  const port = (name: string, side: Plan): readonly string[] => [
    `  ${name}:`,
    `    size: ${yamlText(answers.size.text)}`,
    `    facing: ${side}`,
    `    from-shaft: ${ruler.text(ruler.round(faces.value / 2))}`,
    '    flange: {standard: B16.1, class: 125, face: flat}  # assumed: cast iron, see the data sheet',
  ];
  return [
    'pump:',
    `  mark: ${yamlText(answers.mark)}`,
    '  build: split-coupled',
    `  mount: ${isResting ? 'resting' : 'hung'}`,
    '  shaft: vertical',
    `  at: {east: 0, north: 0, elevation: ${yamlText(pumpHeight.text)}}`,
    '  casing:',
    `    weight: ${yamlText(answers.casingWeight.text)}`,
    `    contents: ${assume('liquid in the casing', casingContents(answers), 'twice that of as much pipe')}`,
    '  motor:',
    ...(answers.motorWeight === undefined
      ? ['    # weight: not answered; it is estimated from the power until the nameplate is read']
      : [`    weight: ${yamlText(answers.motorWeight.text)}`]),
    `    power: ${yamlText(answers.motorPower.text)}`,
    `    speed: ${answers.motorSpeed === undefined ? assume('speed of the motor', speed, `a four-pole motor on ${hertz} Hz`) : yamlText(answers.motorSpeed.text)}`,
    '    centre-of-gravity:',
    `      up: ${assume('height of the centre of gravity of the motor', centre, `${CENTRE_SHARE} of the height of its top`)}`,
    `  duty: {flow: ${yamlText(answers.flow.text)}, head: ${yamlText(answers.head.text)}${answers.efficiency === undefined ? '' : `, efficiency: ${yamlText(answers.efficiency.text)}`}}`,
    ...port('suction', facing),
    ...port('discharge', OPPOSITE[facing]),
    ...(isResting ? baseLines(answers, assume) : []),
    ...(answers.withdrawal === undefined
      ? [
          `  outline: {motor-top: ${yamlText(motorTop.text)}}`,
          '  # withdrawal, in outline: clear height over the motor that the manufacturer asks for to draw it',
        ]
      : [
          `  outline: {motor-top: ${yamlText(motorTop.text)}, withdrawal: ${yamlText(answers.withdrawal.text)}}`,
        ]),
    '',
  ];
}

function baseLines({ baseHeight, pumpHeight }: Answers, assume: Assume): readonly string[] {
  const told = baseHeight?.text;
  const text =
    told === undefined
      ? assume('base', yamlText(pumpHeight.text), 'it stands on the floor, without a pad')
      : yamlText(told);
  return ['  base:', `    below-ports: ${text}`];
}

function casingContents({ units, size, schedule = USUAL_SCHEDULE, faces }: Answers): string {
  const pipe = findPipe({ nps: size.nps, schedule, material: 'carbon steel' });
  const bore = (pipe?.outsideDiameter ?? Number.NaN) - 2 * (pipe?.wall ?? Number.NaN);
  const volume = CASING_OVER_PIPE * (Math.PI / 4) * bore ** 2 * faces.value;
  const [unit, word] = units === 'us' ? ([GALLON, 'gal'] as const) : ([LITRE, 'l'] as const);
  const tenths = Math.max(1, Math.round((volume / unit) * 10));
  return `${tenths < 100 ? tenths / 10 : Math.round(tenths / 10)} ${word}`;
}

function roomLines({ ceiling }: Answers): readonly string[] {
  return [
    'room:',
    '  floor: 0',
    `  ceiling: ${yamlText(ceiling.text)}`,
    '  # objects, way-out, lift: what may be in the way, the opening the motor leaves by, the hoist over it',
    '',
  ];
}

function limitLines({ nozzleForce, nozzleMoment }: Answers): readonly string[] {
  const own = [
    ...(nozzleForce === undefined ? [] : [`resultant-force: ${yamlText(nozzleForce.text)}`]),
    ...(nozzleMoment === undefined ? [] : [`resultant-moment: ${yamlText(nozzleMoment.text)}`]),
  ].join(', ');
  const maker =
    own === ''
      ? [
          '    # basis: maker, with maker: {document: …, suction: …, discharge: …}, once the allowable loads are there',
        ]
      : [
          '    basis: maker',
          '    maker:',
          "      document: to be named  # the manufacturer's data sheet the loads are taken from",
          `      suction: {${own}}`,
          `      discharge: {${own}}`,
        ];
  return [
    'limits:',
    '  nozzle-loads:',
    ...maker,
    '    compare: [process-pump table, nozzle principal stress]',
  ];
}
