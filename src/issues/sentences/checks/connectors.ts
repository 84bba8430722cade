import type { Sentences } from '../sentence.js';

/** Reasons and advice of the check on flexible connectors. */
export const connectorCheckSentences = {
  'checks.flexible-connector.exceeds': (data: { at: string; side: string; condition: string }) => ({
    message: `${data.at} pushes on the ${data.side} nozzle with more than the manufacturer allows along it, worst when ${data.condition}`,
    wanted: 'rods that hold its length, an anchor between it and the pump, or plain pipe in its place',
    hint: 'the thrust is there whenever the line is under pressure, and largest in the pressure test',
  }),
  'checks.flexible-connector.no-limit': (data: { at: string; side: string }) => ({
    message: `${data.at} pushes on the ${data.side} nozzle with its whole thrust, and the file gives no axial load that the manufacturer allows`,
    wanted: "give the manufacturer's allowable axial force of the nozzle",
    hint: 'a pump that hangs in its pipe has nothing but the pipe to push back with: tie the connector or leave it out',
  }),
  'checks.flexible-connector.tied': (data: { at: string; side: string }) => ({
    message: `rods hold the length of ${data.at}: they carry the thrust, and the ${data.side} nozzle does not feel it`,
    wanted: 'rods, lugs and flanges made for that force',
  }),
  'checks.flexible-connector.anchored': (data: { anchor: string; at: string }) => ({
    message: `anchor ${data.anchor} stands between the pump and ${data.at} and takes its thrust`,
    wanted: 'an anchor made for that force',
  }),
  'checks.flexible-connector.no-place': () => ({ message: 'there is no flexible connector in the lines' }),
} satisfies Sentences;
