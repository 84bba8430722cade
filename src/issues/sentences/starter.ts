import type { Sentences } from './sentence.js';
import { say, tell } from './tell.js';

/** Beginning a new file. */
export const starterSentences = {
  'starter.missing': ({ options }: { options: readonly string[] }) => {
    const list = Array.isArray(options) ? options : [String(options)];
    return {
      message: `${list.length === 1 ? 'an answer is' : `${list.length} answers are`} missing: ${list.map((option) => option.split(' ')[0]).join(', ')}`,
      wanted: 'every answer as an option, or a terminal to be asked at',
      example: `pipeborne new ${list.join(' ')}`,
    };
  },
  'starter.unusable': (data: {
    words?: readonly string[];
    option: string;
    found: string;
    why: string;
    asks: string;
    example: string;
  }) => {
    const words = Array.isArray(data.words) ? data.words : undefined;
    return {
      message: `${say(data, 'option')} "${say(data, 'found')}" cannot be used: ${say(data, 'why')}`,
      wanted: words === undefined ? say(data, 'asks') : `one of ${words.join(', ')}`,
      example: `${say(data, 'option')} "${say(data, 'example')}"`,
    };
  },
  'starter.not-of-arrangement': (data: { option: string; arrangement: string }) =>
    tell(data, `${say(data, 'option')} has no place in the arrangement "${say(data, 'arrangement')}"`, {
      wanted: 'only what belongs to the arrangement',
      hint: '`pipeborne new --help` says which belongs to which',
    }),
  'starter.no-reducer': (data: { pipe: string; ports: string }) =>
    tell(
      data,
      `no reducer from pipe of ${say(data, 'pipe')} to ports of ${say(data, 'ports')} is in the tables`,
      {
        wanted: 'pipe of the size of the ports, or a little larger',
      },
    ),
  'starter.no-schedule': (data: { found: string; size: string; schedules: readonly string[] }) =>
    tell(
      data,
      `schedule "${say(data, 'found')}" is not in the table of carbon steel pipe of ${say(data, 'size')}`,
      {
        wanted: `a schedule of the table: ${say(data, 'schedules')}`,
      },
    ),
  'starter.turn-along': (data: { turn: string; facing: string }) =>
    tell(
      data,
      `the pipe cannot turn ${say(data, 'turn')}: it already runs that way or back, as the suction faces ${say(data, 'facing')}`,
      {
        wanted: 'a turn across the run',
      },
    ),
  'starter.temperatures': (data: { hot: string; running: string }) =>
    tell(data, `${say(data, 'hot')}, the higher temperature, is below ${say(data, 'running')}`, {
      wanted: 'cold, running and hot in rising order',
    }),
  'starter.pipe-too-low': (data: { option: string; found: string; least: string }) =>
    tell(
      data,
      `${say(data, 'option')} ${say(data, 'found')} leaves no room for elbows and valves over the pump`,
      {
        wanted: `at least ${say(data, 'least')}`,
      },
    ),
  'starter.no-room-for-rods': (data: { option: string; found: string; least: string }) =>
    tell(data, `${say(data, 'option')} ${say(data, 'found')} leaves no room for rods over the pipe`, {
      wanted: `at least ${say(data, 'least')}`,
    }),
  'starter.motor-over-structure': (data: { option: string; found: string; least: string }) =>
    tell(data, `the motor reaches higher than ${say(data, 'option')} ${say(data, 'found')}`, {
      wanted: `at least ${say(data, 'least')}, and room to draw the motor`,
    }),
  'starter.run-too-short': (data: { option: string; found: string; least: string }) =>
    tell(data, `${say(data, 'option')} ${say(data, 'found')} is too short for what stands in it`, {
      wanted: `at least ${say(data, 'least')}`,
    }),
  'starter.leg-too-short': (data: { option: string; found: string; least: string }) =>
    tell(data, `${say(data, 'option')} ${say(data, 'found')} is too short for an elbow and an end`, {
      wanted: `at least ${say(data, 'least')}`,
    }),
  'starter.drop-too-short': (data: { option: string; found: string; least: string }) =>
    tell(
      data,
      `${say(data, 'option')} ${say(data, 'found')} leaves no room for elbow and valve below the pump`,
      {
        wanted: `at least ${say(data, 'least')}`,
      },
    ),
} satisfies Sentences;
