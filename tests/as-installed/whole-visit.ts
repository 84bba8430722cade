/** A visit on which everything was read and is in order, for any review; faults are put into it one at a time. */
import { asInstalled } from '../../src/as-installed/as-installed.js';
import type { Review } from '../../src/index.js';
import { wholeTurns } from '../../src/mechanics/modes/lock-out-bands.js';
import { ratedFrequency } from '../../src/report/limits/frequency.js';
import { speedBands } from '../../src/report/sections/loads/frequencies.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { type Box, boxesOf } from '../../src/sheet/sheet.js';
import { answersFor } from './visit.js';

/** Readings that follow from no prediction. */
const GIVEN: Readonly<Record<string, string>> = {
  'identity.date': '2026-11-05',
  'identity.by': 'L. Adeyemi',
  'identity.state': 'filled, cold',
  'identity.service-factor': '1.15',
  'sign-off.start': 'R. Okafor',
  'sign-off.start-date': '2026-11-05',
  'sign-off.run': 'R. Okafor',
  'sign-off.run-date': '2026-11-05',
  'before-start.motor-insulation': '550',
  'before-start.winding-temperature': '20 °C',
  'before-start.cable-insulation': '550',
  'seal.looks': 'dry',
  'seal.leakage': '0',
  'seal.flush': 'yes',
  'start-up.noise': 'none out of the way',
  'start-up.stop': 'quietly',
  'start-up.motor-top': '0',
  'start-up.pipe': '0',
  'start-up.bearing': '50 °C',
  'hydraulic.at-rest-suction': '300 kPa',
  'hydraulic.at-rest-discharge': '300 kPa',
  'hydraulic.head-limit': '5 %',
  'hydraulic.head-limit-from': 'specification 3.2',
  'hydraulic.flow-limit': '5 %',
  'hydraulic.flow-limit-from': 'specification 3.2',
  'vibration.limit': '5 mm/s',
  'vibration.limit-from': 'specification 3.6',
};

/** What is right in a box, where it follows from its id. */
function rightIn(box: Box, review: Review): string | undefined {
  const { id, kind, choices = [] } = box;
  const { pump } = review.installation;
  if (GIVEN[id] !== undefined) return GIVEN[id];
  if (/-limit(?:-from)?$|\.margin(?:-from)?$|^items\.|^open-items\.|remarks|-not-read$/u.test(id))
    return undefined;
  if (/^before-bolt-up\..*gap-|\.gasket$/u.test(id)) return '3 mm';
  if (/^before-bolt-up\..*\.(?:rise|offset|holes|shaft-along|shaft-across)$/u.test(id)) return '0';
  if (/^coupling\.gap-/u.test(id)) return '1.6 mm';
  if (/^coupling\.runout$|\.lean$|^plumb\.(?:along|across)$|\.gap$/u.test(id)) return '0';
  if (/volts-(?:ab|bc|ca)$/u.test(id)) return `${pump.motor.voltage?.value ?? 460} V`;
  if (/amps-[abc]$/u.test(id)) return `${(pump.motor.fullLoadCurrent?.value ?? 25) * 0.9} A`;
  if (id === 'identity.motor-voltage') return `${pump.motor.voltage?.value ?? 460} V`;
  if (id === 'identity.motor-current') return `${pump.motor.fullLoadCurrent?.value ?? 25} A`;
  if (id === 'identity.motor-frequency') return undefined;
  if (id === 'electrical.overload') return `${(pump.motor.fullLoadCurrent?.value ?? 25) * 1.1} A`;
  if (id.startsWith('vibration.')) return id === 'vibration.stopped' ? '0.5 mm/s' : '1.5 mm/s';
  if (/^knock-test\.(?:along|across)-/u.test(id)) return '3 Hz';
  if (id === 'electrical.frequency') return `${ratedFrequency(pump.motor.speed) ?? 60} Hz`;
  if (id === 'hydraulic.temperature')
    return `${review.installation.service.runningTemperature.value - 273.15} °C`;
  const [, end, number = '1'] = /^knock-test\.locked-(from|to)(?:-(\d))?$/u.exec(id) ?? [];
  if (end !== undefined) {
    const band = speedBands({ subject: review })[Number(number) - 1];
    if (band === undefined) return undefined;
    const turns = wholeTurns(band);
    return `${end === 'from' ? turns.from : turns.to} rpm`;
  }
  if (id === 'hydraulic.flow') return `${pump.duty.flow * 3600} m³/h`;
  if (id === 'hydraulic.running-suction') return '300 kPa';
  if (id === 'hydraulic.running-discharge') {
    const { density } = review.installation.service;
    return `${300 + (pump.duty.head * density.running.value * 9.80665) / 1000} kPa`;
  }
  if (id === 'access.over-motor') return '8 m';
  if (id === 'access.disconnect') return '3 m';
  if (kind === 'choice' && choices.includes('yes')) return 'yes';
  if (kind === 'choice') return box.expected ?? (choices.includes('carries') ? 'carries' : undefined);
  if (id.startsWith('supports.')) return box.expected;
  return undefined;
}

/** Readings of a unit that is in order. */
export function rightReadings(review: Review): Readonly<Record<string, string>> {
  const entries = boxesOf(buildSheet(review)).flatMap(({ box }) => {
    const text = rightIn(box, review);
    return text === undefined ? [] : [[box.id, text] as const];
  });
  return Object.fromEntries(entries);
}

/** The decisions on a unit in order but for what is changed; an empty text leaves the box empty. */
export function decisionsWith(review: Review, changes: Readonly<Record<string, string>>) {
  const readings = Object.fromEntries(
    Object.entries({ ...rightReadings(review), ...changes }).filter(([, text]) => text !== ''),
  );
  return asInstalled(review, [answersFor(review, readings)]);
}
