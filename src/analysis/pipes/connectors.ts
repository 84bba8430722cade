import type { ConnectorPart } from '../../input/installation.js';
import { type ConnectorEffect, connectorEffects } from '../../mechanics/what-ifs/connector-effect.js';
import { ofRoles } from '../../model/conditions/condition-roles.js';
import { nozzleFaces, pumpBody } from '../nozzles/nozzle-faces.js';
import type { Subject } from '../subject.js';
import { courseOf, SIDES, type Side } from './line-course.js';

/** A flexible connector with what it does to the pump. */
export interface PlacedConnector {
  readonly part: ConnectorPart;
  readonly side: Side;
  /** Mark of the anchor between it and the pump, where there is one. */
  readonly anchoredBy?: string;
  /** At working pressure and at test pressure, with nothing warm or cold. */
  readonly effects: readonly ConnectorEffect[];
}

/**
 * Every flexible connector of both sides, outward from the pump, with its effect on both nozzles.
 *
 * @param subject - installation, layout and response
 * @returns connectors, those of the suction side first; those in side legs of tees are left out
 */
export function connectorsOf(subject: Subject): readonly PlacedConnector[] {
  const pump = pumpBody(subject);
  const faces =
    pump === undefined
      ? []
      : nozzleFaces(subject).map(({ which, point, axis }) => ({ name: which, body: pump.name, point, axis }));
  // The same water, at working and at test pressure.
  const read = ofRoles(subject.layout.frame.conditions, ['filled', 'test']).map(({ name }) => name);
  return SIDES.flatMap((side) => {
    let anchoredBy: string | undefined;
    return courseOf(subject, side).flatMap(({ part }): readonly PlacedConnector[] => {
      if ('holdsRotation' in part && part.holdsRotation) anchoredBy ??= part.mark;
      if (part.kind !== 'flexible-connector') return [];
      const asked = { joint: part.name, thrustArea: part.thrustArea.value, isTied: part.rods === 'taut' };
      const { frame } = subject.layout;
      const effects = connectorEffects(frame, subject.response, asked, faces, read);
      return [{ part, side, effects, ...(anchoredBy !== undefined && { anchoredBy }) }];
    });
  });
}
