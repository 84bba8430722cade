import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on nozzle loads. */
export const nozzleCheckSentences = {
  'checks.nozzle-loads.exceeds': (data: { component: string; nozzle: string; condition: string }) => ({
    message: `the ${data.component} on the ${data.nozzle} nozzle is above its limit, worst when ${data.condition}`,
    wanted:
      'carry the first elbow and the valves beside the pump on supports of their own, or let the line give more; then review again',
    hint: 'only the manufacturer of the pump can allow more, in writing',
  }),
  'checks.nozzle-loads.no-basis': (data: { nozzle: string }) => ({
    message: `loads on the ${data.nozzle} nozzle are given, but no limit is named to judge them by`,
    wanted: 'ask the manufacturer for the loads allowed on the nozzles and name them as the basis',
    hint: "a published table decides only where a clause of the manufacturer's or the owner's document names it for this pump",
  }),
  'checks.nozzle-loads.no-maker-limits': (data: { nozzle: string }) => ({
    message: `the manufacturer's limits are named, but none is given for the ${data.nozzle} nozzle`,
    wanted: 'give the forces and moments the manufacturer allows, with the document they stand in',
  }),
  'checks.nozzle-loads.not-in-table': (data: { size: string }) => ({
    message: `the process-pump table has no row for size ${data.size}`,
    wanted: "ask for the manufacturer's limits",
  }),
  'checks.nozzle-loads.judged-by-stress': () => ({
    message: 'the nozzles are judged by their principal stress, as the file asks',
  }),
  'checks.nozzle-loads.not-named': (data: { nozzle: string }) => ({
    message: `loads on the ${data.nozzle} nozzle are given; the table asked for is made for another class of machine, and no clause names it for this pump`,
    wanted: 'ask the manufacturer for the loads allowed on the nozzles and name them as the basis',
    hint: 'where a document of the manufacturer or the owner names the table, give it with its clause under named-in',
  }),
  'checks.nozzle-loads.iron-casing': (data: { casing: string }) => ({
    message: `the published values are for steel casings, and this casing is of ${data.casing}, which breaks without giving`,
    wanted:
      "do not take this for the manufacturer's consent: published values for iron are about half of those for stainless steel",
    hint: 'the manufacturer decides',
  }),
  'checks.nozzle-loads.ductile-casing': (data: { casing: string }) => ({
    message: `the published values are for steel casings of process pumps, and this casing is of ${data.casing}, tougher than grey iron and not meant by them either`,
    wanted: "do not take this for the manufacturer's consent",
    hint: 'the manufacturer decides',
  }),
  'checks.nozzle-loads.bronze-casing': (data: { casing: string }) => ({
    message: `the published values are for steel casings, and this casing is of ${data.casing}, which is softer`,
    wanted:
      "do not take this for the manufacturer's consent: published values for bronze are about half of those for stainless steel",
    hint: 'the manufacturer decides',
  }),
  'checks.nozzle-loads.steel-casing': (data: { casing: string }) => ({
    message: `the published values are for process pumps; this casing is of ${data.casing} too, and still of another class of machine`,
    wanted: "do not take this for the manufacturer's consent",
    hint: 'the manufacturer decides: seal, bearings and coupling may bear less than the casing',
  }),
  'checks.nozzle-loads.other-casing': (data: { casing: string }) => ({
    message: `the published values are for steel casings of process pumps, and nothing is known of them for ${data.casing}`,
    wanted: "do not take this for the manufacturer's consent",
    hint: 'the manufacturer decides',
  }),
  'checks.nozzle-loads.no-place': () => ({ message: 'the pump has no nozzles' }),

  'checks.nozzle-comparison.exceeds': (data: { component: string; condition: string }) => ({
    message: `the ${data.component} is above this basis, worst when ${data.condition}`,
    wanted: 'a comparison only: ask the manufacturer whether the loads are allowed',
  }),
  'checks.nozzle-comparison.iron-exceeds': (data: { component: string; casing: string }) => ({
    message: `the ${data.component} is above a table made for steel casings, and this casing is of ${data.casing}`,
    wanted: 'a comparison only, but a warning: ask the manufacturer in writing before installing',
  }),
  'checks.nozzle-comparison.no-place': () => ({ message: 'no other basis is asked for' }),

  'checks.nozzle-principal-stress.exceeds': (data: { nozzle: string }) => ({
    message: `the principal stress in the ${data.nozzle} nozzle is above that of the annex for pumps carried by their pipe`,
    wanted:
      'reduce moment and torsion on the nozzle: a support under the first elbow, a straighter first leg',
    hint: 'the manufacturer of the pump decides',
  }),
  'checks.nozzle-principal-stress.not-hung': () => ({
    message: 'the rule is for pumps carried by their pipe alone, and this one stands on a base',
  }),
  'checks.nozzle-principal-stress.no-section': (data: { size: string }) => ({
    message: `there is no schedule 40 pipe of size ${data.size} to stand for the nozzle`,
    wanted: "ask for the manufacturer's limits",
  }),
  'checks.nozzle-principal-stress.no-place': () => ({ message: 'the pump has no nozzles' }),

  'checks.nozzle-combined.exceeds': (data: { label: string; condition: string }) => ({
    message: `the loads of both nozzles are above the combined rule: ${data.label}, worst when ${data.condition}`,
    wanted: 'a comparison only: ask the manufacturer whether the loads are allowed',
  }),
  'checks.nozzle-combined.no-place': () => ({
    message: 'the combined rule is for pumps bolted to a base, and this one is not',
  }),
} as const satisfies Sentences;
