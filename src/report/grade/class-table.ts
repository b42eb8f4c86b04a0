/** Everybody of a class in a row: the verdict, the mark and what led to it. */
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Marking } from '../../training/training-model.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { type Block, type Cell, type Column, cell } from '../model.ts';
import {
  attemptName,
  foundText,
  markText,
  signedText,
  verdictOf,
  verdictText,
} from './grade-words.ts';

export function classTable(
  { trainees, marking }: Pick<GradedClass, 'trainees' | 'marking'>,
  unit: LengthUnit,
): Block {
  const film = (title: string): Column => filmFigures(title, unit);
  return {
    kind: 'table',
    columns: [
      column('trainee'),
      { ...column('verdict'), leads: true },
      { ...figures('mark'), leads: true },
      figures('panels'),
      figures('points'),
      { ...figures('off'), said: 'panels off' },
      figures(`bias (${unitName(unit)})`),
      film('SD'),
      { ...figures('low'), said: 'low spots found' },
      { ...figures('repairs'), said: 'repairs found' },
    ],
    rows: trainees.map((trainee) => classRow(trainee, marking, unit)),
  };
}

function classRow(
  trainee: GradedTrainee,
  { passMark }: Pick<Marking, 'passMark'>,
  unit: LengthUnit,
): readonly Cell[] {
  const { grade } = trainee;
  const verdict = verdictOf(trainee);
  const bad = verdict === 'unsatisfactory' || verdict === 'not-read';
  const name = cell(attemptName(trainee));
  const said = cell(verdictText(verdict), bad ? 'binding' : 'plain');
  if (grade === null) return [name, said, ...Array.from({ length: 8 }, () => cell('–'))];
  const { counted, scores, bias, repeatability, lowSpots, repairs, mark } = grade;
  const off = scores.filter((score) => score.verdict === 'unsatisfactory').length;
  return [
    name,
    said,
    cell(markText(mark.share, passMark)),
    cell(`${counted.panelsRead}/${counted.panels}`),
    cell(`${counted.pointsRead}/${counted.points}`),
    cell(String(off), off > 0 ? 'binding' : 'plain'),
    cell(bias === null ? '–' : signedText(bias.mean, unit)),
    cell(repeatability === null ? '–' : thicknessText(repeatability.sd, unit)),
    cell(foundText(lowSpots)),
    cell(foundText(repairs)),
  ];
}
