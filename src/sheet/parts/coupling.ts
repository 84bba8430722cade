import { GUARD } from '../../report/citations/card-citations.js';
import { gapEvenness, shaftRunoutLimit } from '../../report/limits/coupling.js';
import { askedBy, choiceBox, limitWords, makerRow, numberBox, sheetRow } from '../boxes.js';
import type { PartDefinition } from '../sheet-part.js';

/** The four places where the gap of a split coupling is read. */
export const COUPLING_GAPS = ['one-top', 'one-bottom', 'other-top', 'other-bottom'] as const;

/** The rigid spacer coupling between motor and pump. */
export const coupling: PartDefinition = {
  id: 'coupling',
  title: 'Coupling',
  trade: 'millwright',
  how: 'Feel the gap of both splits of the coupling, top and bottom, bolts pulled evenly. Dial on the shaft just above the seal, shaft turned by hand.',
  caution:
    'Lock out and prove dead before the guard comes off. Prop the rotor before the coupling is opened: without it the rotor drops.',
  rows: (context) => {
    const split = context.review.installation.pump.build === 'split-coupled';
    const gaps = COUPLING_GAPS.map((key) => {
      const words = `${key.startsWith('one') ? 'one split' : 'other split'}, ${key.endsWith('top') ? 'top' : 'bottom'}`;
      return numberBox(
        { id: `coupling.gap-${key}`, label: words, tip: `Gap of the coupling, ${words}` },
        'gap',
        context,
      );
    });
    const splitRows = [
      sheetRow('Gap of the splits, all alike', gaps, limitWords(gapEvenness(context.write.system), context)),
      makerRow('coupling.gap-limit', 'difference of the gaps', 'gap', context),
      sheetRow('Coupling bolts', [
        choiceBox({
          id: 'coupling.bolts',
          label: 'pulled to torque',
          tip: 'Whether the coupling bolts are pulled to the manufacturer’s torque',
        }),
        numberBox(
          { id: 'coupling.torque', label: 'torque', tip: 'Torque of the coupling bolts' },
          'torque',
          context,
        ),
      ]),
      sheetRow(
        'Rotor lifted before clamping',
        [
          numberBox(
            {
              id: 'coupling.lift',
              label: 'lift',
              tip: 'How far the rotor was lifted before the coupling was clamped',
            },
            'gap',
            context,
          ),
        ],
        { limit: 'as the manufacturer’s manual says' },
      ),
    ];
    return [
      ...(split ? splitRows : []),
      sheetRow(
        'Runout of the shaft above the seal, total',
        [
          numberBox(
            {
              id: 'coupling.runout',
              label: 'reading',
              tip: 'Total indicator reading of the shaft above the seal',
            },
            'gap',
            context,
          ),
        ],
        limitWords(shaftRunoutLimit(context.write.system), context),
      ),
      makerRow('coupling.runout-limit', 'runout of the shaft', 'gap', context),
      sheetRow(
        'Shaft turns by hand',
        [
          choiceBox({
            id: 'coupling.turns',
            label: 'freely',
            tip: 'Whether the shaft turns freely by hand, locked out',
          }),
        ],
        { expected: 'yes' },
      ),
      sheetRow(
        'Guard',
        [
          choiceBox({
            id: 'coupling.guard',
            label: 'in place',
            tip: 'Whether the guard of shaft and coupling is in place and closed',
          }),
        ],
        { expected: 'yes', ...askedBy('in place', GUARD) },
      ),
    ];
  },
};
