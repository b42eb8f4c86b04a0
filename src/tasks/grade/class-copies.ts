/** Surveys of a class that have their values from one another, or that are one and the same, and how each is told. */
import { at } from '../../base/at.ts';
import { counted } from '../../base/counted.ts';
import { figure } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { copiedPanels } from '../../training/copied-panels.ts';
import { copiedSurveys } from '../../training/copied-surveys.ts';
import { followedSurveys } from '../../training/followed-surveys.ts';
import { faceReadings, type GradedSurvey } from '../../training/graded-survey.ts';
import { haveSameReadings } from '../../training/identical-surveys.ts';
import { keyedLeftOut } from '../../training/keyed-left-out.ts';
import { chanceAlike, pointsInCommon } from '../../training/points-in-common.ts';
import { type Reason, reason } from '../../training/reasons.ts';
import type { Reference } from '../../training/reference.ts';
import type { TrainingModel } from '../../training/training-model.ts';
import type { Entry } from './grade-hand-in.ts';
import type { Apart, CopiedSurveys } from './grade-request.ts';

export type Surveyed = { readonly entry: Entry; readonly survey: GradedSurvey };

/** Two surveys one of which has its values from the other, by values that are the same or by how near they lie. */
type Copy = Pick<CopiedSurveys, 'same' | 'of' | 'apart' | 'identical' | 'whole'> & {
  readonly surveys: readonly GradedSurvey[];
};

/** The expert’s survey is one to copy from as well. Those that follow another are told where they are no plain copy. */
export function copiesAmong(
  surveys: readonly Surveyed[],
  ofClass: readonly GradedSurvey[],
  reference: Reference,
  model: TrainingModel,
): readonly Copy[] {
  const experts = reference.expert === null ? [] : [reference.expert];
  const all = [...surveys.map(({ survey }) => survey), ...experts];
  const bare = all.map((one) => keyedLeftOut(one, reference, model.slips));
  const identical = identicalPairs(surveys, experts, model);
  const plain = copiedSurveys(bare, model).map(({ surveys: places, same, of }): Copy => {
    const two = places.map((place) => at(all, place));
    return { surveys: two, same, of, apart: null, identical: null, whole: null };
  });
  const panels = copiedPanels(bare, model).map(({ surveys: places, ...whole }): Copy => {
    const two = places.map((place) => at(all, place));
    return { surveys: two, ...sameValues(two), apart: null, identical: null, whole };
  });
  const latest = bare.filter((_, place) => [...ofClass, ...experts].includes(at(all, place)));
  const followed = followedSurveys(latest, model).map(
    ({ surveys: two, same, of, apart, usual, offset }): Copy => ({
      ...{ same, of, identical: null, whole: null, apart: { sd: apart, usual, offset } },
      surveys: two.map((one) => at(all, bare.indexOf(one))),
    }),
  );
  // Where all is the same, names of panels say no more.
  const ofPanels = panels.filter(({ same, of }) => same < of);
  return [...identical, ...ofPanels, ...plain, ...followed].filter(isFirstOfPair);
}

function sameValues(two: readonly GradedSurvey[]): Pick<Copy, 'same' | 'of'> {
  const points = pointsInCommon(at(two, 0), at(two, 1));
  return { same: points.filter(({ one, other }) => one === other).length, of: points.length };
}

/** A pair is told once, by what says most. */
const isFirstOfPair = ({ surveys }: Copy, place: number, all: readonly Copy[]): boolean =>
  all.findIndex((copy) => surveys.every((one) => copy.surveys.includes(one))) === place;

/** Surveys of the class whose readings are those of one before them. */
export function readAgain(
  surveys: readonly Surveyed[],
  model: TrainingModel,
): ReadonlySet<GradedSurvey> {
  const pairs = identicalPairs(surveys, [], model);
  return new Set(pairs.flatMap(({ surveys: two }) => two.slice(1)));
}

function identicalPairs(
  surveys: readonly Surveyed[],
  experts: readonly GradedSurvey[],
  { copies: { samePoints: leastReadings }, slips: { falseAlarm } }: TrainingModel,
): readonly Copy[] {
  const all: readonly { readonly entry?: Entry; readonly survey: GradedSurvey }[] = [
    ...surveys,
    ...experts.map((survey) => ({ survey })),
  ];
  return all.flatMap((one, i) =>
    all.slice(i + 1).flatMap((other): readonly Copy[] => {
      const identical = isSameFile(one.entry, other.entry)
        ? 'file'
        : haveSameReadings(one.survey, other.survey, leastReadings)
          ? 'readings'
          : null;
      if (identical === null) return [];
      const points = pointsInCommon(one.survey, other.survey);
      // On even film and a coarse display honest hands write the same file.
      if (chanceAlike(points) ** points.length >= falseAlarm) return [];
      const two = [one.survey, other.survey];
      return [{ surveys: two, ...sameValues(two), apart: null, identical, whole: null }];
    }),
  );
}

/** By checksum, under two names; two who share one file are no copies for that. */
const isSameFile = (one: Entry | undefined, other: Entry | undefined): boolean =>
  one !== undefined &&
  other !== undefined &&
  one.file !== other.file &&
  one.handedIn?.sha256 === other.handedIn?.sha256;

/** Neither side is named to the other, and neither is told to be the one who took them. Of several others one sentence. */
export function copyReasons(
  survey: GradedSurvey,
  copies: readonly Copy[],
  expert: GradedSurvey | undefined,
): readonly Reason[] {
  const own = copies.filter((copy) => copy.surveys.includes(survey));
  if (own.length === 0) return [];
  const mend = `each reads the car alone, and writes what the gauge shows; if these are your own readings, say so to your trainer`;
  const texts = own.map((copy, i) => {
    const fromExpert = expert !== undefined && copy.surveys.includes(expert);
    const isAgain = own
      .slice(0, i)
      .some((one) => expert === undefined || !one.surveys.includes(expert));
    const others = isAgain ? 'yet another survey of it' : 'another survey of this class';
    const other = fromExpert ? 'the reference' : others;
    const isSaid = own.slice(0, i).some((one) => kindOf(one) === kindOf(copy));
    return (isSaid ? saidBriefly : said)(seenBy(survey, copy), other);
  });
  const panels = own.flatMap(({ whole }) => (whole?.panels ?? []).map(({ id }) => id));
  return [
    reason('survey-copied', says`${listedSentences(texts)}: ${mend}`, {
      panels: [...new Set(panels)],
      at: faceReadings(survey)[0],
    }),
  ];
}

const listedSentences = (texts: readonly Sentence[]): Sentence =>
  texts.reduce((all, one) => says`${all}; ${one}`);

/** A steady difference is nothing to go by, and whoever looks at the two will see it. */
export const aside = ({ sd, offset }: Apart, side: string): Sentence =>
  Math.abs(offset) > sd ? says`, ${um(Math.abs(offset))}${side} all over aside` : says``;

const seenBy = (survey: GradedSurvey, copy: Copy): Copy => {
  const { apart, surveys } = copy;
  return apart === null || surveys[0] === survey
    ? copy
    : { ...copy, apart: { ...apart, offset: micrometres(-apart.offset) } };
};

const kindOf = ({ apart, identical, whole }: Copy): string =>
  identical ?? (whole !== null ? 'panels' : apart === null ? 'values' : 'near');

/** Of a further survey what the sentence before says already is left out. */
function saidBriefly(copy: Copy, other: string): Sentence {
  const { same, of, apart, identical, whole } = copy;
  if (identical !== null || whole !== null) return said(copy, other);
  return apart === null
    ? says`${figure(same)} of ${figure(of)} those of ${other}`
    : says`at ${figure(of)} points they lie ${um(apart.sd)} from those of ${other}${aside(apart, apart.offset > 0 ? ' more' : ' less')} (expected: ${um(apart.usual)})`;
}

function said({ same, of, apart, identical, whole }: Copy, other: string): Sentence {
  if (identical === 'file') return says`your file is, byte by byte, that of ${other}`;
  if (identical === 'readings') {
    return says`all your readings are those of ${other}, in the same order`;
  }
  if (whole !== null) {
    const how =
      whole.within === 0
        ? says`figure for figure and in the same order`
        : says`changed by ${um(whole.within)} at the most, and in the same order`;
    return says`all ${figure(whole.readings)} readings on ${panelsNamed(whole)} are those of ${other}, ${how}`;
  }
  return apart === null
    ? says`${figure(same)} of ${figure(of)} values are those of ${other}, more than two who measure have in common`
    : says`at ${figure(of)} points your values lie ${um(apart.sd)} (SD) from those of ${other}${aside(apart, apart.offset > 0 ? ' more' : ' less')}, nearer than two who measure come (${um(apart.usual)} is expected of the two)`;
}

/** `3 panels (roof, boot lid and bonnet)`, by all their names: each is to be looked at. */
export const panelsNamed = ({ panels }: NonNullable<CopiedSurveys['whole']>): string =>
  `${counted(panels.length, 'panel')} (${panels.map(({ name }) => name).join(', ')})`;
