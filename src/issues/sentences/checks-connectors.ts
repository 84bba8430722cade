import type { Sentences } from './sentence.js';

/** Reasons and advice of the check on flexible connectors. */
export const connectorCheckSentences = {
  'checks.flexible-connector.exceeds': (data) => ({
    message: `${String(data.at)} pushes on the ${String(data.side)} nozzle with more than the maker allows along it, worst when ${String(data.condition)}`,
    wanted: 'rods that hold its length, an anchor between it and the pump, or plain pipe in its place',
    hint: 'the thrust is there whenever the line is under pressure, and largest in the pressure test',
  }),
  'checks.flexible-connector.no-limit': (data) => ({
    message: `${String(data.at)} pushes on the ${String(data.side)} nozzle with its whole thrust, and the file gives no axial load that the maker allows`,
    wanted: "give the maker's allowable axial force of the nozzle",
    hint: 'a pump that hangs in its pipe has nothing but the pipe to push back with: tie the connector or leave it out',
  }),
  'checks.flexible-connector.tied': (data) => ({
    message: `rods hold the length of ${String(data.at)}: they carry the thrust, and the ${String(data.side)} nozzle does not feel it`,
    wanted: 'rods, lugs and flanges made for that force',
  }),
  'checks.flexible-connector.anchored': (data) => ({
    message: `anchor ${String(data.anchor)} stands between the pump and ${String(data.at)} and takes its thrust`,
    wanted: 'an anchor made for that force',
  }),
  'checks.flexible-connector.no-place': () => ({ message: 'there is no flexible connector in the lines' }),
} satisfies Sentences;
