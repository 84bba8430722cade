import { courseOf, isCheckValve, isStrainer } from '../../analysis/pipes/line-course.js';
import { isolationPoints } from '../../report/rows/isolation-points.js';
import { choiceBox, makerRow, numberBox, sheetRow } from '../boxes.js';
import { type FieldContext, siteText } from '../field-context.js';
import { differenceOf } from '../hydraulics.js';
import { reportContextOf } from '../report-context.js';
import type { SheetRow } from '../sheet.js';
import { NO_LIMIT } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

/** States in which both gauges are read. */
export const GAUGE_STATES = ['at-rest', 'running', 'shut-off'] as const;

/** Gauges, flow, valves. */
export const hydraulic: PartDefinition = {
  id: 'hydraulic',
  title: 'Hydraulic readings',
  trade: 'balancing contractor',
  how: 'Read both gauges at rest first, at the ports of the manufacturer, and again running: the difference at rest is that of the gauges and of their heights, and is taken off. Shut-off only briefly.',
  caution:
    'A pump run against a shut valve heats its water: seconds only. Hot water and pressure behind every plug.',
  rows: (context) => [...valveRows(context), ...gaugeRows(context), ...flowRows(context)],
};

function valveRows(context: FieldContext): readonly SheetRow[] {
  const { review } = context;
  const sides = (['suction', 'discharge'] as const).map((side) => courseOf(review, side));
  const parts = sides.flatMap((course) => course.map(({ part }) => part));
  const shut = (['suction', 'discharge'] as const).flatMap(
    (side) => isolationPoints(side, reportContextOf(context)).valves,
  );
  const screen = parts.some((part) => part.kind === 'fitting' && part.fitting === 'start-up-screen');
  const strainer = parts.some(
    (part) => isStrainer(part) || (part.kind === 'suction-diffuser' && part.strainer === true),
  );
  const check = parts.find(isCheckValve);
  return [
    sheetRow(
      'Valves for running',
      [
        choiceBox({
          id: 'hydraulic.valves-open',
          label: 'open',
          tip: 'Whether the isolation valves stand open',
        }),
      ],
      { expected: shut.length === 0 ? 'open' : `open: ${shut.join('; ')}` },
    ),
    ...(check === undefined
      ? []
      : [
          sheetRow(
            `Check valve, ${check.name}`,
            [
              choiceBox({
                id: 'hydraulic.check-holds',
                label: 'holds back',
                tip: `Whether ${check.name} holds when the pump stops`,
              }),
            ],
            { expected: 'yes' },
          ),
        ]),
    ...(strainer
      ? [
          sheetRow(
            'Strainer',
            [
              choiceBox({
                id: 'hydraulic.strainer-clean',
                label: 'clean',
                tip: 'Whether the strainer was opened and is clean',
              }),
            ],
            { expected: 'yes' },
          ),
        ]
      : []),
    ...(screen
      ? [
          sheetRow(
            'Start-up screen',
            [
              choiceBox({
                id: 'hydraulic.screen-out',
                label: 'taken out',
                tip: 'Whether the start-up screen is taken out',
              }),
            ],
            { expected: 'yes, after flushing' },
          ),
        ]
      : []),
  ];
}

function gaugeRows(context: FieldContext): readonly SheetRow[] {
  const { pump } = context.review.installation;
  const expected = siteText(differenceOf(pump.duty.head, context.review.installation), 'pressure', context);
  const words = {
    'at-rest': 'Gauges at rest',
    running: 'Gauges running',
    'shut-off': 'Gauges at shut-off',
  } as const;
  return GAUGE_STATES.map((state) => {
    const box = (side: 'suction' | 'discharge') =>
      numberBox(
        { id: `hydraulic.${state}-${side}`, label: side, tip: `${words[state]}: ${side}` },
        'pressure',
        context,
      );
    const sides = (['suction', 'discharge'] as const).filter((side) => pump.gaugeTaps?.[side] !== false);
    return sheetRow(words[state], sides.map(box), {
      ...(state === 'at-rest' && { expected: 'alike, but for the heights of the gauges' }),
      ...(state === 'running' && { expected: `${expected} more at the discharge, at duty` }),
      ...(state === 'shut-off' && { limit: NO_LIMIT, expected: 'the manufacturer’s curve at no flow' }),
    });
  }).filter(({ boxes }) => boxes.length > 0);
}

function flowRows(context: FieldContext): readonly SheetRow[] {
  const { pump, service } = context.review.installation;
  return [
    sheetRow(
      'Flow and temperature',
      [
        numberBox(
          { id: 'hydraulic.flow', label: 'flow', tip: 'Flow while the gauges were read running' },
          'flow',
          context,
          pump.duty.flow,
        ),
        numberBox(
          {
            id: 'hydraulic.temperature',
            label: 'temperature',
            tip: 'Temperature of the liquid while running',
          },
          'temperature',
          context,
          service.runningTemperature.value,
        ),
      ],
      {
        expected: `${siteText(pump.duty.flow, 'flow', context)} at ${siteText(pump.duty.head, 'head', context)}`,
        limit: NO_LIMIT,
      },
    ),
    makerRow('hydraulic.head-limit', 'head off the duty, either way', 'share', context),
    makerRow('hydraulic.flow-limit', 'flow off the duty, either way', 'share', context),
  ];
}
