/** The mark of a trainee: what each criterion gave, what it takes to pass, which panels do not count. */
import type { GradedClass } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { Mark } from '../../training/mark.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, type Cell, cell, paragraph } from '../model.ts';
import { wholePercents } from '../whole-percents.ts';
import { criterionNames, percentText, voidText } from './grade-words.ts';

/** Weights are those of what could be judged, and marks are counted in them: both add up as they are printed. */
export function markTable({ criteria, share: reached }: Mark, graded: GradedClass): Block {
  const names = criterionNames(graded);
  const judged = criteria.flatMap(({ criterion, weight, share }) =>
    share === null || weight === 0 ? [] : [{ criterion, weight, share }],
  );
  const whole = judged.reduce((sum, { weight }) => sum + weight, 0);
  const weights = wholePercents(
    judged.map(({ weight }) => (100 * weight) / whole),
    100,
  );
  const marks = wholePercents(
    judged.map(({ share }, i) => (weights[i] ?? 0) * share),
    100 * reached,
  );
  const percent = (value: number | undefined): Cell => cell(`${value ?? 0} %`);
  return {
    kind: 'table',
    columns: [column('criterion'), figures('weight'), figures('reached'), figures('marks')],
    rows: criteria
      .filter(({ weight }) => weight > 0)
      .map(({ criterion, share }): readonly Cell[] => {
        const name = cell(names[criterion]);
        if (share === null) return [name, cell('–'), cell('–'), cell('–')];
        const at = judged.findIndex((one) => one.criterion === criterion);
        return [name, percent(weights[at]), cell(percentText(share)), percent(marks[at])];
      }),
  };
}

export function passText(
  { mark: { criteria, share: reached }, verdict, grounds }: Grade,
  { marking, rubric }: GradedClass,
): string {
  const by = rubric === null ? '' : ` (rubric ${rubric})`;
  const none = criteria.some(({ share, weight }) => share === null && weight > 0)
    ? ' A dash: nothing to judge by, its weight goes to the others.'
    : '';
  const failedBy = grounds.includes('under-pass-mark') || reached < marking.passMark;
  const otherwise =
    verdict === 'unsatisfactory' && !failedBy
      ? ' The mark would pass: the verdict is for what is told above.'
      : '';
  return `The pass mark is ${percentText(marking.passMark)}${by}.${none}${otherwise}`;
}

/** Who read them must be able to say so. */
export function voidBlocks(grade: Grade): readonly Block[] {
  const text = voidText(grade);
  if (text === '') return [];
  const unread = grade.voided.some(({ as }) => as === 'unread');
  const say = unread ? ['If you read these panels at the car, say so to your trainer.'] : [];
  return [paragraph('Void', joined([`${text}.`, ...say], ' '))];
}
