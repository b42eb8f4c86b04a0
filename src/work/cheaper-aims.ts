/**
 * A further aim may come to less than the one before it: it may do without panels that it cannot finish, or get as
 * much from stronger steps in less time. Which of these it is, by comparing the two plans part by part.
 */
import { sum } from '../base/sum.ts';
import { type Minutes, minutes } from '../base/units.ts';
import { isTouched, isWorked, type PanelPlan, workedParts } from '../correction/plan/plan.ts';
import { strongestRung } from '../correction/removal/step.ts';
import { isZone } from '../film/survey.ts';
import type { Minor } from './money.ts';
import type { QuoteAim, QuoteOption } from './quote-option.ts';

export type CheaperAim = {
  readonly aim: QuoteAim;
  readonly than: QuoteAim;
  /** Of the price; null where one of the two has none, as it is then told by its hours. */
  readonly saved: Minor | null;
  /** Of what is charged; under 0 where it takes longer. */
  readonly timeSaved: Minutes;
  /** What the aim before it works, and it does not. */
  readonly left: readonly PanelPlan[];
  /** As it works them: parts whose strongest step is stronger, and whose machine runs shorter. */
  readonly stronger: readonly PanelPlan[];
  /** The same, with no stronger step. */
  readonly quicker: readonly PanelPlan[];
  /** Combinations that it need not set up; under 0 where it has more. */
  readonly fewerSetUps: number;
  /** Whether the aim before it ends with a step that leaves haze where this one, if it works there, does not. */
  readonly finer: boolean;
};

/** Each against the one before it; none where it costs as much or more. */
export const cheaperAims = (options: readonly QuoteOption[]): readonly CheaperAim[] =>
  options.flatMap((option, i) => {
    const before = options[i - 1];
    return before === undefined ? [] : cheaperAim(before, option);
  });

function cheaperAim(before: QuoteOption, option: QuoteOption): readonly CheaperAim[] {
  if (before.charged === null || option.charged === null) return [];
  const saved =
    before.priced === null || option.priced === null
      ? null
      : before.priced.total - option.priced.total;
  const timeSaved = minutes(before.charged - option.charged);
  if (saved === null ? timeSaved <= 0 : saved <= 0n) return [];
  const pairs = pairsOf(before, option);
  const quicker = pairs.filter(
    ([one, other]) => isWorked(other) && machineOf(other) < machineOf(one),
  );
  const isStronger = ([one, other]: Pair): boolean =>
    strongestRung(other.steps) > strongestRung(one.steps);
  const laterOf = ([, later]: Pair): PanelPlan => later;
  return [
    {
      aim: option.aim,
      than: before.aim,
      saved,
      timeSaved,
      left: leftByOther(before, option),
      stronger: quicker.filter(isStronger).map(laterOf),
      quicker: quicker.filter((pair) => !isStronger(pair)).map(laterOf),
      fewerSetUps: setUpsOf(before) - setUpsOf(option),
      finer: endsFiner(before, option),
    },
  ];
}

/** What the one aim works, and the other leaves as it is found. */
export const leftByOther = (
  before: Pick<QuoteOption, 'plan'>,
  option: Pick<QuoteOption, 'plan'>,
): readonly PanelPlan[] =>
  pairsOf(before, option).flatMap(([one, other]) =>
    isTouched(one) && !isTouched(other) ? [other] : [],
  );

/** What clears more under the other aim, as people are shown it. */
export const clearedMore = (
  before: Pick<QuoteOption, 'plan'>,
  option: Pick<QuoteOption, 'plan'>,
  shownOf: (share: number) => number,
): readonly PanelPlan[] =>
  pairsOf(before, option).flatMap(([one, other]) =>
    shownOf(other.expected) > shownOf(one.expected) ? [other] : [],
  );

/** Whether the one ends somewhere with a step that leaves haze where the other, if it works there, does not. */
export const endsFiner = (
  before: Pick<QuoteOption, 'plan'>,
  option: Pick<QuoteOption, 'plan'>,
): boolean => pairsOf(before, option).some(([one, other]) => lastHaze(one) > lastHaze(other));

/** A part as the one aim works it, and as the other does. */
type Pair = readonly [PanelPlan, PanelPlan];

function pairsOf(
  before: Pick<QuoteOption, 'plan'>,
  option: Pick<QuoteOption, 'plan'>,
): readonly Pair[] {
  const later = new Map(workedParts(option.plan).map((part) => [keyOf(part), part]));
  return workedParts(before.plan).flatMap((part): readonly Pair[] => {
    const same = later.get(keyOf(part));
    return same === undefined ? [] : [[part, same]];
  });
}

const keyOf = ({ survey }: PanelPlan): string =>
  isZone(survey) ? `${survey.panel.id} ${survey.zone}` : survey.panel.id;

const machineOf = ({ steps }: PanelPlan): number =>
  sum(steps.map(({ machineTime }) => machineTime));

const lastHaze = ({ steps }: PanelPlan): number => steps.at(-1)?.combination.haze ?? 0;

const setUpsOf = ({ plan }: QuoteOption): number =>
  new Set(workedParts(plan).flatMap(({ steps }) => steps.map(({ combination }) => combination.id)))
    .size;
