import type { Sentences } from '../sentence.js';
import { say } from '../tell.js';
import { at, item } from './item.js';

/** Sentences on what keeps a pump from being started, running on, or being accepted. */
export const fieldworkDecisionSentences = {
  'fieldwork.recovery.exceeds': item(
    (data: { which: string }) =>
      `the shaft moves while the bolts of the ${say(data, 'which')} flange are slackened`,
    'refit the closing piece: the bolts held a misfit shut',
    'the pump has borne the misfit since bolt-up',
  ),
  'fieldwork.rods-loaded.exceeds': item(
    (data: { at: string }) => `the rods of ${at(data)} are slack`,
    'set the nuts, line filled, until it carries what is predicted',
    'the neighbours and the nozzle carry its load, and the pipe may drop on it',
  ),
  'fieldwork.support-moved.exceeds': item(
    (data: { mark: string; what: string }) =>
      `${say(data, 'mark')} is not where it is drawn: ${say(data, 'what')}`,
    'set it as drawn, or review the line with it where it is',
    'loads of nozzles and neighbours change with it',
  ),
  'fieldwork.level-datum.exceeds': item(
    () => 'all heights are off by one amount',
    'read the pump from the same mark',
    'nobody knows whether the line or the mark is off',
  ),
  'fieldwork.line-state.exceeds': item(
    () => 'the line is dry',
    'fill and vent it',
    'seal and wear rings run dry within seconds',
  ),
  'fieldwork.pressure-tested.exceeds': item(
    () => 'the line has not passed its pressure test',
    'test it, with the pump isolated or rated for it',
    'a joint lets go under pressure, hot',
  ),
  'fieldwork.flushed.exceeds': item(
    () => 'the line has not been flushed',
    'flush and clean it before the pump moves its dirt',
    'dirt ruins the seal and chokes the strainer',
  ),
  'fieldwork.filled.exceeds': item(
    () => 'line and casing are not filled and vented',
    'fill until water without air runs from every vent',
    'a dry seal fails within seconds',
  ),
  'fieldwork.tight.exceeds': item(
    () => 'something leaks at rest',
    'find and mend it before the pressure rises',
    'a leak grows with pressure and heat',
  ),
  'fieldwork.locks-off.exceeds': item(
    () => 'a lock is still on',
    'have each lock taken off by the one who put it on',
    'somebody may still be at work on it',
  ),
  'fieldwork.people-clear.exceeds': item(
    () => 'people are not clear, or were not told',
    'clear the place and tell them before power is put on',
    'a start surprises whoever stands at shaft or pipe',
  ),
  'fieldwork.protections.exceeds': item(
    () => 'controls and protections were not tried, or do not trip',
    'try stop, overload, interlocks and alarms by an approved plan',
    'nothing stops the motor when it must be stopped',
  ),
  'fieldwork.motor-insulation.exceeds': item(
    () => 'the winding of the motor is not insulated well enough',
    'do not put power on; dry it and test again, or have it repaired',
    'a short to the frame when power is put on',
  ),
  'fieldwork.cable-insulation.exceeds': item(
    () => 'the cable of the motor is not insulated',
    'do not put power on; find the fault',
    'a short when power is put on',
  ),
  'fieldwork.overload.exceeds': item(
    () => 'the overload is set too high for the plate of the motor',
    'set it to the plate',
    'the motor burns before it trips',
  ),
  'fieldwork.supply-voltage.exceeds': item(
    () => 'the supply is too far from the rated voltage',
    'correct the supply, or the connection of the motor, before power is put on',
    'the motor does not start, or burns',
  ),
  'fieldwork.supply-unbalance.exceeds': item(
    () => 'the three voltages of the supply differ',
    'find the lost phase, the uneven load or the bad contact',
    'the windings overheat; without a phase the motor stands and burns',
  ),
  'fieldwork.supply-frequency.exceeds': item(
    () => 'the frequency is not that of the motor',
    'connect it to the supply it is made for',
    'speed, head and current are all others',
  ),
  'fieldwork.lost-phase.exceeds': item(
    () => 'a phase carries no current',
    'stop; find the fuse, contact or lead',
    'two windings carry the load of three and burn',
  ),
  'fieldwork.plate-weight.exceeds': item(
    (data: { what: string }) => `the ${say(data, 'what')} on the plate is not that of the review`,
    'review it with the weight of the plate',
    'every load of the review rests on it',
  ),
  'fieldwork.head-rises.exceeds': item(
    () => 'the gauges show no rise across the pump',
    'stop; look at rotation, air, valves and gauges',
    'the pump churns, heats its water and runs dry',
  ),
  'fieldwork.flow-moves.exceeds': item(
    () => 'no liquid moves',
    'stop; open the way, or vent it',
    'the water in the casing boils, and the seal with it',
  ),
  'fieldwork.liquid-temperature.exceeds': item(
    () => 'the liquid is hotter than anything that was reviewed',
    'stop, let it cool, and find out why',
    'loads, stresses and pressure are past what was reviewed; it scalds',
  ),
  'fieldwork.seal-looks.exceeds': item(
    () => 'the seal lets out a stream, a spray or smoke',
    'stop, lock out, and look at its faces',
    'it scalds, and fails at once',
  ),
  'fieldwork.seal-drops.exceeds': item(
    () => 'the seal leaks more than a published acceptance lets it',
    'let it run in; then compare with the figure of the manufacturer',
    'it wears, and water stands on the floor',
  ),
  'fieldwork.vibration-damage.exceeds': item(
    (data: { at: string }) => `the ${at(data)} vibrates past every published figure of damage`,
    'stop, and find the cause before it is started again',
    'bearings, seal and supports come apart',
  ),
  'fieldwork.bearing-temperature.exceeds': item(
    () => 'a bearing is hotter than it may be',
    'compare with the figure of the manufacturer; look at grease, load and alignment',
    'the grease runs out, and the bearing fails',
  ),
  'fieldwork.bearing-heat.exceeds': item(
    () => 'a bearing is hotter than every figure of a trip',
    'stop, and find the cause before it is started again',
    'the bearing fails, and the rotor with it',
  ),
  'fieldwork.bearing-steady.exceeds': item(
    () => 'the temperature of the bearings still rises',
    'run on under watch until two readings half an hour apart are alike',
    'nobody knows where it ends',
  ),
  'fieldwork.whine.exceeds': item(
    () => 'it whines',
    'find what: blades, drive or bearing',
    'a change of sound is the first sign of most failures',
  ),
  'fieldwork.pipe-movement.exceeds': item(
    () => 'the pipe moves more at the start than it may',
    'do not start again before its supports and the start were looked at',
    'nozzles and hangers are shaken at every start',
  ),
  'fieldwork.knock-at-speed.exceeds': item(
    (data: { at: string; frequency: string }) =>
      `${say(data, 'frequency')} at the ${at(data)} lies at running speed`,
    'stiffen or move a support, or keep the drive out of that speed',
    'at that speed the pump swings many times as far',
  ),
  'fieldwork.locked-speeds.exceeds': item(
    (data: { open: string }) => `the drive is not kept out of ${say(data, 'open')}`,
    'set the band in the drive',
    'the set swings at its natural frequency',
  ),
  'fieldwork.level-datum.asked': (data: { offset: string; way: string }) => ({
    message: `all heights are ${say(data, 'offset')} ${say(data, 'way')} than predicted: the mark they were read from, or the line`,
    wanted: 'the height of the suction port of the pump, read from the same mark',
    hint: 'if the pump is off by as much it is the mark, a floor topping for example; if not, the line stands off the pump',
  }),
  'fieldwork.no-rated-frequency': (data: { at: string; title: string }) => ({
    message: `${say(data, 'title')}, ${say(data, 'at')}: the rated frequency is not known`,
    wanted: 'the frequency on the plate of the motor, in the box identity.motor-frequency',
  }),
  'fieldwork.unlikely': (data: { at: string; found: string; title: string }) => ({
    message: `${say(data, 'title')}, ${say(data, 'at')}: "${say(data, 'found')}" is unlikely there`,
    wanted: 'the reading again, or the same with the word confirmed behind it',
  }),
} as const satisfies Sentences;
