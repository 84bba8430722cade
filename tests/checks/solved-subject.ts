/** A small installation solved for what its flanges and hangers do: a pump between two lines, each on hangers. */
import type { Subject } from '../../src/analysis/subject.js';
import type { Installation, Limits, Part } from '../../src/input/installation.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import {
  elbow,
  end,
  flange,
  installation,
  sourced,
  spring,
  straight,
  support,
  valve,
} from '../model/fixture.js';

const suction: readonly Part[] = [
  flange('flange 1'),
  straight('straight 1', 0.6),
  elbow('elbow 1', [0, 0, 1]),
  straight('straight 2', 1.2),
  elbow('elbow 2', [0, -1, 0]),
  straight('straight 3', 0.4),
  support('hanger', 'H1'),
  straight('straight 4', 3.5),
  support('hanger', 'H2'),
  straight('straight 5', 2.5),
  end('end 1'),
];

export const discharge: readonly Part[] = [
  flange('flange 2'),
  straight('straight 6', 0.5),
  flange('flange 3'),
  valve('gate valve 1'),
  flange('flange 4'),
  straight('straight 7', 0.3),
  spring('V1', 60_000, 2500),
  straight('straight 8', 0.3),
  elbow('elbow 3', [0, 0, 1]),
  straight('straight 9', 1.5),
  elbow('elbow 4', [1, 0, 0]),
  straight('straight 10', 2),
  support('hanger', 'H3'),
  straight('straight 11', 3),
  end('end 2'),
];

export interface SolvedChange {
  readonly limits?: Partial<Limits>;
  readonly discharge?: readonly Part[];
  readonly pump?: Partial<Installation['pump']>;
}

/** Tolerances of fit-up as published: 1/16 in, 1/16 in, 1/32 in. */
export const PUBLISHED = {
  gap: sourced(0.0254 / 16),
  offset: sourced(0.0254 / 16),
  parallelism: sourced(0.0254 / 32),
};

export const makerOf = (force: number, moment: number): Limits['nozzle'] => {
  const allowance = { resultantForce: force, resultantMoment: moment };
  return {
    basis: 'maker',
    comparisons: [],
    maker: { document: 'data sheet', suction: allowance, discharge: allowance },
  };
};

export function solvedSubject(change: SolvedChange = {}): Subject {
  const plain = installation(suction, change.discharge ?? discharge, change.pump);
  const whole = { ...plain, limits: { ...plain.limits, fitUp: PUBLISHED, ...change.limits } };
  const layout = buildLayout(whole);
  return { installation: whole, layout, response: solveFrame(layout.frame) };
}
