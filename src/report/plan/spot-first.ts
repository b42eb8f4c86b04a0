/** What is to be done before any panel where no test spot has shown how the paint gives way. */
import type { PanelPlan, PlannedStep } from '../../correction/plan/plan.ts';
import type { Block } from '../model.ts';

/** With a place for each figure that a plan by test spots wants. */
export function spotFirst(worked: readonly PanelPlan[]): readonly Block[] {
  const unproved = worked.filter(({ provisional }) => provisional);
  const mildest = unproved
    .flatMap(({ steps, local }) => [...steps, ...local.flatMap((spot) => spot.steps)])
    .reduce<PlannedStep | undefined>(milder, undefined);
  if (mildest === undefined) return [];
  const { combination } = mildest;
  return [
    {
      kind: 'ticks',
      label: 'Test spot first',
      note: 'nothing has shown yet how this paint gives way',
      items: [
        tick(`mark a place on a panel of this paint; read it, wiped and cool: ${BLANK}`),
        tick(`work it: 1×\u00a0${combination.id}, the mildest step of this card`),
        tick(`wipe, look: of the marks are gone ${BLANK} %`),
        tick(`read again, cool: ${BLANK} off: ${BLANK}`),
        tick('have the plan made anew with these figures (--spots) before going on'),
      ],
    },
  ];
}

export const BLANK = '______';

const tick = (text: string) => ({ text, boxes: 1 });

const milder = (one: PlannedStep | undefined, other: PlannedStep): PlannedStep =>
  one !== undefined && one.combination.rung <= other.combination.rung ? one : other;
