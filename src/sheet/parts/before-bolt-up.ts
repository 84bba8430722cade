import type { PlacedNozzle } from '../../model/layout/layout.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { limitText, sourceText } from '../../report/limits/field-limit.js';
import { choiceBox, limitWords, numberBox, sheetRow, textBox } from '../boxes.js';
import type { FieldContext } from '../field-context.js';
import type { SheetRow } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';
import { facePlaces } from './face-places.js';
import { nozzleLoadRow } from './largest-load-row.js';

/** The two flanges of the pump before the bolts are pulled. The moment passes: it cannot be read afterwards. */
export const beforeBoltUp: PartDefinition = {
  id: 'before-bolt-up',
  title: 'Before bolt-up, both flanges of the pump',
  trade: 'pipe fitter',
  how: 'Line on its own supports, pump set to its height on blocks, no bolt pulled. Feel the gap at the rim of the sealing faces at four places. Then pull the bolts to 10, 30 and 100 % with a dial on the shaft.',
  abreast: 2,
  caution:
    'Support line and pump before any bolt is loosened. Keep fingers out of the gap. Lock out the motor.',
  rows: (context) => {
    const { suction, discharge } = context.review.layout.nozzles;
    const [left, right] = [flangeRows(suction, context), flangeRows(discharge, context)];
    return left.flatMap((row, i) => [row, ...(right[i] ? [right[i]] : [])]);
  },
};

/** Ids of everything read at one flange. */
export function flangeBoxes(which: PlacedNozzle['which']) {
  const id = `before-bolt-up.${which}`;
  return {
    gap: (key: string) => `${id}.gap-${key}`,
    gasket: `${id}.gasket`,
    rise: `${id}.rise`,
    offset: `${id}.offset`,
    holes: `${id}.holes`,
    byHand: `${id}.by-hand`,
    shaftAlong: `${id}.shaft-along`,
    shaftAcross: `${id}.shaft-across`,
    slackened: `${id}.slackened`,
  };
}

function flangeRows(nozzle: PlacedNozzle, context: FieldContext): readonly SheetRow[] {
  const { which } = nozzle;
  const limits = alignmentLimits(context.review, which);
  const ids = flangeBoxes(which);
  const places = facePlaces(nozzle, context.write);
  const title = `${which.charAt(0).toUpperCase()}${which.slice(1)}`;
  const side = places.find(({ key }) => key === 'across')?.word ?? 'one side';
  const upper = places.find(({ key }) => key === 'up')?.word ?? 'top';
  const other = places.find(({ key }) => key === 'back')?.word ?? 'the other';
  const lower = places.find(({ key }) => key === 'down')?.word ?? 'bottom';
  const gap = (id: string, label: string, tip: string) => numberBox({ id, label, tip }, 'gap', context);
  const parallel = limits.parallelism;
  return [
    sheetRow(
      `${title}: gap between the faces`,
      places.map(({ key, word }) => gap(ids.gap(key), word, `Gap between the ${which} faces, ${word}`)),
      parallel === undefined
        ? limitWords(undefined, context)
        : {
            limit: `${limitText(parallel, context)} out of parallel across the face`,
            source: sourceText(parallel),
          },
    ),
    sheetRow(
      `${title}: gasket`,
      [
        gap(ids.gasket, 'thickness', `Thickness of the ${which} gasket, not pressed`),
        textBox({ id: `${ids.gasket}-type`, label: 'type', tip: `Type of the ${which} gasket, and face` }),
      ],
      limits.gap === undefined
        ? limitWords(undefined, context)
        : {
            limit: `mean gap ${limitText(limits.gap, context)} of the gasket`,
            source: sourceText(limits.gap),
          },
    ),
    sheetRow(
      `${title}: centre lines, line against pump`,
      [
        gap(
          ids.rise,
          `${upper} + / ${lower} \u2212`,
          `How far the line stands towards ${upper} of the ${which} flange of the pump; minus towards ${lower}`,
        ),
        gap(
          ids.offset,
          `${side} + / ${other} \u2212`,
          `How far the line stands to the ${side} of the ${which} flange of the pump; minus to the ${other}`,
        ),
      ],
      limitWords(limits.offset, context),
    ),
    sheetRow(
      `${title}: bolt holes turned`,
      [
        gap(
          ids.holes,
          'at the bolt circle',
          `How far the bolt holes of the ${which} line are turned against those of the pump, at the bolt circle`,
        ),
      ],
      limitWords(limits.holes, context),
    ),
    sheetRow(
      `${title}: closes by hand`,
      [
        choiceBox({
          id: ids.byHand,
          label: 'by hand',
          tip: `Whether the ${which} faces come together pushed by hand`,
        }),
      ],
      { expected: 'yes' },
    ),
    sheetRow(`${title}: bolts`, [
      textBox({
        id: `before-bolt-up.${which}.bolts`,
        label: 'grade, size',
        tip: `Grade and size of the ${which} bolts`,
      }),
      numberBox(
        {
          id: `before-bolt-up.${which}.torque`,
          label: 'torque',
          tip: `Torque of the ${which} bolts, as pulled`,
        },
        'torque',
        context,
      ),
    ]),
    sheetRow(
      `${title}: shaft moves while bolts are pulled`,
      [
        gap(
          ids.shaftAlong,
          'along the pipe',
          `Movement of the shaft along the pipe while the ${which} bolts are pulled`,
        ),
        gap(
          ids.shaftAcross,
          'across',
          `Movement of the shaft across the pipe while the ${which} bolts are pulled`,
        ),
      ],
      limitWords(limits.shaft, context),
    ),
    sheetRow(
      `${title}: if the gaps were not read: shaft moves while bolts are slackened`,
      [
        gap(
          ids.slackened,
          'largest',
          `Largest movement of the shaft while the ${which} bolts are slackened, isolated, drained and locked out`,
        ),
      ],
      limitWords(limits.shaft, context),
    ),
    ...nozzleLoadRow(which, `${title}: load of the pipe once bolted`, context),
  ];
}
