/** What each trainee has to mend, in a line. */
import { textIn } from '../../base/remark.ts';
import { says, tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { Reason, ReasonCode } from '../../training/reasons.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import {
  attemptName,
  BIAS_HINT,
  becauseText,
  biasText,
  hintedBias,
  voidText,
} from './grade-words.ts';
import { panelsWorkedOver } from './panels-worked-over.ts';

/** What stands in the table already, and what makes no difference to the verdict. */
const QUIET: readonly ReasonCode[] = [
  'few-points',
  'not-repeated',
  'panel-doubtful',
  'panel-extra',
  'low-spot-missed',
  'too-few-to-tell',
];

const MOST_TOLD = 2;

/** `against`: what the class is held against. */
export function told(
  trainee: GradedTrainee,
  { unit, verbose }: { readonly unit: LengthUnit; readonly verbose: boolean },
  against: string,
): readonly Block[] {
  const { grade, notRead } = trainee;
  if (grade === null) {
    const [first] = notRead.filter(({ severity }) => severity !== 'note');
    const at = first?.at?.line === undefined ? '' : ` (line ${first.at.line})`;
    return [paragraph(trainee.name, `not read: ${first?.message ?? 'no reading'}${at}`)];
  }
  const all = verbose ? grade.reasons : grade.reasons.filter(({ code }) => !QUIET.includes(code));
  const [hint, over] = [biasHint(grade, unit, against), panelsWorkedOver(grade, against)];
  if ([...all, ...grade.grounds, ...hint, ...over].length === 0) return [];
  const shownReasons = all.slice(0, verbose ? all.length : MOST_TOLD);
  const shownOver = over.slice(0, verbose ? over.length : MOST_TOLD);
  const more = all.length - shownReasons.length + over.length - shownOver.length;
  const counted = voidText(grade);
  const texts = [
    ...(counted === '' ? [] : [counted]),
    ...hint,
    ...shownReasons.map((one) => reasonText(one, unit)),
    ...shownOver.map(({ said }) => tell(says`${said}; that takes no marks`, unit)),
    ...(more === 0 ? [] : [`and ${more} more on the sheet of ${trainee.name}`]),
  ];
  const said = texts.length === 0 ? [] : [joined(texts, '; ')];
  return [paragraph(attemptName(trainee), joined([becauseText(grade), ...said], ': '))];
}

/** It makes no difference to mark and verdict, and would to a car: the gauge before anything that it puts off. */
function biasHint(grade: Grade, unit: LengthUnit, against: string): readonly string[] {
  const bias = hintedBias(grade);
  return bias === null
    ? []
    : [
        tell(
          says`reads ${biasText(bias, against)}, which is more than chance and no more than is allowed: ${BIAS_HINT}`,
          unit,
        ),
      ];
}

/** They are about all of the file: a line says nothing. */
const OF_THE_WHOLE: readonly ReasonCode[] = [
  'car-off',
  'panels-unread',
  'few-points',
  'not-repeated',
  'repeats-alike',
  'too-regular',
  'survey-copied',
  'gauge-drift',
  'marks-off',
  'not-following',
  'too-few-to-tell',
];

/** With the line of the file, where it shows. */
export function reasonText(reason: Reason, unit: LengthUnit): string {
  const text = textIn(reason, unit);
  const nowhere = reason.line === null || OF_THE_WHOLE.includes(reason.code);
  return nowhere ? text : `${text} (line ${reason.line})`;
}
