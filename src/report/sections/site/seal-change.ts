import type { UnitSystem } from '../../../units/index.js';
import { GUARD, shortCitation } from '../../citations/card-citations.js';
import type { ReportContext, View } from '../../context.js';
import { gapEvenness, shaftRunoutLimit } from '../../limits/coupling.js';
import type { FieldLimit } from '../../limits/field-limit.js';
import { isolationPoints, named, roughly } from '../../rows/isolation-points.js';
import {
  disconnectName,
  handLiftText,
  hottest,
  pieceRows,
  SCALDS,
  TOUCHABLE,
} from '../../words/unit-words.js';
import { createWriter } from '../../writer.js';

const METRIC = createWriter('si');
const INCHES = createWriter('us');

/**
 * Card for the change of a seal on this unit: pieces and what they weigh, where the rotor is propped, the order of work,
 * and what is measured on the way back.
 *
 * @param context - installation and writer
 * @returns finished text; for a close-coupled pump only that the motor has to be lifted
 */
export function sealChange(context: ReportContext) {
  const { installation } = context.subject;
  const { pump, room, service } = installation;
  const { write } = context;
  const spacer = pump.dimensions?.spacer;
  const rotor = pump.dimensions?.rotorMass;
  const prop = spacer === undefined ? undefined : pump.position[2] + spacer.from;
  const points = {
    suction: isolationPoints('suction', context),
    discharge: isolationPoints('discharge', context),
  };
  const vents = [...new Set([...points.suction.vents, ...points.discharge.vents])];
  return {
    mark: pump.mark,
    isSplit: pump.build === 'split-coupled',
    motorWeight: write.quantity(pump.motor.mass.value, 'mass'),
    pieces: pieceRows(context),
    handLift: handLiftText(context),
    window: write.distance(spacer?.length.value),
    hasWindow: spacer !== undefined,
    seal: write.distance(spacer?.sealLength?.value),
    hasSeal: spacer?.sealLength !== undefined,
    passes: spacer?.sealLength !== undefined && spacer.sealLength.value <= spacer.length.value,
    isTooLong: spacer?.sealLength !== undefined && spacer.sealLength.value > spacer.length.value,
    prop: prop === undefined ? '–' : roughly(prop - (room.floor ?? pump.position[2]), write),
    propFrom: room.floor === undefined ? 'over the ports' : 'over the floor',
    hasProp: prop !== undefined,
    propLoad: write.quantity(rotor?.value, 'mass'),
    hasPropLoad: rotor !== undefined,
    isHot: hottest(installation) >= SCALDS,
    hottest: write.quantity(hottest(installation), 'temperature'),
    touchable: write.quantity(TOUCHABLE, 'temperature', { significant: 2 }),
    pressure: write.quantity(service.workingPressure.value, 'pressure'),
    disconnect: disconnectName(pump),
    discharge: named(points.discharge.valves),
    hasDischarge: points.discharge.valves.length > 0,
    suction: named(points.suction.valves),
    hasSuction: points.suction.valves.length > 0,
    vents: named(vents),
    hasVents: vents.length > 0,
    runout: fineText(shaftRunoutLimit),
    evenness: fineText(gapEvenness),
    guardBasis: shortCitation(GUARD),
  } satisfies View;
}

/** A fine limit in both units, each as its instrument shows it. */
function fineText(limit: (system: UnitSystem) => FieldLimit): string {
  const [mm, inches] = [limit('si').value, limit('us').value];
  return `${METRIC.quantity(mm, 'length')} (${INCHES.quantity(inches, 'length', { decimals: 3 })})`;
}
