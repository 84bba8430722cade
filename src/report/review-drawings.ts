import { excitations, pumpModes } from '../analysis/motion/pump-modes.js';
import { analysisOf } from '../analysis/subject.js';
import { ratioBars } from '../drawing/charts/ratio-bars.js';
import { speedMap } from '../drawing/charts/speed-map.js';
import type { Drawing } from '../drawing/drawing.js';
import { isometricDrawing } from '../drawing/isometric/isometric.js';
import { modeShapeDrawing } from '../drawing/isometric/mode-shape.js';
import { movementDrawing } from '../drawing/isometric/movement.js';
import { liftDrawing } from '../drawing/lift/lift-picture.js';
import { elevationDrawing } from '../drawing/room-views/elevation.js';
import { planDrawing } from '../drawing/room-views/plan.js';
import type { ReportContext } from './context.js';
import { speedBands } from './sections/loads/frequencies.js';
import { drawnMovement } from './sections/verdicts/picture.js';
import { modeWords, shownModes } from './words/mode-words.js';

/** Width of a page's frame, and heights: the line with its loads shares page one with the verdict [1/72 in]. */
const WIDTH = 499;
/** Width of the narrower side of a picture beside its tables, and of one of two pictures beside each other [1/72 in]. */
const LIFT_WIDTH = 232;
const HALF_WIDTH = 241;
const ISOMETRIC_HEIGHT = 240;
const MOVEMENT_HEIGHT = 230;
const ELEVATION_HEIGHT = 222;
const PLAN_HEIGHT = 260;
const LIFT_HEIGHT = 258;
const VIBRATION_HEIGHT = 230;
const SPEED_MAP_HEIGHT = 222;

/**
 * Every drawing a review may call, by the name its figure calls it. Each is drawn when it is first looked at: placing
 * labels takes longer than everything else in a review, and a short review calls few of them.
 *
 * @param context - results
 * @returns drawings by name
 */
export function reviewDrawings(context: ReportContext): Readonly<Record<string, Drawing>> {
  const { installation, layout, response } = context.subject;
  const { findings } = context;
  const analysis = analysisOf(context.subject);
  const request = {
    installation,
    layout,
    response,
    analysis,
    findings,
    units: context.write.system,
    width: WIDTH,
  };
  return drawnOnDemand({
    isometric: () => isometricDrawing({ ...request, height: ISOMETRIC_HEIGHT }),
    movement: () =>
      movementDrawing({ ...request, height: MOVEMENT_HEIGHT, condition: drawnMovement(response) }),
    elevation: () => elevationDrawing({ ...request, height: ELEVATION_HEIGHT }),
    plan: () => planDrawing({ ...request, height: PLAN_HEIGHT }),
    lift: () => liftDrawing({ ...request, width: LIFT_WIDTH, height: LIFT_HEIGHT }),
    ratios: () => ratioBars(request),
    'speed-map': () => speedMapOf(context),
    'vibration-1': () => vibration(context, 0),
    'vibration-2': () => vibration(context, 1),
  });
}

/** One of the vibrations worth a picture; with none to show, a picture of the line at rest. */
function vibration(context: ReportContext, index: 0 | 1): Drawing {
  const { subject, write } = context;
  const { installation, layout } = subject;
  const shown = shownModes(subject)[index];
  const rest = { frequency: 0, shape: {}, modalMass: 1, massShare: [0, 0, 0] } as const;
  return modeShapeDrawing({
    installation,
    layout,
    mode: shown?.mode ?? rest,
    number: shown?.number ?? 0,
    words: shown === undefined ? 'nothing moves' : modeWords(shown, subject),
    name: `vibration-${index + 1}`,
    units: write.system,
    width: HALF_WIDTH,
    height: VIBRATION_HEIGHT,
  });
}

function speedMapOf(context: ReportContext): Drawing {
  const { subject, write } = context;
  const { motor } = subject.installation.pump;
  const margin = subject.installation.limits.frequencyMargin?.value;
  return speedMap({
    modes: pumpModes(subject).map(({ number, mode, counts }) => ({
      number,
      frequency: mode.frequency,
      counts,
    })),
    excitations: excitations(subject),
    speed: motor.speed,
    ...(motor.speeds && { speeds: motor.speeds }),
    bands: speedBands(context),
    ...(margin !== undefined && { margin }),
    units: write.system,
    width: WIDTH,
    height: SPEED_MAP_HEIGHT,
  });
}

function drawnOnDemand(draw: Readonly<Record<string, () => Drawing>>): Readonly<Record<string, Drawing>> {
  const drawn = new Map<string, Drawing>();
  const drawings: Record<string, Drawing> = {};
  for (const [name, make] of Object.entries(draw)) {
    const get = (): Drawing => {
      const drawing = drawn.get(name) ?? make();
      drawn.set(name, drawing);
      return drawing;
    };
    Object.defineProperty(drawings, name, { enumerable: true, get });
  }
  return drawings;
}
