/** What is to be done before any panel where no test spot has shown how the paint gives way. */

import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
import type { PanelPlan, PlannedStep } from '../../correction/plan/plan.ts';
import { DEEPER_THAN_CLEAR } from '../../correction/plan/plan-remarks.ts';
import { partName } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import type { Block } from '../model.ts';
import { whyProvisional } from './plan-provisional.ts';
import { combinationWords } from './step-words.ts';

/**
 * With a place for each figure that a plan by test spots wants. It is what most of the surface begins with that is tried:
 * a finish after it takes too little for any gauge to tell, and a step at one deep mark decides nothing of the rest. It
 * is tried where the plan itself works it, in no more sets.
 */
export function spotFirst(worked: readonly PanelPlan[], result: PlanResult): readonly Block[] {
  const unproved = worked.filter(({ provisional }) => provisional);
  const begun = unproved.flatMap((part) => beginningOf(part) ?? []);
  const most = mostBegun(begun);
  if (most === undefined) return [];
  const at = placeFor(most.parts);
  const sets = at?.step.sets ?? Math.min(...most.parts.map(({ step }) => step.sets));
  const words = combinationWords(most.combination);
  return [
    {
      kind: 'ticks',
      label: 'Test spot first',
      note: whyProvisional(result).card,
      items: [
        tick(
          `mark a place on ${at?.words ?? 'a panel of this paint'}, ${MARKS} points on it; read them, wiped and cool: mean ${BLANK}`,
        ),
        {
          text: `work it, wipe and look after each set: up to ${sets}×\u00a0${words}, which ${begunBy(most, begun)}`,
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

/** A part, and what is worked on it first. */
type Begun = { readonly part: PanelPlan; readonly step: PlannedStep; readonly isSpot: boolean };
type Beginning = {
  readonly combination: PlannedStep['combination'];
  readonly parts: readonly Begun[];
};

function beginningOf(part: PanelPlan): Begun | undefined {
  const [first] = part.steps;
  const step = first ?? part.local.flatMap(({ steps }) => steps)[0];
  return step === undefined ? undefined : { part, step, isSpot: first === undefined };
}

/** By the surface that it is worked on; of equals the milder. */
function mostBegun(begun: readonly Begun[]): Beginning | undefined {
  const groups = [...groupBy(begun, ({ step }) => step.combination.id).values()];
  const beginnings = groups.flatMap((parts) => {
    const [one] = parts;
    return one === undefined ? [] : [{ combination: one.step.combination, parts }];
  });
  return beginnings.toSorted(
    (a, b) => surfaceOf(b) - surfaceOf(a) || a.combination.rung - b.combination.rung,
  )[0];
}

/** A spot at a deep mark is no surface. */
const surfaceOf = ({ parts }: Beginning): number =>
  sum(parts.map(({ part, isSpot }) => (isSpot ? 0 : part.survey.panel.area)));

function begunBy({ parts }: Beginning, all: readonly Begun[]): string {
  if (parts.every(({ isSpot }) => isSpot)) return 'the deep marks of this card begin with';
  const of = parts.length === all.length ? 'every panel' : counted(parts.length, 'panel');
  return `${of} of this card ${of === 'every panel' || parts.length === 1 ? 'begins' : 'begin'} with`;
}

/**
 * Of sound film the panel whose plan leaves most of what may go bears it best: what it takes there is gone from it. Of
 * those that show as much the one whose film is most like the others’ speaks for most.
 */
function placeFor(parts: readonly Begun[]): (Begun & { readonly words: string }) | undefined {
  const sound = parts.filter(
    ({ part }) => part.survey.condition === 'original' && !hasMarkThroughClear(part),
  );
  const most = Math.max(...sound.map(toSpare));
  const equal = sound.filter((one) => toSpare(one) === most);
  const middle = median(sound.map(meanOf));
  const best = equal.toSorted(
    (a, b) => Math.abs(meanOf(a) - middle) - Math.abs(meanOf(b) - middle),
  )[0];
  if (best === undefined) return undefined;
  const why =
    equal.length === 1
      ? 'which has most to spare'
      : 'which has as much to spare as any, and the film most like the others’';
  return { ...best, words: `${partName(best.part.survey)}, ${why}` };
}

/** What only new paint mends speaks for no sound film. */
const hasMarkThroughClear = ({ reasons, local }: PanelPlan): boolean =>
  [...reasons, ...local.flatMap((spot) => spot.reasons)].some(
    ({ code }) => code === DEEPER_THAN_CLEAR,
  );

/** As a page shows it. */
const toSpare = ({ part: { survey, removal } }: Begun): number =>
  Math.round(10 * (survey.budget - removal.median));

const meanOf = ({ part: { survey } }: Begun): number => survey.film?.mean ?? 0;

const setsApart = (sets: number, words: string): readonly string[] =>
  Array.from(
    { length: sets },
    (_, i) => `work it, set ${i + 1} of up to ${sets}: ${words}, wipe, look`,
  );

/** As many as tell a loss of some 2 µm. */
const MARKS = 5;

export const BLANK = '______';

const tick = (text: string) => ({ text, boxes: 1 });
