import type { Source } from './source.js';

/** Standards and codes. Editions are those whose values were used. */
export const standards = {
  'asme-b31.1': { title: 'ASME B31.1 Power Piping', edition: 'editions to 2018', kind: 'standard' },
  'asme-b31.9': { title: 'ASME B31.9 Building Services Piping', edition: '2004', kind: 'standard' },
  'asme-b31.3': { title: 'ASME B31.3 Process Piping', edition: 'editions to 2018', kind: 'standard' },
  'asme-b36.10m': {
    title: 'ASME B36.10M Welded and Seamless Wrought Steel Pipe',
    edition: 'various',
    kind: 'standard',
  },
  'asme-b36.19m': { title: 'ASME B36.19M Stainless Steel Pipe', edition: 'various', kind: 'standard' },
  'astm-b88': { title: 'ASTM B88 Seamless Copper Water Tube', edition: 'various', kind: 'standard' },
  'asme-b16.1': {
    title: 'ASME B16.1 Gray Iron Pipe Flanges and Flanged Fittings',
    edition: 'various',
    kind: 'standard',
  },
  'asme-b16.5': {
    title: 'ASME B16.5 Pipe Flanges and Flanged Fittings',
    edition: '2009 to 2017',
    kind: 'standard',
  },
  'asme-b16.9': {
    title: 'ASME B16.9 Factory-Made Wrought Buttwelding Fittings',
    edition: 'various',
    kind: 'standard',
  },
  'asme-b16.10': {
    title: 'ASME B16.10 Face-to-Face and End-to-End Dimensions of Valves',
    edition: 'various',
    kind: 'standard',
  },
  'api-609': {
    title: 'API 609 Butterfly Valves, category A (ISO 5752 series 20)',
    edition: 'various',
    kind: 'standard',
  },
  'api-610': {
    title: 'API 610 / ISO 13709 Centrifugal Pumps',
    edition: '8th to 12th editions, where equal',
    kind: 'standard',
  },
  'api-686': {
    title: 'API RP 686 Machinery Installation and Installation Design',
    edition: '2nd edition, extract',
    kind: 'standard',
  },
  'hi-9.6.6': {
    title: 'ANSI/HI 9.6.6 Rotodynamic Pumps for Pump Piping',
    edition: '2009, 2016 and 2022, extracts; its table of straight lengths not obtained',
    kind: 'standard',
  },
  'asme-bpvc-iii': {
    title: 'ASME Boiler and Pressure Vessel Code, Section III, NC-3658',
    edition: 'method',
    kind: 'standard',
  },
  'asme-bpvc-ii-d': {
    title: 'ASME Boiler and Pressure Vessel Code, Section II Part D',
    edition: '2001 and 2010',
    kind: 'standard',
  },
  'asme-pcc-1': {
    title: 'ASME PCC-1 Pressure Boundary Bolted Flange Joint Assembly',
    edition: 'appendix E',
    kind: 'standard',
  },
  'astm-a53': {
    title: 'ASTM A53 Pipe, Steel, Black and Hot-Dipped, Zinc-Coated, Welded and Seamless',
    edition: 'from memory',
    kind: 'standard',
  },
  gum: {
    title: 'JCGM 100 Evaluation of Measurement Data, Guide to the Expression of Uncertainty in Measurement',
    edition: '2008, from memory',
    kind: 'public document',
  },
  'mss-sp-58': {
    title: 'MSS SP-58 Pipe Hangers and Supports',
    edition: '1993 (older) and 2002 on (later)',
    kind: 'standard',
  },
  'mss-sp-69': {
    title: 'MSS SP-69 Pipe Hangers and Supports, Selection and Application',
    edition: 'various',
    kind: 'standard',
  },
  'iapws-if97': { title: 'IAPWS Industrial Formulation 1997, region 1', edition: 'IF97', kind: 'standard' },
  'tm-5-805-4': {
    title: 'TM 5-805-4 / UFC 3-450-01 Noise and Vibration Control',
    edition: 'public manual',
    kind: 'public document',
  },
  'ufgs-15562a': {
    title: 'UFGS 15562A Heating and Utility Systems, Central Steam',
    edition: 'guide specification',
    kind: 'public document',
  },
  'asme-b1.1': { title: 'ASME B1.1 Unified Inch Screw Threads', edition: 'various', kind: 'standard' },
  'asme-b18.2.2': {
    title: 'ASME B18.2.2 Nuts for General Applications, heavy hex',
    edition: 'various',
    kind: 'standard',
  },
  'asme-b16.22': {
    title: 'ASME B16.22 Wrought Copper Solder-Joint Pressure Fittings',
    edition: 'various',
    kind: 'standard',
  },
  'nema-mg-1': {
    title: 'NEMA MG 1 Motors and Generators',
    edition: 'part 12, design B at 60 Hz',
    kind: 'standard',
  },
  imc: {
    title: 'International Mechanical Code',
    edition: '2009 and 2015, as reproduced',
    kind: 'standard',
  },
  'nfpa-70': {
    title: 'NFPA 70 National Electrical Code',
    edition: 'articles 110.26 and 430.102, as told in public guides; the edition in force governs',
    kind: 'standard',
  },
  'osha-1910-303': {
    title: '29 CFR 1910.303 Electrical: General Requirements',
    edition: 'as reproduced by a state and in UFC 3-520-01',
    kind: 'standard',
  },
  'osha-1910-147': {
    title: '29 CFR 1910.147 The Control of Hazardous Energy',
    edition: 'public regulation; it excludes construction work',
    kind: 'standard',
  },
  'osha-1910-219': {
    title: '29 CFR 1910.219 Mechanical Power-Transmission Apparatus',
    edition: 'public summaries',
    kind: 'standard',
  },
  'niosh-lifting': {
    title: 'NIOSH Applications Manual for the Revised NIOSH Lifting Equation',
    edition: '1994, public manual',
    kind: 'public document',
  },
  'asce-7': {
    title: 'ASCE 7 Minimum Design Loads and Associated Criteria for Buildings and Other Structures',
    edition: '2010 and 2016',
    kind: 'standard',
  },
  'iso-10816-7': {
    title: 'ISO 10816-7 Mechanical vibration, rotodynamic pumps',
    edition: '2009; structure read, boundaries of the zones from memory',
    kind: 'standard',
  },
  'hi-9.6.4': {
    title: 'ANSI/HI 9.6.4 Rotodynamic Pumps for Vibration Measurements and Allowable Values',
    edition: '2009, scope and conditions; its graph for vertical in-line pumps not obtained',
    kind: 'standard',
  },
  'ufgs-15131a': {
    title: 'UFGS 15131A, section on pumps',
    edition: 'guide specification',
    kind: 'public document',
  },
  'ieee-43': {
    title: 'IEEE 43 Testing insulation resistance of electric machinery',
    edition: '2000 and 2013, as quoted by three public pages that agree',
    kind: 'standard',
  },
  'ufgs-15132a': {
    title: 'UFGS 15132A, section on pumping plants',
    edition: 'guide specification',
    kind: 'public document',
  },
  'mil-p-18526a': {
    title: 'MIL-P-18526A Pumps, acceptance of mechanical seals',
    edition: 'military specification',
    kind: 'public document',
  },
} as const satisfies Record<string, Source>;
