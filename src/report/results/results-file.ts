/** The results file: everything a program may want of a review, in SI units. */

import { type NozzleLoadRow, nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import { startMovements } from '../../checks/motion/start-movement.js';
import { EngineError } from '../../issues/issue.js';
import type { Finding } from '../../judging/finding.js';
import type { Verdict } from '../../judging/verdict.js';
import type { ConditionResponse } from '../../mechanics/frame/response.js';
import type { Wrench } from '../../model/conventions.js';
import { citationText } from '../../sources/index.js';
import type { Bands } from '../../study/bands/bands.js';
import type { Bounds } from '../../study/bounds/bounds.js';
import { everyCondition } from '../words/condition-order.js';
import { accessResults } from './access-results.js';
import { bandResults } from './band-results.js';
import { boundsResults } from './bounds-results.js';
import { fitterResults } from './installation-results.js';
import { nozzleLoadResults, supportLoadResults } from './load-results.js';
import type { ResultsFile } from './results-schema.js';

/**
 * Results of a review as plain data, the shape of which is a promise (`pipeborne-results/1`).
 *
 * @param subject - installation, layout, response and verdict
 * @param findings - all findings
 * @param options - version of the program
 * @returns plain data that JSON can hold
 * @throws EngineError `report.not-finite` when a result is no number
 */
export function resultsFile(
  subject: Subject & { readonly verdict: Verdict; readonly bounds?: Bounds; readonly bands?: Bands },
  findings: readonly Finding[],
  options: { readonly version: string },
): ResultsFile {
  const { installation, layout, response } = subject;
  const loads = nozzleLoadRows(subject);
  const results: ResultsFile = {
    format: 'pipeborne-results/1',
    tool: { version: options.version },
    input: { sha256: installation.fingerprint },
    review: reviewHead(installation.review),
    verdict: subject.verdict,
    pump: { mark: installation.pump.mark },
    conditions: Object.fromEntries(
      everyCondition(response).map((condition) => [condition.name, conditionResults(condition, loads)]),
    ),
    supportLoads: supportLoadResults(subject),
    nozzleLoads: nozzleLoadResults(subject),
    weights: layout.weights.map((row) => ({
      part: row.part,
      dry: row.dry,
      contents: row.contents,
      insulation: row.covering,
    })),
    frequencies: subject.frequencies?.modes.map(({ frequency }) => frequency) ?? [],
    ...(subject.startUp && { startUp: startResult(subject) }),
    ...fitterResults(subject),
    ...accessResults(subject, findings),
    quality: {
      residual: response.quality.residual,
      energy: response.quality.energy ?? 0,
      reciprocalCondition: response.quality.reciprocalCondition,
    },
    findings: findings.map(findingResult),
    ...(subject.bounds && { bounds: boundsResults(subject.bounds) }),
    ...(subject.bands && { bands: bandResults(subject.bands) }),
    assumptions: installation.assumptions.map((assumption) => ({
      path: assumption.path,
      value: assumption.value,
      source: citationText(assumption.citation),
      effect: assumption.effect,
    })),
  };
  refuseNonsense(results, 'results');
  return results;
}

function conditionResults(
  condition: ConditionResponse,
  loads: readonly NozzleLoadRow[],
): ResultsFile['conditions'][string] {
  const on = (nozzle: 'suction' | 'discharge') =>
    loads.find((row) => row.condition === condition.name && row.nozzle === nozzle)?.plan;
  const [suction, discharge] = [on('suction'), on('discharge')];
  return {
    ...(suction && discharge && { nozzles: { suction: wrench(suction), discharge: wrench(discharge) } }),
    supports: Object.fromEntries(
      Object.entries(condition.supports).map(([mark, support]) => [mark, wrench(support.load)]),
    ),
    points: Object.fromEntries(
      Object.entries(condition.movements).map(([name, movement]) => [
        name,
        { movement: [...movement.translation], rotation: [...movement.rotation] },
      ]),
    ),
    balance: {
      applied: wrench(condition.balance.applied),
      reacted: wrench(condition.balance.reacted),
      residual: condition.balance.residual,
    },
    states: Object.fromEntries(
      Object.entries(condition.supports).map(([mark, support]) => [mark, [...support.states]]),
    ),
    ...undeterminedLoads(condition),
    ...(condition.jointStates && { joints: { ...condition.jointStates } }),
    rounds: condition.rounds,
  };
}

function undeterminedLoads(
  condition: ConditionResponse,
): Pick<ResultsFile['conditions'][string], 'undetermined'> {
  const marked = Object.entries(condition.supports).flatMap(([mark, { undetermined }]) =>
    undetermined === undefined ? [] : [{ mark, parts: [...undetermined] }],
  );
  if (marked.length === 0) return {};
  return { undetermined: Object.fromEntries(marked.map(({ mark, parts }) => [mark, parts])) };
}

function wrench({ force, moment }: Wrench): {
  force: [number, number, number];
  moment: [number, number, number];
} {
  return { force: [...force], moment: [...moment] };
}

/** The start in numbers; a start that fails says why. */
function startResult(subject: Subject): NonNullable<ResultsFile['startUp']> {
  const { startUp } = subject;
  if (startUp === undefined || startUp.kind === 'fails') return { reason: startUp?.why.code ?? '' };
  const { staticTwist, dynamicFactor, stopTwist, twist, runs } = startUp;
  return {
    staticTwist,
    dynamicFactor,
    stopTwist,
    twist,
    runs: runs.map((run) => ({
      inertia: run.inertia,
      duration: run.duration,
      twist: run.largestTwist,
      dynamicFactor: run.factor,
      motorTop: run.top.byHistory,
    })),
    motorTop: startMovements(subject).map(({ condition, by, movement }) => ({ condition, by, movement })),
  };
}

function findingResult(finding: Finding): ResultsFile['findings'][number] {
  const { check, at, condition, demand, limit, unit, ratio, sense, verdict, comparison, reason, basis } =
    finding;
  return {
    check,
    at,
    ...(condition === undefined ? {} : { condition }),
    ...(demand === undefined ? {} : { demand }),
    ...(limit === undefined ? {} : { limit }),
    unit,
    ...(ratio === undefined ? {} : { ratio }),
    ...(sense === undefined ? {} : { sense }),
    verdict,
    comparison,
    ...(finding.low !== undefined && { low: finding.low }),
    ...(finding.high !== undefined && { high: finding.high }),
    ...(finding.turnedBy && { turnedBy: [...finding.turnedBy] }),
    ...(finding.siteTest && { siteTest: finding.siteTest }),
    ...(reason === undefined ? {} : { reason: reason.code }),
    basis: { source: basis.source, clause: basis.clause, confidence: basis.confidence },
  };
}

/** JSON writes what is no number as null, silently: refuse it instead, and say where it stands. */
function refuseNonsense(value: unknown, path: string): void {
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new EngineError('report.not-finite', { path });
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) refuseNonsense(inner, `${path}.${key}`);
}

function reviewHead({
  project,
  date,
  revisions,
  units,
}: Subject['installation']['review']): ResultsFile['review'] {
  const revision = revisions.at(-1)?.mark;
  return { project, date, units, ...(revision !== undefined && { revision }) };
}
