import { isNotWorkedOut } from '../../../analysis/memoized.js';
import { supportLoadIn } from '../../../analysis/supports/support-loads.js';
import { type SupportSettings, supportSettings } from '../../../analysis/supports/support-settings.js';
import type { ConditionResponse } from '../../../mechanics/frame/response.js';
import type { SpringSetting } from '../../../mechanics/what-ifs/spring-setting.js';
import type { RaisingEffect } from '../../../mechanics/what-ifs/support-setting.js';
import {
  conditionId,
  conditionTitle,
  inCondition,
  type SingleRole,
} from '../../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../../model/layout/layout.js';
import { FARTHEST, settingTolerances } from '../../../study/bounds/setting-tolerance.js';
import type { ReportContext, View } from '../../context.js';
import { underPump } from '../../rows/under-pump.js';
import { bothText } from '../../words/flange-words.js';
import { supportWord } from '../../words/support-word.js';
import { fitStep } from './fit-up.js';

const NOTHING: SupportSettings = { raising: [], target: conditionId('filled') };

/** Heights nearer than this to the file's are as good as it: a tenth of a millimetre [m]. */
const SAME_HEIGHT = 1e-4;

/** What the adjuster reads: dry, filled and cold, then in service. */
const READ = ['empty', 'filled', 'running', 'hot', 'cold'] as const;

/**
 * The card for setting the supports: what each spring shows dry so that it is right in service, what each other support
 * carries then, and what a turn of the nut does to it and to its neighbours.
 *
 * @param context - results and writer
 * @returns tables of finished text
 */
export function setting(context: ReportContext) {
  const worked = supportSettings(context.subject);
  const { raising, springs, target } = isNotWorkedOut(worked) ? NOTHING : worked;
  const settings = springs?.springs ?? [];
  const responses = springs?.responses ?? context.subject.response.conditions;
  const step = fitStep(context);
  const placed = (mark: string) => context.subject.layout.supports.find((support) => support.mark === mark);
  const rigid = raising.filter(({ mark }) => placed(mark)?.part?.spring === undefined);
  return {
    full: context.reader === 'engineer',
    unit: context.write.unit('force'),
    momentUnit: context.write.unit('moment'),
    step: step.text,
    target: conditionTitle(target),
    springs: settings.map((spring) => springRow(spring, placed(spring.mark), context)),
    hasSprings: settings.length > 0,
    hasUnreached: settings.some(({ reached, beyond }) => !reached && beyond === undefined),
    hasBeyond: settings.some(({ beyond }) => beyond !== undefined),
    groups: underPump(responses, context),
    rigid: rigidRows(rigid, responses, placed, context),
    hasRigid: rigid.length > 0,
    ...toleranceView(context),
    effects: effectRows(raising, step.length, placed, context),
    hasEffects: raising.length > 0,
  } satisfies View;
}

/** Load, height and tolerance of every support set by hand: an instruction, beside what turns where it is not kept. */
function toleranceView({ subject, write }: ReportContext) {
  const worked = settingTolerances(subject);
  const tolerances = isNotWorkedOut(worked) ? [] : worked;
  const show = write.scaled(
    'force',
    tolerances.flatMap(({ load, change, unset }) => [load, change, unset]),
  );
  const isOpen = (reach: number) => reach >= FARTHEST;
  return {
    tolerances: tolerances.map(
      ({ mark, height, tolerance, load, change, byTape, first, unset, up, down }) => ({
        mark,
        height:
          Math.abs(height) < SAME_HEIGHT
            ? 'as drawn'
            : `${bothText(height)} ${height > 0 ? 'higher' : 'lower'}`,
        load: show(load),
        tolerance: `${isOpen(up) && isOpen(down) ? 'more than ' : ''}± ${bothText(tolerance)}`,
        change: `± ${show(Math.abs(change))}`,
        byTape,
        first: first === undefined ? 'nothing within 1/4 in' : `${first.title}: ${first.at}`,
        unset: show(unset),
      }),
    ),
    hasTolerances: tolerances.length > 0,
    hasByLoad: tolerances.some(({ byTape }) => !byTape),
  };
}

function springRow(spring: SpringSetting, support: PlacedSupport | undefined, context: ReportContext) {
  const { write } = context;
  const { mark, design, raise, loads, reached, beyond } = spring;
  const threads = support?.part?.rods?.threads;
  const show = write.scaled('force', [design, ...Object.values(loads)]);
  const [dry, filled, running, hot, cold] = READ.map((name) => show(inCondition(loads, name)));
  const stays = Math.abs(raise) < SAME_HEIGHT;
  const direction = raise > 0 ? 'higher' : 'lower';
  return {
    mark,
    design: show(design),
    dry: dry ?? '',
    filled: filled ?? '',
    running: running ?? '',
    hot: hot ?? '',
    cold: cold ?? '',
    height: beyond !== undefined ? 'cannot be made' : stays ? 'as given' : `${bothText(raise)} ${direction}`,
    beyond: beyond === undefined ? '' : `${bothText(beyond)} ${beyond > 0 ? 'higher' : 'lower'}`,
    isBeyond: beyond !== undefined,
    turns: threads === undefined ? '–' : write.plain(Math.abs(raise) * threads, 2),
    reached,
  };
}

function rigidRows(
  rigid: readonly RaisingEffect[],
  responses: Readonly<Record<string, ConditionResponse>>,
  placed: (mark: string) => PlacedSupport | undefined,
  context: ReportContext,
) {
  const load = (name: SingleRole, mark: string) => {
    return supportLoadIn(inCondition(responses, name), mark)?.downward;
  };
  const show = context.write.scaled(
    'force',
    rigid.flatMap(({ mark }) => READ.map((name) => load(name, mark))),
  );
  return rigid.map(({ mark }) => {
    const support = placed(mark);
    const [dry, filled, running, hot, cold] = READ.map((name) => show(load(name, mark)));
    return {
      mark,
      kind: support === undefined ? '' : supportWord(support),
      dry: dry ?? '',
      filled: filled ?? '',
      running: running ?? '',
      hot: hot ?? '',
      cold: cold ?? '',
    };
  });
}

function effectRows(
  raising: readonly RaisingEffect[],
  step: number,
  placed: (mark: string) => PlacedSupport | undefined,
  context: ReportContext,
) {
  const { write } = context;
  const own = ({ mark, supports }: RaisingEffect) => (supports[mark] ?? 0) * step;
  const nozzle = (effect: RaisingEffect, of: 'force' | 'moment') =>
    Math.max(0, ...Object.values(effect.nozzles).map((load) => Math.hypot(...load[of]))) * step;
  const turned = (effect: RaisingEffect) => {
    const threads = placed(effect.mark)?.part?.rods?.threads;
    return threads === undefined ? undefined : (effect.supports[effect.mark] ?? 0) / threads;
  };
  const force = write.scaled(
    'force',
    raising.flatMap((effect) => [own(effect), nozzle(effect, 'force'), turned(effect)]),
  );
  const moment = write.scaled(
    'moment',
    raising.map((effect) => nozzle(effect, 'moment')),
  );
  return raising.map((effect) => {
    const { mark, idle, supports } = effect;
    const [most] = Object.entries(supports)
      .filter(([name]) => name !== mark)
      .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a));
    const threads = placed(mark)?.part?.rods?.threads;
    return {
      mark,
      idle,
      own: idle ? '–' : force(own(effect)),
      neighbour: idle || most === undefined ? '–' : most[0],
      neighbourChange: idle || most === undefined ? '–' : force(most[1] * step),
      nozzleForce: idle ? '–' : force(nozzle(effect, 'force')),
      nozzleMoment: idle ? '–' : moment(nozzle(effect, 'moment')),
      turn: threads === undefined ? '–' : bothText(1 / threads),
      turned: idle ? '–' : force(turned(effect)),
    };
  });
}
