/** What all surveys of a class show together: copies, what was found, which panels were hard, how far they agree. */

import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { says, tell, um } from '../../base/sentence.ts';
import { median } from '../../base/stats/summary.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CopiedSurveys, GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { ClassPanel, ClassView, FoundByClass } from '../../training/class-view.ts';
import { together } from '../../training/reasons.ts';
import { type Block, paragraph } from '../model.ts';
import { attemptName, percentText, scoreText } from './grade-words.ts';

function copiedText(
  { trainees, fromReference, same, of, apart }: CopiedSurveys,
  unit: LengthUnit,
): string {
  const names = [...trainees, ...(fromReference ? ['the reference'] : [])].join(' and ');
  return apart === null
    ? `${names} have ${same} of ${of} values in common`
    : tell(
        says`${names} differ by ${um(apart.sd)} (SD of ${of} points), two of this class usually by ${um(apart.usual)}`,
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
          `${twice.map(({ trainees: [name], same, of }) => `${name} (${same} of ${of} values are the same in both)`).join('; ')}: the same file was given twice, or one with its values; it is no second attempt.`,
        ),
      ];

const alikeBlocks = (alike: readonly CopiedSurveys[], unit: LengthUnit): readonly Block[] =>
  alike.length === 0
    ? []
    : [
        paragraph(
          'Too alike',
          `${alike.map((pair) => copiedText(pair, unit)).join('; ')}. Two who measure hardly ever agree so closely: one has the other’s values, or neither read the car. Ask them.`,
        ),
      ];

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

/** How many of the low spots and repairs the class found, all surveys together. */
export function foundBlocks({ lowSpots, repairs }: ClassView): readonly Block[] {
  const part = (what: string, { found, of, interval }: FoundByClass): readonly string[] =>
    interval === null
      ? []
      : [
          `${found} of ${of} ${what} (${shown(100 * interval[0], 0)} to ${percentText(interval[1])})`,
        ];
  const parts = [...part('low spots', lowSpots), ...part('repaired panels', repairs)];
  return parts.length === 0
    ? []
    : [paragraph('Found', `${parts.join('; ')}, all surveys together; 95 % intervals, exact.`)];
}

const MOST_HARD = 3;

/** Of fewer, what is hard for one is no matter of the panel. */
const LEAST_READ_BY = 3;

/**
 * Those that fewer read satisfactorily than is usual on this car: who is off everywhere makes no panel hard. Where
 * there is none, the one that scatters most.
 */
export function hardPanels(all: readonly ClassPanel[], unit: LengthUnit): readonly Block[] {
  const panels = all.filter(({ count }) => count >= LEAST_READ_BY);
  const shares = panels.flatMap(({ satisfactory }) => satisfactory ?? []);
  const usual = shares.length === 0 ? 1 : median(shares);
  const wrong = panels
    .flatMap(({ reference, satisfactory, count }) =>
      satisfactory === null ? [] : [{ name: reference.panel.name, satisfactory, count }],
    )
    .filter(({ satisfactory }) => satisfactory < usual)
    .sort((a, b) => a.satisfactory - b.satisfactory);
  if (wrong.length > 0) {
    const names = wrong
      .slice(0, MOST_HARD)
      .map(
        ({ name, satisfactory, count }) =>
          `${name} (${Math.round(satisfactory * count)} of ${count})`,
      );
    return [paragraph('Hard panels', `fewest satisfactory on ${names.join(', ')}`)];
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
export function conditionBlocks({ view, trainees }: GradedClass): readonly Block[] {
  if (view.conditions === null) return [];
  const { of, alike, kappa } = view.conditions;
  const beyond = kappa === null ? '' : `, kappa ${scoreText(kappa, 2)}`;
  return [
    paragraph(
      'Conditions',
      `${alike} of ${counted(of, 'panel')} as the reference says, all surveys together (${percentText(alike / of)}${beyond})${fewestAlike(trainees)}.`,
    ),
  ];
}

/** `; fewest: dov, 2 of 3`, with everybody who shares that place. */
function fewestAlike(trainees: readonly GradedTrainee[]): string {
  const own = trainees
    .filter(({ attempt, attempts }) => attempt === attempts)
    .flatMap(({ name, grade }) =>
      grade === null || grade.conditions === null ? [] : [{ name, ...grade.conditions }],
    );
  const share = ({ alike, of }: (typeof own)[number]): number => alike / of;
  const least = Math.min(...own.map(share));
  const fewest = own.filter((one) => share(one) === least);
  const [first] = fewest;
  if (first === undefined || least === 1 || fewest.length === own.length) return '';
  const ofThem = fewest.every(({ of }) => of === first.of)
    ? `${first.alike} of ${first.of}`
    : percentText(least);
  return `; fewest: ${together(fewest.map(({ name }) => name))}, ${ofThem}${fewest.length > 1 ? ' each' : ''}`;
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
  const share =
    studyVariation === null ? '' : `; R&R is ${percentText(studyVariation)} of the study variation`;
  const classes = ndc === null ? '' : `, ndc ${ndc} by ANOVA`;
  return [
    paragraph(
      'Gauge R&R',
      `${counts.parts} ${parts}, ${counts.trainees} trainees${without}, ${counts.trials} readings each: repeatability ${one(sd.ev)}${within}, reproducibility ${one(sd.av)}, interaction ${interaction}${share}${classes}.`,
    ),
  ];
}

const WHY_LEFT_OUT: Readonly<Record<GradedClass['leftOut'][number]['why'], string>> = {
  slip: 'with slips in the readings',
  'half-unread': 'with half of the car unread',
  'repeats-alike': 'with repeats all alike',
};

/** ` (without caja and dov, with slips in the readings)` */
function leftOutText(leftOut: GradedClass['leftOut']): string {
  const groups = groupBy(leftOut, ({ why }) => why);
  const parts = [...groups].map(
    ([why, some]) => `${together(some.map(({ trainee }) => trainee))}, ${WHY_LEFT_OUT[why]}`,
  );
  return parts.length === 0 ? '' : ` (without ${parts.join('; ')})`;
}
