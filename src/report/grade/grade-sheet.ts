/** The sheet of one trainee: the mark and how it comes about, panel by panel, and what to do. No one else is named. */
import { shownFile } from '../../base/file-name.ts';
import { says, tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import { joined, toldFacts } from '../facts.ts';
import { type Block, gap, list, paragraph, type Said, title } from '../model.ts';
import type { GradePage } from './grade-blocks.ts';
import {
  attemptName,
  BIAS_HINT,
  becauseText,
  biasText,
  carName,
  heldAgainst,
  hintedBias,
  markText,
  verdictOf,
  verdictText,
} from './grade-words.ts';
import { howScored } from './how-scored.ts';
import { panelsWorkedOver } from './panels-worked-over.ts';
import { carBlocks, conditionBlocks, foundBlocks, gaugeBlocks } from './sheet-findings.ts';
import { markTable, passText, voidBlocks } from './sheet-mark.ts';
import { panelBlocks } from './sheet-panels.ts';
import { reasonText } from './trainee-lines.ts';

export function gradeSheet(
  trainee: GradedTrainee,
  graded: GradedClass,
  { unit, verbose }: GradePage,
): readonly Block[] {
  const { grade } = trainee;
  const verdict = verdictText(verdictOf(trainee));
  const mark = grade === null ? '' : `, ${markText(grade.mark.share, graded.marking.passMark)}`;
  const head = [
    title(`Sheet of ${attemptName(trainee)}: ${verdict}${mark}`),
    paragraph(null, about(trainee, graded)),
    ...(grade === null || grade.grounds.length === 0
      ? []
      : [paragraph('Verdict', `${becauseText(grade)}.`)]),
  ];
  if (grade === null) return [...head, gap, ...notReadBlocks(trainee)];
  return [
    ...head,
    gap,
    markTable(grade.mark, graded),
    paragraph(null, passText(grade, graded)),
    ...voidBlocks(grade),
    gap,
    ...panelBlocks(grade, graded, { unit, verbose }),
    ...gaugeBlocks(trainee, graded, unit),
    ...carBlocks(grade, unit, heldAgainst(graded)),
    ...foundBlocks(grade, unit, heldAgainst(graded)),
    ...conditionBlocks(grade, heldAgainst(graded)),
    gap,
    ...whatToDo(grade, unit, heldAgainst(graded)),
    gap,
    paragraph('How it is scored', toldFacts(howScored(grade, graded), unit)),
  ];
}

function about({ file, date, attempt, attempts, name }: GradedTrainee, graded: GradedClass): Said {
  const earlier = graded.trainees
    .filter((one) => one.name === name && one.attempt !== attempt)
    .map((one) => {
      const mark =
        one.grade === null ? '' : ` ${markText(one.grade.mark.share, graded.marking.passMark)}`;
      return `${one.attempt}:${mark} ${verdictText(verdictOf(one))}`;
    });
  const car = carName(graded);
  const parts = [
    ...(car === '' ? [] : [car]),
    `read from ${shownFile(file)}`,
    ...(date === null ? [] : [date]),
    ...(graded.assessor === null ? [] : [`reference by ${graded.assessor}`]),
    ...(attempts === 1 ? [] : [`attempt ${attempt} of ${attempts} (${earlier.join(', ')})`]),
  ];
  return joined(parts, '; ', '.');
}

const notReadBlocks = ({ notRead }: GradedTrainee): readonly Block[] => [
  list(
    'Why it cannot be read',
    notRead.map(({ at, message, hint }) => {
      const line = at?.line === undefined ? '' : `line ${at.line}: `;
      return `${line}${message}${hint === undefined ? '' : `: ${hint}`}`;
    }),
  ),
];

/** The gauge before any panel: those that it puts off read right once it is right. */
function whatToDo(grade: Grade, unit: LengthUnit, against: string): readonly Block[] {
  const bias = hintedBias(grade);
  const items = [
    ...grade.reasons.map((reason) => reasonText(reason, unit)),
    ...panelsWorkedOver(grade, against).map(({ said }) =>
      tell(says`${said}; read it again before any of it comes off (that takes no marks)`, unit),
    ),
  ];
  if (items.length === 0) {
    const text = bias === null ? 'nothing to mend.' : `${BIAS_HINT}; nothing else to mend.`;
    return [paragraph('What to do', text)];
  }
  const first =
    bias === null
      ? []
      : [
          tell(
            says`first ${BIAS_HINT}: you read ${biasText(bias, against)}; then what follows`,
            unit,
          ),
        ];
  return [list('What to do', [...first, ...items])];
}
