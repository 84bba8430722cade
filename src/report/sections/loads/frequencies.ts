import { excitations, type PumpMode, pumpModes } from '../../../analysis/motion/pump-modes.js';
import { isOf } from '../../../checks/all-checks.js';
import { lockOutBands, type SpeedBand, wholeTurns } from '../../../mechanics/modes/lock-out-bands.js';
import { type FrequencySweep, sweepFrequencies } from '../../../study/bounds/frequency-sweep.js';
import { asIfUnstated } from '../../../study/bounds/unstated.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';
import { modeWords, shownModes } from '../../words/mode-words.js';

/** Vibrations listed at least, and up to how many times the fastest turns a second [-]. */
const FEWEST = 10;
const LISTED_TO = 1.5;

/**
 * Natural frequencies of pump and pipes when running: what moves, how far they are from what shakes the pump, and the
 * speeds a drive should keep out of.
 *
 * @param context - results and writer
 * @returns table rows, bands, and what the figures are called
 */
export function frequencies(context: ReportContext) {
  const { subject, write } = context;
  const { motor } = subject.installation.pump;
  const fastest = Math.max(motor.speed, motor.speeds?.highest ?? 0) / (2 * Math.PI);
  const modes = pumpModes(subject);
  const full = context.reader === 'engineer';
  const near = modes.filter(({ number, mode }) => number <= FEWEST || mode.frequency <= LISTED_TO * fastest);
  // Who commissions knocks on the pump, and meets those that move it.
  const listed = full ? near : near.filter(({ counts }) => counts);
  const shaking = excitations(subject);
  const bands = speedBands(context);
  const margin = subject.installation.limits.frequencyMargin?.value;
  return {
    full,
    // Who sets a drive wants the map; at one speed the table says it all.
    mapped: full || motor.speeds !== undefined,
    hasModes: modes.length > 0,
    count: String(listed.length),
    mass: write.quantity(subject.frequencies?.mass, 'mass'),
    columns: shaking.map(({ name }) => name),
    rows: listed.map((found) => modeRow(found, context)),
    hasRange: motor.speeds !== undefined,
    speed: write.quantity(motor.speed, 'speed', { significant: 4 }),
    turns: write.quantity(motor.speed / (2 * Math.PI), 'frequency'),
    lowest: write.quantity(motor.speeds?.lowest, 'speed', { significant: 4 }),
    highest: write.quantity(motor.speeds?.highest, 'speed', { significant: 4 }),
    hasMargin: margin !== undefined,
    margin: write.quantity(margin, 'ratio'),
    bands: bands.map((band) => ({
      from: write.quantity((wholeTurns(band).from * Math.PI) / 30, 'speed', { decimals: 0 }),
      to: write.quantity((wholeTurns(band).to * Math.PI) / 30, 'speed', { decimals: 0 }),
      frequencies: band.frequencies.map((frequency) => write.quantity(frequency, 'frequency')).join(', '),
    })),
    hasBands: bands.length > 0,
    findings: context.findings
      .filter((finding) => isOf(finding, 'frequency-margin') && finding.verdict !== 'does-not-apply')
      .map((finding) => findingRow(finding, context)),
    ...sweepView(context, full),
    pictures: shownModes(subject).map(({ number, mode }, index) => ({
      drawing: `vibration-${index + 1}`,
      number: String(number),
      frequency: write.quantity(mode.frequency, 'frequency'),
    })),
  } satisfies View;
}

/** The nearest vibrations of the pump over bracket and structure, swept also where they are stated. */
function sweepView({ subject, bounds, write }: ReportContext, full: boolean) {
  const { installation } = subject;
  const { motor } = installation.pump;
  const judged = bounds?.frequencies;
  const sweep = full ? (judged ?? sweepFrequencies(subject, asIfUnstated(installation))) : undefined;
  const turns = Math.max(motor.speed, motor.speeds?.highest ?? 0) / (2 * Math.PI);
  const margin = installation.limits.frequencyMargin?.value ?? 0;
  const samples = sweep?.samples.filter(({ friction }) => friction === 0) ?? [];
  const low = (motor.speeds === undefined ? turns : motor.speeds.lowest / (2 * Math.PI)) * (1 - margin);
  const hidden = pumpModes(subject).filter(
    ({ counts, mode }) => !counts && mode.frequency > low && mode.frequency < turns * (1 + margin),
  );
  return {
    hasSweep: samples.length > 1,
    sweepJudged: judged !== undefined,
    sweep: samples.map(({ bracket, bracketFrequency, structure, modes }) => {
      const near = modes.filter(({ counts, frequency }) => counts && frequency > low / 1.5).slice(0, SWEPT);
      return {
        bracket:
          bracketFrequency === undefined
            ? statedBracket(subject, write)
            : write.quantity(bracketFrequency, 'frequency'),
        structure: structure === 0 ? 'as stated' : structureWords(sweep, structure, write),
        stated: bracket === 0 && structure === 0,
        modes: near
          .map(
            ({ frequency, share }) =>
              `${write.number(frequency, 'frequency')} (${write.quantity(share, 'ratio', { decimals: 0 })})`,
          )
          .join(', '),
        within: near.some(({ frequency }) => frequency > low && frequency < turns * (1 + margin)),
      };
    }),
    hidden: hidden
      .map(
        ({ mode, share, number }) =>
          `no. ${number}, ${write.quantity(mode.frequency, 'frequency')}, ${write.quantity(share, 'ratio', { decimals: 0 })} of its energy`,
      )
      .join('; '),
    hasHidden: margin > 0 && hidden.length > 0,
  };
}

/** Vibrations of the pump shown for each sample [-]. */
const SWEPT = 5;

function statedBracket({ installation }: ReportContext['subject'], write: ReportContext['write']): string {
  const { bracket } = installation.pump.motor;
  if (bracket?.kind === 'frequency') return write.quantity(bracket.frequency.value, 'frequency');
  return bracket !== undefined && Number.isFinite(bracket.rotation.value)
    ? write.quantity(bracket.rotation.value, 'rotational stiffness')
    : 'rigid';
}

/** Least stiffness of hangers' structure at a sample, standing for all that was softened together. */
function structureWords(
  sweep: FrequencySweep | undefined,
  amount: number,
  write: ReportContext['write'],
): string {
  const [first] = sweep?.things.structure.filter(({ unit }) => unit === 'N/m') ?? [];
  return first === undefined
    ? 'softer'
    : `${write.quantity(first.end / amount, 'stiffness')} at ${first.owner}`;
}

function modeRow(found: PumpMode, context: ReportContext) {
  const { mode, number, share, counts } = found;
  const { write, subject } = context;
  const turns = subject.installation.pump.motor.speed / (2 * Math.PI);
  return {
    number: String(number),
    frequency: write.number(mode.frequency, 'frequency'),
    what: modeWords(found, subject),
    share: write.quantity(share, 'ratio', { decimals: 0 }),
    counts,
    speed: write.number(2 * Math.PI * mode.frequency, 'speed', { decimals: 0 }),
    away: excitations(subject).map(({ timesPerTurn }) => {
      const exciting = timesPerTurn * turns;
      return write.number((mode.frequency - exciting) / exciting, 'ratio', { decimals: 0 });
    }),
  };
}

/**
 * Speeds within a drive's range that the margin excludes at running speed.
 *
 * @param context - frequencies, margin and range
 * @returns bands [rad/s]; none without a drive's range or a margin
 */
export function speedBands(context: Pick<ReportContext, 'subject'>): readonly SpeedBand[] {
  const { subject } = context;
  const { speeds } = subject.installation.pump.motor;
  const margin = subject.installation.limits.frequencyMargin?.value;
  if (speeds === undefined || margin === undefined || !(margin > 0 && margin < 1)) return [];
  const counting = pumpModes(subject).filter(({ counts }) => counts);
  return lockOutBands({
    frequencies: counting.map(({ mode }) => mode.frequency),
    timesPerTurn: 1,
    margin,
    speeds,
  });
}
