/** The results of an as-installed review for machines. */

import { type NozzleLoadRow, nozzleLoadRows } from '../analysis/nozzles/nozzle-load-rows.js';
import { asDesigned } from '../as-found/as-found.js';
import { sentenceOf } from '../issues/print.js';
import { isCommon } from '../model/conditions/condition-roles.js';
import type { FieldReading } from '../readings/reading.js';
import type { AsInstalled } from './as-installed.js';
import { AS_INSTALLED_FORMAT, type AsInstalledFile } from './as-installed-schema.js';
import type { Decision } from './decisions/decide.js';
import type { Judgement } from './judgement.js';

/**
 * Results as plain data in SI units.
 *
 * @param visit - what came of the visit
 * @param version - of the program
 * @returns data of the shape of `asInstalledJsonSchema`
 */
export function asInstalledResults(visit: AsInstalled, version: string): AsInstalledFile {
  const { review, asFound, findings, issues } = visit;
  const designed = asDesigned(review);
  return {
    format: AS_INSTALLED_FORMAT,
    tool: { version },
    input: { sha256: review.installation.fingerprint },
    pump: { mark: review.installation.pump.mark },
    ...(visit.date !== undefined && { date: visit.date }),
    files: [...visit.files],
    decision: visit.decision,
    verdict: visit.verdict,
    decisions: { start: decisionData(visit.decisions.start), run: decisionData(visit.decisions.run) },
    openItems: visit.items.map((item) => ({ ...item })),
    judgements: visit.judgements.map(judgementData),
    readings: [...visit.readings.values()].map(readingData),
    asFound: {
      kind: asFound.kind,
      put: asFound.kind === 'as drawn' ? [] : asFound.put.map((each) => ({ ...each })),
      left: asFound.left.map((each) => ({ ...each })),
      nozzles: {
        predicted: nozzleData(nozzleLoadRows(review)),
        ...(designed && {
          designed: nozzleData(
            nozzleLoadRows({ ...review, response: { ...review.response, conditions: designed } }),
          ),
        }),
        ...(asFound.kind === 'solved' && { found: nozzleData(nozzleLoadRows(asFound.subject)) }),
        ...(asFound.kind === 'solved' &&
          asFound.levelled && { heightsAsDrawn: nozzleData(nozzleLoadRows(asFound.levelled)) }),
      },
      findings: findings.map(({ check, at, condition, demand, limit, unit, ratio, verdict, comparison }) => ({
        check,
        at,
        unit,
        verdict,
        comparison,
        ...(condition !== undefined && { condition }),
        ...(demand !== undefined && { demand }),
        ...(limit !== undefined && { limit }),
        ...(ratio !== undefined && { ratio }),
      })),
    },
    issues: issues.map((issue) => ({
      code: issue.code,
      severity: issue.severity,
      message: sentenceOf(issue).message,
    })),
  };
}

function nozzleData(rows: readonly NozzleLoadRow[]): AsInstalledFile['asFound']['nozzles']['predicted'] {
  const plain = ([x, y, z]: readonly [number, number, number]): [number, number, number] => [x, y, z];
  const byCondition: AsInstalledFile['asFound']['nozzles']['predicted'] = {};
  for (const { condition, nozzle, plan } of rows.filter(isCommon)) {
    byCondition[condition] = {
      ...byCondition[condition],
      [nozzle]: { force: plain(plan.force), moment: plain(plan.moment) },
    };
  }
  return byCondition;
}

function decisionData(decision: Decision): AsInstalledFile['decisions']['start'] {
  const { word, against, by, on, nameless } = decision;
  return {
    word,
    against: against.map(({ at, finding }) => `${at}: ${finding}`),
    ...(by !== undefined && { by }),
    ...(on !== undefined && { on }),
    ...(nameless !== undefined && { nameless }),
  };
}

function judgementData(judgement: Judgement): AsInstalledFile['judgements'][number] {
  const { title: _title, citation, reason, boxes, ...rest } = judgement;
  return {
    ...rest,
    boxes: [...boxes],
    ...(citation && { basis: { ...citation } }),
    ...(reason && { reason: reason.code }),
  };
}

function readingData(reading: FieldReading): AsInstalledFile['readings'][number] {
  const { id, text, kind, place } = reading;
  return {
    box: id,
    text,
    kind,
    file: place.file,
    ...valueData(reading),
    ...(place.page !== undefined && { page: place.page }),
    ...(place.text && { line: place.text.line }),
  };
}

function valueData(reading: FieldReading): { readonly value?: number | string | boolean } {
  switch (reading.kind) {
    case 'number':
      return { value: reading.value };
    case 'choice':
      return { value: reading.choice };
    case 'tick':
      return { value: reading.ticked };
    case 'date':
      return { value: reading.date };
    case 'not-read':
      return { value: reading.reason };
    default:
      return {};
  }
}
