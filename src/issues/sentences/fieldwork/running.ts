import type { Sentences } from '../sentence.js';
import { say } from '../tell.js';
import { at, item } from './item.js';

/** Sentences on readings of the set itself that exceed: plumb, coupling, seal, hydraulics, supply, vibration, room. */
export const fieldworkRunningSentences = {
  'fieldwork.plumb-shaft.exceeds': item(
    () => 'the shaft is out of plumb by more than the manufacturer allows',
    'set the supports with the line filled until it stands plumb',
    'the weight of the motor bends the stool, and the seal wears to one side',
  ),
  'fieldwork.coupling-gaps.exceeds': item(
    () => 'the gaps of the coupling differ',
    'clean the registers, loosen, and pull the bolts crosswise in turns',
    'the shaft runs out at the seal, and vibrates at running speed',
  ),
  'fieldwork.shaft-runout.exceeds': item(
    () => 'the shaft runs out above the seal',
    'put the coupling together again; look for dirt on the registers and for pipe strain',
    'the seal leaks and wears',
  ),
  'fieldwork.seal-leakage.exceeds': item(
    () => 'the seal leaks more than its manufacturer allows',
    'lock out, drain, and look at its faces and at the flush',
    'water on the floor, and a dry seal when air gathers',
  ),
  'fieldwork.head.exceeds': item(
    (data: { way: string; flow: string }) =>
      `the head is ${say(data, 'way')} the duty at ${say(data, 'flow')}`,
    'compare with the curve of the maker: rotation, impeller, gauges, air, valves',
    'the system is not what the duty says, and the motor may be overloaded',
  ),
  'fieldwork.flow.exceeds': item(
    (data: { way: string }) => `the flow is ${say(data, 'way')} the duty`,
    'balance the system, then read gauges and currents again',
    'too little heat or cooling, or a pump far out on its curve',
  ),
  'fieldwork.voltage-range.exceeds': item(
    () => 'the voltage is too far from the rated one',
    'correct the supply before the motor runs for long',
    'a low voltage makes currents rise; a high one heats the iron',
  ),
  'fieldwork.voltage-unbalance.exceeds': item(
    () => 'the three voltages differ',
    'find the uneven load or the bad contact of the supply',
    'one per cent of voltage makes six to ten of current, and the windings run hot',
  ),
  'fieldwork.current.exceeds': item(
    () => 'the motor takes more current than its plate allows',
    'throttle to the duty, and look at rotation, voltage and impeller',
    'the windings overheat, or the overload trips',
  ),
  'fieldwork.current-unbalance.exceeds': item(
    () => 'the three currents differ',
    'turn the three leads round once: what stays is the supply, what goes with them the motor',
    'the windings run hot',
  ),
  'fieldwork.vibration-stopped.exceeds': item(
    () => 'too much vibration is left with the pump stopped',
    'find the neighbour it comes from, and read again with it stopped',
    'readings of this pump cannot be told from those of others',
  ),
  'fieldwork.vibration.exceeds': item(
    (data: { at: string; worst: string; direction: string; zone: string }) =>
      `the ${at(data)} vibrates with ${say(data, 'worst')}, ${say(data, 'direction')}; published zone: ${say(data, 'zone')}`,
    'take a spectrum: once a turn points to unbalance, coupling or a natural frequency, once a blade to the hydraulics; compare both directions and a sweep of speed',
    'seal, bearings and supports loosen',
  ),
  'fieldwork.knock-margin.exceeds': item(
    (data: { frequency: string; at: string }) =>
      `${say(data, 'frequency')} at the ${at(data)} is too near to running speed`,
    'stiffen or move a support, or keep the drive out of the speeds near it',
    'at that speed the pump swings many times as far',
  ),
  'fieldwork.start-movement.exceeds': item(
    () => 'the motor top moves more at the start than is allowed',
    'start softer, or hold the pipe nearer to the pump',
    'nozzles and hangers are shaken at every start',
  ),
  'fieldwork.headroom.exceeds': item(
    () => 'there is too little height over the motor to draw it',
    'have whatever hangs there moved while it is new',
    'the motor does not come out when the seal fails',
  ),
  'fieldwork.disconnect-distance.exceeds': item(
    () => 'the disconnect is too far from the motor to be watched from it',
    'ask the authority having jurisdiction, or fit one that can be locked open beside the motor',
    'somebody may close it while another works on the shaft',
  ),
  'fieldwork.closes-by-hand.exceeds': item(
    (data: { at: string }) => `the faces at the ${at(data)} do not come together by hand`,
    'refit the closing piece before the bolts are pulled',
    'what hands cannot close the bolts do, and the pump bears it',
  ),
  'fieldwork.lock-nuts.exceeds': item(
    (data: { at: string }) => `the lock nuts of ${at(data)} are loose`,
    'tighten them once the height is right',
    'the rod turns with vibration, and its load goes to the neighbours',
  ),
  'fieldwork.travel-stops.exceeds': item(
    (data: { at: string }) => `the travel stops of ${at(data)} are still in`,
    'take them out with the line filled and cold, and keep them at the support',
    'the spring is a rigid support: heat loads the nozzles',
  ),
  'fieldwork.slides-freely.exceeds': item(
    (data: { at: string }) => `the pipe does not slide through ${at(data)}`,
    'free it, and look for marks once the line is hot',
    'a guide that holds is an anchor: growth loads the nozzles',
  ),
  'fieldwork.anchor-bolts.exceeds': item(
    (data: { at: string }) => `the anchor ${at(data)} is not bolted tight`,
    'tighten it before the line is filled',
    'the line moves as the review does not foresee',
  ),
  'fieldwork.coupling-bolts.exceeds': item(
    () => 'the coupling bolts are not pulled to the torque of the manufacturer',
    'pull them crosswise in turns to the torque of the manual',
    'the coupling slips, and the rotor drops',
  ),
  'fieldwork.shaft-turns.exceeds': item(
    () => 'the shaft does not turn freely by hand',
    'find what rubs before the motor is switched on: pipe strain, lift of the rotor, seal',
    'seal and wear rings are ruined at the first start',
  ),
  'fieldwork.guard.exceeds': item(
    () => 'the guard of shaft and coupling is not in place',
    'fit and close it; nobody starts the pump before',
    'a turning coupling catches sleeve and hand',
  ),
  'fieldwork.seal-vented.exceeds': item(
    () => 'the seal chamber was not vented',
    'vent it at its highest place with the pump at rest',
    'the seal runs dry in air and fails within minutes',
  ),
  'fieldwork.flush-open.exceeds': item(
    () => 'the flush line of the seal is shut',
    'open it',
    'the seal runs hot and dry',
  ),
  'fieldwork.valves-open.exceeds': item(
    () => 'the isolation valves do not stand open',
    'open the suction fully; start against the discharge only as the manufacturer says',
    'the pump heats its own water, or runs dry',
  ),
  'fieldwork.check-holds.exceeds': item(
    () => 'the check valve does not hold',
    'open it and look for dirt or a wrong direction',
    'the pump turns backwards when it stops, and starts against it',
  ),
  'fieldwork.strainer-clean.exceeds': item(
    () => 'the strainer is not clean',
    'lock out, isolate, drain, clean',
    'the suction starves, and the pump crackles',
  ),
  'fieldwork.screen-out.exceeds': item(
    () => 'the start-up screen is still in',
    'take it out once the line is flushed, and tag that it is out',
    'it clogs or tears, and its pieces go through the pump',
  ),
  'fieldwork.rotation.exceeds': item(
    () => 'the shaft turns against the arrow',
    'lock out and change two leads of the motor',
    'little head, much current, and a screwed impeller may come off',
  ),
  'fieldwork.noise.exceeds': item(
    (data: { told: string }) => `${say(data, 'told')} is heard`,
    'crackling points to the suction, rubbing to strain, knocking to a loose part: stop and look',
    'what is heard now breaks later',
  ),
  'fieldwork.valve-slam.exceeds': item(
    () => 'the check valve closes with a slam',
    'slow the stop, or fit a check valve that closes before the flow turns',
    'the slam loads flanges and hangers at every stop',
  ),
  'fieldwork.in-sight.exceeds': item(
    () => 'the disconnect is not seen from the motor',
    'ask the authority having jurisdiction, or fit one that is seen',
    'somebody may close it while another works on the shaft',
  ),
  'fieldwork.isolates.exceeds': item(
    () => 'pressure comes back after the pump is shut and bled',
    'find the valve that leaks and mend it',
    'the pump cannot be opened safely',
  ),
  'fieldwork.bleeds.exceeds': item(
    () => 'vents and drains do not empty the pump',
    'fit or free them',
    'the pump cannot be proved empty before it is opened',
  ),
  'fieldwork.locks.exceeds': item(
    () => 'the disconnect does not lock open, or the motor starts all the same',
    'mend the disconnect and its wiring before anyone works on the set',
    'nobody can work on the set safely',
  ),
  'fieldwork.recovery': (data: { at: string }) => ({
    message: `the gaps at the ${at(data)} were not read before the bolts were pulled, and cannot be read now`,
    wanted: 'make the recovery test: isolate, drain, slacken the flange, watch it move',
    hint: 'whether the bolts hold the pipe against the pump is not known',
  }),
} as const satisfies Sentences;
