/** What is to be done before any panel where no test spot has shown how the paint gives way. */
import type { PanelPlan, PlannedStep } from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import type { Block } from '../model.ts';
import { combinationWords } from './step-words.ts';

/**
 * With a place for each figure that a plan by test spots wants. What a panel begins with is tried: a finish after it
 * takes too little for any gauge to tell.
 */
export function spotFirst(worked: readonly PanelPlan[]): readonly Block[] {
  const unproved = worked.filter(({ provisional }) => provisional);
  const mildest = unproved
    .flatMap(({ steps, local }) => (steps[0] === undefined ? (local[0]?.steps ?? []) : [steps[0]]))
    .reduce<PlannedStep | undefined>(milder, undefined);
  if (mildest === undefined) return [];
  const { combination, sets } = mildest;
  const words = combinationWords(combination);
  return [
    {
      kind: 'ticks',
      label: 'Test spot first',
      note: 'nothing has shown yet how this paint gives way',
      items: [
        tick(
          `mark a place on ${bestFor(unproved)}, ${MARKS} points on it; read them, wiped and cool: mean ${BLANK}`,
        ),
        {
          text: `work it, wipe and look after each set: up to ${sets}×\u00a0${words}, the mildest that a panel of this card begins with`,
          boxes: sets,
          ...(sets === 1 ? {} : { apart: setsApart(sets, words) }),
        },
        tick(`sets worked: ${BLANK}, marks gone: ${BLANK} %`),
        tick(`read them again, cool: mean ${BLANK} off: ${BLANK}`),
        tick('have the plan made anew with these figures (--spots, a row a point) before going on'),
      ],
    },
  ];
}

const setsApart = (sets: number, words: string): readonly string[] =>
  Array.from(
    { length: sets },
    (_, i) => `work it, set ${i + 1} of up to ${sets}: ${words}, wipe, look`,
  );

/** Of sound film the panel whose plan leaves most of what may go bears it best: what it takes there is gone from it. */
function bestFor(unproved: readonly PanelPlan[]): string {
  const best = unproved.filter(isSound).toSorted((a, b) => toSpare(b) - toSpare(a))[0];
  return best === undefined
    ? 'a panel of this paint'
    : `${partName(best.survey)}, which has most to spare`;
}

const isSound = ({ survey }: PanelPlan): boolean => survey.condition === 'original';

const toSpare = ({ survey, removal }: PanelPlan): number => survey.budget - removal.median;

/** As many as tell a loss of some 2 µm. */
const MARKS = 5;

export const BLANK = '______';

const tick = (text: string) => ({ text, boxes: 1 });

const milder = (one: PlannedStep | undefined, other: PlannedStep): PlannedStep =>
  one !== undefined && one.combination.rung <= other.combination.rung ? one : other;
