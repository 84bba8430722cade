import { numberIn, numbersIn } from '../../readings/read-box.js';
import { noSiteLimit, siteLimit } from '../../readings/site-limit.js';
import { siteText } from '../../sheet/field-context.js';
import { headOf, portAreas } from '../../sheet/hydraulics.js';
import type { FieldSubject, Judge } from '../judge.js';

/** Boxes of the gauges that a head is made of. */
export const HEAD_BOXES = [
  'hydraulic.at-rest-suction',
  'hydraulic.at-rest-discharge',
  'hydraulic.running-suction',
  'hydraulic.running-discharge',
] as const;

/** The head that the gauges show is that of the duty. */
export const head: Judge = {
  id: 'head',
  title: 'Head against the duty',
  part: 'hydraulic',
  trade: 'balancing contractor',
  compare: (subject) => {
    const { readings, review, asked } = subject;
    if (!HEAD_BOXES.every((box) => asked.has(box))) return [];
    const { duty } = review.installation.pump;
    const found = headRead(subject);
    const share = siteLimit(readings, 'hydraulic.head-limit', 'share', 'within');
    const flow = numberIn(readings, 'hydraulic.flow');
    return [
      {
        kind: 'measured',
        at: 'pump',
        boxes: HEAD_BOXES,
        demand: found === undefined ? undefined : Math.abs(found - duty.head),
        read: found,
        expected: duty.head,
        measured: 'head',
        limit: share && { ...share, value: share.value * duty.head, measured: 'head' },
        noLimit: noSiteLimit(readings, 'hydraulic.head-limit'),
        data: {
          way: (found ?? 0) < duty.head ? 'below' : 'above',
          flow: flow === undefined ? 'a flow not read' : (siteText(flow, 'flow', subject) ?? ''),
        },
      },
    ];
  },
};

/**
 * Head from the four gauge readings, corrected at rest.
 *
 * @param subject - readings and installation
 * @returns head [m]; nothing unless all four were read
 */
export function headRead({ readings, review }: FieldSubject): number | undefined {
  const gauges = numbersIn(readings, HEAD_BOXES);
  if (gauges === undefined) return undefined;
  const [restSuction = 0, restDischarge = 0, suction = 0, discharge = 0] = gauges;
  const flow = numberIn(readings, 'hydraulic.flow');
  return headOf(
    {
      rest: { suction: restSuction, discharge: restDischarge },
      running: { suction, discharge },
      ...(flow !== undefined && { flow }),
    },
    review.installation.service.density.running.value,
    portAreas(review.installation),
  );
}
