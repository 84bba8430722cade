import type { Sentences } from '../sentence.js';

const LINES_MISSING = 'no line starts there';
const at = (data: { readonly at: string }): string => data.at;
const by = (data: { readonly by: string }): string => data.by;

/** Reasons, advice and remarks of the checks of installation practice. */
export const practiceCheckSentences = {
  'checks.isolation-valves.exceeds': (data: { by: string; at: string }) => ({
    message: `nothing shuts the pump off from ${by(data)} on the ${at(data)}`,
    wanted:
      'put a valve that shuts between the pump and everything that stays full, or describe the one there is',
    hint: 'without it the system is drained for every seal',
  }),
  'checks.isolation-valves.unknown': (data: { by: string }) => ({
    message: `the file does not say whether ${by(data)} shuts tight`,
    wanted: 'say so beside the valve: shuts: yes, or shuts: no',
  }),
  'checks.isolation-valves.by': (data: { by: string; at: string }) => ({
    message: `${by(data)} shuts the ${at(data)}`,
  }),
  'checks.isolation-valves.capped': () => ({ message: 'every leg ends in a cap: nothing is left to shut' }),
  'checks.isolation-valves.no-place': () => ({ message: LINES_MISSING }),

  'checks.check-valve.exceeds': () => ({
    message: 'liquid can run back through the pump at rest, and no check valve holds it',
    wanted: 'put a check valve on the discharge, between the pump and the valve that shuts',
  }),
  'checks.check-valve.unknown': () => ({
    message: 'no check valve is described, and the file does not say whether liquid could run back',
    wanted: 'give pump backflow: possible or backflow: none',
    hint: 'it is possible beside another pump, or where a head remains when the pump stops',
  }),
  'checks.check-valve.by': (data: { by: string }) => ({ message: `${by(data)} holds the liquid back` }),
  'checks.check-valve.no-backflow': () => ({
    message: 'by the file nothing can run back through the pump',
  }),
  'checks.check-valve.no-place': () => ({ message: LINES_MISSING }),

  'checks.valve-order.exceeds': (data: { at: string }) => ({
    message: `no valve shuts ${at(data)} off from the system`,
    wanted: 'put the valve that shuts on the far side of the check valve, so that both can be opened',
  }),
  'checks.valve-order.unknown': (data: { by: string; at: string }) => ({
    message: `the file does not say whether ${by(data)}, behind ${at(data)}, shuts tight`,
    wanted: 'say so beside the valve: shuts: yes, or shuts: no',
  }),
  'checks.valve-order.by': (data: { by: string }) => ({ message: `${by(data)} stands behind it` }),
  'checks.valve-order.no-place': () => ({ message: 'no check valve of its own stands on the discharge' }),

  'checks.drain-and-vent.none': (data: { word: string; point: string }) => ({
    message: `there is no ${data.word} between the valves that shut the pump off`,
    wanted: `add a ${data.word} at the ${data.point}`,
    hint: 'led to where nobody is scalded: to a floor drain, or to a hose connection',
  }),
  'checks.drain-and-vent.off': (data: { by: string; point: string; word: string }) => ({
    message: `${by(data)} is not at the ${data.point} of what the valves shut off`,
    wanted: `add a ${data.word} at the ${data.point}`,
    hint: 'what it does not reach stays in the pipe until a flange is opened',
  }),
  'checks.drain-and-vent.unknown': (data: { word: string; point: string }) => ({
    message: `the file does not say whether there is a ${data.word} at the ${data.point}`,
    wanted: `put a ${data.word} into the walk where it stands, or say whether the pump has one`,
  }),
  'checks.drain-and-vent.by': (data: { by: string }) => ({ message: `${by(data)} stands there` }),
  'checks.drain-and-vent.behind': (data: { check: string }) => ({
    message: `nothing drains the stretch behind ${data.check}, which holds its liquid back from the pump`,
    wanted: 'a drain of its own there, for when the check valve is opened',
  }),
  'checks.drain-and-vent.not-shut-off': () => ({
    message: 'no valves bound the stretch to be drained: see the valves that shut the pump off',
  }),
  'checks.drain-and-vent.no-place': () => ({ message: LINES_MISSING }),

  'checks.gauge-taps.exceeds': (data: { at: string }) => ({
    message: `the ${at(data)} has no tap for a gauge`,
    wanted: "add a tap at the pump's port or in the straight pipe next to it",
    hint: 'head and flow are read from both taps with one gauge',
  }),
  'checks.gauge-taps.behind': (data: { tap: string; behind: string }) => ({
    message: `${data.tap} stands behind ${data.behind} and reads the loss of that as well`,
    wanted: 'a tap between the pump and whatever loses pressure',
  }),
  'checks.gauge-taps.unknown': (data: { at: string }) => ({
    message: `the file does not say whether the ${at(data)} has a tap for a gauge`,
    wanted: 'put a gauge-tap into the walk where it stands, or give pump gauge-taps',
  }),
  'checks.gauge-taps.by': (data: { by: string }) => ({ message: `${by(data)} serves the gauge` }),
  'checks.gauge-taps.no-place': () => ({ message: LINES_MISSING }),

  'checks.strainer.exceeds': () => ({
    message: 'the system is open, and no strainer stands ahead of the pump',
    wanted: 'put a strainer into the suction with room to draw its basket, or describe the one there is',
  }),
  'checks.strainer.unknown': () => ({
    message: 'no strainer is described, and the file does not say whether the system is open',
    wanted: 'give service system: open or system: closed',
  }),
  'checks.strainer.unsaid': (data: { diffuser: string }) => ({
    message: `the system is open, and the file does not say whether ${data.diffuser} holds a strainer`,
    wanted: 'give strainer: yes or strainer: no beside it',
  }),
  'checks.strainer.closed': () => ({
    message: 'no strainer stands in the suction; in a closed system that is for the designer to choose',
  }),
  'checks.strainer.screen': (data: { at: string }) => ({
    message: `${at(data)} is for flushing and first starts: whether it has been taken out is seen on site`,
    wanted: 'take it out when the line runs clean, and write the day down',
  }),
  'checks.strainer.by': (data: { by: string }) => ({ message: `${by(data)} keeps dirt from the pump` }),
  'checks.strainer.no-place': () => ({ message: LINES_MISSING }),

  'checks.straight-run.exceeds': (data: { by: string; disturbs: string }) => ({
    message: `little straight pipe stands between the pump and ${by(data)} (${data.disturbs})`,
    wanted:
      'lengthen it, or fit a straightener or a suction diffuser; five diameters are customary, and the pump standard has a table by fitting',
    hint: "the pump's manufacturer decides what this impeller bears",
  }),
  'checks.straight-run.by': (data: { by: string; disturbs: string }) => ({
    message: `the straight pipe ends at ${by(data)} (${data.disturbs})`,
  }),
  'checks.straight-run.ends': () => ({
    message: 'the line as described ends before that length is reached',
    wanted: 'describe the suction line farther',
  }),
  'checks.straight-run.diffuser': (data: { by: string }) => ({
    message: `${by(data)} straightens the flow; the length ahead of it is held against its manufacturer's number`,
  }),
  'checks.straight-run.diffuser-short': (data: { by: string }) => ({
    message: `less straight pipe stands ahead of ${by(data)} than its manufacturer asks for`,
    wanted: 'lengthen it, or ask the manufacturer',
  }),
  'checks.straight-run.diffuser-unsaid': (data: { by: string }) => ({
    message: `what straight pipe ${by(data)} needs ahead of it is for its manufacturer to say`,
    wanted: 'give straight-asked beside it, and straightens: no where it has no vanes',
  }),
  'checks.straight-run.no-place': () => ({ message: LINES_MISSING }),

  'checks.check-valve-distance.exceeds': (data: { at: string; missed: string }) => ({
    message: `${at(data)} stands nearer to the pump than these rules in use, in diameters: ${data.missed}`,
    wanted: "ask the valve's manufacturer for its own distance, and listen when the pump stops",
  }),
  'checks.check-valve-distance.kept': (data: { kept: string }) => ({
    message: `its distance keeps these rules in use, in diameters: ${data.kept}`,
  }),
  'checks.check-valve-distance.no-place': () => ({ message: 'no check valve stands on the discharge' }),

  'checks.reducer-flat-side.exceeds': (data: { at: string; shape: string; flat: string }) => ({
    message: `${at(data)} is ${data.shape} with ${data.flat} flat and keeps a pocket of air`,
    wanted: 'an eccentric reducer with its flat side on top',
  }),
  'checks.reducer-flat-side.unknown': (data: { at: string }) => ({
    message: `${at(data)} has its flat side below: right only where the supply comes down from above`,
    wanted: 'describe the suction line to where it changes its height, or turn the flat side up',
  }),
  'checks.reducer-flat-side.upright': () => ({ message: 'an upright reducer keeps no air' }),
  'checks.reducer-flat-side.no-place': () => ({ message: 'no reducer stands in the suction line' }),

  'checks.suction-velocity.exceeds': (data: { pipe: string }) => ({
    message: `the liquid is fast in the suction, ${data.pipe}`,
    wanted: 'a larger suction pipe, or less flow',
    hint: 'the designer decides, with the suction head the pump needs',
  }),
  'checks.suction-velocity.no-place': () => ({ message: LINES_MISSING }),
  'checks.discharge-velocity.exceeds': (data: { pipe: string }) => ({
    message: `the liquid is fast in the discharge, ${data.pipe}`,
    wanted: 'a larger discharge pipe, or less flow',
    hint: 'the designer decides, by noise and energy',
  }),
  'checks.discharge-velocity.no-limit': () => ({
    message: 'no limit of the velocity in the discharge is given',
    wanted: 'give limits velocity with its source',
  }),
  'checks.discharge-velocity.no-place': () => ({ message: LINES_MISSING }),

  'checks.motor-power.exceeds': () => ({
    message: 'the duty takes more than the power on the nameplate of the motor',
    wanted: 'a larger motor, or a smaller duty; the service factor is not for continuous duty',
    hint: "read the pump's curve also at the end of its flow",
  }),
  'checks.motor-power.no-efficiency': () => ({
    message: 'the efficiency of the pump at its duty is not given',
    wanted: "give duty efficiency from the pump's curve",
  }),
  'checks.motor-power.exceeds-on-drive': () => ({
    message: 'the duty takes more than the power on the nameplate of the motor, which runs on a drive',
    wanted: 'a larger motor, or a smaller duty; on a drive no service factor is to be used',
  }),
  'checks.motor-power.no-place': () => ({ message: 'there is no motor' }),

  'checks.motor-orientation.exceeds': () => ({
    message: 'the manufacturer does not let this motor stand with its shaft down',
    wanted: 'a motor made for that position, with a bearing for the weight it carries',
  }),
  'checks.motor-orientation.below': () => ({
    message: 'the motor stands below the pump, where a leaking seal runs into it',
    wanted: 'the motor above the pump',
  }),
  'checks.motor-orientation.unknown': () => ({
    message: 'the file does not say whether the manufacturer lets the motor stand with its shaft down',
    wanted: 'give motor shaft-down: yes or shaft-down: no, from the manufacturer',
  }),
  'checks.motor-orientation.no-place': () => ({ message: 'there is no motor' }),

  'checks.connector-needed.exceeds': (data: { by: string }) => ({
    message: `${by(data)} stands at a pump that hangs in its pipe, where nothing moves against anything`,
    wanted: 'leave it out unless the manufacturer or the acoustician asks for it',
    hint: 'a connector passes the thrust of the pressure to the supports and is the first thing to burst',
  }),
  'checks.connector-needed.behind': (data: { by: string }) => ({
    message: `${by(data)} stands behind the valve that shuts; what it is for is not told`,
    wanted: 'ask what it is there for',
  }),
  'checks.connector-needed.no-place': () => ({
    message: 'the pump does not hang in its pipe; connectors are for its manufacturer and the acoustician',
  }),

  'checks.isolation-bridged.exceeds': (data: { by: string; at: string }) => ({
    message: `${by(data)} is rigid and stands between the pump and the first spring or connector of the ${at(data)}`,
    wanted: 'put a spring in its place where the building has to be quiet',
  }),
  'checks.isolation-bridged.nothing': (data: { at: string }) => ({
    message: `no support of the ${at(data)} carries weight`,
    wanted: 'describe the supports of the line',
  }),
  'checks.isolation-bridged.no-place': () => ({ message: 'neither pump nor pipe stands on springs' }),

  'checks.within-scope.duty-unsaid': () => ({
    message: 'the file does not say what the pump is for; a fire pump is not reviewed here',
    wanted: 'give service duty: building services or duty: process',
  }),
  'checks.within-scope.hazards-unsaid': () => ({
    message: 'the file does not say that nothing makes the liquid dangerous',
    wanted: 'give service hazards: none where that is so',
  }),
  'checks.within-scope.shaft-unsaid': () => ({
    message: 'the file does not say that the shaft is upright; everything here takes it to be',
    wanted: 'give pump shaft: vertical where that is so',
  }),
  'checks.within-scope.close-coupled': () => ({
    message:
      'close-coupled: the motor comes off for every seal, and a seal change without lifting it is not judged; nor are coupling, guard and rotor prop',
  }),
  'checks.within-scope.hot': () => ({
    message:
      'the line gets hotter than the guides for building-service pumps are written for: seal cooling, bearing temperature and flange leakage when hot are not judged',
    wanted: "the manufacturer's word for this temperature, and a review by process-plant rules",
  }),
  'checks.within-scope.no-place': () => ({ message: 'nothing is asked of the scope' }),
} as const satisfies Sentences;
