import { isNotWorkedOut } from '../../../analysis/memoized.js';
import { type FaceDiameters, faceDiameters, lineAt } from '../../../analysis/nozzles/nozzle-faces.js';
import { pumpOutLines } from '../../../analysis/supports/pump-out-lines.js';
import type { FlangeSpring, OpenFlange, PumpOut } from '../../../mechanics/what-ifs/pump-out.js';
import type { ReportContext, View } from '../../context.js';
import { bothUnits, faceSide, planWord, wayWord } from '../../words/flange-words.js';
import { NO_NUMBER } from '../../writer.js';

const NOTHING: PumpOut = { flanges: [], springs: [] };

/** A flange that moves less than this up or down needs a steady rest and no lift: half a millimetre [m]. */
const STEADY = 5e-4;

/**
 * What the fitter meets when the pump comes out: how each flange springs, what to block up and with what load, which
 * springs to pin first.
 *
 * @param context - results and writer
 * @returns tables of finished text; lengths in millimetres and in inches
 */
export function pumpOut(context: ReportContext) {
  const worked = pumpOutLines(context.subject);
  const { flanges, springs } = isNotWorkedOut(worked) ? NOTHING : worked;
  const hasPinned = flanges.some(({ pinnedSpring }) => pinnedSpring !== undefined);
  const opened = flanges.map((flange) => flangeRows(flange, hasPinned, context));
  const props = propRows(flanges, context);
  const { pump, lines } = context.subject.installation;
  return {
    full: context.reader === 'engineer',
    unit: context.write.unit('force'),
    isHung: pump.mount === 'hung',
    weight: context.write.quantity(pump.casing.mass.value + pump.motor.mass.value, 'mass'),
    flanges: opened,
    sprung: opened.filter(({ hasRows }) => hasRows).map(({ title }) => ({ title })),
    ways: waysOf(opened.filter(({ hasRows }) => hasRows)),
    hasFlanges: flanges.length > 0,
    hasSprung: flanges.some(({ spring }) => spring !== undefined),
    hasPinned,
    props,
    hasProps: props.length > 0,
    hasHoldDown: props.some(({ isHeldDown }) => isHeldDown),
    first: props[0]?.place ?? '',
    unheld: flanges
      .filter(({ prop, pinnedProp }) => prop === undefined && pinnedProp === undefined)
      .map(({ which }) => lineAt(context.subject, which))
      .join(', '),
    hasUnheld: flanges.some(({ prop, pinnedProp }) => prop === undefined && pinnedProp === undefined),
    springs: springRows(springs, context),
    hasSprings: springs.length > 0,
    hasConnector: lines.some(({ walk }) => walk.some(({ kind }) => kind === 'flexible-connector')),
  } satisfies View;
}

function flangeRows(flange: OpenFlange, hasPinned: boolean, context: ReportContext) {
  const { which, spring, pinnedSpring, falls } = flange;
  const diameters = faceDiameters(context.subject, context.subject.layout.nozzles[which].point);
  const pinned = pinnedSpring && measures(pinnedSpring, diameters, context);
  const rows = spring === undefined ? [] : measures(spring, diameters, context);
  return {
    title: `${which === 'suction' ? 'Suction' : 'Discharge'} flange, ${lineAt(context.subject, which)}`,
    falls: falls !== undefined,
    how: String(falls?.data.movement ?? 'does not come to rest'),
    hasRows: rows.length > 0,
    rows: rows.map(({ what, size, way }, index) => ({
      what,
      ...bothUnits(size),
      way,
      hasPinned,
      pinnedMm: bothUnits(pinned?.[index]?.size).mm,
      pinnedInches: bothUnits(pinned?.[index]?.size).inches,
      pinnedWay: pinned?.[index]?.way ?? '–',
    })),
  };
}

/** The same measure of every flange beside each other. */
function waysOf(flanges: readonly ReturnType<typeof flangeRows>[]) {
  const [first] = flanges;
  return (first?.rows ?? []).map(({ what }, index) => ({
    what,
    found: flanges.map(({ rows }) => ({
      mm: rows[index]?.mm ?? NO_NUMBER,
      inches: rows[index]?.inches ?? NO_NUMBER,
      way: rows[index]?.way ?? NO_NUMBER,
    })),
  }));
}

/** What a rule and a feeler gauge show at one open flange. */
function measures(spring: FlangeSpring, { face, boltCircle }: FaceDiameters, context: ReportContext) {
  const { write } = context;
  const across = face === undefined ? undefined : spring.tilt * face;
  const turned = boltCircle === undefined ? undefined : (spring.twist * boltCircle) / 2;
  return [
    { what: 'Height', size: spring.rise, way: wayWord(spring.rise, ['rises', 'drops']) },
    {
      what: 'Gap along the pipe',
      size: spring.gap,
      way: wayWord(spring.gap, ['opens', 'closes']),
    },
    {
      what: 'Sideways',
      size: Math.hypot(...spring.sideways),
      way: planWord(spring.sideways, write),
    },
    {
      what: 'Out of parallel, across the face',
      size: across,
      way: `${write.quantity(spring.tilt, 'angle', { decimals: 2 })}, widest at the ${faceSide(spring.widest, write)}`,
    },
    {
      what: 'Bolt holes turned, at the bolt circle',
      size: turned,
      way: `${write.quantity(Math.abs(spring.twist), 'angle', { decimals: 2 })}`,
    },
  ];
}

/** What to block up, in order: a line that falls first, then the largest load. */
function propRows(flanges: readonly OpenFlange[], context: ReportContext) {
  const loads = flanges.flatMap(({ prop, pinnedProp }) => [prop, pinnedProp]);
  const show = context.write.scaled('force', loads);
  const size = ({ prop, pinnedProp }: OpenFlange) => Math.max(Math.abs(prop ?? 0), Math.abs(pinnedProp ?? 0));
  return [...flanges]
    .filter(({ prop, pinnedProp }) => prop !== undefined || pinnedProp !== undefined)
    .sort((a, b) => Number(b.falls !== undefined) - Number(a.falls !== undefined) || size(b) - size(a))
    .map((flange, index) => {
      const { which, prop, pinnedProp } = flange;
      const pushes = [prop, pinnedProp].filter((load) => load !== undefined);
      const isHeldDown = pushes.every((load) => load < 0);
      const turnsRound = pushes.some((load) => load < 0) && pushes.some((load) => load > 0);
      const down = turnsRound ? 'prop it and hold it down' : 'hold it down';
      const rises = [flange.spring?.rise, flange.pinnedSpring?.rise].filter((rise) => rise !== undefined);
      const isSteady = rises.length > 0 && rises.every((rise) => Math.abs(rise) < STEADY);
      return {
        order: String(index + 1),
        place: `${lineAt(context.subject, which)}, at the ${which} flange`,
        act: isSteady ? 'steady it: it hardly moves' : isHeldDown || turnsRound ? down : 'prop it from below',
        load: show(prop === undefined ? undefined : Math.abs(prop)),
        way: prop === undefined ? '–' : prop < 0 ? 'down' : 'up',
        pinnedLoad: show(pinnedProp === undefined ? undefined : Math.abs(pinnedProp)),
        pinnedWay: pinnedProp === undefined ? '–' : pinnedProp < 0 ? 'down' : 'up',
        falls: flange.falls !== undefined,
        isHeldDown: !isSteady && (isHeldDown || turnsRound),
      };
    });
}

function springRows(springs: PumpOut['springs'], context: ReportContext) {
  const show = context.write.scaled(
    'force',
    springs.flatMap(({ filled, free }) => [filled, free]),
  );
  return springs.map(({ mark, filled, free, rise }, index) => ({
    order: String(index + 1),
    mark,
    filled: show(filled),
    free: show(free),
    thrown: show(Math.abs(filled - free)),
    ...bothUnits(rise),
    way: wayWord(rise, ['rises', 'drops']),
  }));
}
