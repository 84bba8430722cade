import { connectorsOf, type PlacedConnector } from '../../../analysis/pipes/connectors.js';
import { isOf } from '../../../checks/all-checks.js';
import type { ConnectorEffect } from '../../../mechanics/what-ifs/connector-effect.js';
import { conditionId, conditionTitle } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';

/**
 * What each flexible connector does to the pump under pressure, and whether it should be there.
 *
 * @param context - results, findings and writer
 * @returns one sentence a connector, and rows of forces by condition; empty without connectors
 */
export function connectors(context: ReportContext) {
  const all = connectorsOf(context.subject);
  return {
    full: context.reader === 'engineer',
    unit: context.write.unit('force'),
    isHung: context.subject.installation.pump.mount === 'hung',
    connectors: all.map((connector) => sentenceOf(connector, context)),
    rows: rowsOf(all, context),
    omitted: all.length === 0,
  } satisfies View;
}

function sentenceOf(
  { part, side, anchoredBy, effects }: PlacedConnector,
  { write, findings }: ReportContext,
) {
  const worst = effects.reduce<ConnectorEffect | undefined>(
    (most, effect) => (most !== undefined && most.thrust >= effect.thrust ? most : effect),
    undefined,
  );
  const working = effects.find(({ condition }) => condition === conditionId('filled'));
  const finding = findings.find((one) => isOf(one, 'flexible-connector') && one.at === part.name);
  const needed = findings.find((one) => isOf(one, 'connector-needed') && one.at === `${side} side`);
  return {
    name: part.name,
    side,
    working: write.quantity(working?.thrust, 'force'),
    test: write.quantity(worst?.thrust, 'force'),
    isTied: part.rods === 'taut',
    isGapped: part.rods === 'gapped',
    isBare: part.rods === 'none',
    engages: worst?.rods === 'engaged',
    pull: write.quantity(worst?.rodTension, 'force'),
    unheld: write.quantity(worst?.unheld, 'force'),
    anchor: anchoredBy ?? '',
    isAnchored: anchoredBy !== undefined,
    isNotNeeded: needed?.verdict === 'exceeds',
    exceeds: finding?.verdict === 'exceeds',
  };
}

function rowsOf(all: readonly PlacedConnector[], { write }: ReportContext) {
  const faces = all.flatMap(({ effects }) => effects.flatMap((effect) => effect.faces));
  const force = write.scaled('force', [
    ...faces.flatMap(({ axialForce, without }) => [axialForce, without]),
    ...all.flatMap(({ effects }) => effects.flatMap(({ thrust, rodTension }) => [thrust, rodTension])),
  ]);
  return all.flatMap(({ part, effects }) =>
    effects.map(({ condition, pressure, thrust, rods, rodTension, lengthening, faces: read }) => {
      const at = (name: string) => read.find((face) => face.name === name);
      return {
        name: part.name,
        condition: conditionTitle(condition),
        pressure: write.quantity(pressure, 'pressure'),
        thrust: force(thrust),
        hasRods: rods !== 'none',
        pull: force(rodTension),
        longer: write.distance(lengthening),
        suction: force(at('suction')?.axialForce),
        suctionWithout: force(at('suction')?.without),
        discharge: force(at('discharge')?.axialForce),
        dischargeWithout: force(at('discharge')?.without),
      };
    }),
  );
}
