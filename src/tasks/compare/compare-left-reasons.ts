/** Why what may still go is less than a survey of the later readings says, or more than before the work. */
import { type Remark, remark, saying } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { isStatedClear } from './compare-left.ts';

/** As people read what may go: nothing finer is a difference to them. */
const DIGITS = 2;
const printed = ({ budget }: Pick<Allowance, 'budget'>): number => roundTo(budget, DIGITS);

/** Less than that hangs on which panels were read along with it, and says nothing of the paint. */
const WORTH_A_WORD = micrometres(0.1);

/** Whether what is known besides allows less than a survey of the later readings says. */
export const allowsLess = (known: Allowance, asked: Allowance): boolean =>
  printed(asked) - printed(known) > WORTH_A_WORD || (known.budget === 0 && printed(asked) > 0);

export type LessCase = {
  readonly asked: PanelSurvey;
  readonly standing: PanelSurvey;
  readonly known: Allowance;
  readonly held: RecordedRemoval;
  readonly comparison: PanelComparison;
  /** The step to go on with is known less well than is usual. */
  readonly vaguer: boolean;
};

/** At least one: where nothing else explains it, what was read before the work does. */
export function lessReasons(one: LessCase): readonly Remark[] {
  const [first = 'less-as-before', ...others] = causes(one);
  return [first, ...others].map((code) => lessReason(code, one.known.budget, one.asked.budget));
}

export type LessCode = 'less-as-held' | 'less-as-stated' | 'less-as-vague' | 'less-as-before';

/** As a page says them of several panels. */
export const LESS_BECAUSE: Readonly<Record<LessCode, string>> = {
  'less-as-held':
    'more is held to be gone than was measured, as the plan and the other panels have it',
  'less-as-stated': 'the clear that the job states is taken to be from before the work',
  'less-as-vague': 'how the step to go on with cuts is known less well than is usual',
  'less-as-before': 'what was read before the work counts as well',
};

const lessReason = (code: LessCode, known: Micrometres, asked: Micrometres): Remark =>
  remark(
    code,
    says`${um(known, DIGITS)} may go, where a survey of the later readings says ${um(asked, DIGITS)}: ${LESS_BECAUSE[code]}`,
    asked,
  );

function causes({ standing, held, comparison, vaguer }: LessCase): readonly LessCode[] {
  const onRecord = comparison.gained ? 0 : Math.max(0, comparison.change?.removed.value ?? 0);
  const isStated = isStatedClear(standing.facts);
  return [
    ...(held.mean > onRecord ? (['less-as-held'] as const) : []),
    ...(isStated ? (['less-as-stated'] as const) : []),
    ...(vaguer ? (['less-as-vague'] as const) : []),
  ];
}

/** Whether more may go than before the work, and if so, whether either figure allows one more set. */
type MoreThanBefore = 'no' | 'either-allows' | 'in-doubt';

/** Work adds no film: where more may go than before, the readings are what differs. */
export function moreThanBefore(
  before: PanelSurvey | undefined,
  left: Allowance,
  set: ExpectedRemoval,
): MoreThanBefore {
  if (before === undefined || printed(left) <= printed(before)) return 'no';
  return before.budget >= set.median ? 'either-allows' : 'in-doubt';
}

export const moreReasons = (
  before: PanelSurvey | undefined,
  left: Allowance,
  more: MoreThanBefore,
): readonly Remark[] =>
  before === undefined || more === 'no'
    ? []
    : [
        remark(
          'more-than-before',
          says`${um(left.budget, DIGITS)} may go, ${um(before.budget, DIGITS)} before the work (then ${saying(before.boundBy)}): the readings differ, not the paint${more === 'in-doubt' ? '; read it again before more comes off' : ''}`,
          before.budget,
        ),
      ];
