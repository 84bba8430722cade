/** What changed between two results: values beyond noise, verdicts, findings, assumptions. */
import { findingChanges, findingsOf } from './compare-findings.js';
import { type ComparedResults, nowCalled, withoutRepeats } from './compared-results.js';
import { type AssumptionChange, type Comparison, NOISE, type ValueChange } from './comparison.js';

/**
 * Compares two results.
 *
 * @param before - results of the older revision
 * @param after - results of the newer
 * @param renamed - what supports are called now by what they were called
 * @returns everything but the changes of the input
 */
export function compareResults(
  before: ComparedResults,
  after: ComparedResults,
  renamed: ReadonlyMap<string, string> = new Map(),
): Omit<Comparison, 'inputs'> {
  return {
    pump: { before: before.pump.mark, after: after.pump.mark },
    verdict: { before: before.verdict, after: after.verdict },
    sameInput: before.input.sha256 === after.input.sha256,
    values: valueChanges(valuesOf(before, renamed), valuesOf(after)),
    findings: findingChanges(findingsOf(before, renamed), findingsOf(after)),
    assumptions: assumptionChanges(before, after),
  };
}

type Value = Omit<ValueChange, 'before' | 'after'> & { readonly value: number };

/** Weights by part; straight pipe together, since another support cuts and numbers it anew and changes nothing. */
function weightsOf(results: ComparedResults, renamed?: ReadonlyMap<string, string>): readonly Value[] {
  const weights = new Map<string, number>();
  for (const { part, dry, contents, insulation } of results.weights) {
    const at = /^straight \d/.test(part) ? 'straight pipe, all of it' : nowCalled(part, renamed);
    weights.set(at, (weights.get(at) ?? 0) + dry + contents + insulation);
  }
  return [...weights].map(([at, value]) => ({ of: 'weight', at, what: 'weight', unit: 'kg', value }));
}

function valuesOf(
  results: ComparedResults,
  renamed?: ReadonlyMap<string, string>,
): ReadonlyMap<string, Value> {
  const values: Value[] = [];
  for (const [name, { nozzles, supports }] of Object.entries(results.conditions)) {
    const condition = nowCalled(name, renamed);
    for (const nozzle of ['suction', 'discharge'] as const) {
      const wrench = nozzles?.[nozzle];
      if (!wrench) continue;
      const at = { of: 'nozzle', at: nozzle, condition } as const;
      values.push({ ...at, what: 'force', unit: 'N', value: Math.hypot(...wrench.force) });
      values.push({ ...at, what: 'moment', unit: 'N·m', value: Math.hypot(...wrench.moment) });
    }
    for (const [mark, wrench] of Object.entries(supports)) {
      const at = { of: 'support', at: nowCalled(mark, renamed), condition } as const;
      // As the pipe acts on the support: weight pulls down, which is counted positive as a fitter counts it.
      values.push({ ...at, what: 'load down', unit: 'N', value: -wrench.force[2] });
    }
  }
  values.push(...weightsOf(results, renamed));
  results.frequencies.forEach((value, i) => {
    values.push({ of: 'frequency', at: `frequency ${i + 1}`, what: 'frequency', unit: 'Hz', value });
  });
  return withoutRepeats(values, ({ of, at, what, condition }) => `${of}|${at}|${what}|${condition ?? ''}`);
}

function valueChanges(
  before: ReadonlyMap<string, Value>,
  after: ReadonlyMap<string, Value>,
): readonly ValueChange[] {
  const kind = ({ of, unit }: Value): string => `${of}|${unit}`;
  const largest = new Map<string, number>();
  for (const value of [...before.values(), ...after.values()])
    largest.set(kind(value), Math.max(largest.get(kind(value)) ?? 0, Math.abs(value.value)));
  const changes: ValueChange[] = [];
  for (const key of new Set([...after.keys(), ...before.keys()])) {
    const [one, other] = [before.get(key), after.get(key)];
    const known = other ?? one;
    if (!known) continue;
    const { value: _value, ...rest } = known;
    if (one && other && isNoise(one.value, other.value, largest.get(kind(known)) ?? 0)) continue;
    changes.push({ ...rest, ...(one && { before: one.value }), ...(other && { after: other.value }) });
  }
  return changes;
}

function isNoise(before: number, after: number, largest: number): boolean {
  const apart = Math.abs(after - before);
  return (
    apart <= NOISE.ofItself * Math.max(Math.abs(before), Math.abs(after)) ||
    apart <= NOISE.ofLargest * largest
  );
}

function assumptionChanges(before: ComparedResults, after: ComparedResults): readonly AssumptionChange[] {
  const [old, now] = [before, after].map(
    ({ assumptions }) => new Map(assumptions.map(({ path, value }) => [path, value])),
  );
  const changes: AssumptionChange[] = [];
  for (const path of new Set([...(now?.keys() ?? []), ...(old?.keys() ?? [])])) {
    const [one, other] = [old?.get(path), now?.get(path)];
    if (one === other) continue;
    if (one === undefined && other !== undefined) changes.push({ kind: 'new', path, after: other });
    else if (other === undefined && one !== undefined) changes.push({ kind: 'gone', path, before: one });
    else if (one !== undefined && other !== undefined)
      changes.push({ kind: 'changed', path, before: one, after: other });
  }
  return changes;
}
