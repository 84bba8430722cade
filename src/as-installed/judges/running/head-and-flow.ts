/** What cannot be right whatever the duty is: a running pump that lifts nothing, moves nothing, or runs hotter than anything reviewed. */

import { givenIn } from '../../../analysis/citation-of.js';
import { numberIn } from '../../../readings/read-box.js';
import { siteText } from '../../../sheet/field-context.js';
import type { Judge } from '../../judge.js';
import { HEAD_BOXES, headRead } from '../head.js';

/** The gauges show more at the discharge than at the suction. */
export const headRises: Judge = {
  id: 'head-rises',
  title: 'Pressure rises across the pump',
  part: 'hydraulic',
  trade: 'balancing contractor',
  compare: (subject) => {
    if (!HEAD_BOXES.every((box) => subject.asked.has(box))) return [];
    const head = headRead(subject);
    return [
      {
        kind: 'stated',
        at: 'pump',
        boxes: HEAD_BOXES,
        holds: head === undefined ? undefined : head > 0,
        told: siteText(head, 'head', subject),
        wanted: 'more than nothing',
      },
    ];
  },
};

/** Liquid moves through the pump. */
export const flowMoves: Judge = {
  id: 'flow-moves',
  title: 'Liquid moves',
  part: 'hydraulic',
  trade: 'balancing contractor',
  compare: (subject) => {
    const flow = numberIn(subject.readings, 'hydraulic.flow');
    return [
      {
        kind: 'stated',
        at: 'pump',
        boxes: ['hydraulic.flow'],
        holds: flow === undefined ? undefined : flow > 0,
        told: siteText(flow, 'flow', subject),
        wanted: 'more than nothing',
      },
    ];
  },
};

/** A thermometer on the pipe is believed to so much [K]. */
const THERMOMETER = 2;

/** The liquid is no hotter than the hottest that was reviewed. */
export const liquidTemperature: Judge = {
  id: 'liquid-temperature',
  title: 'Temperature of the liquid',
  part: 'hydraulic',
  trade: 'balancing contractor',
  compare: ({ readings, review }) => [
    {
      kind: 'measured',
      at: 'pump',
      boxes: ['hydraulic.temperature'],
      demand: numberIn(readings, 'hydraulic.temperature'),
      measured: 'temperature',
      expected: review.installation.service.runningTemperature.value,
      limit: {
        value: review.installation.service.hotTemperature.value + THERMOMETER,
        measured: 'temperature',
        words: 'at most',
        citation: givenIn('service, the hottest condition, and 2 K for the thermometer'),
      },
    },
  ],
};
