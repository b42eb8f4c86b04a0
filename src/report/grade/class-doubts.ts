/** What is to be cleared up before anybody is judged: a reference in doubt, values too like another’s, too few points to tell. */
import { counted } from '../../base/counted.ts';
import { figure } from '../../base/rounding.ts';
import { says, tell, um } from '../../base/sentence.ts';
import { sum } from '../../base/sum.ts';
import type { LengthUnit } from '../../base/units.ts';
import { aside, panelsNamed } from '../../tasks/grade/class-copies.ts';
import type { CopiedSurveys, GradedClass } from '../../tasks/grade/grade-request.ts';
import { together } from '../../training/reasons.ts';
import { showsScatter } from '../../training/too-regular.ts';
import { joined, ofEach } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { attemptName, isOfOne } from './grade-words.ts';

/** First of all: whoever fails by a reference that is wrong has failed nothing. */
export function unlikeBlocks({ unlike, marksUnlike }: GradedClass): readonly Block[] {
  const marks = marksUnlike
    ? [
        paragraph(
          'Marks in doubt',
          'the values of most of the class do not follow the marks of the reference: look whether its marks have the names and places that the class was told, before anybody is asked.',
        ),
      ]
    : [];
  return unlike.length === 0
    ? marks
    : [
        ...marks,
        paragraph(
          'Reference in doubt',
          joined(
            [
              `most of the class agree with each other and not with the reference on ${counted(unlike.length, 'panel')} (${together(unlike.map(({ name }) => name))})`,
              'read these again before anybody fails by them, or grade with --consensus in its place',
            ],
            ': ',
            '.',
          ),
        ),
      ];
}

export function copiedBlocks({ copied }: GradedClass, unit: LengthUnit): readonly Block[] {
  const twice = copied.filter(isOfOne);
  const alike = copied.filter((pair) => !isOfOne(pair));
  return [...alikeBlocks(alike, unit), ...twiceBlocks(twice)];
}

function copiedText(
  { trainees, fromReference, same, of, apart, identical, whole }: CopiedSurveys,
  unit: LengthUnit,
): string {
  const names = [...trainees, ...(fromReference ? ['the reference'] : [])].join(' and ');
  if (identical === 'file') return `${names} are the same file, byte by byte`;
  if (identical === 'readings') return `${names} have the same readings in the same order`;
  if (whole !== null) {
    const all = says`${names} have all ${figure(whole.readings)} readings of ${panelsNamed(whole)} in common`;
    return tell(
      whole.within === 0
        ? says`${all}, figure for figure`
        : says`${all}, changed by ${um(whole.within)} at the most`,
      unit,
    );
  }
  return apart === null
    ? `${names} have ${same} of ${of} values in common`
    : tell(
        says`${names} differ by ${um(apart.sd)} (SD of ${of} points)${aside(apart, '')}, two who measure by about ${um(apart.usual)}`,
        unit,
      );
}

const twiceBlocks = (twice: readonly CopiedSurveys[]): readonly Block[] =>
  twice.length === 0
    ? []
    : [
        paragraph(
          'Handed in twice',
          ofEach(
            twice.map((pair) => `${pair.trainees[0]} (${twiceText(pair)})`),
            ': it is no second attempt.',
          ),
        ),
      ];

const twiceText = ({ same, of, identical, whole }: CopiedSurveys): string => {
  if (identical === 'file') return 'the same file under two names';
  if (whole !== null)
    return `all ${whole.readings} readings of ${panelsNamed(whole)} are the same${whole.within === 0 ? '' : ' but for the last figure'}`;
  return identical === 'readings'
    ? 'the same readings in the same order'
    : `${same} of ${of} values are the same in both`;
};

const alikeBlocks = (alike: readonly CopiedSurveys[], unit: LengthUnit): readonly Block[] =>
  alike.length === 0
    ? []
    : [
        paragraph(
          'Too alike',
          joined(
            [
              joined(
                alike.map((pair) => copiedText(pair, unit)),
                '; ',
                '.',
              ),
              'Two who measure hardly ever agree so closely: one has the other’s values, or neither read the car.',
              'Ask them; until then nobody loses marks for it.',
            ],
            ' ',
          ),
        ),
      ];

/** What is usual of two is learned from the others; values that are the same are looked for in any class. */
export function fewToCompareBlocks({
  trainees,
  reference,
  settings,
}: GradedClass): readonly Block[] {
  const read = trainees.filter(
    ({ grade, attempt, attempts }) => grade !== null && attempt === attempts,
  );
  const isExpert = reference.kind === 'expert';
  const surveys = read.length + (isExpert ? 1 : 0);
  const least = settings.models.training.copies.others + 2;
  if (read.length < 2 || surveys >= least) return [];
  const among = isExpert ? ', the reference among them' : '';
  return [
    paragraph(
      'Copies',
      `those with the same values are looked for, those with changed values are not: that takes ${least} surveys${among}, and here are ${surveys}.`,
    ),
  ];
}

/** Whose values nobody can tell from made-up ones: no blunder, and no proof that there is none. */
export function tooFewBlocks({ trainees, reference }: GradedClass): readonly Block[] {
  const few = trainees.filter(({ grade }) =>
    grade?.reasons.some(({ code }) => code === 'too-few-to-tell'),
  );
  if (few.length === 0) return [];
  const panels = [...reference.panels.values()];
  if (!panels.some(showsScatter)) {
    return [
      paragraph(
        'Reference of one point a panel',
        'it shows no scatter, so nobody can tell by it whether values were read at the car or made up: read several points a panel next time.',
      ),
    ];
  }
  const [asMany, fewer] = parted(
    few,
    ({ grade }) => reference.kind === 'expert' && grade?.coverage.share === 1,
  );
  const points = counted(sum(panels.map(({ count }) => count)), 'point');
  const ofReference = paragraph(
    'Reference of few points',
    `${points} on ${counted(panels.length, 'panel')} are too few to tell by their scatter whether values were read at the car or made up: read more panels, at more points, for the next reference.`,
  );
  const whose =
    fewer.length === trainees.length
      ? 'everybody’s'
      : `those of ${together(fewer.map(attemptName))}`;
  const ofTrainees = paragraph(
    'Too few points',
    `to tell by their scatter whether values were read at the car or made up: ${whose}.`,
  );
  return [
    ...(asMany.length === 0 ? [] : [ofReference]),
    ...(fewer.length === 0 ? [] : [ofTrainees]),
  ];
}

const parted = <One>(all: readonly One[], isFirst: (one: One) => boolean) =>
  [all.filter(isFirst), all.filter((one) => !isFirst(one))] as const;
