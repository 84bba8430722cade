/** A field sheet as large as that of a real unit, with every kind of box. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Box, FieldSheet, SheetPart, SheetRow } from '../../src/sheet/sheet.js';

const number = (id: string, label: string, unit: string, extra: Partial<Box> = {}): Box => ({
  id,
  kind: 'number',
  label,
  tip: `${label || id}, as read`,
  unit,
  ...extra,
});
const choice = (id: string, label: string, choices: readonly string[]): Box => ({
  id,
  kind: 'choice',
  label,
  tip: `${label}: which`,
  choices,
});
const yesNo = (id: string, label = ''): Box => choice(id, label, ['yes', 'no']);
const text = (id: string, label: string, lines = 1): Box => ({
  id,
  kind: 'text',
  label,
  tip: label || 'What is written here',
  lines,
});

const flange = (side: string): readonly SheetRow[] => [
  {
    label: `Gap between the flanges, ${side}`,
    boxes: ['top', 'right', 'foot', 'left'].map((at) => number(`before-bolt-up.${side}.gap-${at}`, at, 'mm')),
    expected: '3.2 mm of gasket all round',
    limit: '± 1.5 mm of the gasket; out of parallel 0.25 mm',
    source: 'API 686, chapter 6, 4.6 to 4.8 (read)',
  },
  {
    label: `Bolt holes out of line, ${side}`,
    boxes: [number(`before-bolt-up.${side}.offset`, '', 'mm')],
    limit: '1.5 mm',
    source: 'API 686, chapter 6, 4.6 to 4.8 (read)',
  },
  { label: `Joint pushed home by hand, ${side}`, boxes: [yesNo(`before-bolt-up.${side}.by-hand`)] },
];

const support = (mark: string, isSpring: boolean): readonly SheetRow[] => [
  {
    label: `${mark}: position along the pipe from the pump flange`,
    boxes: [number(`supports.${mark}.position`, '', 'ft')],
    expected: '5 ft 3 in',
  },
  ...(isSpring
    ? [
        {
          label: `${mark}: reading of the spring`,
          boxes: ['dry', 'filled', 'hot'].map((state) =>
            number(`supports.${mark}.spring-${state}`, state, 'lb', { expected: '612 lb' }),
          ),
          limit: '± 10 % of the expected load',
          source: 'common practice',
        },
        {
          label: `${mark}: travel stops taken out`,
          boxes: [
            yesNo(`supports.${mark}.stops-out`),
            {
              id: `supports.${mark}.stops-day`,
              kind: 'date',
              label: 'day',
              tip: 'Day the stops came out',
            } as const,
          ],
        },
      ]
    : [
        {
          label: `${mark}: rod`,
          boxes: [choice(`supports.${mark}.rod`, '', ['tight', 'loose', 'leaning'])],
        },
      ]),
];

const vibration = (point: string): SheetRow => ({
  label: `Vibration, ${point}, root mean square`,
  boxes: ['lowest speed', 'middle speed', 'highest speed'].flatMap((speed, i) =>
    ['along', 'across', 'axial'].map((direction) =>
      number(
        `vibration.${point.replaceAll(' ', '-')}.${direction}-${i + 1}`,
        `${direction}, ${speed}`,
        'mm/s',
      ),
    ),
  ),
  limit: '3.0 mm/s',
  source: 'given in the input, specification 23 21 23, 3.4',
});

const parts: readonly SheetPart[] = [
  {
    id: 'unit',
    title: 'The unit and the instruments',
    trade: 'Commissioning agent',
    how: 'Read the nameplates, not the drawings. Every instrument with its serial number and the day its calibration runs out.',
    rows: [
      { label: 'Where it stands', boxes: [text('unit.place', '')] },
      {
        label: 'Nameplate of the motor',
        boxes: [
          number('unit.power', 'power', 'hp'),
          number('unit.speed', 'speed', 'rpm'),
          number('unit.amps', 'full load', 'A'),
        ],
        expected: '20 hp, 1,770 rpm',
      },
      {
        label: 'Rotation agrees with the arrow',
        boxes: [{ id: 'unit.rotation', kind: 'tick', label: 'seen on a short turn', tip: 'Rotation seen' }],
      },
      {
        label: 'Pressure gauge',
        boxes: [
          text('unit.gauge', 'make and serial number'),
          { id: 'unit.gauge-due', kind: 'date', label: 'due', tip: 'Calibration due' },
        ],
      },
      {
        label: 'State of the line',
        boxes: [
          choice('unit.state', '', [
            'empty',
            'filled, cold',
            'filled, hot',
            'under test',
            'running',
            'drained for work',
          ]),
        ],
      },
    ],
  },
  {
    id: 'before-bolt-up',
    title: 'Before the flanges are bolted',
    trade: 'Pipe fitter',
    how: 'Measure with the gasket out and nothing pulled. Top, right, foot and left as seen from the pump.',
    caution: 'Fingers stay out of the gap: a hung line swings. Prop both lines first.',
    rows: [
      ...flange('suction'),
      ...flange('discharge'),
      {
        label: 'Gasket and bolts',
        boxes: [
          text('before-bolt-up.gasket', 'gasket'),
          text('before-bolt-up.bolts', 'bolts, grade, torque'),
        ],
      },
    ],
  },
  {
    id: 'supports',
    title: 'Supports',
    trade: 'Pipe fitter',
    how: 'Each support by its mark on the drawing.',
    caution: 'A spring throws what it carries when its load goes. Pins in before anything is taken off.',
    rows: ['H1', 'H2', 'S3', 'S4'].flatMap((mark) => support(mark, mark.startsWith('S'))),
  },
  {
    id: 'running',
    title: 'Hydraulic and electrical readings',
    trade: 'Balancing contractor and electrician',
    how: 'At rest, running at duty, and with the discharge valve shut for no longer than the manufacturer allows.',
    caution: 'Electrical readings inside the panel are for qualified persons with the panel’s label in mind.',
    rows: [
      ...['at rest', 'at duty', 'at shut-off'].map((state) => ({
        label: `Gauges ${state}`,
        boxes: [
          number(`running.suction-${state.replaceAll(' ', '-')}`, 'suction', 'psi'),
          number(`running.discharge-${state.replaceAll(' ', '-')}`, 'discharge', 'psi'),
        ],
        expected: '45 ft of head at duty',
      })),
      {
        label: 'Volts',
        boxes: ['A to B', 'B to C', 'C to A'].map((label, i) => number(`running.volts-${i + 1}`, label, 'V')),
        limit: 'unbalance 1 %',
        source: 'NEMA MG 1, 12.45 (memory)',
      },
      {
        label: 'Amps',
        boxes: ['A', 'B', 'C'].map((label, i) => number(`running.amps-${i + 1}`, label, 'A')),
        expected: '24.5 A',
      },
    ],
  },
  {
    id: 'vibration',
    title: 'Vibration',
    trade: 'Commissioning agent',
    how: 'On stiff parts, not on covers. Along is in line with the pipe.',
    rows: ['motor top', 'motor foot', 'pump bearing'].map(vibration),
  },
  {
    id: 'sign-off',
    title: 'Open items and sign-off',
    trade: 'All',
    how: 'What is still open, by whom it is mended, and whether it keeps the pump from starting.',
    rows: [
      { label: 'Open items', boxes: [text('sign-off.open', '', 5)] },
      {
        label: 'Pipe fitter',
        boxes: [
          {
            id: 'sign-off.fitter',
            kind: 'signature',
            label: 'signature, or name typed',
            tip: 'Signature of the pipe fitter',
          },
          { id: 'sign-off.fitter-day', kind: 'date', label: 'day', tip: 'Day of signing' },
        ],
      },
      {
        label: 'Commissioning agent',
        boxes: [
          {
            id: 'sign-off.agent',
            kind: 'signature',
            label: 'signature, or name typed',
            tip: 'Signature of the agent',
          },
          { id: 'sign-off.agent-day', kind: 'date', label: 'day', tip: 'Day of signing' },
        ],
      },
    ],
  },
];

export const sheet: FieldSheet = {
  mark: 'HWP-1',
  project: 'Harbour Street Pool',
  revision: 'B',
  date: '2026-03-14',
  fingerprint: '4f1d0c7f9a3be2c65d8c0b7a4e9f12d3a6b5c8e70f1928374655abcdef012345',
  parts,
};

const path = (name: string) => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const face = (name: string) => new Uint8Array(readFileSync(path(`templates/fonts/SourceSans3-${name}.ttf`)));

/** Look of the sheet: the shipped template and fonts. */
export const look = {
  templates: { 'field-sheet': readFileSync(path('templates/field-sheet.hbs'), 'utf8') },
  fonts: { regular: face('Regular'), bold: face('SemiBold'), italic: face('Italic') },
};
