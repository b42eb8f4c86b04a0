/** Small words of grading, as the pages and the sheets say them. */
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, thicknessText, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CopiedSurveys, GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { CarBias } from '../../training/car-bias.ts';
import type { Found } from '../../training/found.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { VerdictGround } from '../../training/overall-verdict.ts';
import { together } from '../../training/reasons.ts';
import type { ScoreVerdict } from '../../training/scores.ts';
import type { Criterion } from '../../training/training-model.ts';
import type { VoidPanel } from '../../training/void-panels.ts';

export type TraineeVerdict = ScoreVerdict | 'not-read';

export const verdictOf = ({ grade }: Pick<GradedTrainee, 'grade'>): TraineeVerdict =>
  grade?.verdict ?? 'not-read';

export const verdictText = (verdict: TraineeVerdict): string => verdict.replace('-', ' ');

/** A trainee with the attempt, where there are several. */
export const attemptName = ({ name, attempt, attempts }: GradedTrainee): string =>
  attempts === 1 ? name : `${name} (${attempt})`;

export const percentText = (share: number): string => `${shown(100 * share, 0)} %`;

/** An exact interval of a share, rounded outward: what is printed holds all of it. */
export const intervalText = ([low, high]: readonly [number, number]): string =>
  `${Math.floor(100 * low)} to ${Math.ceil(100 * high)} %`;

/** A mark; with as many figures as tell it from the pass mark. */
export function markText(share: number, passMark: number): string {
  const digits = [0, 1, 2].find(
    (some) =>
      Math.abs(share - passMark) < 1e-9 || shown(100 * share, some) !== shown(100 * passMark, some),
  );
  return `${shown(100 * share, digits ?? 2)} %`;
}

/** A difference with its sign: +1.2, −0.4. */
export function signedText(value: number, unit: LengthUnit, digits = 1): string {
  const text = thicknessText(value, unit, digits);
  return /[1-9]/.test(text) && value > 0 ? `+${text}` : text;
}

/** A number with the sign that figures of pages have. */
export const signed = (value: number, digits = 1): string => shown(value, digits).replace('-', '−');

export const foundText = ({ found, of }: Found): string => (of === 0 ? '–' : `${found}/${of}`);

const GROUNDS: Readonly<Record<VerdictGround, string>> = {
  'panels-off': 'two panels or more are off',
  'car-off': 'the mean over the car is off',
  'under-pass-mark': 'the mark is under the pass mark',
  'one-panel-off': 'one panel is off',
  'panels-doubtful': 'two panels or more are questionable',
  'car-doubtful': 'the mean over the car is off by a questionable amount',
  'gauge-drift': 'the gauge drifts',
  'marks-off': 'some marks are read off on panel after panel',
  'not-following': 'values do not follow the panels',
  slip: 'there is a blunder in the readings',
  copied: 'values are too like another’s, which is to be cleared up',
  'repair-missed': 'a repair was missed',
  'panels-unread': 'two panels or more were not read',
  'half-unread': 'half of the car was not read, or at one point a panel',
};

/** `questionable, as one panel is off`; of a satisfactory survey the word alone. */
export const becauseText = ({ verdict, grounds }: Pick<Grade, 'verdict' | 'grounds'>): string =>
  grounds.length === 0
    ? verdict
    : `${verdict}, as ${together(grounds.map((ground) => GROUNDS[ground]))}`;

/** What a class is held against: nobody’s survey is the reference of a consensus. */
export const heldAgainst = ({ reference }: Pick<GradedClass, 'reference'>): string =>
  reference.kind === 'expert' ? 'the reference' : 'the class';

export const criterionNames = (graded: Pick<GradedClass, 'reference'>): CriterionNames => ({
  accuracy: `panels near ${heldAgainst(graded)}`,
  coverage: 'points read',
  lowPoints: 'low spots found',
  repairs: 'repairs found',
  repeatability: 'repeats close together',
});

type CriterionNames = Readonly<Record<Criterion, string>>;

/** One trainee handed in twice: no second attempt, and no copy of another’s. */
export const isOfOne = ({ trainees }: Pick<CopiedSurveys, 'trainees'>): boolean =>
  trainees.length === 2 && trainees[0] === trainees[1];

/** `FH-1042, Orrindale Meridew 6 1988`, as far as it is known. */
export function carName({ vehicle, identity }: Pick<GradedClass, 'vehicle' | 'identity'>): string {
  const make = [identity?.make, identity?.model, identity?.year].filter(Boolean).join(' ');
  return [vehicle, make].filter((part) => part !== null && part !== '').join(', ');
}

type Voided = Pick<Grade, 'voided' | 'scores' | 'mark' | 'markIfSound' | 'reasons'>;

/** `counted as not read: roof; as off, for a slip: bonnet (scored as it stands, …)`; nothing where none is void. */
export function voidText(grade: Voided): string {
  const { voided, scores, mark, markIfSound } = grade;
  if (markIfSound === null) return '';
  const names = (wanted: CountedAs): string => {
    const panels = voided
      .filter((one) => countedAs(one, grade) === wanted)
      .map(({ panel }) => panel.name);
    const isAll = panels.length > 1 && panels.length === scores.length;
    return isAll ? `all ${panels.length} panels` : together(panels);
  };
  const parts = COUNTED_AS.map(([as, what]) => ({ what, panels: names(as) }))
    .filter(({ panels }) => panels !== '')
    .map(({ what, panels }) => `${what}: ${panels}`);
  const [own, sound] = [mark, markIfSound].map(({ share }) => percentText(share));
  const how = voided.every((one) => countedAs(one, grade) === 'turned')
    ? 'numbered as the marks are'
    : 'scored as it stands';
  const otherwise = own === sound ? '' : ` (${how}, the mark would be ${sound})`;
  return `counted ${parts.join('; ')}${otherwise}`;
}

/** Of a panel that counts as turned nobody may know whether it is not another one. */
export type CountedAs = VoidPanel['as'] | 'either';

export function countedAs(
  { panel, as }: VoidPanel,
  { reasons }: Pick<Grade, 'reasons'>,
): CountedAs {
  const isEither = reasons.some(
    ({ code, panels }) => code === 'swapped-or-turned' && panels.includes(panel.id),
  );
  return as === 'turned' && isEither ? 'either' : as;
}

const COUNTED_AS: readonly (readonly [CountedAs, string])[] = [
  ['unread', 'as not read'],
  ['wrong', 'as off, for a slip'],
  ['turned', 'as questionable, for points numbered otherwise than the marks'],
  ['either', 'as questionable, for names swapped or points numbered otherwise'],
];

/** In units of σ_pt, half of what makes a bias questionable: hands and good gauges differ by less. */
const BIAS_TOLD_FROM = 1;

/**
 * A bias that is no chance and no fault either, and large enough to matter: worth a look at the gauge, and costs nothing.
 * One that is a fault is told as that, as is a gauge that drifts or a hand that reads off at some marks.
 */
export function hintedBias({ bias, reasons }: Pick<Grade, 'bias' | 'reasons'>): CarBias | null {
  if (bias === null || bias.verdict !== 'satisfactory' || bias.low * bias.high <= 0) return null;
  const isTold = reasons.some(({ code }) => code === 'gauge-drift' || code === 'marks-off');
  return isTold || Math.abs(bias.z) < BIAS_TOLD_FROM ? null : bias;
}

export const BIAS_HINT = 'check the gauge’s zero and a shim';

/** `6.0 µm more than the reference all over the car` */
export const biasText = ({ mean }: CarBias, against: string): Sentence =>
  says`${um(Math.abs(mean))} ${mean > 0 ? 'more' : 'less'} than ${against} all over the car`;
