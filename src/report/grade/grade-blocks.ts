/** The page of a class: everybody in a row, then what each has to mend, then the class as a whole. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { figure } from '../../base/rounding.ts';
import { nextFact, nextSentence, says, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import { together } from '../../training/reasons.ts';
import { assumedBlocks } from '../assumption-blocks.ts';
import { toldFacts } from '../facts.ts';
import { type Block, gap, paragraph, type Said, title } from '../model.ts';
import { copiedBlocks, fewToCompareBlocks, tooFewBlocks, unlikeBlocks } from './class-doubts.ts';
import { conditionBlocks, foundBlocks, hardPanels } from './class-findings.ts';
import { gaugeRrBlocks } from './class-gauge-rr-lines.ts';
import { classTable } from './class-table.ts';
import {
  carName,
  heldAgainst,
  type TraineeVerdict,
  verdictOf,
  verdictText,
} from './grade-words.ts';
import { told } from './trainee-lines.ts';

export type GradePage = { readonly unit: LengthUnit; readonly verbose: boolean };

export function gradeBlocks(graded: GradedClass, { unit, verbose }: GradePage): readonly Block[] {
  const car = carName(graded);
  return [
    title(`Grading${car === '' ? '' : ` on ${car}`}: ${summary(graded.trainees)}`),
    ...unlikeBlocks(graded),
    paragraph(null, comparedWith(graded)),
    paragraph('Columns', whatColumnsSay(graded, unit)),
    gap,
    classTable(graded, unit),
    ...lastCounts(graded),
    gap,
    ...graded.trainees.flatMap((trainee) => told(trainee, { unit, verbose }, heldAgainst(graded))),
    ...copiedBlocks(graded, unit),
    ...fewToCompareBlocks(graded),
    ...tooFewBlocks(graded),
    ...foundBlocks(graded),
    ...hardPanels(graded, unit),
    ...conditionBlocks(graded),
    ...gaugeRrBlocks(graded, unit),
    ...assumedBlocks(graded.assumptions, unit),
  ];
}

const VERDICTS: readonly TraineeVerdict[] = [
  'satisfactory',
  'questionable',
  'unsatisfactory',
  'not-read',
];

function summary(trainees: readonly GradedTrainee[]): string {
  const people = new Set(trainees.map(({ name }) => name)).size;
  const latest = trainees.filter(({ attempt, attempts }) => attempt === attempts);
  const counts = VERDICTS.map((verdict) => ({
    verdict,
    count: latest.filter((trainee) => verdictOf(trainee) === verdict).length,
  }));
  const parts = counts
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => `${count} ${verdictText(verdict)}`);
  return `${counted(people, 'trainee')}, ${parts.join(', ')}`;
}

/** The table has a row for each attempt, and the class counts each trainee once. */
function lastCounts({ trainees }: GradedClass): readonly Block[] {
  const several = [
    ...new Set(trainees.filter(({ attempts }) => attempts > 1).map(({ name }) => name)),
  ];
  return several.length === 0
    ? []
    : [
        paragraph(
          'Attempts',
          `of ${together(several)} the last counts; those before it are shown, and are in no figure of the class.`,
        ),
      ];
}

function comparedWith({ reference, referenceFile, assessor, date }: GradedClass): string {
  const panels = [...reference.panels.values()];
  const points = panels.reduce((sum, { count }) => sum + count, 0);
  const by = assessor === null ? '' : ` by ${assessor}`;
  const day = date === null ? '' : `, ${date}`;
  return reference.kind === 'expert'
    ? `Against ${shownFile(referenceFile ?? '')}${by}${day}: ${counted(panels.length, 'panel')} at ${counted(points, 'point')}.`
    : `Against the consensus of the class, the robust mean of each panel: ${counted(panels.length, 'panel')}.`;
}

const whatColumnsSay = (graded: GradedClass, unit: LengthUnit): Said =>
  toldFacts(
    says`off: panels ${figure(graded.settings.models.training.scores.unsatisfactory)} σ or more from ${heldAgainst(graded)} (σ_pt ${um(graded.sigmaPt.value)})${nextFact}bias: over the whole car${nextFact}SD: of repeats${nextFact}low, repairs: low spots and repaired panels found.${nextSentence}No one fails on one panel alone.`,
    unit,
  );
