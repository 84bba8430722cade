/** What is usual for a service: common practice, said as an assumption wherever it is taken. */
import { parseQuantity } from '../units/index.js';
import type { Answers, Measured } from './answers.js';

export interface ServiceValues {
  readonly name: string;
  readonly system: 'open' | 'closed';
  readonly running: string;
  readonly hot: string;
  readonly cold: string;
  readonly insulation: string;
  readonly insulationKind: string;
}

const fibreglass = 'fibreglass';
const elastomeric = 'elastomeric';

const values = {
  us: {
    heating: { running: '180 degF', hot: '200 degF', cold: '60 degF', thickness: '2 in' },
    chilled: { running: '44 degF', hot: '90 degF', cold: '40 degF', thickness: '1.5 in' },
    condenser: { running: '85 degF', hot: '100 degF', cold: '45 degF', thickness: undefined },
  },
  si: {
    heating: { running: '80 degC', hot: '95 degC', cold: '15 degC', thickness: '50 mm' },
    chilled: { running: '7 degC', hot: '32 degC', cold: '5 degC', thickness: '40 mm' },
    condenser: { running: '30 degC', hot: '38 degC', cold: '7 degC', thickness: undefined },
  },
} as const;
const names = {
  heating: 'heating hot water',
  chilled: 'chilled water',
  condenser: 'condenser water',
} as const;

/**
 * What is usual for the service. Where a temperature is told, the usual ones give way to it.
 *
 * @param answers - service, units and temperatures [-]
 * @returns texts as they stand in the file [-]
 */
export function serviceOf(answers: Answers): ServiceValues {
  const { service, units } = answers;
  const usual = values[units][service];
  const kind = service === 'heating' ? fibreglass : elastomeric;
  const running = answers.running ?? between(measured(usual.running), answers.cold, answers.hot);
  const told = (text: string, keeps: (value: number) => boolean): string =>
    keeps(measured(text).value) ? text : running.text;
  return {
    name: names[service],
    system: service === 'condenser' ? 'open' : 'closed',
    running: running.text,
    hot: answers.hot?.text ?? told(usual.hot, (value) => value >= running.value),
    cold: answers.cold?.text ?? told(usual.cold, (value) => value <= running.value),
    insulation: usual.thickness === undefined ? 'none' : `{kind: ${kind}, thickness: ${usual.thickness}}`,
    insulationKind: kind,
  };
}

function measured(text: string): Measured {
  const read = parseQuantity(text, 'temperature');
  return { text, value: read.ok ? read.value : Number.NaN };
}

function between(usual: Measured, cold: Measured | undefined, hot: Measured | undefined): Measured {
  if (hot !== undefined && hot.value < usual.value) return hot;
  return cold !== undefined && cold.value > usual.value ? cold : usual;
}
