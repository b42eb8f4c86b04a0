/** What all surveys of a class show together: copies, what was found, which panels were hard, how far they agree. */

import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CopiedSurveys, GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { FoundByClass } from '../../training/class-view.ts';
import { together } from '../../training/reasons.ts';
import { joined } from '../facts.ts';
import { type Block, type Facts, paragraph } from '../model.ts';
import { attemptName, percentText, scoreText } from './grade-words.ts';

/** Said of all of them, and so of each. */
const ofEach = (parts: readonly string[], said: string): Facts => ({
  text: `${parts.join('; ')}${said}`,
  facts: parts.map((part) => `${part}${said}`),
});

function copiedText(
  { trainees, fromReference, same, of, apart, identical }: CopiedSurveys,
  unit: LengthUnit,
): string {
  const names = [...trainees, ...(fromReference ? ['the reference'] : [])].join(' and ');
  if (identical === 'file') return `${names} are the same file, byte by byte`;
  if (identical === 'readings') return `${names} have the same readings in the same order`;
  return apart === null
    ? `${names} have ${same} of ${of} values in common`
    : tell(
        says`${names} differ by ${um(apart.sd)} (SD of ${of} points), two who measure by about ${um(apart.usual)}`,
        unit,
      );
}

export function copiedBlocks({ copied }: GradedClass, unit: LengthUnit): readonly Block[] {
  const twice = copied.filter(isOfOne);
  const alike = copied.filter((pair) => !isOfOne(pair));
  return [...alikeBlocks(alike, unit), ...twiceBlocks(twice)];
}

const isOfOne = ({ trainees }: CopiedSurveys): boolean =>
  trainees.length === 2 && trainees[0] === trainees[1];

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

const twiceText = ({ same, of, identical }: CopiedSurveys): string => {
  if (identical === 'file') return 'the same file under two names';
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
export function tooFewBlocks({ trainees }: GradedClass): readonly Block[] {
  const few = trainees.filter(({ grade }) =>
    grade?.reasons.some(({ code }) => code === 'too-few-to-tell'),
  );
  if (few.length === 0) return [];
  const whose =
    few.length === trainees.length ? 'everybody’s' : `those of ${together(few.map(attemptName))}`;
  return [
    paragraph(
      'Too few points',
      `to tell by their scatter whether values were read at the car or made up: ${whose}.`,
    ),
  ];
}

/** Two who handed in one file are one witness. */
const onceText = (copied: GradedClass['copied']): string =>
  copied.some((pair) => pair.identical !== null && pair.trainees.length === 2 && !isOfOne(pair))
    ? ', copies of one file once'
    : '';

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

/** How many of the low spots and repairs the class found, all surveys together. */
export function foundBlocks({
  view: { lowSpots, repairs },
  copied,
}: Pick<GradedClass, 'view' | 'copied'>): readonly Block[] {
  const part = (what: string, { found, of, interval }: FoundByClass): readonly string[] =>
    interval === null
      ? []
      : [
          `${found} of ${of} ${what} (${shown(100 * interval[0], 0)} to ${percentText(interval[1])})`,
        ];
  const parts = [...part('low spots', lowSpots), ...part('repaired panels', repairs)];
  return parts.length === 0
    ? []
    : [
        paragraph(
          'Found',
          ofEach(parts, `, all surveys together${onceText(copied)}; 95 % intervals, exact.`),
        ),
      ];
}

const MOST_HARD = 3;

type Hard = Pick<GradedClass, 'view' | 'settings'>;

/**
 * Those that fewer read satisfactorily than is usual of those who read them: who is off everywhere makes no panel hard. Where
 * there is none, the one that scatters most.
 */
export function hardPanels({ view, settings }: Hard, unit: LengthUnit): readonly Block[] {
  // Of fewer, what is hard for one is no matter of the panel.
  const { leastSurveys } = settings.models.training.class;
  const panels = view.panels.filter(({ count }) => count >= leastSurveys);
  const wrong = panels
    .flatMap(({ reference, satisfactory, usual, count }) =>
      satisfactory === null || usual === null || satisfactory >= usual
        ? []
        : [{ name: reference.panel.name, satisfactory, count }],
    )
    .sort((a, b) => a.satisfactory - b.satisfactory);
  if (wrong.length > 0) {
    const names = wrong.map(
      ({ name, satisfactory, count }) =>
        `${name} (${Math.round(satisfactory * count)} of ${count})`,
    );
    const shownNames = names.slice(0, names.length > MOST_HARD + 1 ? MOST_HARD : names.length);
    const more = names.length - shownNames.length;
    const rest = more === 0 ? '' : `, and fewer than usual on ${more} more`;
    return [paragraph('Hard panels', `fewest satisfactory on ${shownNames.join(', ')}${rest}`)];
  }
  const widest = panels
    .flatMap(({ reference, robust }) =>
      robust === null ? [] : [{ name: reference.panel.name, sd: robust.sd }],
    )
    .sort((a, b) => b.sd - a.sd);
  const [first] = widest;
  return first === undefined
    ? []
    : [
        paragraph(
          'Hard panels',
          `none; the class differs most on the ${first.name} (SD ${tell([um(first.sd)], unit)})`,
        ),
      ];
}

/** All surveys together, and who has the fewest right. */
export function conditionBlocks({ view, trainees, copied }: GradedClass): readonly Block[] {
  if (view.conditions === null) return [];
  const { of, alike, kappa } = view.conditions;
  const beyond = kappa === null ? '' : `, kappa ${scoreText(kappa, 2)}`;
  return [
    paragraph(
      'Conditions',
      joined(
        [
          `${alike} of ${counted(of, 'panel')} as the reference says, all surveys together${onceText(copied)} (${percentText(alike / of)}${beyond})`,
          ...fewestAlike(trainees),
        ],
        '; ',
        '.',
      ),
    ),
  ];
}

/** `fewest: dov, 2 of 3`, with everybody who shares that place. */
function fewestAlike(trainees: readonly GradedTrainee[]): readonly string[] {
  const own = trainees
    .filter(({ attempt, attempts }) => attempt === attempts)
    .flatMap(({ name, grade }) =>
      grade === null || grade.conditions === null ? [] : [{ name, ...grade.conditions }],
    );
  const share = ({ alike, of }: (typeof own)[number]): number => alike / of;
  const least = Math.min(...own.map(share));
  const fewest = own.filter((one) => share(one) === least);
  const [first] = fewest;
  if (first === undefined || least === 1 || fewest.length === own.length) return [];
  const ofThem = fewest.every(({ of }) => of === first.of)
    ? `${first.alike} of ${first.of}`
    : percentText(least);
  return [
    `fewest: ${together(fewest.map(({ name }) => name))}, ${ofThem}${fewest.length > 1 ? ' each' : ''}`,
  ];
}

export function gaugeRrBlocks(
  { view: { gaugeRr: rr }, leftOut }: GradedClass,
  unit: LengthUnit,
): readonly Block[] {
  const without = leftOutText(leftOut);
  if (rr === null) {
    return [
      paragraph(
        'Gauge R&R',
        `none: it takes two trainees with two readings or more at the same marks or panels${without}.`,
      ),
    ];
  }
  const { result, parts, counts } = rr;
  const { sd, studyVariation, ndc, pooled } = result;
  const one = (value: number): string => tell([um(value, 2)], unit);
  const within = parts === 'panels' ? ' (the film between points in it)' : '';
  const interaction = pooled ? 'not proved' : one(sd.int);
  const figures = [
    `repeatability ${one(sd.ev)}${within}`,
    `reproducibility ${one(sd.av)}`,
    `interaction ${interaction}`,
  ];
  const share =
    studyVariation === null ? [] : [`R&R is ${percentText(studyVariation)} of the study variation`];
  const classes = ndc === null ? [] : [`ndc ${ndc} by ANOVA`];
  return [
    paragraph(
      'Gauge R&R',
      joined(
        [
          `${counts.parts} ${parts}, ${counts.trainees} trainees${without}, ${counts.trials} readings each`,
          joined([joined([joined(figures, ', '), ...share], '; '), ...classes], ', ', '.'),
        ],
        ': ',
      ),
    ),
  ];
}

const WHY_LEFT_OUT: Readonly<Record<GradedClass['leftOut'][number]['why'], string>> = {
  slip: 'with slips in the readings',
  'made-up': 'with values that look made up',
  copied: 'with values too like another’s',
  'gauge-drift': 'with a gauge that drifts',
  'not-following': 'with values that do not follow the panels',
  'half-unread': 'with half of the car unread, or read at one point a panel',
  'repeats-alike': 'with repeats all alike',
  'few-marks': 'with few of its parts read twice',
};

/** ` (without caja and dov, with slips in the readings)` */
function leftOutText(leftOut: GradedClass['leftOut']): string {
  const groups = groupBy(leftOut, ({ why }) => why);
  const parts = [...groups].map(
    ([why, some]) => `${together(some.map(({ trainee }) => trainee))}, ${WHY_LEFT_OUT[why]}`,
  );
  return parts.length === 0 ? '' : ` (without ${parts.join('; ')})`;
}
