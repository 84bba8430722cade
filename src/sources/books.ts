import type { Source } from './source.js';

/** Books, papers, reports and public data files. */
export const books = {
  'timoshenko-1': {
    title: 'S. Timoshenko, Strength of Materials, Part I',
    edition: '3rd ed., 1955',
    kind: 'book',
  },
  'nureg-cr-1677': {
    title: 'NUREG/CR-1677, Piping Benchmark Problems, vol. 1',
    edition: 'Brookhaven, 1980',
    kind: 'report',
  },
  'latin-hypercube': {
    title: 'M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (2), on sampling by strata',
    edition: '1979, from memory',
    kind: 'paper',
  },
  'page-estimator': {
    title: "J. S. Page, Estimator's Piping Man-Hour Manual",
    edition: '5th ed.',
    kind: 'book',
  },
  'nayyar-piping-handbook': {
    title: 'M. L. Nayyar (ed.), Piping Handbook',
    edition: '7th ed.',
    kind: 'book',
  },
  'ashrae-systems': {
    title: 'ASHRAE Handbook, HVAC Systems and Equipment, chapter on pipe, tubes and fittings',
    edition: 'table after B31.9',
    kind: 'book',
  },
  'ashrae-2001-fits': {
    title: 'ASHRAE 2001 glycol property fits, via the CoolProp incompressible coefficient files',
    edition: 'MIT licence',
    kind: 'book',
  },
  'hi-data-book': {
    title: 'Engineering Data Book tables of a pump trade association',
    edition: 'public file',
    kind: 'public document',
  },
  'forsthoffer-best-practice': {
    title: "Forsthoffer's Best Practice Handbook for Rotating Machinery",
    edition: '2011',
    kind: 'book',
  },
  'insulation-handbook': { title: 'Insulation trade association handbook', edition: '2001', kind: 'book' },
  'facility-piping-handbook': {
    title: 'Facility Piping Systems Handbook',
    edition: 'tables 2.10 and 2.11',
    kind: 'book',
  },
  'fitting-weight-lists': {
    title: 'Weight lists of butt-weld fittings in public catalogues',
    edition: 'several, the largest used',
    kind: 'public document',
  },
  'flange-weight-list': {
    title: 'Public list of pipe items with masses, weld-neck flanges',
    edition: 'one list',
    kind: 'public document',
  },
  'valve-weight-list': {
    title: 'Public table of cast steel valve weights, class 150',
    edition: 'one table',
    kind: 'public document',
  },
  'copper-tube-handbook': {
    title: 'Copper Tube Handbook of the copper trade association',
    edition: 'various',
    kind: 'book',
  },
  'iron-castings-handbook': {
    title: 'Handbook values of grey and ductile iron castings',
    edition: 'various',
    kind: 'book',
  },
  'metals-handbook': {
    title: 'Handbook densities and elastic constants of metals',
    edition: 'various',
    kind: 'book',
  },
  'doe-fundamentals': {
    title: 'DOE Fundamentals Handbook, Thermodynamics, Heat Transfer, and Fluid Flow',
    edition: 'part HT-03, fluid flow',
    kind: 'public document',
  },
  'dynamic-loading': {
    title: 'Dynamic Loading and Design of Structures',
    edition: 'section 2.2.1',
    kind: 'book',
  },
  'reducer-articles': {
    title: 'Trade articles on reducers at pump suctions',
    edition: 'several, in agreement',
    kind: 'public document',
  },
  'check-valve-discussion': {
    title: "Engineers' discussions of the distance from a pump to its check valve",
    edition: 'rules of 3, 5 and 10 diameters, in conflict',
    kind: 'public document',
  },
  'isolation-faults': {
    title: "Acoustics consultancy's list of common faults of vibration isolation",
    edition: 'public page',
    kind: 'public document',
  },
  'sling-tables': {
    title: 'Public tables of sling tension by the angle of the legs',
    edition: 'three pages agree',
    kind: 'public document',
  },
  'motor-start-pages': {
    title: 'Public pages on the starting of induction motors',
    edition: 'two pages agree',
    kind: 'public document',
  },
  'start-transient-paper': {
    title: 'Journal of Vibration and Acoustics 118, on torque transients of motors started across the line',
    edition: '1996, page 242, abstract',
    kind: 'public document',
  },
  'motor-records': {
    title: 'Records of induction motors in an open library of building energy models',
    edition: '10 to 100 hp, 4 poles, 460 V',
    kind: 'public document',
  },
  'motor-inertia-list': {
    title: 'Public list of motor frames with the inertia of their rotors',
    edition: 'one list',
    kind: 'public document',
  },
  'motor-unbalance-pages': {
    title: 'Public articles on voltage and current unbalance of three-phase motors',
    edition: 'several, in agreement',
    kind: 'public document',
  },
} as const satisfies Record<string, Source>;
