import { nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import { findPipe } from '../../catalog/index.js';
import type { Calculation, Finding } from '../../judging/finding.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import { citationText } from '../../sources/index.js';
import type { ReportContext } from '../context.js';
import { questionOfFinding, type WorkedQuestion } from './worked-calculation.js';

/**
 * The steps before the principal stress of a nozzle: normal and shear stress from the loads on it, the nozzle taken
 * as schedule 40 pipe of its size.
 *
 *     S = 4 FA / [π (D² − d²)] + 32 D MB / [π (D⁴ − d⁴)]
 *     T = 4 FC / [π (D² − d²)] + 16 D MT / [π (D⁴ − d⁴)]
 *
 * @param finding - principal stress at a nozzle, with its governing condition
 * @param context - layout, response and writer
 * @returns two questions; none where the loads or the pipe are not there
 */
export function nozzleStressQuestions(finding: Finding, context: ReportContext): readonly WorkedQuestion[] {
  const row = nozzleLoadRows(context.subject).find(
    (one) => finding.at === `${one.nozzle} nozzle` && one.condition === finding.condition,
  );
  if (row === undefined) return [];
  const pipe = findPipe({
    nps: context.subject.layout.nozzles[row.nozzle].nps,
    schedule: '40',
    material: 'carbon steel',
  });
  if (pipe === undefined) return [];
  const { own } = row;
  const section: Calculation['values'] = [
    { symbol: 'D', value: pipe.outsideDiameter, unit: 'm', meaning: 'outside diameter, schedule 40' },
    { symbol: 'd', value: pipe.outsideDiameter - 2 * pipe.wall, unit: 'm', meaning: 'inside diameter' },
  ];
  const normal: Calculation = {
    symbol: 'S',
    formula: '4 * FA / (pi * (D^2 - d^2)) + 32 * D * sqrt(MV^2 + MC^2) / (pi * (D^4 - d^4))',
    unit: 'Pa',
    values: [
      { symbol: 'FA', value: own.axialForce, unit: 'N', meaning: 'force along the nozzle, pull positive' },
      {
        symbol: 'MV',
        value: Math.abs(own.verticalMoment),
        unit: 'N·m',
        meaning: 'moment about the vertical',
      },
      { symbol: 'MC', value: Math.abs(own.crossMoment), unit: 'N·m', meaning: 'moment about the cross axis' },
      ...section,
    ],
  };
  const shear: Calculation = {
    symbol: 'T',
    formula: '4 * sqrt(FV^2 + FC^2) / (pi * (D^2 - d^2)) + 16 * D * MA / (pi * (D^4 - d^4))',
    unit: 'Pa',
    values: [
      { symbol: 'FV', value: Math.abs(own.verticalForce), unit: 'N', meaning: 'vertical force' },
      { symbol: 'FC', value: Math.abs(own.crossForce), unit: 'N', meaning: 'force across the nozzle' },
      { symbol: 'MA', value: Math.abs(own.axialMoment), unit: 'N·m', meaning: 'torsion about the nozzle' },
      ...section,
    ],
  };
  const place = `${finding.at}, ${conditionTitle(row.condition)}`;
  const source = citationText(finding.basis);
  return [
    questionOfFinding(
      normal,
      { id: 'nozzle-normal-stress', title: `Stress from pull and bending: ${place}`, source },
      context.write,
    ),
    questionOfFinding(
      shear,
      { id: 'nozzle-shear-stress', title: `Shear stress: ${place}`, source },
      context.write,
    ),
  ];
}
