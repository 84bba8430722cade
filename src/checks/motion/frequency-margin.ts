import { citationOf } from '../../analysis/citation-of.js';
import { type Excitation, excitations, type PumpMode, pumpModes } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import {
  type LockOutCase,
  lockOutBands,
  type SpeedBand,
  wholeTurns,
} from '../../mechanics/modes/lock-out-bands.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { Citation } from '../../sources/index.js';
import { type ComparedDemand, type Demand, defineCheck } from '../define-check.js';

const SPECIFICATION: Citation = {
  source: 'input',
  clause: 'limits.frequency-margin',
  confidence: 'read',
};

/**
 * Natural frequencies of pump and pipes keep a margin from the frequencies that shake the pump.
 *
 * Why: a pump that hangs in its pipe is as soft as its pipe, and a vibration near running speed grows until something
 * loosens. Which margin is enough nobody publishes for pumps carried by their pipe, so it comes from the file. Running
 * speed decides; twice running speed and blade passing are weaker and are comparisons. A drive has a range, within
 * which speeds are to be locked out: whether they are is not in the file, so that is not a pass.
 */
export const frequencyMargin = defineCheck({
  id: 'frequency-margin',
  title: 'Natural frequency margin',
  trade: 'Design engineer',
  section: 'frequencies',
  dependsOn: ['supports', 'weights', 'duty'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: '-',
  basis: [SPECIFICATION],
  exceeds: 'checks.frequency-margin.exceeds',
  noPlace: 'checks.frequency-margin.no-place',
  places: (subject) => (subject.frequencies === undefined ? [] : excitations(subject)),
  at: ({ name }, { installation }) =>
    installation.pump.motor.speeds === undefined ? name : `${name}, range of the drive`,
  demands: (excitation, subject): readonly Demand[] => {
    const comparison = excitation.timesPerTurn > 1;
    const { motor } = subject.installation.pump;
    const modes = pumpModes(subject).filter(({ counts }) => counts);
    if (motor.start?.kind === 'variable-speed drive' && motor.speeds === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.frequency-margin.no-speeds', comparison }];
    const compared =
      motor.speeds === undefined
        ? atOneSpeed(excitation, modes, subject)
        : overRange(excitation, modes, subject, motor.speeds);
    const margin = subject.installation.limits.frequencyMargin;
    if (margin !== undefined && !isUsable(margin.value))
      return [{ kind: 'cannot-tell', code: 'checks.limit-unusable', comparison }];
    return [{ ...compared, comparison, ...(margin && { basis: citationOf(margin, SPECIFICATION) }) }];
  },
});

/** A margin is a share between nothing and all. */
const isUsable = (margin: number): boolean => margin > 0 && margin < 1;

/** Nearness of the nearest vibration: 1 at the exciting frequency, 0.75 a quarter of it away. */
function atOneSpeed(excitation: Excitation, modes: readonly PumpMode[], subject: Subject): Demand {
  const { installation, frequencies } = subject;
  const exciting = (excitation.timesPerTurn * installation.pump.motor.speed) / (2 * Math.PI);
  const distance = ({ mode }: PumpMode) => Math.abs(mode.frequency - exciting);
  const nearest = [...modes].sort((a, b) => distance(a) - distance(b))[0];
  const margin = installation.limits.frequencyMargin?.value;
  const known = frequencies?.completeTo ?? 0;
  const away = nearest === undefined ? Number.POSITIVE_INFINITY : distance(nearest);
  // A nearer one may lie above the highest that was found.
  const reach = Math.min(away, (margin ?? 0) * exciting);
  if (nearest === undefined || known < exciting + reach) {
    const data = { exciting: rounded(exciting), known: rounded(known) };
    return nearest === undefined && known >= exciting * (1 + (margin ?? 1))
      ? { kind: 'does-not-apply', code: 'checks.frequency-margin.none-near', data }
      : { kind: 'cannot-tell', code: 'checks.frequency-margin.beyond', data };
  }
  const compared: ComparedDemand = {
    kind: 'compared',
    condition: conditionId('running'),
    label: `mode ${nearest.number}`,
    demand: Math.max(0, 1 - away / exciting),
    limit: margin === undefined ? undefined : 1 - margin,
    missing: 'checks.frequency-margin.no-margin',
    data: {
      exciting: rounded(exciting),
      frequency: rounded(nearest.mode.frequency),
      away: Math.round((100 * away) / exciting),
    },
    calculation: {
      symbol: 'N',
      formula: '1 - abs(f - n) / n',
      unit: '-',
      values: [
        {
          symbol: 'f',
          value: nearest.mode.frequency,
          unit: 'Hz',
          meaning: 'nearest natural frequency of the pump',
        },
        { symbol: 'n', value: exciting, unit: 'Hz', meaning: `frequency of ${excitation.name}` },
      ],
    },
  };
  return compared;
}

/** Speeds to lock out; what a drive is set to is not known, so none is a pass unless there is nothing to set. */
function overRange(
  excitation: Excitation,
  modes: readonly PumpMode[],
  subject: Subject,
  speeds: LockOutCase['speeds'],
): Demand {
  const margin = subject.installation.limits.frequencyMargin?.value;
  if (margin === undefined) return { kind: 'cannot-tell', code: 'checks.frequency-margin.no-margin-range' };
  const bands = lockOutBands({
    frequencies: modes.map(({ mode }) => mode.frequency),
    timesPerTurn: excitation.timesPerTurn,
    margin,
    speeds,
  });
  const known = subject.frequencies?.completeTo ?? 0;
  const highest = (excitation.timesPerTurn * speeds.highest) / (2 * Math.PI);
  const data = { bands: bands.map(bandText).join(', '), exciting: rounded(highest), known: rounded(known) };
  const locked = bands.reduce((sum, band) => sum + band.to - band.from, 0);
  if (bands.length > 0 && locked >= (speeds.highest - speeds.lowest) * (1 - 1e-9)) {
    return { kind: 'forbidden', happens: true, advice: 'checks.frequency-margin.no-speed-left', data };
  }
  if (bands.length > 0) return { kind: 'cannot-tell', code: 'checks.frequency-margin.lock-out', data };
  if (known < highest * (1 + margin))
    return { kind: 'cannot-tell', code: 'checks.frequency-margin.beyond', data };
  return { kind: 'forbidden', happens: false };
}

/** A stretch of speeds in whole turns a minute, outwards. @param band - [rad/s] @returns for example `822 to 1005 rpm` */
export function bandText(band: SpeedBand): string {
  const { from, to } = wholeTurns(band);
  return `${from} to ${to} rpm`;
}

const rounded = (frequency: number): number => Math.round(frequency * 10) / 10;
